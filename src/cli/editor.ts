/** `wmark editor`: the language server, for editors that start one by a command. */
import {serve} from '../editor/server.js';
import type {Exit} from './exit.js';
import {version} from './version.js';

/** Ends only with the process: the client says when. */
export function editor(): Promise<Exit> {
  serve(process.stdin, process.stdout, version);
  return new Promise(() => undefined);
}
