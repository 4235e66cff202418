/**
 * The books that somebody works on, kept up to date with what is typed. Files on the desk are the open ones; for each
 * its whole shop is read, so that a change shows in every book that shares the file.
 */
import {dirname} from 'node:path';
import {Memory} from '../findings/memory.js';
import type {Failure} from '../host/failure.js';
import {ENGINE_FILE, engineFilesAbove, engineFilesBelow, shopFileFor} from '../host/find.js';
import {type LoadedBook, loadBooks} from '../host/load.js';
import {shownName} from '../host/names.js';
import {readsAsProcedure} from '../host/not-in-build.js';
import {pictureProblems} from '../host/picture-problems.js';
import {LIMITS} from '../host/read.js';
import type {Procedure} from '../procedure/model.js';
import {BookView} from './book-view.js';
import {ShelfTexts} from './shelf-texts.js';

/** All that is known of the books on the desk at one moment. */
export interface Shelf {
  readonly views: readonly BookView[];
  /** What keeps a book from being read at all. */
  readonly failures: readonly Failure[];
}

export interface DeskOptions {
  /** The folder to which names of files are relative. */
  readonly cwd: string;
  /** Today's ISO 8601 date. */
  readonly today?: () => string;
}

const EMPTY: Shelf = {views: [], failures: []};

/** Lives as long as the editor's session. Paths are true paths. */
export class Desk {
  readonly texts = new ShelfTexts();
  readonly #options: DeskOptions;
  readonly #memory = new Memory();
  readonly #open = new Set<string>();
  readonly #changed = new Set<string>();
  #stale = false;
  #shelf: Shelf = EMPTY;
  #settling: Promise<Shelf> | undefined;

  constructor(options: DeskOptions) {
    this.#options = options;
  }

  get cwd(): string {
    return this.#options.cwd;
  }

  /** The shelf as it was when it was last settled: what is on it may be a word behind. */
  get last(): Shelf {
    return this.#shelf;
  }

  open(path: string, text: string): void {
    this.#open.add(path);
    this.texts.lay(path, text);
    this.#stale = true;
  }

  change(path: string, text: string): void {
    this.texts.lay(path, text);
    this.#changed.add(path);
  }

  close(path: string): void {
    this.#open.delete(path);
    this.texts.lay(path, undefined);
    this.#stale = true;
  }

  /** Something on disk may be other than it was. */
  look(): void {
    this.#stale = true;
  }

  isOpen(path: string): boolean {
    return this.#open.has(path);
  }

  /** The books with every change so far in them. */
  settled(): Promise<Shelf> {
    this.#settling ??= this.#settle().finally(() => {
      this.#settling = undefined;
    });
    return this.#settling;
  }

  async #settle(): Promise<Shelf> {
    while (this.#stale || this.#changed.size > 0) {
      const changed = [...this.#changed];
      this.#changed.clear();
      const typed = this.#stale ? undefined : await this.#typed(changed);
      this.#stale = false;
      this.#shelf = typed ?? (await this.#readAll());
    }
    return this.#shelf;
  }

  /** The shelf with new texts of procedures in it; nothing where more than that may have changed. */
  async #typed(changed: readonly string[]): Promise<Shelf | undefined> {
    const now = new Map<string, Procedure>();
    for (const path of changed) {
      const file = shownName(path, this.cwd);
      const isProcedure = this.#shelf.views.some((view) => view.procedure(file) !== undefined);
      const read = isProcedure ? await this.texts.reader.text(path, file, LIMITS.procedure) : undefined;
      if (!read?.ok) return undefined;
      now.set(file, this.texts.reader.procedure(read.source));
    }
    const views: BookView[] = [];
    for (const view of this.#shelf.views) views.push(await this.#withProcedures(view, now));
    return {...this.#shelf, views};
  }

  async #withProcedures(view: BookView, now: ReadonlyMap<string, Procedure>): Promise<BookView> {
    const {loaded} = view;
    const {book, shopFolder, cwd} = loaded;
    const procedures = book.procedures.map((one) => now.get(one.source.file) ?? one);
    const changed = procedures.filter((one, index) => one !== book.procedures[index]);
    if (changed.length === 0) return view;
    const files = new Set(changed.map(({source}) => source.file));
    const others = book.problems.filter(
      ({name, where}) => name !== 'picture-missing' || !files.has(where.file),
    );
    const pictures = await pictureProblems(changed, {shopFolder, cwd, disk: this.texts.reader.disk});
    return this.#viewOf({...loaded, book: {...book, procedures, problems: [...others, ...pictures]}});
  }

  async #readAll(): Promise<Shelf> {
    const {cwd} = this;
    const engines = new Set<string>();
    for (const path of this.#open) for (const engine of await enginesAround(path)) engines.add(engine);
    const whole = await loadBooks([...engines], cwd, this.texts.reader);
    const books = [...whole.books];
    const failures = [...whole.failures];
    for (const path of this.#open) {
      if (!isLoose(path, books, cwd)) continue;
      const alone = await loadBooks([path], cwd, this.texts.reader);
      books.push(...alone.books.filter((book) => book.alone && book.book.procedures.some(readsAsProcedure)));
    }
    const shown = books.filter((book) => !isBaseOf(book, books));
    return {views: shown.map((book) => this.#kept(book) ?? this.#viewOf(book)), failures};
  }

  /** What was worked out from a book holds as long as nothing of it changes. */
  #kept(book: LoadedBook): BookView | undefined {
    return this.#shelf.views.find(({loaded}) => sameBook(loaded, book));
  }

  #viewOf(loaded: LoadedBook): BookView {
    const today = this.#options.today?.();
    return new BookView(loaded, {memory: this.#memory, ...(today !== undefined && {today})});
  }
}

/** Every engine.yaml of the shop that a file belongs to; without a shop, the nearest above the file. */
async function enginesAround(path: string): Promise<readonly string[]> {
  const folder = dirname(path);
  const shop = shopFileFor(folder);
  if (shop === undefined) return engineFilesAbove(folder).slice(0, 1);
  try {
    return await engineFilesBelow(dirname(shop));
  } catch {
    // A folder that may not be searched, or that is just being moved away.
    return engineFilesAbove(folder).slice(0, 1);
  }
}

/** A Markdown file that no book lists, in a folder that has a book. */
function isLoose(path: string, books: readonly LoadedBook[], cwd: string): boolean {
  if (!path.endsWith('.md') || engineFilesAbove(dirname(path)).length === 0) return false;
  const file = shownName(path, cwd);
  return !books.some(({book}) => book.procedures.some(({source}) => source.file === file));
}

/** What others build on is seen in those others. */
function isBaseOf(book: LoadedBook, books: readonly LoadedBook[]): boolean {
  return (
    book.book.spec.build.length === 0 &&
    books.some((other) => other !== book && !other.alone && other.book.spec.files.has(book.file))
  );
}

function sameBook(one: LoadedBook, other: LoadedBook): boolean {
  return (
    one.file === other.file &&
    one.alone === other.alone &&
    one.book.spec === other.book.spec &&
    same(one.book.procedures, other.book.procedures) &&
    same(one.jobs, other.jobs) &&
    JSON.stringify(one.book.problems) === JSON.stringify(other.book.problems)
  );
}

function same<T>(one: readonly T[], other: readonly T[]): boolean {
  return one.length === other.length && one.every((value, index) => value === other[index]);
}

/** Files that can belong to a book at all. */
export function isOfInterest(path: string): boolean {
  return /\.(?:md|markdown|ya?ml)$/i.test(path) || path.endsWith(ENGINE_FILE);
}
