/** What the extension does around its server, wherever that runs: commands, the live sheet, the list of what is left undone. */
import {commands, type ExtensionContext, type Uri, window, workspace} from 'vscode';
import type {BaseLanguageClient, LanguageClientOptions} from 'vscode-languageclient';
import {SheetPanel} from './sheet-panel.js';
import {isUndone, type UndoneThere} from './undone.js';

/** What client and server agree on at the start. */
export function optionsFor(
  schemes: readonly string[],
  more: () => object = () => ({}),
): LanguageClientOptions {
  return {
    documentSelector: schemes.flatMap((scheme) =>
      ['markdown', 'yaml'].map((language) => ({scheme, language})),
    ),
    initializationOptions: () => ({undoneCommand: 'witnessMark.showUndone', ...more()}),
  };
}

/** Starts the server. */
export async function begin(context: ExtensionContext, client: BaseLanguageClient): Promise<void> {
  const sheet = new SheetPanel(client);
  context.subscriptions.push(
    {dispose: () => client.stop()},
    sheet,
    commands.registerCommand('witnessMark.openSheet', () => sheet.open()),
    commands.registerCommand('witnessMark.showUndone', (uri?: string) => showUndone(client, uri)),
    commands.registerCommand('witnessMark.startAgain', async () => {
      await client.stop();
      await client.start();
    }),
  );
  await client.start();
}

/** A list of what the book leaves undone; a choice leads to the item in the specification. */
async function showUndone(
  client: BaseLanguageClient,
  uri = window.activeTextEditor?.document.uri.toString(),
) {
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

async function show(client: BaseLanguageClient, {location}: UndoneThere): Promise<void> {
  const uri: Uri = client.protocol2CodeConverter.asUri(location.uri);
  const selection = client.protocol2CodeConverter.asRange(location.range);
  await window.showTextDocument(await workspace.openTextDocument(uri), {selection});
}
