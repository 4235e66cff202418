/** One pair of hands that keeps to the order given: hand-worked cases, and what must hold for any tasks. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {quantity, si} from '../../src/quantity/convert.js';
import {byOneInTurn} from '../../src/trade/one-in-turn.js';
import type {Task} from '../../src/trade/task-graph.js';
import {timePlan} from '../../src/trade/time-plan.js';
import {result} from './unwrap.js';

function task(id: string, hands: number, wait: number, ...after: string[]): Task {
  return {id, hands: quantity(hands, 'min'), wait: quantity(wait, 'min'), after};
}

describe('worked by hand', () => {
  it.each([
    [
      'goes on while something cures',
      [task('seal', 10, 60), task('fill', 5, 0, 'seal'), task('head', 20, 0)],
      75,
      'seal head fill',
    ],
    [
      'waits where there is nothing else',
      [task('seal', 10, 60), task('fill', 5, 0, 'seal')],
      75,
      'seal fill',
    ],
    [
      'takes up first what is ready first',
      [task('a', 1, 90), task('b', 1, 30), task('c', 5, 0, 'a'), task('d', 5, 0, 'b')],
      96,
      'a b d c',
    ],
    ['keeps the order of what is free', [task('a', 1, 0), task('b', 99, 0), task('c', 1, 0)], 101, 'a b c'],
    ['counts the last wait', [task('a', 10, 60), task('b', 10, 0)], 70, 'a b'],
    ['does nothing at all', [], 0, ''],
  ])('%s', (_, tasks, minutes, order) => {
    const {finish, order: done} = byOneInTurn(tasks);
    expect([finish.value, done.join(' ')]).toEqual([minutes, order]);
  });

  it('ends where tasks wait for each other', () => {
    expect(byOneInTurn([task('a', 1, 0, 'b'), task('b', 1, 0, 'a')]).order).toEqual(['a', 'b']);
  });
});

it('takes each task once, after all that it waits for, and no less than the longest chain or all the work', () => {
  const tasks = fc
    .array(fc.tuple(fc.nat(50), fc.nat(50), fc.array(fc.nat(7), {maxLength: 3})), {
      minLength: 1,
      maxLength: 8,
    })
    .map((list) =>
      list.map(([hands, wait, after], at) =>
        task(`${at}`, hands, wait, ...new Set(after.filter((one) => one < at).map(String))),
      ),
    );
  fc.assert(
    fc.property(tasks, (list) => {
      const {finish, order} = byOneInTurn(list);
      expect([...order].sort()).toEqual(list.map(({id}) => id).sort());
      for (const {id, after} of list)
        for (const one of after) expect(order.indexOf(one)).toBeLessThan(order.indexOf(id));
      const {earliest, handsOn, waiting} = result(timePlan(list));
      const least = Math.max(si(earliest), si(handsOn));
      expect(si(finish)).toBeGreaterThanOrEqual(least - 1e-6);
      expect(si(finish)).toBeLessThanOrEqual(si(handsOn) + si(waiting) + 1e-6);
    }),
  );
});
