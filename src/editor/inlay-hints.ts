/** What a tag leaves to the specification, shown in its place; and stated values in the other unit system. */
import {told} from '../findings/worked-figures.js';
import type {Clause, Procedure, Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import {CLAUSE_WORDS, type ClauseWord, tagSpec} from '../procedure/verbs.js';
import {formatAmount, inOtherSystem} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import {specifiedAmount, specifiedIds} from '../sheet/clauses.js';
import type {Use} from '../sheet/context.js';
import type {Specification} from '../spec/model.js';
import type {Span} from '../text/source.js';
import {tagsIn} from './mentions-in-tags.js';

/** Shown behind the character at `offset`, as though it stood in the text. */
export interface Hint {
  readonly offset: number;
  readonly label: string;
  readonly tooltip: string;
  /** What to insert to say it outright; left out where the hint only restates. */
  readonly insert?: string;
}

/** The hints of the tags that touch a span, in their order. */
export function inlayHints(procedure: Procedure, spec: Specification, within: Span): readonly Hint[] {
  return tagsIn(procedure)
    .filter(({span}) => span.start <= within.end && within.start <= span.end)
    .flatMap((tag) => [...converted(tag), ...supplied(tag, spec)])
    .sort((one, other) => one.offset - other.offset);
}

function converted(tag: Tag): Hint[] {
  return tag.clauses.flatMap((clause) => {
    const other = amountsIn(clause).map(inOtherSystem);
    if (other.length === 0 || other.includes(undefined)) return [];
    const label = ` (${other.join(', ')})`;
    return [{offset: clause.valueSpan.end, label, tooltip: 'in the other unit system'}];
  });
}

function amountsIn({value}: Clause): readonly Amount[] {
  if (value.type === 'amount') return [value.amount];
  return value.type === 'amounts' ? value.amounts : [];
}

/** Only where one item is named: what holds of one need not hold of the next. */
function supplied(tag: Tag, spec: Specification): Hint[] {
  const [target, second] = tag.targets;
  if (target === undefined || second !== undefined) return [];
  const use: Use = {tag, target, item: spec.items.get(target.id)};
  return CLAUSE_WORDS.flatMap((word) => {
    if (tagSpec(tag.verb).clauses[word] === undefined || clauseOf(tag, word) !== undefined) return [];
    const value = suppliedBy(use, word, spec);
    if (value === undefined) return [];
    return [
      {
        offset: tag.span.end,
        label: ` ${word} ${value.shown}`,
        tooltip: `the specification of ${target.id} says so`,
        ...(value.insert !== undefined && {insert: ` ${word} ${value.insert}`}),
      },
    ];
  });
}

/** What the specification says where the tag leaves a clause out, as it would be shown and as it would be written. */
export function suppliedBy(
  use: Use,
  word: ClauseWord,
  spec: Specification,
): {readonly shown: string; readonly insert?: string} | undefined {
  const amount = specifiedAmount(use, word, spec);
  if (amount === 'none' || amount === 'unknown') return undefined;
  if (typeof amount === 'string') return {shown: amount, insert: amount};
  if (amount !== undefined) return {shown: told(amount, spec), insert: formatAmount(amount)};
  if (word !== 'with' && word !== 'using' && word !== 'by') return undefined;
  const ids = specifiedIds(use, word);
  const [first, other] = ids;
  if (first === undefined) return undefined;
  return {shown: ids.join(' or '), ...(other === undefined && {insert: first})};
}
