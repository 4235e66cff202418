/** How much of each consumable a build takes: what the specification states, pieces that can be counted, else uses. */
import type {Step} from '../procedure/model.js';
import {tagsOf} from '../procedure/values.js';
import {isLockKind} from '../spec/locks.js';
import type {Consumable, LockKind} from '../spec/model.js';
import {addAll} from '../text/add-all.js';
import {type Called, calledFor, needKey} from './before.js';
import {type Naming, type PlacedStep, type Use, usesOf} from './context.js';
import type {BookConsumable} from './list-model.js';
import type {ConsumableLine, Value} from './model.js';
import {placesOrAll, quantityFor} from './part-lists.js';
import {printed} from './value.js';

/** The lines with their quantities; what only a branch uses, which may never be followed, counts for none. */
export function consumablesOf(
  lines: readonly ConsumableLine[],
  steps: readonly PlacedStep[],
  naming: Naming,
): BookConsumable[] {
  const tallies = tallied(steps, naming);
  return lines.map((line) => {
    const {amounts, pieces} = tallies.get(needKey(line)) ?? {amounts: [], pieces: 0};
    const counted = pieces === 0 ? [] : [{text: String(pieces)}];
    return {...line, quantities: [...amounts, ...counted], uses: line.steps.length};
  });
}

interface Tally {
  readonly amounts: Value[];
  pieces: number;
}

function tallied(steps: readonly PlacedStep[], naming: Naming): Map<string, Tally> {
  const tallies = new Map<string, Tally>();
  const branched = inBranches(steps.map(({step}) => step));
  for (const {step} of steps) {
    if (branched.has(step)) continue;
    for (const use of usesOf(step, naming)) {
      for (const called of calledFor(use, naming)) {
        const key = needKey(called);
        const tally = tallies.get(key) ?? {amounts: [], pieces: 0};
        tallies.set(key, tally);
        addAll(tally.amounts, amountsOf(use, naming));
        tally.pieces += piecesOf(use, called);
      }
    }
  }
  return tallies;
}

function inBranches(steps: readonly Step[]): ReadonlySet<Step> {
  const found = new Set<Step>();
  const add = (step: Step) => {
    found.add(step);
    step.steps.forEach(add);
  };
  for (const step of steps) if (tagsOf(step, 'if').length > 0) step.steps.forEach(add);
  return found;
}

function amountsOf({tag, item}: Use, naming: Naming): Value[] {
  if (tag.verb !== 'fill' || item?.kind !== 'system' || item.amount === undefined) return [];
  return [printed(item.amount.value, naming)];
}

/** Locks of which one goes to each fastener. */
const ONE_EACH: ReadonlySet<LockKind> = new Set([
  'cotter-pin',
  'tab-washer',
  'spring-washer',
  'self-locking-nut',
  'lock-nut',
]);

function piecesOf(use: Use, called: Called): number {
  const {tag, item} = use;
  const places = new Set(placesOrAll(use)).size;
  if (tag.verb === 'seal') return called.items.some((one) => isA(one, 'gasket')) ? places : 0;
  if (tag.verb === 'lay') return called.items.some((one) => isA(one, 'strip')) ? places : 0;
  if (tag.verb !== 'lock' || item?.kind !== 'fastener') return 0;
  const kind = called.ids.map((id) => (isLockKind(id) ? id : lockOf(called))).find(Boolean);
  return kind !== undefined && ONE_EACH.has(kind) ? quantityFor(item.count, places, item.at.length) : 0;
}

function isA(item: Called['items'][number], use: Consumable['use']): boolean {
  return item.kind === 'consumable' && item.use === use;
}

function lockOf({items}: Called): LockKind | undefined {
  return items.flatMap((item) => (item.kind === 'consumable' && item.lock ? [item.lock] : []))[0];
}
