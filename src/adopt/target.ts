/** Which item a command is about: the likeliest, or several where the text names several or leaves it open. */
import {tagSpec, type Verb} from '../procedure/verbs.js';
import type {Item} from '../spec/model.js';
import {type Field, NAMED_BY_SENTENCE, type Said, scoreOf} from './scores.js';
import {isShortFor, type Vocabulary} from './vocabulary.js';

export interface Candidate {
  readonly item: Item;
  /** From 0 to 1: how sure it is that the command is about this item. */
  readonly confidence: number;
}

/** What may be meant, the likeliest first; `all` says that every one of them is. */
export interface Targets {
  readonly candidates: readonly Candidate[];
  readonly all: boolean;
}

export function targetsOf(said: Said, vocabulary: Vocabulary): Targets {
  const {targets: kinds} = tagSpec(said.verb);
  if (typeof kinds === 'string') return {candidates: [], all: false};
  const items = [...vocabulary.spec.items.values()].filter(
    (item) => kinds.includes(item.kind) && isPossible(item, said.verb),
  );
  const field = {said, items, vocabulary};
  const named = namedItems(field);
  if (named.length > 1) return {candidates: named.map(sure), all: true};
  const ranked = rankedIn(field).filter(({confidence}) => confidence >= LEAST);
  const alike = allAlike(ranked, field);
  const candidates = alike.length > 1 ? alike : doubted(ranked).map(sure);
  return {candidates, all: alike.length > 1};
}

/** Scores go past 1 so that they can be told apart; nothing is surer than sure. */
function sure({item, confidence}: Candidate): Candidate {
  return {item, confidence: Math.min(1, confidence)};
}

/** Below this nothing is worth a person's time. */
const LEAST = 0.3;

/** The block is there from the start, a strip is laid only where one is read, and what cures is in a joint. */
function isPossible(item: Item, verb: Verb): boolean {
  if (item.kind === 'part' && item.given) return verb !== 'install' && verb !== 'remove' && verb !== 'renew';
  if (verb === 'cure') return item.kind === 'joint';
  return verb !== 'lay' || item.kind !== 'fit' || item.by === 'strip';
}

function rankedIn(field: Field): Candidate[] {
  return field.items
    .map((item) => ({item, confidence: scoreOf(item, field)}))
    .sort((one, other) => other.confidence - one.confidence);
}

/** Each phrase of the object names an item of its own: `wipe the journals and the crankpins`. */
function namedItems(field: Field): Candidate[] {
  const {said} = field;
  if (tagSpec(said.verb).single || NAMED_BY_SENTENCE.has(said.verb)) return [];
  const found = new Map<string, Candidate>();
  for (const phrase of said.phrases.filter(
    ({role, of}) => role === 'object' && (of ?? 'whole') === 'whole',
  )) {
    const alone = {...field, said: {...said, phrases: [phrase], own: []}};
    const ranked = rankedIn(alone).filter(({confidence}) => confidence >= LEAST);
    const [first, second] = ranked;
    if (first === undefined) continue;
    const alike = allAlike(ranked, alone);
    for (const one of alike) found.set(one.item.id, one);
    const clear = first.confidence - (second?.confidence ?? 0) >= NEAR;
    if (alike.length === 0 && clear && first.confidence >= NAMED) found.set(first.item.id, first);
  }
  return [...found.values()];
}

const NAMED = 0.7;

/** `the shells`, where upper and lower ones are in hand, are all of them. */
function allAlike(ranked: readonly Candidate[], {said, vocabulary}: Field): Candidate[] {
  const [best] = ranked;
  if (best === undefined || NAMED_BY_SENTENCE.has(said.verb) || tagSpec(said.verb).single) return [];
  const many = said.phrases
    .filter(({role, words}) => role === 'object' && words.some(({text}) => /[^s]s$/.test(text)))
    .map(({words}) => words.map(({stem}) => stem));
  const alike = ranked.filter(({confidence}) => best.confidence - confidence < BESIDE);
  const next = ranked[alike.length];
  const apart = best.confidence - (next?.confidence ?? 0) >= 2 * BESIDE;
  const fasteners = alike.some(({item}) => item.kind === 'fastener');
  const short =
    !fasteners && many.some((stems) => alike.every(({item}) => isShortFor(item, stems, vocabulary)));
  if (alike.length < 2 || alike.length > MOST || !apart || !short || best.confidence < ALIKE) return [];
  return alike.map(({item}) => ({item, confidence: 0.72}));
}

const ALIKE = 0.5;
/** The one of them that was in hand later is a little likelier. */
const BESIDE = 0.1;

/** Where the next one is about as likely, neither is sure. */
function doubted(ranked: readonly Candidate[]): Candidate[] {
  const [best, second] = ranked;
  if (best === undefined) return [];
  if (second === undefined) return [best];
  const margin = best.confidence - second.confidence;
  if (margin < CLOSE) {
    return ranked
      .filter(({confidence}) => best.confidence - confidence < CLOSE)
      .slice(0, MOST)
      .map(doubtful);
  }
  return [margin < NEAR ? {...best, confidence: best.confidence - (NEAR - margin)} : best];
}

const CLOSE = 0.04;
const NEAR = 0.12;
/** No more are offered: a person reads them. */
const MOST = 3;

function doubtful({item, confidence}: Candidate): Candidate {
  return {item, confidence: Math.min(confidence, 0.45)};
}
