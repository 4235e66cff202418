/** Which books list a procedure: the one question of a search for which specifications must be read. */
import {proceduresOf} from './listed.js';
import {FRESH, type Reader} from './reader.js';
import {specificationAt} from './specification.js';

/** How files are read, and the working folder to which their names are relative. */
export interface Way {
  readonly cwd: string;
  readonly reader?: Reader | undefined;
}

/** Those of the books, by their engine.yaml, that list it. */
export async function listing(
  engineFiles: readonly string[],
  procedure: string,
  {cwd, reader = FRESH}: Way,
): Promise<string[]> {
  const found: string[] = [];
  for (const engineFile of engineFiles) {
    const read = await specificationAt(engineFile, cwd, reader);
    if (!read.ok) continue;
    const {paths} = await proceduresOf(read, reader.disk);
    if (paths.some(({path}) => path === procedure)) found.push(engineFile);
  }
  return found;
}
