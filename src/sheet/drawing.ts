/** Drawings of a sheet as data, in a frame whose longer side is 1: fasteners to scale, places in a row. */
import type {Fastener} from '../spec/model.js';
import {spaced} from './context.js';
import type {Drawing} from './model.js';

/**
 * Those fasteners of the layout that are `shown`, numbered in that order where it is a tightening order; nothing for
 * fewer than two. The layout's y runs upwards, the drawing's downwards.
 */
export function drawingOf(
  fastener: Fastener,
  shown: readonly string[],
  ordered: boolean,
): Drawing | undefined {
  const points = fastener.layout.filter(({id}) => shown.includes(id));
  if (points.length < 2) return undefined;
  const left = Math.min(...points.map(({x}) => x));
  const top = Math.max(...points.map(({y}) => y));
  const width = Math.max(...points.map(({x}) => x)) - left;
  const height = top - Math.min(...points.map(({y}) => y));
  const scale = Math.max(width, height) || 1;
  return {
    kind: 'fasteners',
    width: width / scale,
    height: height / scale,
    points: points.map(({id, x, y}) => ({
      name: spaced(id),
      x: (x - left) / scale,
      y: (top - y) / scale,
      ...(ordered ? {number: shown.indexOf(id) + 1} : {}),
    })),
  };
}

/** As many as stand beside each other on a sheet. */
const IN_A_ROW = 8;

/** Places in the order of their list, row by row; where they lie on the engine nobody has said. */
export function placesDrawing(kind: 'strips' | 'places', names: readonly string[]): Drawing {
  const columns = Math.min(IN_A_ROW, names.length);
  const step = columns > 1 ? 1 / (columns - 1) : 1;
  return {
    kind,
    width: columns > 1 ? 1 : 0,
    height: (Math.ceil(names.length / IN_A_ROW) - 1) * step,
    points: names.map((name, at) => ({
      name,
      x: (at % IN_A_ROW) * step,
      y: Math.floor(at / IN_A_ROW) * step,
    })),
  };
}
