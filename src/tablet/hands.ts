/** Whose initials may stand where, and when: nobody signs for work of their own, nor for what is open or out of limits. */
import type {Box, Form, HoldBox, ReadingBox} from '../build/form.js';
import {hand} from '../readings/judge-signatures.js';
import {outUnder} from '../readings/standing.js';
import {type Answers, firstKey, isAnswered, roundOf} from '../readings/unrolled.js';
import type {Standing} from './standing.js';

/** Why these initials can't answer a box. */
export type Refusal =
  /** The numbers of the steps that they did; none where it was no step. */
  | {readonly why: 'own-work'; readonly steps: readonly string[]}
  | {readonly why: 'own-hold'; readonly hold: HoldBox}
  /** They took the reading that they would stand by. */
  | {readonly why: 'own-reading'};

/** Why these initials may not stand in the box; undefined where they may. */
export function refusal(form: Form, answers: Answers, box: Box, by: string): Refusal | undefined {
  if (box.kind === 'accept') return isBy(by, box.reading, answers) ? {why: 'own-reading'} : undefined;
  const signed = signedWith(form, box);
  if (signed !== undefined) {
    const own = signed.not.filter((key) => isBy(by, key, answers));
    return own.length === 0 ? undefined : {why: 'own-work', steps: stepsOf(form, own)};
  }
  const hold = form.boxes.find(
    (one): one is HoldBox => one.kind === 'hold' && one.not.includes(box.key) && isBy(by, one.key, answers),
  );
  return hold === undefined ? undefined : {why: 'own-hold', hold};
}

/** What must be put right before a box can be signed or ticked at all, whoever does it. */
export interface Obstacle {
  /** Readings that it vouches for, out of their limits. */
  readonly out: readonly ReadingBox[];
  /** Steps that a signature vouches for and that are not done; the words of what is no step. */
  readonly open: readonly string[];
}

/** Undefined where nothing is in the way. */
export function obstacleTo(box: Box, {form, answers, due}: Standing): Obstacle | undefined {
  const out = outUnder(box, form, answers);
  const open =
    box.kind === 'hold' ? openUnder(box, form.boxes, (one) => due(one) && !isAnswered(one.key, answers)) : [];
  return out.length + open.length === 0 ? undefined : {out, open};
}

function openUnder(hold: HoldBox, boxes: readonly Box[], isOpen: (box: Box) => boolean): string[] {
  const vouched = new Set(hold.not);
  const open = boxes.filter(
    (box) =>
      vouched.has(box.key) &&
      isOpen(box) &&
      // The step that asks for the signature is ticked when it has been given.
      (box.step !== hold.step || box.kind !== 'tick' || hold.step === ''),
  );
  return [...new Set(open.map(({step, label}) => (step === '' ? label : step)))];
}

/** The hold point whose second person answers this box: its own, or that of the things looked at for it. */
export function signedWith({boxes}: Form, box: Box): HoldBox | undefined {
  if (box.kind === 'hold') return box;
  return boxes.find(
    (one): one is HoldBox =>
      one.kind === 'hold' &&
      one.step === box.step &&
      roundOf(one) === roundOf(box) &&
      firstKey(box).startsWith(`${firstKey(one)}:`),
  );
}

/** The steps of boxes, each once, in the order of the page. */
export function stepsOf({boxes}: Form, keys: readonly string[]): readonly string[] {
  const wanted = new Set(keys);
  const steps = boxes.flatMap(({key, step}) => (wanted.has(key) && step !== '' ? [step] : []));
  return [...new Set(steps)];
}

function isBy(by: string, key: string, answers: Answers): boolean {
  const now = answers.get(key)?.now;
  return now !== undefined && hand(now.by) === hand(by);
}
