/** Which torques of a book claim to be the end of it for their fastener. */
import type {Verb} from '../procedure/verbs.js';

/** What this takes of an action. */
interface Torque {
  readonly verb: Verb;
  readonly item: {readonly id: string};
  readonly places: readonly string[];
}

/** Reads the build as it stands on paper: a torque is last where the fastener is slackened next, or left as it is. */
export function lastTorques<A extends Torque>(parts: readonly {readonly actions: readonly A[]}[]): Set<A> {
  const last = new Set<A>();
  const takenOver = new Set<string>();
  // From the end, so that a later torque is known when the one is come to that it takes over.
  for (const action of parts.flatMap(({actions}) => actions).toReversed()) {
    for (const place of action.places) {
      const key = `${action.item.id} ${place}`;
      if (action.verb === 'loosen') takenOver.delete(key);
      if (action.verb !== 'torque') continue;
      if (!takenOver.has(key)) last.add(action);
      takenOver.add(key);
    }
  }
  return last;
}
