/** How springy a bolt and the parts it clamps are, which decides what an angle of turn does. */
import {quantity} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {areaOf} from './stress-area.js';
import {metresOf, type Thread} from './thread.js';
import {ESTIMATE, notOf, refused, type Worked} from './worked.js';

export interface JointStiffness {
  /** N/m. */
  readonly bolt: number;
  readonly members: number;
  /** C = kb/(kb + km), the share of an outside load that the bolt feels. */
  readonly share: number;
}

export interface JointInputs {
  readonly thread: Thread;
  /** What is clamped, from bearing face to bearing face (into a tapped hole, plus half a diameter). */
  readonly grip: Quantity;
  /** The part of the bolt in the grip that has no thread; none where nothing is said. */
  readonly shank?: Quantity;
  /** Young's modulus; steel, 30 Mpsi, where nothing is said. */
  readonly boltModulus?: Quantity;
  readonly memberModulus?: Quantity;
}

const STEEL = quantity(30_000, 'ksi');

/**
 * kb = Ad·At·E/(Ad·lt + At·ld); km = 0.5774·π·E·d / (2·ln(5·(0.5774·l + 0.5·d)/(0.5774·l + 2.5·d))). Valid for two members of one
 * material under a washer face of 1.5·d, clear of edges, without a gasket. Source: Shigley 9th ed., Table 8-7, Eq. 8-17 and 8-22.
 */
export function jointStiffness(inputs: JointInputs): Worked<JointStiffness> {
  const {thread, grip, shank, boltModulus = STEEL, memberModulus = STEEL} = inputs;
  const refusal =
    notOf('length', {'the grip': grip}) ??
    notOf('length', {'the shank': shank}, 'not-negative') ??
    notOf('pressure', {"the bolt's modulus": boltModulus, "the members' modulus": memberModulus});
  if (refusal) return refusal;
  const l = metres(grip);
  const plain = shank ? metres(shank) : 0;
  if (plain > l) return refused('the shank is longer than the grip', 'count only the part of it in the grip');
  const {d} = metresOf(thread);
  const bolt = boltStiffness(thread, l, plain, pascals(boltModulus));
  const members =
    (0.5774 * Math.PI * pascals(memberModulus) * d) /
    (2 * Math.log((5 * (0.5774 * l + 0.5 * d)) / (0.5774 * l + 2.5 * d)));
  return {
    ok: true,
    result: {bolt, members, share: bolt / (bolt + members)},
    formula:
      'kb = Ad·At·E/(Ad·lt + At·ld); km = 0.5774·π·E·d / (2·ln(5·(0.5774·l + 0.5·d)/(0.5774·l + 2.5·d)))',
    inputs: [
      {name: 'thread', value: thread.name},
      {name: 'grip', value: grip},
      {name: 'shank in the grip', value: shank ?? 'none: thread all the way'},
      {name: "bolt's modulus", value: boltModulus},
      {name: "members' modulus", value: memberModulus},
    ],
    source: 'Shigley 9th ed., Table 8-7, Eq. 8-17 and 8-22',
    advisory: ESTIMATE,
  };
}

function boltStiffness(thread: Thread, grip: number, shank: number, modulus: number): number {
  const full = (Math.PI / 4) * metresOf(thread).d ** 2;
  const core = areaOf(thread).squareMetres;
  return (full * core * modulus) / (full * (grip - shank) + core * shank);
}

function metres(length: Quantity): number {
  return length.value * length.unit.factor;
}

function pascals(pressure: Quantity): number {
  return pressure.value * pressure.unit.factor;
}
