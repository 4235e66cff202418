/** Which boxes of a sheet must be answered as things stand: branches and later rounds only once they are called for. */
import type {Box, Branch, Form, ReadingBox} from '../build/form.js';
import {
  type Answers,
  acceptedBy,
  firstKey,
  isAnswered,
  isOutAs,
  roundKey,
  roundOf,
  roundsBegun,
  verdictAt,
} from './unrolled.js';

/**
 * Whether a box of an unrolled form must be answered: all branches that it stands in are called for, and its round is
 * begun. In a later round a place that was within its limits is left alone; nobody has to touch it again.
 */
export function dueOf(form: Form, answers: Answers): (box: Box) => boolean {
  const readings = new Map(
    form.boxes.flatMap((box) => (box.kind === 'reading' ? [[box.key, box] as const] : [])),
  );
  const begun = roundsBegun(form, answers);
  const known: Known = {readings, answers, deciding: decidingOf(form, readings)};
  return (box) =>
    box.kind !== 'accept' &&
    box.onlyIf.every((branch) => calledFor(branch, box, known)) &&
    (roundOf(box) === 1 || (roundOf(box) <= begun(firstKey(box)) && comesAgain(box, known)));
}

/** What is known of a sheet as its answers leave it. */
interface Known {
  /** By their keys, of every round. */
  readonly readings: ReadonlyMap<string, ReadingBox>;
  readonly answers: Answers;
  /** For each box that comes round again, the readings that send the work back. */
  readonly deciding: ReadonlyMap<string, readonly ReadingBox[]>;
}

function decidingOf({boxes}: Form, readings: ReadonlyMap<string, ReadingBox>) {
  const deciding = new Map<string, readonly ReadingBox[]>();
  for (const box of boxes) {
    if (box.kind !== 'tick' || box.goesBack === undefined || roundOf(box) > 1) continue;
    const decide = box.onlyIf.flatMap((branch) => branch.boxes.flatMap((key) => readings.get(key) ?? []));
    for (const key of box.goesBack.boxes) deciding.set(key, [...(deciding.get(key) ?? []), ...decide]);
  }
  return deciding;
}

function comesAgain(box: Box, known: Known): boolean {
  if (box.kind === 'reading') return isCalledAnew(box, roundOf(box), known);
  const place = firstKey(box).split(':').at(-1);
  const here = known.deciding.get(firstKey(box))?.filter((one) => one.place === place) ?? [];
  return here.length === 0 || here.some((reading) => isCalledAnew(reading, roundOf(box), known));
}

/** Whether the last reading before a round was out, and nobody stood by it; or there was none. */
function isCalledAnew(box: ReadingBox, round: number, {readings, answers}: Known): boolean {
  for (let before = round - 1; before > 0; before--) {
    const one = readings.get(roundKey(firstKey(box), before));
    if (one === undefined || !isAnswered(one.key, answers)) continue;
    return verdictAt(one, answers) === 'out' && acceptedBy(one, answers) === undefined;
  }
  return true;
}

/**
 * `out` is called for by one reading out of its limits, `over` and `under` by one on that side of them; `in` by the last reading of every place being within. In a
 * loop each round asks for its own readings. A branch that no reading decides is people's business, and nothing in it
 * is missed.
 */
function calledFor({is, boxes}: Branch, box: Box, known: Known): boolean {
  const {answers, readings, deciding} = known;
  const places = boxes.map((key) => roundsOf(key, readings));
  if (is === 'in') {
    const within = (rounds: readonly ReadingBox[]) => {
      const last = rounds.findLast(({key}) => isAnswered(key, answers));
      const verdict = last && verdictAt(last, answers);
      return verdict === 'in' || verdict === 'near';
    };
    return places.length > 0 && places.every(within);
  }
  // Outside the loop of its readings, one that was out is never undone; inside, the round decides.
  const own = (one: ReadingBox) =>
    !deciding.has(firstKey(box)) || !deciding.has(firstKey(one)) || roundOf(one) === roundOf(box);
  return places.flat().some((one) => own(one) && isOutAs(is, one, answers));
}

function roundsOf(key: string, readings: ReadonlyMap<string, ReadingBox>): ReadingBox[] {
  const rounds: ReadingBox[] = [];
  for (let round = 1; ; round++) {
    const box = readings.get(roundKey(key, round));
    if (box === undefined) return rounds;
    rounds.push(box);
  }
}
