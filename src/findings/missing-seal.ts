/** The fix that writes the seal which a joint never got. */
import type {StepRef} from '../build/program.js';
import type {Joint} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {factsAt, isFree, stepBefore} from './missing-place.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context} from './model.js';
import {itemAt} from './phrase.js';

/** Just before the first part goes on that closes the joint, where it is clean by then and only one seal is specified. */
export function sealFix(joint: Joint, places: readonly string[], context: Context): Fix | undefined {
  const seals = joint.seal?.value;
  const [seal, other] = typeof seals === 'object' ? seals : [];
  const first = firstClosing(joint, places, context);
  const step = first && stepBefore(first, context);
  if (seal === undefined || other !== undefined || step === undefined) return undefined;
  const undone = places.map((place) => context.state.get('sealed', joint.id, place).undone?.step.order ?? -1);
  const since = Math.max(...undone);
  if (since > step.order || !isFree(joint, {since, until: step.order}, context)) return undefined;
  if (!places.every((place) => isReady(joint, place, seal, step, context))) return undefined;
  const material = context.book.spec.items.get(seal)?.name ?? seal;
  const missing = {
    says: `Make up the ${joint.name} with ${material}.`,
    tag: `seal: ${itemAt(joint, places)} with ${seal}`,
  };
  return stepBehind(step, missing, titleOf('seal', joint));
}

/** Nothing where one of the parts is out at the end. */
function firstClosing(joint: Joint, places: readonly string[], context: Context): StepRef | undefined {
  const facts = (context.relations.closers.get(joint.id) ?? [])
    .filter(({given}) => !given)
    .flatMap((part) => places.flatMap((place) => factsAt('installed', part, joint, place, context)));
  if (facts.some(({holds}) => !holds)) return undefined;
  const steps = facts.flatMap(({by}) => (by === undefined ? [] : [by.step]));
  return steps.reduce<StepRef | undefined>(
    (a, b) => (a !== undefined && a.order <= b.order ? a : b),
    undefined,
  );
}

/** Clean and open by then, and what cures has its cure later. */
function isReady(joint: Joint, place: string, seal: string, {order}: StepRef, context: Context): boolean {
  const {state, book} = context;
  const clean = state.get('clean', joint.id, place);
  if (!clean.holds || (clean.by?.step.order ?? order) > order) return false;
  const material = book.spec.items.get(seal);
  if (material?.kind !== 'consumable') return true;
  if (material.hazards.length > 0) return false;
  if (material.cure === undefined) return true;
  const cured = state.get('cured', joint.id, place);
  return cured.holds && (cured.by?.step.order ?? -1) > order;
}
