/** The specification as it holds for one engine on the stand: what its options leave out, and the sizes that its grinds give. */

import {si, upperOf} from '../quantity/convert.js';
import {lessBy} from '../quantity/less.js';
import type {Amount} from '../quantity/model.js';
import {itemsOfKind} from '../spec/items.js';
import type {Job} from '../spec/job.js';
import type {Fit, Item, Specification, Specified, Surface} from '../spec/model.js';

/** Limits of clearances stay as they are: shells of the same undersize bring the clearance back to them. */
export function specificationFor(job: Job, spec: Specification): Specification {
  const options = new Set(job.options.map(({value}) => value));
  const kept = [...spec.items.values()].filter(({only}) => hasOne(only, options));
  const ids = new Set(kept.map(({id}) => id));
  const asksOwn = (item: Item): Item =>
    item.kind === 'hold-point' ? {...item, asks: item.asks.filter(({value}) => ids.has(value))} : item;
  return {...spec, items: new Map(kept.map((item) => [item.id, asksOwn(sized(item, job, spec))]))};
}

function hasOne(only: Item['only'], options: ReadonlySet<string>): boolean {
  return only.length === 0 || only.some(({value}) => options.has(value));
}

function sized(item: Item, job: Job, spec: Specification): Item {
  if (item.kind === 'fit') return fitSized(item, job, spec);
  if (item.kind !== 'surface') return item;
  const under = undersizeOf(item, job, spec);
  if (under === undefined) return item;
  const sizes = [...item.sizes].map(([place, size]): [string, Specified<Amount>] => [
    place,
    {...size, value: lessBy(size.value, under)},
  ]);
  return {...item, sizes: new Map(sizes)};
}

/** The surface of whose own size the limits of a fit are; none where they are those of a clearance or of a shape. */
export function measuredSize({between, limits}: Fit, spec: Specification): Surface | undefined {
  const [only, other] = between;
  const surface = only && spec.items.get(only.value);
  if (other || surface?.kind !== 'surface' || typeof limits?.value !== 'object') return undefined;
  const [size] = surface.sizes.values();
  return size !== undefined && isNear(limits.value, size.value) ? surface : undefined;
}

/** No error of shape comes to half of the size, and no limit of a size lies as far below it. */
function isNear(limits: Amount, size: Amount): boolean {
  return si(upperOf(limits)) > si(upperOf(size)) / 2;
}

function fitSized(fit: Fit, job: Job, spec: Specification): Fit {
  const surface = measuredSize(fit, spec);
  const under = surface && undersizeOf(surface, job, spec);
  if (under === undefined || typeof fit.limits?.value !== 'object') return fit;
  return {...fit, limits: {...fit.limits, value: lessBy(fit.limits.value, under)}};
}

/** How far a surface of this engine is under its standard size; undefined where it is not. */
export function undersizeOf(surface: Surface, job: Job, spec: Specification): Amount | undefined {
  const ground = job.grinds.get(surface.id)?.value;
  if (ground !== undefined) return ground === 'standard' ? undefined : ground;
  const fitted = surface.on && job.fitted.get(surface.on.value)?.value;
  return fitted !== 'standard' && runsOnGround(surface, job, spec) ? fitted : undefined;
}

/** Of a shell that comes undersize only the face changes which runs on what is ground, never its back. */
function runsOnGround(surface: Surface, job: Job, spec: Specification): boolean {
  return itemsOfKind(spec, 'fit').some(({between}) => {
    const ids = between.map(({value}) => value);
    return ids.includes(surface.id) && ids.some((id) => id !== surface.id && isGround(id, job, spec));
  });
}

function isGround(id: string, job: Job, spec: Specification): boolean {
  const other = spec.items.get(id);
  return job.grinds.has(id) || (other?.kind === 'surface' && other.grinds.length > 0);
}
