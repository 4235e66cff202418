/** Whether some step of the book does a thing at all: what comes too late is one finding, what never comes another. */
import type {Ledger} from '../build/ledger.js';
import {isLockAsked} from '../build/locks.js';
import {idsOf} from '../procedure/values.js';
import type {Context} from './model.js';

/** What is done to one item. */
interface Done {
  /** As `lock front`. */
  readonly deeds: Set<string>;
  readonly locks: {readonly place: string; readonly id: string}[];
}

export function doneAnywhere({program, relations: {spec}}: Ledger): Context['does'] {
  const done = new Map<string, Done>();
  for (const {actions} of program.parts) {
    for (const {verb, item, places, tag} of actions) {
      const own = done.get(item.id) ?? {deeds: new Set(), locks: []};
      done.set(item.id, own);
      for (const place of places) {
        own.deeds.add(`${verb} ${place}`);
        if (verb === 'lock') for (const id of idsOf(tag, 'with')) own.locks.push({place, id});
      }
    }
  }
  return (verb, item, place, lock) => {
    const {deeds, locks} = done.get(item) ?? NOTHING;
    if (lock === undefined) return deeds.has(`${verb} ${place}`);
    return locks.some((one) => one.place === place && isLockAsked(one.id, lock, spec));
  };
}

const NOTHING: Done = {deeds: new Set(), locks: []};
