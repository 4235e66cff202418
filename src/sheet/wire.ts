/** Runs of safety wire as a drawing: which heads each wire joins, and on which side of them it goes. */
import {lockKindOf} from '../build/locks.js';
import {locksOf} from '../spec/locks.js';
import type {Fastener} from '../spec/model.js';
import {isLeftHand} from '../trade/thread.js';
import {statedNames} from './clauses.js';
import type {Context, Use} from './context.js';
import {drawingOf} from './drawing.js';
import {orderOf} from './fastener-order.js';
import type {Drawing} from './model.js';

/** For a `lock` with safety wire, the runs among the fasteners that it names; nothing without layout and runs. */
export function wireDrawing(use: Use, context: Context): Drawing | undefined {
  const {item, tag} = use;
  if (tag.verb !== 'lock' || item?.kind !== 'fastener' || !isWired(use, item, context)) return undefined;
  const places = use.target.places.map((place) => place.name);
  const among = (id: string) =>
    places.length === 0 || places.some((place) => id === place || id.startsWith(`${place}-`));
  const runs = item.runs.map(({value}) => value).filter((run) => run.length > 1 && run.some(among));
  // The numbers are those of the tightening, so that a bolt has one number on the sheet.
  const all = orderOf(item, () => true);
  const drawing = drawingOf(item, all?.ids ?? item.layout.map(({id}) => id), all !== undefined);
  if (drawing === undefined || runs.length === 0) return undefined;
  const indexes = new Map(item.layout.map(({id}, at) => [id, at]));
  const wires = runs.map((run) => run.flatMap((id) => indexes.get(id) ?? []));
  return {
    ...drawing,
    kind: 'wire',
    wires,
    ...(item.thread && isLeftHand(item.thread.value) ? {leftHanded: true} : {}),
  };
}

function isWired({tag}: Use, fastener: Fastener, {spec}: Context): boolean {
  const stated = statedNames(tag, 'with').map(({id}) => id);
  const locks = stated.length > 0 ? stated : locksOf(fastener);
  return locks.some((word) => lockKindOf(spec, word) === 'safety-wire');
}
