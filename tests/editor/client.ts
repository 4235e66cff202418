/** A client of the built server, as an editor is one: over standard input and output. */
import {type ChildProcessWithoutNullStreams, spawn} from 'node:child_process';
import {resolve} from 'node:path';
import {pathToFileURL} from 'node:url';
import {
  type ClientCapabilities,
  createProtocolConnection,
  type Diagnostic,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';

export interface Client {
  readonly connection: ProtocolConnection;
  readonly server: ChildProcessWithoutNullStreams;
  readonly started: InitializeResult;
  /** What stands in the file by what was sent last. */
  diagnostics(file: string): readonly Diagnostic[];
  /** Waits until what stands in the file is so. */
  until(file: string, holds: (diagnostics: readonly Diagnostic[]) => boolean): Promise<readonly Diagnostic[]>;
  open(file: string, text: string): Promise<void>;
  /** Puts a new text in place of the old one, whole. */
  type(file: string, text: string): Promise<void>;
  request<T>(method: string, params: object): Promise<T>;
  uri(file: string): string;
  stop(): Promise<number | null>;
}

export interface ClientOptions {
  readonly capabilities?: ClientCapabilities;
  readonly initializationOptions?: object;
}

const USUAL: ClientCapabilities = {textDocument: {publishDiagnostics: {relatedInformation: true}}};

/** Files are relative to the folder, which is the client's workspace. */
export async function startClient(folder: string, options: ClientOptions = {}): Promise<Client> {
  const server = spawn(process.execPath, [resolve('dist/wmark.js'), 'editor'], {cwd: folder});
  const ended = new Promise<number | null>((done) => server.once('exit', (code) => done(code)));
  const reader = new StreamMessageReader(server.stdout);
  const connection = createProtocolConnection(reader, new StreamMessageWriter(server.stdin));
  const sent = new Map<string, readonly Diagnostic[]>();
  const waiting = new Set<() => void>();
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    sent.set(params.uri, params.diagnostics);
    for (const look of [...waiting]) look();
  });
  connection.onRequest('client/registerCapability', () => null);
  connection.onRequest('window/workDoneProgress/create', () => null);
  connection.listen();
  const uri = (file: string) => pathToFileURL(resolve(folder, file)).href;
  const request = <T>(method: string, params: object) => connection.sendRequest<T>(method, params);
  const started = await request<InitializeResult>('initialize', {
    processId: process.pid,
    rootUri: uri('.'),
    workspaceFolders: [{uri: uri('.'), name: 'books'}],
    capabilities: options.capabilities ?? USUAL,
    initializationOptions: options.initializationOptions,
  });
  await connection.sendNotification('initialized', {});
  let version = 1;
  const diagnostics = (file: string) => sent.get(uri(file)) ?? [];
  return {
    connection,
    server,
    started,
    diagnostics,
    uri,
    request,
    until(file, holds) {
      return new Promise((done) => {
        const look = () => {
          const now = sent.get(uri(file));
          if (now === undefined || !holds(now)) return;
          waiting.delete(look);
          done(now);
        };
        waiting.add(look);
        look();
      });
    },
    open(file, text) {
      const languageId = file.endsWith('.md') ? 'markdown' : 'yaml';
      const textDocument = {uri: uri(file), languageId, version: version++, text};
      return connection.sendNotification('textDocument/didOpen', {textDocument});
    },
    type(file, text) {
      const textDocument = {uri: uri(file), version: version++};
      return connection.sendNotification('textDocument/didChange', {textDocument, contentChanges: [{text}]});
    },
    async stop() {
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      return ended;
    },
  };
}
