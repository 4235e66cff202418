/** How the boxes of a sheet stand after some entries: worked out once for each state of the record. */
import type {AcceptBox, Box, Form, ReadingBox} from '../build/form.js';
import {answersOf} from '../readings/answers.js';
import {dueOf} from '../readings/due.js';
import type {Entry} from '../readings/record.js';
import {standingOut} from '../readings/standing.js';
import {type Answers, firstKey, isAnswered, roundOf, roundsBegun, unrolled} from '../readings/unrolled.js';
import {grouped} from '../text/grouped.js';

/** Everything that the page asks about a box, for one state of the record. */
export interface Standing {
  readonly answers: Answers;
  /** With the boxes of every round. */
  readonly form: Form;
  /** Whether a box must be answered. */
  readonly due: (box: Box) => boolean;
  /** Readings out of their limits that nothing has put right. */
  readonly out: readonly ReadingBox[];
  /** Every round of a box, by the key of its first. */
  readonly rounds: ReadonlyMap<string, readonly Box[]>;
  /** How many rounds of a box are begun. */
  readonly begun: (key: string) => number;
}

/** As though the entries had all been made just now. */
export function standingAfter(entries: readonly Entry[], sheet: Form): Standing {
  const answers = answersOf(entries);
  const form = unrolled(sheet, answers);
  const rounds = grouped(
    form.boxes.filter(({kind}) => kind !== 'accept'),
    firstKey,
  );
  return {
    answers,
    form,
    due: dueOf(form, answers),
    out: standingOut(form, answers),
    rounds,
    begun: roundsBegun(sheet, answers),
  };
}

/** The round that a page shows: the last that is begun, answered or asked for. */
export function shownRound({rounds, begun, answers}: Standing, box: Box, asked: number): Box {
  const least = Math.max(begun(box.key), asked);
  return rounds.get(box.key)?.findLast((one) => roundOf(one) <= least || isAnswered(one.key, answers)) ?? box;
}

/** The box by which somebody stands by a reading that is out. */
export function acceptanceOf({form}: Standing, reading: Box): AcceptBox | undefined {
  return form.boxes.find((box): box is AcceptBox => box.kind === 'accept' && box.reading === reading.key);
}
