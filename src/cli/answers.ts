/** Answers for many found books, one after the other, so that no more than one of them is in memory at a time. */
import {type Cache, NO_CACHE} from '../host/cache.js';
import {DISK} from '../host/disk.js';
import type {FoundBook} from '../host/find-books.js';
import {stillHolds, type Trace, traced} from '../host/trace.js';
import type {Answer, AnswerOptions} from './answer.js';
import {build} from './version.js';

/** In their order. */
export async function* answers(
  found: readonly FoundBook[],
  options: AnswerOptions,
  cache: Cache = NO_CACHE,
): AsyncGenerator<Answer> {
  for (const one of found) yield await answerFor(one, options, cache);
}

/** What is kept of a book: its answer, and all that the answer hangs on. */
interface Kept {
  readonly answer: Answer;
  readonly trace: Trace;
  /** The day on which it was worked out, and the last on which it holds; ISO 8601. */
  readonly date: string;
  readonly lastDate?: string;
}

async function answerFor(found: FoundBook, options: AnswerOptions, cache: Cache): Promise<Answer> {
  const key = keyOf(found, options);
  const kept = keptIn(await cache.get(key));
  if (kept && holdsOn(kept, options.date) && (await stillHolds(kept.trace, DISK))) return kept.answer;
  // Loaded only now: where every answer is kept, nothing needs to be parsed.
  const [{answerFresh}, {FRESH}] = await Promise.all([
    import('./answer-fresh.js'),
    import('../host/reader.js'),
  ]);
  const {reader, trace} = traced(FRESH);
  const {answer, lastDate} = await answerFresh(found, options, reader);
  const asked = trace();
  if (answer.failure === undefined && asked !== undefined) {
    const fresh: Kept = {answer, trace: asked, date: options.date, ...(lastDate !== undefined && {lastDate})};
    await cache.put(key, JSON.stringify(fresh));
  }
  return answer;
}

/** Everything but the disk and the date that an answer hangs on, this very build of the tool among it. */
function keyOf({engineFile, only, alone, searched}: FoundBook, {cwd, job}: AnswerOptions): string {
  return JSON.stringify([build, process.version, cwd, engineFile, only, alone, searched, job]);
}

/** The seal was whole and the key names this build, so it is of the shape that this build writes. */
function keptIn(text: string | undefined): Kept | undefined {
  return text === undefined ? undefined : JSON.parse(text);
}

function holdsOn({date, lastDate}: Kept, now: string): boolean {
  return lastDate === undefined || now === date || (date < lastDate && now <= lastDate);
}
