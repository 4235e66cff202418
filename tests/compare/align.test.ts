/** The alignment of steps: order kept, each index once, and the anchors and moves that a person would see. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {align} from '../../src/compare/align.js';
import {assign} from '../../src/compare/assign.js';
import {dice, type Features, likeness} from '../../src/compare/likeness.js';

function line(text: string): Features {
  const words = text.split(' ');
  return {deeds: [], words, key: text};
}

const lists = fc
  .array(fc.constantFrom('oil the cap', 'oil the bolt', 'wipe it', 'wipe it dry', 'turn it over'), {
    maxLength: 12,
  })
  .map((texts) => texts.map(line));

describe('align', () => {
  it('rises on both sides and uses no index twice', () => {
    fc.assert(
      fc.property(lists, lists, (a, b) => {
        const pairs = align(a, b);
        for (const [index, [i, j]] of pairs.entries()) {
          const before = pairs[index - 1];
          expect(i).toBeGreaterThan(before?.[0] ?? -1);
          expect(j).toBeGreaterThan(before?.[1] ?? -1);
        }
        expect(pairs.every(([i, j]) => i < a.length && j < b.length)).toBe(true);
      }),
    );
  });

  it('lays a list beside itself', () => {
    fc.assert(
      fc.property(lists, (a) => {
        expect(align(a, a)).toEqual(a.map((_, index) => [index, index]));
      }),
    );
  });

  it('is the longest common run where lines are the same or wholly unlike', () => {
    // Needleman and Wunsch without gap penalty and with matches of equal worth is the longest common subsequence.
    const letters = fc.array(fc.constantFrom('a', 'b', 'c', 'd'), {maxLength: 10});
    fc.assert(
      fc.property(letters, letters, (a, b) => {
        expect(align(a.map(line), b.map(line)).length).toBeGreaterThanOrEqual(anchored(a, b));
        expect(align(a.map(line), b.map(line)).length).toBeLessThanOrEqual(longest(a, b));
      }),
    );
  });

  it.each([
    [
      'a line dropped',
      ['a', 'b', 'c'],
      ['a', 'c'],
      [
        [0, 0],
        [2, 1],
      ],
    ],
    [
      'a line added',
      ['a', 'c'],
      ['a', 'b', 'c'],
      [
        [0, 0],
        [1, 2],
      ],
    ],
    [
      'a line moved',
      ['a', 'b', 'c', 'd'],
      ['b', 'c', 'd', 'a'],
      [
        [1, 0],
        [2, 1],
        [3, 2],
      ],
    ],
    [
      'a line reworded',
      ['a', 'oil the long cap', 'c'],
      ['a', 'oil the cap', 'c'],
      [
        [0, 0],
        [1, 1],
        [2, 2],
      ],
    ],
  ])('%s', (_, a, b, pairs) => {
    expect(align(a.map(line), b.map(line))).toEqual(pairs);
  });
});

/** Lines that stand once on both sides and rise: the anchors alone. */
function anchored(a: readonly string[], b: readonly string[]): number {
  const once = (list: readonly string[], one: string) => list.filter((other) => other === one).length === 1;
  const unique = a.filter((one) => once(a, one) && once(b, one));
  return longest(
    unique,
    b.filter((one) => unique.includes(one)),
  );
}

function longest(a: readonly string[], b: readonly string[]): number {
  const [x, ...restA] = a;
  const [y, ...restB] = b;
  if (x === undefined || y === undefined) return 0;
  return x === y ? 1 + longest(restA, restB) : Math.max(longest(restA, b), longest(a, restB));
}

describe('assign', () => {
  it('takes the most alike first, whatever the order', () => {
    const a = ['oil the cap well', 'wipe it dry now'].map(line);
    const b = ['wipe it dry now then', 'oil the cap'].map(line);
    expect(assign(a, b)).toEqual([
      [1, 0],
      [0, 1],
    ]);
  });

  it('leaves the unlike alone', () => {
    expect(assign([line('oil the cap')], [line('oil the gear wheels and their long shafts too')])).toEqual(
      [],
    );
  });
});

describe('likeness', () => {
  it.each([
    ['nothing in common', ['a'], ['b'], 0],
    ['half', ['a', 'b'], ['b', 'c'], 0.5],
    ['repetitions count', ['a', 'a'], ['a'], 2 / 3],
    ['two of nothing', [], [], 1],
  ])('Dice: %s', (_, a, b, worth) => {
    expect(dice(a, b)).toBeCloseTo(worth, 12);
  });

  it('goes by deeds before words', () => {
    const lock = {deeds: ['lock bolts'], words: ['wire', 'them'], key: '1'};
    expect(likeness(lock, {deeds: ['lock bolts'], words: ['twist', 'it'], key: '2'})).toBeGreaterThan(
      likeness(lock, {deeds: ['torque bolts'], words: ['wire', 'them'], key: '3'}),
    );
  });
});
