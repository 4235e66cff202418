/** Figures as a person asks for them, and all that they tell as lines of text. */
import {formatAmount, formatQuantity} from '../../src/quantity/format.js';
import type {Figure} from '../../src/trade/figure.js';
import {FIGURES} from '../../src/trade/figures/registry.js';
import type {Named, Worked} from '../../src/trade/worked.js';
import {out, refusal} from './unwrap.js';

export type Texts = Readonly<Record<string, string | readonly string[]>>;

export function figureOf(subject: string): Figure {
  const figure = FIGURES.find(({name}) => name === subject);
  if (figure === undefined) throw new Error(`no figure ${subject}`);
  return figure;
}

/** With these texts and no others. */
export function askedWith(subject: string, texts: Texts): Worked<readonly Named[]> {
  return figureOf(subject).work(new Map(given(texts)));
}

/** The figure's own example, with these texts in place of its own. */
export function asked(subject: string, texts: Texts): Worked<readonly Named[]> {
  const figure = figureOf(subject);
  return figure.work(new Map([...figure.example, ...given(texts)]));
}

function given(texts: Texts) {
  return Object.entries(texts).map(
    ([name, some]) => [name, typeof some === 'string' ? [some] : some] as const,
  );
}

/** `name: value`, a line each. */
export function lines(values: readonly Named[]): readonly string[] {
  return values.map(({name, value}) => `${name}: ${text(value)}`);
}

function text(value: Named['value']): string {
  if (typeof value === 'string') return value;
  return 'form' in value ? formatAmount(value) : formatQuantity(value);
}

export function told(worked: Worked<readonly Named[]>): readonly string[] {
  return lines(out(worked).result);
}

/** The lines of the result, or the refusal and its hint. */
export function answer(worked: Worked<readonly Named[]>): readonly string[] {
  return worked.ok ? lines(worked.result) : [worked.says, worked.hint];
}

/** The lines of what was given and taken. */
export function inputsOf(worked: Worked<unknown>): readonly string[] {
  return lines(out(worked).inputs);
}

/** All that stands beside the result: formula, inputs, band, source and advice, a line each. */
export function working(worked: Worked<unknown>): readonly string[] {
  const {formula, inputs, band, source, advisory = ''} = out(worked);
  return [formula, ...lines([...inputs, ...(band ? [band] : [])]), source, advisory];
}

export function refused(worked: Worked<unknown>): string {
  const {says, hint} = refusal(worked);
  return `${says}; ${hint}`;
}
