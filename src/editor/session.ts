/** A client's session: its open files on the desk, and diagnostics sent whenever something on it changed. */
import {type Connection, type Diagnostic, ResponseError, type TextDocuments} from 'vscode-languageserver';
import type {TextDocument} from 'vscode-languageserver-textdocument';
import type {Finding} from '../findings/model.js';
import {today} from '../host/clock.js';
import {shownName} from '../host/names.js';
import type {ClientAddresses} from './addresses.js';
import type {BookView} from './book-view.js';
import {carried} from './carried.js';
import {Desk, isOfInterest, type Shelf} from './desk.js';
import {diagnosticsOf} from './diagnostics.js';
import {type Settings, settingsOf} from './settings.js';

export interface SessionOptions {
  readonly cwd: string;
  readonly addresses: ClientAddresses;
  /** The client asks for diagnostics itself, and for nothing but a hint that they changed. */
  readonly pull: boolean;
  /** The client can be told that what it asked for has changed. */
  readonly refreshes: readonly Refresh[];
  /** Milliseconds of reading, or of the first check, after which the client is told that the server works. */
  readonly progressAfter?: number | undefined;
}

export type Refresh = 'diagnostics' | 'codeLens' | 'inlayHint';

/** A file of a book, as a request finds it. */
export interface Asked {
  readonly view: BookView;
  /** The books on the desk. */
  readonly views: readonly BookView[];
  readonly file: string;
}

/** What the protocol gives back to a request that the client wants no more. */
const CANCELLED = -32800;

/** Milliseconds from a change to the check: the changes of one keystroke, or of one fix, come together. */
const SOON = 2;
/** No more than this is waited for where a check takes long: a quarter of what it takes. */
const LATER = 40;

export class Session {
  readonly desk: Desk;
  readonly addresses: ClientAddresses;
  readonly documents: TextDocuments<TextDocument>;
  settings: Settings = settingsOf(undefined);
  readonly #connection: Connection;
  readonly #options: SessionOptions;
  readonly #sent = new Map<string, string>();
  readonly #results = new Map<string, {readonly id: string; readonly text: string}>();
  /** The books of which everything was shown last. */
  #shown: readonly BookView[] = [];
  #timer: NodeJS.Timeout | undefined;
  #changes = 0;
  #lastCheck = 0;
  #isTelling = false;

  constructor(connection: Connection, documents: TextDocuments<TextDocument>, options: SessionOptions) {
    this.#connection = connection;
    this.#options = options;
    this.documents = documents;
    this.addresses = options.addresses;
    this.desk = new Desk({cwd: options.cwd, today});
    documents.onDidOpen(({document}) => this.#opened(document));
    documents.onDidChangeContent(({document}) => this.#typed(document));
    documents.onDidSave(() => this.look());
    documents.onDidClose(({document}) => this.#closed(document));
    for (const document of documents.all()) this.#opened(document);
  }

  /** Something on disk may have changed. */
  look(): void {
    this.desk.look();
    this.#schedule();
  }

  /** The book, or the first of the books, that holds a file; nothing for a file of no book. */
  async asked(uri: string, token?: {readonly isCancellationRequested: boolean}): Promise<Asked | undefined> {
    const path = this.addresses.path(uri);
    const shelf = await this.#progress(this.desk.settled());
    if (token?.isCancellationRequested)
      throw new ResponseError(CANCELLED, 'the client cancelled the request');
    return path === undefined ? undefined : this.#find(shelf, path);
  }

  /** As `asked`, and without waiting for the newest words: good for what is read from the text itself. */
  async askedSoon(uri: string): Promise<Asked | undefined> {
    const path = this.addresses.path(uri);
    const found = path === undefined ? undefined : this.#find(this.desk.last, path);
    return found ?? this.asked(uri);
  }

  /** The diagnostics of one file, with a name for them that stays while they do. */
  async pulled(uri: string): Promise<{readonly id: string; readonly items: readonly Diagnostic[]}> {
    const path = this.addresses.path(uri);
    const shelf = await this.desk.settled();
    const all = diagnosticsOf(this.#worked(shelf), this.addresses);
    const items = (path === undefined ? undefined : all.get(shownName(path, this.desk.cwd))) ?? [];
    return {id: this.#resultOf(uri, items), items};
  }

  async pulledAll(): Promise<readonly {uri: string; id: string; items: readonly Diagnostic[]}[]> {
    const shelf = await this.desk.settled();
    return [...diagnosticsOf(this.#worked(shelf), this.addresses)].map(([file, items]) => {
      const uri = this.addresses.uri(file);
      return {uri, id: this.#resultOf(uri, items), items};
    });
  }

  #resultOf(uri: string, items: readonly Diagnostic[]): string {
    const text = JSON.stringify(items);
    const before = this.#results.get(uri);
    if (before?.text === text) return before.id;
    const id = String(Number(before?.id ?? 0) + 1);
    this.#results.set(uri, {id, text});
    return id;
  }

  #find(shelf: Shelf, path: string): Asked | undefined {
    const file = shownName(path, this.desk.cwd);
    const view = shelf.views.find(({texts}) => texts.has(file));
    return view && {view, views: shelf.views, file};
  }

  #opened(document: TextDocument): void {
    const path = this.addresses.path(document.uri);
    if (path === undefined || !isOfInterest(path)) return;
    this.addresses.opened(document.uri, path);
    this.desk.open(path, document.getText());
    this.#schedule();
  }

  #typed(document: TextDocument): void {
    const path = this.addresses.path(document.uri);
    if (path === undefined || !this.desk.isOpen(path)) return;
    this.desk.change(path, document.getText());
    this.#schedule();
  }

  #closed({uri}: TextDocument): void {
    const path = this.addresses.path(uri);
    if (path === undefined || !this.desk.isOpen(path)) return;
    this.desk.close(path);
    this.addresses.closed(path);
    this.#schedule();
  }

  #schedule(): void {
    this.#changes++;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(
      () => void this.#runOnce(),
      Math.min(LATER, Math.max(SOON, this.#lastCheck / 4)),
    );
  }

  /** The first check of a large book takes as long as its reading, and nobody sees anything before it is done. */
  #runOnce(): Promise<void> {
    return this.desk.last.views.length === 0 ? this.#progress(this.#run()) : this.#run();
  }

  async #run(): Promise<void> {
    const {desk} = this;
    const changes = this.#changes;
    try {
      const before = desk.last;
      const shelf = await this.#progress(desk.settled());
      const worked = this.#worked(shelf);
      const start = performance.now();
      for (const work of worksOf(worked.views)) {
        // What was typed meanwhile comes first: a check for it is on its way.
        if (changes !== this.#changes) return;
        work();
        await turn();
      }
      this.#lastCheck = performance.now() - start;
      if (changes !== this.#changes) return;
      // The book itself is what somebody writes at; the jobs on it follow.
      if (worked.views.some(({loaded}) => loaded.jobs.length > 0))
        this.#send(worked, (view) => this.#soFar(view));
      for (const work of jobWorksOf(worked.views)) {
        await turn();
        if (changes !== this.#changes) return;
        work();
      }
      this.#send(worked);
      this.#shown = worked.views;
      if (specChanged(before, shelf)) await this.#refresh(['codeLens', 'inlayHint']);
      if (this.#options.pull) await this.#refresh(['diagnostics']);
    } catch (error) {
      // A fault of ours in one check must not take the editor's help away for good.
      this.#connection.console.error(
        `wmark: ${error instanceof Error ? (error.stack ?? error.message) : error}`,
      );
    }
  }

  /** The books of which a file is open. */
  #worked(shelf: Shelf): Shelf {
    const open = new Set(
      this.documents.all().flatMap(({uri}) => {
        const path = this.addresses.path(uri);
        return path === undefined ? [] : [shownName(path, this.desk.cwd)];
      }),
    );
    return {
      ...shelf,
      views: shelf.views.filter(({texts}) => [...texts.keys()].some((file) => open.has(file))),
    };
  }

  /** What is known of a book whose jobs are still to be checked: what they had before stays until then. */
  #soFar(view: BookView): readonly Finding[] {
    const before = this.#shown.find(({loaded}) => loaded.file === view.loaded.file && !loaded.alone);
    if (before === undefined || view.loaded.alone) return view.plain;
    return [...view.plain, ...carried(before.ofJobs, before.texts, view.texts)];
  }

  /** Sends what changed, and takes off what stands in files that no open book holds any longer. */
  #send(worked: Shelf, findingsOf?: (view: BookView) => readonly Finding[]): void {
    if (this.#options.pull) return;
    const all = diagnosticsOf(worked, this.addresses, findingsOf);
    const now = new Map([...all].map(([file, diagnostics]) => [this.addresses.uri(file), diagnostics]));
    for (const uri of this.#sent.keys()) if (!now.has(uri)) now.set(uri, []);
    for (const [uri, diagnostics] of now) {
      const text = JSON.stringify(diagnostics);
      const version = this.documents.get(uri)?.version;
      if (
        this.#sent.get(uri) === text ||
        (diagnostics.length === 0 && !this.#sent.has(uri) && version === undefined)
      ) {
        continue;
      }
      this.#sent.set(uri, text);
      // Where the client is gone, so is the one who would read it.
      void this.#connection
        .sendDiagnostics({uri, diagnostics, ...(version !== undefined && {version})})
        .catch(() => undefined);
    }
  }

  async #refresh(wanted: readonly Refresh[]): Promise<void> {
    const {languages} = this.#connection;
    for (const one of wanted.filter((refresh) => this.#options.refreshes.includes(refresh))) {
      if (one === 'diagnostics') languages.diagnostics.refresh();
      if (one === 'codeLens') await this.#connection.sendRequest('workspace/codeLens/refresh');
      if (one === 'inlayHint') await languages.inlayHint.refresh();
    }
  }

  /** Says that it works where the reading of books takes longer than one waits without wondering. */
  async #progress<T>(work: Promise<T>): Promise<T> {
    // A client that shows no progress has nothing to say about it that anybody should hear.
    const late = setTimeout(
      () => void this.#tellOf(work).catch(() => undefined),
      this.#options.progressAfter ?? WONDERING,
    );
    try {
      return await work;
    } finally {
      clearTimeout(late);
    }
  }

  async #tellOf(work: Promise<unknown>): Promise<void> {
    if (this.#isTelling) return;
    this.#isTelling = true;
    try {
      const shown = await this.#connection.window.createWorkDoneProgress();
      shown.begin('Witness Mark', undefined, 'reading the books');
      await work.catch(() => undefined);
      shown.done();
    } finally {
      this.#isTelling = false;
    }
  }
}

const WONDERING = 400;

/** Lets the client have its turn: what it sent is read in one round of the event loop and handled in the next. */
async function turn(): Promise<void> {
  for (let round = 0; round < 2; round++) await new Promise((done) => setImmediate(done));
}

function worksOf(views: readonly BookView[]): (() => unknown)[] {
  return views.map((view) => () => view.plain);
}

function jobWorksOf(views: readonly BookView[]): (() => unknown)[] {
  return views.flatMap((view) => view.loaded.jobs.map((job) => () => view.workOut(job)));
}

function specChanged(before: Shelf, now: Shelf): boolean {
  return now.views.some(({spec}, index) => before.views[index]?.spec !== spec);
}
