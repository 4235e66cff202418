/** The lists of builds as lines of text for a terminal. */
import {printable} from '../text/printable.js';
import type {BookLists} from './list-model.js';
import {type ListName, type ListTable, listTables} from './list-tables.js';
import {valueText} from './value.js';

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
  const heads = columns.map((column) => column.title);
  const widths = shown.map((at) => Math.max(...[heads, ...texts].map((row) => row[at]?.length ?? 0)));
  const aligned = (row: readonly string[]) =>
    shown
      .map((at, index) => (row[at] ?? '').padEnd(widths[index] ?? 0))
      .join('  ')
      .trimEnd();
  const below = (row: readonly string[]) => {
    const said = columns.flatMap((column, at) =>
      column.detail && row[at] ? [`${column.title.toLowerCase()} ${row[at]}`] : [],
    );
    return said.length === 0 ? [] : [`    ${said.join(' · ')}`];
  };
  return [
    title,
    `  ${aligned(heads)}`,
    ...texts.flatMap((row) => [`  ${aligned(row)}`, ...below(row)]),
    ...notes.map((note) => `  ${note}`),
  ];
}
