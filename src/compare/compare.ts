/** Compares two revisions of a book: judges look at both sides, and what they saw is joined and placed by its effect. */
import type {Book} from '../build/book.js';
import type {Finding} from '../findings/model.js';
import type {Job} from '../spec/job.js';
import {bookChanges} from './book-changes.js';
import {cautionChanges} from './cautions.js';
import {deedChanges} from './deed-changes.js';
import {demandChanges} from './demand-changes.js';
import {endChanges} from './ends.js';
import {findingChanges, fromSteps} from './finding-changes.js';
import {jobChanges} from './job-changes.js';
import {joined} from './join.js';
import type {Sides} from './judge.js';
import {matchDeeds} from './match-deeds.js';
import {matchSteps} from './match-steps.js';
import type {Comparison} from './model.js';
import {openedJoints} from './opened-joints.js';
import {orderChanges} from './order-changes.js';
import {passageChanges} from './passages.js';
import {idNow, renamesOf} from './renames.js';
import {rewordings} from './reworded.js';
import {sideOf} from './side.js';
import {waiverChanges} from './waivers.js';

/** A revision of a book: with the engines on its stand, and what the check found in it. */
export interface Revision {
  readonly book: Book;
  readonly jobs: readonly Job[];
  readonly findings: readonly Finding[];
}

/** `check` gives the findings of a book, by the same options as those of the two revisions. */
export function compareBooks(
  before: Revision,
  now: Revision,
  check: (book: Book) => readonly Finding[],
): Comparison {
  const sides = sidesOf(before, now);
  const found = findingChanges(sides);
  const pieces = [
    ...deedChanges(sides),
    ...endChanges(sides),
    ...orderChanges(sides),
    ...openedJoints(sides),
    ...demandChanges(sides),
    ...cautionChanges(sides),
    ...passageChanges(sides),
    ...waiverChanges(sides),
    ...bookChanges(sides),
    ...jobChanges(before.jobs, now.jobs),
  ];
  const changes = joined(pieces, rewordings(sides), fromSteps(found, sides, check), sides);
  return {changes, steps: sides.steps.pairs, ...found};
}

function sidesOf(before: Revision, now: Revision): Sides {
  const [old, fresh] = [sideOf(before.book, before.findings), sideOf(now.book, now.findings)];
  const renames = renamesOf(before.book, now.book);
  const steps = matchSteps(old, fresh, (id) => idNow(renames, id));
  const deeds = matchDeeds(old.deeds, fresh.deeds, steps.nowOf, renames);
  return {before: old, now: fresh, renames, steps, deeds};
}
