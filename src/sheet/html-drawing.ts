/** The drawing of a set of fasteners as inline SVG, to scale, with its order as text for those who cannot see it. */
import type {Element} from 'hast';
import {s} from 'hastscript';
import type {Drawing} from './model.js';
import {fill, type Words} from './words.js';

/** Millimetres on paper: the longer side, which grows with the number of fasteners up to this. */
const LONGEST = 54;
const MARGIN = 5;
const LARGEST_MARK = 4;
const SMALLEST_MARK = 1.6;

export function drawingNode(drawing: Drawing, words: Words): Element {
  const longest = Math.min(LONGEST, 22 + 4 * drawing.points.length);
  const radius = radiusFor(drawing, longest);
  const width = round(drawing.width * longest + 2 * MARGIN);
  const height = round(drawing.height * longest + 2 * MARGIN);
  return s(
    'svg',
    {
      viewBox: `0 0 ${width} ${height}`,
      width: `${width}mm`,
      height: `${height}mm`,
      role: 'img',
      ariaLabel: drawingText(drawing, words),
    },
    drawing.points.flatMap((point) => pointNodes(point, radius, longest)),
  );
}

function pointNodes(point: Drawing['points'][number], radius: number, longest: number): Element[] {
  const cx = round(point.x * longest + MARGIN);
  const cy = round(point.y * longest + MARGIN);
  const circle = s('circle', {cx, cy, r: radius, fill: '#fff', stroke: '#000', strokeWidth: 0.4});
  const {number} = point;
  if (number === undefined) {
    const y = round(cy + radius + 3.4);
    return [circle, s('text', {x: cx, y, fontSize: 3.2, textAnchor: 'middle'}, point.name)];
  }
  const size = round(Math.min(radius * 1.15, 4.4));
  const y = round(cy + size * 0.36);
  return [
    circle,
    s('text', {x: cx, y, fontSize: size, fontWeight: 700, textAnchor: 'middle'}, String(number)),
  ];
}

/** As large as the nearest neighbours allow. */
function radiusFor({points}: Drawing, longest: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  points.forEach((one, at) => {
    for (const other of points.slice(0, at)) {
      nearest = Math.min(nearest, Math.hypot(one.x - other.x, one.y - other.y) * longest);
    }
  });
  return round(Math.max(SMALLEST_MARK, Math.min(LARGEST_MARK, nearest * 0.45)));
}

/** What the drawing says, for those who cannot see it. */
export function drawingText({points}: Drawing, words: Words): string {
  const numbered = points.every(({number}) => number !== undefined);
  const ordered = [...points].sort((one, other) => (one.number ?? 0) - (other.number ?? 0));
  const list = ordered
    .map(({name, number}) => (number === undefined ? name : `${number} ${name}`))
    .join(words.and);
  return fill(numbered ? words.orderText : words.layoutText, {list});
}

/** Hundredths of a millimetre: the same drawing is the same text on every machine. */
function round(value: number): number {
  return Math.round(value * 100) / 100;
}
