/** Small parts of the report's HTML; every text from a record or book goes through `printable`. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import {printable} from '../text/printable.js';

export type Cell = string | ElementContent;

/**
 * A table with its heads; the first cell of each row names it. Nothing for no rows. One that is too wide for the
 * window scrolls by itself, so the keyboard can come to it.
 */
export function table(heads: readonly string[], rows: readonly (readonly Cell[])[]): Element[] {
  if (rows.length === 0) return [];
  const label = `Table: ${heads.join(', ')}`;
  const head = heads.map((each) => h('th', {scope: 'col'}, each));
  return [
    h('div', {className: 'wide', role: 'group', ariaLabel: label, tabIndex: 0}, [
      h('table', [h('thead', h('tr', head)), h('tbody', rows.map(row))]),
    ]),
  ];
}

function row(cells: readonly Cell[]): Element {
  return h(
    'tr',
    cells.map((cell, index) => {
      const content = typeof cell === 'string' ? printable(cell) : cell;
      return index === 0 ? h('th', {scope: 'row'}, content) : h('td', content);
    }),
  );
}

/** A word that must not be missed. */
export function strong(text: string): Element {
  return h('strong', {className: 'bad'}, printable(text));
}

/** A number, kept on one line. */
export function figure(text: string): Element {
  return h('span', {className: 'figure'}, printable(text));
}

/** A heading with what stands below it; nothing where that is nothing. */
export function part(
  level: 2 | 3 | 4,
  title: string,
  content: readonly ElementContent[],
  id?: string,
): Element[] {
  if (content.length === 0) return [];
  return [h('section', id === undefined ? {} : {id}, [h(`h${level}`, printable(title)), ...content])];
}

export function paragraph(text: string): Element {
  return h('p', printable(text));
}
