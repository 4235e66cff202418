/** What the sheets of a book are called: by their file names, and in records. */
import type {Procedure} from '../procedure/model.js';

/**
 * The file names of the sheets of these procedures, without the ending: those of the procedures themselves, with
 * a number behind where two would be the same (in capitals or not) or would take the cover's own, `index`.
 */
export function sheetNames(procedures: readonly Procedure[]): string[] {
  const taken = new Set(['index']);
  return procedures.map(({source}) => {
    const base = (source.file.split(/[\\/]/).at(-1) ?? '').replace(/\.[a-z]+$/i, '') || 'sheet';
    let name = base;
    for (let count = 2; taken.has(name.toLowerCase()); count++) name = `${base}-${count}`;
    taken.add(name.toLowerCase());
    return name;
  });
}
