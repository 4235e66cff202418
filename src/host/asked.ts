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

/** The one book of an engine at or below a path. */
export async function bookOfEngine(engine: string, path: string): Promise<LoadedBook | Failure> {
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

/**
 * What the sheets of the build were made from: the job that the record names, where the book has it. Sheets that
 * were printed for every engine, and had the number written in, are judged as such.
 */
export async function askedOf({book, jobs}: LoadedBook, build: Build): Promise<Asked> {
  const job = jobs.find(({number}) => number === build.job);
  const plain = await askedOfBook(book);
  if (job === undefined) return plain;
  const own = await askedOfBook({...book, job});
  return followed(build, plain) && !followed(build, own) ? plain : own;
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
