/// <reference lib="dom" />
/** The extension in the web: starts the server in a worker, and hands it the files of the workspace. */
import {type ExtensionContext, Uri, window, workspace} from 'vscode';
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type MessageTransports,
} from 'vscode-languageclient/browser';
import {READ, TOLD} from '../web/protocol.js';
import {begin, optionsFor} from './extension.js';
import {bytesOf, filesOf, watchFiles} from './web-files.js';

/** Called once by the editor, in a workspace with a book, or when a command of ours is chosen. */
export async function activate(context: ExtensionContext): Promise<void> {
  const folders = workspace.workspaceFolders?.map(({uri}) => uri) ?? [];
  const [first] = folders;
  if (first === undefined) {
    void window.showInformationMessage('Witness Mark: open a folder with a book; single files have none.');
    return;
  }
  const {files, isWhole} = await filesOf(folders);
  if (!isWhole) void window.showWarningMessage(TOO_MANY);
  const known = new Map(files.map(({uri, is}) => [uri.toString(), is]));
  const options = optionsFor([...new Set(folders.map(({scheme}) => scheme))], () => ({
    origin: first.toString(),
    readme: Uri.joinPath(context.extensionUri, 'README.md').toString(),
    files: [...known].map(([uri, is]) => ({uri, is})),
  }));
  const client = new LanguageClient(
    'witnessMark',
    'Witness Mark',
    () => startServer(context.extensionUri),
    options,
  );
  client.onRequest(READ, ({uri}: {uri: string}) => bytesOf(Uri.parse(uri)));
  context.subscriptions.push(
    watchFiles(({uri, is}) => {
      known.set(uri.toString(), is);
      void client.sendNotification(TOLD, {files: [{uri: uri.toString(), is}]});
    }),
  );
  await begin(context, client);
}

/**
 * VS Code puts a class of its own in the place of `Worker`, and what that makes is none of its instances: the library,
 * which asks, is given both ways of the messages instead.
 */
async function startServer(extension: Uri): Promise<MessageTransports> {
  const worker = await startWorker(extension);
  return {reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker)};
}

/** An editor starts no worker from a script that lies on another machine, so that one is fetched first. */
async function startWorker(extension: Uri): Promise<Worker> {
  const script = Uri.joinPath(extension, 'server-web.js');
  if (/^https?$/.test(script.scheme)) return new Worker(script.toString(true));
  const text = new TextDecoder().decode(await workspace.fs.readFile(script));
  return new Worker(URL.createObjectURL(new Blob([text], {type: 'text/javascript'})));
}

const TOO_MANY =
  'Witness Mark reads the first 20,000 files and folders of this workspace only. Open the folder of the shop.';
