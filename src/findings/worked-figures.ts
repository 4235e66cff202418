/** What the engineering findings share: a fastener's thread, grade and friction as read, and how figures are told. */
import {convert} from '../quantity/convert.js';
import {formatBoth} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import type {Fastener, Specification} from '../spec/model.js';
import {type Grade, type GradeReading, gradeOf} from '../trade/grade.js';
import type {ThreadCondition} from '../trade/nut-factors.js';
import {readThread, type Thread, type ThreadReading} from '../trade/thread.js';

/** Said with every figure that a maker's would outrank. */
export const OUTRANKED = "the maker's figure outranks this estimate";

/** How threads and grades are read: as they come, or remembered through a check. */
export interface Reading {
  readonly thread: (text: string) => ThreadReading;
  readonly grade: (text: string, thread: Thread) => GradeReading;
}

const ANEW: Reading = {thread: readThread, grade: gradeOf};

/** Undefined where the specification states none, or one that the tables do not have. */
export function threadOf({thread}: Fastener, read: Reading = ANEW): Thread | undefined {
  const reading = thread && read.thread(thread.value);
  return reading?.ok ? reading.thread : undefined;
}

export function strengthOf({grade}: Fastener, thread: Thread, read: Reading = ANEW): Grade | undefined {
  const reading = grade && read.grade(grade.value, thread);
  return reading?.ok ? reading.grade : undefined;
}

/** What is on the threads: K where the shop states it, else the condition for which one is published. */
export interface OnThreads {
  /** A consumable's id, or `dry`. */
  readonly what: string;
  readonly friction: number | ThreadCondition;
}

/** Each that the specification allows; none where it does not say. */
export function onThreads({threads}: Fastener, {items}: Pick<Specification, 'items'>): OnThreads[] {
  const asked = threads?.value;
  if (asked === undefined || asked === 'unknown') return [];
  if (asked === 'dry') return [{what: 'dry', friction: 'dry'}];
  return asked.flatMap((what) => {
    const item = items.get(what);
    if (item?.kind !== 'consumable') return [];
    const published = item.use === 'lubricant' ? 'oiled' : 'not stated';
    return [{what, friction: item.k?.value ?? published}];
  });
}

/** The value that is aimed at: the middle of two limits; undefined where there is only one. */
export function aimedAt(amount: Amount): Quantity | undefined {
  if (amount.form === 'single') return amount.value;
  if (amount.form === 'tolerance') return amount.nominal;
  if (amount.form !== 'range') return undefined;
  const {low, high} = amount;
  return {...low, value: (low.value + convert(high, low.unit).value) / 2};
}

/** A figure in both unit systems, as the shop prints it. */
export function told(figure: Quantity | Amount, {shop}: Specification): string {
  return formatBoth('form' in figure ? figure : {form: 'single', value: figure}, shop.units);
}
