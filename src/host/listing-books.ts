/** Which books list a procedure: the one question of a search for which specifications must be read. */
import {proceduresOf} from './listed-procedures.js';
import {FRESH, type Way} from './reader.js';
import {specificationAt} from './specification.js';

/** True paths of the specifications that list it. */
export async function listingBooks(
  engineFiles: readonly string[],
  procedure: string,
  {cwd, reader = FRESH}: Way,
): Promise<string[]> {
  const listing: string[] = [];
  for (const engineFile of engineFiles) {
    const read = await specificationAt(engineFile, cwd, reader);
    if (!read.ok) continue;
    const {paths} = await proceduresOf(read, reader.disk);
    if (paths.some(({path}) => path === procedure)) listing.push(engineFile);
  }
  return listing;
}
