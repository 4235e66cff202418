/** `wmark story`: the life of one item through the whole book. */
import {ledger} from '../build/ledger.js';
import {lives} from '../build/story.js';
import {failureText} from '../host/failure.js';
import {loadBooks} from '../host/load.js';
import {nearest} from '../text/nearest.js';
import {printable} from '../text/printable.js';
import {EXIT, type Exit} from './exit.js';
import {storyJson, storyText} from './story-report.js';
import type {Streams} from './streams.js';

export interface StoryOptions {
  readonly as: 'text' | 'json';
}

export async function story(
  item: string,
  paths: readonly string[],
  {as}: StoryOptions,
  {report, aside}: Streams,
): Promise<Exit> {
  const {books, failures} = await loadBooks(paths);
  for (const failure of failures) aside(`wmark: ${printable(failureText(failure))}\n`);
  const stories = books.flatMap(({book}) => {
    const life = book.spec.items.has(item) ? lives(ledger(book)).get(item) : undefined;
    return life === undefined ? [] : [storyJson(life, book)];
  });
  if (books.length === 0) return EXIT.unable;
  if (stories.length === 0) {
    const known = new Set(books.flatMap(({book}) => [...book.spec.items.keys()]));
    const near = nearest(item, known);
    const hint = near === undefined ? '`wmark coverage` lists the items' : `did you mean ${near}?`;
    aside(`wmark: no book here has an item ${printable(item)}; ${hint}\n`);
    return EXIT.unable;
  }
  report(as === 'json' ? `${JSON.stringify({stories}, null, 2)}\n` : stories.map(storyText).join('\n'));
  return failures.length > 0 ? EXIT.unable : EXIT.clean;
}
