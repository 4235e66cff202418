/**
 * Prints quantities and amounts as a shop would write them, in one system or in both. What is printed reads back as
 * the same amount, and limits that are converted are rounded inwards: a rounded limit must not pass a bad part.
 */
import {convert, decimalStep, highOf, lowOf, unitOf} from './convert.js';
import {otherUnit} from './counterpart.js';
import type {Amount, Quantity, Unit} from './model.js';

/** The system that a shop thinks in; the other one follows in brackets. */
export type System = 'inch' | 'metric';

/** `85 lbf·ft`, `90°`, `1-1/2 in`, `0.0015 in`: as many figures as its step bears. */
export function formatQuantity(q: Quantity): string {
  return number(q) + suffix(q.unit);
}

/** `0.0015–0.0025 in`, `2.4995 ±0.0005 in`, `1.000 +0.001/−0.000 in`, `max 5 lbf·ft`. */
export function formatAmount(amount: Amount): string {
  switch (amount.form) {
    case 'single':
      return formatQuantity(amount.value);
    case 'most':
      return `max ${formatQuantity(amount.high)}`;
    case 'least':
      return `min ${formatQuantity(amount.low)}`;
    case 'range':
      return formatRange(amount.low, amount.high);
    case 'tolerance':
      return formatTolerance(amount);
  }
}

/**
 * In the system that the shop prints first, the other behind it: `85 lbf·ft (115 N·m)`. What has no other system
 * (angle, time) is printed once.
 */
export function formatBoth(amount: Amount, first: System): string {
  const other = inOtherSystem(amount);
  const stated = formatAmount(amount);
  if (other === undefined) return stated;
  const [one, two] = unitOf(amount).system === first ? [stated, other] : [other, stated];
  return `${one} (${two})`;
}

/** The same amount in the other system's usual unit, printed; undefined where its unit serves both. */
export function inOtherSystem(amount: Amount): string | undefined {
  const to = otherUnit(amount);
  return to === undefined ? undefined : formatAmount(restated(amount, to));
}

/**
 * The amount in another unit, rounded to the figures that it bears, so that it still agrees with what was stated.
 * Limits are rounded inwards; a tolerance becomes a range, since a rounded nominal would shift both limits.
 */
export function restated(amount: Amount, to: Unit): Amount {
  if (amount.form === 'single') return {form: 'single', value: rounded(convert(amount.value, to))};
  const [low, high] = [lowOf(amount), highOf(amount)].map((limit) => limit && convert(limit, to));
  if (low !== undefined && high !== undefined) return restatedRange(low, high);
  if (high !== undefined) return {form: 'most', high: inwards(high, floor)};
  return low === undefined ? amount : {form: 'least', low: inwards(low, ceil)};
}

/** Finer until both limits agree with what was stated and leave something between them. */
function restatedRange(low: Quantity, high: Quantity): Amount {
  for (let place = placeFor([low, high]); place >= FINEST; place--) {
    const range = {low: atPlace(low, place, ceil), high: atPlace(high, place, floor)};
    const kept = !loses(low, range.low, place) && !loses(high, range.high, place);
    if (kept && range.low.value < range.high.value) return {form: 'range', ...range};
  }
  return {form: 'range', low: inFull(low), high: inFull(high)};
}

/** No limit is printed finer than 10^-10 of its unit. */
const FINEST = -10;

/** The nearest value with the figures that the stated one bears, and two of them at least. */
function rounded(q: Quantity): Quantity {
  if (q.step === 0) return inFull({...q, value: Number(q.value.toPrecision(5))});
  const coarse = atPlace(q, placeFor([q]), Math.round);
  return Math.abs(coarse.value) < 10 * coarse.step ? atPlace(q, placeBelow(q.step), Math.round) : coarse;
}

function inwards(q: Quantity, round: (marks: number) => number): Quantity {
  for (let place = placeFor([q]); place >= FINEST; place--) {
    const inside = atPlace(q, place, round);
    if (!loses(q, inside, place)) return inside;
  }
  return inFull(q);
}

/** Whether the limit, rounded at 10^place, moved so far in that it no longer agrees with what was stated. */
function loses(stated: Quantity, inside: Quantity, place: number): boolean {
  if (stated.step === 0) return false;
  const reach = Math.max(stated.step, 10 ** Math.min(place, 0)) / 2;
  return Math.abs(stated.value - inside.value) > reach * (1 + 1e-9);
}

/** The decimal place for converted values, as a power of ten: the coarsest of which half is within half a step. */
function placeFor(quantities: readonly Quantity[]): number {
  const places = quantities.map((q) => {
    // A fraction has no last place of its own: five figures are more than any shop reads.
    if (q.step === 0) return q.value === 0 ? 0 : Math.min(0, placeBelow(Math.abs(q.value)) - 4);
    // 1 °F is 0.56 °C and 1 N·m is 0.74 lbf·ft: a whole number is what a shop would write. A whole number above
    // ten reads as exact to one, so there the place may not go up.
    const near = placeBelow(q.step * 2);
    return near > 0 ? placeBelow(q.step) : near;
  });
  // The finest place may come from a small limit, and the other be a thousand million times as large.
  const largest = Math.max(...quantities.map(({value}) => Math.abs(value)));
  return Math.max(Math.min(...places), largest === 0 ? FINEST : placeBelow(largest) - MOST_FIGURES + 1);
}

/** With a leading nought and the point they come to the 15 characters that `scan.ts` reads back. */
const MOST_FIGURES = 13;

/** The power of ten that is no more than `step`. */
function placeBelow(step: number): number {
  return Math.floor(Math.log10(step) + 1e-9);
}

/** Conversion noise must not push a limit that falls on a mark to the next one. */
const ceil = (marks: number): number => Math.ceil(marks - Math.abs(marks) * 1e-12);
const floor = (marks: number): number => Math.floor(marks + Math.abs(marks) * 1e-12);

/** The quantity at a whole number of marks of 10^place. */
function atPlace(q: Quantity, place: number, round: (marks: number) => number): Quantity {
  // Powers of ten of negative exponent are not exact: multiply by the whole one instead.
  const marks = place < 0 ? round(q.value * 10 ** -place) : round(q.value / 10 ** place);
  const value =
    place < 0 ? Number((marks / 10 ** -place).toFixed(Math.min(100, -place))) : marks * 10 ** place;
  const step = place < 0 ? Number(`1e${place}`) : 1;
  const plain = {value: value === 0 ? 0 : value, unit: q.unit, step};
  return q.step === 0 ? inFull(plain) : plain;
}

/** With just the decimals that the value has: 38.1 mm for 1-1/2 in. Thirteen figures leave only noise behind. */
function inFull(q: Quantity): Quantity {
  const value = Number(q.value.toPrecision(13));
  return {value, unit: q.unit, step: decimalStep(value)};
}

function formatRange(low: Quantity, high: Quantity): string {
  if (low.unit.symbol !== high.unit.symbol) return `${formatQuantity(low)} to ${formatQuantity(high)}`;
  // A dash beside a sign or a mixed number's hyphen would be hard to read.
  const plain = low.value >= 0 && high.value >= 0 && low.step > 0 && high.step > 0;
  return `${number(low)}${plain ? '–' : ' to '}${formatQuantity(high)}`;
}

function formatTolerance({nominal, minus, plus}: Extract<Amount, {form: 'tolerance'}>): string {
  const even =
    minus.value === plus.value && minus.step === plus.step && minus.unit.symbol === plus.unit.symbol;
  if (even && plus.value > 0) return `${number(nominal)}${unless(nominal, plus)} ±${formatQuantity(plus)}`;
  const parts = `${signed(plus, 1)}${unless(plus, minus)}/${signed(minus, -1)}${suffix(minus.unit)}`;
  return `${number(nominal)}${unless(nominal, minus)} ${parts}`;
}

/** The unit of the first only where the second's does not serve both. */
function unless(first: Quantity, second: Quantity): string {
  return first.unit.symbol === second.unit.symbol ? '' : suffix(first.unit);
}

/** A deviation with its sign; `sense` is −1 for the part that is taken off. */
function signed(q: Quantity, sense: 1 | -1): string {
  const value = q.value === 0 ? 0 : q.value * sense;
  const up = value > 0 || (value === 0 && sense === 1);
  return (up ? '+' : '−') + number({...q, value: Math.abs(value)});
}

function suffix(of: Unit): string {
  return of.symbol === '°' ? '°' : ` ${of.symbol}`;
}

function number(q: Quantity): string {
  const digits = magnitude(Math.abs(q.value), q.step);
  // A value that rounds to nought has no sign.
  return q.value < 0 && /[1-9]/.test(digits) ? `−${digits}` : digits;
}

function magnitude(value: number, step: number): string {
  if (step === 0) return fraction(value) ?? String(value);
  const place = placeBelow(step);
  if (place >= 0) return String(Math.round(value / 10 ** place) * 10 ** place);
  return value.toFixed(Math.min(100, -place));
}

/** Denominators up to 1,000, so that any fraction on a rule or a drawing comes back as it was written. */
const LARGEST_DENOMINATOR = 1000;

function fraction(value: number): string | undefined {
  const whole = Math.floor(value);
  for (let under = 2; under <= LARGEST_DENOMINATOR; under++) {
    const over = Math.round((value - whole) * under);
    if (over === 0 || over === under || whole + over / under !== value) continue;
    return whole === 0 ? `${over}/${under}` : `${whole}-${over}/${under}`;
  }
  return undefined;
}
