/** Which item a command is about: what its words name, weighed by what the text has just dealt with. */
import {tagSpec, type Verb} from '../procedure/verbs.js';
import type {Item, ItemKind} from '../spec/model.js';
import type {Phrase} from './phrases.js';
import {likeness, mentioned, type Vocabulary} from './vocabulary.js';

/** What a command says, and what came before it. */
export interface Said {
  readonly verb: Verb;
  readonly phrases: readonly Phrase[];
  /** Stems of the clause, and of the sentence that it stands in. */
  readonly clause: ReadonlySet<string>;
  readonly sentence: ReadonlySet<string>;
  /** Items that the text dealt with, the latest first. */
  readonly recent: readonly string[];
  /** Those of the step itself. */
  readonly own: readonly string[];
  /** Stems of the title and of the heading above. */
  readonly heading: ReadonlySet<string>;
  /** How well the numbers of the step go with an item: 1 where one is its value, −1 where one is another. */
  readonly fitsNumbers: (item: Item, verb: Verb) => number;
}

export interface Candidate {
  readonly item: Item;
  /** From 0 to 1: how sure it is that the command is about this item. */
  readonly confidence: number;
}

/** What may be meant, the likeliest first; several where a command names several, which `all` says. */
export interface Targets {
  readonly candidates: readonly Candidate[];
  readonly all: boolean;
}

export function targetsOf(said: Said, vocabulary: Vocabulary): Targets {
  const {targets: kinds} = tagSpec(said.verb);
  if (typeof kinds === 'string') return {candidates: [], all: false};
  const items = [...vocabulary.spec.items.values()].filter(
    (item) => kinds.includes(item.kind) && !isGiven(item, said),
  );
  const named = namedItems(items, said, vocabulary);
  if (named.length > 1) return {candidates: named, all: true};
  const ranked = items
    .map((item) => ({item, confidence: scoreOf(item, said, vocabulary)}))
    .filter(({confidence}) => confidence >= LEAST)
    .sort((one, other) => other.confidence - one.confidence);
  return {candidates: doubted(ranked), all: false};
}

/** Below this nothing is worth a person's time. */
const LEAST = 0.3;

/** The block is there from the start. */
function isGiven(item: Item, {verb}: Said): boolean {
  return item.kind === 'part' && item.given && (verb === 'install' || verb === 'remove' || verb === 'renew');
}

/** Each phrase of the object names an item in full: `wipe the journals and the crankpins`. */
function namedItems(items: readonly Item[], {phrases, verb}: Said, vocabulary: Vocabulary): Candidate[] {
  if (tagSpec(verb).single || WHOLE.has(verb)) return [];
  const found = new Map<string, Candidate>();
  for (const {role, words} of phrases) {
    if (role !== 'object') continue;
    const stems = words.map(({stem}) => stem);
    const best = items
      .map((item) => ({item, confidence: likeness(item, stems, vocabulary)}))
      .filter(({confidence}) => confidence >= FULL);
    const [only, second] = best;
    if (only !== undefined && second === undefined) found.set(only.item.id, only);
  }
  return [...found.values()];
}

const FULL = 0.93;

/** Names of these are short sentences: they are looked for in all that is said, not in one phrase. */
const WHOLE: ReadonlySet<Verb> = new Set(['check', 'witness', 'record', 'fill', 'alter']);

/** Where the next one is about as likely, neither is sure. */
function doubted(ranked: readonly Candidate[]): Candidate[] {
  const [best, second] = ranked;
  if (best === undefined) return [];
  if (second === undefined) return [best];
  const margin = best.confidence - second.confidence;
  if (margin < CLOSE)
    return ranked
      .filter(({confidence}) => best.confidence - confidence < CLOSE)
      .slice(0, MOST)
      .map(doubtful);
  return [margin < NEAR ? {...best, confidence: best.confidence - (NEAR - margin)} : best];
}

const CLOSE = 0.04;
const NEAR = 0.12;
/** No more are offered: a person reads them. */
const MOST = 3;

function doubtful({item, confidence}: Candidate): Candidate {
  return {item, confidence: Math.min(confidence, 0.45)};
}

function scoreOf(item: Item, said: Said, vocabulary: Vocabulary): number {
  const base = Math.max(
    phraseScore(item, said, vocabulary),
    wholeScore(item, said, vocabulary),
    strayScore(item, said, vocabulary),
  );
  if (base === 0) return 0;
  const more = contextScore(item, said, vocabulary);
  // What is named in full needs no context.
  return Math.min(1, base + more * (1.2 - base));
}

/** By the phrases: the object first, or what something is put on to, or taken off. */
function phraseScore(item: Item, {phrases, verb}: Said, vocabulary: Vocabulary): number {
  const scores = phrases.map(({role, words}) => {
    const share = role === 'object' ? 1 : role === 'other' ? 0.4 : (INDIRECT.get(verb)?.[role] ?? 0.5);
    const stems = words.map(({stem}) => stem);
    return share * Math.max(likeness(item, stems, vocabulary), viaParts(item, stems, vocabulary));
  });
  return Math.max(0, ...scores);
}

/** Verbs that put something else on their target, or take something off it. */
const INDIRECT: ReadonlyMap<Verb, {readonly [role in Phrase['role']]?: number}> = new Map([
  ['lube', {onto: 0.97, with: 0.2}],
  ['seal', {onto: 0.97, with: 0.2}],
  ['lock', {onto: 0.97, off: 0.5, with: 0.2}],
  ['lay', {onto: 0.97, with: 0.2}],
  ['clean', {off: 0.95, onto: 0.8, with: 0.1}],
  ['torque', {onto: 0.8, with: 0.1}],
  ['measure', {onto: 0.85, with: 0.1}],
  ['install', {onto: 0.3, with: 0.1, off: 0.2}],
  ['remove', {onto: 0.3, off: 0.4, with: 0.1}],
  ['renew', {onto: 0.5, off: 0.3}],
  ['fill', {onto: 0.9, with: 0.9}],
]);

/** A fit, a joint or an alteration is often named by what it is of. */
function viaParts(item: Item, stems: readonly string[], vocabulary: Vocabulary): number {
  if (!VIA.includes(item.kind)) return 0;
  const related = [...(vocabulary.related.get(item.id) ?? [])];
  const scores = related.map((id) => {
    const other = vocabulary.spec.items.get(id);
    return other === undefined ? 0 : likeness(other, stems, vocabulary);
  });
  return 0.6 * Math.max(0, ...scores);
}

const VIA: readonly ItemKind[] = ['fit', 'joint', 'alteration'];

/** By all words of the sentence, for what is named by a sentence. */
function wholeScore(item: Item, {verb, sentence}: Said, vocabulary: Vocabulary): number {
  if (!WHOLE.has(verb) && item.kind !== 'fit') return 0;
  const share = mentioned(item, sentence, vocabulary);
  return share < 0.5 ? share * 0.5 : share * 0.95;
}

/** `them`, or nothing named at all: what the step, or the one before it, dealt with last. */
function strayScore(item: Item, {phrases, own, recent, verb}: Said, vocabulary: Vocabulary): number {
  const knows = phrases.some(({words}) => words.some(({stem}) => vocabulary.weights.has(stem)));
  const [last] = own.length > 0 ? own : recent;
  if (last === undefined || (knows && own.length === 0)) return 0;
  const near = own.includes(item.id) || last === item.id;
  if (near && !knows) return own.length > 0 ? 0.75 : 0.5;
  if (vocabulary.related.get(last)?.has(item.id) && !knows) return FOLLOWS.has(verb) ? 0.55 : 0.4;
  return 0;
}

/** A part that went in is held, a bolt that was tightened is locked. */
const FOLLOWS: ReadonlySet<Verb> = new Set(['torque', 'lock', 'seal', 'loosen']);

function contextScore(item: Item, said: Said, vocabulary: Vocabulary): number {
  const {recent, own, heading, verb} = said;
  const near = vocabulary.related.get(item.id);
  const place = recent.slice(0, REACH).indexOf(item.id);
  const touched = own.includes(item.id) ? 0.25 : place < 0 ? 0 : 0.2 - place * 0.01;
  const linked = recent.slice(0, REACH).findIndex((id) => near?.has(id));
  const beside = linked < 0 ? 0 : 0.25 - linked * 0.01;
  const above = heading.size === 0 ? 0 : 0.2 * mentioned(item, heading, vocabulary);
  return touched + beside + above + 0.45 * said.fitsNumbers(item, verb);
}

/** How many items back something is still in hand. */
const REACH = 8;
