/** Materials and tools that cannot be what an item asks for: of another use, or barred on it. */
import type {Problem} from '../../text/problem.js';
import type {Where} from '../../text/source.js';
import {itemsOfKind} from '../items.js';
import type {Bar, Consumable, ConsumableUse, Item, Located, Specification, Surface} from '../model.js';
import {contradiction} from './contradiction.js';

type Spec = Pick<Specification, 'items' | 'bars'>;

/** In the order of the items, each at the value that is likelier wrong, with the other beside it. */
export function materialContradictions(spec: Spec): Problem[] {
  const items = [...spec.items.values()];
  const bars = barsByName(spec.bars);
  return [
    ...itemsOfKind(spec, 'surface').flatMap((surface) => lubricantFaults(surface, spec)),
    ...itemsOfKind(spec, 'consumable').flatMap(lockKindFaults),
    ...items.flatMap((item) => useFaults(item, spec)),
    ...(bars.size === 0 ? [] : items.flatMap((item) => barFaults(item, bars, spec))),
  ];
}

function lubricantFaults(surface: Surface, spec: Spec): Problem[] {
  const {assembly, lubricants, id} = surface;
  const [first] = lubricants;
  if (assembly?.value !== 'dry' || first === undefined) return [];
  const related = [{where: assembly.where, says: 'it is dry here'}];
  const says = `${id} goes together dry, and names ${nameOf(first.value, spec)} as its lubricant`;
  return [{...contradiction(surface, first.where, says, 'take one of the two out'), related}];
}

function lockKindFaults(consumable: Consumable): Problem[] {
  const {use, lock, where, id} = consumable;
  if (use === 'lock' && lock === undefined) {
    const says = `${id} does not say which kind of lock it is`;
    return [{name: 'spec-silent', where, says, hint: 'write lock: safety-wire or another kind', item: id}];
  }
  if (use === 'lock' || lock === undefined) return [];
  const says = `${id} is ${USE_SAYS[use]}, and is given a kind of lock`;
  return [contradiction(consumable, where, says, 'write use: lock, or take the kind out')];
}

const USE_SAYS: Readonly<Record<ConsumableUse, string>> = {
  lubricant: 'a lubricant',
  sealant: 'a sealant',
  gasket: 'a gasket',
  cleaner: 'a cleaner',
  lock: 'a lock',
  strip: 'a gauging strip',
  fluid: 'a fluid',
  other: 'of no use named',
};

/** Consumables named where only one use will do. */
function useFaults(item: Item, spec: Spec): Problem[] {
  return usesDue(item).flatMap(({value, where, due}) => {
    const found = spec.items.get(value);
    if (found?.kind !== 'consumable' || found.use === due) return [];
    const says = `${value} is ${USE_SAYS[found.use]} where ${USE_SAYS[due]} is due`;
    const related = [{where: found.where, says: `${value} is here`}];
    return [{...contradiction(item, where, says, `name ${USE_SAYS[due]}, or change its use`), related}];
  });
}

/** Of what an item names, the consumables that must be of one use. Not `seal`: a joint may be made up with either kind. */
function usesDue(item: Item): (Located<string> & {readonly due: ConsumableUse})[] {
  const named = (due: ConsumableUse) => (one: Located<string>) => ({...one, due});
  if (item.kind === 'surface') return item.lubricants.map(named('lubricant'));
  if (item.kind === 'fit') return item.using.map(named('strip'));
  if (item.kind === 'fastener') return listed(item.lock?.value, item.lock?.where).map(named('lock'));
  return [];
}

/** By what is barred and the item that it is barred on (or '' for all), the first bar that says so. */
type Bars = ReadonlyMap<string, Bar>;

function barsByName(bars: readonly Bar[]): Bars {
  const found = new Map<string, Bar>();
  for (const bar of bars) {
    for (const what of bar.what) {
      for (const on of bar.on.length === 0 ? [''] : bar.on.map(({value}) => value)) {
        const slot = `${what.value}\n${on}`;
        if (!found.has(slot)) found.set(slot, bar);
      }
    }
  }
  return found;
}

/** What the item asks for and a bar forbids on it. */
function barFaults(item: Item, bars: Bars, spec: Spec): Problem[] {
  return askedFor(item).flatMap(({value, where}) => {
    const bar = barOn(item, value, bars, spec);
    if (bar === undefined) return [];
    const says = `${nameOf(value, spec)} is barred on ${item.id}: ${bar.because}`;
    const related = [{where: bar.where, says: 'it is barred here'}];
    return [{...contradiction(item, where, says, 'ask for another, or lift the bar'), related}];
  });
}

/** A consumable is barred by its own name, and by the kind of lock that it is. */
function barOn({id: on}: Item, id: string, bars: Bars, spec: Spec): Bar | undefined {
  const item = spec.items.get(id);
  const names = item?.kind === 'consumable' && item.lock !== undefined ? [id, item.lock] : [id];
  const slots = names.flatMap((name) => [`${name}\n${on}`, `${name}\n`]);
  return slots.map((slot) => bars.get(slot)).find((bar) => bar !== undefined);
}

/** Every consumable, tool and kind of lock that an item asks for; a list's own place where it is one value. */
function askedFor(item: Item): readonly Located<string>[] {
  switch (item.kind) {
    case 'part':
    case 'fit':
    case 'check':
    case 'alteration':
      return item.using;
    case 'surface':
      return item.lubricants;
    case 'joint':
      return listed(item.seal?.value, item.seal?.where);
    case 'fastener':
      return [
        ...listed(item.threads?.value, item.threads?.where),
        ...listed(item.lock?.value, item.lock?.where),
      ];
    case 'system':
      return item.with;
    default:
      return [];
  }
}

function listed(value: string | readonly string[] | undefined, where: Where | undefined): Located<string>[] {
  if (where === undefined || value === undefined || typeof value === 'string') return [];
  return value.map((id) => ({value: id, where}));
}

function nameOf(id: string, spec: Spec): string {
  return spec.items.get(id)?.name ?? id;
}
