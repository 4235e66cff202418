/** What a drawing says, in words, for those who cannot see it and wherever it cannot be drawn. */
import type {Drawing, PlaceNames} from './model.js';
import {fill, type Words} from './words.js';

/** Fasteners in the order in which they are tightened, places in that of their list, wires run by run. */
export function drawingText(drawing: Drawing, words: Words): string {
  const {kind, points} = drawing;
  if (kind === 'wire') return fill(words.wireText, {list: wireRuns(drawing, words).join('; ')});
  const list = [...points]
    .sort((one, other) => (one.number ?? 0) - (other.number ?? 0))
    .map(nameOf)
    .join(words.and);
  if (kind === 'strips') return fill(words.stripText, {list});
  if (kind === 'places') return list;
  const numbered = points.every(({number}) => number !== undefined);
  return fill(numbered ? words.orderText : words.layoutText, {list});
}

/** Each wire with the fasteners that it joins: `Wire 1: 3 front left → 4 front right`. */
export function wireRuns({points, wires = []}: Drawing, words: Words): string[] {
  return wires.map((wire, at) => {
    const joined = wire.flatMap((index) => points[index] ?? []).map(nameOf);
    return fill(words.wireRun, {number: at + 1, list: joined.join(' → ')});
  });
}

/** The items that share a list of places, named as far as there is room. */
export function placeItems({items, more}: PlaceNames, words: Words): string {
  const list = items.join(words.and);
  return more ? fill(words.moreItems, {items: list}) : list;
}

function nameOf({name, number}: Drawing['points'][number]): string {
  return number === undefined ? name : `${number} ${name}`;
}
