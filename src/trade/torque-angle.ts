/** What a torque and then an angle leave in a bolt, as far as that can be estimated. */
import type {Quantity} from '../quantity/model.js';
import type {Grade} from './grade.js';
import {type JointInputs, jointStiffness} from './joint-stiffness.js';
import {SCATTER, type ThreadCondition} from './nut-factors.js';
import {forceLike, preloadOf, type Spread} from './preload.js';
import {areaOf} from './stress-area.js';
import {metresOf} from './thread.js';
import {ESTIMATE, notOf, type Worked} from './worked.js';

export interface TorqueAngle {
  readonly force: Quantity;
  readonly low: Quantity;
  readonly high: Quantity;
  /** What the torque and what the angle gives of it. */
  readonly byTorque: Quantity;
  readonly byAngle: Quantity;
  /** Per cent of the yield load, where the grade is known; over 100 the bolt has stretched for good. */
  readonly ofYield?: Spread;
}

export interface TorqueAngleInputs extends JointInputs {
  readonly torque: Quantity;
  readonly angle: Quantity;
  readonly friction: number | ThreadCondition;
  readonly grade?: Grade;
}

/**
 * F = T/(K·d) + θ/2π·P·kb·km/(kb + km). Valid below yield, where the torque alone has drawn the joint together; the scatter is that of the
 * torque wrench on the first part and of turn-of-nut (±15 %) on the second. Source: Shigley 9th ed., Eq. 8-27 and 8-22; geometry.
 */
export function torqueThenAngle(inputs: TorqueAngleInputs): Worked<TorqueAngle> {
  const {thread, torque, angle, friction, grade} = inputs;
  const refusal = notOf('angle', {'the angle': angle});
  if (refusal) return refusal;
  const first = preloadOf({thread, torque, friction});
  if (!first.ok) return first;
  const joint = jointStiffness(inputs);
  if (!joint.ok) return joint;
  const byTorque = newtons(first.result.force);
  const scatter = newtons(first.result.high) / byTorque - 1;
  const stretch = ((angle.value * angle.unit.factor) / (2 * Math.PI)) * metresOf(thread).p;
  const byAngle = stretch * joint.result.bolt * (1 - joint.result.share);
  const turning = SCATTER['turn of nut'].fraction;
  const total = (sign: 1 | 0 | -1): number =>
    byTorque * (1 + sign * scatter) + byAngle * (1 + sign * turning);
  const told = (value: number): Quantity => forceLike(value, thread);
  const band = {low: told(total(-1)), high: told(total(1))};
  const ofYield = grade && yieldShare(total, newtons(grade.yield) * areaOf(thread).squareMetres);
  return {
    ok: true,
    result: {
      force: told(total(0)),
      ...band,
      byTorque: told(byTorque),
      byAngle: told(byAngle),
      ...(ofYield ? {ofYield} : {}),
    },
    formula: 'F = T/(K·d) + θ/2π · P · kb·km/(kb + km)',
    inputs: [...first.inputs, {name: 'angle', value: angle}, ...joint.inputs.slice(1)],
    band: {
      name: `torque ±${Math.round(scatter * 100)} %, angle ±${turning * 100} %`,
      value: {form: 'range', ...band},
    },
    source: `${first.source}; ${joint.source}; angle: ${SCATTER['turn of nut'].source}`,
    advisory: `${ESTIMATE} The stiffness is itself estimated and the first torque must have closed the joint.${yieldWarning(ofYield)}`,
  };
}

function yieldShare(total: (sign: 1 | 0 | -1) => number, load: number): Spread {
  const share = (sign: 1 | 0 | -1): number => (100 * total(sign)) / load;
  return {likely: share(0), low: share(-1), high: share(1)};
}

function yieldWarning(share: Spread | undefined): string {
  if (share === undefined || share.high <= 100) return '';
  return share.likely > 100
    ? ' Beyond yield preload stays near the yield load whatever the sum says: a bolt tightened so is used once.'
    : ' At the top of the band the bolt yields.';
}

/** Newtons of a force, pascals of a strength. */
function newtons(q: Quantity): number {
  return q.value * q.unit.factor;
}
