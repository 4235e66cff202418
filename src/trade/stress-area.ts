/** The cross section that a thread bears load with. */
import {quantity} from '../quantity/convert.js';
import {metresOf, type Thread} from './thread.js';
import type {Worked} from './worked.js';

/** An area has no unit of its own in the tool: it comes as a number in SI, and as text in the thread's own system first. */
export interface Area {
  readonly squareMetres: number;
  /** `0.1187 in² (76.6 mm²)`. */
  readonly text: string;
}

/**
 * Tensile stress area. Unified: At = 0.7854·(D − 0.9743/n)² in², ASME B1.1, for steels to 100 ksi and in general use
 * above. Metric: As = π/4·(d − 0.9382·P)² mm², ISO 898-1. The two take the minor diameter differently; they are not exchangeable.
 */
export function tensileStressArea(thread: Thread): Worked<Area> {
  const area = areaOf(thread);
  const unified = thread.family === 'unified';
  return {
    ok: true,
    result: area,
    formula: unified ? 'At = 0.7854 · (D − 0.9743 / n)²' : 'As = π/4 · (d − 0.9382 · P)²',
    inputs: [
      {name: 'thread', value: thread.name},
      {name: 'nominal diameter', value: thread.diameter},
      {
        name: unified ? 'threads per inch' : 'pitch',
        value: unified ? `${thread.threadsPerInch}` : quantity(thread.pitch.value, 'mm'),
      },
    ],
    source: unified ? 'ASME B1.1; values in Shigley 9th ed., Table 8-2' : 'ISO 898-1:2013, 9.1.6',
  };
}

/** The same without its story, for formulas further on. */
export function areaOf(thread: Thread): Area {
  const {d, p} = metresOf(thread);
  const squareMetres = 0.785_398_2 * (d - (thread.family === 'unified' ? 0.9743 : 0.9382) * p) ** 2;
  return {squareMetres, text: areaText(squareMetres, thread)};
}

const SQUARE_INCH = 0.0254 ** 2;

function areaText(squareMetres: number, thread: Thread): string {
  const inches = `${told(squareMetres / SQUARE_INCH, 4)} in²`;
  const millimetres = `${told(squareMetres * 1e6, 3)} mm²`;
  return thread.family === 'unified' ? `${inches} (${millimetres})` : `${millimetres} (${inches})`;
}

function told(value: number, count: number): string {
  return value < 10 ** count ? value.toPrecision(count) : value.toFixed(0);
}
