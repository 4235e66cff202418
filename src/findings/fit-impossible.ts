/** A fit whose limits no pair of parts within the specified sizes can have. */
import {limitsOf, si} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {placesOf} from '../spec/items.js';
import type {Item, Specification, Specified, Fit as SpecifiedFit} from '../spec/model.js';
import {type Fit, fitNamed, fitOfLimits} from '../trade/fit.js';
import type {FindingKind} from './model.js';
import {itemAt} from './phrase.js';
import {told} from './worked-figures.js';

const CAM = `
parts:
  block: {given: true}
  camshaft: {given: true}
surfaces:
  cam-bores: {on: block, assembly: clean, size: 2.2500–2.2510 in}
  cam-journals: {on: camshaft, assembly: clean, size: 2.2400–2.2405 in}
fits:
  cam-clearance: {between: [cam-journals, cam-bores], limits: 0.0015–0.0035 in, using: [feeler-gauges], when: {installed: [block]}}
`;

const STEPS = `
1. Wipe journals and bores. \`clean: cam-journals, cam-bores\`
2. Read the clearance. \`measure: cam-clearance\`
`;

export const fitImpossible: FindingKind = {
  name: 'fit-impossible',
  group: 'engineering',
  severity: 'error',
  summary: 'The limits of a fit cannot come out of the sizes of the two surfaces between which it lies',
  why: 'One of the three figures is wrong, and the apprentice finds out with a shaft in hand that every reading is out. The larger of the two is taken for the hole. Single sizes that are alike are nominal and say nothing of the fit, and neither do those that are more than a tenth apart.',
  source: 'ISO 286-1:2010, 3.3 (clearance is hole less shaft)',
  example: {
    engine: CAM,
    rightEngine: CAM.replace('2.2400–2.2405', '2.2480–2.2485'),
    wrong: STEPS,
    right: STEPS,
  },
  specification({spec, relations, report}) {
    for (const fit of relations.fits) {
      if (typeof fit.limits?.value !== 'object') continue;
      const limits = fit.limits.value;
      const bad = placesOf(fit).flatMap((place) => {
        const fault = faultAt(fit, place, limits, spec);
        return fault === undefined ? [] : [{place, fault}];
      });
      const [first] = bad;
      if (first === undefined) continue;
      const {one, other, comes} = first.fault;
      const places = bad.map(({place}) => place);
      report({
        where: fit.limits.where,
        message: `${itemAt(fit, places)}: the limits ${told(limits, spec)} cannot come out of ${one.id} ${told(one.size.value, spec)} and ${other.id} ${told(other.size.value, spec)}, which give ${comesOut(comes, spec)} (hole less shaft)`,
        item: fit.id,
        related: [one, other].map(({id, size}) => ({where: size.where, says: `the size of ${id} is here`})),
      });
    }
  },
};

interface Sized {
  readonly id: string;
  readonly size: Specified<Amount>;
}

interface Fault {
  readonly one: Sized;
  readonly other: Sized;
  readonly comes: Fit;
}

function faultAt(fit: SpecifiedFit, place: string, limits: Amount, spec: Specification): Fault | undefined {
  const [one, other] = fit.between.map(({value}) => sizedAt(spec.items.get(value), place));
  if (fit.between.length !== 2 || !one || !other) return undefined;
  const [first, second] = [spread(one.size.value), spread(other.size.value)];
  if (first === undefined || second === undefined || !comparable(first, second)) return undefined;
  if (isNominal(one.size.value) && isNominal(other.size.value) && middle(first) === middle(second))
    return undefined;
  const [hole, shaft] = middle(first) >= middle(second) ? [first, second] : [second, first];
  const comes = fitOfLimits(hole, shaft);
  // Interference, where it is specified as less than nought, has the larger one for its shaft.
  const ways = [comes, fitOfLimits(shaft, hole)];
  if (!comes.ok || ways.some((way) => way.ok && meets(way.result, limits))) return undefined;
  return {one, other, comes: comes.result};
}

/** The size at the place of the fit: where the surface has places of its own, of that name. */
function sizedAt(item: Item | undefined, place: string): Sized | undefined {
  if (item?.kind === 'part') return item.size && {id: item.id, size: item.size};
  if (item?.kind !== 'surface') return undefined;
  const size = item.sizes.get(place) ?? item.sizes.get('');
  return size && {id: item.id, size};
}

/** Limits as they are; a decimal means its last place. A fraction is a nominal size, and says nothing so fine. */
function spread(size: Amount): (Amount & {readonly form: 'range'}) | undefined {
  if (size.form === 'most' || size.form === 'least') return undefined;
  const {low, high} = limitsOf(size);
  const {unit, step} = size.form === 'range' ? size.low : size.form === 'single' ? size.value : size.nominal;
  if (size.form === 'single' && step === 0) return undefined;
  const half = size.form === 'single' ? step / 2 : 0;
  const end = (metres: number, by: number): Quantity => ({
    value: Number((metres / unit.factor + by).toPrecision(12)),
    unit,
    step: half || step,
  });
  return {form: 'range', low: end(low, -half), high: end(high, half)};
}

type Range = Amount & {readonly form: 'range'};

function middle({low, high}: Range): number {
  return (si(low) + si(high)) / 2;
}

/** Without limits of its own. */
function isNominal(size: Amount): boolean {
  return size.form === 'single';
}

/** Two sizes of one diameter, and not a diameter and a width. */
function comparable(one: Range, other: Range): boolean {
  const middles = [middle(one), middle(other)];
  return Math.min(...middles) >= 0.9 * Math.max(...middles);
}

/** Whether some pair within the sizes lies within the limits. */
function meets({least, most}: Fit, limits: Amount): boolean {
  const due = limitsOf(limits);
  const slack = 1e-9;
  return si(most) >= due.low - slack && si(least) <= due.high + slack;
}

function comesOut(fit: Fit, spec: Specification): string {
  return fitNamed(fit)
    .map(({name, value}) => `${name} ${told(value, spec)}`)
    .join(' or ');
}
