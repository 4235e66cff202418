/** How deep a thread must go in so that the bolt breaks before the thread strips. */
import type {Quantity} from '../quantity/model.js';
import {figures} from './result.js';
import {areaOf} from './stress-area.js';
import {metresOf, type Thread} from './thread.js';
import {limitsOfThread} from './thread-limits.js';
import {ESTIMATE, notOf, type Worked} from './worked.js';

export interface Engagement {
  /** Full threads in engagement that the bolt's full strength takes. */
  readonly least: Quantity;
  /** The same in diameters. */
  readonly diameters: number;
  /** Which thread would strip first at that depth. */
  readonly weaker: 'bolt' | 'hole';
}

export interface EngagementInputs {
  readonly thread: Thread;
  /** Tensile strengths of the bolt and of the metal that is tapped; without them both are taken as alike. */
  readonly bolt?: Quantity;
  readonly hole?: Quantity;
}

/**
 * Minimum engagement for full strength. Le = 2·At / (π·Kn·(½ + 0.57735·n·(Es − Kn))), lengthened by J = (As·Sb)/(An·Sh)
 * where J is above 1 (the hole is the weaker). Valid for full threads, tensile strengths as measures of shear strength, tolerances 2A/2B or 6g/6H.
 * Source: FED-STD-H28/2B; Machinery's Handbook, "Formulas for stress areas and lengths of engagement".
 */
export function minimumEngagement({thread, bolt, hole}: EngagementInputs): Worked<Engagement> {
  const refusal = notOf('pressure', {"the bolt's strength": bolt, "the hole's strength": hole});
  if (refusal) return refusal;
  const alike = bolt === undefined || hole === undefined;
  const strengths = alike ? 1 : (bolt.value * bolt.unit.factor) / (hole.value * hole.unit.factor);
  const plain = plainLength(thread);
  const ratio = shearRatio(thread) * strengths;
  const length = plain * Math.max(1, ratio);
  const {d} = metresOf(thread);
  const [symbol, factor] = thread.family === 'unified' ? (['in', 0.0254] as const) : (['mm', 1e-3] as const);
  return {
    ok: true,
    result: {
      least: figures(length / factor, symbol, 3),
      diameters: length / d,
      weaker: ratio > 1 ? 'hole' : 'bolt',
    },
    formula: 'Le = 2·At / (π·Kn·(½ + 0.57735·n·(Es − Kn))), times J = (As·Sb)/(An·Sh) where that is above 1',
    inputs: [
      {name: 'thread', value: `${thread.name}, tolerances ${limitsOfThread(thread).classes}`},
      {name: "bolt's tensile strength", value: alike ? 'taken as that of the hole' : bolt},
      {name: "hole's tensile strength", value: alike ? 'taken as that of the bolt' : hole},
    ],
    source: "FED-STD-H28/2B; Machinery's Handbook, stress areas and lengths of engagement",
    advisory: `${ESTIMATE} A worn or repaired thread takes more.`,
  };
}

/** Where bolt and hole are of one strength; metres. */
function plainLength(thread: Thread): number {
  const {external, internal} = limitsOfThread(thread);
  const {p} = metresOf(thread);
  const kn = internal.minorMax;
  return (
    (2 * areaOf(thread).squareMetres) / (Math.PI * kn * (0.5 + (0.577_35 / p) * (external.pitchMin - kn)))
  );
}

/** Shear area of the bolt's thread over that of the hole's; the length cancels. */
function shearRatio(thread: Thread): number {
  const {external, internal} = limitsOfThread(thread);
  const {p} = metresOf(thread);
  const bolt = internal.minorMax * (p / 2 + 0.577_35 * (external.pitchMin - internal.minorMax));
  const hole = external.majorMin * (p / 2 + 0.577_35 * (external.majorMin - internal.pitchMax));
  return bolt / hole;
}
