/** The problem that all contradictions are told as. */
import type {Problem} from '../../text/problem.js';
import type {Where} from '../../text/source.js';
import type {Item} from '../model.js';

/** One of the item's own values, at its place, against another; `hint` says which of the two to mend, or both. */
export function contradiction({id: item}: Item, where: Where, says: string, hint: string): Problem {
  return {name: 'spec-contradiction', where, says, hint, item};
}
