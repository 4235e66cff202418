/** How far apart the fasteners of a layout sit. */
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import type {Fastener} from '../spec/model.js';
import {distance} from '../trade/layout.js';

/** The distances along a run, one fewer than its fasteners; undefined where the layout lacks one of them. */
export function spansOf(run: readonly string[], {layout, layoutUnit}: Fastener): Quantity[] | undefined {
  const spots = run.map((id) => layout.find((spot) => spot.id === id));
  const spans = spots.slice(1).map((to, index) => {
    const from = spots[index];
    return from && to ? apart(distance(from, to), layoutUnit) : undefined;
  });
  const known = spans.filter((span) => span !== undefined);
  return known.length < spans.length ? undefined : known;
}

/** The most that any fastener is away from its nearest neighbour, and which; undefined where there is no other. */
export function widestNeighbours({
  layout,
  layoutUnit,
}: Fastener): {readonly id: string; readonly apart: Quantity} | undefined {
  if (layout.length < 2 || layout.length > MOST) return undefined;
  const nearest = layout.map((spot) => ({
    id: spot.id,
    apart: Math.min(...layout.filter((other) => other !== spot).map((other) => distance(spot, other))),
  }));
  const [widest] = nearest.sort((one, other) => other.apart - one.apart);
  return widest && widest.apart > 0 ? {id: widest.id, apart: apart(widest.apart, layoutUnit)} : undefined;
}

/** Every pair is looked at: no engine has a group of more. */
const MOST = 500;

/** To a hundredth of an inch or a tenth of a millimetre. */
function apart(value: number, symbol: 'in' | 'mm'): Quantity {
  return {value: Number(value.toPrecision(12)), unit: unit(symbol), step: symbol === 'in' ? 0.01 : 0.1};
}
