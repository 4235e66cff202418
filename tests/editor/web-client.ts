/** A client of the server in a web worker of a real browser: the protocol goes through the page that holds the worker. */
import type {Page} from 'playwright-core';
import {
  AbstractMessageReader,
  AbstractMessageWriter,
  createProtocolConnection,
  type DataCallback,
  type Diagnostic,
  type InitializeResult,
  type Message,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
} from 'vscode-languageserver/node';

export interface WebClient {
  readonly connection: ProtocolConnection;
  readonly started: InitializeResult;
  /** How often the bytes of a file were asked for. */
  readonly reads: ReadonlyMap<string, number>;
  until(uri: string, holds: (diagnostics: readonly Diagnostic[]) => boolean): Promise<readonly Diagnostic[]>;
}

export interface WebBook {
  /** Scheme and authority. */
  readonly origin: string;
  readonly readme: string;
  /** By path; who holds it may change it later. */
  readonly files: Map<string, string>;
}

/** The page is empty, and stays with the client. */
export async function startWebClient(page: Page, script: string, book: WebBook): Promise<WebClient> {
  const {origin, readme, files} = book;
  const uriOf = (path: string) => origin + path.split('/').map(encodeURIComponent).join('/');
  const reads = new Map<string, number>();
  const reader = new FromPage();
  await page.exposeFunction('fromServer', (message: Message) => reader.take(message));
  await page.evaluate((text) => {
    const here = globalThis as never as Here;
    const worker = new Worker(URL.createObjectURL(new Blob([text], {type: 'text/javascript'})));
    worker.onmessage = ({data}) => here.fromServer(data);
    here.toServer = (message) => worker.postMessage(message);
  }, script);
  const connection = createProtocolConnection(reader, new ToPage(page));
  const sent = new Map<string, readonly Diagnostic[]>();
  const waiting = new Set<() => void>();
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    sent.set(params.uri, params.diagnostics);
    for (const look of [...waiting]) look();
  });
  connection.onRequest('witnessMark/read', ({uri}: {uri: string}) => {
    reads.set(uri, (reads.get(uri) ?? 0) + 1);
    const text = [...files].find(([path]) => uriOf(path) === uri)?.[1];
    if (text === undefined) throw new Error(`there is no ${uri}`);
    return {bytes: [...Buffer.from(text)]};
  });
  connection.listen();
  const started: InitializeResult = await connection.sendRequest('initialize', {
    processId: null,
    rootUri: `${origin}/`,
    workspaceFolders: [{uri: `${origin}/`, name: 'books'}],
    capabilities: {textDocument: {publishDiagnostics: {relatedInformation: true}}},
    initializationOptions: {
      origin: `${origin}/`,
      readme,
      files: [...files.keys()].map((path) => ({uri: uriOf(path), is: 'file'})),
    },
  });
  await connection.sendNotification('initialized', {});
  return {
    connection,
    started,
    reads,
    until(uri, holds) {
      return new Promise((done) => {
        const look = () => {
          const now = sent.get(uri);
          if (now === undefined || !holds(now)) return;
          waiting.delete(look);
          done(now);
        };
        waiting.add(look);
        look();
      });
    },
  };
}

interface Here {
  fromServer(message: unknown): void;
  toServer(message: unknown): void;
}

class FromPage extends AbstractMessageReader {
  #callback: DataCallback | undefined;
  readonly #early: Message[] = [];

  take(message: Message): void {
    if (this.#callback) this.#callback(message);
    else this.#early.push(message);
  }

  listen(callback: DataCallback) {
    this.#callback = callback;
    for (const message of this.#early.splice(0)) callback(message);
    return {dispose: () => undefined};
  }
}

class ToPage extends AbstractMessageWriter {
  readonly #page: Page;

  constructor(page: Page) {
    super();
    this.#page = page;
  }

  /** Bytes come over as numbers. */
  async write(message: Message): Promise<void> {
    await this.#page.evaluate((told) => {
      const {result} = told as {result?: {bytes?: number[]}};
      const bytes = result?.bytes;
      const here = globalThis as never as Here;
      here.toServer(bytes === undefined ? told : {...told, result: new Uint8Array(bytes)});
    }, message);
  }

  end(): void {}
}
