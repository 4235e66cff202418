/** Figures asked as at the bench, by their names and the texts of their options, and what they tell as lines. */
import {formatAmount, formatQuantity} from '../../src/quantity/format.js';
import type {Figure} from '../../src/trade/figure.js';
import {FIGURES} from '../../src/trade/figures/registry.js';
import type {Named, Worked} from '../../src/trade/worked.js';
import {out, refusal} from './unwrap.js';

export type Texts = Readonly<Record<string, string | readonly string[]>>;

/** The figure with these texts in place of those of its own example. */
export function asked(subject: string, texts: Texts): Worked<readonly Named[]> {
  const figure = figureOf(subject);
  return figure.work(new Map([...figure.example, ...given(texts)]));
}

/** The figure with these texts alone. */
export function askedAlone(subject: string, texts: Texts): Worked<readonly Named[]> {
  return figureOf(subject).work(new Map(given(texts)));
}

/** `wear limit: 0.0043 in`, a line each. */
export function lines(values: readonly Named[]): readonly string[] {
  return values.map(({name, value}) => `${name}: ${text(value)}`);
}

/** The lines of the result, or the refusal. */
export function answer(worked: Worked<readonly Named[]>): readonly string[] {
  return worked.ok ? lines(worked.result) : [worked.says, worked.hint];
}

/** The lines of the result, which there must be. */
export function told(worked: Worked<readonly Named[]>): readonly string[] {
  return lines(out(worked).result);
}

/** All that stands beside the result: formula, inputs, band, source and advice, a line each. */
export function working(worked: Worked<unknown>): readonly string[] {
  const {formula, inputs, band, source, advisory = ''} = out(worked);
  return [formula, ...lines([...inputs, ...(band ? [band] : [])]), source, advisory];
}

/** `what is wrong; what to do`. */
export function refused(worked: Worked<unknown>): string {
  const {says, hint} = refusal(worked);
  return `${says}; ${hint}`;
}

/** The lines of what was given and taken. */
export function inputsOf(worked: Worked<unknown>): readonly string[] {
  return lines(out(worked).inputs);
}

export function figureOf(subject: string): Figure {
  const figure = FIGURES.find(({name}) => name === subject);
  if (figure === undefined) throw new Error(`no figure ${subject}`);
  return figure;
}

function given(texts: Texts): (readonly [string, readonly string[]])[] {
  return Object.entries(texts).map(([name, some]) => [name, typeof some === 'string' ? [some] : some]);
}

function text(value: Named['value']): string {
  if (typeof value === 'string') return value;
  return 'form' in value ? formatAmount(value) : formatQuantity(value);
}
