/** The readings that stand out of their limits: neither read again within them, nor stood by by anybody. */
import type {Box, Form, ReadingBox} from '../build/form.js';
import {numberIn} from './reading-number.js';
import {type Answers, acceptedBy, verdictAt} from './unrolled.js';

/** Those of an unrolled form, in the order of the page. The last reading of an item at a place counts, wherever it is asked for. */
export function standingOut({boxes}: Form, answers: Answers): ReadingBox[] {
  const last = new Map<string, {readonly box: ReadingBox; readonly index: number}>();
  for (const box of boxes) {
    const now = box.kind === 'reading' ? answers.get(box.key)?.now : undefined;
    if (box.kind !== 'reading' || now === undefined || numberIn(now.value, box) === undefined) continue;
    const key = JSON.stringify([box.item, box.place]);
    if ((last.get(key)?.index ?? -1) < now.index) last.set(key, {box, index: now.index});
  }
  const out = [...last.values()].filter(
    ({box}) => verdictAt(box, answers) === 'out' && !acceptedBy(box, answers),
  );
  const standing = new Set(out.map(({box}) => box));
  return boxes.filter((box) => box.kind === 'reading').filter((box) => standing.has(box));
}

/** Those of them that a signature or the end of a section or sheet vouches for. */
export function outUnder(box: Box, form: Form, answers: Answers): ReadingBox[] {
  const ends = 'ends' in box ? box.ends : undefined;
  if (box.kind !== 'hold' && ends === undefined) return [];
  const covered = ends === undefined ? coveredBy(box) : new Set(before(box, form, ends));
  return standingOut(form, answers).filter(({key}) => covered.has(key));
}

function coveredBy(box: Box): ReadonlySet<string> {
  return new Set(box.kind === 'hold' ? box.not : []);
}

function before({key}: Box, {boxes}: Form, ends: 'section' | 'sheet'): string[] {
  if (ends === 'sheet') return boxes.map((one) => one.key);
  const at = boxes.findIndex((one) => one.key === key);
  const start = boxes.findLastIndex(
    (one, place) => place < at && one.kind === 'tick' && one.ends === 'section',
  );
  return boxes.slice(start + 1, at).map((one) => one.key);
}

/** The answers as they stood when an entry was made. */
export function answersBefore(answers: Answers, index: number): Answers {
  return new Map(
    [...answers].flatMap(([key, {history}]) => {
      const then = history.filter((said) => said.index < index);
      const last = then.at(-1);
      if (last === undefined) return [];
      return [[key, last.value.trim() === '' ? {history: then} : {history: then, now: last}] as const];
    }),
  );
}
