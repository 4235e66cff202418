/** Remarks on what was left to cure: times that are none, and times that were too short. */
import type {Form, TimeBox} from '../build/form.js';
import type {Said} from './answers.js';
import {clockText, clockTime, durationText} from './clock-time.js';
import {remark} from './remark.js';
import type {Remark} from './report.js';
import type {Answers} from './unrolled.js';

export function cureRemarks({procedure: sheet, boxes}: Form, answers: Answers): Remark[] {
  return boxes.flatMap((box) => {
    const now = box.kind === 'time' ? answers.get(box.key)?.now : undefined;
    if (box.kind !== 'time' || now === undefined) return [];
    const about = {sheet, step: box.step, item: box.item};
    if (timeOf(now) === undefined) {
      const message = `${box.label}: "${now.value}" is no date and time (${now.by}), such as 2026-03-01 17:05`;
      return [remark('unreadable', {...about, message})];
    }
    const short = tooShort(box, now, answers);
    return short === undefined ? [] : [remark('cure-short', {...about, message: `${box.label}: ${short}`})];
  });
}

function tooShort({since, minutes}: TimeBox, finished: Said, answers: Answers): string | undefined {
  const started = answers.get(since ?? '')?.now;
  const [from, to] = [started, finished].map((said) => said && timeOf(said));
  if (minutes === undefined || from === undefined || to === undefined) return undefined;
  const left = to - from;
  if (left >= minutes) return undefined;
  const took = left < 0 ? 'which is before it started' : `${durationText(left)} after it started`;
  return `${clockText(to)} by the clock on the wall (${finished.by}) is ${took} (${clockText(from)}); at least ${durationText(minutes)} is asked for`;
}

function timeOf({value, at}: Said): number | undefined {
  return clockTime(value, at.slice(0, 10));
}
