/** The small shapes that the items are made of: names, amounts, and values that say where they come from. */
import * as z from 'zod';
import {LOCKS} from '../model.js';

/** Kebab-case: words of lower-case letters and digits, joined by single hyphens. */
export const NAME_PATTERN = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

export const name = z.string().regex(NAME_PATTERN).describe('a kebab-case name, such as main-caps');
export const names = z.array(name);
export const text = z.string().min(1);
/** Serial numbers and places may well look like numbers. */
export const label = z.union([z.string().min(1), z.number()]);
export const place = z.union([name, z.int().min(0)]);
/** More of one thing than any engine has is a slip of the keyboard. */
export const MOST_COUNT = 10_000;
export const count = z.int().min(1).max(MOST_COUNT);
/** What one bar may name at most: a longer list would be held against every item of its `on`. */
export const MOST_BARRED = 1000;
export const flag = z.boolean();
export const date = z.iso.date();
/** An amount is text, for a number without a unit says nothing. */
export const amount = z.string().min(1);

const UNKNOWN = ['unknown'] as const;
export const unknown = z.enum(UNKNOWN);

export const lockKind = z.enum(LOCKS);

export const source = name.describe('Id of the source that it is taken from, out of `sources`.').optional();
export const note = text.describe('What the reader and the sheet should know of it.').optional();
export const because = text.describe('Why: for a departure from practice, and for `none`.').optional();

/** A value written plainly, or with where it comes from and why. */
export function stated<T extends z.ZodType>(value: T, says: string) {
  const withSource = z.strictObject({value: value.describe(says), source, note, because});
  return z.union([value, withSource]).describe(says).optional();
}

/** The same, for a value that may be unknown to the honest. */
export function statedOrUnknown<T extends z.ZodType>(value: T, says: string) {
  return stated(z.union([unknown, value]), says);
}
