/** The torque table of a book: every fastener with its thread, passes, final torque and lock, and where the torque comes from. */
import {tagsOf} from '../procedure/values.js';
import type {Amount} from '../quantity/model.js';
import {itemsOfKind} from '../spec/items.js';
import type {Fastener} from '../spec/model.js';
import {type Naming, nameOf, type PlacedStep} from './context.js';
import type {TorqueLine} from './list-model.js';
import type {Value} from './model.js';
import {printed} from './value.js';

export interface TorqueTableOptions {
  readonly naming: Naming;
  /** Of the whole book: fasteners that no step tightens are in it too. */
  readonly whole: boolean;
}

/** In the order of the specification. */
export function torqueLines(steps: readonly PlacedStep[], {naming, whole}: TorqueTableOptions): TorqueLine[] {
  const at = stepsByFastener(steps);
  return itemsOfKind(naming.spec, 'fastener')
    .filter(({id}) => whole || at.has(id))
    .map((fastener) => lineOf(fastener, [...(at.get(fastener.id) ?? [])], naming));
}

function stepsByFastener(steps: readonly PlacedStep[]): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const {step, at} of steps) {
    for (const {id} of tagsOf(step, 'torque').flatMap(({targets}) => targets)) {
      found.set(id, (found.get(id) ?? new Set()).add(at));
    }
  }
  return found;
}

function lineOf(fastener: Fastener, steps: readonly string[], naming: Naming): TorqueLine {
  const {thread, grade, threads, passes, torque, angle, lock} = fastener;
  const source = sourceOf(fastener, naming);
  return {
    id: fastener.id,
    name: fastener.name,
    count: fastener.count,
    ...(thread && {thread: thread.value}),
    ...(grade && {grade: grade.value}),
    ...(threads && {threads: named(threads.value, naming)}),
    passes: passes?.value.map((pass) => printed(pass, naming)) ?? [],
    torque: torqueOf(torque?.value, naming),
    ...(angle && {angle: printed(angle.value, naming)}),
    ...(lock && {lock: lockOf(lock.value, naming)}),
    ...(fastener.stripe ? {stripe: true} : {}),
    ...(source === undefined ? {} : {source}),
    ...(torque?.note === undefined ? {} : {note: torque.note}),
    steps,
  };
}

function torqueOf(torque: Amount | string | undefined, naming: Naming): Value {
  if (typeof torque === 'object') return printed(torque, naming);
  return {text: named(torque ?? 'unknown', naming)};
}

/** All locks of a fastener go on. */
function lockOf(value: string | readonly string[], naming: Naming): string {
  if (typeof value === 'string') return named(value, naming);
  return value.map((id) => nameOf(id, naming)).join(naming.words.and);
}

/** Ids by name, joined where any will do, and the words that a specification says instead. */
function named(value: string | readonly string[], naming: Naming): string {
  if (typeof value !== 'string') return value.map((id) => nameOf(id, naming)).join(naming.words.or);
  const {snug, none, unknown, dry} = naming.words;
  const words = new Map([
    ['snug', snug],
    ['none', none],
    ['unknown', unknown],
    ['dry', dry],
  ]);
  return words.get(value) ?? nameOf(value, naming);
}

function sourceOf({torque}: Fastener, {spec}: Naming): string | undefined {
  if (torque?.source === undefined) return torque?.because;
  const {source, because} = torque;
  const title = spec.sources.get(source)?.title ?? source;
  return because === undefined ? title : `${title}; ${because}`;
}
