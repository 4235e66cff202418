/** The language server: speaks the Language Server Protocol 3.17 over standard input and output. */
import {createConnection, ProposedFeatures} from 'vscode-languageserver/node';
import {serveOn} from './serving.js';

/** Serves one client; the process ends when the client says so or goes away. */
export function serve(input: NodeJS.ReadableStream, output: NodeJS.WritableStream, version: string): void {
  serveOn(createConnection(ProposedFeatures.all, input, output), {version, cwd: process.cwd()});
}
