/// <reference lib="dom" />
/**
 * The language server in a web worker: the same as `wmark editor`, with the client's files in place of a disk. In its
 * bundle what the server asks of Node's own modules is answered by the files beside this one (`.config/web.mjs`).
 */
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  type Connection,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import {serveOn} from '../serving.js';
import {FOLDER} from './folder.js';
import {setReadme} from './package.js';
import {type Change, isChanges, READ, startOf, TOLD} from './protocol.js';
import {pathOrNothing, pathToFileURL, setOrigin} from './url.js';

/** Put in by the bundler. */
declare const WMARK_VERSION: string;

/** The worker's own end of the way to the client. */
declare const self: MessagePort;

/** Node's way to let what waits go first, which a worker has not. */
Object.assign(globalThis, {setImmediate: (done: () => void) => setTimeout(done)});

const connection = createConnection(
  ProposedFeatures.all,
  new BrowserMessageReader(self),
  new BrowserMessageWriter(self),
);

serveOn(connection, {
  version: WMARK_VERSION,
  cwd: '/',
  prepare({initializationOptions}, session) {
    const {origin, readme, files} = startOf(initializationOptions);
    setOrigin(origin);
    setReadme(readme);
    FOLDER.readBy((path) => bytesOf(connection, path));
    take(files);
    connection.onNotification(TOLD, (told: unknown) => {
      if (!isChanges(told)) return;
      take(told.files);
      session()?.look();
    });
  },
});

function take(files: readonly Change[]): void {
  for (const {uri, is} of files) {
    const path = pathOrNothing(uri);
    if (path === undefined) continue;
    if (is === 'gone') FOLDER.take(path);
    else FOLDER.put(path, is === 'folder');
  }
}

async function bytesOf({sendRequest}: Connection, path: string): Promise<Uint8Array> {
  const bytes: unknown = await sendRequest(READ, {uri: pathToFileURL(path).href});
  if (bytes instanceof Uint8Array) return bytes;
  throw new Error(`${path} could not be read`);
}
