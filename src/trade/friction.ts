/** What turns torque into preload and how far it can be trusted: the nut factor and the scatter of a tightening. */
import {
  NUT_FACTOR_RANGE,
  NUT_FACTORS,
  SCATTER,
  type ThreadCondition,
  type TighteningMethod,
  WRENCH_SCATTER,
} from './nut-factors.js';
import {type Refused, refused} from './worked.js';

export interface Friction {
  /** K of T = K·F·d. */
  readonly nutFactor: number;
  /** All published values for the condition lie from … to; the factor itself where the shop stated it. */
  readonly published: {readonly low: number; readonly high: number};
  /** "oiled" or "as stated by the shop". */
  readonly says: string;
  readonly source: string;
  readonly condition?: ThreadCondition;
}

/** The nut factor that the shop states, or the published one for the condition of the threads. */
export function frictionOf(given: number | ThreadCondition): Friction | Refused {
  if (typeof given === 'number') return stated(given);
  const rows = NUT_FACTORS.filter(({condition}) => condition === given);
  const [first] = rows;
  if (first === undefined)
    return refused('no nut factor is published for that condition', 'state the shop’s own');
  return {
    nutFactor: first.low,
    published: {low: Math.min(...rows.map(({low}) => low)), high: Math.max(...rows.map(({high}) => high))},
    says: given,
    source: first.source,
    condition: given,
  };
}

function stated(nutFactor: number): Friction | Refused {
  const {low, high} = NUT_FACTOR_RANGE;
  if (!(nutFactor >= low && nutFactor <= high))
    return refused(
      `a nut factor of ${nutFactor} is outside ${low} to ${high}`,
      'about 0.15 is oiled steel, 0.20 dry',
    );
  return {
    nutFactor,
    published: {low: nutFactor, high: nutFactor},
    says: 'as stated',
    source: 'nut factor as stated',
  };
}

/** How far preload scatters by the method, wider with a torque wrench on threads that are not lubricated. */
export function scatterOf(
  method: TighteningMethod,
  condition?: ThreadCondition,
): {readonly fraction: number; readonly source: string} {
  const wider = method === 'torque wrench' && condition ? WRENCH_SCATTER[condition] : undefined;
  return wider ?? SCATTER[method];
}
