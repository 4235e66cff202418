/** Waivers added, taken out, or given another reason. */
import type {Remark} from '../build/found.js';
import type {StepRef} from '../build/program.js';
import type {Tag} from '../procedure/model.js';
import {wordsOf} from '../procedure/values.js';
import type {Judge} from './judge.js';
import type {Effect, Piece} from './model.js';
import {tagRemark} from './remarks.js';
import type {BookSide} from './side.js';

export const waiverChanges: Judge = ({before, now, steps}) => {
  const fresh = waiversOf(now);
  const pieces: Piece[] = [];
  for (const old of waiversOf(before)) {
    const sameStep = fresh.findIndex(
      (one) => one.name === old.name && steps.nowOf.get(old.step) === one.step,
    );
    const index =
      sameStep === -1 ? fresh.findIndex((one) => one.name === old.name && shareItem(old, one)) : sameStep;
    const [other] = index === -1 ? [] : fresh.splice(index, 1);
    if (other === undefined)
      pieces.push(piece('strengthened', old.name, 'no longer waived', {before: [tagRemark(old)]}));
    else pieces.push(...reasonChange(old, other));
  }
  return [
    ...pieces,
    ...fresh.map((one) =>
      piece('weakened', one.name, `waived now: ${reason(one) ?? 'no reason given'}`, {now: [tagRemark(one)]}),
    ),
  ];
};

interface Waiver {
  readonly name: string;
  readonly step: StepRef;
  readonly tag: Tag;
}

function waiversOf({run}: BookSide): Waiver[] {
  return run.program.steps.flatMap((step) =>
    step.step.tags
      .filter(({verb}) => verb === 'waive')
      .flatMap((tag) => tag.targets.map(({id}) => ({name: id, step, tag}))),
  );
}

/** A step may be split or joined: its waiver goes where the work on the same item went. */
function shareItem(a: Waiver, b: Waiver): boolean {
  const items = ({step, tag}: Waiver) =>
    step.step.tags
      .filter((one) => one !== tag && one.verb !== 'waive')
      .flatMap(({targets}) => targets.map(({id}) => id));
  return items(a).some((id) => items(b).includes(id));
}

function reason({tag}: Waiver): string | undefined {
  return wordsOf(tag, 'because');
}

function reasonChange(old: Waiver, fresh: Waiver): Piece[] {
  const [was, is] = [reason(old), reason(fresh)];
  const [by, nowBy] = [wordsOf(old.tag, 'by'), wordsOf(fresh.tag, 'by')];
  const at = {before: [tagRemark(old)], now: [tagRemark(fresh)]};
  return [
    ...(was === is
      ? []
      : [
          piece(
            'reworded',
            fresh.name,
            `waived because ${is ?? 'of no reason given'}, before because ${was ?? 'of no reason given'}`,
            at,
          ),
        ]),
    ...(by === nowBy
      ? []
      : [
          piece(
            nowBy === undefined ? 'weakened' : 'changed',
            fresh.name,
            `approved by ${nowBy ?? 'nobody'}, before by ${by ?? 'nobody'}`,
            at,
          ),
        ]),
  ];
}

function piece(
  effect: Effect,
  name: string,
  says: string,
  {before = [], now = []}: {readonly before?: readonly Remark[]; readonly now?: readonly Remark[]},
): Piece {
  return {effect, subject: `waiver of ${name}`, aspect: 'waiver', says, before, now};
}
