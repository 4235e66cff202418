/** The range that a torque wrench works in, how far off it may be, and the band that a fastener really gets. */
import {convert, dimensionOf, highOf, lowOf, si} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {type AdapterInputs, settingFor} from './adapter.js';
import {figures} from './result.js';
import {notOf, type Refused, refused, type Worked} from './worked.js';
import {LOWEST_FRACTION, SMALL_TOOL, WRENCH_CLASSES} from './wrench-classes.js';

export interface Accuracy {
  /** The tool's reading may be off by this fraction of what it really applies. */
  readonly fraction: number;
  readonly says: string;
  readonly source: string;
}

/**
 * How far off a wrench of that maximum torque may be: `class A`, `type I class B`, `ISO 6789 type II class A`, `±4 %`, `3 %`. A class
 * without a type is taken as II, the wrench that is set and clicks. Source: ISO 6789-1:2017.
 */
export function readAccuracy(
  text: string,
  most: Quantity,
): {readonly ok: true; readonly accuracy: Accuracy} | Refused {
  const refusal = notOf('torque', {'the largest torque': most});
  if (refusal) return refusal;
  const stated = /^(?:±|\+\/-)?\s*(\d+(?:\.\d+)?)\s*%(?:\s+of (?:reading|setting))?$/i.exec(text.trim());
  if (stated !== null) return statedAccuracy(Number(stated[1]));
  const letter = /class\s+([A-G])$/i.exec(text.trim())?.[1];
  const type = /type\s+[I1]\b/i.test(text) ? 'I' : 'II';
  const found = WRENCH_CLASSES.find((one) => one.type === type && one.letter === letter?.toUpperCase());
  if (found === undefined)
    return refused(
      `"${text.slice(0, 30)}" does not say how accurate the wrench is`,
      'write class A, type I class B or ±4 %',
    );
  const fraction = si(most) > SMALL_TOOL * (1 + 1e-9) ? found.large : found.small;
  const says = `ISO 6789 type ${found.type} class ${found.letter} (${found.says}): ±${round(fraction)} %`;
  return {ok: true, accuracy: {fraction, says, source: 'ISO 6789-1:2017'}};
}

function statedAccuracy(percent: number): {readonly ok: true; readonly accuracy: Accuracy} | Refused {
  if (!(percent > 0 && percent < 50)) return refused(`an accuracy of ${percent} % is not one`, 'write ±4 %');
  return {
    ok: true,
    accuracy: {fraction: percent / 100, says: `±${percent} % as stated`, source: 'accuracy as stated'},
  };
}

/** From the lowest marked value to the highest; from 20 % of the maximum where only that is known. Source: ISO 6789-1:2017 and :2003. */
export function workingRange(
  range: Amount,
): {readonly ok: true; readonly low: Quantity; readonly high: Quantity} | Refused {
  const high = highOf(range);
  if (dimensionOf(range) !== 'torque')
    return refused('the range of the wrench is not a torque', 'write 20–150 lbf·ft');
  if (high === undefined)
    return refused('the range of the wrench has no upper end', 'write 20–150 lbf·ft or max 150 lbf·ft');
  const marked = range.form === 'range' ? lowOf(range) : undefined;
  const refusal =
    notOf('torque', {'the largest torque': high}) ??
    notOf('torque', {'the least torque': marked}, 'not-negative');
  if (refusal) return refusal;
  return {
    ok: true,
    low: marked ?? {...high, value: Number((LOWEST_FRACTION * high.value).toPrecision(12))},
    high,
  };
}

export interface Applied {
  /** What is dialled; the torque itself where no adapter is on. */
  readonly setting: Quantity;
  readonly low: Quantity;
  readonly high: Quantity;
}

export interface AppliedInputs {
  readonly torque: Quantity;
  readonly range: Amount;
  readonly accuracy: string;
  readonly adapter?: AdapterInputs;
}

/**
 * The band that the fastener gets: the reading being within ±a of the true value, that lies from T/(1 + a) to T/(1 − a). Refused
 * where the setting is outside the working range. Source: ISO 6789-1:2017; deviation = (reading − true)/true.
 */
export function appliedTorque({torque, range, accuracy, adapter}: AppliedInputs): Worked<Applied> {
  const refusal = notOf('torque', {'the torque': torque});
  if (refusal) return refusal;
  const dialled = adapter ? settingFor(torque, adapter) : undefined;
  if (dialled !== undefined && !dialled.ok) return dialled;
  const setting = dialled?.result ?? torque;
  const works = workingRange(range);
  if (!works.ok) return works;
  const outside = outsideRange(setting, works);
  if (outside) return outside;
  const read = readAccuracy(accuracy, works.high);
  if (!read.ok) return read;
  const {fraction, says, source} = read.accuracy;
  const low = bandEnd(torque, 1 / (1 + fraction));
  const high = bandEnd(torque, 1 / (1 - fraction));
  return {
    ok: true,
    result: {setting, low, high},
    formula: `${dialled ? `${dialled.formula}; ` : ''}from T / (1 + a) to T / (1 − a)`,
    inputs: [
      ...(dialled ? dialled.inputs : [{name: 'torque wanted', value: torque}]),
      {name: 'working range', value: {form: 'range', low: works.low, high: works.high}},
      {name: 'accuracy', value: says},
    ],
    band: {name: `accuracy of the wrench ±${round(fraction)} %`, value: {form: 'range', low, high}},
    source: dialled ? `${source}; ${dialled.source}` : source,
    ...(dialled?.advisory ? {advisory: dialled.advisory} : {}),
  };
}

/** Why the wrench may not be set there; nothing where it may. */
export function outsideRange(
  setting: Quantity,
  {low, high}: {readonly low: Quantity; readonly high: Quantity},
): Refused | undefined {
  const end =
    si(setting) < si(low) * (1 - 1e-9) ? 'below' : si(setting) > si(high) * (1 + 1e-9) ? 'above' : undefined;
  if (end === undefined) return undefined;
  const limit = end === 'below' ? low : high;
  const says = `a setting of ${formatQuantity(setting)} is ${end} the ${formatQuantity(limit)} that the wrench ${end === 'below' ? 'starts' : 'ends'} at`;
  return refused(says, `take a ${end === 'below' ? 'smaller' : 'larger'} wrench`);
}

/** To a tenth of the torque's own step, since a band of ±4 % is finer than a whole number shows; a fraction to three figures. */
function bandEnd(torque: Quantity, by: number): Quantity {
  const value = torque.value * by;
  const step = torque.step > 0 ? Math.min(torque.step, 1) / 10 : figures(value, 'N·m', 3).step;
  return convert({value: Number(value.toPrecision(12)), unit: torque.unit, step}, torque.unit);
}

function round(fraction: number): number {
  return Math.round(fraction * 1000) / 10;
}
