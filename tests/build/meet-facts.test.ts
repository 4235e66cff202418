/** Two ways come together: how much of a fact may be counted on, whichever of them was taken. */
import {expect, it} from 'vitest';
import type {Detail, Fact, FactKind} from '../../src/build/facts.js';
import {meetFacts} from '../../src/build/meet-facts.js';

const IDS = (...ids: string[]): Detail => ({ids});
const LACKS = (ids: string[], ...lacks: string[]): Detail => ({ids, lacks});
const FOUND = (message: string) => ({where: {file: 'a.md', span: {start: 0, end: 0}}, message});
const [ONE, TWO] = [FOUND('one'), FOUND('two')];

type Row = readonly [
  title: string,
  kind: FactKind,
  here: Detail | undefined,
  there: Detail | undefined,
  /** Undefined where nothing is lost: it is the same object then. */
  met: Detail | undefined,
];

it.each<Row>([
  ['both locks on either way', 'locked', IDS('tab', 'wire'), IDS('wire', 'tab'), undefined],
  ['one lock on both ways', 'locked', IDS('tab', 'wire'), LACKS(['tab'], 'wire'), LACKS(['tab'], 'wire')],
  ['one on this way, both on the other', 'locked', LACKS(['tab'], 'wire'), IDS('tab', 'wire'), undefined],
  ['another on each', 'locked', LACKS(['tab'], 'wire'), LACKS(['wire'], 'tab'), LACKS([], 'wire', 'tab')],
  ['the same lack on both', 'locked', LACKS(['tab'], 'wire'), LACKS(['tab'], 'wire'), undefined],
  ['more locks here than anybody asked for', 'locked', IDS('tab', 'wire'), IDS('tab'), IDS('tab')],
  ['locks that no tag names, here', 'locked', undefined, IDS('tab'), undefined],
  ['locks that no tag names, there', 'locked', IDS('tab'), undefined, IDS()],
  ['locks that no tag names, on both', 'locked', undefined, undefined, undefined],
  ['something lacking there only', 'locked', undefined, LACKS([], 'wire'), LACKS([], 'wire')],
  ['nothing but what lacks', 'locked', IDS('tab'), {lacks: ['wire']}, LACKS([], 'wire')],
  ['alterations of both', 'altered', IDS('relieve', 'drill'), IDS('drill'), IDS('drill')],
  ['the same alterations', 'altered', IDS('drill'), IDS('drill'), undefined],
  ['another lubricant there', 'lubed', IDS('grease'), IDS('oil'), undefined],
  ['final on both', 'tight', {final: true}, {final: true}, undefined],
  ['final here only', 'tight', {final: true}, {final: false}, {final: false}],
  ['final there only', 'tight', {final: false}, {final: true}, undefined],
])('%s', (_, kind, before, after, met) => {
  const here: Fact = {kind, holds: true, ...(before && {detail: before})};
  const there: Fact = {kind, holds: true, ...(after && {detail: after})};
  const result = meetFacts(here, there);
  if (met === undefined) expect(result).toBe(here);
  else expect(result).toEqual({kind, holds: true, detail: met});
});

it('final here, and no more known of the other way', () => {
  const there: Fact = {kind: 'tight', holds: true};
  expect(meetFacts({kind: 'tight', holds: true, detail: {final: true}}, there)).toEqual(there);
});

it('a fact that does not hold on one way does not hold, with the story of that way and none of the faults', () => {
  const holds: Fact = {kind: 'installed', holds: true, faults: [ONE]};
  const undone: Fact = {kind: 'installed', holds: false};
  const never: Fact = {holds: false};
  expect(meetFacts(undone, holds)).toBe(undone);
  expect(meetFacts(holds, undone)).toBe(undone);
  expect(meetFacts(undone, never)).toBe(undone);
});

it('the faults of both ways count, each once, with the weaker fact', () => {
  const fact = (faults: Fact['faults'], final: boolean): Fact => ({
    kind: 'tight',
    holds: true,
    detail: {final},
    ...(faults && {faults}),
  });
  expect(meetFacts(fact([ONE], true), fact([TWO, ONE], false))).toEqual(fact([ONE, TWO], false));
  expect(meetFacts(fact(undefined, true), fact([TWO], true))).toEqual(fact([TWO], true));
  expect(meetFacts(fact([ONE], true), fact(undefined, false))).toEqual(fact([ONE], false));
  const here = fact([ONE, TWO], true);
  expect(meetFacts(here, fact([TWO], true))).toBe(here);
});
