/** One pair of hands that keeps to the order given, and goes on with the next task that waits for nothing meanwhile. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {fromSi} from './result.js';
import type {Task} from './task-graph.js';

/** When the last work and wait are over, and the order of the work; tasks that wait for each other are done in turn. */
export function byOneInTurn(tasks: readonly Task[]): {
  readonly finish: Quantity;
  readonly order: readonly string[];
} {
  const ends = new Map<string, number>();
  const order: string[] = [];
  const left = new Set(tasks);
  let now = 0;
  for (let [first] = left; first !== undefined; [first] = left) {
    const {task, ready} = next(left, ends, now) ?? {task: first, ready: now};
    now = Math.max(now, ready) + si(task.hands);
    ends.set(task.id, now + (task.wait ? si(task.wait) : 0));
    order.push(task.id);
    left.delete(task);
  }
  const finish = Math.max(0, ...ends.values());
  return {finish: fromSi(finish, unit('min'), 1), order};
}

interface Next {
  readonly task: Task;
  /** When all that it waits for is over. */
  readonly ready: number;
}

/** The first that could start now, else the one that can start soonest; none where they wait for each other. */
function next(left: ReadonlySet<Task>, ends: ReadonlyMap<string, number>, now: number): Next | undefined {
  const open = new Set([...left].map(({id}) => id));
  let soonest: Next | undefined;
  for (const task of left) {
    if (task.after.some((id) => open.has(id))) continue;
    const ready = Math.max(0, ...task.after.map((id) => ends.get(id) ?? 0));
    if (ready <= now) return {task, ready};
    if (soonest === undefined || ready < soonest.ready) soonest = {task, ready};
  }
  return soonest;
}
