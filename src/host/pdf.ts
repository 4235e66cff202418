/**
 * Prints a sheet, cover or build report as PDF/UA-1: its data and pictures are handed to one Typst template, compiled inside this
 * process. The compiler is loaded when the first PDF is asked for.
 */
import {existsSync} from 'node:fs';
import {join} from 'node:path';
import type {NodeCompiler} from '@myriaddreamin/typst-ts-node-compiler';
import type {Print} from '../print/document.js';
import {printJson} from '../print/json.js';
import partsTemplate from '../print/typst/parts.typ';
import reportTemplate from '../readings/typst/report.typ';
import type {PathOf} from '../sheet/print-prose.js';
import coverTemplate from '../sheet/typst/cover.typ';
import entriesTemplate from '../sheet/typst/entries.typ';
import sheetTemplate from '../sheet/typst/sheet.typ';
import type {Failure} from './failure.js';
import {packageFolder} from './package.js';

/** A finished file. */
export interface Pdf {
  readonly ok: true;
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** Characters that no font has; a frame stands in their place. */
  readonly missing: readonly string[];
}

/** What the user is told of characters that no font has; undefined where there are none. */
export function missingText(name: string, {missing}: Pdf): string | undefined {
  if (missing.length === 0) return undefined;
  return `${name}: no font on this machine has ${missing.join(' ')}; a frame stands in their place`;
}

/** Makes one PDF after another; the pictures are data addresses as `embedPictures` makes them. */
export type PdfMaker = (print: (pathOf: PathOf) => Print, pictures: readonly string[]) => Pdf | Failure;

/**
 * A maker that prints one after another with one compiler, for loading its fonts takes longer than a sheet does. Where the
 * compiler refuses a document, the maker gives a failure that says to print the HTML.
 */
export async function pdfMaker(): Promise<PdfMaker> {
  const {NodeCompiler} = await import('@myriaddreamin/typst-ts-node-compiler');
  const workspace = fontFolder();
  const compiler = NodeCompiler.create({workspace, fontArgs: [{fontPaths: [workspace]}]});
  const add = (name: string, bytes: Buffer) => compiler.mapShadow(join(workspace, name), bytes);
  return (print, pictures) => {
    compiler.resetShadow();
    for (const [name, text] of Object.entries(IMPORTED)) add(name, Buffer.from(text));
    const paths = new Map(
      pictures.flatMap((url, at) => {
        const path = addPicture(url, at, add);
        return path !== undefined && isReadable(path, compiler) ? [[url, path] as const] : [];
      }),
    );
    const made = compiled(
      print((url) => paths.get(url)),
      compiler,
    );
    compiler.evictCache(KEPT);
    return made;
  };
}

/** Documents for which the compiler remembers what it has laid out. */
const KEPT = 2;

/** What templates import, by the names under which they do. */
const IMPORTED = {'parts.typ': partsTemplate, 'entries.typ': entriesTemplate};

const TEMPLATES = {sheet: sheetTemplate, cover: coverTemplate, report: reportTemplate};

/**
 * Texts that no font can show are looked for this often; each time some are replaced. The compiler names them only as it
 * writes the PDF, and not all at once.
 */
const ROUNDS = 5;

function compiled(print: Print, compiler: NodeCompiler): Pdf | Failure {
  const missing = new Set<string>();
  let says = '';
  for (let round = 0; round < ROUNDS; round++) {
    const result = compiler.compile({
      mainFileContent: TEMPLATES[print.template],
      inputs: {data: printJson(print, missing)},
    });
    const document = result.result;
    if (document === null) return refused(String(result.takeError()?.shortDiagnostics[0]?.message));
    try {
      const bytes = compiler.pdf(document, {pdfStandard: 'ua-1'});
      return {ok: true, bytes, pages: document.numOfPages, missing: [...missing]};
    } catch (error) {
      says = error instanceof Error ? error.message : String(error);
    }
    const before = missing.size;
    for (const character of charactersNamed(says)) missing.add(character);
    if (missing.size === before) break;
  }
  return refused(/message: "((?:[^"\\]|\\.)*)"/.exec(says)?.[1] ?? says);
}

function refused(says: string): Failure {
  return {ok: false, says: `the PDF could not be made: ${says}`, hint: 'print the HTML from a browser'};
}

/**
 * The characters of the texts that the compiler says no font can show; it quotes them as Rust does, escaped twice. It
 * names a figure too that a symbol is put around: the figure is not to blame, and stands in values as well.
 */
function charactersNamed(message: string): string[] {
  const quoted = between(message, 'the text `\\"', '\\"` could not be displayed');
  const disallowed = between(message, 'disallowed codepoint `\\"', '\\"`');
  const named = [...quoted, ...disallowed].flatMap((text) => [
    ...text.replace(/\\{1,4}u\{([0-9a-f]{1,6})\}/g, (_, code: string) =>
      String.fromCodePoint(Number.parseInt(code, 16)),
    ),
  ]);
  const strange = named.filter((character) => !OURS.test(character));
  return strange.length > 0 ? strange : named;
}

/** Letters, figures and marks that the fonts of the tool have for certain: ASCII, Latin, Greek, Cyrillic. */
const OURS = /^[ -~\u00A1-\u02AF\u0391-\u03C9\u0410-\u044F]$/;

/** What stands between each opening and the closing that comes before the next opening. */
function between(message: string, opening: string, closing: string): string[] {
  return message
    .split(opening)
    .slice(1)
    .flatMap((rest) => {
      const end = rest.indexOf(closing);
      return end === -1 ? [] : [rest.slice(0, end)];
    });
}

const PICTURE = /^data:image\/(png|jpeg|gif|webp);base64,/;

function addPicture(url: string, at: number, add: (name: string, bytes: Buffer) => void): string | undefined {
  const [head, type] = PICTURE.exec(url) ?? [];
  if (head === undefined) return undefined;
  const name = `picture-${at + 1}.${type}`;
  add(name, Buffer.from(url.slice(head.length), 'base64'));
  return `/${name}`;
}

/** Whether a picture is whole: a broken one would keep the whole sheet from being printed. */
function isReadable(path: string, compiler: NodeCompiler): boolean {
  return !compiler.compile({mainFileContent: '#image(sys.inputs.path)', inputs: {path}}).hasError();
}

/** The fonts that come with this package; where it has not been built, those of the package that they are from. */
function fontFolder(): string {
  const built = join(packageFolder(), 'dist', 'fonts');
  return existsSync(built) ? built : join(packageFolder(), 'node_modules', 'dejavu-fonts-ttf', 'ttf');
}
