/** What findings say, word for word, and where: people search for these words and editors jump to these places. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import {positionAt} from '../../src/text/source.js';
import {CASES, caseBook} from './cases.js';

describe.each(CASES)('$finding: $title', (one) => {
  const book = caseBook(one);
  const checked = () => check(book, {today: '2026-06-01'}).findings;

  it('is said so, and there', () => {
    expect(
      checked()
        .filter(({name}) => name === one.finding)
        .map((finding) => placed(book, finding)),
    ).toEqual(one.says);
  });

  it('brings no other finding than it must', () => {
    const others = new Set(
      checked()
        .map(({name}) => name)
        .filter((name) => name !== one.finding),
    );
    expect([...others].sort()).toEqual([...(one.also ?? [])].sort());
  });
});

function placed({spec, procedures}: Book, {where, message}: Finding): string {
  const from =
    spec.files.get(where.file) ?? procedures.find(({source}) => source.file === where.file)?.source;
  if (from === undefined) return `${where.file} ${message}`;
  const {line, column} = positionAt(from, where.span.start);
  const file = where.file === 'procedure.md' ? '' : `${where.file}:`;
  return `${file}${line}:${column} ${message}`;
}
