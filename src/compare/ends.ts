/** What held of the engine at the end of the build and holds no longer, where no step that went has said so yet. */
import {type Covered, coverage} from '../build/coverage.js';
import type {Verb} from '../procedure/verbs.js';
import type {Judge, Sides} from './judge.js';
import type {Piece} from './model.js';
import {tagRemark} from './remarks.js';
import {idNow, placeNow} from './renames.js';

/** The verb that sets the fact: under it the step that went is told. */
const VERB: {readonly [kind in Covered]: Verb} = {
  installed: 'install',
  measured: 'measure',
  tight: 'torque',
  locked: 'lock',
  striped: 'stripe',
  sealed: 'seal',
  checked: 'check',
  recorded: 'record',
  filled: 'fill',
  witnessed: 'witness',
};

export const endChanges: Judge = (sides) => {
  const {before, now, renames} = sides;
  const rows = new Map(coverage(now.run).map((row) => [`${row.item.id} ${row.place}`, row]));
  return coverage(before.run).flatMap(({item, place, due}) => {
    const id = idNow(renames, item.id);
    const row = rows.get(`${id} ${placeNow(renames, id, place)}`);
    if (row === undefined) return [];
    return [...due].flatMap(([kind, held]) =>
      held && row.due.get(kind) === false ? [piece(id, row.place, kind, sides)] : [],
    );
  });
};

function piece(item: string, place: string, kind: Covered, {before, now, renames}: Sides): Piece {
  const aspect = VERB[kind];
  const doing = (one: {readonly verb: string; readonly item: string}, id: string) =>
    one.verb === aspect && one.item === id;
  return {
    effect: 'weakened',
    subject: item,
    item,
    place,
    aspect,
    says: `no longer ${kind} at the end of the build`,
    before: before.deeds
      .filter(
        (deed) =>
          doing(deed, deed.item) &&
          idNow(renames, deed.item) === item &&
          placeNow(renames, item, deed.place) === place,
      )
      .slice(-1)
      .map((deed) => tagRemark(deed)),
    now: now.deeds.filter((deed) => doing(deed, item) && deed.place === place).map((deed) => tagRemark(deed)),
  };
}
