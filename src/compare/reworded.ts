/** What is left of the steps: words, places in the order and ways of writing that changed while no tag or value did. */
import type {Remark} from '../build/found.js';
import type {StepRef} from '../build/program.js';
import {stepName} from '../build/tell.js';
import {joinedSteps} from './joined-steps.js';
import type {Judge} from './judge.js';
import type {Piece, StepPair} from './model.js';
import {movedRuns} from './moved-runs.js';
import {wordsOfStep} from './prose.js';
import {stepRemark} from './remarks.js';
import {LOST_WORD, sentencesIn, type Wording, wordedPiece} from './words.js';

/** Told of a step even where something graver is said of it: its words are not in that. */
export function isOfWords({aspect}: Piece): boolean {
  return aspect !== 'step';
}

export const rewordings: Judge = (sides) => {
  const elsewhere = sentencesIn(sides.now);
  const joined = joinedSteps(sides);
  return [
    ...sides.steps.pairs.flatMap((pair) => [
      ...wordsPiece(pair, elsewhere),
      ...(joined.has(pair.before ?? pair.now) ? [] : stepPiece(pair)),
    ]),
    ...movedRuns(sides.steps.pairs),
    ...joined.values(),
  ];
};

/** Of a step that is gone, its words are told by themselves only where they guarded something. */
function wordsPiece({before, now}: StepPair, elsewhere: (sentence: string) => boolean): Piece[] {
  const step = now ?? before;
  if (step === undefined || before === undefined) return [];
  const [was, is] = [wording(before), now && wording(now)];
  if (was.text === is?.text) return [];
  const how = now === undefined ? 'dropped' : 'worded anew';
  const piece = wordedPiece({subject: stepName(step), how, before: was, now: is}, elsewhere);
  return now !== undefined || piece.aspect === LOST_WORD ? [piece] : [];
}

function stepPiece({before, now}: StepPair): Piece[] {
  const how = before === undefined ? 'new' : now === undefined ? 'dropped' : tagsChanged(before, now);
  const step = now ?? before;
  if (how === undefined || step === undefined) return [];
  return [
    {
      effect: 'reworded',
      subject: stepName(step),
      aspect: 'step',
      says: how,
      before: before === undefined ? [] : [inFull(before)],
      now: now === undefined ? [] : [inFull(now)],
    },
  ];
}

function tagsChanged(before: StepRef, now: StepRef): string | undefined {
  return rawTags(before) === rawTags(now) ? undefined : 'its tags written otherwise';
}

function rawTags({step}: StepRef): string {
  return step.tags.map(({raw}) => raw.trim()).join('\n');
}

function wording(step: StepRef): Wording {
  return {text: wordsOfStep(step.step), remark: inFull(step)};
}

/** With all that stands in its item, since it is the words that a reader has to compare here. */
function inFull(step: StepRef): Remark {
  return stepRemark(step, wordsOfStep(step.step));
}
