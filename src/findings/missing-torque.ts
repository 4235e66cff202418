/** The fix that writes the torque which a fastener never got. */
import type {Fact} from '../build/facts.js';
import {goesOnFirst} from '../build/locks.js';
import type {StepRef} from '../build/program.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import type {Fastener} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {factsAt, stepAfter} from './missing-place.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context} from './model.js';
import {itemAt} from './phrase.js';

/**
 * Behind the last part that it holds, and behind what must be on the fastener by then: oil, a lock that goes on first,
 * an earlier torque that still holds. One that was slackened with nothing put in since is left to a person.
 */
export function torqueFix(
  fastener: Fastener,
  asked: Amount | 'snug',
  places: readonly string[],
  context: Context,
): Fix | undefined {
  const {book, state} = context;
  const {id, name, angle} = fastener;
  if (!places.every((place) => threadsAsAsked(fastener, place, context))) return undefined;
  if (fastener.singleUse && !places.every((place) => state.holds('fresh', id, place))) return undefined;
  const held = fastener.holds.flatMap(({value}) => {
    const item = book.spec.items.get(value);
    return item?.kind === 'part' && !item.given ? [item] : [];
  });
  const needs = (place: string): readonly Fact[] => [
    ...held.flatMap((part) => factsAt('installed', part, fastener, place, context)),
    ...(['fresh', 'threads', 'tight'] as const)
      .map((kind) => state.get(kind, id, place))
      .filter(({holds}) => holds),
    ...(isLockedFirst(fastener, place, context) ? [state.get('locked', id, place)] : []),
  ];
  const step = stepAfter({item: fastener, kind: 'tight', places}, needs, context);
  if (step === undefined || places.some((place) => isLockedBy(step, fastener, place, context)))
    return undefined;
  const value = asked === 'snug' ? asked : formatAmount(asked);
  const turn = angle === undefined ? '' : ` turn ${formatAmount(angle.value)}`;
  const tag = `torque: ${itemAt(fastener, places)} to ${value}${turn}`;
  return stepBehind(step, {says: `Tighten the ${name}.`, tag}, titleOf('torque', fastener));
}

function threadsAsAsked({id, threads}: Fastener, place: string, {state}: Context): boolean {
  const asked = threads?.value;
  if (asked === undefined || asked === 'unknown') return true;
  const fact = state.get('threads', id, place);
  if (asked === 'dry') return !fact.holds;
  const used = fact.detail?.ids;
  return fact.holds && (used === undefined || asked.some((one) => used.includes(one)));
}

/** By locks alone that go on before the torque and stay. */
function isLockedFirst({id}: Fastener, place: string, {book, state}: Context): boolean {
  const {holds, detail} = state.get('locked', id, place);
  const locks = detail?.ids ?? [];
  return holds && locks.length > 0 && locks.every((lock) => goesOnFirst(book.spec, lock));
}

/** A lock that goes on after the tightening would have to come off again. */
function isLockedBy({order}: StepRef, fastener: Fastener, place: string, context: Context): boolean {
  const {by} = context.state.get('locked', fastener.id, place);
  return by !== undefined && by.step.order <= order && !isLockedFirst(fastener, place, context);
}
