/** `wmark lists`: what a build, or one engine on the stand, takes: tools, consumables, parts, torques and time. */
import {forJob} from '../build/for-job.js';
import {today} from '../host/clock.js';
import type {LoadedBook} from '../host/load.js';
import {bookLists} from '../sheet/book-lists.js';
import {bookFingerprint} from '../sheet/fingerprint.js';
import type {BookLists, ListName} from '../sheet/list-model.js';
import {listsCsv} from '../sheet/lists-csv.js';
import {listsHtml} from '../sheet/lists-html.js';
import {listsMarkdown} from '../sheet/lists-markdown.js';
import {listsText} from '../sheet/lists-text.js';
import {askedBooks} from './asked-books.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface ListsOptions {
  readonly as: 'text' | 'markdown' | 'csv' | 'html' | 'json';
  /** Number of the job whose engine it is, or `all`. */
  readonly job?: string;
  /** The lists that are wanted; all of them where it is left out. */
  readonly list?: readonly ListName[];
}

export async function lists(
  paths: readonly string[],
  {as, job, list}: ListsOptions,
  streams: Streams,
): Promise<Exit> {
  const {books, failed} = await askedBooks(paths, job, streams);
  const all = await Promise.all(books.map(listsOf));
  const [first, ...others] = all;
  const [book] = books;
  if (first === undefined || book === undefined) return EXIT.unable;
  const print = {
    text: () => listsText(all, list),
    markdown: () => listsMarkdown(all, list),
    csv: () => listsCsv(all, list),
    html: () => listsHtml(first, others, {paper: book.book.spec.shop.paper, asked: list}),
    json: () => `${JSON.stringify({lists: all.map((one) => plainLists(one, list))}, null, 2)}\n`,
  };
  streams.report(print[as]());
  return failed ? EXIT.unable : EXIT.clean;
}

async function listsOf({book, only}: LoadedBook): Promise<BookLists> {
  const fingerprint = await bookFingerprint(book);
  return bookLists(forJob(book), {fingerprint, today: today(), ...(only && {only})});
}

/** Without the words that a sheet prints, and without the lists that nobody asked for. */
function plainLists(
  {words: _, tools, consumables, parts, newParts, torques, time, ...head}: BookLists,
  asked: readonly ListName[] | undefined,
) {
  const wanted = (name: ListName) => asked?.includes(name) ?? true;
  return {
    ...head,
    ...(wanted('tools') && {tools}),
    ...(wanted('consumables') && {consumables}),
    ...(wanted('parts') && {parts}),
    ...(wanted('new-parts') && {newParts}),
    ...(wanted('torques') && {torques}),
    ...(wanted('time') && time && {time}),
  };
}
