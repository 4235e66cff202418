/**
 * The pull of a drawn safety wire: whatever the layout, it tightens every head. The rule is that of FAA AC 43.13-1B,
 * section 7-122 and after (from memory); the turning moment of each end is worked out here anew.
 */
import fc from 'fast-check';
import type {Element} from 'hast';
import {expect, test} from 'vitest';
import type {Placed} from '../../src/sheet/drawn-points.js';
import {wireNodes} from '../../src/sheet/html-wire.js';

const RADIUS = 4;

/** The ends of every drawn span. */
function spansOf(nodes: readonly Element[]): {x1: number; y1: number; x2: number; y2: number}[] {
  return nodes
    .filter(({tagName}) => tagName === 'line')
    .map(({properties: {x1, y1, x2, y2}}) => ({
      x1: Number(x1),
      y1: Number(y1),
      x2: Number(x2),
      y2: Number(y2),
    }));
}

/** Positive where a pull at one point towards another turns the head clockwise, as seen with y downwards. */
function turning(head: Placed, at: readonly [number, number], to: readonly [number, number]): number {
  const arm = [at[0] - head.x, at[1] - head.y] as const;
  return arm[0] * (to[1] - at[1]) - arm[1] * (to[0] - at[0]);
}

const layout = fc
  .uniqueArray(fc.record({x: fc.integer({min: 0, max: 8}), y: fc.integer({min: 0, max: 8})}), {
    minLength: 2,
    maxLength: 6,
    selector: ({x, y}) => `${x},${y}`,
  })
  .map((points) => points.map(({x, y}, at): Placed => ({name: `b${at}`, x: x * 12, y: y * 12})));

test.each([false, true])('pulls every head tight, left-hand thread: %s', (leftHanded) => {
  fc.assert(
    fc.property(layout, (heads) => {
      const wire = heads.map((_, at) => at);
      const spans = spansOf(wireNodes(wire, heads, RADIUS, leftHanded));
      expect(spans).toHaveLength(heads.length - 1);
      spans.forEach(({x1, y1, x2, y2}, at) => {
        const [from, to] = heads.slice(at, at + 2);
        if (from === undefined || to === undefined) throw new Error('no span');
        const sign = leftHanded ? -1 : 1;
        expect(Math.sign(turning(from, [x1, y1], [x2, y2]))).toBe(sign);
        expect(Math.sign(turning(to, [x2, y2], [x1, y1]))).toBe(sign);
        expect(Math.hypot(x1 - from.x, y1 - from.y)).toBeCloseTo(RADIUS, 1);
      });
    }),
  );
});
