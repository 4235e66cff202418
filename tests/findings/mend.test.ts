/** The fixes that are made without asking: which they are, that they end, and where they are said to have been. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {disjoint, mend} from '../../src/findings/mend.js';
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

  it('says of every file what it made there, round after round', () => {
    const slips = {
      'a.md':
        '1. Set the caps in. `instal: Caps`\n2. Up. `Torque bolts to 85 lbf·ft`\n3. x `torqe : Bolts`\n',
      'b.md': '1. Look. `inspct: Caps for cracks`\n2. Up. `torque: bolts to 80 lbf·ft`\n',
    };
    const whole = book({engine: ENGINE, procedures: slips});
    const {book: after, made, rounds, left} = mend(whole, new Set(['a.md', 'b.md']), {});
    expect(made.map(({file, offset, title}) => `${file}:${offset} ${title}`)).toEqual([
      'a.md:74 Write `install`',
      'a.md:96 Write `torque:`',
      'a.md:129 Write `torque`',
      'b.md:63 Write `inspect`',
      'a.md:82 Write caps',
      'a.md:129 Write `torque:`',
      'a.md:137 Write bolts',
      'b.md:71 Write caps',
    ]);
    expect(
      [...rounds].map(([file, some]) => [file, some.map((edits) => edits.map(({text}) => text).join(' '))]),
    ).toEqual([
      ['a.md', ['install torque: torque', 'caps torque: bolts']],
      ['b.md', ['inspect', 'caps']],
    ]);
    expect(left.map(({fix}) => fix.title)).toEqual(['Write 85 lbf·ft']);
    const bodies = after.procedures.map(({source: {text}}) => text.slice(text.indexOf('1. ')));
    expect(bodies).toEqual([
      '1. Set the caps in. `install: caps`\n2. Up. `torque: bolts to 85 lbf·ft`\n3. x `torque: bolts`\n',
      '1. Look. `inspect: caps for cracks`\n2. Up. `torque: bolts to 80 lbf·ft`\n',
    ]);
  });

  it.each<[title: string, spans: readonly string[], taken: string]>([
    ['apart', ['a 0-3', 'a 4-6'], '0 1'],
    ['apart, the later one first', ['a 4-6', 'a 0-3'], '0 1'],
    ['side by side', ['a 0-3', 'a 3-6'], '0'],
    ['side by side, the later one first', ['a 3-6', 'a 0-3'], '0'],
    ['one in the other', ['a 0-9', 'a 3-6', 'a 12-13'], '0 2'],
    ['one around the other', ['a 3-6', 'a 0-9'], '0'],
    ['in two files', ['a 0-3', 'b 0-3'], '0 1'],
    ['in two places each, one of them alike', ['a 0-3 8-9', 'a 5-6 9-12', 'a 5-6 14-15'], '0 2'],
    ['in two places each, the first alike', ['a 0-3 8-9', 'a 2-5 12-13'], '0'],
  ])('makes at once only fixes that stand apart: %s', (_, spans, taken) => {
    const fixes = spans.map((text, index) => {
      const [file = '', ...places] = text.split(' ');
      const edits = places.map((place) => {
        const [start = 0, end = 0] = place.split('-').map(Number);
        return {span: {start, end}, text: ''};
      });
      return {index, fix: {title: '', file, edits}};
    });
    expect(
      disjoint(fixes)
        .map(({index}) => index)
        .join(' '),
    ).toBe(taken);
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
