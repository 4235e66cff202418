/** What a row of the tables of ends is, and the two tests that each gets. */
import {expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import type {Amount, Quantity} from '../../src/quantity/model.js';
import type {Worked} from '../../src/trade/worked.js';
import {out, refusal} from './unwrap.js';

export interface End {
  readonly of: string;
  readonly work: (value: number) => Worked<unknown>;
  readonly within: readonly number[];
  readonly beyond: readonly number[];
}

export const inches = (value: number): Quantity => quantity(value, 'in', 0.0001);
export const single = (value: number): Amount => ({form: 'single', value: inches(value)});
export const range = (low: number, high: number): Amount => ({
  form: 'range',
  low: inches(low),
  high: inches(high),
});

/** Declares two tests a row. */
export function tryEnds(ends: readonly End[]): void {
  test.each(ends)('$of: within', ({work, within}) => {
    for (const value of within) out(work(value));
  });

  test.each(ends)('$of: beyond', ({work, beyond}) => {
    for (const value of beyond) expect(refusal(work(value)).hint, `${value}`).not.toMatch(/sign$/);
  });
}
