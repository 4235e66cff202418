/** Where the sheets of a book go below the folder that the user names, and what lies there from before. */
import {readdir} from 'node:fs/promises';
import {join} from 'node:path';
import type {LoadedBook} from '../host/load.js';
import type {Job} from '../spec/job.js';

/** A folder for each engine and in it one for each job, so that no book ever takes the place of another. */
export function folderName({book, folder}: LoadedBook): string {
  const {id} = book.spec.engine;
  const engine = /^[a-z0-9-]+$/.test(id) ? id : (folder.split(/[\\/]/).at(-1) ?? 'book');
  return book.job === undefined ? engine : join(engine, jobFolder(book.job));
}

/** The job's number where every system takes it for the name of a folder, else the name of the job's file. */
function jobFolder({number, source}: Job): string {
  const plain = /^[A-Za-z0-9](?:[\w.-]{0,60}[A-Za-z0-9_-])?$/.test(number);
  return plain ? number : (source.file.split(/[\\/]/).at(-1) ?? 'job').replace(/\.ya?ml$/, '');
}

const SHEET_FILE = /\.(?:html|pdf|md)$/;

/** Sheets that lie there from before: somebody might print one. */
export async function leftOver(
  {only}: LoadedBook,
  folder: string,
  files: readonly {readonly name: string}[],
): Promise<string[]> {
  if (only) return [];
  const now = new Set(files.map(({name}) => name.replace(SHEET_FILE, '')));
  // The same sheet in another form was asked for by another run.
  const old = (name: string) => SHEET_FILE.test(name) && !now.has(name.replace(SHEET_FILE, ''));
  return (await readdir(folder)).filter(old).sort();
}
