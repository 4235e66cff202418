/** The sheets of a book that was loaded from disk, ready to be written: the cover first, pictures inside. */
import {resolve} from 'node:path';
import {compileSheet} from '../sheet/compile.js';
import {compileCover} from '../sheet/cover.js';
import {bookFingerprint} from '../sheet/fingerprint.js';
import {sheetHtml} from '../sheet/html.js';
import {coverHtml} from '../sheet/html-cover.js';
import type {Paper} from '../sheet/model.js';
import {sheetNames} from '../sheet/names.js';
import type {LoadedBook} from './load.js';
import {embedPictures} from './pictures.js';

export interface SheetFiles {
  readonly files: readonly {readonly name: string; readonly text: string}[];
  /** Pictures that could not be put in, with the procedures that show them. */
  readonly missing: readonly {readonly file: string; readonly url: string}[];
}

/** Where only some procedures were asked for, their sheets without the cover. `script` makes them work on a tablet. */
export async function sheetsOf(
  loaded: LoadedBook,
  paper: Paper | undefined,
  script: string | undefined,
): Promise<SheetFiles> {
  const {book, only, shopFolder, cwd} = loaded;
  const options = {fingerprint: await bookFingerprint(book), ...(paper && {paper})};
  const names = sheetNames(book.procedures);
  const files = only ? [] : [{name: 'index.html', text: coverHtml(compileCover(book, options))}];
  const missing: {file: string; url: string}[] = [];
  for (const [index, procedure] of book.procedures.entries()) {
    const {file} = procedure.source;
    if (only && !only.has(file)) continue;
    const bounds = {procedure: resolve(cwd, file), shopFolder};
    const embedded = await embedPictures(compileSheet(book, procedure, options), bounds);
    missing.push(...embedded.missing.map((url) => ({file, url})));
    files.push({name: `${names[index]}.html`, text: sheetHtml(embedded.sheet, {script})});
  }
  return {files, missing};
}
