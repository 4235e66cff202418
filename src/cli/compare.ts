/** `wmark compare`: what a change of a book means for the engine. */
import {today} from '../host/clock.js';
import type {Failure} from '../host/failure.js';
import {sidesOnDisk, sidesSince, type TwoSides} from '../host/two-sides.js';
import {compareMarkdown} from './compare-markdown.js';
import {type Compared, comparedBooks, compareJson} from './compare-report.js';
import type {CompareJson} from './compare-shape.js';
import {compareText, unseenText} from './compare-text.js';
import {unable} from './complain.js';
import {EXIT, type Exit} from './exit.js';
import type {StopOn} from './stop-on.js';
import type {Streams} from './streams.js';

export type CompareForm = 'text' | 'markdown' | 'json' | 'sarif' | 'html';

export interface CompareOptions {
  readonly as: CompareForm;
  readonly since?: string;
  readonly until?: string;
  readonly stopOn?: readonly StopOn[];
}

export async function compare(
  paths: readonly string[],
  options: CompareOptions,
  {report, aside}: Streams,
): Promise<Exit> {
  const sides = await sidesFor(paths, options);
  if (!sides.ok) return unable({aside}, sides);
  const compared = comparedBooks(sides, today());
  const json = compareJson(sides, compared);
  report(await rendered(options.as, json, compared));
  if (options.as !== 'text') for (const one of json.unseen) aside(`wmark: ${unseenText(one)}\n`);
  // What could not be seen of the new side may hide a weakening; a fault of the old one is settled by the change.
  if (json.unseen.some(({side, file}) => side === 'now' && file !== null)) return EXIT.unable;
  return stops(json, options.stopOn ?? []) ? EXIT.errors : EXIT.clean;
}

async function sidesFor(
  paths: readonly string[],
  {since, until}: CompareOptions,
): Promise<TwoSides | Failure> {
  const [first, second, third] = paths;
  if (since !== undefined) {
    if (second !== undefined)
      return wrongWords('with --since one path is compared with itself', 'name one path');
    return sidesSince(first ?? '.', {since, ...(until !== undefined && {until})});
  }
  if (until !== undefined) return wrongWords('--until needs --since', 'name the older revision too');
  if (first === undefined || second === undefined || third !== undefined) {
    return wrongWords(
      'two sides are needed',
      'write wmark compare OLD NEW, or wmark compare --since REV [PATH]',
    );
  }
  return sidesOnDisk(first, second);
}

function wrongWords(says: string, hint: string): Failure {
  return {ok: false, says, hint};
}

async function rendered(as: CompareForm, json: CompareJson, compared: readonly Compared[]): Promise<string> {
  switch (as) {
    case 'json':
      return `${JSON.stringify(json, null, 2)}\n`;
    case 'markdown':
      return compareMarkdown(json);
    case 'sarif': {
      const {compareSarif} = await import('./compare-sarif.js');
      return compareSarif(json);
    }
    case 'html': {
      const {compareHtml} = await import('./compare-html.js');
      return compareHtml(json, compared);
    }
    default:
      return compareText(json);
  }
}

function stops({summary, books}: CompareJson, on: readonly StopOn[]): boolean {
  const brought = books.flatMap((book) => book.brought);
  return on.some((what) => {
    if (what === 'weakened') return summary.weakened > 0;
    // What is changed may be graver than it looks: who stops for that stops for a weakening too.
    if (what === 'changed') return summary.weakened + summary.changed > 0;
    return brought.some(
      ({severity}) => severity === 'error' || (what === 'warning' && severity === 'warning'),
    );
  });
}
