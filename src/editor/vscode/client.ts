/** The extension: starts the server for the books of the workspace, and lays the live sheet beside the text. */
import {commands, type ExtensionContext, type Uri, window, workspace} from 'vscode';
import {LanguageClient, TransportKind} from 'vscode-languageclient/node';
import {SheetPanel} from './sheet-panel.js';
import {isUndone, type UndoneThere} from './undone.js';

/** Called once by the editor, in a workspace with a book, or when a command of ours is chosen. */
export async function activate(context: ExtensionContext): Promise<void> {
  const module = context.asAbsolutePath('server.mjs');
  const server = {module, transport: TransportKind.stdio};
  const client = new LanguageClient('witnessMark', 'Witness Mark', server, {
    documentSelector: [
      {scheme: 'file', language: 'markdown'},
      {scheme: 'file', language: 'yaml'},
    ],
    initializationOptions: {undoneCommand: 'witnessMark.showUndone'},
  });
  const sheet = new SheetPanel(client);
  context.subscriptions.push(
    client,
    sheet,
    commands.registerCommand('witnessMark.openSheet', () => sheet.open()),
    commands.registerCommand('witnessMark.showUndone', (uri?: string) => showUndone(client, uri)),
    commands.registerCommand('witnessMark.startAgain', () => client.restart()),
  );
  await client.start();
}

/** A list of what the book leaves undone; a choice leads to the item in the specification. */
async function showUndone(client: LanguageClient, uri = window.activeTextEditor?.document.uri.toString()) {
  if (uri === undefined) return;
  const found: unknown = await client.sendRequest('workspace/executeCommand', {
    command: 'wmark.undone',
    arguments: [uri],
  });
  const undone = Array.isArray(found) ? found.filter(isUndone) : [];
  if (undone.length === 0) {
    void window.showInformationMessage('Nothing is left undone in this book.');
    return;
  }
  const lines = undone.map((one) => ({
    label: one.place === '' ? one.item : `${one.item} [${one.place}]`,
    description: one.says,
    one,
  }));
  const chosen = await window.showQuickPick(lines, {title: 'Left undone at the end of the book'});
  if (chosen) await show(client, chosen.one);
}

async function show(client: LanguageClient, {location}: UndoneThere): Promise<void> {
  const uri: Uri = client.protocol2CodeConverter.asUri(location.uri);
  const selection = client.protocol2CodeConverter.asRange(location.range);
  await window.showTextDocument(await workspace.openTextDocument(uri), {selection});
}
