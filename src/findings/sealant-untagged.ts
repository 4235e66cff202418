/** Sealant that the prose puts on, beside a tag that seals with something else: the one word `seal` stands for both. */
import type {Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import type {Item, Specification} from '../spec/model.js';

/** Nothing that is also the name of a gasket or of a washer. */
const SEALANT =
  /\b(?:sealants?|sealers?|silicone|rtv|liquid gasket|(?:jointing|gasket) (?:paste|compound)|gasket varnish)\b/;

const NONE = /\b(?:no|not|never|without|instead of|free of|clear of|nor|old)\b/;

/**
 * Whether a command to seal names sealant, and the tags that seal name only what is none. A tag that does not say with
 * what means what the specification asks of its joint.
 */
export function lacksSealant(clause: string, tags: readonly Tag[], spec: Specification): boolean {
  const words = clause.toLowerCase();
  const named = SEALANT.exec(words)?.[0];
  if (named === undefined || NONE.test(words)) return false;
  // Only where everything that seals says with what, and none of it is what the prose may mean.
  const seals = tags.filter(({verb}) => verb === 'seal');
  if (seals.length === 0 || seals.some((tag) => materialsOf(tag, spec).length === 0)) return false;
  return !tags.some((tag) => materialsOf(tag, spec).some((item) => mayBe(item, named)));
}

function materialsOf(tag: Tag, {items}: Specification): Item[] {
  const value = clauseOf(tag, 'with')?.value;
  if (value?.type === 'ids') return value.ids.flatMap(({id}) => items.get(id) ?? []);
  if (tag.verb !== 'seal') return [];
  return tag.targets.flatMap(({id}) => {
    const joint = items.get(id);
    const seal = joint?.kind === 'joint' ? joint.seal?.value : undefined;
    return typeof seal === 'object' ? seal.flatMap((one) => items.get(one) ?? []) : [];
  });
}

/** A material of another use may be called so all the same. */
function mayBe(item: Item, named: string): boolean {
  if (item.kind !== 'consumable') return false;
  return (
    item.use === 'sealant' || `${item.id.replaceAll('-', ' ')} ${item.name}`.toLowerCase().includes(named)
  );
}
