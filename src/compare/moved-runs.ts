/** Steps that stand elsewhere now: those that moved together are told together. */
import type {StepRef} from '../build/program.js';
import {baseName, stepName} from '../build/tell.js';
import type {Piece, StepPair} from './model.js';
import {stepRemark} from './remarks.js';

/** One piece a run, at its first step. A run goes on for as long as its steps followed each other on both sides. */
export function movedRuns(pairs: readonly StepPair[]): Piece[] {
  const runs: Moved[][] = [];
  for (const {before, now, moved} of pairs) {
    if (!moved || before === undefined || now === undefined) continue;
    const one = {before, now};
    const run = runs.at(-1);
    if (run !== undefined && goesOn(run.at(-1), one)) run.push(one);
    else runs.push([one]);
  }
  return runs.flatMap(runPiece);
}

interface Moved {
  readonly before: StepRef;
  readonly now: StepRef;
}

function goesOn(last: Moved | undefined, {before, now}: Moved): boolean {
  return (
    last !== undefined &&
    now.order === last.now.order + 1 &&
    before.order === last.before.order + 1 &&
    now.procedure === last.now.procedure &&
    before.procedure === last.before.procedure
  );
}

/** One step by itself may have been told of by something graver. */
function runPiece(run: readonly Moved[]): Piece[] {
  const [first, last] = [run[0], run.at(-1)];
  if (first === undefined || last === undefined) return [];
  const one = run.length === 1;
  const named = (from: StepRef, to: StepRef) =>
    one
      ? stepName(from)
      : `steps ${from.step.number}–${to.step.number} of ${baseName(from.procedure.source.file)}`;
  return [
    {
      effect: 'reworded',
      subject: named(first.now, last.now),
      aspect: one ? 'step' : 'moved',
      says: `moved, ${named(first.before, last.before)} before`,
      before: [stepRemark(first.before)],
      now: [stepRemark(first.now)],
    },
  ];
}
