/** Reads the value of a clause as what the verb takes it for. */
import type {Amount, AmountFault, Unit} from '../quantity/model.js';
import {readAmount, readAmounts} from '../quantity/parse.js';
import {addAll} from '../text/add-all.js';
import {nearest} from '../text/nearest.js';
import type {Span} from '../text/source.js';
import type {ClauseValue} from './model.js';
import type {Written} from './tag-clauses.js';
import {formFault, type Read, replacing, shown, type TagFault} from './tag-fault.js';
import {entries, idFault, isId} from './tag-targets.js';
import {cut, folded, spanOver, type TagText, type Token} from './tag-tokens.js';
import type {ClauseSpec} from './verbs.js';

/** The value, as far as it can be read, and what is wrong with it. `inherit` is the unit of the `to` clause. */
export function readValue(
  tag: TagText,
  written: Written,
  spec: ClauseSpec,
  inherit?: Unit,
): Read<ClauseValue | undefined> {
  const text = folded(tag, written.valueSpan);
  if (text === '') return {value: undefined, faults: [silent(written)]};
  switch (spec.type) {
    case 'ids':
      return readIds(tag, written);
    case 'amount':
      return readOne(tag, written, spec, text);
    case 'amounts':
      return readSeveral(tag, written, spec.due, inherit);
    case 'word':
      return sure({type: 'word', word: text});
    case 'text':
      return sure({type: 'text', text});
  }
}

function sure(value: ClauseValue): Read<ClauseValue> {
  return {value, faults: []};
}

function silent({word, span}: Written): TagFault {
  return formFault(span, `\`${word}\` says nothing`, {hint: 'put its value after it, or take the word out'});
}

function readIds(tag: TagText, {tokens, span}: Written): Read<ClauseValue | undefined> {
  const faults: TagFault[] = [];
  const ids = [];
  for (const {tokens: entry, at} of entries(tokens)) {
    const [name, ...rest] = entry;
    if (name === undefined) faults.push(formFault(at, 'a name is missing beside this comma'));
    else if (name.type !== 'word') faults.push(formFault(spanOver(entry) ?? span, 'a name is due here'));
    else if (!isId(name.text)) faults.push(idFault(name.span, name.text));
    else {
      ids.push({id: name.text, span: name.span, rest: restText(tag, rest)});
      addAll(faults, rest.flatMap(mistypedClause));
    }
  }
  return {value: ids.length > 0 ? {type: 'ids', ids} : undefined, faults};
}

function restText(tag: TagText, rest: readonly Token[]): string {
  const [only, second] = rest;
  if (only?.type === 'quoted' && second === undefined) return only.text;
  const span = spanOver(rest);
  return span === undefined ? '' : folded(tag, span);
}

/** A slip in one of the long clause words would otherwise hide the clause among the free words after an id. */
function mistypedClause({type, text, span}: Token): TagFault[] {
  if (type !== 'word' || text.length < 4 || text === 'width') return [];
  const near = nearest(text.toLowerCase(), ['with', 'using', 'within', 'because']);
  if (near === undefined) return [];
  const fix = replacing(span, near, `Write ${near}`);
  return [formFault(span, `${shown(text)} opens no clause`, {hint: `did you mean ${near}?`, fix})];
}

function readOne(
  tag: TagText,
  {valueSpan}: Written,
  spec: Extract<ClauseSpec, {type: 'amount'}>,
  text: string,
): Read<ClauseValue | undefined> {
  if (spec.words?.includes(text)) return sure({type: 'word', word: text});
  const reading = readAmount(cut(tag, valueSpan), spec.due);
  if (reading.ok) return sure({type: 'amount', amount: reading.amount});
  if (spec.orText && !/\d/.test(text)) return sure({type: 'text', text});
  return {value: undefined, faults: [amountFault(reading.fault, valueSpan)]};
}

function readSeveral(
  tag: TagText,
  {valueSpan}: Written,
  due: Extract<ClauseSpec, {type: 'amounts'}>['due'],
  inherit: Unit | undefined,
): Read<ClauseValue | undefined> {
  const amounts: Amount[] = [];
  const faults: TagFault[] = [];
  for (const {reading} of readAmounts(cut(tag, valueSpan), due, inherit)) {
    if (reading.ok) amounts.push(reading.amount);
    else faults.push(amountFault(reading.fault, valueSpan));
  }
  return {value: amounts.length > 0 ? {type: 'amounts', amounts} : undefined, faults};
}

function amountFault({name, span, says, hint}: AmountFault, value: Span): TagFault {
  return {
    name: name === 'amount-form' ? 'tag-form' : name,
    span: {start: value.start + span.start, end: value.start + span.end},
    says,
    ...(hint !== undefined && {hint}),
  };
}
