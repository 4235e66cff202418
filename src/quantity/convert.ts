/** Arithmetic on quantities and limits: conversion, order, and whether two statements of a value agree. */
import type {Amount, Quantity, Unit} from './model.js';
import {type UnitSymbol, unit} from './units.js';

/** Both in the SI unit of the dimension; an end without a limit is infinite. */
export interface Limits {
  readonly low: number;
  readonly high: number;
}

/**
 * Doubles of equal measures differ by a few bits after conversion; no shop states twelve figures. Near nought (0 K
 * out of °F) the noise is that of the offset: no shop measures to a billionth of a millimetre either.
 */
const NOISE = 1e-12;

/** The value in the coherent SI unit of its dimension, the common ground on which quantities are held together. */
export function si(q: Quantity): number {
  return q.value * q.unit.factor + q.unit.offset;
}

/** The same of a difference, such as a tolerance: a difference of 1 °F is 5/9 K, whatever nought °F is. */
export function difference(q: Quantity): number {
  return q.value * q.unit.factor;
}

/** A quantity in code. Without `step` it takes that of the shortest decimal that gives the value. */
export function quantity(value: number, symbol: UnitSymbol, step = decimalStep(value)): Quantity {
  return {value, unit: unit(symbol), step};
}

/** One in the last place of the shortest decimal that gives `value`: 0.1 for 2.5, 1 for 1200. */
export function decimalStep(value: number): number {
  const [digits = '', exponent = '0'] = String(Math.abs(value)).split('e');
  const decimals = (digits.split('.')[1]?.length ?? 0) - Number(exponent);
  return decimals > 0 ? Number(`1e-${decimals}`) : 1;
}

/**
 * The same quantity in another unit of its dimension, its step converted along.
 * @throws TypeError when the dimensions differ: callers check what a person wrote before they convert it.
 */
export function convert(q: Quantity, to: Unit): Quantity {
  if (q.unit.symbol === to.symbol) return q;
  if (q.unit.dimension !== to.dimension)
    throw new TypeError(
      `${q.unit.symbol} (${q.unit.dimension}) cannot become ${to.symbol} (${to.dimension})`,
    );
  const ratio = q.unit.factor / to.factor;
  const shift = (q.unit.offset - to.offset) / to.factor;
  return {value: q.value * ratio + shift, unit: to, step: q.step * ratio};
}

/** The same for a difference of two quantities: 9 °F of tolerance are 5 °C, not −12.8 °C. */
export function convertDifference(q: Quantity, to: Unit): Quantity {
  return {...convert({...q, unit: {...q.unit, offset: 0}}, {...to, offset: 0}), unit: to};
}

/** Negative when `a` is the smaller, 0 when they are equal but for rounding noise. */
export function compare(a: Quantity, b: Quantity): number {
  if (a.unit.dimension !== b.unit.dimension)
    throw new TypeError(`${a.unit.symbol} and ${b.unit.symbol} cannot be compared`);
  const [one, other] = [si(a), si(b)];
  return same(one, other) ? 0 : one - other;
}

/**
 * Whether two statements can be of one value: apart by no more than half of the coarser last place. 115 N·m agrees
 * with 85 lbf·ft, 120 N·m does not.
 */
export function agrees(a: Quantity, b: Quantity): boolean {
  return a.unit.dimension === b.unit.dimension && edgesAgree(edge(a), edge(b));
}

/**
 * The same for amounts. A range agrees with a tolerance of the same limits, and a single value with the nominal of
 * a tolerance: the statement leaves the tolerance to the specification.
 */
export function amountsAgree(a: Amount, b: Amount): boolean {
  if (a.form === 'single' && b.form === 'tolerance') return agrees(a.value, b.nominal);
  if (a.form === 'tolerance' && b.form === 'single') return agrees(a.nominal, b.value);
  if ((a.form === 'single') !== (b.form === 'single') || dimensionOf(a) !== dimensionOf(b)) return false;
  const [one, other] = [edgesOf(a), edgesOf(b)];
  const agree = a.form === 'single' ? edgesAgree : limitsAgree;
  return agree(one.low, other.low) && agree(one.high, other.high);
}

/** Whether a statement can be of one of the limits. */
export function agreesWithEnd(q: Quantity, limits: Amount): boolean {
  const {low, high} = edgesOf(limits);
  return [low, high].some((end) => end !== undefined && edgesAgree(edge(q), end));
}

/** What the amount is an amount of. */
export function dimensionOf(amount: Amount): Unit['dimension'] {
  return unitOf(amount).dimension;
}

/** The unit that the amount is stated in; of a range, that of its upper limit. */
export function unitOf(amount: Amount): Unit {
  if (amount.form === 'single') return amount.value.unit;
  if (amount.form === 'tolerance') return amount.nominal.unit;
  return amount.form === 'least' ? amount.low.unit : amount.high.unit;
}

/** The lowest value that the amount allows, in the unit stated; of a single value, the value itself. */
export function lowOf(amount: Amount): Quantity | undefined {
  if (amount.form === 'single') return amount.value;
  if (amount.form === 'tolerance') return sum(amount.nominal, amount.minus, -1);
  return amount.form === 'most' ? undefined : amount.low;
}

/** The highest value that the amount allows, likewise. */
export function highOf(amount: Exclude<Amount, {form: 'least'}>): Quantity;
export function highOf(amount: Amount): Quantity | undefined;
export function highOf(amount: Amount): Quantity | undefined {
  if (amount.form === 'single') return amount.value;
  if (amount.form === 'tolerance') return sum(amount.nominal, amount.plus, 1);
  return amount.form === 'least' ? undefined : amount.high;
}

/** The highest value that the amount allows; the lowest where it names no other. */
export function upperOf(amount: Amount): Quantity {
  return amount.form === 'least' ? amount.low : highOf(amount);
}

/** The amount's limits in SI; both are the value where it is a single one. */
export function limitsOf(amount: Amount): Limits {
  const {low, high} = edgesOf(amount);
  return {low: low?.value ?? -Infinity, high: high?.value ?? Infinity};
}

/** Whether the quantity lies within the limits, the limits themselves included. The dimension is the caller's care. */
export function contains(limits: Limits, q: Quantity): boolean {
  const value = si(q);
  return atMost(limits.low, value) && atMost(value, limits.high);
}

/** Upper less lower limit, in SI; infinite where an end has none. */
export function widthOf(limits: Limits): number {
  return limits.high - limits.low;
}

/** Whether whatever keeps the inner limits keeps the outer ones. */
export function within(inner: Limits, outer: Limits): boolean {
  return atMost(outer.low, inner.low) && atMost(inner.high, outer.high);
}

/** A value in SI and how far apart another statement of it may lie, in the same unit. */
interface Edge {
  readonly value: number;
  readonly step: number;
}

function edge(q: Quantity): Edge {
  return {value: si(q), step: q.step * q.unit.factor};
}

/** Nought is as fine as the other limit: in `0–0.1 mm` it is not nought to the nearest millimetre. */
function limitEdge(q: Quantity, other: Quantity | undefined): Edge {
  const own = edge(q);
  return q.value === 0 && other !== undefined ? {...own, step: Math.min(own.step, edge(other).step)} : own;
}

function edgesOf(amount: Amount): {readonly low: Edge | undefined; readonly high: Edge | undefined} {
  const [low, high] = [lowOf(amount), highOf(amount)];
  return {low: low && limitEdge(low, high), high: high && limitEdge(high, low)};
}

function edgesAgree(a: Edge | undefined, b: Edge | undefined, steps = 0.5): boolean {
  if (a === undefined || b === undefined) return a === b;
  // A difference of exactly half a step must not hang on the last bit.
  return Math.abs(a.value - b.value) <= Math.max(a.step, b.step) * steps + noise(a.value, b.value);
}

/** A fraction is exact, so that a limit converted from one and rounded inwards may lie a whole step away. */
function limitsAgree(a: Edge | undefined, b: Edge | undefined): boolean {
  return edgesAgree(a, b, a?.step === 0 || b?.step === 0 ? 1 : 0.5);
}

/** Nominal plus or less a part, in the nominal's unit; the coarser of the two steps is what the sum bears. */
function sum(nominal: Quantity, part: Quantity, sign: 1 | -1): Quantity {
  const {value, step} = convertDifference(part, nominal.unit);
  // Fifteen figures drop the noise of adding decimals, so that 2.4995 + 0.0005 prints as 2.5.
  const total = Number((nominal.value + sign * value).toPrecision(15));
  return {value: total, unit: nominal.unit, step: Math.max(nominal.step, step)};
}

function same(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= noise(a, b);
}

function noise(a: number, b: number): number {
  return NOISE * Math.max(Math.abs(a), Math.abs(b), 1);
}

function atMost(a: number, b: number): boolean {
  return a <= b || same(a, b);
}
