/** The form of a sheet: every box once, by a key that says where it stands, with what a reading is judged by. */

import {describe, expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import type {Box, Form} from '../../src/build/form.js';
import {formOf} from '../../src/sheet/form.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {book} from '../help/example.js';
import {FINGERPRINT, firstSheet} from '../help/sheet.js';
import {hardBook, hostileBook} from './hard.js';
import {trialBook} from './trial.js';

function formFor(made: Book, job?: string): Form {
  return formOf(firstSheet(made, {...(job && {job})}));
}

const trial = formFor(trialBook);

test.each([
  ['the trial sheet', trialBook],
  ['the hard sheet', hardBook],
  ['the hostile sheet', hostileBook],
])('every box of %s stands in its HTML once', (_, made) => {
  const sheet = firstSheet(made);
  const written = [...sheetHtml(sheet).matchAll(/ data-box="([^"]*)"/g)].map(([, key]) => key);
  expect(written.sort()).toEqual(
    formOf(sheet)
      .boxes.map(({key}) => key)
      .sort(),
  );
});

function boxAt(form: Form, key: string): Box {
  const box = form.boxes.find((one) => one.key === key);
  if (box === undefined) throw new Error(`no box ${key}: ${form.boxes.map((one) => one.key).join(' ')}`);
  return box;
}

describe.each([
  ['the trial sheet', trial],
  ['the hard sheet', formFor(hardBook)],
  ['the hostile sheet', formFor(hostileBook)],
])('%s', (_, form) => {
  test('has no key twice', () => {
    const keys = form.boxes.map(({key}) => key);
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  });

  test('looks back to boxes that there are', () => {
    const keys = new Set(form.boxes.map(({key}) => key));
    const named = form.boxes.flatMap((box) => [
      ...(box.kind === 'hold' ? box.not : []),
      ...box.onlyIf.flatMap(({boxes}) => boxes),
    ]);
    expect(named.filter((key) => !keys.has(key))).toEqual([]);
  });
});

test('says what is followed', () => {
  const {boxes, ...head} = formFor(trialBook, '1047');
  expect(head).toEqual({
    engine: 'example',
    procedure: '03-camshaft',
    title: 'Camshaft, crankshaft and head',
    revision: 'C',
    fingerprint: FINGERPRINT,
    job: '1047',
  });
  expect(boxes.length).toBeGreaterThan(100);
});

test.each([
  ['1:done', {kind: 'tick', step: '1', label: 'Read the engine number off the block and write it down.'}],
  ['1:1', {kind: 'line', item: 'engine-number', label: 'Write down engine number'}],
  ['2:1:second', {kind: 'tick', label: 'Clean camshaft bores, second'}],
  ['9:1:2:rear', {kind: 'tick', label: 'Torque main cap bolts, Pass 2, rear'}],
  ['16:1:4:inlet-3', {kind: 'tick', label: 'Torque head bolts, Then turn, inlet 3'}],
  ['20:1:started', {kind: 'time', item: 'sump-joint'}],
  ['before:tools:1', {kind: 'tick', step: ''}],
  ['section:2:done', {kind: 'tick', label: 'Section done: Camshaft'}],
  ['closing:checked', {kind: 'hold', not: ['closing:built']}],
])('%s is asked for', (key, expected) => {
  expect(boxAt(trial, key)).toMatchObject(expected);
});

test('readings have limits in the unit that they are written in', () => {
  expect(boxAt(trial, '10:1:front')).toEqual({
    kind: 'reading',
    key: '10:1:front',
    step: '10',
    onlyIf: [],
    label: 'Measure main clearance, front',
    item: 'main-clearance',
    place: 'front',
    unit: 'in',
    least: 0.0015,
    most: 0.0035,
  });
});

test('a branch is called for by the readings of its item', () => {
  const places = ['front', 'second', 'centre', 'fourth', 'rear'];
  const boxes = places.map((place) => `10:1:${place}`);
  expect(boxAt(trial, '10b:done').onlyIf).toEqual([{item: 'main-clearance', is: 'out', boxes}]);
  expect(boxAt(trial, '10:done').onlyIf).toEqual([]);
});

test('a way back brings every box between round again, and its own', () => {
  const box = boxAt(trial, '10b:done');
  const {to, boxes} = (box.kind === 'tick' && box.goesBack) || {to: '', boxes: []};
  expect(to).toBe('7');
  expect([...new Set(boxes.map((key) => key.split(':')[0]))]).toEqual(['7', '8', '9', '10', '10a', '10b']);
  expect(trial.boxes.filter((one) => one.kind === 'tick' && one.goesBack !== undefined)).toEqual([box]);
});

test('the end of a section and of the sheet vouch for what is before them', () => {
  const ends = trial.boxes.flatMap((box) => ('ends' in box ? [[box.key, box.ends]] : []));
  expect(ends).toEqual([
    ['section:2:done', 'section'],
    ['section:3:done', 'section'],
    ['section:4:done', 'section'],
    ['closing:complete', 'sheet'],
    ['closing:built', 'sheet'],
    ['closing:checked', 'sheet'],
  ]);
});

test.each([
  ['cure: gap for 4 h', 240],
  ['cure: gap for 1–2 day', 1440],
  ['cure: gap', 720],
  ['cure: open-gap', undefined],
])('the times of %s', (tag, minutes) => {
  const made = book({
    shop: `
shop: {name: Example Works}
sources: {house: {title: notes, note: invented}}
consumables:
  goo: {use: sealant, cure: {value: 12 h, source: house}}
  grease: {use: sealant}
`,
    engine: 'joints:\n  gap: {seal: [goo]}\n  open-gap: {seal: [grease]}\n',
    procedures: {'one.md': `\n1. Leave it. \`${tag}\`\n`},
  });
  const form = formFor(made);
  expect(boxAt(form, '1:1:started')).toMatchObject({kind: 'time'});
  const finished = boxAt(form, '1:1:finished');
  expect(finished).toMatchObject({kind: 'time', since: '1:1:started'});
  expect(finished.kind === 'time' && finished.minutes).toBe(minutes);
});

test('a hold point is signed by nobody who worked on what it asks for', () => {
  const hold = boxAt(trial, '13:hold:bottom-end-closed');
  expect(hold).toMatchObject({kind: 'hold', item: 'bottom-end-closed', by: 'shop lead'});
  const not = hold.kind === 'hold' ? hold.not : [];
  const steps = new Set(not.map((key) => key.split(':')[0]));
  // Bolts at 9, 11 and 12, the clearance at 8 and 10, the check at 13, where it is signed.
  expect([...steps]).toEqual(['8', '9', '10', '11', '12', '13']);
  expect(not.filter((key) => key.includes(':hold:'))).toEqual([]);
});

const GAUGES = `
shop: {name: Example Works, units: inch}
sources: {house: {title: notes, note: invented}}
tools:
  dial: {gauge: true, resolution: 0.001 in, source: house}
  fine: {gauge: true, resolution: 0.0001 in, accuracy: ±0.0002 in, source: house}
  metric: {gauge: true, accuracy: ±0.01 mm, source: house}
  classed: {gauge: true, accuracy: class 2, source: house}
`;

// Half of the smallest division, or the stated accuracy where that is more; 0.01 mm are 0.00039 in.
test.each([
  ['using dial', 0.0005],
  ['using fine', 0.0002],
  ['using metric', 0.000393700787402],
  ['using classed', undefined],
  ['', 0.0005],
])('the doubt of a reading %s', (clause, doubt) => {
  const made = book({
    shop: GAUGES,
    engine: 'fits:\n  play: {limits: 0.004–0.007 in, using: [fine, dial]}\n',
    procedures: {'one.md': `\n1. Read it. \`measure: play ${clause}\`\n`},
  });
  expect(boxAt(formFor(made), '1:1')).toMatchObject(doubt === undefined ? {least: 0.004} : {doubt});
  expect('doubt' in boxAt(formFor(made), '1:1')).toBe(doubt !== undefined);
});

// A nought at the end says how finely a limit is meant.
test.each([
  ['0.020–0.050 mm', 3],
  ['max 0.050 mm', 3],
  ['0.02–0.050 mm', 3],
  ['max 2.0 mm', 1],
  ['0.021–0.050 mm', undefined],
  ['0.02–0.05 mm', undefined],
  ['1–2 mm', undefined],
  ['1/2–3/4 in', undefined],
])('limits of %s are stated with so many figures behind the point: %s', (limits, figures) => {
  const units = limits.endsWith('mm') ? 'metric' : 'inch';
  const made = book({
    shop: GAUGES.replace('units: inch', `units: ${units}`),
    engine: `fits:\n  play: {limits: ${limits}}\n`,
    procedures: {'one.md': '\n1. Read it. `measure: play`\n'},
  });
  expect(boxAt(formFor(made), '1:1')).toHaveProperty('kind', 'reading');
  expect(boxAt(formFor(made), '1:1')).toMatchObject(figures === undefined ? {} : {figures});
  expect('figures' in boxAt(formFor(made), '1:1')).toBe(figures !== undefined);
});

test('limits with one end, of one value, and unknown', () => {
  const made = book({
    engine:
      'fits:\n  taper: {limits: max 0.001 in}\n  mid: {limits: 0.5 in}\n  lost: {limits: unknown}\n  wide: {limits: 40–50 µm}\n',
    procedures: {
      'one.md':
        '\n1. Read. `measure: taper`\n2. Read. `measure: mid`\n3. Read. `measure: lost`\n4. Read. `measure: wide`\n',
    },
  });
  const form = formFor(made);
  const bounds = ['1:1', '2:1', '3:1', '4:1'].map((key) => {
    const box = boxAt(form, key);
    return box.kind === 'reading' ? [box.unit, box.least, box.most] : [];
  });
  expect(bounds).toEqual([
    ['in', undefined, 0.001],
    ['in', undefined, undefined],
    ['', undefined, undefined],
    ['in', 0.00157480314961, 0.00196850393701],
  ]);
});

// A run-out, a taper or a gap; what may be under flush has limits at both ends.
test.each([
  ['max 0.001 in', true],
  ['max 0.03 mm', true],
  ['max 0 mm', true],
  ['0.004–0.007 in', undefined],
  ['0 ±0.05 mm', undefined],
  ['min 0.2 mm', undefined],
  ['0.5 in', undefined],
  ['max 90 °C', undefined],
  ['max 2 bar', undefined],
])('a reading of %s is from nought: %s', (limits, fromNought) => {
  const made = book({
    engine: `fits:\n  play: {limits: ${limits}}\n`,
    procedures: {'one.md': '\n1. Read. `measure: play`\n'},
  });
  const box = boxAt(formFor(made), '1:1');
  expect(box.kind === 'reading' && box.fromNought).toBe(fromNought);
});

test('what the job says must stand on the engine', () => {
  const made = book({
    engine: 'marks:\n  engine-number: {stamped: block}\n',
    procedures: {'one.md': '\n1. Read it. `record: engine-number`\n'},
    job: 'marks: {engine-number: OM-4711}\n',
  });
  expect(boxAt(formFor(made), '1:1')).toMatchObject({kind: 'line', expected: 'OM-4711'});
});
