/** Whether a joint's sealant is still curing, asked by several findings. */

import type {Relations} from '../build/relations.js';
import type {State} from '../build/state.js';
import type {Amount} from '../quantity/model.js';
import type {Consumable, Joint} from '../spec/model.js';

/** What still has to cure on a sealed joint, with its time; nothing where it is cured, unsealed, or needs none. */
export function curing(
  joint: Joint,
  place: string,
  state: State,
  relations: Relations,
): {readonly sealant: Consumable; readonly cure: Amount} | undefined {
  if (state.holds('cured', joint.id, place)) return undefined;
  return cureOf(joint, place, state, relations);
}

/** The sealant on a sealed joint that has a cure, and its time. */
export function cureOf(
  joint: Joint,
  place: string,
  state: State,
  {spec}: Relations,
): {readonly sealant: Consumable; readonly cure: Amount} | undefined {
  const fact = state.get('sealed', joint.id, place);
  if (!fact.holds) return undefined;
  const asked = joint.seal?.value;
  const used = fact.detail?.ids ?? (typeof asked === 'object' ? asked : []);
  for (const id of used) {
    const sealant = spec.items.get(id);
    if (sealant?.kind === 'consumable' && sealant.cure !== undefined) {
      return {sealant, cure: sealant.cure.value};
    }
  }
  return undefined;
}
