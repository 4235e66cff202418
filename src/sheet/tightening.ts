/** The boxes of a tightening: a line a pass, a box a fastener in tightening order where it is known. */
import type {Step} from '../procedure/model.js';
import type {Fastener} from '../spec/model.js';
import {type Context, placesOfUse, spaced, type Use} from './context.js';
import {drawingOf} from './drawing.js';
import {orderOf} from './fastener-order.js';
import {passKeys, placeKeys} from './keys.js';
import type {Blanks} from './model.js';
import {passesOf} from './passes.js';
import {fill} from './words.js';

/**
 * Nothing where one box would do, for the row has that already; a box a place for a single pass in no order, whose
 * value stands among the facts.
 */
export function tighteningBlanks(
  use: Use & {readonly number: number},
  step: Step,
  context: Context,
): Blanks | undefined {
  const fastener = use.item?.kind === 'fastener' ? use.item : undefined;
  const turn = turnOf(use, fastener, context);
  const passes = passesOf(use, context);
  const drawing = fastener === undefined ? undefined : drawingOf(fastener, turn.shown, turn.ordered);
  if (passes.length < 2 && !turn.ordered && drawing === undefined) {
    if (turn.positions.length < 2) return undefined;
    return {type: 'ticks', labels: turn.positions, keys: placeKeys(step.number, use.number, turn.ids)};
  }
  return {
    type: 'tightening',
    passes,
    positions: turn.positions,
    keys: passKeys(step.number, use.number, passes.length, turn.ids),
    ordered: turn.ordered,
    ...(turn.worked ? {note: context.words.orderWorked} : {}),
    ...(drawing === undefined ? {} : {drawing}),
  };
}

interface Turn {
  readonly positions: readonly string[];
  /** Of the positions, as the specification or the tag names them. */
  readonly ids: readonly string[];
  readonly ordered: boolean;
  /** The order comes from the layout, not from the shop. */
  readonly worked: boolean;
  /** The same as ids of the layout. */
  readonly shown: readonly string[];
}

function turnOf(use: Use, fastener: Fastener | undefined, context: Context): Turn {
  const order = fastener === undefined ? undefined : orderOf(fastener, belongsTo(use, fastener));
  if (order !== undefined) {
    const positions = order.ids.map((id) => positionName(id, context));
    return {positions, ids: order.ids, ordered: true, worked: order.worked, shown: order.ids};
  }
  const places = placesOfUse(use);
  const ids = places.length === 0 ? [''] : places;
  const belongs = fastener === undefined ? () => true : belongsTo(use, fastener);
  const layout = fastener?.layout.map(({id}) => id).filter(belongs) ?? [];
  return {positions: ids.map(spaced), ids, ordered: false, worked: false, shown: layout};
}

/** Those of the places which the tag names: `front` takes `front` and `front-left`; all where none do. */
function belongsTo(use: Use, {order, layout}: Fastener): (id: string) => boolean {
  const places = use.target.places.map((place) => place.name);
  const named = (id: string) => places.some((place) => id === place || id.startsWith(`${place}-`));
  return [...order, ...layout.map(({id}) => id)].some(named) ? named : () => true;
}

function positionName(id: string, context: Context): string {
  return /^\d+$/.test(id) ? fill(context.words.fastenerNumber, {number: id}) : spaced(id);
}
