/** The readings of a build: a drawing and a table for each fit or check, those that are out before the others. */
import type {Chart, ChartPoint, ChartRow} from './chart.js';
import {type Block, bad, type Cell, part, table} from './page.js';
import {decimals, limitsText, minuteUtc, withUnit} from './remark.js';
import type {BuildReport, ReadingLine} from './report.js';
import {placeOf} from './text.js';

export function readingsPart({readings}: BuildReport): Block[] {
  return part(3, 'Readings', groupsOf(readings).flatMap(groupPart));
}

/** What a state is called, and the order in which fits are shown. */
const STATES: Readonly<Record<ReadingLine['state'], string>> = {
  out: 'out',
  unreadable: 'no number',
  missing: 'missing',
  open: 'still open',
  near: 'near a limit',
  in: 'in',
  unjudged: 'no limits',
  'not-called-for': 'not called for',
};

const ORDER = Object.keys(STATES);

/** The lines of one item in one step. */
function groupsOf(lines: readonly ReadingLine[]): (readonly ReadingLine[])[] {
  const groups = new Map<string, ReadingLine[]>();
  for (const line of lines) {
    const key = JSON.stringify([line.sheet, line.step, line.item]);
    const group = groups.get(key);
    if (group) group.push(line);
    else groups.set(key, [line]);
  }
  return [...groups.values()].sort((one, other) => worst(one) - worst(other));
}

function worst(group: readonly ReadingLine[]): number {
  return Math.min(...group.map(({state}) => ORDER.indexOf(state)));
}

function groupPart(lines: readonly ReadingLine[]): Block[] {
  const [first] = lines;
  if (first === undefined) return [];
  const limits = limitsText(first);
  const title = `${first.name}${limits === undefined ? '' : `: ${limits}`}`;
  const earlier = lines.some((line) => earlierText(line) !== '');
  const rows = lines.map((line) => [
    line.place || 'reading',
    readText(line),
    stateCell(line.state),
    byText(line),
    ...(earlier ? [earlierText(line) || '–'] : []),
  ]);
  const heads = ['Place', 'Reading', 'Verdict', 'By', ...(earlier ? ['Before'] : [])];
  return part(4, title, [
    {type: 'paragraph', text: placeOf(first), small: true},
    {type: 'chart', chart: chartOf(first, lines)},
    ...table(heads, rows),
  ]);
}

function chartOf(first: ReadingLine, lines: readonly ReadingLine[]): Chart {
  return {
    label: `Drawing of the readings of ${first.name}, which the table says in words`,
    limits: first,
    places: Math.max(
      0,
      ...[first.least, first.most].flatMap((end) => (end === undefined ? [] : [decimals(end)])),
    ),
    rows: lines.flatMap(chartRow),
  };
}

function chartRow({place, rounds}: ReadingLine): ChartRow[] {
  const points = rounds.flatMap(({number, verdict}, index): ChartPoint[] => {
    if (number === undefined) return [];
    return [{value: number, verdict: verdict ?? 'unjudged', earlier: index < rounds.length - 1}];
  });
  return points.length === 0 ? [] : [{name: place || 'reading', points}];
}

function stateCell(state: ReadingLine['state']): Cell {
  const wrong = state === 'out' || state === 'unreadable' || state === 'missing';
  return wrong ? bad(STATES[state]) : STATES[state];
}

function readText({rounds, unit}: ReadingLine): string {
  const last = rounds.at(-1);
  return last === undefined ? '–' : withUnit(last.value, unit);
}

function byText({rounds}: ReadingLine): string {
  const last = rounds.at(-1);
  return last === undefined ? '–' : `${last.by}, ${minuteUtc(last.at)}`;
}

/** What was read in earlier rounds, and what was written over. */
function earlierText({rounds}: ReadingLine): string {
  const earlier = rounds.flatMap((round, index) => [
    ...round.before.map(({value, by}) => `${value} (${by}, written over)`),
    ...(index < rounds.length - 1 ? [`${round.value} (${round.by})`] : []),
  ]);
  return earlier.join(', ');
}
