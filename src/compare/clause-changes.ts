/** What the clauses of a tag say otherwise: values, limits, passes, materials, tools, what to look for. */
import type {Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import {type ClauseWord, saysOrder, type Verb} from '../procedure/verbs.js';
import type {Item} from '../spec/model.js';
import type {Deed} from './deeds.js';
import type {Demanded} from './demand.js';
import {demandsOf} from './demands.js';
import type {Sides} from './judge.js';
import type {Judgement} from './limits.js';
import type {Effect, Piece} from './model.js';
import {tagRemark} from './remarks.js';
import {idNow, placeNow} from './renames.js';
import {judged, valueSays} from './values.js';

/** Of one deed that both sides do. What is left out of a tag on one side is read from that side's specification. */
export function clauseChanges(before: Deed, now: Deed, sides: Sides): Piece[] {
  const clauses = CLAUSES.flatMap((word) => clauseChange(word, before, now, sides));
  return [...clauses, ...orderChange(before, now, sides)];
}

/** Fasteners are tightened in the order in which a tag names their places. */
function orderChange(before: Deed, now: Deed, {renames}: Sides): Piece[] {
  if (!saysOrder(now.verb)) return [];
  const places = ({tag, item}: Deed) =>
    tag.targets.filter(({id}) => id === item).flatMap((target) => target.places.map(({name}) => name));
  const was = places(before).map((name) => placeNow(renames, now.item, name));
  const is = places(now);
  const same = was.join() === is.join() || [...was].sort().join() !== [...is].sort().join();
  if (same) return [];
  const says = `order ${was.join(', ')}, now ${is.join(', ')}`;
  const at = {before: [tagRemark(before)], now: [tagRemark(now)]};
  return [
    {effect: 'changed', subject: now.item, item: now.item, place: now.place, aspect: 'order', says, ...at},
  ];
}

/** Not `because`: a reason is prose; not `is`: it makes the branch. */
const CLAUSES = [
  'with',
  'using',
  'to',
  'in',
  'within',
  'for',
  'turn',
  'by',
] as const satisfies readonly ClauseWord[];

/** What of the item a clause speaks of, in the words of the specification, where there is such a word. */
const ASPECT: Partial<Record<`${Verb} ${ClauseWord}`, string>> = {
  'torque to': 'torque',
  'torque in': 'passes',
  'torque turn': 'angle',
  'lock with': 'lock',
  'seal with': 'seal',
  'lube with': 'lubricant',
  'fill with': 'fluid',
  'fill to': 'amount',
  'measure within': 'limits',
  'check within': 'limits',
  'cure for': 'cure',
  'inspect for': 'looks for',
  'check for': 'looks for',
};

function clauseChange(word: (typeof CLAUSES)[number], before: Deed, now: Deed, sides: Sides): Piece[] {
  const rename = (id: string) => idNow(sides.renames, id);
  const old = said(before.tag, word, rename);
  const fresh = said(now.tag, word, (id) => id);
  if (old === undefined && fresh === undefined) return [];
  const aspect = ASPECT[`${now.verb} ${word}`] ?? (word === 'using' ? 'tool' : `${now.verb} ${word}`);
  // What the tag leaves to the specification is what the specification says.
  const was = old ?? specified(before, aspect, sides.before.book.spec.items, rename);
  const is = fresh ?? specified(now, aspect, sides.now.book.spec.items, (id) => id);
  const [from, to] = [
    was === undefined ? 'nothing' : valueSays(was),
    is === undefined ? 'nothing' : valueSays(is),
  ];
  // What one side left to the specification, which says the same, is only written out now.
  const isWords = (old === undefined || fresh === undefined) && from === to;
  return clauseJudgements(word, was, is).map(({effect, says}) => ({
    effect: isWords ? 'reworded' : effect,
    subject: now.item,
    item: now.item,
    place: now.place,
    aspect,
    says: `${aspect} ${from}, now ${to}${says === undefined ? '' : `: ${says}`}`,
    before: [tagRemark(before, clauseOf(before.tag, word)?.span)],
    now: [tagRemark(now, clauseOf(now.tag, word)?.span)],
  }));
}

function clauseJudgements(
  word: ClauseWord,
  was: Demanded | undefined,
  is: Demanded | undefined,
): readonly Judgement[] {
  const effect = clauseEffect(word, was, is);
  if (effect !== undefined) return effect === 'same' ? [] : [{effect}];
  return was === undefined || is === undefined ? [] : judged(was, is);
}

/** Undefined where the two are judged as values of the specification are. */
function clauseEffect(
  word: ClauseWord,
  was: Demanded | undefined,
  is: Demanded | undefined,
): Effect | 'same' | undefined {
  if (was === undefined || is === undefined)
    return was === is ? 'same' : was === undefined ? 'strengthened' : 'weakened';
  if (was.type === 'any-of' && is.type === 'any-of') return named(was.ids, is.ids) ?? 'same';
  if (was.type !== 'text' || is.type !== 'text') return undefined;
  if (word === 'for') return named(list(was.text), list(is.text)) ?? 'same';
  return was.text === is.text ? 'same' : 'changed';
}

/** What a tag names is used, all of it: fewer is less. */
function named(was: readonly string[], is: readonly string[]): Effect | undefined {
  const [kept, held] = [was.every((one) => is.includes(one)), is.every((one) => was.includes(one))];
  if (kept && held) return undefined;
  if (held) return 'weakened';
  return kept ? 'strengthened' : 'changed';
}

function list(text: string): string[] {
  return text
    .toLowerCase()
    .split(/,| and | or /)
    .map((one) => one.trim())
    .filter((one) => one !== '');
}

function said(tag: Tag, word: ClauseWord, rename: (id: string) => string): Demanded | undefined {
  const value = clauseOf(tag, word)?.value;
  switch (value?.type) {
    case undefined:
      return undefined;
    case 'ids':
      return {type: 'any-of', ids: value.ids.map(({id}) => rename(id))};
    case 'amount':
      return {
        type: 'amount',
        amount: value.amount,
        stricter: word === 'within' ? 'narrower' : word === 'for' ? 'more' : 'neither',
      };
    case 'amounts':
      return {type: 'amounts', amounts: value.amounts};
    case 'word':
      return {type: 'word', word: value.word};
    case 'text':
      return {type: 'text', text: value.text};
  }
}

/**
 * The specification's own value, where it leaves no choice. Where it does, a tag that now names one of several is
 * stricter than none at all.
 */
function specified(
  deed: Deed,
  aspect: string,
  items: ReadonlyMap<string, Item>,
  rename: (id: string) => string,
): Demanded | undefined {
  const item = items.get(deed.item);
  const value = item && demandsOf(item).find((one) => one.aspect === aspect)?.value;
  if (value?.type === 'id') return {type: 'any-of', ids: [rename(value.id)]};
  if (value?.type === 'any-of' || value?.type === 'all-of')
    return value.ids.length === 1 ? {type: 'any-of', ids: value.ids.map(rename)} : undefined;
  return value?.type === 'there' || value?.type === 'none' ? undefined : value;
}
