/** How tight a torque leaves a fastener, and whether that is the specified end of it: for the ledger and for findings. */
import {amountOf, clauseOf} from '../procedure/values.js';
import {amountsAgree} from '../quantity/convert.js';
import type {Fastener} from '../spec/model.js';
import type {Detail} from './facts.js';
import type {Action} from './program.js';
import type {Relations} from './relations.js';
import type {State} from './state.js';

/**
 * What a torque reaches: the stated or, where the tag states none, the specified torque; and whether that ends
 * it. The last torque of a fastener ends it whatever it states: a wrong value is a finding of its own, and not
 * the slack joint, early lock and early signature that would follow from it.
 */
export function torqueReached(
  action: Action<Fastener>,
  before: Detail | undefined,
  known: Relations,
): Detail {
  const {item: fastener, tag} = action;
  const to = clauseOf(tag, 'to');
  const turned = clauseOf(tag, 'turn') !== undefined;
  const asked = fastener.torque?.value;
  const specified = typeof asked === 'object' ? asked : undefined;
  if (to === undefined && turned) return {...before, final: before?.torque !== undefined || asked === 'snug'};
  const stated = to === undefined ? specified : amountOf(tag, 'to');
  const open = fastener.angle !== undefined && to !== undefined && !turned;
  if (stated === undefined) return {final: asked === 'snug' && !open};
  // Whatever has a torque is snug at least.
  const reached =
    asked === 'snug' ||
    (specified !== undefined && (known.lastTorques.has(action) || amountsAgree(stated, specified)));
  return {torque: stated, final: reached && !open};
}

/** The same as it stands now: what an earlier torque reached counts only while it still holds. */
export function torqueNow(action: Action<Fastener>, place: string, state: State, known: Relations): Detail {
  const before = state.get('tight', action.item.id, place);
  return torqueReached(action, before.holds ? before.detail : undefined, known);
}

export function isFastenerAction(action: Action): action is Action<Fastener> {
  return action.item.kind === 'fastener';
}
