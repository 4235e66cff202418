/** A drawing of the model as inline SVG: black on white, its content as text for those who cannot see it. */
import type {Element} from 'hast';
import {s} from 'hastscript';
import {drawingText} from './drawing-text.js';
import {type Placed, round} from './drawn-points.js';
import {wireNodes} from './html-wire.js';
import type {Drawing} from './model.js';
import type {Words} from './words.js';

/** Millimetres on paper: the longer side, which grows with the number of fasteners up to this. */
const LONGEST = 54;
/** Between the middles of two places in a row; eight of them fit beside the boxes of a step. */
const APART = 16.5;
const LARGEST_MARK = 4;
const SMALLEST_MARK = 1.6;

/** Sized in millimetres, so that it is as large on paper as it is on a screen. */
export function drawingNode(drawing: Drawing, words: Words): Element {
  const inRow = drawing.kind === 'places' || drawing.kind === 'strips';
  // Few bolts drawn large say no more; many need room for a number in each.
  const longest = inRow ? APART * columnsOf(drawing) : Math.min(LONGEST, 22 + 4 * drawing.points.length);
  const margin = inRow ? {x: APART / 2, y: drawing.kind === 'strips' ? 8 : 5.5} : {x: 5, y: 5};
  const width = round(drawing.width * longest + 2 * margin.x);
  const height = round(drawing.height * longest + 2 * margin.y);
  const at = (value: number, side: 'x' | 'y') => round(value * longest + margin[side]);
  const placed = drawing.points.map((point) => ({...point, x: at(point.x, 'x'), y: at(point.y, 'y')}));
  return s(
    'svg',
    {viewBox: `0 0 ${width} ${height}`, width: `${width}mm`, height: `${height}mm`, role: 'img'},
    [
      s('title', words.drawings[drawing.kind]),
      s('desc', drawingText(drawing, words)),
      ...(inRow
        ? placed.flatMap((point) => placeNodes(point, drawing.kind, sizeFor(placed)))
        : fastenerNodes(drawing, placed)),
    ],
  );
}

function columnsOf({points}: Drawing): number {
  return new Set(points.map(({x}) => x)).size - 1;
}

function fastenerNodes(drawing: Drawing, placed: readonly Placed[]): Element[] {
  const radius = radiusFor(placed);
  const marks = placed.flatMap((point) => markNodes(point, radius));
  const wires = drawing.wires ?? [];
  return [...wires.flatMap((wire) => wireNodes(wire, placed, radius, drawing.leftHanded === true)), ...marks];
}

function markNodes({x, y, name, number}: Placed, radius: number): Element[] {
  const circle = s('circle', {cx: x, cy: y, r: radius, fill: '#fff', stroke: '#000', strokeWidth: 0.4});
  if (number === undefined) {
    return [circle, s('text', {x, y: round(y + radius + 3.4), fontSize: 3.2, textAnchor: 'middle'}, name)];
  }
  const fontSize = round(Math.min(radius * 1.15, 4.4));
  // SVG sets text on its base line, and a figure is some 0.72 of its size high.
  const middle = round(y + fontSize * 0.36);
  return [circle, s('text', {x, y: middle, fontSize, fontWeight: 700, textAnchor: 'middle'}, String(number))];
}

const PLACE = {width: 15.2, height: 8};

/** A place is a box with its name; one that has a number is round. A strip lies across its box, the name below. */
function placeNodes({x, y, name}: Placed, kind: Drawing['kind'], fontSize: number): Element[] {
  const stroke = {fill: '#fff', stroke: '#000', strokeWidth: 0.4};
  const box = s('rect', {
    x: round(x - PLACE.width / 2),
    y: round(y - PLACE.height / 2),
    width: PLACE.width,
    height: PLACE.height,
    rx: 1,
    ...stroke,
  });
  const text = (height: number) => s('text', {x, y: round(height), fontSize, textAnchor: 'middle'}, name);
  if (kind === 'strips') {
    const strip = s('rect', {x: round(x - 6), y: round(y - 0.7), width: 12, height: 1.4, fill: '#000'});
    return [box, strip, text(y + PLACE.height / 2 + 3.3)];
  }
  if (!/^\d{1,3}$/.test(name)) return [box, text(y + fontSize * 0.36)];
  return [s('circle', {cx: x, cy: y, r: LARGEST_MARK, ...stroke}), text(y + fontSize * 0.36)];
}

/** One size for all, so that the longest name fits: letters of the sheet's fonts are some 0.55 of their size wide. */
function sizeFor(placed: readonly Placed[]): number {
  const longest = Math.max(...placed.map(({name}) => name.length));
  return round(Math.min(3.6, (PLACE.width - 1) / (0.55 * longest)));
}

/** As large as the nearest neighbours allow. */
function radiusFor(placed: readonly Placed[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  placed.forEach((one, at) => {
    for (const other of placed.slice(0, at))
      nearest = Math.min(nearest, Math.hypot(one.x - other.x, one.y - other.y));
  });
  return round(Math.max(SMALLEST_MARK, Math.min(LARGEST_MARK, nearest * 0.45)));
}
