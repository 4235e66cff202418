/**
 * Clearances worked out from sizes: where a fit lies between two surfaces, and other fits of the book read the size of
 * each of them alone, bore less journal must agree with the limits of the fit.
 */
import {convert, decimalStep, limitsOf, si} from '../quantity/convert.js';
import type {Quantity, Unit} from '../quantity/model.js';
import {findUnit} from '../quantity/units.js';
import {itemsOfKind} from '../spec/items.js';
import type {Fit, Item, Specification} from '../spec/model.js';
import {bearingClearance} from '../trade/bearing-clearance.js';
import {decimals, limitsText, plain, remark, withUnit} from './remark.js';
import type {ReadingLine, Remark, Worked} from './report.js';
import {verdictOf} from './verdict.js';

export interface WorkedOut {
  readonly lines: readonly Worked[];
  readonly remarks: readonly Remark[];
}

/**
 * From the last readings of the whole build. Several sizes of one surface at one place (across and along, front and
 * rear) give the smallest and the largest clearance; which of them is taper and which out-of-round the book does not
 * say, so neither is told apart.
 */
export function workedOut(lines: readonly ReadingLine[], spec: Specification): WorkedOut {
  const sizes = sizesBySurface(lines, spec);
  const found = itemsOfKind(spec, 'fit').flatMap((fit) => ofFit(fit, sizes, lines));
  return {lines: found.map(({line}) => line), remarks: found.flatMap((one) => one.remark ?? [])};
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

interface Found {
  readonly line: Worked;
  readonly remark?: Remark;
}

function ofFit(fit: Fit, sizes: Sizes, lines: readonly ReadingLine[]): Found[] {
  const [one, other, third] = fit.between.map(({value}) => sizes.get(value));
  if (one === undefined || other === undefined || third !== undefined) return [];
  const places = fit.at.length === 0 ? [''] : fit.at;
  return places.flatMap((place) => {
    const read = lines.findLast((line) => line.item === fit.id && line.place === place);
    return read === undefined ? [] : ofPlace(read, at(one, place), at(other, place));
  });
}

function at(sizes: readonly ReadingLine[], place: string): readonly ReadingLine[] {
  return sizes.filter((line) => line.place === place);
}

function ofPlace(read: ReadingLine, one: readonly ReadingLine[], other: readonly ReadingLine[]): Found[] {
  // The larger is the bore; of a press fit the difference is then its interference, as its limits state it.
  const [journal, bore] = largestOf(one) < largestOf(other) ? [one, other] : [other, one];
  const result = bearingClearance([{place: read.place, journal: [sizesOf(journal)], bore: [sizesOf(bore)]}]);
  const [clearance] = result.ok ? result.result.places : [];
  const to = findUnit(read.unit);
  if (clearance === undefined || to?.dimension !== 'length') return [];
  const {item, name, place, unit, least, most} = read;
  const [smallest, largest] = [inUnit(clearance.least, to), inUnit(clearance.most, to)];
  const verdicts = [smallest, largest].map((value) => verdictOf(value, {least, most}));
  const line: Worked = {
    ...{item, name, place, unit, smallest, largest},
    ...(least !== undefined && {least}),
    ...(most !== undefined && {most}),
    from: `${sizesText(bore)} less ${sizesText(journal)}`,
    state: verdicts.includes(undefined) ? 'unjudged' : verdicts.includes('out') ? 'out' : 'in',
  };
  return line.state === 'out' ? [{line, remark: wrong(read, line)}] : [{line}];
}

/** Ten figures drop the noise of the conversion. */
function inUnit(length: Quantity, to: Unit): number {
  return Number(convert(length, to).value.toPrecision(10));
}

function wrong({sheet, step, rounds, unit}: ReadingLine, line: Worked): Remark {
  const {item, place, name} = line;
  const last = rounds.at(-1);
  const direct = last ? `, and ${withUnit(last.value, unit)} was read` : '';
  const says = `works out at ${spanText(line)} (${line.from}); limits ${limitsText(line)}${direct}`;
  const message = `${name}${place === '' ? '' : `, ${place}`}: ${says}`;
  return remark('works-out-wrong', {sheet, step, item, ...(place !== '' && {place}), message});
}

/** `0.0024 in`, or `0.0024–0.0026 in` where the sizes were read more than once. */
export function spanText({smallest, largest, least = 0, most = 0, unit}: Worked): string {
  const places = Math.max(...[smallest, largest, least, most].map(decimals));
  const [low, high] = [plain(smallest, places), plain(largest, places)];
  return withUnit(low === high ? low : `${low}–${high}`, unit);
}

function sizesText(lines: readonly ReadingLine[]): string {
  return lines
    .map(({name, rounds, unit}) => `${name} ${withUnit(rounds.at(-1)?.value ?? '', unit)}`)
    .join(', ');
}

function sizesOf(lines: readonly ReadingLine[]): Quantity[] {
  return lines.flatMap(({rounds, unit}) => {
    const [value, found] = [rounds.at(-1)?.number, findUnit(unit)];
    return value === undefined || found === undefined ? [] : [{value, unit: found, step: decimalStep(value)}];
  });
}

function largestOf(lines: readonly ReadingLine[]): number {
  return Math.max(...sizesOf(lines).map(si));
}
