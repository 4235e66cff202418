/**
 * Taper and out-of-round worked out from single sizes, from the specification to the report. What they are: common
 * practice, as TM 9-6115-604-34, p. 9-62, states their limits: differences of diameters along and across.
 */
import {describe, expect, test} from 'vitest';
import {askedOfBook} from '../../src/host/asked-of-build.js';
import {book} from '../help/example.js';
import {firstSheet} from '../help/sheet.js';
import {judged, sample, told} from './small.js';

const SHOP = `
shop: {name: Example Works}
sources: {house: {title: Example house notes, note: invented}}
tools:
  micrometers: {gauge: true, resolution: {value: 0.0001 in, source: house}, due: 2026-12-31}
`;

const SIZE = 'at: [front, rear], between: [journals], limits: 2.4990–2.5000 in, using: [micrometers]';
const SHAPE = 'at: [front, rear], between: [journals], limits: max 0.0005 in, using: [micrometers]';

const BOOK = book({
  shop: SHOP,
  engine: `
parts: {shaft: {given: true}}
surfaces: {journals: {on: shaft, at: [front, rear], assembly: clean, size: 2.500 in}}
fits:
  size-one: {name: journal by the web, ${SIZE}}
  size-two: {name: journal by the flange, ${SIZE}}
  size-across: {name: journal across, ${SIZE}}
  taper: {name: taper of the journals, taper-of: [size-one, size-two], ${SHAPE}}
  roundness: {name: out-of-round of the journals, out-of-round-of: [size-one, size-across], ${SHAPE}}
`,
  procedures: {
    '01-sizes.md': `
1. Read them. \`measure: size-one, size-two, size-across using micrometers\`
2. Work out the taper. \`measure: taper\`
3. Work out the roundness. \`measure: roundness\`
`,
  },
});

const ASKED = await askedOfBook(BOOK);

/** Sizes by their boxes: three fits at two places in the first step, then what was written down for each shape. */
const READ: Readonly<Record<string, string>> = {
  'size-one front': '2.4998',
  'size-two front': '2.4994',
  'size-across front': '2.4998',
  'size-one rear': '2.4999',
  'size-two rear': '2.4992',
  'size-across rear': '2.4996',
  'taper front': '0.0004',
  'taper rear': '0.0004',
  'roundness front': '0.0000',
  'roundness rear': '0.0003',
};

function report(more: Readonly<Record<string, string>> = {}) {
  const record = sample(
    {
      answer: (box, usual) =>
        box.kind === 'reading' ? {...READ, ...more}[`${box.item} ${box.place}`] : usual,
    },
    ASKED,
  );
  return judged(record, {asked: ASKED});
}

test('each is the largest less the smallest of its fits, place by place', () => {
  expect(
    report().worked.map(({item, place, smallest, largest, state}) => [item, place, smallest, largest, state]),
  ).toEqual([
    ['taper', 'front', 0.0004, 0.0004, 'in'],
    ['taper', 'rear', 0.0007, 0.0007, 'out'],
    ['roundness', 'front', 0, 0, 'in'],
    ['roundness', 'rear', 0.0003, 0.0003, 'in'],
  ]);
});

test('one that works out beyond its limits is told, whatever was written down', () => {
  const {remarks} = report();
  expect(told(remarks)).toEqual(['works-out-wrong 01-sizes/2']);
  expect(remarks[0]?.message).toBe(
    'taper of the journals, rear: works out at 0.0007 in (largest less smallest of journal by the web 2.4999 in, journal by the flange 2.4992 in); limits at most 0.0005 in, and 0.0004 in was read',
  );
});

test('a place with a size that was not read is not worked out', () => {
  const {worked} = report({'size-two rear': ''});
  expect(worked.map(({item, place}) => `${item} ${place}`)).toEqual([
    'taper front',
    'roundness front',
    'roundness rear',
  ]);
});

describe('the sheet', () => {
  const sheet = firstSheet(BOOK);

  test('says what it is worked out from', () => {
    expect(JSON.stringify(sheet)).toContain(
      '{"label":"Largest less smallest of","text":"journal by the web, journal by the flange"}',
    );
  });

  test('has a blank for it at each place, which the tablet judges by its limits', () => {
    const boxes = ASKED.sheets.flatMap(({form}) => form.boxes).filter((box) => box.kind === 'reading');
    expect(boxes.filter(({item}) => item === 'taper').map(({place, most}) => [place, most])).toEqual([
      ['front', 0.0005],
      ['rear', 0.0005],
    ]);
  });
});
