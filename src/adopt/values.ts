/** The numbers of a step as the clauses of a tag, and whether they are those that the specification has for an item. */
import {type Mention, numbersIn} from '../findings/prose-numbers.js';
import type {Verb} from '../procedure/verbs.js';
import {amountsAgree, dimensionOf, si} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount, Dimension, Quantity} from '../quantity/model.js';
import type {Item, Joint, Specification} from '../spec/model.js';

/** The part of a step that one command speaks for. */
export interface Stretch {
  readonly text: string;
  readonly mentions: readonly Mention[];
}

export function stretchOf(text: string): Stretch {
  return {text, mentions: numbersIn(text)};
}

/** ` to 85 lbf·ft in 30, 60, 85`: what the numbers say for this verb and item; empty where they say nothing of it. */
export function valueClauses(verb: Verb, item: Item, stretch: Stretch): string {
  switch (verb) {
    case 'torque':
      return torqueClauses(stretch);
    case 'measure':
    case 'check': {
      const limits = agreeing(item, stretch);
      return limits === undefined ? '' : ` within ${formatAmount(limits)}`;
    }
    case 'cure':
      return only('for', 'time', stretch);
    case 'fill':
      return only('to', 'volume', stretch);
    default:
      return '';
  }
}

/** 1 where a number is the item's own value, −1 where the numbers are another's, 0 where nothing can be compared. */
export function numberAgreement(verb: Verb, item: Item, stretch: Stretch, spec: Specification): number {
  if (verb === 'torque' && item.kind === 'fastener') {
    const said = finalTorque(stretch);
    const due = item.torque?.value;
    if (said === undefined || due === undefined || due === 'unknown') return 0;
    return typeof due === 'object' && amountsAgree({form: 'single', value: said}, due) ? 1 : -0.6;
  }
  if ((verb === 'measure' || verb === 'check') && (item.kind === 'fit' || item.kind === 'check')) {
    if (agreeing(item, stretch) !== undefined) return 1;
    return typeof item.limits?.value === 'object' &&
      stretch.mentions.some(({amount}) => amount.form === 'range')
      ? -0.6
      : 0;
  }
  if (verb === 'cure' && item.kind === 'joint') return cureAgreement(item, stretch, spec);
  if (verb === 'fill' && item.kind === 'system' && item.amount !== undefined) {
    const due = item.amount.value;
    return stretch.mentions.some(({amount}) => amountsAgree(amount, due)) ? 1 : 0;
  }
  return 0;
}

function cureAgreement({seal}: Joint, {mentions}: Stretch, spec: Specification): number {
  const times = (typeof seal?.value === 'object' ? seal.value : []).flatMap((id) => {
    const sealant = spec.items.get(id);
    return sealant?.kind === 'consumable' && sealant.cure !== undefined ? [sealant.cure.value] : [];
  });
  return times.some((time) => mentions.some(({amount}) => amountsAgree(amount, time))) ? 0.6 : 0;
}

function torqueClauses(stretch: Stretch): string {
  const angle = only('turn', 'angle', stretch);
  const final = finalTorque(stretch);
  if (final === undefined) return angle !== '' || !SNUG.test(stretch.text) ? angle : ' to snug';
  const passes = passesTo(final, stretch);
  const list = passes.length > 1 ? ` in ${passes.join(', ')}` : '';
  return ` to ${formatAmount({form: 'single', value: final})}${list}${angle}`;
}

const SNUG = /\b(?:snug|snugly|nip|nipped|finger[- ]?tight|by hand|with (?:your )?fingers)\b/i;

/** The highest torque that stands there, unless it only repeats another in other units. */
function finalTorque({mentions}: Stretch): Quantity | undefined {
  const said = mentions.flatMap(({amount, repeats}) =>
    amount.form === 'single' && dimensionOf(amount) === 'torque' && !repeats ? [amount.value] : [],
  );
  return said.reduce<Quantity | undefined>(
    (most, one) => (most === undefined || si(one) > si(most) ? one : most),
    undefined,
  );
}

/** A list of bare numbers, rising, that ends in the torque: `30, 60, 80`. */
function passesTo({value}: Quantity, {text}: Stretch): string[] {
  for (const numbers of listsOf(text)) {
    const rising = numbers.every((one, index) => index === 0 || Number(one) > Number(numbers[index - 1]));
    if (numbers.length > 1 && rising && Number(numbers.at(-1)) === value) return numbers;
  }
  return [];
}

/** Numbers that stand in a row with nothing but a joint between them: `30, 60 and 85`. */
function listsOf(text: string): string[][] {
  const lists: string[][] = [];
  let end = 0;
  for (const {0: number, index} of text.matchAll(/\d+(?:\.\d+)?/g)) {
    if (JOINTS.has(text.slice(end, index))) lists.at(-1)?.push(number);
    else lists.push([number]);
    end = index + number.length;
  }
  return lists;
}

const JOINTS: ReadonlySet<string> = new Set([', and ', ', then ', ' and ', ' then ', ', ']);

/** The limits of the item as the text states them; a single number may be one end of them. */
function agreeing(item: Item, {mentions}: Stretch): Amount | undefined {
  const due = item.kind === 'fit' || item.kind === 'check' ? item.limits?.value : undefined;
  if (typeof due !== 'object') return undefined;
  for (const {amount} of mentions) {
    if (dimensionOf(amount) !== dimensionOf(due)) continue;
    const read = readings(amount).find((one) => one.form === due.form && amountsAgree(one, due));
    if (read !== undefined) return read;
  }
  return undefined;
}

function readings(amount: Amount): Amount[] {
  return amount.form === 'single'
    ? [amount, {form: 'most', high: amount.value}, {form: 'least', low: amount.value}]
    : [amount];
}

/** The one amount of a dimension; two would be a guess. */
function only(word: string, dimension: Dimension, {mentions}: Stretch): string {
  const [one, second] = mentions.filter(({amount, repeats}) => dimensionOf(amount) === dimension && !repeats);
  return one === undefined || second !== undefined ? '' : ` ${word} ${formatAmount(one.amount)}`;
}
