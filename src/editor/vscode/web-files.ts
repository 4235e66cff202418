/** The files of a workspace in the web: their names to begin with, what changes, and the bytes of one when they are asked for. */
import {type Disposable, FileType, type Uri, Uri as Uris, workspace} from 'vscode';
import type {Change} from '../web/protocol.js';

export interface Told {
  readonly uri: Uri;
  readonly is: Change['is'];
}

/** A book has some dozens; a folder that was opened by mistake must not be searched for ever. */
const MOST = 20_000;

/** The most that is read of one file: as much as the largest that the server takes. */
const LARGEST = 16 * 1024 * 1024;

/** All below the folders. What lies in hidden folders and in installed packages is passed by. */
export async function filesOf(folders: readonly Uri[]): Promise<{files: readonly Told[]; isWhole: boolean}> {
  const files: Told[] = folders.map((uri) => ({uri, is: 'folder'}));
  const open = [...folders];
  for (let folder = open.shift(); folder !== undefined; folder = open.shift()) {
    for (const [name, type] of await namesIn(folder)) {
      if (files.length >= MOST) return {files, isWhole: false};
      const uri = Uris.joinPath(folder, name);
      const isFolder = (type & FileType.Directory) !== 0;
      files.push({uri, is: isFolder ? 'folder' : 'file'});
      if (isFolder && !name.startsWith('.') && name !== 'node_modules') open.push(uri);
    }
  }
  return {files, isWhole: true};
}

/** None of a folder that may not be read, or that is gone. */
async function namesIn(folder: Uri): Promise<readonly [string, FileType][]> {
  try {
    return await workspace.fs.readDirectory(folder);
  } catch {
    return [];
  }
}

/** @throws Error for a file that is larger than any that the server takes. */
export async function bytesOf(uri: Uri): Promise<Uint8Array> {
  const {size} = await workspace.fs.stat(uri);
  if (size > LARGEST) throw new Error(`${uri.path} is too large`);
  return workspace.fs.readFile(uri);
}

/** Tells of each file and folder that comes, changes or goes. */
export function watchFiles(tell: (changed: Told) => void): Disposable {
  const watcher = workspace.createFileSystemWatcher('**/*');
  const there = async (uri: Uri) => {
    try {
      const {type} = await workspace.fs.stat(uri);
      tell({uri, is: (type & FileType.Directory) === 0 ? 'file' : 'folder'});
    } catch {
      tell({uri, is: 'gone'});
    }
  };
  watcher.onDidCreate(there);
  watcher.onDidChange(there);
  watcher.onDidDelete((uri) => tell({uri, is: 'gone'}));
  return watcher;
}
