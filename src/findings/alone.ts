/**
 * What a procedure checked alone is not blamed for: it keeps what its own steps promise, and what another
 * procedure may do before or after it only the whole book can answer. Nor is a book of which a file can't be read.
 */
import type {Ledger} from '../build/ledger.js';
import type {Verb} from '../procedure/verbs.js';
import type {Raised} from './settle.js';

/**
 * Tells the findings that only the whole book can answer from the others, for the steps of this program. A procedure
 * that does something to an item is taken to finish it; a book with a gap in it (`gap`) only what it has begun.
 */
export function onlyTheBookCanTell({program, relations}: Ledger, gap: boolean): (raised: Raised) => boolean {
  const actions = program.parts.flatMap((part) => part.actions);
  const touched = new Set(actions.map(({item}) => item.id));
  const done = new Set(actions.map(({verb, item}) => `${verb} ${item.id}`));
  const supplies = (item: string, verbs: readonly Verb[]) =>
    itself(item).some((id) => verbs.some((verb) => done.has(`${verb} ${id}`)));

  /** A surface is cleaned and lubed with the part that it is on. */
  function itself(id: string): string[] {
    const item = relations.spec.items.get(id);
    return item?.kind === 'surface' && item.on !== undefined ? [id, item.on.value] : [id];
  }

  return ({kind, found}) => {
    const {lacks, story = []} = found;
    if (ENDS_IN_ANOTHER.has(kind.name) || kind.group === 'left undone') {
      if (found.item === undefined) return false;
      return !touched.has(found.item) || (gap && story.length === 0);
    }
    // What its own steps set or undid before is no secret to it.
    return lacks !== undefined && story.length === 0 && !supplies(lacks.item, lacks.verbs);
  };
}

/** Not left undone by group, and yet answered by what another procedure says. */
const ENDS_IN_ANOTHER: ReadonlySet<string> = new Set(['rework-missing']);
