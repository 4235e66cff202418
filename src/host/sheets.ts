/** The sheets of a book that was loaded from disk, ready to be written: the cover first, pictures inside. */
import {resolve} from 'node:path';
import type {Book} from '../build/book.js';
import {forJob} from '../build/for-job.js';
import {compileSheet} from '../sheet/compile.js';
import {compileCover, sheetNames} from '../sheet/cover.js';
import {bookFingerprint} from '../sheet/fingerprint.js';
import {sheetHtml} from '../sheet/html.js';
import {coverHtml} from '../sheet/html-cover.js';
import type {Paper} from '../sheet/model.js';
import type {LoadedBook} from './load.js';
import {embedPictures} from './pictures.js';

export interface SheetFiles {
  readonly files: readonly {readonly name: string; readonly text: string}[];
  /** Pictures that could not be put in, with the procedures that show them. */
  readonly missing: readonly {readonly file: string; readonly url: string}[];
}

/** Those of the job in the book, where there is one. Where only some procedures were asked for, without the cover. */
export async function sheetsOf(loaded: LoadedBook, paper: Paper | undefined): Promise<SheetFiles> {
  const {book: whole, only, shopFolder, cwd} = loaded;
  const book = forJob(whole);
  const options = {fingerprint: await bookFingerprint(whole), ...(paper && {paper})};
  const names = sheetNames(book.procedures);
  const leftOut = leftOutTitles(whole, book);
  const files = only
    ? []
    : [{name: 'index.html', text: coverHtml(compileCover(book, {...options, leftOut}))}];
  const missing: {file: string; url: string}[] = [];
  for (const [index, procedure] of book.procedures.entries()) {
    const {file} = procedure.source;
    if (only && !only.has(file)) continue;
    const bounds = {procedure: resolve(cwd, file), shopFolder};
    const embedded = await embedPictures(compileSheet(book, procedure, options), bounds);
    missing.push(...embedded.missing.map((url) => ({file, url})));
    files.push({name: `${names[index]}.html`, text: sheetHtml(embedded.sheet)});
  }
  return {files, missing};
}

/** Procedures that the engine on the stand does not need. */
function leftOutTitles(whole: Book, book: Book): string[] {
  const kept = new Set(book.procedures.map(({source}) => source.file));
  return whole.procedures.filter(({source}) => !kept.has(source.file)).map(({front}) => front.title);
}
