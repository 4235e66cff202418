/** What a value with a unit is. Reading is in `parse.ts`, arithmetic in `convert.ts`, print in `format.ts`. */
import type {Span} from '../text/source.js';

export type Dimension =
  | 'torque'
  | 'length'
  | 'angle'
  | 'time'
  | 'temperature'
  | 'pressure'
  | 'force'
  | 'mass'
  | 'volume'
  | 'speed of rotation'
  | 'frequency'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'capacitance'
  | 'share';

/** `value × factor + offset` is the value in the dimension's coherent SI unit (N·m, m, rad, s, K, Pa, N, kg, m³, rad/s, Hz, V, A, Ω, F, 1). */
export interface Unit {
  /** As the tool prints it: `lbf·ft`, `N·m`, `in`, `mm`, `°`. */
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly factor: number;
  /** Not nought for °C and °F only. */
  readonly offset: number;
  readonly system: 'inch' | 'metric' | 'both';
}

/** One number with its unit, as stated. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
  /** One in the last place stated, in the quantity's own unit: 1 for `85`, 0.0001 for `0.0015`; 0 for a fraction. */
  readonly step: number;
}

/** What can be specified or stated: a single value, or limits in one of the forms that shops write. */
export type Amount =
  | {readonly form: 'single'; readonly value: Quantity}
  | {readonly form: 'range'; readonly low: Quantity; readonly high: Quantity}
  | {
      readonly form: 'tolerance';
      readonly nominal: Quantity;
      readonly minus: Quantity;
      readonly plus: Quantity;
    }
  | {readonly form: 'most'; readonly high: Quantity}
  | {readonly form: 'least'; readonly low: Quantity};

/** What reading a text gave: an amount, or what is wrong with it. Spans are offsets into that text. */
export type Reading =
  | {readonly ok: true; readonly amount: Amount}
  | {readonly ok: false; readonly fault: AmountFault};

export interface AmountFault {
  readonly name: 'unit-missing' | 'unit-wrong-kind' | 'amount-form';
  readonly span: Span;
  /** "12 kg is a mass where a torque is due" */
  readonly says: string;
  /** "write kgf·m" */
  readonly hint: string;
}
