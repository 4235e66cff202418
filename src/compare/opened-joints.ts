/** Fasteners slackened and parts taken off anew after the joint that they close was sealed: the seal may not hold again. */
import type {Action} from '../build/program.js';
import type {Relations} from '../build/relations.js';
import {placesOf} from '../spec/items.js';
import type {Joint} from '../spec/model.js';
import type {Deed} from './deeds.js';
import {DONE, type Judge} from './judge.js';
import type {Piece} from './model.js';
import {tagRemark} from './remarks.js';

export const openedJoints: Judge = ({deeds, now}) => {
  const opening = deeds.come.filter(({verb}) => verb === 'loosen' || verb === 'remove');
  if (opening.length === 0) return [];
  const sealed = new Map<string, string[]>();
  now.run.walk({
    before(action, state) {
      if (action.verb !== 'loosen' && action.verb !== 'remove') return;
      const open = jointsOf(action, now.run.relations).filter((joint) =>
        placesOf(joint).some((place) => state.holds('sealed', joint.id, place)),
      );
      sealed.set(
        keyOf(action.tag.span.start, action.item.id, action.step.order),
        open.map(({id}) => id),
      );
    },
  });
  return opening.flatMap((deed) => {
    const joints = sealed.get(keyOf(deed.tag.span.start, deed.item, deed.step.order)) ?? [];
    return joints.length === 0 ? [] : [piece(deed, joints)];
  });
};

function keyOf(start: number, item: string, order: number): string {
  return `${order} ${start} ${item}`;
}

/** Joints at the parts that the fastener holds, or at the part itself. */
function jointsOf({item}: Action, {joints}: Relations): Joint[] {
  const parts = item.kind === 'fastener' ? item.holds.map(({value}) => value) : [item.id];
  return joints.filter(({between}) => between.some(({value}) => parts.includes(value)));
}

function piece(deed: Deed, joints: readonly string[]): Piece {
  return {
    effect: 'changed',
    subject: deed.item,
    item: deed.item,
    place: deed.place,
    aspect: deed.verb,
    says: `${DONE[deed.verb] ?? deed.verb} after ${joints.join(' and ')} ${joints.length === 1 ? 'was' : 'were'} sealed`,
    before: [],
    now: [tagRemark(deed)],
  };
}
