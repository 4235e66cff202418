/** `wmark story`: the life of one item through the whole book. */
import {forJob} from '../build/for-job.js';
import {ledger} from '../build/ledger.js';
import {lives} from '../build/story.js';
import {nearest} from '../text/nearest.js';
import {printable} from '../text/printable.js';
import {askedBooks} from './asked-books.js';
import {EXIT, type Exit} from './exit.js';
import {storyJson, storyText} from './story-report.js';
import type {Streams} from './streams.js';

export interface StoryOptions {
  readonly as: 'text' | 'json';
  /** Number of the job whose engine it is, or `all`. */
  readonly job?: string;
}

export async function story(
  item: string,
  paths: readonly string[],
  {as, job}: StoryOptions,
  streams: Streams,
): Promise<Exit> {
  const {report, aside} = streams;
  const asked = await askedBooks(paths, job, streams);
  const books = asked.books.map(({book}) => forJob(book));
  const stories = books.flatMap((book) => {
    const life = book.spec.items.has(item) ? lives(ledger(book)).get(item) : undefined;
    return life === undefined ? [] : [storyJson(life, book)];
  });
  if (books.length === 0) return EXIT.unable;
  if (stories.length === 0) {
    const known = new Set(books.flatMap(({spec}) => [...spec.items.keys()]));
    const near = nearest(item, known);
    const hint = near === undefined ? '`wmark coverage` lists the items' : `did you mean ${near}?`;
    aside(`wmark: no book here has an item ${printable(item)}; ${hint}\n`);
    return EXIT.unable;
  }
  report(as === 'json' ? `${JSON.stringify({stories}, null, 2)}\n` : stories.map(storyText).join('\n'));
  return asked.failed ? EXIT.unable : EXIT.clean;
}
