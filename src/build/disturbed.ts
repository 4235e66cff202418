/** A reading counts no longer once what its `disturbed-by` names has been moved: screws slackened, a plate taken off. */
import type {Verb} from '../procedure/verbs.js';
import type {Item} from '../spec/model.js';
import {type Doing, undoAll} from './doing.js';
import {meetingPlaces, relatedTo} from './relations.js';

/**
 * Fasteners are slackened, or tightened (snug too, and also where they were tight already); parts come out, go in or are
 * altered; either is renewed. Fasteners come off with the part that they hold.
 */
const MOVING: ReadonlySet<Verb> = new Set(['loosen', 'torque', 'remove', 'install', 'alter', 'renew']);

/** Whether the verb disturbs a reading that names its item. */
export function moves(verb: Verb): boolean {
  return MOVING.has(verb);
}

export function disturb(doing: Doing): void {
  const {action, relations} = doing;
  if (!moves(action.verb)) return;
  for (const [item, places] of moved(doing)) {
    for (const reading of relatedTo(relations.disturbs, item)) {
      const kind = reading.kind === 'fit' ? 'measured' : 'checked';
      undoAll(doing, kind, reading, meetingPlaces(item, places, reading));
    }
  }
}

function moved({action: {item, places, verb}, relations}: Doing): [Item, readonly string[]][] {
  const holders = verb === 'remove' ? relatedTo(relations.holders, item) : [];
  return [
    [item, places],
    ...holders.map((one): [Item, readonly string[]] => [one, meetingPlaces(item, places, one)]),
  ];
}
