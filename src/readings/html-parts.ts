/** The blocks of a report's page in HTML; every text from a record or book goes through `printable`. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import {fill} from '../text/fill.js';
import {printable} from '../text/printable.js';
import {chartNode} from './chart.js';
import type {Block, Cell, Part, RemarkText, Table} from './page.js';
import type {ReportWords} from './words.js';

/** None for a chart with nothing in it. */
export function blockNodes(block: Block, words: ReportWords): Element[] {
  switch (block.type) {
    case 'paragraph':
      return [h('p', block.small ? {className: 'where'} : {}, printable(block.text))];
    case 'remarks':
      return [h('ul', {className: 'remarks'}, block.lines.map(remarkNode))];
    case 'chart': {
      const drawing = chartNode(block.chart);
      return drawing ? [drawing] : [];
    }
    case 'table':
      return [tableNode(block, words)];
    case 'part':
      return [partNode(block.part, words)];
  }
}

function partNode({level, title, id, content}: Part, words: ReportWords): Element {
  const nodes = content.flatMap((block) => blockNodes(block, words));
  return h('section', id === undefined ? {} : {id}, [h(`h${level}`, printable(title)), ...nodes]);
}

function remarkNode({word, bad, text}: RemarkText): Element {
  return h('li', [h('strong', bad ? {className: 'bad'} : {}, word), printable(` ${text}`)]);
}

/** One that is too wide for the window scrolls by itself, so the keyboard can come to it. */
function tableNode({heads, rows}: Table, words: ReportWords): Element {
  const label = fill(words.table, {heads: heads.join(', ')});
  const head = heads.map((each) => h('th', {scope: 'col'}, each));
  return h('div', {className: 'wide', role: 'group', ariaLabel: label, tabIndex: 0}, [
    h('table', [h('thead', h('tr', head)), h('tbody', rows.map(rowNode))]),
  ]);
}

function rowNode(cells: readonly Cell[]): Element {
  return h(
    'tr',
    cells.map((cell, index) => {
      const content = cellContent(cell);
      return index === 0 ? h('th', {scope: 'row'}, content) : h('td', content);
    }),
  );
}

function cellContent(cell: Cell): ElementContent | string {
  if (typeof cell === 'string') return printable(cell);
  const text = printable(cell.text);
  switch (cell.look) {
    case 'bad':
      return h('strong', {className: 'bad'}, text);
    case 'figure':
      return h('span', {className: 'figure'}, text);
    case 'code':
      return h('code', text);
    case 'link':
      return h('a', {href: `#${cell.to ?? ''}`}, text);
  }
}
