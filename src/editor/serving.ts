/** What the language server does on a connection, whatever carries that. */
import {fileURLToPath} from 'node:url';
import {
  type Connection,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  type InitializeParams,
  ResponseError,
  TextDocuments,
} from 'vscode-languageserver';
import {TextDocument} from 'vscode-languageserver-textdocument';
import {ClientAddresses} from './addresses.js';
import {capabilities, refreshesOf} from './capabilities.js';
import {bindOwnRequests, bindPull} from './own-requests.js';
import {bindRequests} from './requests.js';
import {Session} from './session.js';
import {SECTION, settingsOf, startOf} from './settings.js';

/** What the way to the client brings along. */
export interface Serving {
  readonly version: string;
  /** The folder to which names are relative where the client names none. */
  readonly cwd: string;
  /** Called before anything is read. */
  readonly prepare?: (params: InitializeParams, session: () => Session | undefined) => void;
}

/** What the protocol gives back to a request at the wrong time, before the start, and of a name that is not known. */
const INVALID_REQUEST = -32600;
const NOT_INITIALIZED = -32002;
const METHOD_NOT_FOUND = -32601;

/** Serves one client. */
export function serveOn(connection: Connection, {version, cwd, prepare}: Serving): void {
  const documents = new TextDocuments(TextDocument);
  let session: Session | undefined;
  connection.onInitialize((params) => {
    if (session !== undefined) throw new ResponseError(INVALID_REQUEST, 'the server has been initialized');
    const pull = wantsPull(params);
    prepare?.(params, () => session);
    session = begin(connection, documents, params, {pull, cwd});
    bindConfiguration(connection, session, params);
    return {capabilities: capabilities(pull), serverInfo: {name: 'witness-mark', version}};
  });
  // What is answered is bound at the start, so this takes all that comes earlier.
  connection.onRequest((method) => {
    throw session === undefined
      ? new ResponseError(NOT_INITIALIZED, 'the server has not been initialized yet: send initialize first')
      : new ResponseError(METHOD_NOT_FOUND, `the server knows no request ${method}`);
  });
  documents.listen(connection);
  connection.listen();
}

function begin(
  connection: Connection,
  documents: TextDocuments<TextDocument>,
  params: InitializeParams,
  {pull, cwd: elsewhere}: {readonly pull: boolean; readonly cwd: string},
): Session {
  const folders = foldersOf(params);
  const cwd = folders[0] ?? elsewhere;
  const addresses = new ClientAddresses(cwd, folders);
  const refreshes = refreshesOf(params.capabilities);
  const start = startOf(params.initializationOptions);
  const {progressAfter} = start;
  const session = new Session(connection, documents, {cwd, addresses, pull, refreshes, progressAfter});
  bindRequests(connection, session);
  bindOwnRequests(connection, session, start);
  if (pull) bindPull(connection, session);
  connection.onDidChangeWatchedFiles(() => session.look());
  return session;
}

/** Diagnostics are sent, unless the client can only ask for them, or says that it would rather ask. */
function wantsPull({capabilities: {textDocument}, initializationOptions}: InitializeParams): boolean {
  const asks = textDocument?.diagnostic !== undefined;
  const {diagnostics} = startOf(initializationOptions);
  return asks && (diagnostics === 'pull' || textDocument?.publishDiagnostics === undefined);
}

function foldersOf({workspaceFolders, rootUri}: InitializeParams): string[] {
  const uris = workspaceFolders?.map(({uri}) => uri) ?? (rootUri ? [rootUri] : []);
  return uris.flatMap((uri) => {
    try {
      return [fileURLToPath(uri)];
    } catch {
      // A folder that is on no disk has nothing to read.
      return [];
    }
  });
}

function bindConfiguration(
  connection: Connection,
  session: Session,
  {capabilities: can}: InitializeParams,
): void {
  const {workspace} = can;
  const load = async () => {
    if (workspace?.configuration)
      session.settings = settingsOf(await connection.workspace.getConfiguration(SECTION));
  };
  const register = async () => {
    if (workspace?.didChangeWatchedFiles?.dynamicRegistration) {
      const watchers = [{globPattern: '**/*.{md,yaml,yml}'}];
      await connection.client.register(DidChangeWatchedFilesNotification.type, {watchers});
    }
    if (workspace?.didChangeConfiguration?.dynamicRegistration) {
      await connection.client.register(DidChangeConfigurationNotification.type, {section: SECTION});
    }
    await load();
  };
  /** A client that refuses what it said it could do is served all the same. */
  const orTell = (work: Promise<void>) =>
    work.catch((error: unknown) => connection.console.warn(`wmark: the client refused: ${String(error)}`));
  connection.onInitialized(() => orTell(register()));
  connection.onDidChangeConfiguration(({settings}) => {
    if (workspace?.configuration) void orTell(load());
    else session.settings = settingsOf(sectionOf(settings));
  });
}

function sectionOf(settings: unknown): unknown {
  if (typeof settings !== 'object' || settings === null) return undefined;
  return SECTION in settings ? Object.entries(settings).find(([key]) => key === SECTION)?.[1] : undefined;
}
