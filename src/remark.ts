/**
 * The remark plugin: checks the file that remark works on as one procedure of its book, and leaves a message
 * for everything that is found in it. The tree is left as it is.
 */
import {resolve} from 'node:path';
import type {Root} from 'mdast';
import type {Plugin} from 'unified';
import type {VFile} from 'vfile';
import type {Book} from './build/book.js';
import {check} from './findings/check.js';
import type {HouseFinding} from './findings/house.js';
import type {Finding} from './findings/model.js';
import {today} from './host/clock.js';
import {failureText} from './host/failure.js';
import {type LoadedBook, loadBook} from './host/load.js';
import {truePath} from './host/names.js';
import {findingAddress} from './host/package.js';
import {placeOf, textsOf} from './host/places.js';
import {readProcedure} from './procedure/read.js';
import {type Source, source} from './text/source.js';

/** What the plugin is told. */
export interface WitnessMarkOptions {
  /**
   * The folder of the book, relative to the file's working folder; or a book as `loadBook` gives it; or one made
   * from texts, whose file names count from the file's working folder. A folder is read anew for every file.
   */
  readonly book: string | LoadedBook | Book;
  /** Rules of the house, beside the tool's own. One that goes wrong leaves a message under its own name. */
  readonly house?: readonly HouseFinding[];
}

/** The origin of the messages. */
export const MESSAGE_SOURCE = 'witness-mark';

/**
 * Leaves a message for every finding that stands in the file: its name as rule id, its place, its story as note.
 * Silent for a tree that no text belongs to, and for a file that the book does not list. The file fails where the
 * folder of the book can't be read.
 *
 * @example unified().use(remarkParse).use(witnessMark, {book: 'my-engine'}).use(remarkStringify)
 */
export const witnessMark: Plugin<[WitnessMarkOptions], Root> = (options) => async (_tree, file) => {
  const text = String(file);
  if (text === '') return;
  const {book, cwd} = await bookOf(options, file);
  const listed = await procedureOf(file, book, cwd);
  if (listed === undefined) return;
  const now = withText(book, source(listed, text));
  const texts = textsOf(now);
  const {findings, houseFaults} = check(now, {today: today(), ...(options.house && {house: options.house})});
  for (const finding of findings) {
    if (finding.where.file === listed) leave(file, finding, texts);
  }
  for (const {name, during, says} of houseFaults) {
    const message = file.message(`${name} went wrong (${during}): ${says}`, {
      ruleId: name,
      source: MESSAGE_SOURCE,
    });
    message.fatal = true;
  }
};

type Named = Pick<LoadedBook, 'book' | 'cwd'>;

async function bookOf({book}: WitnessMarkOptions, file: VFile): Promise<Named> {
  if (typeof book !== 'string') return 'spec' in book ? {book, cwd: file.cwd} : book;
  const loaded = await loadBook(book, file.cwd);
  if (!loaded.ok) file.fail(failureText(loaded), {source: MESSAGE_SOURCE, ruleId: 'could-not-run'});
  return loaded;
}

/** The name under which the book knows the file. */
async function procedureOf(file: VFile, book: Book, cwd: string): Promise<string | undefined> {
  if (file.path === undefined) {
    file.info('The text has no path, so no procedure of the book can be told from it', {
      source: MESSAGE_SOURCE,
      ruleId: 'no-path',
    });
    return undefined;
  }
  const wanted = await canonical(file.cwd, file.path);
  for (const {
    source: {file: name},
  } of book.procedures) {
    if ((await canonical(cwd, name)) === wanted) return name;
  }
  return undefined;
}

async function canonical(cwd: string, path: string): Promise<string> {
  const absolute = resolve(cwd, path);
  return (await truePath(absolute)) ?? absolute;
}

/** The book with the text as it stands now, which may not be what is saved. */
function withText(book: Book, now: Source): Book {
  const procedures = book.procedures.map((procedure) =>
    procedure.source.file === now.file && procedure.source.text !== now.text ? readProcedure(now) : procedure,
  );
  return {...book, procedures};
}

type Message = ReturnType<VFile['message']>;

const FATAL: {readonly [severity in Finding['severity']]: Message['fatal']} = {
  error: true,
  warning: false,
  information: undefined,
};

function leave(file: VFile, finding: Finding, texts: ReadonlyMap<string, Source>): void {
  const {line, column, endLine, endColumn} = placeOf(finding.where, texts);
  const {start, end} = finding.where.span;
  const place = {
    start: {line, column, offset: start},
    end: {line: endLine, column: endColumn, offset: end},
  };
  const message = file.message(finding.message, {place, ruleId: finding.name, source: MESSAGE_SOURCE});
  message.fatal = FATAL[finding.severity];
  message.url = findingAddress(finding.name);
  message.note = noteOf(finding, texts);
  const edit = finding.fix?.edits.length === 1 ? finding.fix.edits[0] : undefined;
  if (edit?.span.start === start && edit.span.end === end) {
    message.actual = texts.get(finding.where.file)?.text.slice(start, end);
    message.expected = [edit.text];
  }
}

/** The story of the finding, a line each, and where to read more. */
function noteOf({name, story, related, fix}: Finding, texts: ReadonlyMap<string, Source>): string {
  const lines = [...story, ...related].map(({where, says}) => {
    const {file, line, column} = placeOf(where, texts);
    return `${file}:${line}:${column}: ${says}`;
  });
  const cure = fix ? [`can be mended: ${fix.title}`] : [];
  return [...lines, ...cure, `\`wmark why ${name}\` explains it`].join('\n');
}
