/** In the web in place of `node:fs/promises`, as far as the server uses that. */
import {type Entry, FOLDER, NoSuchFile} from './folder.js';

/** What is known of an entry: whether it is a file, and when it changed, counted in changes. */
interface About {
  readonly ino: number;
  readonly size: number;
  readonly mtimeMs: number;
  readonly ctimeMs: number;
  readonly mtimeNs: number;
  isDirectory(): boolean;
  isFile(): boolean;
}

export async function stat(path: string): Promise<About> {
  return about(entryAt(path), 0);
}

export async function realpath(path: string): Promise<string> {
  entryAt(path);
  return path;
}

export async function readFile(path: string): Promise<Uint8Array> {
  return FOLDER.bytes(path);
}

export async function readdir(path: string, options?: {readonly withFileTypes: boolean}) {
  const names = FOLDER.names(path);
  if (options?.withFileTypes !== true) return [...names];
  return names.map((name) => {
    const isFolder = FOLDER.at(path === '/' ? `/${name}` : `${path}/${name}`)?.isFolder === true;
    return {name, isDirectory: () => isFolder};
  });
}

/** All of the file is there once it is open. */
export async function open(path: string) {
  const entry = entryAt(path);
  const bytes = entry.isFolder ? new Uint8Array() : await FOLDER.bytes(path);
  let at = 0;
  return {
    stat: async () => about(entryAt(path), bytes.length),
    read: async (buffer: Uint8Array, offset: number, length: number, position: number | null) => {
      const from = position ?? at;
      const part = bytes.subarray(from, from + length);
      buffer.set(part, offset);
      at = from + part.length;
      return {buffer, bytesRead: part.length};
    },
    close: async () => undefined,
  };
}

function entryAt(path: string): Entry {
  const entry = FOLDER.at(path);
  if (entry === undefined) throw new NoSuchFile(path);
  return entry;
}

function about({isFolder, version}: Entry, size: number): About {
  return {
    ino: 0,
    size,
    mtimeMs: version,
    ctimeMs: version,
    mtimeNs: version,
    isDirectory: () => isFolder,
    isFile: () => !isFolder,
  };
}
