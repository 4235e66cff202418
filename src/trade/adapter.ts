/** A torque wrench with an adapter reads falsely: what to dial so that the fastener gets what is due. */
import type {Quantity} from '../quantity/model.js';
import {figures} from './result.js';
import {notOf, type Refused, refused, type Worked} from './worked.js';

export interface AdapterInputs {
  /** Grip centre to drive centre. */
  readonly wrench: Quantity;
  /** Drive centre to fastener centre. */
  readonly adapter: Quantity;
  /** Between wrench and adapter: 0° in line and lengthening, 90° square, 180° folded back. In line where nothing is said. */
  readonly angle?: Quantity;
}

const SOURCE =
  'NAVEDTRA 14315 fig. 3-44 and TM 9-2350-261-20-1 p. 2-29 (in line); TM 55-1945-205-24-4 p. 247-1 (folded back); TM 9-254 fig. 4-6 (at an angle)';
const ADVISORY =
  'Holds only where the hand pulls at the centre of the grip; never slip a pipe over the handle. A straight socket extension on the drive takes no correction.';

/** The setting to dial for a torque due at the fastener. S = T·L/(L + E·cos a), any angle that leaves L + E·cos a above a tenth of L. */
export function settingFor(torque: Quantity, inputs: AdapterInputs): Worked<Quantity> {
  const reach = reachOf(torque, inputs);
  if (typeof reach !== 'number') return reach;
  return worked(
    {name: 'torque wanted', value: torque},
    inputs,
    torque.value / reach,
    'S = T · L / (L + E · cos a)',
  );
}

/** What the fastener gets at a setting: the same the other way round, T = S·(L + E·cos a)/L. */
export function torqueAt(setting: Quantity, inputs: AdapterInputs): Worked<Quantity> {
  const reach = reachOf(setting, inputs);
  if (typeof reach !== 'number') return reach;
  return worked(
    {name: 'setting', value: setting},
    inputs,
    setting.value * reach,
    'T = S · (L + E · cos a) / L',
  );
}

/** (L + E·cos a)/L. */
function reachOf(torque: Quantity, {wrench, adapter, angle}: AdapterInputs): number | Refused {
  const refusal =
    notOf('torque', {'the torque': torque}) ??
    notOf('length', {'the wrench': wrench}) ??
    notOf('length', {'the adapter': adapter}, 'not-negative') ??
    notOf('angle', {'the angle': angle}, 'any');
  if (refusal) return refusal;
  const turn = angle ? angle.value * angle.unit.factor : 0;
  const ratio = (adapter.value * adapter.unit.factor) / (wrench.value * wrench.unit.factor);
  const reach = 1 + ratio * Math.cos(turn);
  if (reach < 0.1)
    return refused(
      'the adapter is folded back almost to the grip',
      'turn it outwards or square, or take a longer wrench',
    );
  return reach;
}

function worked(
  known: {readonly name: string; readonly value: Quantity},
  {wrench, adapter, angle}: AdapterInputs,
  value: number,
  formula: string,
): Worked<Quantity> {
  return {
    ok: true,
    result: scaleLike(value, known.value),
    formula,
    inputs: [
      known,
      {name: 'wrench, grip to drive (L)', value: wrench},
      {name: 'adapter, drive to fastener (E)', value: adapter},
      {name: 'angle (a)', value: angle ?? 'in line'},
    ],
    source: SOURCE,
    advisory: ADVISORY,
  };
}

/** In the unit stated, and no finer than a scale can be set: three figures. */
function scaleLike(value: number, like: Quantity): Quantity {
  const {step} = figures(value, 'N·m', 3);
  return {value: Number(value.toPrecision(12)), unit: like.unit, step};
}
