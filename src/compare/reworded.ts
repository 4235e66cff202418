/** What is left: steps and headings that are worded, placed or tagged otherwise, and mean nothing to the engine. */
import type {Remark} from '../build/found.js';
import {type StepRef, whereIn} from '../build/program.js';
import {stepName} from '../build/tell.js';
import type {Judge} from './judge.js';
import type {Piece, StepPair} from './model.js';

export const rewordings: Judge = ({steps}) => steps.pairs.flatMap(stepPiece);

function stepPiece({before, now, moved}: StepPair): Piece[] {
  const how = howChanged({moved, ...(before && {before}), ...(now && {now})});
  const step = now ?? before;
  if (how === undefined || step === undefined) return [];
  return [
    {
      effect: 'reworded',
      subject: stepName(step),
      aspect: 'step',
      says: how,
      before: before === undefined ? [] : [remark(before)],
      now: now === undefined ? [] : [remark(now)],
    },
  ];
}

function howChanged({before, now, moved}: StepPair): string | undefined {
  if (before === undefined) return 'new';
  if (now === undefined) return 'dropped';
  const words = before.step.text === now.step.text ? [] : ['worded anew'];
  const tags = rawTags(before) === rawTags(now) ? [] : ['its tags written otherwise'];
  const place = moved ? [`moved, before ${stepName(before)}`] : [];
  const all = [...place, ...words, ...tags];
  return all.length === 0 ? undefined : all.join(', ');
}

function rawTags({step}: StepRef): string {
  return step.tags.map(({raw}) => raw.trim()).join('\n');
}

function remark(step: StepRef): Remark {
  return {where: whereIn(step, step.step.headSpan), says: `${stepName(step)}: ${step.step.text}`};
}
