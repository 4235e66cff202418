/** What the specification bars, and on what. */
import {lockKindOf} from '../build/locks.js';
import type {Bar, Item, Located, Specification} from '../spec/model.js';

/** The bar that keeps this material, tool or kind of lock off this item, if there is one. */
export function barOn(spec: Specification, id: string, item: Item): Bar | undefined {
  return spec.bars.find(({what, on}) => {
    const kind = lockKindOf(spec, id);
    const isMeant = what.some(({value}) => value === id || value === kind);
    return isMeant && (on.length === 0 || on.some((barred) => holdsFor(barred, item, spec)));
  });
}

/** A bar on a surface holds for what is done to the part that it is on, and to the part that closes it. */
function holdsFor({value}: Located<string>, item: Item, spec: Specification): boolean {
  if (value === item.id) return true;
  if (item.kind === 'fastener') return item.holds.some((held) => held.value === value);
  if (item.kind !== 'part') return false;
  const named = spec.items.get(value);
  const isOn = named?.kind === 'surface' && named.on?.value === item.id;
  return isOn || item.closes.some((closed) => closed.value === value);
}
