/** The lists of builds as comma-separated values by RFC 4180, safe to open in a spreadsheet. */
import type {BookLists} from './list-model.js';
import {type ListColumn, type ListName, listTables} from './list-tables.js';
import type {Value} from './model.js';
import {fill, type Words} from './words.js';

/**
 * One table whose first columns say which engine, job and list a record is of; a column that a list has not is empty
 * in it. Every field is quoted, lines end in CR LF. A byte-order mark tells spreadsheets that it is UTF-8.
 */
export function listsCsv(all: readonly BookLists[], asked?: readonly ListName[]): string {
  const records = all.flatMap((lists) => recordsOf(lists, asked));
  const heads = [...new Set(records.flatMap((record) => [...record.keys()]))];
  const lines = [heads, ...records.map((record) => heads.map((head) => record.get(head) ?? ''))];
  return `\uFEFF${lines.map((line) => `${line.map(field).join(',')}\r\n`).join('')}`;
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

/** What a spreadsheet takes for the start of a formula, in letters of either width (OWASP, CSV Injection). */
const FORMULA = /^[=+\-@＝＋－＠]/;

/** Folds line ends, tabs and blanks, so that none of them can start a cell anew; an apostrophe keeps a formula a text. */
function field(text: string): string {
  const folded = text.replace(/\s+/g, ' ').trim();
  const safe = FORMULA.test(folded) ? `'${folded}` : folded;
  // Where a spreadsheet parts cells at semicolons, what follows one could start a formula too.
  const parted = safe.replace(/;( ?)(?=[=+\-@＝＋－＠])/g, ";$1'");
  return `"${parted.replaceAll('"', '""')}"`;
}
