/** The readings of a build: a drawing and a table for each fit or check, those that are out before the others. */
import {fill} from '../text/fill.js';
import {grouped} from '../text/grouped.js';
import type {Chart, ChartPoint, ChartRow} from './chart.js';
import {limitPlaces, limitsText, minuteUtc, withUnit} from './figures.js';
import {placeOf} from './headings.js';
import {type Block, bad, type Cell, part, table} from './page.js';
import type {BuildReport, ReadingLine} from './report.js';
import type {ReportWords} from './words.js';

export function readingsPart({readings}: BuildReport, words: ReportWords): Block[] {
  return part(
    3,
    words.readings,
    groupsOf(readings).flatMap((lines) => groupPart(lines, words)),
  );
}

/** The order in which fits are shown: what somebody must act on first, what nobody asked for last. */
const ORDER: readonly ReadingLine['state'][] = [
  'out',
  'unreadable',
  'missing',
  'open',
  'near',
  'in',
  'unjudged',
  'not-called-for',
];

/** The lines of one item in one step. */
function groupsOf(lines: readonly ReadingLine[]): (readonly ReadingLine[])[] {
  const groups = grouped(lines, ({sheet, step, item}) => JSON.stringify([sheet, step, item]));
  return [...groups.values()].sort((one, other) => worst(one) - worst(other));
}

function worst(group: readonly ReadingLine[]): number {
  return Math.min(...group.map(({state}) => ORDER.indexOf(state)));
}

function groupPart(lines: readonly ReadingLine[], words: ReportWords): Block[] {
  const [first] = lines;
  if (first === undefined) return [];
  const limits = limitsText(first, words);
  const title = `${first.name}${limits === undefined ? '' : `: ${limits}`}`;
  const earlier = lines.some((line) => earlierText(line, words) !== '');
  const rows = lines.map((line) => [
    line.place || words.oneReading,
    readText(line),
    stateCell(line, words),
    byText(line),
    ...(earlier ? [earlierText(line, words) || '–'] : []),
  ]);
  const {place, reading, verdict, by, before} = words;
  const heads = [place, reading, verdict, by, ...(earlier ? [before] : [])];
  return part(4, title, [
    {type: 'paragraph', text: placeOf(first, words), small: true},
    {type: 'chart', chart: chartOf(first, lines, words)},
    ...table(heads, rows),
  ]);
}

function chartOf(first: ReadingLine, lines: readonly ReadingLine[], words: ReportWords): Chart {
  return {
    label: fill(words.drawing, {name: first.name}),
    limits: first,
    places: limitPlaces(first),
    rows: lines.flatMap((line) => chartRow(line, words)),
  };
}

function chartRow({place, rounds}: ReadingLine, {oneReading}: ReportWords): ChartRow[] {
  const points = rounds.flatMap(({number, verdict}, index): ChartPoint[] => {
    if (number === undefined) return [];
    return [{value: number, verdict: verdict ?? 'unjudged', earlier: index < rounds.length - 1}];
  });
  return points.length === 0 ? [] : [{name: place || oneReading, points}];
}

function stateCell({state, rounds}: ReadingLine, {states, outAccepted}: ReportWords): Cell {
  if (state === 'out' && rounds.at(-1)?.accepted) return bad(outAccepted);
  const wrong = state === 'out' || state === 'unreadable' || state === 'missing';
  return wrong ? bad(states[state]) : states[state];
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
function earlierText({rounds}: ReadingLine, {overwritten}: ReportWords): string {
  const earlier = rounds.flatMap((round, index) => [
    ...round.before.map(({value, by}) => fill(overwritten, {value, by})),
    ...(index < rounds.length - 1 ? [`${round.value} (${round.by})`] : []),
  ]);
  return earlier.join(', ');
}
