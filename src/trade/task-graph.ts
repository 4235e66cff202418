/** Tasks in an order in which each stands behind all that it waits for, with what a plan needs to know of each. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {nearest} from '../text/nearest.js';
import {type Refused, refused} from './worked.js';

export interface Task {
  readonly id: string;
  /** Time that somebody works on it. */
  readonly hands: Quantity;
  /** Time that it must then be left alone. */
  readonly wait?: Quantity | undefined;
  /** Tasks whose work and wait must be over. */
  readonly after: readonly string[];
}

/** Every list has one entry a task, in `order`; times in seconds. */
export interface Graph {
  readonly order: readonly string[];
  readonly before: readonly (readonly number[])[];
  readonly after: readonly (readonly number[])[];
  readonly hands: readonly number[];
  /** Work and wait. */
  readonly lengths: readonly number[];
  /** The longest chain that starts with the task, its own length included. */
  readonly tails: readonly number[];
}

/** Refused where an id is there twice or not at all, or where tasks wait for each other. */
export function graphOf(tasks: readonly Task[]): Graph | Refused {
  const fault = nameFault(tasks);
  if (fault) return fault;
  const sorted = sortedTasks(tasks);
  if (!Array.isArray(sorted)) return sorted;
  const at = new Map(sorted.map(({id}, index) => [id, index]));
  const before = sorted.map(({after}) => [...new Set(after)].flatMap((id) => at.get(id) ?? []));
  const after: number[][] = sorted.map(() => []);
  before.forEach((ones, index) => {
    for (const one of ones) after[one]?.push(index);
  });
  const hands = sorted.map((task) => si(task.hands));
  const lengths = sorted.map((task, index) => (hands[index] ?? 0) + (task.wait ? si(task.wait) : 0));
  return {order: sorted.map(({id}) => id), before, after, hands, lengths, tails: tailsOf(after, lengths)};
}

function nameFault(tasks: readonly Task[]): Refused | undefined {
  const ids = new Set<string>();
  for (const {id} of tasks) {
    if (ids.has(id)) return refused(`the task ${id} is there twice`, 'give each task an id of its own');
    ids.add(id);
  }
  for (const {id, after} of tasks) {
    const unknown = after.find((one) => !ids.has(one));
    if (unknown === undefined) continue;
    const meant = nearest(unknown, ids);
    return refused(
      `${id} waits for ${unknown}, which is no task`,
      meant ? `did you mean ${meant}?` : 'add that task',
    );
  }
  return undefined;
}

/** A task, and how many of those that it waits for are not yet in order. */
interface Held {
  readonly task: Task;
  left: number;
}

/** In the order given, where each task already stands behind what it waits for. */
function sortedTasks(tasks: readonly Task[]): Task[] | Refused {
  if (standsInOrder(tasks)) return [...tasks];
  const waiting = new Map<string, Held[]>(tasks.map(({id}) => [id, []]));
  for (const task of tasks) {
    const after = new Set(task.after);
    const held = {task, left: after.size};
    for (const one of after) waiting.get(one)?.push(held);
  }
  const sorted = tasks.filter(({after}) => after.length === 0);
  for (const {id} of sorted) {
    for (const held of waiting.get(id) ?? []) {
      held.left--;
      if (held.left === 0) sorted.push(held.task);
    }
  }
  if (sorted.length === tasks.length) return sorted;
  const done = new Set(sorted.map(({id}) => id));
  const stuck = tasks.filter(({id}) => !done.has(id)).map(({id}) => id);
  return refused(
    `these tasks wait for each other: ${stuck.slice(0, 8).join(', ')}`,
    'one of them must come first',
  );
}

function standsInOrder(tasks: readonly Task[]): boolean {
  const seen = new Set<string>();
  return tasks.every(({id, after}) => {
    const ready = after.every((one) => seen.has(one));
    seen.add(id);
    return ready;
  });
}

function tailsOf(after: readonly (readonly number[])[], lengths: readonly number[]): number[] {
  const tails: number[] = [];
  for (const [index, ones] of [...after.entries()].reverse())
    tails[index] = (lengths[index] ?? 0) + Math.max(0, ...ones.map((one) => tails[one] ?? 0));
  return tails;
}
