/** One pair of hands: what it takes up next, and how a person writes the tasks; orders found by hand. */
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {byOneInTurn} from '../../src/trade/one-in-turn.js';
import type {Task} from '../../src/trade/task-graph.js';
import {timePlan} from '../../src/trade/time-plan.js';
import {asked, askedAlone, refused, told} from './ask.js';
import {result} from './unwrap.js';

function task(id: string, hands: number, wait: number, ...after: string[]): Task {
  return {id, hands: quantity(hands, 'min'), wait: quantity(wait, 'min'), after};
}

const SEAL = task('seal', 10, 1440);
const FILL = task('fill', 10, 6000, 'seal');

describe('the longest chain first, of what may start', () => {
  test.each([
    ['the longer chain, whatever stands first', [task('tidy', 5, 0), SEAL], 'seal tidy'],
    ['of two that are alike, the first', [task('left', 5, 0), task('right', 5, 0)], 'left right'],
    [
      'what may start, before the longer chain that may not yet',
      [SEAL, task('head', 180, 0), FILL, task('tidy', 5, 0)],
      'seal head tidy fill',
    ],
    [
      'the same where the longer chain stands first',
      [SEAL, FILL, task('head', 180, 0), task('bolt', 5, 0, 'head')],
      'seal head bolt fill',
    ],
    [
      'what has been ready for a while is as good as what has been for longer',
      [task('crank', 50, 0), task('caps', 10, 0, 'crank'), task('cover', 50, 0), task('tidy', 5, 0)],
      'crank cover caps tidy',
    ],
  ])('%s', (_, tasks, order) => expect(result(timePlan(tasks)).alone.order.join(' ')).toBe(order));
});

describe('in the order given, of what may start', () => {
  test.each([
    [
      'the first, however long another has been ready',
      [task('crank', 10, 0), task('caps', 5, 0, 'crank'), task('tidy', 5, 0)],
      'crank caps tidy',
    ],
    [
      'the first that is ready just now',
      [
        task('crank', 10, 0),
        task('seal', 5, 5),
        task('caps', 5, 0, 'seal'),
        task('sump', 5, 5, 'crank'),
        task('tidy', 5, 0),
      ],
      'crank seal sump caps tidy',
    ],
    [
      'where all have to wait, what is ready soonest',
      [task('one', 1, 30), task('two', 1, 90), task('a', 5, 0, 'one'), task('b', 5, 0, 'two')],
      'one two a b',
    ],
    [
      'and of two that are ready together the first',
      [task('one', 1, 31), task('two', 1, 30), task('a', 5, 0, 'one'), task('b', 5, 0, 'two')],
      'one two a b',
    ],
  ])('%s', (_, tasks, order) => expect(byOneInTurn(tasks).order.join(' ')).toBe(order));
});

const NO_TIME =
  '"soon" does not start with a number; write a value as 85 lbf·ft, 0.0015–0.0025 in, 2.4995 ±0.0005 in, +0.001/-0.000 or max 5 lbf·ft';

describe('as it is written', () => {
  test('blanks more or less make no difference', () => {
    const task = [
      ' seal : 20 min , wait 1 1/2 h',
      'head: 3 h',
      'fill: 10 min, after  seal  and  head',
      'tidy: 5 min',
    ];
    expect(told(askedAlone('time-plan', {task}))).toEqual([
      'hands-on time: 3.6 h',
      'waits: 90 min',
      'earliest finish: 3.2 h',
      'which hangs on: head, fill',
      'with one pair of hands: 5.0 h',
      'in the order: head, seal, tidy, fill',
      'while seal waits: head, tidy',
    ]);
  });

  test.each([
    ['20 min', 'the task has no name; write it as seal: 20 min, wait 24 h, after clean'],
    [' : 20 min', 'the task has no name; write it as seal: 20 min, wait 24 h, after clean'],
    ['seal: 20 min, after', '"after" names no task; write after NAME, or after NAME and NAME'],
    ['seal: 20–30 min', 'a task takes one time; write 20 min'],
    ['seal: 20 min, wait 20–30 min', 'a task takes one time; write 20 min'],
    ['seal: soon', NO_TIME],
    ['seal: 20 min, wait soon', NO_TIME],
  ])('"%s" is refused', (task, says) => expect(refused(asked('time-plan', {task}))).toBe(`--task: ${says}`));
});
