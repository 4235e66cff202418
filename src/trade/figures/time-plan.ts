/** Figure: how long a job takes, with its cures. */
import type {Quantity} from '../../quantity/model.js';
import {figure} from '../figure.js';
import {type Read, readAmountOf, repeated, text} from '../figure-options.js';
import type {Task} from '../task-graph.js';
import {type TimePlan, timePlan} from '../time-plan.js';
import {mapped, type Named, refused} from '../worked.js';

export const timePlanFigure = figure({
  name: 'time-plan',
  says: 'how long a job takes: work, waits for cures, earliest finish, and what goes on during a cure',
  options: {
    task: repeated(
      text(
        'NAME: time of work, wait TIME, after NAME and NAME',
        'a task',
        'seal: 20 min, wait 24 h',
        readTask,
      ),
      'head: 3 h',
      'fill: 10 min, after seal and head',
    ),
  },
  work: ({task}) => mapped(timePlan(task), tell),
});

function readTask(given: string): Read<Task> {
  const colon = given.indexOf(':');
  const id = given.slice(0, Math.max(colon, 0)).trim();
  if (id === '') return refused('the task has no name', 'write it as seal: 20 min, wait 24 h, after clean');
  const [work = '', ...clauses] = given.slice(colon + 1).split(',');
  const hands = readTime(work);
  if (!hands.ok) return hands;
  let wait: Quantity | undefined;
  let after: readonly string[] = [];
  for (const clause of clauses.map((one) => one.trim())) {
    const [first = '', ...rest] = clause.split(/\s+/);
    if (first === 'after') {
      if (rest.length === 0)
        return refused('"after" names no task', 'write after NAME, or after NAME and NAME');
      after = rest.join(' ').split(' and ');
    } else if (first === 'wait') {
      const read = readTime(rest.join(' '));
      if (!read.ok) return read;
      wait = read.value;
    } else
      return refused(
        `"${first}" is no part of a task`,
        'after the time of work write wait TIME or after NAME',
      );
  }
  return {ok: true, value: {id, hands: hands.value, wait, after}};
}

function readTime(given: string): Read<Quantity> {
  const read = readAmountOf(given, 'time');
  if (!read.ok) return read;
  return read.value.form === 'single'
    ? {ok: true, value: read.value.value}
    : refused('a task takes one time', 'write 20 min');
}

function tell({handsOn, waiting, earliest, path, alone, tasks}: TimePlan): readonly Named[] {
  return [
    {name: 'hands-on time', value: handsOn},
    {name: 'waits', value: waiting},
    {name: 'earliest finish', value: earliest},
    {name: 'which hangs on', value: path.join(', ')},
    {name: 'with one pair of hands', value: alone.finish},
    {name: 'in the order', value: alone.order.join(', ')},
    ...tasks.flatMap(({id, during}) =>
      during.length > 0 ? [{name: `while ${id} waits`, value: during.join(', ')}] : [],
    ),
  ];
}
