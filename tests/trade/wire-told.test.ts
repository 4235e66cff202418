/**
 * Figures of wire, cotter pins and the places of fasteners, line for line, and what they say where they refuse. By hand,
 * or by the table that the row names.
 */
import {describe, expect, test} from 'vitest';
import {cotterSuits} from '../../src/trade/cotter-pin.js';
import {wireSuits} from '../../src/trade/safety-wire.js';
import {wireLength} from '../../src/trade/wire-run.js';
import {q} from '../help/amount.js';
import {asked, askedAlone, refused, type Texts, told} from './ask.js';
import {out} from './unwrap.js';

const WIRE = {count: '4', wire: '0.032 in'};

const TOLD: readonly (readonly [subject: string, texts: Texts, lines: readonly string[], by: string])[] = [
  ['tightening-order', {layout: 'row  5'}, ['order: 3, 2, 4, 1, 5', 'pattern: outwards'], 'from the middle'],
  [
    'tightening-order',
    {layout: 'grid 1x12'},
    ['order: 6, 7, 5, 8, 4, 9, 3, 10, 2, 11, 1, 12', 'pattern: outwards'],
    'the same',
  ],
  [
    'tightening-order',
    {layout: 'front: 0 0; rear:0 40 ; mid:  0 20.25'},
    ['order: mid, rear, front', 'pattern: outwards'],
    'the same',
  ],
  [
    'cotter-pin',
    {thread: '#10-32'},
    ['take: 1/16 in', 'least for the bolt: 1/16 in'],
    'AN310; no slot is tabled, and so no largest',
  ],
  [
    'cotter-pin',
    {thread: '7/16-20'},
    ['take: 3/32 in', 'least for the bolt: 3/32 in', 'largest that goes in: 7/64 in'],
    'AN310; a slot of 0.12 in, ASME B18.2.2',
  ],
  [
    'cotter-pin',
    {hole: '0.5 in', slot: '3/32 in'},
    ['take: 3/32 in', 'largest that goes in: 3/32 in'],
    'as wide as the slot',
  ],
  [
    'cotter-pin',
    {hole: '0.1085 in'},
    ['take: 3/32 in', 'largest that goes in: 3/32 in'],
    'ASME B18.8.1: 0.109 in, read to a thousandth',
  ],
  [
    'wire-run',
    {...WIRE, spacing: '4 in', head: '2 in'},
    ['in one run, at most: 3', 'runs: 2'],
    'TM 10-3930-659-34, 2-22: at 4 in by the count, not by the wire',
  ],
  [
    'wire-run',
    {...WIRE, count: '1000', spacing: '0.001 in'},
    ['in one run, at most: 1000', 'runs: 1'],
    'none counts farther',
  ],
  [
    'wire-run',
    {...WIRE, count: '15', spacing: '1.75 in', twist: 'single'},
    ['in one run, at most: 14', 'runs: 2'],
    '13 · 1.75 + 2 · 0.625 = 24 in of wire, the most',
  ],
];

test.each(TOLD)('%s %j', (subject, texts, lines) => expect(told(askedAlone(subject, texts))).toEqual(lines));

const REFUSED: readonly (readonly [subject: string, texts: Texts, says: string])[] = [
  [
    'cotter-pin',
    {hole: '0.1 in', slot: '0.01 in'},
    'no cotter pin goes in a slot of 0.01 in; the thinnest is 1/32 in',
  ],
  [
    'cotter-pin',
    {hole: '0.01 in', slot: '0.01 in'},
    'no cotter pin goes in a hole of 0.01 in; the smallest takes 0.047 in',
  ],
  ...(
    [
      ['grid 3 x 0', 'grid 3 x 0', 'layout'],
      ['grid 400x2', 'grid 400x2', 'layout'],
      ['row 3 x 2', 'row 3 x 2', 'layout'],
      ['grid 00000000000000000000000000000003', 'grid 0000000000000000000000000', 'layout'],
      ['left front: 0 0', 'left front: 0 0', 'place of a fastener'],
      ['a: 0 0mm', 'a: 0 0mm', 'place of a fastener'],
      [
        'a: 0 0; this is no place of a fastener at all',
        'this is no place of a fastener',
        'place of a fastener',
      ],
    ] as const
  ).map(
    ([layout, shown, what]) =>
      [
        'tightening-order',
        {layout},
        `--layout: "${shown}" is no ${what}; write row 6, grid 2×5, circle 8, or a: 0 0; b: 40 0; c: 40 25`,
      ] as const,
  ),
];

test.each(REFUSED)('%s %j is refused', (subject, texts, says) =>
  expect(refused(asked(subject, texts))).toBe(says),
);

test('four hundred fasteners of a grid are taken', () => {
  expect(told(askedAlone('tightening-order', {layout: 'grid 20x20'}))[0]?.split(', ')).toHaveLength(400);
});

describe('wire', () => {
  const span = {wire: q('0.032 in'), twist: 'single'} as const;
  const spans = (count: number) => Array.from({length: count}, () => q('1.75 in'));

  test('24 in of wire is no more than the manual lets a run take', () => {
    expect(out(wireLength({spans: spans(13), ...span})).advisory).toBe('Add what the pliers hold.');
    expect(out(wireLength({spans: spans(14), ...span})).advisory).toBe(
      'Add what the pliers hold. More than 24 in: split the run.',
    );
  });

  test.each([
    [[], 'the run has no span; give the distance from hole to hole'],
    [[q('2 in'), q('2 kg')], 'span 2 is a mass (kg) where a length is due; write it in in or mm'],
  ])('%j', (given, says) => expect(refused(wireLength({spans: given, ...span}))).toBe(says));

  // A thousandth of an inch is let pass, two for a cotter pin; what is off by just that suits, whatever its last bits say.
  test.each([
    ['0.014 in', '0.015 in', 'suits'],
    ['0.0139 in', '0.015 in', 'too thin'],
    ['0.031 in', '0.032 in', 'suits'],
    ['0.021 in', '0.020 in', 'suits'],
    ['0.033 in', '0.032 in', 'suits'],
    ['0.0331 in', '0.032 in', 'too thick'],
  ])('a wire of %s for one of %s: %s', (wire, due, says) => {
    expect(wireSuits(q(wire), {least: q(due), most: q(due)})).toBe(says);
  });

  test.each([
    ['0.123 in', '1/8 in', 'suits'],
    ['0.1229 in', '1/8 in', 'too thin'],
    ['0.127 in', '1/8 in', 'suits'],
    ['0.1271 in', '1/8 in', 'too thick'],
    ['0.0605 in', '1/16 in', 'suits'],
    ['0.0645 in', '1/16 in', 'suits'],
  ])('a cotter pin of %s for one of %s: %s', (pin, size, says) => {
    const due = q(size);
    expect(cotterSuits(q(pin), {least: due, most: due, take: due})).toBe(says);
  });
});
