/** Steps that were joined to another: their work is still done, and one box and one set of initials went with each. */
import type {StepRef} from '../build/program.js';
import {stepName} from '../build/tell.js';
import type {Sides} from './judge.js';
import type {Piece} from './model.js';
import {stepRemark} from './remarks.js';

/** By the step of the old side that is gone: all that it did is done in one step that was there before. */
export function joinedSteps({steps, deeds}: Sides): Map<StepRef | undefined, Piece> {
  const goneTo = new Map<StepRef, Set<StepRef>>();
  for (const [before, now] of deeds.kept) {
    const known = goneTo.get(before.step) ?? new Set();
    goneTo.set(before.step, known.add(now.step));
  }
  const losing = new Set(deeds.gone.map(({step}) => step));
  const found = new Map<StepRef | undefined, Piece>();
  for (const {before, now} of steps.pairs) {
    if (before === undefined || now !== undefined || losing.has(before)) continue;
    const [to, other] = goneTo.get(before) ?? [];
    if (to !== undefined && other === undefined) found.set(before, piece(before, to));
  }
  return found;
}

function piece(before: StepRef, to: StepRef): Piece {
  return {
    effect: 'changed',
    subject: stepName(before),
    aspect: 'sign-off',
    says: `joined to ${stepName(to)}: one box and one set of initials fewer`,
    before: [stepRemark(before)],
    now: [stepRemark(to)],
  };
}
