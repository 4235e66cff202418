/** Tolerance stacks: what a chain of sizes adds up to, at worst and by chance. */
import {si} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {rangeOf} from './fit.js';
import type {Range} from './iso-limits.js';
import {lengthLike} from './result.js';
import {type Named, notOf, type Refused, refused, type Worked} from './worked.js';

export interface Link {
  readonly name: string;
  /** A size with its limits; a single size adds no tolerance. */
  readonly size: Amount;
  /**
   * How the size counts: 1 where it widens the gap, −1 where it narrows it, another number where it acts at a ratio.
   */
  readonly times: number;
}

export interface Stack {
  /** With every size in the middle of its limits. */
  readonly mean: Quantity;
  readonly worstCase: Range;
  /** Root sum square: what nearly all assemblies keep, if each size is as likely above its middle as below. */
  readonly rootSumSquare: Range;
}

/**
 * Sizes (lengths, of any sign) added with their signs. Unequal tolerances count from the middle of their limits. Valid
 * for independent sizes; the root sum square for three and more, none of them much the largest. `inflation` (1 to 2)
 * widens it for shifted means. Source: F. Scholz, Tolerance Stack Analysis Methods, Boeing, 1995; Shigley 9th ed.,
 * 1-13.
 */
export function stack(links: readonly Link[], inflation = 1): Worked<Stack> {
  const read = readLinks(links);
  return 'ok' in read ? read : added(read, links, inflation);
}

function added(read: readonly ReadLink[], links: readonly Link[], inflation: number): Worked<Stack> {
  const [first] = read;
  if (first === undefined) return refused('the stack has no link', 'give one size at least');
  if (!(inflation >= 1 && inflation <= 2))
    return refused(
      `an inflation of ${inflation} is outside 1 to 2`,
      '1 is the plain root sum square; 1.4 to 1.6 is usual',
    );
  const mean = total(read, ({times, middle}) => times * middle);
  const worst = total(read, ({times, half}) => Math.abs(times) * half);
  const square = inflation * Math.sqrt(total(read, ({times, half}) => (times * half) ** 2));
  const like: [Quantity, ...Quantity[]] = [first.limits.low, ...read.flatMap(({stated}) => stated)];
  const about = (reach: number): Range => ({
    form: 'range',
    low: lengthLike(mean - reach, like),
    high: lengthLike(mean + reach, like),
  });
  return {
    ok: true,
    result: {mean: lengthLike(mean, like), worstCase: about(worst), rootSumSquare: about(square)},
    formula: `worst case T = Σ|a|·t; root sum square T = ${inflation === 1 ? '' : `${inflation} · `}√Σ(a·t)²`,
    inputs: links.map(stated),
    source: 'F. Scholz, Tolerance Stack Analysis Methods, Boeing, 1995; Shigley 9th ed., section 1-13',
    ...(links.length < 3 ? {advisory: 'With fewer than three links go by the worst case.'} : {}),
  };
}

/**
 * The middle that one size must have so that the stack is never less than `least`, its tolerance unchanged. Source:
 * Shigley 9th ed., Example 1-3.
 */
export function middleFor(links: readonly Link[], name: string, least: Quantity): Worked<Quantity> {
  const read = readLinks(links);
  if ('ok' in read) return read;
  const worked = added(read, links, 1);
  if (!worked.ok) return worked;
  const link = read.find((one) => one.name === name && one.times !== 0);
  if (link === undefined)
    return refused(
      `no link ${name} can be moved`,
      `the stack has ${links.map((one) => one.name).join(', ')}`,
    );
  const refusal = notOf('length', {'the least': least}, 'any');
  if (refusal) return refusal;
  const lacking = si(least) - si(worked.result.worstCase.low);
  return {
    ok: true,
    result: lengthLike(link.middle + lacking / link.times, [link.limits.low, link.limits.high, least]),
    formula: 'middle = present middle + (least wanted − least at worst) / a',
    inputs: [...worked.inputs, {name: 'least wanted', value: least}],
    source: 'Shigley 9th ed., Example 1-3',
  };
}

interface ReadLink {
  readonly name: string;
  readonly times: number;
  readonly limits: Range;
  /** In metres. */
  readonly middle: number;
  readonly half: number;
  /** All that it is stated by: a tolerance may be finer than its nominal. */
  readonly stated: readonly Quantity[];
}

function readLinks(links: readonly Link[]): readonly ReadLink[] | Refused {
  const read: ReadLink[] = [];
  for (const {name, size, times} of links) {
    const limits = rangeOf(size);
    if (limits === undefined)
      return refused(`${name} has only one limit`, 'give both, such as 1.750 ±0.003 in');
    const refusal =
      notOf('length', {[name]: limits.low}, 'any') ?? notOf('length', {[name]: limits.high}, 'any');
    if (refusal) return refusal;
    if (!Number.isFinite(times)) return refused(`${name} has no sign`, 'count it 1 or −1 times');
    const [low, high] = [si(limits.low), si(limits.high)];
    read.push({
      name,
      times,
      limits,
      middle: (low + high) / 2,
      half: (high - low) / 2,
      stated: [limits.low, limits.high, ...(size.form === 'tolerance' ? [size.minus, size.plus] : [])],
    });
  }
  return read;
}

function total(links: readonly ReadLink[], value: (link: ReadLink) => number): number {
  return links.reduce((sum, link) => sum + value(link), 0);
}

function stated({name, size, times}: Link): Named {
  const sign = times === 1 ? '+ ' : times === -1 ? '− ' : `${times} × `;
  return {name: sign + name, value: size};
}
