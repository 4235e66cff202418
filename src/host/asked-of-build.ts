/** What a book on disk asks of a build: the forms of its sheets, with the job applied that the build names. */
import type {Book} from '../build/book.js';
import {forJob} from '../build/for-job.js';
import type {Build} from '../readings/builds.js';
import type {Asked} from '../readings/judge.js';
import {compileSheet} from '../sheet/compile.js';
import {bookFingerprint} from '../sheet/fingerprint.js';
import {formOf} from '../sheet/form.js';
import {type Failure, failureText} from './failure.js';
import {type LoadedBook, loadBooks} from './load.js';

export interface AskedOf {
  readonly ok: true;
  readonly asked: Asked;
  /** The engine.yaml of the book. */
  readonly file: string;
  /** The book has no job of the number that the record names. */
  readonly lacksJob: boolean;
}

/**
 * Finds what is asked of builds, by the books at or below a path. Of many builds of one engine, the book is read and
 * its sheets are compiled once for each job.
 */
export function askerAt(path: string): (build: Build) => Promise<AskedOf | Failure> {
  const books = new Map<string, Promise<LoadedBook | Failure>>();
  const sheets = new Map<string, Promise<Asked>>();
  return async (build) => {
    const loaded = await once(books, build.engine, () => bookOfEngine(build.engine, path));
    if (!loaded.ok) return loaded;
    const {book, jobs, file} = loaded;
    const job = jobs.find(({number}) => number === build.job);
    const asked = (...key: readonly string[]) =>
      once(sheets, JSON.stringify([file, ...key]), () =>
        askedOfBook({...book, ...(key.length > 0 && job && {job})}),
      );
    const plain = await asked();
    const known = {ok: true, file, lacksJob: build.job !== undefined && job === undefined} as const;
    if (job === undefined) return {...known, asked: plain};
    const own = await asked(job.number);
    // Sheets that were printed for every engine, and had the number written in, are judged as such.
    return {...known, asked: followed(build, plain) && !followed(build, own) ? plain : own};
  };
}

function once<T>(made: Map<string, Promise<T>>, key: string, make: () => Promise<T>): Promise<T> {
  const known = made.get(key) ?? make();
  made.set(key, known);
  return known;
}

/** The one book of an engine at or below a path. */
async function bookOfEngine(engine: string, path: string): Promise<LoadedBook | Failure> {
  const {books, failures} = await loadBooks([path]);
  const [first, second] = books.filter(({book}) => book.spec.engine.id === engine);
  if (second && first) {
    const says = `both ${first.file} and ${second.file} are of engine ${engine}`;
    return {ok: false, says, hint: 'name the folder of one with --book'};
  }
  if (first) return first;
  const [failure] = failures;
  const says = `there is no book of engine ${engine} at or below ${path}`;
  const hint = failure ? failureText(failure) : 'name its folder with --book';
  return {ok: false, says, hint};
}

function followed(build: Build, {sheets}: Asked): boolean {
  const [first] = sheets;
  return build.sheets.some(({fingerprint}) => fingerprint === first?.form.fingerprint);
}

/** The form of every sheet of a book, for the job in it where there is one. */
export async function askedOfBook(whole: Book): Promise<Asked> {
  const book = forJob(whole);
  const fingerprint = await bookFingerprint(whole);
  return {
    spec: book.spec,
    sheets: book.procedures.map((procedure) => {
      const sheet = compileSheet(book, procedure, {fingerprint});
      return {form: formOf(sheet), waivers: sheet.waivers};
    }),
  };
}
