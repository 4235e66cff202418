/** The items that a check, a reading, a signature or a look has to do with, by the specification. */
import type {Relations} from '../build/relations.js';

/** Undefined for a check, of which the specification does not say what it is made of: any work may matter to it. */
export function relatedTo(id: string, relations: Relations): ReadonlySet<string> | undefined {
  const item = relations.spec.items.get(id);
  if (item === undefined || item.kind === 'check') return undefined;
  const ids = new Set([id]);
  const own =
    item.kind === 'fit'
      ? [...item.between, ...(item.when?.installed ?? []), ...(item.when?.tight ?? [])]
      : item.kind === 'hold-point'
        ? item.asks
        : [];
  for (const {value} of own) addWithNeighbours(value, relations, ids);
  for (const {id: surface} of relations.surfacesOn.get(id) ?? []) ids.add(surface);
  return ids;
}

/** A surface with its part, and a part with what holds it. */
function addWithNeighbours(id: string, {spec, holders}: Relations, ids: Set<string>): void {
  const item = spec.items.get(id);
  const part = item?.kind === 'surface' ? item.on?.value : id;
  ids.add(id);
  if (part === undefined) return;
  ids.add(part);
  for (const fastener of holders.get(part) ?? []) ids.add(fastener.id);
}
