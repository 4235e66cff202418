/** Every fix that a finding offers: applied and checked again, the finding is gone and no other has come. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {applyEdits, type Fix} from '../../src/text/edit.js';
import {type Source, source} from '../../src/text/source.js';
import {exampleBook} from '../help/example.js';
import {CASES, caseBook} from './cases.js';

const TODAY = {today: '2026-06-01'};

/** Every fix of every wrong example and of every case of the tables. */
const FIXES = [
  ...FINDINGS.flatMap(({name, example}) => (example ? [[name, exampleBook(example, 'wrong')] as const] : [])),
  ...CASES.map((one) => [one.finding, caseBook(one)] as const),
].flatMap(([name, book]) =>
  check(book, TODAY)
    .findings.filter((finding) => finding.name === name)
    .flatMap((finding) => (finding.fix ? [{name, book, finding, fix: finding.fix}] : [])),
);

describe.each(FIXES.map((one) => ({...one, title: one.fix.title})))(
  '$name: $title',
  ({book, finding, fix}) => {
    const checkedAfter = () => check(mended(book, fix), TODAY).findings;

    it('mends the finding', () => {
      const after = checkedAfter();
      expect(after.map(said)).not.toContain(said(finding));
      const count = (findings: readonly Finding[]) =>
        findings.filter(({name}) => name === finding.name).length;
      expect(count(after)).toBeLessThan(count(check(book, TODAY).findings));
    });

    it('brings no other', () => {
      const before = new Set(check(book, TODAY).findings.map(said));
      expect(
        checkedAfter()
          .map(said)
          .filter((one) => !before.has(one)),
      ).toEqual([]);
    });
  },
);

it('covers the findings that offer fixes', () => {
  expect(new Set(FIXES.map(({name}) => name)).size).toBeGreaterThanOrEqual(8);
});

function said({name, message}: Finding): string {
  return `${name}: ${message}`;
}

function mended(book: Book, fix: Fix): Book {
  const edited = (from: Source): Source =>
    from.file === fix.file ? source(from.file, applyEdits(from.text, fix.edits)) : from;
  const [engine, shop] = ['engine.yaml', 'shop.yaml'].map((name) => book.spec.files.get(name));
  if (engine === undefined || shop === undefined) throw new Error('the example has lost a file');
  return {
    ...book,
    spec: readSpecification({shop: edited(shop), engine: edited(engine), bases: []}),
    procedures: book.procedures.map(({source: from}) => readProcedure(edited(from))),
  };
}
