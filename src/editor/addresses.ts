/** How client and server call the same file: the client by its own address, the server by its true path. */
import {realpathSync} from 'node:fs';
import {basename, dirname, join, resolve, sep} from 'node:path';
import {fileURLToPath, pathToFileURL} from 'node:url';
import type {Addresses} from './convert.js';

/** Lives as long as the session: remembers how the client called what it opened. */
export class ClientAddresses implements Addresses {
  readonly #cwd: string;
  readonly #called = new Map<string, string>();
  /** Folders of the workspace whose true path is another than the client's. */
  readonly #folders: readonly {readonly real: string; readonly given: string}[];

  constructor(cwd: string, folders: readonly string[]) {
    this.#cwd = cwd;
    this.#folders = folders.flatMap((given) => {
      const real = trueOr(given);
      return real === given ? [] : [{real, given}];
    });
  }

  /** The true path behind an address; nothing for what is no file on this machine. */
  path(uri: string): string | undefined {
    try {
      return trueOr(fileURLToPath(uri));
    } catch {
      return undefined;
    }
  }

  opened(uri: string, path: string): void {
    this.#called.set(path, uri);
  }

  closed(path: string): void {
    this.#called.delete(path);
  }

  /** Taken apart from the rest by those who only point at files. */
  readonly uri = (file: string): string => {
    const path = resolve(this.#cwd, file);
    const called = this.#called.get(path) ?? this.#called.get(trueOr(path));
    if (called !== undefined) return called;
    const folder = this.#folders.find(({real}) => path === real || path.startsWith(real + sep));
    return pathToFileURL(folder ? join(folder.given, path.slice(folder.real.length)) : path).href;
  };
}

/** The true path; of a file that isn't there yet, that of its folder with its name. */
function trueOr(path: string): string {
  try {
    return realpathSync.native(path);
  } catch {
    const folder = dirname(path);
    return folder === path ? path : join(trueOr(folder), basename(path));
  }
}
