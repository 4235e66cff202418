/** What may come next in the front matter of a procedure: its keys, and engines and options behind `only:`. */
import {FRONT_KEYS} from '../procedure/front-matter.js';
import type {Specification} from '../spec/model.js';
import {runBefore} from '../text/runs.js';
import type {Typing} from './completion-typing.js';
import type {Offer} from './offer.js';

/** None below the front matter. */
export function frontMatterOffers(
  {engine, options}: Specification,
  {text, offset}: Typing,
): readonly Offer[] {
  const end = endOfFront(text);
  if (end === undefined || offset > end) return [];
  const line = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
  const word = line.slice(runBefore(line, line.length, /[A-Za-z0-9-]/));
  const span = {start: offset - word.length, end: offset};
  if (/^\s*only\s*:/.test(line)) {
    const all = [{id: engine.id, name: engine.name}, ...options.values()];
    return all.map(({id, name}) => ({label: id, kind: 'item', insert: id, span, detail: name, rank: 0}));
  }
  if (line !== word) return [];
  const present = new Set(
    text
      .slice(0, end)
      .split('\n')
      .map((one) => /^([a-z]+)[ \t]*:/.exec(one)?.[1]),
  );
  return Object.entries(FRONT_KEYS).flatMap(([key, detail]): Offer[] =>
    present.has(key) ? [] : [{label: key, kind: 'word', insert: `${key}: `, span, detail, rank: 0}],
  );
}

/** Where the front matter ends; before it is closed, at the first blank line. Nothing where there is none. */
function endOfFront(text: string): number | undefined {
  const [opening] = /^---[ \t]*\r?\n/.exec(text) ?? [];
  if (opening === undefined) return undefined;
  const closing = /^(?:---[ \t]*|[ \t]*)$/gm;
  closing.lastIndex = opening.length;
  return closing.exec(text)?.index ?? text.length;
}
