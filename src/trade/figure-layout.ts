/** Where fasteners sit, as it is written for a figure: `row 6`, `grid 2×5`, `circle 8`, or each with its coordinates. */
import {type Option, type Read, text} from './figure-options.js';
import {circle, grid, row, type Spot} from './layout.js';
import {refused} from './worked.js';

export function layoutOption(): Option<readonly Spot[]> {
  const takes = 'row 6, grid 2×5, circle 8, or places as a: 0 0; b: 40 0; c: 40 25';
  return text(takes, 'where the fasteners sit', 'grid 2×5', readLayout);
}

const MOST = 400;
const HINT = 'write row 6, grid 2×5, circle 8, or a: 0 0; b: 40 0; c: 40 25';

function readLayout(given: string): Read<readonly Spot[]> {
  const plain = given.trim();
  const pattern = /^(row|circle|grid)\s+(\d+)(?:\s*[x×*]\s*(\d+))?$/i.exec(plain);
  if (pattern === null) return readSpots(plain);
  const [, name = '', first = '', second] = pattern;
  const [count, across] = [Number(first), Number(second ?? '1')];
  const kind = name.toLowerCase();
  if ((kind === 'grid') !== (second !== undefined) || count < 1 || across < 1 || count * across > MOST)
    return refused(`"${plain.slice(0, 30)}" is no layout`, HINT);
  if (kind === 'grid') return {ok: true, value: grid(count, across)};
  return {ok: true, value: kind === 'row' ? row(count) : circle(count)};
}

function readSpots(given: string): Read<readonly Spot[]> {
  const spots: Spot[] = [];
  for (const entry of given.split(';')) {
    const parts = /^\s*([^:\s]+)\s*:\s*(-?\d+(?:\.\d+)?)[\s,]+(-?\d+(?:\.\d+)?)\s*$/.exec(entry);
    const [, id, x, y] = parts ?? [];
    if (id === undefined) return refused(`"${entry.trim().slice(0, 30)}" is no place of a fastener`, HINT);
    spots.push({id, x: Number(x), y: Number(y)});
  }
  return {ok: true, value: spots};
}
