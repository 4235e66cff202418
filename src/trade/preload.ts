/** Torque to preload and back, by what is on the threads, as a share of what the bolt can bear. */
import {convert} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {type Friction, frictionOf, scatterOf} from './friction.js';
import type {Grade} from './grade.js';
import type {ThreadCondition, TighteningMethod} from './nut-factors.js';
import {figures} from './result.js';
import {areaOf} from './stress-area.js';
import {metresOf, type Thread} from './thread.js';
import {ESTIMATE, type Named, notOf, type Refused, refused, type Worked} from './worked.js';

/** A value with where it may lie. */
export interface Spread {
  readonly likely: number;
  readonly low: number;
  readonly high: number;
}

export interface Preload {
  readonly force: Quantity;
  readonly low: Quantity;
  readonly high: Quantity;
  /** Over the tensile stress area, ksi or MPa. */
  readonly stress: Quantity;
  /** Per cent of the proof and of the yield load, where the grade is known. */
  readonly ofProof?: Spread;
  readonly ofYield?: Spread;
  readonly friction: Friction;
}

export interface PreloadInputs {
  readonly thread: Thread;
  readonly torque: Quantity;
  /** The shop's own nut factor, or the condition of the threads. */
  readonly friction: number | ThreadCondition;
  readonly grade?: Grade;
  /** A torque wrench where nothing is said. */
  readonly method?: TighteningMethod;
  /** What it takes to run a self-locking nut down; it makes no preload (AC 43.13-1B, 7-40 d). */
  readonly prevailing?: Quantity;
}

/**
 * F = (T − prevailing) / (K·d), d the nominal major diameter. Valid below yield, for a joint that is drawn up, not for a gasket still giving way.
 * Source: Shigley 9th ed., Eq. 8-27; scatter as in `nut-factors.ts`.
 */
export function preloadOf(inputs: PreloadInputs): Worked<Preload> {
  const {thread, torque, grade, method = 'torque wrench', prevailing} = inputs;
  const refusal =
    notOf('torque', {'the torque': torque}) ??
    notOf('torque', {'the prevailing torque': prevailing}, 'not-negative');
  if (refusal) return refusal;
  const friction = frictionOf(inputs.friction);
  if ('ok' in friction) return friction;
  const net = newtonMetres(torque) - (prevailing ? newtonMetres(prevailing) : 0);
  if (net <= 0)
    return refused('the prevailing torque takes all of the torque', 'it is added to the specified one');
  const newtons = net / (friction.nutFactor * metresOf(thread).d);
  const scatter = scatterOf(method, friction.condition);
  const force = (factor: number): Quantity => forceLike(newtons * factor, thread);
  const band = {low: force(1 - scatter.fraction), high: force(1 + scatter.fraction)};
  const pascals = newtons / areaOf(thread).squareMetres;
  const shares = grade ? sharesOf(pascals, grade, scatter.fraction) : {};
  return {
    ok: true,
    result: {force: force(1), ...band, stress: stressLike(pascals, thread), ...shares, friction},
    formula: prevailing ? 'F = (T − prevailing) / (K · d)' : 'F = T / (K · d)',
    inputs: statedInputs(inputs, friction),
    band: {name: `scatter of ${method} ±${percent(scatter.fraction)} %`, value: {form: 'range', ...band}},
    source: `Shigley 9th ed., Eq. 8-27; K: ${friction.source}; scatter: ${scatter.source}`,
    advisory: `${ESTIMATE}${disagreement(friction)}`,
  };
}

export interface TorqueInputs {
  readonly thread: Thread;
  readonly friction: number | ThreadCondition;
  /** Either a preload, or a share of the proof load of a grade: 0.75 for joints that are taken apart again. */
  readonly preload?: Quantity;
  readonly grade?: Grade;
  readonly share?: number;
}

/** T = K·F·d, with F given or F = share·Sp·At. Shares above 0 to 1; 0.75 where nothing is said. Source: Shigley 9th ed., Eq. 8-27 and 8-31. */
export function torqueFor(inputs: TorqueInputs): Worked<Quantity> {
  const {thread, preload, grade, share = 0.75} = inputs;
  const refusal = notOf('force', {'the preload': preload});
  if (refusal) return refusal;
  const friction = frictionOf(inputs.friction);
  if ('ok' in friction) return friction;
  const newtons = preload ? preload.value * preload.unit.factor : shareOf(thread, grade, share);
  if (typeof newtons !== 'number') return newtons;
  const torque = friction.nutFactor * newtons * metresOf(thread).d;
  const target: Named = preload
    ? {name: 'preload', value: preload}
    : {name: 'preload', value: `${percent(share)} % of proof load, ${grade?.name}`};
  return {
    ok: true,
    result: torqueLike(torque, thread),
    formula: preload ? 'T = K · F · d' : 'T = K · d · share · Sp · At',
    inputs: [{name: 'thread', value: thread.name}, target, factorInput(friction)],
    source: `Shigley 9th ed., Eq. 8-27${preload ? '' : ', 8-31 and 8-32'}; K: ${friction.source}`,
    advisory: `${ESTIMATE}${disagreement(friction)}`,
  };
}

/**
 * The long form, with friction of thread and bearing face apart: T = F·[dm/2·(tan λ + f·sec 30°)/(1 − f·tan λ·sec 30°) + 0.625·fc·d].
 * Friction 0.03 to 0.4 each. Source: Shigley 9th ed., Eq. 8-25 and 8-26 (dc = 1.25·d).
 */
export function longFormTorque(inputs: {
  readonly thread: Thread;
  readonly preload: Quantity;
  readonly threadFriction: number;
  readonly faceFriction: number;
}): Worked<Quantity> {
  const {thread, preload, threadFriction: f, faceFriction: fc} = inputs;
  const refusal = notOf('force', {'the preload': preload});
  if (refusal) return refusal;
  if ([f, fc].some((value) => !(value >= 0.03 && value <= 0.4)))
    return refused('a coefficient of friction is outside 0.03 to 0.4', 'about 0.12 is oiled steel, 0.15 dry');
  const {d, p} = metresOf(thread);
  const minor = d - (thread.family === 'unified' ? 1.299_038 : 1.226_869) * p;
  const mean = (d + minor) / 2;
  const lead = p / (Math.PI * mean);
  const secant = 1 / Math.cos(Math.PI / 6);
  const arm = ((mean / 2) * (lead + f * secant)) / (1 - f * lead * secant) + 0.625 * fc * d;
  return {
    ok: true,
    result: torqueLike(preload.value * preload.unit.factor * arm, thread),
    formula: 'T = F · [dm/2 · (tan λ + f·sec 30°)/(1 − f·tan λ·sec 30°) + 0.625·fc·d]',
    inputs: [
      {name: 'thread', value: thread.name},
      {name: 'preload', value: preload},
      {name: 'friction of the thread', value: String(f)},
      {name: 'friction of the face', value: String(fc)},
    ],
    source: 'Shigley 9th ed., Eq. 8-25 and 8-26',
    advisory: ESTIMATE,
  };
}

function shareOf(thread: Thread, grade: Grade | undefined, share: number): number | Refused {
  if (grade === undefined) return refused('neither preload nor grade is given', 'give one of them');
  if (!(share > 0 && share <= 1))
    return refused(
      `a share of ${share} is outside 0 to 1`,
      '0.75 for joints that are taken apart again, 0.90 for others',
    );
  return share * grade.proof.value * grade.proof.unit.factor * areaOf(thread).squareMetres;
}

function sharesOf(pascals: number, grade: Grade, scatter: number): {ofProof: Spread; ofYield: Spread} {
  const of = (strength: Quantity): Spread => {
    const likely = (100 * pascals) / (strength.value * strength.unit.factor);
    return {likely, low: likely * (1 - scatter), high: likely * (1 + scatter)};
  };
  return {ofProof: of(grade.proof), ofYield: of(grade.yield)};
}

function statedInputs({thread, torque, grade, prevailing}: PreloadInputs, friction: Friction): Named[] {
  return [
    {name: 'thread', value: thread.name},
    {name: 'torque', value: torque},
    ...(prevailing ? [{name: 'prevailing torque', value: prevailing}] : []),
    factorInput(friction),
    ...(grade ? [{name: 'grade', value: grade.name}] : []),
  ];
}

function factorInput(friction: Friction): Named {
  return {name: 'nut factor K', value: `${friction.nutFactor} (${friction.says})`};
}

function disagreement({nutFactor, published: {low, high}, says}: Friction): string {
  return low === high
    ? ''
    : ` For ${says} threads K is published from ${low} to ${high}; ${nutFactor} is taken.`;
}

function newtonMetres(torque: Quantity): number {
  return torque.value * torque.unit.factor;
}

/** Inch threads in lbf, metric ones in kN, to three figures. */
export function forceLike(newtons: number, thread: Thread): Quantity {
  const symbol = thread.family === 'unified' ? 'lbf' : 'kN';
  return figures(newtons / unit(symbol).factor, symbol, 3);
}

function stressLike(pascals: number, thread: Thread): Quantity {
  const symbol = thread.family === 'unified' ? 'ksi' : 'MPa';
  return figures(pascals / unit(symbol).factor, symbol, 3);
}

/** Inch threads in lbf·ft, small ones in lbf·in; metric ones in N·m. */
function torqueLike(newtonMetre: number, thread: Thread): Quantity {
  const metric = figures(newtonMetre, 'N·m', 3);
  if (thread.family === 'metric') return metric;
  const feet = convert(metric, unit('lbf·ft')).value;
  return feet < 10 ? figures(feet * 12, 'lbf·in', 3) : figures(feet, 'lbf·ft', 3);
}

function percent(fraction: number): number {
  return Math.round(fraction * 1000) / 10;
}
