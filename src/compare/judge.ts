/** What every judge of a comparison may look at: both sides, what belongs together, and the names in use now. */
import type {Deed} from './deeds.js';
import type {MatchedDeeds} from './match-deeds.js';
import type {Matched} from './match-steps.js';
import type {Piece} from './model.js';
import type {Renames} from './renames.js';
import type {BookSide} from './side.js';

/** All of it is worked out before the first judge is asked, so that none depends on another. */
export interface Sides {
  readonly before: BookSide;
  readonly now: BookSide;
  readonly renames: Renames;
  readonly steps: Matched;
  readonly deeds: MatchedDeeds;
}

/** What one kind of change does to the engine. The pieces of all judges are joined afterwards (`join.ts`). */
export type Judge = (sides: Sides) => Piece[];

/** How a verb reads of something that it was done to. */
export const DONE: {readonly [verb in Deed['verb']]?: string} = {
  clean: 'cleaned',
  inspect: 'inspected',
  measure: 'measured',
  lay: 'laid with a gauging strip',
  lube: 'lubed',
  seal: 'sealed',
  alter: 'altered',
  renew: 'renewed',
  install: 'installed',
  remove: 'removed',
  torque: 'tightened',
  loosen: 'loosened',
  lock: 'locked',
  stripe: 'striped',
  turn: 'turned',
  cure: 'left to cure',
  fill: 'filled',
  drain: 'drained',
  check: 'checked',
  record: 'recorded',
  witness: 'witnessed',
  if: 'followed by what to do about its reading',
  repeat: 'read again after rework',
};
