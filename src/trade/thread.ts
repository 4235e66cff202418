/**
 * Reads a thread's designation as shops write it: `1/2-13 UNC`, `7/16-20 UNF-2A`, `#10-32`, `M10×1.5`, `M10`. What is
 * not a standard thread, or could be either of two, is refused with the threads that there are.
 */
import {quantity} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {clipped} from '../text/clipped.js';
import {withoutEnd} from '../text/runs.js';
import {METRIC_SIZES, type MetricSize, UNIFIED_SIZES, type UnifiedSize} from './thread-sizes.js';
import {type Refused, refused} from './worked.js';

export interface Thread {
  /** Without class and hand: `7/16-20 UNF`, `M10×1.5`. */
  readonly name: string;
  readonly family: 'unified' | 'metric';
  /** Basic major diameter, in or mm. */
  readonly diameter: Quantity;
  /** Distance from thread to thread, in or mm; exact. */
  readonly pitch: Quantity;
  /** Of the Unified ones. */
  readonly threadsPerInch?: number;
  /** `UNC`, `UNF`, `UNEF`, `UN`, `UNS`; of metric ones `coarse` or `fine`. */
  readonly series: string;
  /** As stated: `2A`, `6g`. */
  readonly toleranceClass?: string;
  readonly leftHand: boolean;
}

const LONGEST = 60;

export type ThreadReading = {readonly ok: true; readonly thread: Thread} | Refused;

/** Reads a designation. Unified sizes No. 0 to 1-1/2 in, metric M1.6 to M39; series of other names are refused. */
export function readThread(text: string): ThreadReading {
  const trimmed = text.trim();
  // Longer than any designation; it also bounds the work of the expressions below.
  if (trimmed.length > LONGEST)
    return refused(`"${clip(trimmed)}" is too long for a thread`, 'write 1/2-13 UNC, or M10×1.5');
  const leftHand = isLeftHand(trimmed);
  const plain = leftHand ? withoutEnd(trimmed.slice(0, -2), /[\s-]/) : trimmed;
  const foreign = FOREIGN.exec(plain);
  if (foreign !== null)
    return refused(
      `${foreign[0]} threads are not in the tables`,
      'Unified (1/2-13 UNC) and metric (M10×1.5) ones are',
    );
  if (/^M\s?\d/i.test(plain)) return readMetric(plain, leftHand);
  return readUnified(plain, leftHand);
}

/** Whether a designation ends in `LH`, of whatever family it is: such a thread is tightened anticlockwise. */
export function isLeftHand(text: string): boolean {
  return /[\s-]LH$/i.test(text.trim());
}

const FOREIGN = /\b(?:BS[WFP]|BSPP|BSPT|BA|NPTF?|NPS|Whit(?:worth)?|UNJ[CF]?|Tr|ACME)\b/i;

/** A thread of a family that the tables do not have, such as Whitworth or pipe threads. */
export function isForeignThread(text: string): boolean {
  return FOREIGN.test(text);
}

/** Diameter and pitch in metres, for formulas. */
export function metresOf(thread: Thread): {readonly d: number; readonly p: number} {
  return {
    d: thread.diameter.value * thread.diameter.unit.factor,
    p: thread.pitch.value * thread.pitch.unit.factor,
  };
}

const METRIC =
  /^M\s?(\d+(?:[.,]\d+)?)(?:\s*[×xX*-]\s*(\d+(?:[.,]\d+)?)(?![\dA-Za-z]))?(?:\s*-?\s*(\d[A-Za-z]\d?[A-Za-z]?))?$/i;

function readMetric(text: string, leftHand: boolean): ThreadReading {
  const match = METRIC.exec(text);
  if (match === null)
    return refused(`"${clip(text)}" is not a metric thread`, 'write M10×1.5, or M10 for the coarse pitch');
  const diameter = decimal(match[1] ?? '');
  const size = METRIC_SIZES.find(({millimetres}) => millimetres === diameter);
  if (size === undefined) return refused(`M${diameter} is not a standard size`, nearMetric(diameter));
  const [coarse = 0] = size.pitches;
  const pitch = match[2] === undefined ? coarse : decimal(match[2]);
  if (!size.pitches.includes(pitch))
    return refused(`M${diameter} has no pitch of ${pitch} mm`, `it has ${metricNames(size).join(', ')}`);
  return {
    ok: true,
    thread: {
      name: `M${diameter}×${pitch}`,
      family: 'metric',
      diameter: quantity(diameter, 'mm'),
      pitch: quantity(pitch, 'mm', 0),
      series: pitch === coarse ? 'coarse' : 'fine',
      ...(match[3] === undefined ? {} : {toleranceClass: match[3]}),
      leftHand,
    },
  };
}

/** Where metric threads are at home a comma is as good as a point. */
function decimal(text: string): number {
  return Number(text.replace(',', '.'));
}

function metricNames({millimetres, pitches}: MetricSize): string[] {
  return pitches.map((pitch) => `M${millimetres}×${pitch}`);
}

function nearMetric(diameter: number): string {
  const near = [...METRIC_SIZES].sort(
    (a, b) => Math.abs(a.millimetres - diameter) - Math.abs(b.millimetres - diameter),
  );
  return `the nearest are ${near
    .slice(0, 2)
    .map(({millimetres}) => `M${millimetres}`)
    .join(' and ')}`;
}

/** The size without its number sign, then the threads per inch or the series or both, then the class. */
const UNIFIED =
  /^(\d+[- ]\d+\/\d+|\d+\/\d+|\d*\.\d+|\d+)\s*(?:"|in\.?)?(?:\s*[-×x]\s*(\d+)|(?=\s+[A-Z]))\s*(UNR?C|UNR?F|UNR?EF|UNR?S|UNR?|NC|NF|NEF|NS)?(?:[\s-]*([123][AB]?))?$/i;

function readUnified(text: string, leftHand: boolean): ThreadReading {
  const unsigned = text.replace(/^(?:#|No\.?\s*)/i, '');
  const match = UNIFIED.exec(unsigned);
  const sizes = sizesNamed(match?.[1] ?? unsigned, unsigned !== text);
  const [first] = sizes;
  if (match === null || first === undefined) return unreadable(text, first);
  const series = match[3]
    ?.toUpperCase()
    .replace(/^(?=N)/, 'U')
    .replace('R', '');
  const stated = match[2] === undefined ? undefined : Number(match[2]);
  // `1` is a number size and an inch: the threads per inch tell which.
  const fits = sizes.map((one) => ({size: one, found: seriesOf(one, stated, series)}));
  const {size, found} = fits.find((fit) => !('ok' in fit.found)) ?? {
    size: first,
    found: seriesOf(first, stated, series),
  };
  if ('ok' in found) return found;
  const threadsPerInch = found.threads;
  return {
    ok: true,
    thread: {
      name: `${size.name}-${threadsPerInch} ${found.series}`,
      family: 'unified',
      diameter: quantity(size.inches, 'in', size.name.includes('/') ? 0 : 0.001),
      pitch: quantity(1 / threadsPerInch, 'in', 0),
      threadsPerInch,
      series: found.series,
      ...(match[4] === undefined ? {} : {toleranceClass: match[4].toUpperCase()}),
      leftHand,
    },
  };
}

function seriesOf(
  size: UnifiedSize,
  threads: number | undefined,
  series: string | undefined,
): {readonly threads: number; readonly series: string} | Refused {
  const known = Object.entries(size.threads);
  const hint = `it has ${unifiedNames(size).join(', ')}`;
  if (series === 'UN' || series === 'UNS') {
    if (threads === undefined) return refused(`${series} alone does not say the pitch`, 'write 1-14 UNS');
    return threads >= 4 && threads <= 80
      ? {threads, series}
      : refused(`${threads} threads per inch is not a thread`, hint);
  }
  if (series !== undefined) {
    const due = known.find(([name]) => name === series)?.[1];
    if (due === undefined) return refused(`${size.name} has no ${series} thread`, hint);
    if (threads !== undefined && threads !== due)
      return refused(`${size.name} ${series} has ${due} threads per inch, not ${threads}`, hint);
    return {threads: due, series};
  }
  const named = known.find(([, count]) => count === threads);
  return named
    ? {threads: named[1], series: named[0]}
    : refused(
        `${size.name}-${threads} is not a standard thread`,
        `${hint}; write UNS behind it if it is a special one`,
      );
}

/** The sizes of that name, an inch before the number size unless a number sign stands before it. */
function sizesNamed(text: string, numbered: boolean): UnifiedSize[] {
  const name = text.replace(' ', '-');
  const named = UNIFIED_SIZES.filter((size) => size.name === name || size.inches === Number(name)).reverse();
  return numbered ? named.filter((size) => size.inches < 0.25) : named;
}

function unreadable(text: string, size: UnifiedSize | undefined): Refused {
  const says = `"${clip(text)}" does not name a thread`;
  if (size === undefined) return refused(says, 'write 1/2-13 UNC, 7/16-20 UNF-2A, #10-32 or M10×1.5');
  return refused(`${says}: ${size.name} has several`, `write ${unifiedNames(size).join(' or ')}`);
}

function unifiedNames(size: UnifiedSize): string[] {
  return Object.entries(size.threads).map(([series, threads]) => `${size.name}-${threads} ${series}`);
}

function clip(text: string): string {
  return clipped(text, 30);
}
