/** The language server: speaks the Language Server Protocol 3.17 over standard input and output. */
import {fileURLToPath} from 'node:url';
import {
  type Connection,
  createConnection,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  type InitializeParams,
  ProposedFeatures,
  TextDocuments,
} from 'vscode-languageserver/node';
import {TextDocument} from 'vscode-languageserver-textdocument';
import {ClientAddresses} from './addresses.js';
import {capabilities, refreshesOf} from './capabilities.js';
import {bindOwnRequests, bindPull} from './own-requests.js';
import {bindRequests} from './requests.js';
import {Session} from './session.js';
import {SECTION, settingsOf, startOf} from './settings.js';

/** Serves one client; the process ends when the client says so or goes away. */
export function serve(input: NodeJS.ReadableStream, output: NodeJS.WritableStream, version: string): void {
  const connection = createConnection(ProposedFeatures.all, input, output);
  const documents = new TextDocuments(TextDocument);
  connection.onInitialize((params) => {
    const pull = wantsPull(params);
    const session = begin(connection, documents, params, pull);
    bindConfiguration(connection, session, params);
    return {capabilities: capabilities(pull), serverInfo: {name: 'witness-mark', version}};
  });
  documents.listen(connection);
  connection.listen();
}

function begin(
  connection: Connection,
  documents: TextDocuments<TextDocument>,
  params: InitializeParams,
  pull: boolean,
): Session {
  const folders = foldersOf(params);
  const cwd = folders[0] ?? process.cwd();
  const addresses = new ClientAddresses(cwd, folders);
  const refreshes = refreshesOf(params.capabilities);
  const session = new Session(connection, documents, {cwd, addresses, pull, refreshes});
  bindRequests(connection, session);
  bindOwnRequests(connection, session, startOf(params.initializationOptions));
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
