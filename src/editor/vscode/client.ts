/** The extension on a machine: starts the server as a process of its own for the books of the workspace. */
import type {ExtensionContext} from 'vscode';
import {LanguageClient, TransportKind} from 'vscode-languageclient/node';
import {begin, optionsFor} from './extension.js';

/** Called once by the editor, in a workspace with a book, or when a command of ours is chosen. */
export async function activate(context: ExtensionContext): Promise<void> {
  const server = {module: context.asAbsolutePath('server.mjs'), transport: TransportKind.stdio};
  await begin(context, new LanguageClient('witnessMark', 'Witness Mark', server, optionsFor(['file'])));
}
