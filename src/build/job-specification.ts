/** The specification as it holds for one engine on the stand: what its options leave out, and the sizes that its grinds give. */

import {highOf, lowOf, si} from '../quantity/convert.js';
import {lessBy} from '../quantity/less.js';
import type {Amount} from '../quantity/model.js';
import {itemsOfKind} from '../spec/items.js';
import type {Job} from '../spec/job.js';
import type {Fit, Item, Specification, Specified, Surface} from '../spec/model.js';

/** Limits of clearances stay as they are: shells of the same undersize bring the clearance back to them. */
export function specificationFor(job: Job, spec: Specification): Specification {
  const options = new Set(job.options.map(({value}) => value));
  const kept = [...spec.items.values()].filter(({only}) => hasOne(only, options));
  return {...spec, items: new Map(kept.map((item) => [item.id, sized(item, job, spec)]))};
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

/** A fit of one surface whose limits are those of its own size, and not of its taper or roundness, follows the grind. */
function fitSized(fit: Fit, job: Job, spec: Specification): Fit {
  const [only, other] = fit.between;
  const surface = only && spec.items.get(only.value);
  const limits = fit.limits?.value;
  if (other || surface?.kind !== 'surface' || !fit.limits || typeof limits !== 'object') return fit;
  const under = undersizeOf(surface, job, spec);
  const [size] = surface.sizes.values();
  if (under === undefined || size === undefined || !isNear(limits, size.value)) return fit;
  return {...fit, limits: {...fit.limits, value: lessBy(limits, under)}};
}

/** No error of shape comes to half of the size, and no limit of a size lies as far below it. */
function isNear(limits: Amount, size: Amount): boolean {
  const bound = highOf(limits) ?? lowOf(limits);
  const whole = highOf(size);
  return bound !== undefined && whole !== undefined && si(bound) > si(whole) / 2;
}

/** How far a surface of this engine is under its standard size; undefined where it is not. */
export function undersizeOf(surface: Surface, job: Job, spec: Specification): Amount | undefined {
  const ground = job.grinds.get(surface.id)?.value;
  if (ground !== undefined) return ground === 'standard' ? undefined : ground;
  const fitted = surface.on === undefined ? undefined : job.fitted.get(surface.on.value)?.value;
  if (fitted === undefined || fitted === 'standard') return undefined;
  return runsOnGround(surface, job, spec) ? fitted : undefined;
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
