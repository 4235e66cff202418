/** The lists of builds as lines of text for a terminal. */
import {inColumns} from '../text/columns.js';
import {printable} from '../text/printable.js';
import type {BookLists, ListName} from './list-model.js';
import {type ListTable, listTables} from './list-tables.js';
import {valueText} from './value.js';

/** As wide as its longest row: a terminal folds what it has no room for. */
export function listsText(all: readonly BookLists[], asked?: readonly ListName[]): string {
  return all.map((lists) => bookText(lists, asked)).join('\n');
}

function bookText(lists: BookLists, asked: readonly ListName[] | undefined): string {
  const {words, engine, job} = lists;
  const tables = listTables(lists, asked);
  const title = job === undefined ? engine : `${engine}, ${words.job} ${job}`;
  const lines = [
    `${printable(title)} (${words.fingerprint} ${lists.fingerprint})`,
    ...(tables.length === 0 ? [words.listsNothing] : tables.flatMap((table) => ['', ...tableLines(table)])),
  ];
  return lines.map((line) => `${line}\n`).join('');
}

/** Columns side by side; what may stand below the first column does, indented, and what is empty is left out. */
function tableLines({title, columns, rows, notes}: ListTable): string[] {
  const texts = rows.map((row) => row.map((value) => printable(valueText(value))));
  const shown = columns.flatMap(({detail}, at) => (!detail && texts.some((row) => row[at]) ? [at] : []));
  const heads = shown.map((at) => columns[at]?.title ?? '');
  const [head = '', ...lines] = inColumns([heads, ...texts.map((row) => shown.map((at) => row[at] ?? ''))]);
  const below = (row: readonly string[]) => {
    const said = columns.flatMap((column, at) =>
      column.detail && row[at] ? [`${column.title.toLowerCase()} ${row[at]}`] : [],
    );
    return said.length === 0 ? [] : [`    ${said.join(' · ')}`];
  };
  return [
    title,
    `  ${head}`,
    ...texts.flatMap((row, at) => [`  ${lines[at]}`, ...below(row)]),
    ...notes.map((note) => `  ${note}`),
  ];
}
