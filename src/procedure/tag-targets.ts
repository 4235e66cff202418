/** Reads the targets of a tag: names apart by commas, each with its places in brackets. */
import {KIND_SAYS} from '../spec/sections.js';
import {addAll} from '../text/add-all.js';
import {alternatives} from '../text/alternatives.js';
import {nearest} from '../text/nearest.js';
import type {Span} from '../text/source.js';
import type {Target} from './model.js';
import {squareBrackets} from './round-brackets.js';
import {formFault, type Read, replacing, shown, type TagFault} from './tag-fault.js';
import {cut, folded, spanOver, type TagText, type Token} from './tag-tokens.js';
import {CLAUSE_WORDS, tagSpec, type Verb} from './verbs.js';

/** A name from engine.yaml or shop.yaml, of a step, a finding or a hazard: small letters, figures, single hyphens. */
export function isId(text: string): boolean {
  return /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(text) && /[a-z]/.test(text);
}

/** The fault of a word that should be an id, with the id that it would be in small letters and hyphens. */
export function idFault(span: Span, text: string): TagFault {
  const near = text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  const says = `${shown(text)} is not a name in small letters, figures and hyphens`;
  if (!isId(near)) return formFault(span, says);
  return formFault(span, says, {hint: `write ${near}`, fix: replacing(span, near, `Write ${near}`)});
}

/** What the tokens between colon and first clause say; a target that cannot be read is left out. */
export function readTargets(tag: TagText, verb: Verb, tokens: readonly Token[], at: Span): Read<Target[]> {
  const faults: TagFault[] = [];
  const targets: Target[] = [];
  if (tokens.length === 0) {
    return {value: targets, faults: [formFault(at, `\`${verb}\` names no target`, {hint: hintFor(verb)})]};
  }
  const square = typeof tagSpec(verb).targets === 'string' ? undefined : squareBrackets(tag, tokens);
  addAll(faults, square?.faults ?? []);
  for (const {tokens: entry, at: gap} of entries(square?.value ?? tokens)) {
    const read = entry.length === 0 ? missing(gap) : readTarget(tag, verb, entry);
    addAll(faults, read.faults);
    if (read.value !== undefined) targets.push(read.value);
  }
  const [first, ...more] = targets;
  if (first === undefined || !tagSpec(verb).single) return {value: targets, faults};
  for (const {span, id} of more) {
    faults.push(formFault(span, `\`${verb}\` takes one target, and ${id} is a further one`, oneEach));
  }
  return {value: [first], faults};
}

const oneEach = {hint: 'write a tag for each'};

/** Comma-separated entries; commas in brackets do not count. An entry without tokens is at its comma. */
export function entries(tokens: readonly Token[]): {readonly tokens: readonly Token[]; readonly at: Span}[] {
  const result: {tokens: Token[]; at: Span}[] = [];
  let entry: Token[] = [];
  let inside = false;
  for (const token of tokens) {
    if (token.type === 'open') inside = true;
    if (token.type === 'close') inside = false;
    if (token.type === 'comma' && !inside) {
      result.push({tokens: entry, at: token.span});
      entry = [];
    } else entry.push(token);
  }
  const last = tokens.at(-1);
  if (last) result.push({tokens: entry, at: last.span});
  return result;
}

function missing(at: Span): Read<undefined> {
  return {value: undefined, faults: [formFault(at, 'a name is missing beside this comma')]};
}

function readTarget(tag: TagText, verb: Verb, entry: readonly Token[]): Read<Target | undefined> {
  const [name, ...rest] = entry;
  if (name?.type !== 'word' || !isId(name.text)) {
    const span =
      name?.type === 'word' ? name.span : (spanOver(entry) ?? {start: tag.offset, end: tag.offset});
    const fault = name?.type === 'word' ? idFault(span, name.text) : formFault(span, 'a name is due here');
    return {value: undefined, faults: [verb === 'repeat' ? {...fault, hint: hintFor(verb)} : fault]};
  }
  const open = rest.findIndex(({type}) => type === 'open');
  const before = open < 0 ? rest : rest.slice(0, open);
  const places = open < 0 ? undefined : readPlaces(tag, rest.slice(open));
  const faults = [...strayFaults(tag, before), ...(places?.faults ?? [])];
  if (places === undefined) return {value: {id: name.text, span: name.span, places: []}, faults};
  if (typeof tagSpec(verb).targets === 'string') {
    const span = spanOver(rest.slice(open)) ?? name.span;
    faults.push(formFault(span, `the target of \`${verb}\` has no places`, {hint: 'take the brackets out'}));
    return {value: {id: name.text, span: name.span, places: []}, faults};
  }
  // Without any place the tag would speak for all of them, which is not what it says.
  const value = places.value.length > 0 ? {id: name.text, span: name.span, places: places.value} : undefined;
  return {value, faults};
}

function readPlaces(tag: TagText, tokens: readonly Token[]): Read<Target['places'][number][]> {
  const [open, ...after] = tokens;
  const close = after.findIndex(({type}) => type === 'close');
  const inside = close < 0 ? after : after.slice(0, close);
  const faults: TagFault[] = [];
  const span = spanOver(tokens) ?? {start: tag.offset, end: tag.offset};
  if (close < 0)
    faults.push(formFault(open?.span ?? span, 'this bracket is never closed', {hint: 'close it with ]'}));
  else addAll(faults, strayFaults(tag, after.slice(close + 1)));
  if (inside.length === 0) faults.push(formFault(span, 'no place stands in these brackets'));
  const value = [];
  for (const {tokens: entry, at} of entries(inside)) {
    const over = spanOver(entry);
    if (over === undefined) faults.push(formFault(at, 'a place is missing beside this comma'));
    else if (entry.some(({type}) => type === 'open'))
      faults.push(formFault(over, 'brackets stand in brackets'));
    else value.push({name: folded(tag, over), span: over});
  }
  return {value, faults};
}

/** Words that stand where a comma or a clause is due. */
function strayFaults(tag: TagText, stray: readonly Token[]): TagFault[] {
  const [first] = stray;
  const span = spanOver(stray);
  if (first === undefined || span === undefined) return [];
  const near = first.type === 'word' ? nearest(first.text.toLowerCase(), CLAUSE_WORDS) : undefined;
  if (near !== undefined && stray.length > 1) {
    const hint = `did you mean ${near}?`;
    const fix = replacing(first.span, near, `Write ${near}`);
    return [formFault(first.span, `${shown(first.text)} opens no clause`, {hint, fix})];
  }
  const hint = 'put a comma between two names, and a hyphen within one';
  return [formFault(span, `${shown(cut(tag, span))} stands where a comma or a clause is due`, {hint})];
}

function hintFor(verb: Verb): string {
  const {targets} = tagSpec(verb);
  if (targets === 'step-id') return 'name the step with a `step:` tag and write that name';
  if (targets === 'new-id') return 'give the step a name such as `step: grind-and-try`';
  if (targets === 'option') return 'write an option of engine.yaml, such as `only: raw-water-cooling`';
  if (targets === 'finding') return 'write the name of the finding that is waived';
  if (targets === 'hazard-word') return 'write the hazard, such as `hazard: eyes, hot-metal`';
  return `write the id of ${alternatives(targets.map((kind) => KIND_SAYS[kind]))} after the colon`;
}
