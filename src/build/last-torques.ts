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
  const open = new Map<string, A>();
  const torques = parts.flatMap(({actions}) =>
    actions.filter(({verb}) => verb === 'torque' || verb === 'loosen'),
  );
  for (const action of torques) {
    for (const place of action.places) {
      const key = `${action.item.id} ${place}`;
      const before = open.get(key);
      // Another torque takes over, unless the fastener was slackened in between.
      if (before !== undefined && action.verb === 'loosen') last.add(before);
      if (action.verb === 'torque') open.set(key, action);
      else open.delete(key);
    }
  }
  for (const action of open.values()) last.add(action);
  return last;
}
