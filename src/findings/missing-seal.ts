/** The fix that writes the seal which a joint never got. */
import type {FactKind} from '../build/facts.js';
import type {StepRef} from '../build/program.js';
import type {Consumable, Joint} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {factsAt, isFree, stepBefore} from './missing-place.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context} from './model.js';
import {itemAt} from './phrase.js';

/** Just before the first part goes on that closes the joint, where it is clean by then and only one seal is specified. */
export function sealFix(joint: Joint, places: readonly string[], context: Context): Fix | undefined {
  const seals = joint.seal?.value;
  const first = firstClosing(joint, places, context);
  const step = first && stepBefore(first, context);
  if (typeof seals !== 'object' || seals.length !== 1 || step === undefined) return undefined;
  const [material] = seals.map((seal) => context.book.spec.items.get(seal));
  if (material?.kind !== 'consumable' || material.hazards.length > 0) return undefined;
  const undone = places.map((place) => context.state.get('sealed', joint.id, place).undone?.step.order ?? -1);
  const since = Math.max(...undone);
  if (!isFree(joint, {since, until: step.order}, context)) return undefined;
  if (!places.every((place) => isReady(joint, place, material, step, context))) return undefined;
  const missing = {
    says: `Make up the ${joint.name} with ${material.name}.`,
    tag: `seal: ${itemAt(joint, places)} with ${material.id}`,
  };
  return stepBehind(step, missing, titleOf('seal', joint));
}

/** Nothing where one of the parts is out at the end. */
function firstClosing(joint: Joint, places: readonly string[], context: Context): StepRef | undefined {
  const facts = (context.relations.closers.get(joint.id) ?? [])
    .filter(({given}) => !given)
    .flatMap((part) => places.flatMap((place) => factsAt('installed', part, joint, place, context)));
  if (facts.some(({holds}) => !holds)) return undefined;
  const steps = facts.flatMap(({by}) => by?.step ?? []);
  return steps.sort((a, b) => a.order - b.order)[0];
}

/** Clean and open by then, and what cures has its cure later. */
function isReady(
  {id}: Joint,
  place: string,
  {cure}: Consumable,
  {order}: StepRef,
  {state}: Context,
): boolean {
  const at = (kind: FactKind) => {
    const {holds, by} = state.get(kind, id, place);
    return holds ? by?.step.order : undefined;
  };
  const [clean = Infinity, cured = -Infinity] = [at('clean'), at('cured')];
  return clean <= order && (cure === undefined || cured > order);
}
