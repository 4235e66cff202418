/** What the specification bars, and on what. */
import {lockKindOf} from '../build/locks.js';
import type {Bar, Item, Specification} from '../spec/model.js';

/** The bar that keeps this material, tool or kind of lock off this item, if there is one. */
export function barOn(spec: Specification, id: string, item: Item): Bar | undefined {
  if (spec.bars.length === 0) return undefined;
  const kind = lockKindOf(spec, id);
  const bears = bearing(item);
  return spec.bars.find(
    ({what, on}) =>
      what.some(({value}) => value === id || value === kind) &&
      (on.length === 0 || on.some(({value}) => bears.has(value))),
  );
}

/** A bar on a surface holds for what is done to the part that it is on, and to the part that closes it. */
function bearing(item: Item): Set<string> {
  const bears = new Set([item.id]);
  if (item.kind === 'part') for (const {value} of item.closes) bears.add(value);
  if (item.kind === 'fastener') for (const {value} of item.holds) bears.add(value);
  return bears;
}
