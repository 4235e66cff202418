/** The spread of fits over several builds: a strip plot and a table for each fit. */
import {fill} from '../text/fill.js';
import {grouped} from '../text/grouped.js';
import type {Chart} from './chart.js';
import {figuresOf, limitPlaces, limitsText, plain} from './figures.js';
import {type Block, figure, part, table} from './page.js';
import type {Spread} from './report.js';
import {verdictOf} from './verdict.js';
import type {ReportWords} from './words.js';

export function spreadPart(spread: readonly Spread[], words: ReportWords): Block[] {
  const groups = groupsOf(spread).flatMap((places) => groupPart(places, words));
  return part(2, words.spread, groups, 'spread');
}

/** The places of one fit of one engine, in one unit. */
function groupsOf(spread: readonly Spread[]): (readonly Spread[])[] {
  return [...grouped(spread, ({engine, item, unit}) => JSON.stringify([engine, item, unit])).values()];
}

function groupPart(places: readonly Spread[], words: ReportWords): Block[] {
  const [first] = places;
  if (first === undefined) return [];
  const limits = limitsText(first, words);
  const within = limits ?? first.unit;
  const title = `${first.name}${within === '' ? '' : `: ${within}`}`;
  const chart: Chart = {
    label: fill(words.spreadDrawing, {name: first.name}),
    limits: first,
    places: limitPlaces(first),
    rows: places.map(({place, values, mean}) => ({
      name: place || words.oneReading,
      mean,
      points: values.map(({value}) => ({value, verdict: verdictOf(value, first) ?? 'unjudged'})),
    })),
  };
  const rows = places.map((one) => {
    const {smallest, mean, largest, deviation, places: digits} = figuresOf(one);
    const values = one.values.map(({build, value}) => `${build}: ${plain(value, digits)}`);
    const figures = [String(one.values.length), smallest, mean, largest, deviation ?? '–'];
    return [one.place || words.oneReading, ...figures.map(figure), values.join(', ')];
  });
  const heads = [words.place, 'n', words.least, words.mean, words.most, words.deviation, words.builds];
  return part(3, title, [{type: 'chart', chart}, ...table(heads, rows)]);
}
