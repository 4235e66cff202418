/** The time plan against worked cases, and against every path and every order of small random jobs. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import type {Task} from '../../src/trade/task-graph.js';
import {timePlan} from '../../src/trade/time-plan.js';
import {q} from '../help/amount.js';
import {out, refusal, result, valueIn} from './unwrap.js';

/** An invented job: the sump is sealed and cures while the head is built up; then it is filled. */
const JOB: readonly Task[] = [
  {id: 'clean', hands: q('30 min'), after: []},
  {id: 'seal-sump', hands: q('20 min'), wait: q('24 h'), after: ['clean']},
  {id: 'build-head', hands: q('3 h'), after: ['clean']},
  {id: 'fit-head', hands: q('90 min'), after: ['build-head']},
  {id: 'fill', hands: q('10 min'), after: ['seal-sump', 'fit-head']},
];

describe('a worked case, by hand', () => {
  const plan = result(timePlan(JOB));

  test('hands, waits and the earliest finish', () => {
    expect(valueIn(plan.handsOn, 'min')).toBe(330);
    expect(valueIn(plan.waiting, 'h')).toBe(24);
    expect(valueIn(plan.earliest, 'min')).toBe(30 + 20 + 24 * 60 + 10);
    expect(plan.path).toEqual(['clean', 'seal-sump', 'fill']);
  });

  test('slack, and what goes on during the cure', () => {
    const [, seal, head] = plan.tasks;
    expect(valueIn(seal?.slack, 'min')).toBe(0);
    expect(valueIn(head?.slack, 'min')).toBe(20 + 24 * 60 - 270);
    expect(seal?.during).toEqual(['build-head', 'fit-head']);
    expect(head?.during).toEqual([]);
  });

  test('one pair of hands seals first and builds the head meanwhile', () => {
    expect(plan.alone.order).toEqual(['clean', 'seal-sump', 'build-head', 'fit-head', 'fill']);
    expect(valueIn(plan.alone.finish, 'min')).toBe(1500);
    expect(out(timePlan(JOB)).advisory).toContain('estimate');
  });
});

// The usual textbook network (from memory): A3, B4 after A, C2 after A, D5 after B, E1 after C, F2 after D and E; length 14.
test('a textbook network', () => {
  const task = (id: string, days: number, ...after: string[]): Task => ({
    id,
    hands: quantity(days, 'day'),
    after,
  });
  const plan = result(
    timePlan([
      task('A', 3),
      task('B', 4, 'A'),
      task('C', 2, 'A'),
      task('D', 5, 'B'),
      task('E', 1, 'C'),
      task('F', 2, 'D', 'E'),
    ]),
  );
  expect(valueIn(plan.earliest, 'day')).toBe(14);
  expect(plan.path).toEqual(['A', 'B', 'D', 'F']);
  expect(plan.tasks.map(({slack}) => valueIn(slack, 'day'))).toEqual([0, 0, 6, 0, 6, 0]);
});

/** Jobs of up to seven tasks, each waiting only for those before it, so that there is no circle. */
const job = fc
  .array(
    fc.record({
      hands: fc.integer({min: 0, max: 9}),
      wait: fc.integer({min: 0, max: 20}),
      after: fc.array(fc.nat(20), {maxLength: 3}),
    }),
    {
      minLength: 1,
      maxLength: 7,
    },
  )
  .map((tasks) =>
    tasks.map(({hands, wait, after}, index): Task => {
      const before = index === 0 ? [] : [...new Set(after.map((one) => `t${one % index}`))];
      return {id: `t${index}`, hands: quantity(hands, 'min'), wait: quantity(wait, 'min'), after: before};
    }),
  );

const minutes = (of: Task) => valueIn(of.hands, 'min');
const length = (of: Task) => minutes(of) + (of.wait ? valueIn(of.wait, 'min') : 0);

/** The longest of all chains, found by following every one. */
function longestPath(tasks: readonly Task[]): number {
  const from = (id: string): number => {
    const own = tasks.find((task) => task.id === id);
    const behind = tasks.filter((task) => task.after.includes(id)).map((task) => from(task.id));
    return (own ? length(own) : 0) + Math.max(0, ...behind);
  };
  return Math.max(...tasks.map((task) => from(task.id)));
}

/** The best finish of one pair of hands, found by trying every order. */
function bestAlone(tasks: readonly Task[]): number {
  let best = Infinity;
  const go = (done: ReadonlyMap<string, number>, now: number, finish: number): void => {
    if (finish >= best) return;
    if (done.size === tasks.length) best = finish;
    for (const task of tasks) {
      const ends = task.after.map((id) => done.get(id));
      if (done.has(task.id) || ends.includes(undefined)) continue;
      const start = Math.max(now, ...ends.map((end) => end ?? 0));
      const end = start + length(task);
      go(new Map([...done, [task.id, end]]), start + minutes(task), Math.max(finish, end));
    }
  };
  go(new Map(), 0, 0);
  return best;
}

describe('by brute force', () => {
  test('the earliest finish is the longest of all chains, and the path is one of that length', () => {
    fc.assert(
      fc.property(job, (tasks) => {
        const plan = result(timePlan(tasks));
        expect(valueIn(plan.earliest, 'min')).toBeCloseTo(longestPath(tasks), 6);
        const along = plan.path.map((id) => tasks.find((task) => task.id === id));
        expect(along.reduce((sum, task) => sum + (task ? length(task) : Number.NaN), 0)).toBeCloseTo(
          longestPath(tasks),
          6,
        );
        for (const [index, task] of along.entries())
          if (index > 0) expect(task?.after).toContain(along[index - 1]?.id);
      }),
    );
  });

  test('the best order of one pair of hands lies in the band, and the order given can be followed', () => {
    fc.assert(
      fc.property(job, (tasks) => {
        const worked = out(timePlan(tasks));
        const value = worked.band?.value;
        if (value === undefined || typeof value === 'string' || !('form' in value) || value.form !== 'range')
          throw new Error('no band');
        const best = bestAlone(tasks);
        expect(valueIn(value.low, 'min')).toBeLessThanOrEqual(best + 1e-6);
        expect(valueIn(value.high, 'min')).toBeGreaterThanOrEqual(best - 1e-6);
        const {order} = worked.result.alone;
        expect([...order].sort()).toEqual(tasks.map(({id}) => id).sort());
        for (const task of tasks)
          for (const before of task.after) expect(order.indexOf(before)).toBeLessThan(order.indexOf(task.id));
      }),
    );
  });

  test('a task moved later by its slack does not put off the finish; by more it does', () => {
    fc.assert(
      fc.property(job, fc.nat(6), (tasks, pick) => {
        const plan = result(timePlan(tasks));
        const at = pick % tasks.length;
        const slack = valueIn(plan.tasks[at]?.slack, 'min');
        const delayed = (by: number) =>
          tasks.map((task, index) =>
            index === at ? {...task, hands: quantity(minutes(task) + by, 'min')} : task,
          );
        expect(longestPath(delayed(slack))).toBeCloseTo(longestPath(tasks), 6);
        expect(longestPath(delayed(slack + 1))).toBeCloseTo(longestPath(tasks) + 1, 6);
      }),
    );
  });

  test('what may go on during a wait is tied to it neither way', () => {
    const leads = (tasks: readonly Task[], from: string, to: string): boolean =>
      tasks.some((task) => task.id === to && task.after.some((id) => id === from || leads(tasks, from, id)));
    fc.assert(
      fc.property(job, (tasks) => {
        for (const {id, during} of result(timePlan(tasks)).tasks) {
          const own = tasks.find((task) => task.id === id);
          const waits = own?.wait !== undefined && own.wait.value > 0;
          const free = tasks.filter(
            (task) => task.id !== id && !leads(tasks, id, task.id) && !leads(tasks, task.id, id),
          );
          expect(during).toEqual(waits ? free.map((task) => task.id) : []);
        }
      }),
    );
  });

  test('the order in which the tasks are written does not matter', () => {
    fc.assert(
      fc.property(job, (tasks) => {
        const [one, other] = [result(timePlan(tasks)), result(timePlan([...tasks].reverse()))];
        expect(valueIn(other.earliest, 'min')).toBeCloseTo(valueIn(one.earliest, 'min'), 9);
        expect(valueIn(other.handsOn, 'min')).toBeCloseTo(valueIn(one.handsOn, 'min'), 9);
      }),
    );
  });
});

test('a long chain of tasks does not run out of stack', () => {
  const tasks = Array.from(
    {length: 20_000},
    (_, index): Task => ({
      id: `t${index}`,
      hands: quantity(1, 'min'),
      after: index === 0 ? [] : [`t${index - 1}`],
    }),
  );
  expect(valueIn(result(timePlan(tasks)).earliest, 'min')).toBe(20_000);
});

test.each([
  ['no task', [], 'no task'],
  ['a circle', [task('a', 'b'), task('b', 'a'), task('c')], 'wait for each other: a, b'],
  ['itself', [task('a', 'a')], 'wait for each other: a'],
  ['twice', [task('a'), task('a')], 'a is there twice'],
  ['an unknown one', [task('seal'), task('fill', 'sael')], 'which is no task'],
  ['a length', [{id: 'a', hands: q('1 in'), after: []}], 'a length'],
  ['before the start', [{id: 'a', hands: q('-1 min'), after: []}], 'nought or more'],
])('%s is refused', (_, tasks: readonly Task[], says) => {
  const refused = refusal(timePlan(tasks));
  expect(refused.says).toContain(says);
  if (says === 'which is no task') expect(refused.hint).toBe('did you mean seal?');
});

function task(id: string, ...after: string[]): Task {
  return {id, hands: quantity(1, 'h'), after};
}
