/**
 * The workspace as a server in a web worker knows it, which has no disk: the client says which files there are, and
 * hands over the bytes of one when they are asked for.
 */

/** What stands at a path. */
export interface Entry {
  readonly isFolder: boolean;
  /** Another each time that it changed. */
  readonly version: number;
}

export type ReadBytes = (path: string) => Promise<Uint8Array>;

/** An error as those of a disk are, by its code. */
export class NoSuchFile extends Error {
  readonly code = 'ENOENT';

  constructor(path: string) {
    super(`there is no ${path}`);
  }
}

/** Lives as long as the worker. Paths begin with a slash and have no other at their end. */
export class Folder {
  readonly #entries = new Map<string, Entry>([['/', {isFolder: true, version: 0}]]);
  readonly #names = new Map<string, Set<string>>();
  #read: ReadBytes = (path) => Promise.reject(new NoSuchFile(path));
  #changes = 0;

  /** From where the bytes come. */
  readBy(read: ReadBytes): void {
    this.#read = read;
  }

  /** Says that something is there, new or changed, and the folders above it. */
  put(path: string, isFolder: boolean): void {
    if (path === '/') return;
    this.#changes++;
    this.#entries.set(path, {isFolder, version: this.#changes});
    const cut = path.lastIndexOf('/');
    const above = path.slice(0, cut) || '/';
    const names = this.#names.get(above) ?? new Set<string>();
    this.#names.set(above, names.add(path.slice(cut + 1)));
    if (!this.#entries.has(above)) this.put(above, true);
  }

  /** Says that it is gone, with what lay in it. */
  take(path: string): void {
    for (const name of this.#names.get(path) ?? []) this.take(`${path}/${name}`);
    this.#entries.delete(path);
    this.#names.delete(path);
    const cut = path.lastIndexOf('/');
    this.#names.get(path.slice(0, cut) || '/')?.delete(path.slice(cut + 1));
  }

  at(path: string): Entry | undefined {
    return this.#entries.get(path);
  }

  /** The names in a folder, in no order. Throws where there is no such folder. */
  names(path: string): readonly string[] {
    if (this.at(path)?.isFolder !== true) throw new NoSuchFile(path);
    return [...(this.#names.get(path) ?? [])];
  }

  async bytes(path: string): Promise<Uint8Array> {
    if (this.at(path)?.isFolder !== false) throw new NoSuchFile(path);
    return this.#read(path);
  }
}

/** The one of this worker: what stands in for a disk is as much one for all as a disk is. */
export const FOLDER = new Folder();
