/** Compares the books of two sides and gives the result as plain data, from which every report is made. */
import {compareBooks, type Revision} from '../compare/compare.js';
import {type Change, type Comparison, EFFECTS} from '../compare/model.js';
import {type CheckOptions, check} from '../findings/check.js';
import {checkWithJobs} from '../findings/check-jobs.js';
import type {Finding} from '../findings/model.js';
import {jobsAsked, type LoadedBook} from '../host/load.js';
import {placeOf, textsOf} from '../host/places.js';
import type {TwoBooks, TwoSides} from '../host/two-sides.js';
import {brokenFiles} from '../host/unseen.js';
import type {Source} from '../text/source.js';
import {type CompareJson, compareShape} from './compare-shape.js';
import {findingJson} from './finding-json.js';
import {fingerprint} from './fingerprint.js';

export type BookJson = CompareJson['books'][number];
export type ChangeJson = BookJson['changes'][number];

/** A pair of books compared, with what only some reports need. */
export interface Compared {
  readonly books: TwoBooks;
  readonly json: BookJson;
  /** Left out where a book has no fellow. */
  readonly comparison?: Comparison;
}

/** Books that were weakened first, those that are the same last: a reader of many need not look for what changed. */
export function comparedBooks({books}: TwoSides, date: string): Compared[] {
  const compared = books.flatMap((pair): Compared[] => {
    const {before, now} = pair;
    if (before && now) return [comparedPair({before, now}, date)];
    const json = single(pair, date);
    return json === undefined ? [] : [{books: pair, json}];
  });
  return compared.sort((a, b) => worstOf(a) - worstOf(b));
}

function worstOf({json: {changes}}: Compared): number {
  const worst = EFFECTS.find((effect) => changes.some((change) => change.effect === effect));
  return worst === undefined ? EFFECTS.length : EFFECTS.indexOf(worst);
}

/** The sums, what could not be seen, and every book, the weakened ones first. */
export function compareJson(sides: TwoSides, compared: readonly Compared[]): CompareJson {
  const moved = sides.moved ?? [];
  const books = compared.map(({json}) => json);
  const of = (effect: Change['effect']) =>
    books.reduce((sum, {changes}) => sum + changes.filter((one) => one.effect === effect).length, 0);
  const json: CompareJson = {
    ...sides.names,
    summary: {
      books: books.length,
      weakened: of('weakened'),
      strengthened: of('strengthened'),
      changed: of('changed'),
      reworded: of('reworded'),
      brought: books.reduce((sum, {brought}) => sum + brought.length, 0),
      settled: books.reduce((sum, {settled}) => sum + settled.length, 0),
    },
    unseen: sides.unseen.map(({side, says, where}) => ({
      side,
      message: says,
      file: where?.file ?? null,
      line: where?.line ?? null,
    })),
    books,
  };
  return named(json, moved);
}

/** Names of files outside the working folder say where a revision lay while it was read: they get their true folder. */
function named(json: CompareJson, moved: NonNullable<TwoSides['moved']>): CompareJson {
  const text = moved.reduce(
    (said, {from, to}) => said.replaceAll(inJson(`${from}/`), inJson(`${to}/`)),
    JSON.stringify(json),
  );
  return compareShape.parse(JSON.parse(text));
}

function inJson(text: string): string {
  return JSON.stringify(text).slice(1, -1);
}

function comparedPair({before, now}: {before: LoadedBook; now: LoadedBook}, date: string): Compared {
  const options: CheckOptions = {today: date, alone: now.alone === true};
  if (isSame(before, now))
    return {books: {before, now}, json: {...headOf(before, now), changes: [], brought: [], settled: []}};
  const [old, fresh] = readable(before, now);
  const whole = compareBooks(
    revision(old, options),
    revision(fresh, options),
    (book) => check(book, options).findings,
  );
  const comparison = ofFiles(whole, before, now);
  const texts = {before: textsOf(old.book, old.jobs), now: textsOf(fresh.book, fresh.jobs)};
  return {
    books: {before, now},
    comparison,
    json: {
      ...headOf(before, now),
      changes: comparison.changes.map((change) => changeJson(change, texts)),
      brought: comparison.brought.map((finding) => findingJson(finding, texts.now)),
      settled: comparison.settled.map((finding) => findingJson(finding, texts.before)),
    },
  };
}

function headOf(before: LoadedBook, now: LoadedBook) {
  return {engine: now.book.spec.engine.name, before: before.file, now: now.file};
}

/** Every text as it was: nothing to compare, and no need to check either side. */
function isSame(before: LoadedBook, now: LoadedBook): boolean {
  // Texts alone are not all: a file that could not be read leaves a problem and no text.
  const [old, fresh] = [before, now].map(({book, jobs}) =>
    JSON.stringify([[...textsOf(book, jobs).values()].map(({text}) => text), book.problems.length]),
  );
  return old === fresh;
}

/** Where the YAML of one side can't be read, the other's stands in: then nothing is said of what it asks for. */
function readable(before: LoadedBook, now: LoadedBook): [LoadedBook, LoadedBook] {
  const [old, fresh] = [before, now].map((side) => brokenFiles(side).length > 0);
  if (old === fresh) return [before, now];
  const withSpec = (side: LoadedBook, {book}: LoadedBook) => ({
    ...side,
    book: {...side.book, spec: book.spec},
  });
  return old ? [withSpec(before, now), now] : [before, withSpec(now, before)];
}

function revision(loaded: LoadedBook, options: CheckOptions): Revision {
  const jobs = jobsAsked(loaded);
  const {findings, ofJobs} = checkWithJobs(loaded.book, jobs, options);
  return {book: loaded.book, jobs, findings: [...findings, ...ofJobs.map(({finding}) => finding)]};
}

/** Of a single procedure or job, what touches it on either side. */
function ofFiles(whole: Comparison, before: LoadedBook, now: LoadedBook): Comparison {
  if (now.only === undefined) return whole;
  const inFile =
    (only: ReadonlySet<string> | undefined) => (one: {readonly where: {readonly file: string}}) =>
      only?.has(one.where.file) ?? false;
  const [old, fresh] = [inFile(before.only ?? now.only), inFile(now.only)];
  return {
    ...whole,
    changes: whole.changes.filter(({before: was, now: is}) => was.at.some(old) || is.at.some(fresh)),
    brought: whole.brought.filter(fresh),
    settled: whole.settled.filter(old),
  };
}

interface Texts {
  readonly before: ReadonlyMap<string, Source>;
  readonly now: ReadonlyMap<string, Source>;
}

function changeJson(change: Change, texts: Texts): ChangeJson {
  const {effect, subject, item = null, aspect, message, brings} = change;
  const side = (which: 'before' | 'now') => ({
    required: change[which].required ?? null,
    at: change[which].at.map((one) => ({...placeOf(one.where, texts[which]), message: one.says})),
  });
  return {
    effect,
    subject,
    item,
    aspect,
    message,
    before: side('before'),
    now: side('now'),
    brings: brings.map((finding) => findingJson(finding, texts.now)),
    fingerprint: fingerprint([effect, subject, aspect, message]),
  };
}

/** A book that only one side has. */
function single({before, now}: TwoBooks, date: string): BookJson | undefined {
  const loaded = now ?? before;
  if (loaded === undefined) return undefined;
  const {findings} = revision(loaded, {today: date, alone: loaded.alone === true});
  const all = findings.map((finding: Finding) => findingJson(finding, textsOf(loaded.book, loaded.jobs)));
  const place = placeOf(loaded.book.spec.engine.where, textsOf(loaded.book));
  const at = [{...place, message: 'the book'}];
  const message = now ? 'book: new, so nothing of it could be weakened' : 'book: no longer there';
  const effect = now ? 'changed' : 'weakened';
  const change: ChangeJson = {
    effect,
    subject: 'book',
    item: null,
    aspect: 'book',
    message,
    before: {required: null, at: before ? at : []},
    now: {required: null, at: now ? at : []},
    brings: [],
    fingerprint: fingerprint([effect, 'book', loaded.book.spec.engine.id]),
  };
  return {
    engine: loaded.book.spec.engine.name,
    before: before?.file ?? null,
    now: now?.file ?? null,
    changes: [change],
    brought: now ? all : [],
    settled: now ? [] : all,
  };
}
