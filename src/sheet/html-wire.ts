/** A run of safety wire as SVG: it leaves each head on the side from which its pull tightens, and arrows show the pull. */
import type {Element} from 'hast';
import {s} from 'hastscript';
import {type Placed, round} from './drawn-points.js';

/**
 * From head to head, seen as one looks onto them. A pull tightens a right-hand thread where it turns the head
 * clockwise: so the wire leaves to the left of its way and arrives on the right, crossing over between them. Source:
 * FAA AC 43.13-1B, section 7-122 ff. (the pull must tighten; from memory); the geometry is plain.
 */
export function wireNodes(
  wire: readonly number[],
  placed: readonly Placed[],
  radius: number,
  leftHanded: boolean,
): Element[] {
  const heads = wire.flatMap((index) => placed[index] ?? []);
  return heads.slice(1).flatMap((to, at) => {
    const from = heads[at];
    return from === undefined ? [] : spanNodes(from, to, leftHanded ? -radius : radius);
  });
}

function spanNodes(from: Placed, to: Placed, side: number): Element[] {
  const apart = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const way = {x: (to.x - from.x) / apart, y: (to.y - from.y) / apart};
  // To the left of the way as one sees it, y running downwards.
  const left = {x: way.y * side, y: -way.x * side};
  const start = {x: from.x + left.x, y: from.y + left.y};
  const end = {x: to.x - left.x, y: to.y - left.y};
  return [
    s('line', {
      x1: round(start.x),
      y1: round(start.y),
      x2: round(end.x),
      y2: round(end.y),
      stroke: '#000',
      strokeWidth: 0.7,
      strokeLinecap: 'round',
    }),
    arrow(start, end),
    arrow(end, start),
  ];
}

/** Its length, half its width, and how far from the head it stands: a third of the way where the heads are near. */
const ARROW = {length: 3.4, half: 1.4, off: 2.5};

/** A solid head near `from`, pointing the way in which the wire pulls there. */
function arrow(from: Point, to: Point): Element {
  const apart = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const way = {x: (to.x - from.x) / apart, y: (to.y - from.y) / apart};
  const off = Math.min(ARROW.off, apart / 3 - ARROW.length / 2);
  const back = {x: from.x + way.x * off, y: from.y + way.y * off};
  const points = [
    [back.x + way.x * ARROW.length, back.y + way.y * ARROW.length],
    [back.x - way.y * ARROW.half, back.y + way.x * ARROW.half],
    [back.x + way.y * ARROW.half, back.y - way.x * ARROW.half],
  ];
  return s('polygon', {points: points.map((pair) => pair.map(round).join(',')).join(' '), fill: '#000'});
}

interface Point {
  readonly x: number;
  readonly y: number;
}
