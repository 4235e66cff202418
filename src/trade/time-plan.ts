/** How long a job takes: work at the bench, waits for cures, the earliest finish, and what can go on during a cure. */
import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {byOnePair} from './one-pair.js';
import {fromSi} from './result.js';
import {type Graph, graphOf, type Task} from './task-graph.js';
import {ESTIMATE, type Named, notOf, type Refused, refused, type Worked} from './worked.js';

export interface PlannedTask {
  readonly id: string;
  /** Counted from the start of the job, with as many hands as are needed. */
  readonly start: Quantity;
  /** When what comes after may start: work and wait over. */
  readonly end: Quantity;
  /** How much later it may start without putting off the finish. */
  readonly slack: Quantity;
  /** For a task with a wait: what neither waits for it nor leads up to it. */
  readonly during: readonly string[];
}

export interface TimePlan {
  readonly handsOn: Quantity;
  readonly waiting: Quantity;
  /** By the longest chain of work and waits: no number of hands makes it shorter. */
  readonly earliest: Quantity;
  /** The chain itself, in order. */
  readonly path: readonly string[];
  /**
   * One pair of hands, which goes on with other work during waits, in this order. Near the best, not always the best.
   */
  readonly alone: {readonly finish: Quantity; readonly order: readonly string[]};
  readonly tasks: readonly PlannedTask[];
}

/**
 * Critical path over tasks with times of 0 or more; the order is that of `after` alone. Refused where a task waits for
 * itself. Source: the critical path method (Kelley and Walker, 1959; from memory).
 */
export function timePlan(tasks: readonly Task[]): Worked<TimePlan> {
  const graph = read(tasks);
  if ('ok' in graph) return graph;
  const starts = earliestStarts(graph);
  const ends = graph.order.map((_, index) => (starts[index] ?? 0) + (graph.lengths[index] ?? 0));
  const finish = Math.max(0, ...ends);
  const alone = byOnePair(graph);
  const hands = sum(graph.hands);
  const result: TimePlan = {
    handsOn: told(hands),
    waiting: told(sum(graph.lengths) - hands),
    earliest: told(finish),
    path: longestChain(graph, starts, ends, finish),
    alone: {finish: told(alone.finish), order: alone.order.map((index) => idAt(graph, index))},
    tasks: graph.order.map((id, index) => ({
      id,
      start: told(starts[index] ?? 0),
      end: told(ends[index] ?? 0),
      slack: told(noiseless(finish - (starts[index] ?? 0) - (graph.tails[index] ?? 0))),
      during: (graph.lengths[index] ?? 0) > (graph.hands[index] ?? 0) ? beside(graph, index) : [],
    })),
  };
  const low = told(Math.max(finish, hands));
  return {
    ok: true,
    result,
    formula:
      'start = latest end of what it waits for; finish = latest end; slack = finish − start − longest chain from it',
    inputs: tasks.flatMap(stated),
    band: {name: 'finish with one pair of hands', value: {form: 'range', low, high: result.alone.finish}},
    source: 'critical path method (Kelley and Walker, 1959; from memory)',
    advisory: ESTIMATE,
  };
}

function read(tasks: readonly Task[]): Graph | Refused {
  if (tasks.length === 0) return refused('there is no task', 'give one at least');
  for (const {id, hands, wait} of tasks) {
    const refusal = notOf(
      'time',
      {[`the work of ${id}`]: hands, [`the wait of ${id}`]: wait},
      'not-negative',
    );
    if (refusal) return refusal;
  }
  return graphOf(tasks);
}

function earliestStarts({before, lengths}: Graph): number[] {
  const starts: number[] = [];
  for (const ones of before) {
    const ends = ones.map((one) => (starts[one] ?? 0) + (lengths[one] ?? 0));
    starts.push(Math.max(0, ...ends));
  }
  return starts;
}

/** From the last to finish back over whatever each one waited for. */
function longestChain(
  graph: Graph,
  starts: readonly number[],
  ends: readonly number[],
  finish: number,
): readonly string[] {
  const chain: string[] = [];
  let at = ends.indexOf(finish);
  while (at >= 0) {
    chain.unshift(idAt(graph, at));
    const start = starts[at];
    at = (graph.before[at] ?? []).find((one) => ends[one] === start) ?? -1;
  }
  return chain;
}

/** Whatever is neither reached from the task nor leads to it. */
function beside(graph: Graph, index: number): readonly string[] {
  const bound = new Set([...reached(graph.after, index), ...reached(graph.before, index)]);
  return graph.order.filter((_, other) => !bound.has(other));
}

function reached(edges: readonly (readonly number[])[], from: number): Set<number> {
  const found = new Set([from]);
  for (const index of found) for (const next of edges[index] ?? []) found.add(next);
  return found;
}

function idAt({order}: Graph, index: number): string {
  return order[index] ?? '';
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Differences of sums of seconds are off by their last bits. */
function noiseless(seconds: number): number {
  return seconds < 1e-6 ? 0 : seconds;
}

/** Minutes up to three hours, hours beyond. */
function told(seconds: number): Quantity {
  return seconds < 3 * 3600 ? fromSi(seconds, unit('min'), 1) : fromSi(seconds, unit('h'), 0.1);
}

function stated({id, hands, wait, after}: Task): Named[] {
  const name = after.length > 0 ? `${id}, after ${after.join(', ')}` : id;
  const waits = wait && si(wait) > 0 ? [{name: `${id}, wait`, value: wait}] : [];
  return [{name, value: hands}, ...waits];
}
