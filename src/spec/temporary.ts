/** What is on the engine for a while only: dummy shafts, locking pins, blanking plugs, and the bolts that hold them. */
import type {Fastener, Item, Specification} from './model.js';

/** It must be off at the end of the build, and is never missed there. */
export function isTemporary(item: Item, spec: Pick<Specification, 'items'>): boolean {
  if (item.kind === 'part') return item.temporary;
  return item.kind === 'fastener' && holdsOnlyTemporary(item, spec);
}

function holdsOnlyTemporary({holds}: Fastener, {items}: Pick<Specification, 'items'>): boolean {
  return (
    holds.length > 0 &&
    holds.every(({value}) => {
      const part = items.get(value);
      return part?.kind === 'part' && part.temporary;
    })
  );
}
