/** Remarks on boxes as such: unanswered, answered with another number than the job's, or not of this sheet at all. */
import type {Box, Form} from '../build/form.js';
import {fill} from '../text/fill.js';
import {grouped} from '../text/grouped.js';
import {few} from './figures.js';
import {remark} from './remark.js';
import type {Remark} from './report.js';
import {stamped} from './stamped.js';
import type {Answers} from './unrolled.js';
import {counted, type ReportWords} from './words.js';

/** How many boxes had to be answered as things stand, and how many of them were. */
export interface Boxes {
  readonly asked: number;
  readonly answered: number;
  readonly remarks: readonly Remark[];
}

/** On a sheet that nobody has signed off, what is unanswered is still open; later it is missing. */
export function boxesOf(
  form: Form,
  answers: Answers,
  {due, isOpen}: {readonly due: (box: Box) => boolean; readonly isOpen: boolean},
  words: ReportWords,
): Boxes {
  const asked = form.boxes.filter(due);
  const open = asked.filter(({key}) => answers.get(key)?.now === undefined);
  const {procedure: sheet} = form;
  return {
    asked: asked.length,
    answered: asked.length - open.length,
    remarks: [
      ...(isOpen ? stillOpen(form, open, answers, words) : missing(sheet, open, words)),
      ...differing(form, answers, words),
      ...unknown(form, answers, words),
    ],
  };
}

/** A remark for each step that was passed over, and one for all that is to come after the last answer. */
function stillOpen(
  {procedure: sheet, boxes}: Form,
  open: readonly Box[],
  answers: Answers,
  words: ReportWords,
): Remark[] {
  const reached = boxes.findLastIndex(({key}) => answers.get(key)?.now !== undefined);
  const places = new Map(boxes.map(({key}, at) => [key, at]));
  // The step that is being worked at is not passed over yet.
  const isPassed = ({key, step}: Box) => (places.get(key) ?? 0) < reached && step !== boxes[reached]?.step;
  const passed = missing(sheet, open.filter(isPassed), words).map(({step, message}) =>
    remark('still-open', {sheet, step, message: fill(words.remarks.passedOver, {says: message})}),
  );
  const ahead = open.filter((box) => !isPassed(box));
  const [first] = ahead.filter(({step}) => step !== '');
  if (ahead.length === 0) return passed;
  const count = counted(ahead.length, words.remarks.open);
  const message = first === undefined ? count : fill(words.remarks.openFrom, {open: count, step: first.step});
  return [...passed, remark('still-open', {sheet, step: '', message})];
}

/** One remark a step. */
function missing(sheet: string, open: readonly Box[], words: ReportWords): Remark[] {
  const steps = grouped(open, ({step}) => step);
  return [...steps].map(([step, boxes]) => {
    const labels = [...new Set(boxes.map(({label}) => short(label)))];
    const message = fill(words.remarks.notAnswered, {labels: few(labels, words, 3, '; ')});
    return remark('missing', {sheet, step, message});
  });
}

/** The box of a step is called by the whole text of the step, of which the beginning is enough. */
function short(label: string): string {
  if (label.length <= SHORT) return label.replace(/\.$/, '');
  let end = SHORT;
  while (end > 0 && /[.\s]/.test(label.charAt(end - 1))) end--;
  return `${label.slice(0, end)}…`;
}

const SHORT = 60;

function differing(form: Form, answers: Answers, words: ReportWords): Remark[] {
  return form.boxes.flatMap((box) => {
    if (box.kind !== 'line' || box.expected === undefined) return [];
    const now = answers.get(box.key)?.now;
    if (now === undefined || stamped(now.value) === stamped(box.expected)) return [];
    const {label, expected} = box;
    const message = fill(words.remarks.markDiffers, {label, value: now.value, by: now.by, expected});
    return [remark('mark-differs', {sheet: form.procedure, step: box.step, item: box.item, message})];
  });
}

function unknown({procedure: sheet, boxes}: Form, answers: Answers, words: ReportWords): Remark[] {
  const known = new Set(boxes.map(({key}) => key));
  const strange = [...answers.keys()].filter((key) => !known.has(key));
  if (strange.length === 0) return [];
  const message = fill(words.remarks.boxUnknown, {boxes: few(strange, words)});
  return [remark('box-unknown', {sheet, step: '', message})];
}
