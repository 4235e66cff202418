/** Remarks on boxes as such: unanswered, answered with another number than the job's, or not of this sheet at all. */
import type {Box, Form} from '../build/form.js';
import {few, remark} from './remark.js';
import type {Remark} from './report.js';
import {stamped} from './stamped.js';
import type {Answers} from './unrolled.js';

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
): Boxes {
  const asked = form.boxes.filter(due);
  const open = asked.filter(({key}) => answers.get(key)?.now === undefined);
  const {procedure: sheet} = form;
  return {
    asked: asked.length,
    answered: asked.length - open.length,
    remarks: [
      ...(isOpen ? stillOpen(form, open, answers) : missing(sheet, open)),
      ...differing(form, answers),
      ...unknown(form, answers),
    ],
  };
}

/** A remark for each step that was passed over, and one for all that is to come after the last answer. */
function stillOpen({procedure: sheet, boxes}: Form, open: readonly Box[], answers: Answers): Remark[] {
  const reached = boxes.findLastIndex(({key}) => answers.get(key)?.now !== undefined);
  const places = new Map(boxes.map(({key}, at) => [key, at]));
  // The step that is being worked at is not passed over yet.
  const isPassed = ({key, step}: Box) => (places.get(key) ?? 0) < reached && step !== boxes[reached]?.step;
  const passed = missing(sheet, open.filter(isPassed)).map(({step, message}) =>
    remark('still-open', {sheet, step, message: `passed over, ${message}`}),
  );
  const ahead = open.filter((box) => !isPassed(box));
  const [first] = ahead.filter(({step}) => step !== '');
  if (ahead.length === 0) return passed;
  const from = first === undefined ? '' : ` from step ${first.step} on`;
  const count = ahead.length === 1 ? '1 box is' : `${ahead.length} boxes are`;
  return [
    ...passed,
    remark('still-open', {sheet, step: '', message: `${count} still to be answered${from}`}),
  ];
}

/** One remark a step. */
function missing(sheet: string, open: readonly Box[]): Remark[] {
  const steps = new Map<string, Box[]>();
  for (const box of open) {
    const list = steps.get(box.step);
    if (list) list.push(box);
    else steps.set(box.step, [box]);
  }
  return [...steps].map(([step, boxes]) => {
    const labels = [...new Set(boxes.map(({label}) => short(label)))];
    return remark('missing', {sheet, step, message: `not answered: ${few(labels, 3, '; ')}`});
  });
}

/** The box of a step is called by the whole text of the step, of which the beginning is enough. */
function short(label: string): string {
  return label.length > SHORT ? `${label.slice(0, SHORT).replace(/[.\s]+$/, '')}…` : label.replace(/\.$/, '');
}

const SHORT = 60;

function differing(form: Form, answers: Answers): Remark[] {
  return form.boxes.flatMap((box) => {
    if (box.kind !== 'line' || box.expected === undefined) return [];
    const now = answers.get(box.key)?.now;
    if (now === undefined || stamped(now.value) === stamped(box.expected)) return [];
    const message = `${box.label}: "${now.value}" was written down (${now.by}), and the job says "${box.expected}"`;
    return [remark('mark-differs', {sheet: form.procedure, step: box.step, item: box.item, message})];
  });
}

function unknown({procedure: sheet, boxes}: Form, answers: Answers): Remark[] {
  const known = new Set(boxes.map(({key}) => key));
  const strange = [...answers.keys()].filter((key) => !known.has(key));
  if (strange.length === 0) return [];
  const message = `the sheet has no box ${few(strange)}; the record was edited, or is of another version of wmark`;
  return [remark('box-unknown', {sheet, step: '', message})];
}
