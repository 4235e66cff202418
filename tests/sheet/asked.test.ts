/** What a second person looks at stands with its value on the sheet, and how many fasteners there are at their torque. */
import {describe, expect, it} from 'vitest';
import {forJob} from '../../src/build/for-job.js';
import {compileSheet} from '../../src/sheet/compile.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {sheetMarkdown} from '../../src/sheet/markdown.js';
import type {Row, Sheet} from '../../src/sheet/model.js';
import {sheetPrint} from '../../src/sheet/print.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  cap: {name: bearing cap}
fasteners:
  bolts: {name: cap bolts, at: [front, rear], count: 6, torque: 20 lbf·ft, angle: 90°, threads: dry, lock: [safety-wire, wire-032]}
  nut: {torque: snug, threads: dry, lock: {value: none, because: loose}}
  studs: {at: [front, rear], torque: unknown, threads: dry, lock: unknown}
fits:
  float: {limits: 0.004–0.009 in}
  play: {limits: unknown}
checks:
  idle: {limits: 440–460 rpm, expect: even beat}
systems:
  oil: {with: [engine-oil], amount: 6.0 L}
marks:
  number: {}
hold-points:
  closed: {name: bottom closed, asks: [cap, bolts, nut, studs, float, play, idle, oil, number], by: shop lead}
`;

const STEPS = `
1. Torque. \`torque: bolts\`
2. Torque the front. \`torque: bolts[front]\`
3. Torque. \`torque: nut\`
4. Torque. \`torque: studs\`
5. Call. \`witness: closed\`
`;

function compiled(job?: string): Sheet {
  const made = forJob(book({engine: ENGINE, procedures: {'one.md': STEPS}, job}));
  const [procedure] = made.procedures;
  if (procedure === undefined) throw new Error('no procedure');
  return compileSheet(made, procedure, {fingerprint: '0'.repeat(64)});
}

function rowsOf({sections}: Sheet): Row[] {
  return sections.flatMap(({content}) =>
    content.flatMap((block) => (block.type === 'row' ? [block.row] : [])),
  );
}

const ASKED = [
  'bearing cap',
  'cap bolts: 20 lbf·ft (27 N·m) + 90°, safety wire, wire 032',
  'nut: snug by hand tool',
  'studs',
  'float: 0.004–0.009 in (0.11–0.22 mm)',
  'play',
  'idle: 440–460 rpm, even beat',
  'oil: 6.3 US qt (6.0 L)',
  'number',
];

describe('what a hold point asks for', () => {
  it('has its value beside it, where there is one', () => {
    expect(rowsOf(compiled())[4]?.holds[0]?.asked).toEqual(ASKED);
  });

  it('is called by its name in records, which last longer than values', () => {
    const [hold] = rowsOf(compiled())[4]?.holds ?? [];
    expect(hold?.asks).toEqual(ASKED.map((one) => one.replace(/:.*/, '')));
  });

  it('is the number that a stamp must read on the engine of a job', () => {
    expect(rowsOf(compiled('marks: {number: OF-7}\n'))[4]?.holds[0]?.asked.at(-1)).toBe('number: OF-7');
  });

  it.each([
    ['HTML', (sheet: Sheet) => sheetHtml(sheet)],
    ['PDF', (sheet: Sheet) => JSON.stringify(sheetPrint(sheet, () => undefined))],
    ['Markdown', (sheet: Sheet) => sheetMarkdown(sheet)],
  ])('stands with its value in %s', (_, form) => {
    const text = form(compiled());
    for (const one of ASKED) expect(text).toContain(one);
  });
});

describe('how many fasteners a step tightens', () => {
  it.each([
    ['all of them', 0, '6'],
    ['those at one of two places', 1, '3'],
    ['one, which needs no number', 2, undefined],
    ['nobody knows how many at each place', 3, undefined],
  ])('%s', (_, at, count) => {
    const facts = rowsOf(compiled())[at]?.entries[0]?.facts ?? [];
    expect(facts.find(({label}) => label === 'Count')?.text).toBe(count);
  });
});
