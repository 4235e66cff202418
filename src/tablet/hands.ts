/** Whose initials may stand where: nobody signs for work of their own, nor works on what they signed for. */
import type {Box, Form, HoldBox} from '../build/form.js';
import {hand} from '../readings/judge-signatures.js';
import type {Answers} from '../readings/rounds.js';

/** Why these initials can't answer a box. */
export type Refusal =
  /** The numbers of the steps that they did; none where it was no step. */
  | {readonly why: 'own-work'; readonly steps: readonly string[]}
  | {readonly why: 'own-hold'; readonly hold: HoldBox};

export function refusal(form: Form, answers: Answers, box: Box, by: string): Refusal | undefined {
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

/** The hold point whose second person answers this box: its own, or that of the things looked at for it. */
export function signedWith({boxes}: Form, box: Box): HoldBox | undefined {
  if (box.kind === 'hold') return box;
  return boxes.find(
    (one): one is HoldBox =>
      one.kind === 'hold' && one.step === box.step && box.key.startsWith(`${one.key}:`),
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
