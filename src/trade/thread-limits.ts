/** The largest and smallest diameters that a thread may have, which decide how much metal is in engagement. */
import {metresOf, type Thread} from './thread.js';

/** In metres. External: bolt or stud; internal: nut or tapped hole. */
export interface ThreadLimits {
  readonly external: {
    readonly majorMin: number;
    readonly majorMax: number;
    readonly pitchMin: number;
    readonly pitchMax: number;
  };
  readonly internal: {
    readonly minorMin: number;
    readonly minorMax: number;
    readonly pitchMin: number;
    readonly pitchMax: number;
  };
  /** `2A/2B` or `6g/6H`: the classes taken. */
  readonly classes: string;
}

/**
 * Limits of the classes in general use: 2A/2B by ASME B1.1-2003 section 5 (length of engagement one diameter, rounded as there to
 * 0.0001 in), 6g/6H by the formulas of ISO 965-1 (not rounded). Whatever class is stated, these are what a bought bolt in a shop-tapped hole has.
 */
export function limitsOfThread(thread: Thread): ThreadLimits {
  return thread.family === 'unified' ? unified(thread) : metric(thread);
}

const INCH = 0.0254;

function unified(thread: Thread): ThreadLimits {
  const {d, p} = metresOf(thread);
  const [D, P] = [d / INCH, p / INCH];
  const formula = 0.0015 * Math.cbrt(D) + 0.0015 * Math.sqrt(D) + 0.015 * Math.cbrt(P ** 2);
  // The printed tables follow from six places here, and from the rounded tolerance for the allowance.
  const pitchTolerance = Math.round(formula * 1e6) / 1e6;
  const allowance = tenth(0.3 * tenth(pitchTolerance));
  const basicPitch = tenth(D - 0.649_519_05 * P);
  const basicMinor = D - 1.082_531_75 * P;
  const majorMax = D - allowance;
  const pitchMax = basicPitch - allowance;
  const inches = {
    external: {
      majorMin: majorMax - tenth(0.06 * Math.cbrt(P ** 2)),
      majorMax,
      pitchMin: pitchMax - tenth(pitchTolerance),
      pitchMax,
    },
    internal: {
      minorMin: basicMinor,
      minorMax: basicMinor + minorTolerance(D, P),
      pitchMin: basicPitch,
      pitchMax: basicPitch + tenth(1.3 * pitchTolerance),
    },
  };
  return {external: scaled(inches.external, INCH), internal: scaled(inches.internal, INCH), classes: '2A/2B'};
}

/** B1.1, 5.8: sizes from 1/4 in, and the formula for smaller ones, which is never less. In inches. */
function minorTolerance(D: number, P: number): number {
  const large = 0.25 * P - 0.4 * P ** 2;
  if (D >= 0.25) return large;
  return Math.min(Math.max(0.05 * Math.cbrt(P ** 2) + (0.03 * P) / D - 0.002, large), 0.394 * P);
}

function metric(thread: Thread): ThreadLimits {
  const {d, p} = metresOf(thread);
  const [D, P] = [d * 1000, p * 1000];
  const allowance = 15 + 11 * P;
  const pitchTolerance = 90 * P ** 0.4 * D ** 0.1;
  const minor = P <= 0.8 ? 433 * P - 190 * P ** 1.22 : 230 * P ** 0.7;
  const basicPitch = (D - 0.649_519_05 * P) * 1000;
  const basicMinor = (D - 1.082_531_75 * P) * 1000;
  const majorMax = D * 1000 - allowance;
  const micrometres = {
    external: {
      majorMin: majorMax - (180 * Math.cbrt(P ** 2) - 3.15 / Math.sqrt(P)),
      majorMax,
      pitchMin: basicPitch - allowance - pitchTolerance,
      pitchMax: basicPitch - allowance,
    },
    internal: {
      minorMin: basicMinor,
      minorMax: basicMinor + minor,
      pitchMin: basicPitch,
      pitchMax: basicPitch + 1.32 * pitchTolerance,
    },
  };
  return {
    external: scaled(micrometres.external, 1e-6),
    internal: scaled(micrometres.internal, 1e-6),
    classes: '6g/6H',
  };
}

function scaled<T extends Readonly<Record<string, number>>>(limits: T, by: number): {[K in keyof T]: number} {
  const entries = Object.entries(limits).map(([name, value]) => [name, value * by]);
  return Object.fromEntries(entries);
}

/** To 0.0001 in, as the standard's tables are. */
function tenth(inches: number): number {
  return Math.round(inches * 1e4) / 1e4;
}
