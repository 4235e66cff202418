/** The sheet of a procedure as it is being written, and which lines of the text became which of its steps. */
import {resolve} from 'node:path';
import {embedPictures} from '../host/pictures.js';
import {compileSheet} from '../sheet/compile.js';
import {bookFingerprint} from '../sheet/fingerprint.js';
import {sheetHtml} from '../sheet/html.js';
import {positionAt} from '../text/source.js';
import type {BookView} from './book-view.js';

/** A page with what an editor needs to keep it at the step of the cursor. */
export interface LiveSheet {
  readonly title: string;
  /** One HTML file, without scripts, that asks for nothing. */
  readonly html: string;
  /** Lines count from nought; the last one is within. Sub-steps follow their step. */
  readonly steps: readonly {readonly number: string; readonly line: number; readonly endLine: number}[];
}

/** Undefined for a file that is no procedure of the book. */
export async function liveSheet(view: BookView, file: string): Promise<LiveSheet | undefined> {
  const procedure = view.procedure(file);
  if (procedure === undefined) return undefined;
  const {book, shopFolder, cwd} = view.loaded;
  const sheet = compileSheet(book, procedure, {fingerprint: await bookFingerprint(book)});
  const embedded = await embedPictures(sheet, {procedure: resolve(cwd, file), shopFolder});
  const steps = procedure.steps.map(({number, span}) => ({
    number,
    line: positionAt(procedure.source, span.start).line - 1,
    endLine: positionAt(procedure.source, span.end).line - 1,
  }));
  return {title: sheet.head.title, html: sheetHtml(embedded.sheet), steps};
}
