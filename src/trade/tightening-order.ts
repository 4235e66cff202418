/** In which order the fasteners of a joint are tightened: from the middle outwards, or crosswise round a ring. */
import {distance, middleOf, type Spot} from './layout.js';
import {refused, type Worked} from './worked.js';

export type Pattern = 'outwards' | 'crosswise';

export interface TighteningOrder {
  readonly pattern: Pattern;
  /** Ids in order. */
  readonly order: readonly string[];
}

/** A joint has fewer; a longer list is a slip. */
const MOST_SPOTS = 400;

/**
 * The order for fasteners at these places. Crosswise for a ring (each opposite the one before, the gaps halved), outwards from
 * the middle and from side to side for rows, grids and anything else. Source: common practice; rings as in ASME PCC-1 (from memory).
 */
export function tighteningOrder(spots: readonly Spot[], pattern?: Pattern): Worked<TighteningOrder> {
  if (spots.length === 0) return refused('there is no fastener to tighten', 'give their places');
  if (spots.length > MOST_SPOTS)
    return refused(`${spots.length} fasteners are too many for one joint`, 'order them part by part');
  const odd = spots.find(({x, y}) => !Number.isFinite(x) || !Number.isFinite(y));
  if (odd) return refused(`${odd.id} has no place`, 'give x and y as numbers');
  const twice = spots.find(({id}, index) => spots.findIndex((spot) => spot.id === id) !== index);
  if (twice) return refused(`${twice.id} stands in the layout twice`, 'give every fastener an id of its own');
  const taken = pattern ?? (isRing(spots) ? 'crosswise' : 'outwards');
  const order = taken === 'crosswise' ? crosswise(spots) : outwards(spots);
  return {
    ok: true,
    result: {pattern: taken, order: order.map(({id}) => id)},
    formula:
      taken === 'crosswise'
        ? 'opposite pairs, each pair between those before'
        : 'by distance from the middle, each from the other side than the one before',
    inputs: [
      {name: 'fasteners', value: String(spots.length)},
      {name: 'pattern', value: pattern ?? `${taken}, by the layout`},
    ],
    source:
      taken === 'crosswise'
        ? 'common practice; ASME PCC-1 cross pattern (from memory)'
        : 'common practice, no source',
    advisory: "The maker's order outranks this one.",
  };
}

/** All at nearly one distance from their middle and spread all round it: of two or fewer one side is always bare. */
function isRing(spots: readonly Spot[]): boolean {
  const middle = middleOf(spots);
  const radii = spots.map((spot) => distance(spot, middle));
  const mean = radii.reduce((sum, radius) => sum + radius, 0) / radii.length;
  const even = radii.every((radius) => Math.abs(radius - mean) <= 0.1 * mean);
  const turns = roundTheMiddle(spots).map((spot) => Math.atan2(spot.x - middle.x, spot.y - middle.y));
  const gaps = turns.map((turn, index) => (turn - (turns.at(index - 1) ?? 0) + 4 * Math.PI) % (2 * Math.PI));
  return mean > 0 && even && Math.max(...gaps) < 0.8 * Math.PI;
}

/** Clockwise as on paper (y upwards), starting with the one given first; of those on one line, the nearest first. */
function roundTheMiddle(spots: readonly Spot[]): Spot[] {
  const middle = middleOf(spots);
  const size = Math.max(...spots.map((spot) => distance(spot, middle)));
  const turn = (spot: Spot): number =>
    distance(spot, middle) <= 1e-9 * size ? 0 : Math.atan2(spot.x - middle.x, spot.y - middle.y);
  const [first] = spots;
  const start = first ? turn(first) : 0;
  // A millionth of a degree more or less is one direction, whatever the doubles say.
  const from = (spot: Spot): number => Math.round(((turn(spot) - start + 4 * Math.PI) % (2 * Math.PI)) * 1e8);
  const full = Math.round(2e8 * Math.PI);
  const places = spots.map((spot) => ({spot, at: from(spot) % full, out: distance(spot, middle)}));
  return places.sort((a, b) => a.at - b.at || a.out - b.out).map(({spot}) => spot);
}

function crosswise(spots: readonly Spot[]): Spot[] {
  const ring = roundTheMiddle(spots);
  return ringOrder(ring.length).flatMap((index) => ring.slice(index, index + 1));
}

/** Places round a ring of n, from 0: quarters where n divides by four, else opposite pairs, else the star. */
function ringOrder(n: number): number[] {
  if (n % 4 === 0) {
    const quarter = n / 4;
    return halving(quarter).flatMap((k) => [k, k + 2 * quarter, k + quarter, k + 3 * quarter]);
  }
  if (n % 2 === 0) return halving(n / 2).flatMap((k) => [k, k + n / 2]);
  return star(n);
}

/** 0 … n−1 so that each falls amid the gaps left by those before: 0, 2, 1, 3 of four. */
function halving(n: number): number[] {
  const evens = Array.from({length: Math.ceil(n / 2)}, (_, index) => 2 * index);
  const odds = Array.from({length: Math.floor(n / 2)}, (_, index) => 2 * index + 1);
  return n <= 3 ? Array.from({length: n}, (_, index) => index) : [...evens, ...odds];
}

/** Odd rings: on by nearly half each time. Twice the stride and one make n, so it meets every place. */
function star(n: number): number[] {
  const stride = Math.floor(n / 2);
  return Array.from({length: n}, (_, index) => (index * stride) % n);
}

/** Nearest to the middle first; of those equally near, the one farthest from the fastener just done. */
function outwards(spots: readonly Spot[]): Spot[] {
  const middle = middleOf(spots);
  const size = Math.max(...spots.map((spot) => distance(spot, middle)));
  const left = [...spots];
  const order: Spot[] = [];
  const after = (last?: Spot): Spot | undefined => {
    const near = Math.min(...left.map((spot) => distance(spot, middle)));
    return farthest(
      left.filter((spot) => distance(spot, middle) <= near + 1e-6 * size),
      last,
    );
  };
  for (let next = after(); next !== undefined; next = after(next)) {
    order.push(next);
    left.splice(left.indexOf(next), 1);
  }
  return order;
}

function farthest(ring: readonly Spot[], from: Spot | undefined): Spot | undefined {
  const away = (spot: Spot) => (from ? distance(spot, from) : 0);
  const [first, ...others] = ring;
  return first && others.reduce((best, spot) => (away(spot) > away(best) + 1e-9 ? spot : best), first);
}
