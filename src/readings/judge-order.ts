/** Steps that were entered out of the order of the sheet. */
import type {Form} from '../build/form.js';
import {fill} from '../text/fill.js';
import {withoutEnd} from '../text/runs.js';
import {few, minuteUtc} from './figures.js';
import {remark} from './remark.js';
import type {Remark} from './report.js';
import type {Answers} from './unrolled.js';
import {counted, type ReportWords} from './words.js';

/** As few steps as explain the order in which everything was begun: what is left without them follows the sheet. */
export function orderRemarks({procedure, boxes}: Form, answers: Answers, words: ReportWords): Remark[] {
  const begun = new Map<string, {readonly step: string; readonly index: number; readonly at: string}>();
  for (const {key, step} of boxes) {
    const first = answers.get(key)?.history.find(({value}) => value.trim() !== '');
    if (step === '' || first === undefined) continue;
    const known = begun.get(step);
    if (known === undefined || first.index < known.index)
      begun.set(step, {step, index: first.index, at: first.at});
  }
  // A step with steps of its own is ticked before them or after, as people like.
  const whole = new Set([...begun.keys()].map(stepAround));
  const steps = [...begun.values()].filter(({step}) => !whole.has(step));
  const inTurn = longestRising(steps.map(({index}) => index));
  const out = steps.filter((_, place) => !inTurn.has(place));
  if (out.length === 0) return [];
  const list = few(
    out.map(({step, at}) => `${step} (${minuteUtc(at)})`),
    words,
  );
  const message = fill(counted(out.length, words.remarks.outOfOrder), {steps: list});
  return [remark('out-of-order', {sheet: procedure, step: '', message})];
}

/** `3b` of `3b1`, `3` of `3b`, nothing of `3`: figures and letters take turns in the numbers of steps. */
function stepAround(step: string): string {
  return withoutEnd(step, /\d$/.test(step) ? /\d/ : /[a-z]/);
}

/** Places of a longest run of numbers that only rise; the numbers differ from each other. */
function longestRising(numbers: readonly number[]): ReadonlySet<number> {
  // For each length of run the place where one of that length ends lowest; and for each place the one before it.
  const ends: number[] = [];
  const before: (number | undefined)[] = [];
  const at = (place: number | undefined) =>
    place === undefined ? Number.NaN : (numbers[place] ?? Number.NaN);
  numbers.forEach((number, place) => {
    let low = 0;
    let high = ends.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (at(ends[middle]) < number) low = middle + 1;
      else high = middle;
    }
    before[place] = ends[low - 1];
    ends[low] = place;
  });
  const run = new Set<number>();
  for (let place = ends.at(-1); place !== undefined; place = before[place]) run.add(place);
  return run;
}
