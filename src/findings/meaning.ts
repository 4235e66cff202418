/**
 * What a finding means, apart from where it stands: the same for the same mistake when lines move, steps are numbered
 * anew or words around it change. Two revisions of a book, a list of known findings and a report that is updated all
 * go by it.
 */
import type {Finding} from './model.js';

/** `file` is the name of its file as the caller tells files apart; `item` stands in where the item has another name. */
export function meaningOf(
  {name, place, message, item: own}: Pick<Finding, 'name' | 'message' | 'item' | 'place'>,
  file: string,
  item: string | undefined = own,
): string {
  // Without an item the message says what it is about; numbers of steps in it come and go.
  const about = item === undefined ? message.replace(/\bstep \d[a-z0-9]*/g, 'step') : item;
  return JSON.stringify([name, file, about, place ?? '']);
}
