/** Which books list a procedure: the one question of a search for which specifications must be read. */
import type {FoundBook} from './find-books.js';
import {proceduresOf} from './listed.js';
import {FRESH, type Way} from './reader.js';
import {specificationAt} from './specification.js';

/** Those of the books that list it, asked for it alone. */
export async function listingBooks(
  engineFiles: readonly string[],
  procedure: string,
  {cwd, reader = FRESH}: Way,
): Promise<FoundBook[]> {
  const books: FoundBook[] = [];
  for (const engineFile of engineFiles) {
    const read = await specificationAt(engineFile, cwd, reader);
    if (!read.ok) continue;
    const {paths} = await proceduresOf(read, reader.disk);
    if (paths.some(({path}) => path === procedure)) books.push({engineFile, only: [procedure]});
  }
  return books;
}
