/** Remarks on what was left to cure: times that are none, and times that were too short. */
import type {Form, TimeBox} from '../build/form.js';
import {fill} from '../text/fill.js';
import type {Said} from './answers.js';
import {clockText, clockTime, durationText} from './clock-time.js';
import {remark} from './remark.js';
import type {Remark} from './report.js';
import type {Answers} from './unrolled.js';
import type {ReportWords} from './words.js';

/** By the times that people wrote, not by those of the entries: both may be entered at once when it is over. */
export function cureRemarks(
  {procedure: sheet, boxes}: Form,
  answers: Answers,
  {remarks}: ReportWords,
): Remark[] {
  return boxes.flatMap((box) => {
    const now = box.kind === 'time' ? answers.get(box.key)?.now : undefined;
    if (box.kind !== 'time' || now === undefined) return [];
    const about = {sheet, step: box.step, item: box.item};
    if (timeOf(now) === undefined) {
      const message = fill(remarks.noTime, {label: box.label, value: now.value, by: now.by});
      return [remark('unreadable', {...about, message})];
    }
    const message = tooShort(box, now, answers, remarks);
    return message === undefined ? [] : [remark('cure-short', {...about, message})];
  });
}

function tooShort(
  {label, since, minutes}: TimeBox,
  finished: Said,
  answers: Answers,
  {cureBefore, cureShort}: ReportWords['remarks'],
): string | undefined {
  const started = answers.get(since ?? '')?.now;
  const [from, to] = [started, finished].map((said) => said && timeOf(said));
  if (minutes === undefined || from === undefined || to === undefined) return undefined;
  const left = to - from;
  if (left >= minutes) return undefined;
  return fill(left < 0 ? cureBefore : cureShort, {
    label,
    to: clockText(to),
    by: finished.by,
    left: durationText(left),
    from: clockText(from),
    least: durationText(minutes),
  });
}

function timeOf({value, at}: Said): number | undefined {
  return clockTime(value, at.slice(0, 10));
}
