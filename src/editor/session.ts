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
import {Patience} from './patience.js';
import {type Settings, settingsOf} from './settings.js';
import {ToldDiagnostics} from './told-diagnostics.js';

/** What the client said of itself when it started the server. */
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

/** Lives as long as the connection. What is typed goes to the desk at once; the check of it waits until nothing more comes. */
export class Session {
  readonly desk: Desk;
  readonly addresses: ClientAddresses;
  readonly documents: TextDocuments<TextDocument>;
  settings: Settings = settingsOf(undefined);
  readonly #connection: Connection;
  readonly #options: SessionOptions;
  readonly #told: ToldDiagnostics;
  readonly #patience: Patience;
  /** The books of which everything was shown last. */
  #shown: readonly BookView[] = [];
  #timer: NodeJS.Timeout | undefined;
  #changes = 0;
  #lastCheck = 0;

  constructor(connection: Connection, documents: TextDocuments<TextDocument>, options: SessionOptions) {
    this.#connection = connection;
    this.#options = options;
    this.documents = documents;
    this.addresses = options.addresses;
    this.desk = new Desk({cwd: options.cwd, today});
    this.#told = new ToldDiagnostics(connection, documents);
    this.#patience = new Patience(connection, options.progressAfter);
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
    const shelf = await this.#patience.with(this.desk.settled());
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
    return {id: this.#told.idFor(uri, items), items};
  }

  async pulledAll(): Promise<readonly {uri: string; id: string; items: readonly Diagnostic[]}[]> {
    const shelf = await this.desk.settled();
    return [...diagnosticsOf(this.#worked(shelf), this.addresses)].map(([file, items]) => {
      const uri = this.addresses.uri(file);
      return {uri, id: this.#told.idFor(uri, items), items};
    });
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
    return this.desk.last.views.length === 0 ? this.#patience.with(this.#run()) : this.#run();
  }

  async #run(): Promise<void> {
    const {desk} = this;
    const changes = this.#changes;
    try {
      const before = desk.last;
      const shelf = await this.#patience.with(desk.settled());
      const worked = this.#worked(shelf);
      const start = performance.now();
      if (!(await this.#workOff(worksOf(worked.views), changes))) return;
      this.#lastCheck = performance.now() - start;
      // The book itself is what somebody writes at; the jobs on it follow.
      const ofJobs = jobWorksOf(worked.views);
      if (ofJobs.length > 0) {
        this.#send(worked, (view) => this.#soFar(view));
        await turn();
        if (!(await this.#workOff(ofJobs, changes))) return;
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

  /** One after the other; false where something was typed meanwhile, for a check of that is on its way. */
  async #workOff(works: readonly (() => unknown)[], changes: number): Promise<boolean> {
    for (const work of works) {
      if (changes !== this.#changes) return false;
      work();
      await turn();
    }
    return changes === this.#changes;
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

  #send(worked: Shelf, findingsOf?: (view: BookView) => readonly Finding[]): void {
    if (this.#options.pull) return;
    const all = diagnosticsOf(worked, this.addresses, findingsOf);
    this.#told.send(new Map([...all].map(([file, items]) => [this.addresses.uri(file), items])));
  }

  async #refresh(wanted: readonly Refresh[]): Promise<void> {
    const {languages} = this.#connection;
    for (const one of wanted.filter((refresh) => this.#options.refreshes.includes(refresh))) {
      if (one === 'diagnostics') languages.diagnostics.refresh();
      if (one === 'codeLens') await this.#connection.sendRequest('workspace/codeLens/refresh');
      if (one === 'inlayHint') await languages.inlayHint.refresh();
    }
  }
}

/** Lets the client have its turn: what it sent is read in one round of the event loop and handled in the next. */
async function turn(): Promise<void> {
  for (let round = 0; round < 2; round++) await new Promise((done) => setImmediate(done));
}

/** What has to be worked out before a book can be shown, in pieces between which the client has its turn. */
function worksOf(views: readonly BookView[]): (() => unknown)[] {
  return views.map((view) => () => view.plain);
}

function jobWorksOf(views: readonly BookView[]): (() => unknown)[] {
  return views.flatMap((view) => view.loaded.jobs.map((job) => () => view.workOut(job)));
}

function specChanged(before: Shelf, now: Shelf): boolean {
  return now.views.some(({spec}, index) => before.views[index]?.spec !== spec);
}
