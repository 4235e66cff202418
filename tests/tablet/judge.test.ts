/** What a page works out by itself: readings as they are typed, which boxes wait, whose initials may stand where. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import type {Box, Form, HoldBox, ReadingBox} from '../../src/build/form.js';
import {readAmount} from '../../src/quantity/parse.js';
import {answersOf} from '../../src/readings/answers.js';
import {obstacleTo, refusal, signedWith} from '../../src/tablet/hands.js';
import {judged, meant, typedReading, typedTime} from '../../src/tablet/judge.js';
import {progressOf} from '../../src/tablet/progress.js';
import {standingAfter} from '../../src/tablet/standing.js';

const reading: ReadingBox = {
  kind: 'reading',
  key: '1:1',
  step: '1',
  label: 'Measure play',
  onlyIf: [],
  item: 'play',
  place: '',
  unit: 'in',
  least: 0.0015,
  most: 0.0035,
};

describe('what is typed', () => {
  test.each([
    ['0.0025', {ok: true, value: '0.0025'}],
    ['.0025', {ok: true, value: '.0025'}],
    [' 0.0025 ', {ok: true, value: '0.0025'}],
    ['0.0025 in', {ok: true, value: '0.0025'}],
    ['0.0025in', {ok: true, value: '0.0025'}],
    ['-0.002', {ok: true, value: '-0.002'}],
    ['+.002', {ok: true, value: '+.002'}],
    ['', {ok: true, value: ''}],
    ['2,5', {ok: false, why: 'comma'}],
    ['1,250', {ok: false, why: 'comma'}],
    ['0.0025 mm', {ok: false, why: 'number'}],
    ['in', {ok: false, why: 'number'}],
    ['1/16', {ok: false, why: 'number'}],
    ['2 thou', {ok: false, why: 'number'}],
    ['1e-3', {ok: false, why: 'number'}],
    ['.', {ok: false, why: 'number'}],
    ['0x10', {ok: false, why: 'number'}],
    ['Infinity', {ok: false, why: 'number'}],
    ['٢', {ok: false, why: 'number'}],
  ])('%j', (text, expected) => {
    expect(typedReading(text, reading)).toEqual(expected);
  });

  // A run-out, a taper, a gap: no gauge reads less than nought of it.
  test.each([
    ['-0.002', undefined, {ok: true, value: '-0.002'}],
    ['-0.002', true, {ok: false, why: 'nought'}],
    ['−.002 in', true, {ok: false, why: 'nought'}],
    ['-1', true, {ok: false, why: 'nought'}],
    ['0', true, {ok: true, value: '0'}],
    ['-0.000', true, {ok: true, value: '-0.000'}],
    ['0.002', true, {ok: true, value: '0.002'}],
    ['9', true, {ok: true, value: '9'}],
    ['-x', true, {ok: false, why: 'number'}],
  ] as const)('%j of what is from nought: %s', (text, fromNought, expected) => {
    expect(typedReading(text, {...reading, ...(fromNought && {fromNought})})).toEqual(expected);
  });

  test('is never a number to the page and another, or none, to the reader of specifications', () => {
    const text = fc.stringMatching(/^[0-9.,+-]{1,8}$/);
    fc.assert(
      fc.property(text, (typed) => {
        const said = typedReading(typed, reading);
        if (!said.ok || said.value === '' || /^[+-]/.test(typed) || typed.endsWith('.')) return;
        const amount = readAmount(`${typed} in`);
        expect(amount.ok && amount.amount.form === 'single' && amount.amount.value.value).toBe(
          Number(said.value),
        );
      }),
    );
  });
});

// Limits 0.0015–0.0035 in. With a doubt of 0.0003, ISO 14253-1 (rule for proving conformity, from memory) accepts
// 0.0018–0.0032. Without one the last tenth of the tolerance, 0.0002, is near (the shop's habit; no source).
describe('a reading', () => {
  test.each([
    ['0.0025', undefined, {verdict: 'in'}],
    ['0.0017', undefined, {verdict: 'in'}],
    ['0.0016', undefined, {verdict: 'near', why: 'tenth'}],
    ['0.0035', undefined, {verdict: 'near', why: 'tenth'}],
    ['0.0036', undefined, {verdict: 'out', side: 'over'}],
    ['0.0014', undefined, {verdict: 'out', side: 'under'}],
    ['0.0018', 0.0003, {verdict: 'in'}],
    ['0.0017', 0.0003, {verdict: 'near', why: 'doubt'}],
    ['0.0032', 0.0003, {verdict: 'in'}],
    ['0.0033', 0.0003, {verdict: 'near', why: 'doubt'}],
    ['0.0036', 0.0003, {verdict: 'out', side: 'over'}],
    ['0.0016', 0.00005, {verdict: 'in'}],
    ['0.00151', 0.00005, {verdict: 'near', why: 'doubt'}],
    ['', undefined, undefined],
    ['about 2', undefined, undefined],
  ])('of %j with a doubt of %s', (value, doubt, expected) => {
    expect(judged(value, {...reading, ...(doubt === undefined ? {} : {doubt})})).toEqual(expected);
  });

  test('is judged by one end where there is but one, and by none where there is none', () => {
    const {least, most, ...open} = reading;
    expect(judged('0.0035', {...open, most: most ?? 0})).toEqual({verdict: 'in'});
    expect(judged('0.0036', {...open, most: most ?? 0})).toEqual({verdict: 'out', side: 'over'});
    expect(judged('-9', {...open, most: most ?? 0})).toEqual({verdict: 'in'});
    expect(judged('9', {...open, least: least ?? 0})).toEqual({verdict: 'in'});
    expect(judged('9', open)).toEqual({verdict: 'unjudged'});
  });

  test('less than what it can be is no reading, from another tablet either', () => {
    const {least, ...open} = reading;
    expect(judged('-0.002', {...open, fromNought: true})).toBeUndefined();
    expect(judged('-0.002', open)).toEqual({verdict: 'in'});
  });
});

const base = {step: '2', label: '', onlyIf: []};
const hold: HoldBox = {...base, kind: 'hold', key: '2:hold:shut', item: 'shut', not: ['1:done', '1:1']};
const rework = {...base, onlyIf: [{item: 'play', is: 'out', boxes: ['1:1']}]} as const;
const boxes: Box[] = [
  {...base, step: '1', kind: 'tick', key: '1:done'},
  reading,
  {
    ...rework,
    kind: 'tick',
    key: '1a:done',
    step: '1a',
    goesBack: {to: '1', boxes: ['1:done', '1:1', '1a:done']},
  },
  {...base, kind: 'tick', key: '2:done'},
  {...base, kind: 'tick', key: '2:hold:shut:play'},
  hold,
  {...base, step: '', kind: 'tick', key: 'section:1:done', ends: 'section'},
];
const form: Form = {engine: 'e', procedure: 'p', title: '', revision: '', fingerprint: '0'.repeat(64), boxes};

type Said = readonly (readonly [key: string, value: string, by: string])[];

function entries(said: Said) {
  return said.map(([box, value, by]) => ({at: '2026-03-01T00:00:00Z', by, box, value, seal: '0'.repeat(64)}));
}

function answers(...said: Said) {
  return answersOf(entries(said));
}

const OUT = ['1:1', '0.0040', 'A'] as const;
const BACK = [OUT, ['1a:done', 'done', 'A']] as const;

// Six boxes wait; a reading out calls for the one of its branch, and going back for those of the next round.
test.each<[string, Said, number, number]>([
  ['nothing', [], 0, 6],
  ['a reading within', [['1:1', '0.0025', 'A']], 1, 6],
  ['a reading out', [OUT], 1, 7],
  [
    'a tick taken back',
    [
      ['1:done', 'done', 'A'],
      ['1:done', '', 'A'],
    ],
    0,
    6,
  ],
  ['an answer to a box that is not asked', [['1a:done@2', 'done', 'A']], 0, 6],
  ['a second round begun', BACK, 2, 9],
  ['a second round put right', [...BACK, ['1:1@2', '0.0025', 'A']], 3, 9],
  ['a second round out', [...BACK, ['1:1@2', '0.0041', 'A']], 3, 10],
  ['a third round', [...BACK, ['1:1@2', '0.0041', 'A'], ['1a:done@2', 'done', 'A']], 4, 12],
  ['a reading accepted as it is', [...BACK, ['1:1:accepted', 'it will do', 'B']], 2, 8],
  ['a second reading as records once had it', [...BACK, ['1:1:again', '0.0025', 'A']], 2, 7],
])('with %s, %# is done', (_, said, done, of) => {
  const now = standingAfter(entries(said), form);
  expect(progressOf(now.form.boxes, now.answers, now.due)).toEqual({done, of});
});

const DONE = ['1:done', 'done', 'A'] as const;

test.each<[string, Said, string, readonly string[] | undefined, readonly string[]]>([
  ['what is open', [DONE], '2:hold:shut', [], ['1']],
  ['nothing open', [DONE, ['1:1', '0.0025', 'A']], '2:hold:shut', undefined, []],
  ['a reading out', [DONE, OUT], '2:hold:shut', ['1:1'], []],
  [
    'a reading out, and accepted',
    [DONE, OUT, ['1:1:accepted', 'it will do', 'B']],
    '2:hold:shut',
    undefined,
    [],
  ],
  [
    'a reading accepted, and read again out',
    [DONE, OUT, ['1:1:accepted', 'it will do', 'B'], ['1:1', '0.0042', 'A']],
    '2:hold:shut',
    ['1:1'],
    [],
  ],
  [
    'a reading put right in its next round',
    [DONE, OUT, ['1:1@2', '0.0025', 'A']],
    '2:hold:shut',
    undefined,
    [],
  ],
  ['a reading out in its next round', [DONE, OUT, ['1:1@2', '0.0041', 'A']], '2:hold:shut', ['1:1@2'], []],
  ['a reading out, at the end of the section', [OUT], 'section:1:done', ['1:1'], []],
  ['what is open, at the end of the section', [], 'section:1:done', undefined, []],
  ['a reading out, at a tick', [OUT], '2:done', undefined, []],
])('with %s, a box is refused: %#', (_, said, key, out, open) => {
  const now = standingAfter(entries(said), form);
  const box = now.form.boxes.find((one) => one.key === key);
  const found = box && obstacleTo(box, now);
  expect([found?.out.map((one) => one.key), found?.open ?? []]).toEqual([out, open]);
});

test('a reading that is out can be accepted, by somebody else', () => {
  const now = standingAfter(entries([OUT]), form);
  const box = now.form.boxes.find((one) => one.kind === 'accept');
  expect(box?.key).toBe('1:1:accepted');
  expect(box && refusal(now.form, now.answers, box, 'a.')).toEqual({why: 'own-reading'});
  expect(box && refusal(now.form, now.answers, box, 'B')).toBeUndefined();
});

// A thousandth of an inch, or a hundredth of a millimetre, is called out as a whole number (common practice, no source).
describe('what may have been meant is said', () => {
  test.each([
    ['3', 'in', 0.0015, 0.0035, '0.003'],
    ['3', 'in', undefined, 0.0035, '0.003'],
    ['12', 'in', 0.01, 0.015, '0.012'],
    ['3', 'mm', undefined, 0.03, '0.03'],
    ['1', 'mm', undefined, 0.03, '0.01'],
    ['35', 'mm', 0.3, 0.45, '0.35'],
    ['7801', 'mm', 78, 78.02, '78.01'],
  ])('%s %s for limits %s to %s', (typed, unit, least, most, hint) => {
    expect(meant(typed, limited(unit, least, most))).toBe(hint);
  });

  test.each([
    ['a decimal', '0.05', 'mm', undefined, 0.03],
    ['a decimal', '0.031', 'mm', undefined, 0.03],
    ['a decimal', '0.3', 'mm', undefined, 0.03],
    ['a decimal', '2.5', 'in', 0.0015, 0.0035],
    ['a decimal', '3.0', 'in', 0.0015, 0.0035],
    ['a decimal', '3.', 'in', 0.0015, 0.0035],
    ['a decimal with a comma', '3,0', 'in', 0.0015, 0.0035],
    ['a sign', '-0.0025', 'in', 0.0015, 0.0035],
    ['a sign', '-3', 'in', 0.0015, 0.0035],
    ['a sign', '+3', 'in', 0.0015, 0.0035],
    ['nought', '0', 'in', 0.0015, 0.0035],
    ['nought in front', '03', 'in', 0.0015, 0.0035],
    ['a value that may well be one', '1', 'mm', undefined, 0.5],
    ['a value that may well be one', '9', 'mm', undefined, 0.5],
    ['a value that may well be one', '2', 'in', undefined, 0.125],
    ['a value that may well be one', '79', 'mm', 78, 78.02],
    ['what is out as divisions too', '4', 'in', 0.0015, 0.0035],
    ['what is out as divisions too', '5', 'mm', undefined, 0.03],
    ['what is out as divisions too', '1', 'in', 0.0015, 0.0035],
    ['a value without an upper limit', '3', 'mm', 10, undefined],
    ['a unit without divisions', '20', 'bar', 0.1, 0.3],
    ['a unit without divisions', '20', '', 0.1, 0.3],
    ['no number', 'x', 'in', 0.0015, 0.0035],
    ['nothing', '', 'in', 0.0015, 0.0035],
  ])('and nothing of %s: %s %s for limits %s to %s', (_, typed, unit, least, most) => {
    expect(meant(typed, limited(unit, least, most))).toBeUndefined();
  });

  test('and never of a reading that is less than twenty times what is allowed', () => {
    const cents = fc.integer({min: 1, max: 5000});
    fc.assert(
      fc.property(
        cents,
        fc.integer({min: 1, max: 99_999}),
        fc.constantFrom('in', 'mm'),
        (most, typed, unit) => {
          const hint = meant(String(typed), limited(unit, undefined, most / 100));
          if (typed < (20 * most) / 100) expect(hint).toBeUndefined();
        },
      ),
    );
  });
});

function limited(unit: string, least: number | undefined, most: number | undefined): ReadingBox {
  const {least: _, most: __, ...open} = reading;
  return {...open, unit, ...(least !== undefined && {least}), ...(most !== undefined && {most})};
}

test.each([
  ['17:05', '2026-03-01 17:05'],
  ['7:05', '2026-03-01 07:05'],
  ['2026-02-28 17:05', '2026-02-28 17:05'],
  ['28.2.2026 17:05', '2026-02-28 17:05'],
  ['', ''],
  ['X', undefined],
  ['17', undefined],
  ['25:00', undefined],
  ['2026-02-30 17:05', undefined],
  ['3/4/2026 17:05', undefined],
])('a time: %j', (text, value) => {
  const typed = typedTime(text, '2026-03-01');
  expect(typed.ok ? typed.value : undefined).toBe(value);
});

function refused(key: string, by: string, said: ReturnType<typeof answers>) {
  const box = boxes.find((one) => one.key === key);
  return box && refusal(form, said, box, by);
}

test.each([
  ['2:hold:shut', 'AB', answers(['1:done', 'done', 'AB']), {why: 'own-work', steps: ['1']}],
  ['2:hold:shut', 'a.b.', answers(['1:1', '0.0025', 'AB']), {why: 'own-work', steps: ['1']}],
  ['2:hold:shut:play', 'AB', answers(['1:done', 'done', 'AB']), {why: 'own-work', steps: ['1']}],
  ['2:hold:shut', 'AB', answers(['1:done', 'done', 'AB'], ['1:done', 'done', 'CD']), undefined],
  ['2:hold:shut', 'AB', answers(['1:done', 'done', 'AB'], ['1:done', '', 'AB']), undefined],
  ['2:hold:shut', 'CD', answers(['1:done', 'done', 'AB']), undefined],
  ['1:done', 'CD', answers(['2:hold:shut', 'done', 'CD']), {why: 'own-hold', hold}],
  ['1:done', 'CD', answers(['2:hold:shut', 'done', 'CD'], ['2:hold:shut', '', 'CD']), undefined],
  ['2:done', 'CD', answers(['2:hold:shut', 'done', 'CD']), undefined],
])('%s by %s: %#', (key, by, said, expected) => {
  expect(refused(key, by, said)).toEqual(expected);
});

test('what is looked at goes by the second person, the step itself does not', () => {
  expect(boxes.map((box) => signedWith(form, box)?.key)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
    hold.key,
    hold.key,
    undefined,
  ]);
});
