/** The spread of fits over several builds: a strip plot and a table for each fit. */
import type {Chart} from './chart.js';
import {type Block, figure, part, table} from './page.js';
import {decimals, limitsText, plain} from './remark.js';
import type {Spread} from './report.js';
import {figuresOf} from './text.js';
import {verdictOf} from './verdict.js';

export function spreadPart(spread: readonly Spread[]): Block[] {
  return part(2, 'Spread over the builds', groupsOf(spread).flatMap(groupPart), 'spread');
}

/** The places of one fit of one engine, in one unit. */
function groupsOf(spread: readonly Spread[]): (readonly Spread[])[] {
  const groups = new Map<string, Spread[]>();
  for (const one of spread) {
    const key = JSON.stringify([one.engine, one.item, one.unit]);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()];
}

function groupPart(places: readonly Spread[]): Block[] {
  const [first] = places;
  if (first === undefined) return [];
  const limits = limitsText(first);
  const within = limits ?? first.unit;
  const title = `${first.name}${within === '' ? '' : `: ${within}`}`;
  const chart: Chart = {
    label: `Drawing of the readings of ${first.name} in every build, with a stroke at the mean of each place; the table says the same in figures`,
    limits: first,
    places: Math.max(
      0,
      ...[first.least, first.most].flatMap((end) => (end === undefined ? [] : [decimals(end)])),
    ),
    rows: places.map(({place, values, mean}) => ({
      name: place || 'reading',
      mean,
      points: values.map(({value}) => ({value, verdict: verdictOf(value, first) ?? 'unjudged'})),
    })),
  };
  const rows = places.map((one) => {
    const {smallest, mean, largest, deviation, places: digits} = figuresOf(one);
    const values = one.values.map(({build, value}) => `${build}: ${plain(value, digits)}`);
    const figures = [String(one.values.length), smallest, mean, largest, deviation ?? '–'];
    return [one.place || 'reading', ...figures.map(figure), values.join(', ')];
  });
  const heads = ['Place', 'n', 'Least', 'Mean', 'Most', 'Deviation', 'Builds'];
  return part(3, title, [{type: 'chart', chart}, ...table(heads, rows)]);
}
