/** The report on builds as the data that its Typst template lays out for PDF. */
import {documentDate, type Print, paperName} from '../print/document.js';
import {fitted, type Running} from '../print/running.js';
import {svgText} from '../print/svg.js';
import type {Paper} from '../spec/model.js';
import {fill} from '../text/fill.js';
import {printable} from '../text/printable.js';
import {chartNode} from './chart.js';
import {answeredText, remarkCount, titleOf} from './headings.js';
import type {Block, Cell, Table} from './page.js';
import {reportPage} from './page-report.js';
import type {BuildReport, ReadingsReport} from './report.js';
import {counted, ENGLISH, type ReportWords} from './words.js';

/** Dated by the last entry of any build: the clock must not come in. */
export function reportPrint(report: ReadingsReport, paper: Paper, words: ReportWords = ENGLISH): Print {
  const {title, overview, key, content} = reportPage(report, words);
  const {builds} = report;
  const until = builds.flatMap(({sheets}) => sheets.flatMap(({last}) => last ?? [])).sort();
  const day = until.at(-1)?.slice(0, 10) ?? '';
  return {
    template: 'report',
    data: {
      words: {language: words.language, page: words.page},
      paper: paperName(paper),
      running: fitted(runningOf(builds, words)),
      foot: day === '' ? '' : `${words.until} ${day}`,
      title: printable(title),
      authors: [],
      date: documentDate(day),
      long: false,
      ...headOf(builds, day, words),
      says: [key],
      // Of one build its title block says the same.
      overview: builds.length > 1 ? overview.flatMap(printBlock) : [],
      content: content.flatMap(printBlock),
    },
  };
}

function runningOf(builds: readonly BuildReport[], words: ReportWords): Running {
  const [only, second] = builds;
  const name = only && !second ? titleOf(only, words) : counted(builds.length, words.counts.builds);
  return {left: {name: printable(name), rest: ''}, right: {name: words.report, rest: ''}};
}

/** The title block: one build by its numbers, several by how many there are. */
function headOf(builds: readonly BuildReport[], day: string, words: ReportWords) {
  const [only, second] = builds;
  const cell = (label: string, text: string | undefined, width: number) => ({
    label,
    text: printable(text ?? '–'),
    width,
    digits: false,
  });
  const sums = [
    cell(words.wrong, counted(remarkCount(builds, 'error'), words.counts.errors), 4),
    cell(words.toLookAt, counted(remarkCount(builds, 'warning'), words.counts.warnings), 4),
    cell(words.until, day || '–', 4),
  ];
  const names = [...new Set(builds.map(({name}) => name))].join(', ');
  const shared = {shop: printable(names), kind: words.report, notes: []};
  if (only === undefined || second) {
    const heading = fill(words.reportsOf, {builds: counted(builds.length, words.counts.builds)});
    return {...shared, heading, cells: sums};
  }
  const {job, engineNumber} = only;
  const number = engineNumber ?? job;
  return {
    ...shared,
    heading: number === undefined ? words.report : fill(words.engineOf, {number: printable(number)}),
    cells: [
      cell(words.engineNumber, engineNumber, 4),
      cell(words.job, job, 4),
      cell(words.boxesAnswered, answeredText(only, words), 4),
      ...sums,
    ],
  };
}

function printBlock(block: Block): object[] {
  switch (block.type) {
    case 'paragraph':
      return [{type: 'paragraph', text: printable(block.text), small: block.small ?? false}];
    case 'remarks':
      return [{type: 'remarks', lines: block.lines.map((line) => ({...line, text: printable(line.text)}))}];
    case 'chart': {
      const node = chartNode(block.chart);
      return node === undefined
        ? []
        : [{type: 'chart', svg: svgText(node), alt: printable(block.chart.label)}];
    }
    case 'table':
      return [printTable(block)];
    case 'part':
      return [printPart(block.part)];
  }
}

function printPart({level, title, id, content}: Extract<Block, {type: 'part'}>['part']): object {
  const rows = content.map((block) => (block.type === 'table' ? block.rows.length : 0));
  return {
    type: 'part',
    level,
    title: printable(title),
    id: id ?? '',
    // Only what is sure to fit on one page: a block that does not is cut off at its foot.
    whole: level > 3 && Math.max(0, ...rows) <= TOGETHER,
    content: content.flatMap(printBlock),
  };
}

/** Rows of a table that is kept on one page with its heading and drawing. */
const TOGETHER = 12;

function printTable({heads, rows}: Table): object {
  const texts = rows.map((row) => row.map(printCell));
  const widths = heads.map((head, at) => {
    const longest = Math.max(...texts.map((row) => roomOf(row[at])));
    return Math.max(head.length, Math.min(longest, LONGEST)) + PADDING;
  });
  return {type: 'table', heads, widths, rows: texts};
}

/** Characters: above this a column folds its texts; what its padding takes. */
const LONGEST = 26;
const PADDING = 3;

/** Letters of one width are wider than the others. */
function roomOf(cell: PrintCell | undefined): number {
  return (cell?.text.length ?? 0) * (cell?.look === 'code' ? 1.4 : 1);
}

interface PrintCell {
  readonly text: string;
  readonly look: string;
  readonly to: string;
}

function printCell(cell: Cell): PrintCell {
  if (typeof cell === 'string') return {text: printable(cell), look: 'plain', to: ''};
  return {text: printable(cell.text), look: cell.look, to: cell.to ?? ''};
}
