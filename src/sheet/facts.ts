/**
 * The facts printed beside a step for one target of one tag. Every clause that the author wrote is printed, whatever
 * the verb; what the tag leaves out comes from the specification.
 */
import type {Clause, Tag} from '../procedure/model.js';
import {amountsOf, clauseOf} from '../procedure/values.js';
import type {ClauseWord, Verb} from '../procedure/verbs.js';
import type {Amount} from '../quantity/model.js';
import type {Fastener, Fit, Item, Specified} from '../spec/model.js';
import {isLeftHand} from '../trade/thread.js';
import {type Named, specifiedAmount, specifiedIds} from './clauses.js';
import {type Context, fullName, nameOf, placesOfUse, type Use} from './context.js';
import {jobFacts} from './job-facts.js';
import type {Fact, Value} from './model.js';
import {quantityFor} from './part-lists.js';
import {angleOf, onlyTurns} from './passes.js';
import {printed, sameAmount} from './value.js';
import {fill, type Words} from './words.js';

/** The facts of a use, its value first, then what only the item can say; `elsewhere` is a clause printed apart. */
export function factsOf(use: Use, context: Context, elsewhere?: ClauseWord): Fact[] {
  const shown = PRINTED_ORDER.filter((word) => word !== elsewhere && !standsInBoxes(use, word, context));
  return [
    ...shown.flatMap((word) => factOf(use, word, context)),
    ...itemFacts(use, context),
    ...jobFacts(use, context),
  ];
}

/** The value first, then what it is done with. */
const PRINTED_ORDER: readonly ClauseWord[] = [
  'to',
  'turn',
  'in',
  'within',
  'for',
  'with',
  'using',
  'by',
  'is',
  'because',
];

/** The passes of a tightening stand at the head of its boxes; a step that only turns on has no torque. */
function standsInBoxes(use: Use, word: ClauseWord, context: Context): boolean {
  if (use.tag.verb !== 'torque') return false;
  return (word === 'in' && amountsOf(use.tag, 'in').length > 1) || (word === 'to' && onlyTurns(use, context));
}

function factOf(use: Use, word: ClauseWord, context: Context): Fact[] {
  const label = labelOf(use.tag.verb, word, context);
  const clause = clauseOf(use.tag, word);
  if (clause !== undefined) return [{label, ...clauseValue(clause, context), ...noteOf(use, word)}];
  const amount =
    use.tag.verb === 'torque' && word === 'turn'
      ? angleOf(use, context)
      : specifiedAmount(use, word, context.spec);
  if (amount !== undefined) return [{label, ...amountOrWord(amount, context), ...noteOf(use, word)}];
  if (word !== 'with' && word !== 'using' && word !== 'by') return [];
  const ids = specifiedIds(use, word);
  if (ids.length === 0) return [];
  const text = ids
    .map((id) => thing({id, rest: ''}, context))
    .join(use.tag.verb === 'lock' ? context.words.and : context.words.or);
  return [{label, text, ...noteOf(use, word)}];
}

/** What the shop wrote beside the specified value: "oiled threads". */
function noteOf({item, tag}: Use, word: ClauseWord): {readonly note?: string} {
  const note = specifiedValue(item, tag.verb, word)?.note;
  return note === undefined ? {} : {note};
}

function specifiedValue(
  item: Item | undefined,
  verb: Verb,
  word: ClauseWord,
): Specified<unknown> | undefined {
  if (item?.kind === 'fastener' && verb === 'torque') return word === 'to' ? item.torque : undefined;
  if (item?.kind === 'fastener' && verb === 'lock') return word === 'with' ? item.lock : undefined;
  if (item?.kind === 'joint' && verb === 'seal') return word === 'with' ? item.seal : undefined;
  return item?.kind === 'fit' || item?.kind === 'check'
    ? word === 'within'
      ? item.limits
      : undefined
    : undefined;
}

/** The text of a clause as the sheet prints it. */
export function clauseValue(clause: Clause, context: Context): Value {
  const {value} = clause;
  if (value.type === 'amount') return printed(value.amount, context);
  if (value.type === 'amounts')
    return {text: value.amounts.map((amount) => joined(amount, context)).join(context.words.and)};
  if (value.type === 'ids')
    return {text: value.ids.map((named) => thing(named, context)).join(context.words.and)};
  return value.type === 'word' ? amountOrWord(value.word, context) : {text: value.text};
}

function joined(amount: Amount, context: Context): string {
  const {text, also} = printed(amount, context);
  return also === undefined ? text : `${text} (${also})`;
}

function amountOrWord(value: Amount | string, context: Context): Value {
  if (typeof value !== 'string') return printed(value, context);
  const {words} = context;
  if (value === 'snug' || value === 'none' || value === 'unknown' || value === 'dry')
    return {text: words[value]};
  return {text: nameOf(value, context)};
}

function thing(named: Named, context: Context): string {
  const item = context.spec.items.get(named.id);
  return item?.kind === 'alteration' && item.does !== undefined ? item.does : fullName(named, context);
}

function labelOf(verb: Verb, word: ClauseWord, context: Context): string {
  const {words} = context;
  if (word === 'for') return verb === 'cure' ? words.cureFor : words.lookFor;
  if (word === 'turn') return verb === 'torque' ? words.angle : words.turnBy;
  if (word === 'by') return verb === 'alter' ? words.alteration : words.by;
  if (word === 'in') return words.passes;
  const plain = {
    to: words.to,
    with: words.with,
    using: words.using,
    within: words.limits,
    is: words.state,
    because: words.because,
  };
  return plain[word];
}

/** Whether the tag says the same amount itself. */
function isStatedTo(tag: Tag, amount: Amount | string): boolean {
  const stated = clauseOf(tag, 'to')?.value;
  return stated?.type === 'amount' && typeof amount !== 'string' && sameAmount(stated.amount, amount);
}

function itemFacts(use: Use, context: Context): Fact[] {
  const {tag, item} = use;
  const {words} = context;
  if (item?.kind === 'part' && tag.verb === 'remove' && item.temporary) {
    return [{label: words.temporary, text: wentIn(use, context)}];
  }
  if (item?.kind === 'part' && tag.verb === 'install') {
    return [
      ...(item.turning ? [{label: words.how, text: words.turning}] : []),
      ...(item.temporary ? [{label: words.temporary, text: comesOut(use, context)}] : []),
    ];
  }
  if (item?.kind === 'fastener' && tag.verb === 'torque')
    return [
      ...countFacts(item, use, context),
      ...handFacts(item, words.tightensLeft, words),
      ...threadFacts(item.threads?.value, context),
    ];
  if (item?.kind === 'fastener' && tag.verb === 'loosen') return handFacts(item, words.slackensRight, words);
  if (item?.kind === 'system' && tag.verb === 'fill' && item.amount !== undefined) {
    const {value} = item.amount;
    return isStatedTo(tag, value) ? [] : [{label: words.amount, ...amountOrWord(value, context)}];
  }
  if (item?.kind === 'check' && tag.verb === 'check' && item.expect !== undefined) {
    return [{label: words.expect, text: item.expect}];
  }
  if (item?.kind === 'fit' && tag.verb === 'measure') return differenceFacts(item, context);
  if (item?.kind !== 'mark' || tag.verb !== 'record') return [];
  return [
    ...(item.stamped === undefined ? [] : [{label: words.stamped, text: item.stamped}]),
    ...(item.matches === undefined
      ? []
      : [{label: words.mustMatch, text: nameOf(item.matches.value, context)}]),
  ];
}

/** A left-hand thread is said wherever it is turned: pulled the usual way it shears, or comes off. */
function handFacts({thread}: Fastener, turns: string, words: Words): Fact[] {
  return thread && isLeftHand(thread.value) ? [{label: words.leftHand, text: turns}] : [];
}

/** Where in this procedure what was put in for a while comes out again. */
function comesOut({tag, target}: Use, {steps, words}: Context): string {
  const from = steps.findIndex(({tags}) => tags.includes(tag));
  const step = steps
    .slice(from + 1)
    .find(({tags}) =>
      tags.some(({verb, targets}) => verb === 'remove' && targets.some(({id}) => id === target.id)),
    );
  return step === undefined ? words.comesOut : fill(words.comesOutAt, {number: step.number});
}

/** Where in this procedure what comes out now was put in for a while. */
function wentIn({tag, target}: Use, {steps, words}: Context): string {
  const at = steps.findIndex(({tags}) => tags.includes(tag));
  const step = steps
    .slice(0, at + 1)
    .findLast(({tags}) =>
      tags.some(({verb, targets}) => verb === 'install' && targets.some(({id}) => id === target.id)),
    );
  return step === undefined ? words.wentIn : fill(words.wentInAt, {number: step.number});
}

/** What a taper or an out-of-round is worked out from. */
function differenceFacts({taperOf, outOfRoundOf}: Fit, context: Context): Fact[] {
  const of = [...taperOf, ...outOfRoundOf].map(({value}) => nameOf(value, context));
  return of.length === 0 ? [] : [{label: context.words.differenceOf, text: of.join(', ')}];
}

/** How many there are to be tightened; one needs no number, and what is not known to be several may be one. */
function countFacts({count, at}: Fastener, use: Use, {words}: Context): Fact[] {
  const due = quantityFor(count, placesOfUse(use).length, at.length);
  return count > 1 ? [{label: words.count, text: String(due)}] : [];
}

function threadFacts(threads: string | readonly string[] | undefined, context: Context): Fact[] {
  if (threads === undefined) return [];
  const text =
    typeof threads === 'string'
      ? amountOrWord(threads, context).text
      : threads.map((id) => nameOf(id, context)).join(context.words.or);
  return [{label: context.words.threads, text}];
}
