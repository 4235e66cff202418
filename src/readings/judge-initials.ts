/** Remarks on initials that are none: a reason that stands where a name must, or nobody's name at all. */
import type {Form} from '../build/form.js';
import {fill} from '../text/fill.js';
import {isInitials} from './initials.js';
import {stepsOf} from './judge-signatures.js';
import type {Entry} from './record.js';
import {remark} from './remark.js';
import type {Remark} from './report.js';
import type {ReportWords} from './words.js';

/** One for each text, with the steps that it stands beside; `form` is unrolled. */
export function initialsRemarks(form: Form, entries: readonly Entry[], words: ReportWords): Remark[] {
  const strange = new Map<string, Set<string>>();
  for (const {by, box} of entries) {
    if (isInitials(by)) continue;
    const keys = strange.get(by);
    if (keys) keys.add(box);
    else strange.set(by, new Set([box]));
  }
  return [...strange].map(([by, keys]) => {
    const boxes = form.boxes.filter(({key}) => keys.has(key));
    const steps = boxes.length === 0 ? '' : stepsOf(boxes, words);
    const message = fill(words.remarks.noInitials, {by, steps}).trimEnd();
    return remark('no-initials', {sheet: form.procedure, step: '', message});
  });
}
