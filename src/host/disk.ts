/**
 * Everything that reading a book may ask of the disk, in one place: so that the questions can be written down, and an
 * answer that was worked out from them be used again for as long as the disk gives the same ones.
 */
import {existsSync} from 'node:fs';
import {readdir, stat} from 'node:fs/promises';
import {systemCode} from './failure.js';
import {truePath} from './names.js';
import {type FoundPicture, findPicture, type PictureBounds} from './pictures.js';
import {type ReadText, readText} from './read.js';

/** Every question that reading a book may ask of the disk. `trace.ts` writes them down by these names. */
export interface Disk {
  /** A text; `shown` is the name under which people know it, `limit` the most bytes. */
  readonly text: (path: string, shown: string, limit: number) => Promise<ReadText>;
  /** The path with every link followed, or nothing. */
  readonly truePath: (path: string) => Promise<string | undefined>;
  readonly exists: (path: string) => boolean;
  readonly kind: (path: string) => Promise<PathKind>;
  /** The names in a folder, sorted; or the code of the system's error. */
  readonly names: (folder: string) => Promise<readonly string[] | SystemError>;
  readonly picture: (url: string, bounds: PictureBounds) => Promise<FoundPicture>;
}

/** `other` is a device or a pipe; `missing` also where nobody may look. */
export type PathKind = 'file' | 'folder' | 'other' | 'missing';

export interface SystemError {
  /** As `ENOENT`. */
  readonly code: string;
}

/** The true disk, as it is now. */
export const DISK: Disk = {
  text: readText,
  truePath,
  exists: existsSync,
  kind: kindOfPath,
  names: namesIn,
  picture: findPicture,
};

async function kindOfPath(path: string): Promise<PathKind> {
  try {
    const about = await stat(path);
    if (about.isDirectory()) return 'folder';
    return about.isFile() ? 'file' : 'other';
  } catch {
    return 'missing';
  }
}

async function namesIn(folder: string): Promise<readonly string[] | SystemError> {
  try {
    return (await readdir(folder)).sort();
  } catch (error) {
    const code = systemCode(error);
    if (code === undefined) throw error;
    return {code};
  }
}
