/** In the web in place of `node:fs`, as far as the server uses that. */
import {FOLDER, NoSuchFile} from './folder.js';

export const constants = {O_RDONLY: 0, O_NONBLOCK: 0} as const;

export function existsSync(path: string): boolean {
  return FOLDER.at(path) !== undefined;
}

function trueOne(path: string): string {
  if (FOLDER.at(path) === undefined) throw new NoSuchFile(path);
  return path;
}

/** There are no links in the web. */
export const realpathSync = {native: trueOne};
