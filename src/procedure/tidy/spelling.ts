/** How a tag is spelt: verb, targets with their places in order, clauses in one order, values as the tool prints them. */
import {unitOf} from '../../quantity/convert.js';
import {formatAmount, formatQuantity} from '../../quantity/format.js';
import type {Amount, Unit} from '../../quantity/model.js';
import {inOrderOf} from '../../spec/items.js';
import type {Item, Specification} from '../../spec/model.js';
import type {Clause, Tag, Target} from '../model.js';
import {readTag} from '../tag.js';
import {cut, folded, onOneLine, type TagText} from '../tag-tokens.js';
import {amountOf} from '../values.js';
import {type ClauseWord, saysOrder} from '../verbs.js';

/**
 * The tag on one line, with the same meaning; undefined where it has a fault that is more than its spelling. No value
 * changes: a number keeps its figures and its unit, and the unit gets the symbol that the sheets print.
 */
export function canonicalTag(
  tag: Tag,
  file: string,
  spec: Pick<Specification, 'items'> | undefined,
): string | undefined {
  if (!isSpelling(tag, file)) return undefined;
  const line = onOneLine(tag.raw, tag.span.start);
  return [tagLine(tag, line, spec, valueText), tagLine(tag, line, spec, asWritten)].find((text) =>
    saysTheSame(tag, text, file),
  );
}

/** The clauses in the order in which a mechanic asks: what with, to what value, with which tool, and why. */
const ORDER: readonly ClauseWord[] = [
  'with',
  'to',
  'in',
  'turn',
  'within',
  'is',
  'by',
  'using',
  'for',
  'because',
];

/** Nothing is wrong with the tag but the way in which its verb and colon are written. */
function isSpelling({raw, span, targets}: Tag, file: string): boolean {
  const [first] = targets;
  if (first === undefined) return false;
  return readTag(raw, span.start, file).problems.every(({where}) => where.span.end <= first.span.start);
}

type ValueText = (clause: Clause, tag: Tag, line: TagText) => string;

function tagLine(
  tag: Tag,
  line: TagText,
  spec: Pick<Specification, 'items'> | undefined,
  value: ValueText,
): string {
  const targets = tag.targets.map((target) => targetText(target, tag, spec?.items.get(target.id)));
  const clauses = [...tag.clauses]
    .sort((one, other) => ORDER.indexOf(one.word) - ORDER.indexOf(other.word))
    .map((clause) => `${clause.word} ${value(clause, tag, line)}`);
  return [`${tag.verb}: ${targets.join(', ')}`, ...clauses].join(' ');
}

function targetText({id, places}: Target, {verb}: Tag, item: Item | undefined): string {
  if (places.length === 0) return id;
  const names = places.map(({name}) => name);
  return `${id}[${(saysOrder(verb) ? names : inOrderOf(names, item?.at ?? [])).join(', ')}]`;
}

function valueText(clause: Clause, tag: Tag, line: TagText): string {
  const {value} = clause;
  switch (value.type) {
    case 'ids':
      return idsText(clause, line);
    case 'amount':
      // A tolerance in per cent is the author's own statement; its figures would be ours.
      return cut(line, clause.valueSpan).includes('%')
        ? asWritten(clause, tag, line)
        : formatAmount(value.amount);
    case 'amounts':
      return amountsText(value.amounts, amountOf(tag, 'to'));
    case 'word':
      return value.word;
    case 'text':
      return asWritten(clause, tag, line);
  }
}

/** With its quotes, its white space folded. */
function asWritten({word, span}: Clause, _tag: Tag, line: TagText): string {
  return folded(line, {start: span.start + word.length, end: span.end});
}

function idsText({value, valueSpan}: Clause, line: TagText): string {
  if (value.type !== 'ids') return '';
  const starts = value.ids.map(({span}) => span.start);
  return starts
    .map((start, index) => withoutComma(folded(line, {start, end: starts[index + 1] ?? valueSpan.end})))
    .join(', ');
}

function withoutComma(text: string): string {
  return text.endsWith(',') ? text.slice(0, -1).trimEnd() : text;
}

/** `30, 60, 85` where all are in the unit of the torque; else with the unit at the last, or at each. */
function amountsText(amounts: readonly Amount[], to: Amount | undefined): string {
  const shared = sharedUnit(amounts);
  if (shared === undefined) return amounts.map(formatAmount).join(', ');
  const known = to !== undefined && unitOf(to).symbol === shared.symbol;
  return amounts
    .map((amount, index) => (known || index < amounts.length - 1 ? bare(amount) : formatAmount(amount)))
    .join(', ');
}

/** Of single values only: limits among the passes are printed in full. */
function sharedUnit(amounts: readonly Amount[]): Unit | undefined {
  const [first] = amounts;
  const unit = first && unitOf(first);
  const all = amounts.every((amount) => amount.form === 'single' && unitOf(amount).symbol === unit?.symbol);
  return all ? unit : undefined;
}

function bare(amount: Amount): string {
  return amount.form === 'single'
    ? formatQuantity(amount.value).slice(0, -amount.value.unit.symbol.length).trimEnd()
    : formatAmount(amount);
}

/** Read back without a fault, with the same targets, places and values. */
function saysTheSame(tag: Tag, text: string, file: string): boolean {
  const {tag: back, problems} = readTag(text, 0, file);
  return back !== undefined && problems.length === 0 && meaning(back) === meaning(tag);
}

function meaning({verb, targets, clauses}: Tag): string {
  const named = targets.map(({id, places}) => [id, places.map(({name}) => name).sort()]);
  const said = clauses.map(({word, value}) => [word, value] as const);
  said.sort(([one], [other]) => ORDER.indexOf(one) - ORDER.indexOf(other));
  return JSON.stringify([verb, named, said], (key, value) => (key === 'span' ? undefined : value));
}
