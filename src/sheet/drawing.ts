/** Where a set of fasteners sits, drawn to scale in a frame whose longer side is 1. */
import type {Fastener} from '../spec/model.js';
import type {Drawing} from './model.js';

/**
 * The drawing of the fasteners `shown` (ids of the layout, in tightening order where the shop states one); nothing
 * where the specification gives no layout for them. The layout's y runs upwards, the drawing's downwards.
 */
export function drawingOf(fastener: Fastener, shown: readonly string[]): Drawing | undefined {
  const points = fastener.layout.filter(({id}) => shown.includes(id));
  if (points.length < 2) return undefined;
  const left = Math.min(...points.map(({x}) => x));
  const top = Math.max(...points.map(({y}) => y));
  const width = Math.max(...points.map(({x}) => x)) - left;
  const height = top - Math.min(...points.map(({y}) => y));
  const scale = Math.max(width, height) || 1;
  return {
    width: width / scale,
    height: height / scale,
    points: points.map(({id, x, y}) => ({
      name: id.replaceAll('-', ' '),
      x: (x - left) / scale,
      y: (top - y) / scale,
      ...numberOf(id, fastener, shown),
    })),
  };
}

/** Only a stated order gives numbers: numbers in the order of a list would pass for one. */
function numberOf(id: string, fastener: Fastener, shown: readonly string[]): {readonly number?: number} {
  return fastener.order.length > 1 ? {number: shown.indexOf(id) + 1} : {};
}
