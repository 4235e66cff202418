/**
 * Clearances worked out from sizes: where a fit lies between two surfaces, and other fits of the book read the size of
 * each of them alone, bore less journal must agree with the limits of the fit.
 */
import {limitsOf, si} from '../quantity/convert.js';
import {itemsOfKind} from '../spec/items.js';
import type {Fit, Item, Specification} from '../spec/model.js';
import {fill} from '../text/fill.js';
import {bearingClearance} from '../trade/bearing-clearance.js';
import type {ReadingLine} from './report.js';
import type {ReportWords} from './words.js';
import {type Found, foundAt, sizesOf, sizesText} from './worked-line.js';

/**
 * From the last readings of the whole build. Several sizes of one surface at one place (across and along, front and
 * rear) give the smallest and the largest clearance.
 */
export function clearancesOf(
  lines: readonly ReadingLine[],
  spec: Specification,
  words: ReportWords,
): Found[] {
  const sizes = sizesBySurface(lines, spec);
  return itemsOfKind(spec, 'fit').flatMap((fit) => ofFit(fit, sizes, lines, words));
}

type Sizes = ReadonlyMap<string, readonly ReadingLine[]>;

/** Readings of size by the surface that they are of. */
function sizesBySurface(lines: readonly ReadingLine[], spec: Specification): Sizes {
  const sizes = new Map<string, ReadingLine[]>();
  for (const line of lines) {
    const surface = surfaceSized(spec.items.get(line.item), spec);
    if (surface === undefined || line.rounds.at(-1)?.number === undefined) continue;
    sizes.set(surface, [...(sizes.get(surface) ?? []), line]);
  }
  return sizes;
}

/**
 * The one surface whose size a fit reads: its limits lie within a tenth of a size that the specification gives the
 * surface. Those of a taper, a run-out or a height lie elsewhere.
 */
function surfaceSized(fit: Item | undefined, spec: Specification): string | undefined {
  if (fit?.kind !== 'fit' || typeof fit.limits?.value !== 'object') return undefined;
  const [only, second] = fit.between;
  const surface = only && spec.items.get(only.value);
  if (surface?.kind !== 'surface' || second !== undefined) return undefined;
  const {low, high} = limitsOf(fit.limits.value);
  const near = [...surface.sizes.values()].some(({value}) => {
    const size = limitsOf(value);
    return low >= size.low * 0.9 && high <= size.high * 1.1;
  });
  return near ? surface.id : undefined;
}

function ofFit(fit: Fit, sizes: Sizes, lines: readonly ReadingLine[], words: ReportWords): Found[] {
  const [one, other, third] = fit.between.map(({value}) => sizes.get(value));
  if (one === undefined || other === undefined || third !== undefined) return [];
  const places = fit.at.length === 0 ? [''] : fit.at;
  return places.flatMap((place) => {
    const read = lines.findLast((line) => line.item === fit.id && line.place === place);
    return read === undefined ? [] : ofPlace(read, at(one, place), at(other, place), words);
  });
}

function at(sizes: readonly ReadingLine[], place: string): readonly ReadingLine[] {
  return sizes.filter((line) => line.place === place);
}

function ofPlace(
  read: ReadingLine,
  one: readonly ReadingLine[],
  other: readonly ReadingLine[],
  words: ReportWords,
): Found[] {
  // The larger is the bore; of a press fit the difference is then its interference, as its limits state it.
  const [journal, bore] = largestOf(one) < largestOf(other) ? [one, other] : [other, one];
  const result = bearingClearance([{place: read.place, journal: [sizesOf(journal)], bore: [sizesOf(bore)]}]);
  const [clearance] = result.ok ? result.result.places : [];
  if (clearance === undefined) return [];
  const from = fill(words.lessOf, {bores: sizesText(bore), journals: sizesText(journal)});
  return foundAt(read, {least: clearance.least, most: clearance.most, from}, words);
}

function largestOf(lines: readonly ReadingLine[]): number {
  return Math.max(...sizesOf(lines).map(si));
}
