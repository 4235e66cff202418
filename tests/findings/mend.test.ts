/** The fixes that are made without asking: which they are, that they end, and where they are said to have been. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {mend} from '../../src/findings/mend.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {readProcedure} from '../../src/procedure/read.js';
import {applyEdits, offsetBefore} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {book, exampleBook} from '../help/example.js';
import {CASES, caseBook} from './cases.js';

const ENGINE = `
parts:
  block: {given: true}
  caps: {at: [front, rear]}
fasteners:
  bolts: {holds: [caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`;
const FILES = new Set(['procedure.md']);

function mended(body: string) {
  const whole = book({engine: ENGINE, procedures: {'procedure.md': body}});
  const result = mend(whole, FILES, {});
  return {
    ...result,
    before: whole.procedures[0]?.source.text ?? '',
    text: result.book.procedures[0]?.source.text ?? '',
  };
}

describe('mend', () => {
  it('goes round until nothing is left, and says where each fix was', () => {
    const {before, text, made} = mended(
      '1. Set the caps in. `instal: Caps`\n2. Up. `Torque bolts to 85 lbf·ft`\n3. x `torqe : Bolts`\n',
    );
    expect(text).toContain('`install: caps`');
    expect(text).toContain('`torque: bolts`');
    for (const {offset, finding} of made) {
      expect(before.slice(offset)).toMatch(
        finding === 'unknown-verb' ? /^(?:instal|torqe)/ : /^(?:Caps|Bolts|Torque|torqe)/,
      );
    }
  });

  it('leaves values, items and order to a person', () => {
    const {before, text, left, made} = mended(
      '1. Set the caps in. `install: cap`\n2. Up to 80 lbf·ft. `torque: bolts to 80 lbf·ft`\n',
    );
    expect(text).toBe(before);
    expect(made).toEqual([]);
    expect(left.map(({name}) => name)).toEqual(expect.arrayContaining(['unknown-item', 'value-disagrees']));
  });

  it('touches no file that it was not given', () => {
    const whole = book({engine: ENGINE, procedures: {'procedure.md': '1. x `instal: caps`\n'}});
    expect(mend(whole, new Set(), {}).book).toBe(whole);
  });

  it.each([
    ...FINDINGS.flatMap(({name, example}) =>
      example ? [[name, exampleBook(example, 'wrong')] as const] : [],
    ),
    ...CASES.map((one) => [one.finding, caseBook(one)] as const),
  ])('changes no value, item or order: %s', (_, whole) => {
    const files = new Set(whole.procedures.map(({source}) => source.file));
    const options = {today: '2026-06-01'};
    const {book: after, left} = mend(whole, files, options);
    // Everything that still has a spelling fix would have been mended.
    const spelling = new Set(FINDINGS.filter(({fixIsSpelling}) => fixIsSpelling).map(({name}) => name));
    expect(left.filter(({name, fix}) => spelling.has(name) && files.has(fix.file))).toEqual([]);
    const names = (of: typeof whole) =>
      check(of, options).findings.filter(({name}) => spelling.has(name)).length;
    expect(names(after)).toBeLessThanOrEqual(names(whole));
  });
});

describe('offsetBefore', () => {
  it('finds every kept character again', () => {
    const text = 'one two three';
    const edits = [
      {span: {start: 0, end: 3}, text: 'a'},
      {span: {start: 8, end: 8}, text: '++'},
    ];
    const after = applyEdits(text, edits);
    expect(after).toBe('a two ++three');
    expect(offsetBefore(edits, after.indexOf('two'))).toBe(text.indexOf('two'));
    expect(offsetBefore(edits, after.indexOf('three'))).toBe(text.indexOf('three'));
    expect(offsetBefore(edits, after.indexOf('+'))).toBe(8);
    expect(readProcedure(source('x.md', after)).steps).toEqual([]);
  });
});
