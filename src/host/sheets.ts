/** The sheets of a book that was loaded from disk, ready to be written: the cover first, pictures inside. */
import {resolve} from 'node:path';
import type {Book} from '../build/book.js';
import {forJob} from '../build/for-job.js';
import type {Procedure} from '../procedure/model.js';
import {compileSheet, type SheetOptions} from '../sheet/compile.js';
import {compileCover} from '../sheet/cover.js';
import {bookFingerprint} from '../sheet/fingerprint.js';
import {sheetHtml} from '../sheet/html.js';
import {coverHtml} from '../sheet/html-cover.js';
import {LANGUAGES} from '../sheet/languages.js';
import {sheetMarkdown} from '../sheet/markdown.js';
import type {Sheet} from '../sheet/model.js';
import {sheetPrint} from '../sheet/print.js';
import {coverPrint} from '../sheet/print-cover.js';
import {sheetNames} from '../sheet/sheet-names.js';
import type {Language, Paper} from '../spec/model.js';
import type {Failure} from './failure.js';
import type {LoadedBook} from './load.js';
import {missingText, type PdfMaker, pdfMaker} from './pdf.js';
import {embedPictures} from './pictures.js';

/** By the ending of the file. Markdown has sheets and no cover, which is there to be stapled on top of them. */
export type SheetForm = 'html' | 'pdf' | 'md';

/** What the user asked for beyond the book itself. */
export interface SheetsWanted {
  readonly forms: readonly SheetForm[];
  readonly paper?: Paper;
  /** The shop's own where left out. */
  readonly language?: Language;
  /** Makes the HTML work on a tablet; a page of paper where left out. */
  readonly script?: string | undefined;
}

/** What the files of one run share. */
interface Makers {
  readonly maker: PdfMaker | undefined;
  readonly script: string | undefined;
}

export interface SheetFiles {
  readonly ok: true;
  readonly files: readonly SheetFile[];
  /** What the user should hear of, a line each: pictures that can't be read, characters that no font has. */
  readonly asides: readonly string[];
}

/** By its name in the folder of the book: text in UTF-8, or the bytes of a PDF. */
export interface SheetFile {
  readonly name: string;
  readonly text: string | Uint8Array;
}

/** Those of the job in the book, where there is one. Where only some procedures were asked for, without the cover. */
export async function sheetsOf(loaded: LoadedBook, wanted: SheetsWanted): Promise<SheetFiles | Failure> {
  const {book: whole, only} = loaded;
  const {forms, paper, language, script} = wanted;
  const book = forJob(whole);
  const options = {
    fingerprint: await bookFingerprint(whole),
    ...(paper && {paper}),
    ...(language && {words: LANGUAGES[language]}),
  };
  const made: Made[] = [];
  const maker = forms.includes('pdf') ? await pdfMaker() : undefined;
  const leftOut = leftOutTitles(whole, book);
  if (!only) made.push(...coverFiles(book, {...options, leftOut}, forms, maker));
  const names = sheetNames(book.procedures);
  for (const [index, procedure] of book.procedures.entries()) {
    if (only && !only.has(procedure.source.file)) continue;
    const embedded = await embeddedSheet({...loaded, book}, procedure, options);
    made.push(...embedded.asides.map((aside) => ({asides: [aside]})));
    for (const form of forms) made.push(sheetFile(embedded, form, `${names[index]}`, {maker, script}));
  }
  // A set of sheets with one missing would be followed as if it were whole.
  const failed = made.find((one) => 'ok' in one);
  if (failed) return failed;
  const written = made.filter((one) => 'asides' in one);
  return {
    ok: true,
    files: written.flatMap(({file}) => file ?? []),
    asides: written.flatMap(({asides}) => asides),
  };
}

type Made = {readonly file?: SheetFile; readonly asides: readonly string[]} | Failure;

function coverFiles(
  book: Book,
  options: Parameters<typeof compileCover>[1],
  forms: readonly SheetForm[],
  maker: PdfMaker | undefined,
): Made[] {
  const cover = compileCover(book, options);
  return forms.flatMap((form): Made[] => {
    if (form === 'html') return [{file: {name: 'index.html', text: coverHtml(cover)}, asides: []}];
    if (form === 'md' || maker === undefined) return [];
    return [
      pdfFile(
        'index.pdf',
        maker(() => coverPrint(cover), []),
      ),
    ];
  });
}

interface EmbeddedSheet {
  readonly sheet: Sheet;
  /** File of the procedure, as it was found. */
  readonly file: string;
  readonly pictures: readonly string[];
  readonly asides: readonly string[];
}

async function embeddedSheet(
  {book, shopFolder, cwd}: LoadedBook,
  procedure: Procedure,
  options: SheetOptions,
): Promise<EmbeddedSheet> {
  const {file} = procedure.source;
  const bounds = {procedure: resolve(cwd, file), shopFolder};
  const {sheet, pictures, missing} = await embedPictures(compileSheet(book, procedure, options), bounds);
  return {sheet, file, pictures, asides: missing.map((url) => `${file}: no picture could be read at ${url}`)};
}

function sheetFile(
  {sheet, pictures, file}: EmbeddedSheet,
  form: SheetForm,
  base: string,
  {maker, script}: Makers,
): Made {
  const name = `${base}.${form}`;
  if (form === 'html') return {file: {name, text: sheetHtml(sheet, {script})}, asides: []};
  if (form === 'md' || maker === undefined) return {file: {name, text: sheetMarkdown(sheet)}, asides: []};
  const made = pdfFile(
    name,
    maker((pathOf) => sheetPrint(sheet, pathOf), pictures),
  );
  return 'ok' in made ? {...made, where: {file}} : made;
}

function pdfFile(name: string, pdf: ReturnType<PdfMaker>): Made {
  if (!pdf.ok) return pdf;
  const aside = missingText(name, pdf);
  return {file: {name, text: pdf.bytes}, asides: aside === undefined ? [] : [aside]};
}

/** Procedures that the engine on the stand does not need. */
function leftOutTitles(whole: Book, book: Book): string[] {
  const kept = new Set(book.procedures.map(({source}) => source.file));
  return whole.procedures.filter(({source}) => !kept.has(source.file)).map(({front}) => front.title);
}
