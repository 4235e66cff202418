/**
 * Readings drawn against their limits as inline SVG: a row a place, the limits as a band, verdicts by shape so that a
 * copier or a colour-blind eye loses nothing. The table beside it says the same in words.
 */
import type {Element} from 'hast';
import {s} from 'hastscript';
import {printable} from '../text/printable.js';
import {plain} from './figures.js';
import {guardOf, type Limits, type Verdict} from './verdict.js';

/** Readings of one item in one unit, with the limits that hold for all of them. */
export interface Chart {
  /** What is drawn, for those who cannot see it. */
  readonly label: string;
  readonly limits: Limits;
  /** Figures behind the point on the axis. */
  readonly places: number;
  readonly rows: readonly ChartRow[];
}

export interface ChartRow {
  readonly name: string;
  readonly points: readonly ChartPoint[];
  /** Drawn as a stroke across the row. */
  readonly mean?: number;
}

/** One reading; its mark says the verdict by its shape. */
export interface ChartPoint {
  readonly value: number;
  readonly verdict: Verdict | 'unjudged';
  /** A reading that a later one took the place of. */
  readonly earlier?: boolean;
}

/** In units of the drawing, which is as wide as the text on a portrait page. */
const WIDTH = 640;
const LEFT = 150;
const RIGHT = 20;
const ROW = 26;
const TOP = 8;
const FOOT = 26;
const TEXT = 13;
/** Characters of the name of a place that fit beside its row. */
const NAME = 18;

/** Nothing where there is nothing to draw. */
export function chartNode({label, limits, places, rows}: Chart): Element | undefined {
  const scale = scaleFor(rows, limits);
  if (scale === undefined) return undefined;
  const height = TOP + rows.length * ROW + FOOT;
  const props = {
    viewBox: `0 0 ${WIDTH} ${height}`,
    role: 'img',
    ariaLabel: printable(label),
    className: 'chart',
  };
  return s('svg', props, [
    ...band(scale, limits, height - FOOT),
    ...rows.flatMap((row, index) => rowNodes(row, TOP + (index + 0.5) * ROW, scale)),
    ...axis(scale, limits, {places, y: height - FOOT}),
  ]);
}

/** Of the width of all readings, left free on either side, so that the outermost mark is whole. */
const MARGIN = 0.08;

interface Scale {
  readonly low: number;
  readonly high: number;
  readonly x: (value: number) => number;
}

function scaleFor(rows: readonly ChartRow[], {least, most}: Limits): Scale | undefined {
  if (rows.length === 0) return undefined;
  const ends = [least, most].filter((end) => end !== undefined);
  const values = [...rows.flatMap(({points}) => points.map(({value}) => value)), ...ends];
  // What is only to be small lies between nought and its limit.
  if (least === undefined && most !== undefined) values.push(Math.min(0, most));
  const [first] = values;
  if (first === undefined) return undefined;
  const [smallest, largest] = values.reduce(
    ([low, high], value): [number, number] => [Math.min(low, value), Math.max(high, value)],
    [first, first],
  );
  // All of one value still need a width, or they would be divided by nought.
  const pad = (largest - smallest || Math.abs(first) || 1) * MARGIN;
  const [low, high] = [smallest - pad, largest + pad];
  return {low, high, x: (value) => tidy(LEFT + ((value - low) / (high - low)) * (WIDTH - LEFT - RIGHT))};
}

function band({low, high, x}: Scale, limits: Limits, bottom: number): Element[] {
  const {least, most} = limits;
  const guard = guardOf(limits);
  if (least === undefined && most === undefined) return [];
  const rect = (from: number, to: number, fill: string) =>
    from < to
      ? [s('rect', {x: x(from), y: TOP, width: tidy(x(to) - x(from)), height: bottom - TOP, fill})]
      : [];
  const [from, to] = [least ?? low, most ?? high];
  const ends = [least, most].filter((end) => end !== undefined);
  return [
    ...rect(from, to, '#d8d8d8'),
    // In the darker edges a reading is near a limit.
    ...rect(least === undefined ? from : from + guard, most === undefined ? to : to - guard, '#f0f0f0'),
    ...ends.map((end) => line(x(end), TOP, x(end), bottom, 1.6)),
  ];
}

function rowNodes({name, points, mean}: ChartRow, y: number, scale: Scale): Element[] {
  const shown = name.length > NAME ? `${name.slice(0, NAME - 1)}…` : name;
  return [
    s('text', {x: LEFT - 8, y: y + TEXT * 0.36, fontSize: TEXT, textAnchor: 'end'}, printable(shown)),
    line(LEFT, y, WIDTH - RIGHT, y, 0.4),
    ...(mean === undefined ? [] : [line(scale.x(mean), y - 9, scale.x(mean), y + 9, 2.4)]),
    ...apart(points, scale).map(({point, x, off}) => mark(point, x, y + off)),
  ];
}

/** Equal readings beside each other rather than on top. */
function apart(points: readonly ChartPoint[], {x}: Scale) {
  const places = points.map(({value}) => x(value));
  return points.map((point, index) => {
    const at = places[index] ?? 0;
    const before = places.slice(0, index).filter((other) => Math.abs(other - at) < CLOSE).length;
    return {point, x: at, off: ASIDE[before % ASIDE.length] ?? 0};
  });
}

/** Marks nearer than this would cover each other; how far each further one is moved up or down. */
const CLOSE = 6;
const ASIDE = [0, -7, 7, -3.5, 3.5];

/** In: a disc. Near: a diamond, open. Out: a cross. An earlier reading is small and open. */
function mark({verdict, earlier}: ChartPoint, x: number, y: number): Element {
  const stroke = {fill: '#fff', stroke: '#000', strokeWidth: 1.6};
  const r = earlier ? 3.2 : 5;
  if (verdict === 'out') {
    const d = `M${x - r} ${y - r}L${x + r} ${y + r}M${x - r} ${y + r}L${x + r} ${y - r}`;
    return s('path', {d, stroke: '#000', strokeWidth: earlier ? 1.4 : 3, fill: 'none'});
  }
  if (verdict === 'near')
    return s('path', {
      d: `M${x} ${y - r - 1}L${x + r + 1} ${y}L${x} ${y + r + 1}L${x - r - 1} ${y}Z`,
      ...stroke,
    });
  return earlier || verdict === 'unjudged'
    ? s('circle', {cx: x, cy: y, r, ...stroke})
    : s('circle', {cx: x, cy: y, r, fill: '#000'});
}

/** The limits, or where there are none the ends of the readings, in figures. */
function axis(
  scale: Scale,
  {least, most}: Limits,
  {places, y}: {readonly places: number; readonly y: number},
): Element[] {
  const known = [least, most].filter((end) => end !== undefined);
  // Without limits, the ends of the readings: the scale less the margin on either side.
  const margin = ((scale.high - scale.low) / (1 + 2 * MARGIN)) * MARGIN;
  const ends = known.length > 0 ? known : [scale.low + margin, scale.high - margin];
  return [
    line(LEFT, y, WIDTH - RIGHT, y, 1),
    ...ends.map((end, index) => {
      const anchor = ends.length > 1 ? (index === 0 ? 'end' : 'start') : 'middle';
      return s('text', {x: scale.x(end), y: y + 18, fontSize: TEXT, textAnchor: anchor}, plain(end, places));
    }),
  ];
}

function line(x1: number, y1: number, x2: number, y2: number, strokeWidth: number): Element {
  return s('line', {x1, y1, x2, y2, stroke: '#000', strokeWidth});
}

function tidy(value: number): number {
  return Math.round(value * 100) / 100;
}
