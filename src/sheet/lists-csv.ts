/** The lists of builds as comma-separated values for a spreadsheet. */
import {csvText} from '../text/csv.js';
import type {BookLists, ListName} from './list-model.js';
import {type ListColumn, listTables} from './list-tables.js';
import type {Value} from './model.js';
import {fill, type Words} from './words.js';

/**
 * One table whose first columns say which engine, job and list a record is of; a column that a list has not is empty
 * in it. A byte-order mark tells spreadsheets that it is UTF-8.
 */
export function listsCsv(all: readonly BookLists[], asked?: readonly ListName[]): string {
  const records = all.flatMap((lists) => recordsOf(lists, asked));
  const heads = [...new Set(records.flatMap((record) => [...record.keys()]))];
  const lines = [heads, ...records.map((record) => heads.map((head) => record.get(head) ?? ''))];
  return `\uFEFF${csvText(lines.map((line) => line.map(folded)))}`;
}

function recordsOf(lists: BookLists, asked: readonly ListName[] | undefined): Map<string, string>[] {
  const {words, engine, job = ''} = lists;
  return listTables(lists, asked).flatMap(({title, columns, rows}) =>
    rows.map((row) => {
      const record = new Map([
        [words.engine, engine],
        [words.job, job],
        [words.list, title],
      ]);
      columns.forEach((column, at) => {
        for (const [head, text] of cells(column, row[at], words)) record.set(head, text);
      });
      return record;
    }),
  );
}

/** A value in both systems fills two columns. */
function cells({title, both}: ListColumn, value: Value | undefined, words: Words): [string, string][] {
  const first: [string, string] = [title, value?.text ?? ''];
  return both ? [first, [fill(words.other, {title}), value?.also ?? '']] : [first];
}

/** On one line. */
function folded(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
