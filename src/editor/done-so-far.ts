/** Which items of a book are still to be dealt with at a place in it, so that those are offered first. */
import type {Verb} from '../procedure/verbs.js';
import type {BookView} from './book-view.js';
import type {Typing} from './completion-typing.js';

/**
 * The rank of an item for a verb: 0 where no step of the book does it, 1 where only a later step does, 2 where it is
 * done already. Reads what stands on paper: a walk through the whole build would take longer than a keystroke.
 */
export function doneSoFar(view: BookView, verb: Verb, {file, text, offset}: Typing): (id: string) => number {
  const done = new Set<string>();
  const later = new Set<string>();
  let passed = false;
  for (const {source, steps} of view.loaded.book.procedures) {
    const here = source.file === file;
    for (const {verb: one, targets, span} of steps.flatMap(({tags}) => tags)) {
      if (one !== verb) continue;
      // The book may be a few letters behind the text: what stands behind the cursor is as far from the end in both.
      const behind = passed || (here && source.text.length - span.start <= text.length - offset);
      // The tag that is being typed, as it was, is not done yet.
      const typed = here && span.start <= offset && source.text.length - span.end <= text.length - offset;
      if (behind) for (const {id} of targets) later.add(id);
      else if (!typed) for (const {id} of targets) done.add(id);
    }
    passed ||= here;
  }
  return (id) => (done.has(id) ? 2 : later.has(id) ? 1 : 0);
}
