/**
 * Reads one code span as a tag. What can be read is returned, and every part that cannot is a problem with its own
 * span, so that one slip never hides the next.
 */
import {unitOf} from '../quantity/convert.js';
import type {Unit} from '../quantity/model.js';
import {addAll} from '../text/add-all.js';
import {alternatives} from '../text/alternatives.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Span} from '../text/source.js';
import {readValue} from './clause-values.js';
import type {Clause, ClauseValue, Tag} from './model.js';
import {splitClauses, type Written} from './tag-clauses.js';
import {formFault, problemOf, type Read, replacing, shown, type TagFault} from './tag-fault.js';
import {openingOf} from './tag-opening.js';
import {readTargets} from './tag-targets.js';
import {cut, onOneLine, type TagText, tokenize, trimmed} from './tag-tokens.js';
import {type ShapeFault, shapeFaults} from './verb-shapes.js';
import {type ClauseWord, tagSpec, type Verb} from './verbs.js';

/** What was understood of a tag, and what was not. */
export interface TagReading {
  /** Undefined where the code span is no tag, or its verb is none. */
  readonly tag?: Tag;
  readonly problems: readonly Problem[];
  /** It is, or was surely meant as, a tag; a word that is near no verb may be ordinary code. */
  readonly meant: boolean;
}

/**
 * Reads the raw text between the backticks of a code span, line breaks and the indentation after them included, which
 * stands at `offset` of `file`. Ordinary code gives no tag and no problem.
 */
export function readTag(text: string, offset: number, file: string): TagReading {
  const line = onOneLine(text, offset);
  const opening = openingOf(line);
  if (opening.type === 'code') return {problems: [], meant: false};
  if (opening.type === 'unknown') {
    return {problems: [problemOf(opening.fault, file)], meant: opening.near !== undefined};
  }
  const {verb, verbSpan, bodyStart} = opening;
  const parts = splitClauses(line, tokenize(line, bodyStart));
  const targets = readTargets(line, verb, parts.value.targets, verbSpan);
  const clauses = readClauses(line, verb, verbSpan, parts.value.clauses);
  const span = trimmed(line, {start: offset, end: offset + text.length});
  const raw = text.slice(span.start - offset, span.end - offset);
  const faults = [...targets.faults, ...clauses.faults, ...parts.faults];
  if (opening.fault) faults.push(opening.fault);
  faults.sort((one, other) => one.span.start - other.span.start);
  const tag = {span, raw, verb, verbSpan, targets: targets.value, clauses: clauses.value};
  return {tag, problems: faults.map((fault) => problemOf(fault, file)), meant: true};
}

/** A tag's clauses while they are read. */
interface OpenTag {
  readonly line: TagText;
  readonly verb: Verb;
  readonly verbSpan: Span;
  /** Each word once. */
  readonly written: readonly Written[];
}

function readClauses(line: TagText, verb: Verb, verbSpan: Span, all: readonly Written[]): Read<Clause[]> {
  const first = new Map<ClauseWord, Written>();
  const faults: TagFault[] = [];
  for (const clause of all) {
    if (first.has(clause.word)) faults.push(twice(clause));
    else first.set(clause.word, clause);
  }
  const open = {line, verb, verbSpan, written: [...first.values()]};
  const to = first.get('to');
  const toRead = to && valueIn(open, to);
  const inherit = toRead?.value?.type === 'amount' ? unitOf(toRead.value.amount) : undefined;
  const read = open.written.map((clause) => ({
    clause,
    ...(toRead !== undefined && clause === to ? toRead : valueIn(open, clause, inherit)),
  }));
  const bare = toRead?.faults.some(({name}) => name === 'unit-missing') ?? false;
  for (const {clause, faults: own} of read) {
    for (const fault of own) {
      // Passes take the unit of the torque; where that is missing, it is missing once.
      if (bare && clause.word === 'in' && fault.name === 'unit-missing') continue;
      faults.push(fault);
    }
  }
  const wrong = shapeFaults(verb, new Map(read.map(({clause, value}) => [clause.word, value])));
  for (const fault of wrong) addAll(faults, shapeFault(open, fault));
  const value: Clause[] = [];
  for (const {clause, value: found} of read) {
    const {word, span, valueSpan} = clause;
    if (found === undefined || wrong.some((fault) => fault.word === word)) continue;
    value.push({word, span, valueSpan, value: found});
  }
  return {value, faults};
}

/** `inherit` is the unit of the `to` clause, for the passes of a torque. */
function valueIn({line, verb}: OpenTag, clause: Written, inherit?: Unit): Read<ClauseValue | undefined> {
  const spec = tagSpec(verb).clauses[clause.word];
  return spec === undefined ? {value: undefined, faults: []} : readValue(line, clause, spec, inherit);
}

function twice({word, span}: Written): TagFault {
  return formFault(span, `\`${word}\` stands twice in this tag`, {hint: `put it all after one \`${word}\``});
}

function shapeFault(open: OpenTag, {word, fault}: ShapeFault): TagFault[] {
  const {verb, verbSpan, written, line} = open;
  const index = written.findIndex((clause) => clause.word === word);
  const clause = written[index];
  if (fault === 'not-taken') return clause ? [notTaken(open, clause, written[index - 1])] : [];
  const spec = tagSpec(verb).clauses[word];
  const words = spec && 'words' in spec ? (spec.words ?? []) : [];
  const due = alternatives(words.map((one) => `\`${word} ${one}\``));
  const hint = due === '' ? {} : {hint: `write ${due}`};
  if (fault === 'missing') {
    return clause ? [] : [formFault(verbSpan, `\`${verb}\` says nothing without \`${word}\``, hint)];
  }
  if (clause === undefined) return [];
  const value = cut(line, clause.valueSpan);
  // `is over its limits` begins right.
  const [first = ''] = value.split(/\s/);
  const near = words.find((one) => one === first) ?? nearest(value, words);
  const more =
    near === undefined
      ? hint
      : {
          hint: `did you mean \`${word} ${near}\`?`,
          fix: replacing(clause.valueSpan, near, `Write ${word} ${near}`),
        };
  return [formFault(clause.valueSpan, `\`${word}\` takes no ${shown(value)}`, more)];
}

/** Free text before the clause may well go on with a word that only looks like one. */
function notTaken({verb, line}: OpenTag, clause: Written, before: Written | undefined): TagFault {
  const {clauses} = tagSpec(verb);
  const taken = Object.keys(clauses).map((word) => `\`${word}\``);
  const fault = {
    name: 'clause-not-taken',
    span: clause.span,
    says: `\`${verb}\` takes no \`${clause.word}\``,
    hint: taken.length === 0 ? 'it takes no clause' : `it takes ${taken.join(', ')}`,
  } as const;
  if (before === undefined || clauses[before.word]?.type !== 'text') return fault;
  if (/["“”]/.test(cut(line, {start: before.valueSpan.start, end: clause.span.end}))) return fault;
  const ends = [before.valueSpan.start, clause.span.end];
  const edits = ends.map((at) => ({span: {start: at, end: at}, text: '"'}));
  const hint = `${fault.hint}; if \`${clause.word}\` is part of the text, put the text in double quotes`;
  return {...fault, hint, fix: {title: 'Put the text in double quotes', edits}};
}
