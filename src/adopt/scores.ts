/** How likely it is that a command is about an item: by what its words name, by its numbers, by what came before it. */
import type {Verb} from '../procedure/verbs.js';
import type {Item, ItemKind} from '../spec/model.js';
import type {Phrase, Role} from './phrases.js';
import {isShortFor, likeness, mentioned, type Vocabulary} from './vocabulary.js';

/** What a command says, and what came before it. */
export interface Said {
  readonly verb: Verb;
  readonly phrases: readonly Phrase[];
  /** Stems of the sentence that it stands in. */
  readonly sentence: ReadonlySet<string>;
  /** Items that the text dealt with, the latest first. */
  readonly recent: readonly string[];
  /** Those of the step itself. */
  readonly own: readonly string[];
  /** Stems of the title and of the heading above. */
  readonly heading: ReadonlySet<string>;
  /** How well the numbers and materials of the step go with an item: 1 where they are its own, −1 where another's. */
  readonly agreement: (item: Item, verb: Verb) => number;
}

/** A command and the items that it may be about. */
export interface Field {
  readonly said: Said;
  readonly items: readonly Item[];
  readonly vocabulary: Vocabulary;
}

/** How likely the item is: about 1 for one that is named in full, more with what stands around it. */
export function scoreOf(item: Item, field: Field): number {
  const base = Math.max(...BASES.map((score) => score(item, field)));
  // What is named in full needs little context; what nothing names gets none.
  if (base === 0) return 0;
  const context = contextScore(item, field);
  if (base > IN_FULL) return base + 0.25 + 0.25 * context;
  // What came before tells between things that are named by half, and makes nothing of a bare hint.
  return base + context * (1.2 - base) * Math.min(1, 2 * base);
}

const IN_FULL = 0.92;

const BASES: readonly ((item: Item, field: Field) => number)[] = [
  phraseScore,
  sentenceScore,
  pronounScore,
  doneScore,
  stripScore,
  limitsScore,
];

/** By the phrases: the object first, or what something is put on to, or taken off. */
function phraseScore(item: Item, {said: {phrases, verb}, items, vocabulary}: Field): number {
  const scores = phrases.map(({role, words, of, heads}) => {
    const share = role === 'object' ? 1 : role === 'other' ? 0.4 : (INDIRECT.get(verb)?.[role] ?? 0.5);
    const stems = words.map(({stem}) => stem);
    const ways = [
      byName(item, stems, items, vocabulary),
      viaOthers(item, stems, vocabulary),
      // `bore of the relief valve` names the bore, and says only where it is.
      of === 'whole' && isPartOf(item, stems, heads ?? 0, vocabulary) ? 0.95 : 0,
    ];
    return share * (of === 'head' ? 0.85 : of === 'owner' ? 0.6 : 1) * Math.max(...ways);
  });
  return Math.max(0, ...scores);
}

function isPartOf(item: Item, stems: readonly string[], heads: number, vocabulary: Vocabulary): boolean {
  const owner = new Set(stems.slice(heads));
  return mentioned(item, new Set(stems), vocabulary) === 1 && mentioned(item, owner, vocabulary) < 1;
}

/** Verbs that put something else on their target, or take something off it. */
const INDIRECT: ReadonlyMap<Verb, {readonly [role in Role]?: number}> = new Map([
  ['lube', {onto: 0.97, with: 0.2}],
  ['seal', {onto: 0.97, with: 0.2}],
  ['lock', {onto: 0.97, off: 0.5, with: 0.2}],
  ['stripe', {onto: 0.97, with: 0.2}],
  ['lay', {onto: 0.97, with: 0.2}],
  ['clean', {off: 0.95, onto: 0.8, with: 0.1}],
  ['torque', {onto: 0.8, with: 0.1}],
  ['measure', {onto: 0.85, with: 0.1}],
  ['install', {onto: 0.3, with: 0.1, off: 0.2}],
  ['remove', {onto: 0.3, off: 0.4, with: 0.1}],
  ['renew', {onto: 0.5, off: 0.3}],
  ['fill', {onto: 0.9, with: 0.9}],
  ['drain', {off: 0.5, with: 0.9}],
]);

/** `the caps` is one item where no other has that in its name; where several have, the shorter name says nothing. */
function byName(
  item: Item,
  stems: readonly string[],
  items: readonly Item[],
  vocabulary: Vocabulary,
): number {
  const like = likeness(item, stems, vocabulary);
  if (!isShortFor(item, stems, vocabulary)) return like;
  if (like > IN_FULL) return like;
  const others = items.filter((one) => one !== item && isShortFor(one, stems, vocabulary));
  return others.length === 0 ? Math.max(like, 0.88) : others.length === 1 ? 0.5 : 0.45;
}

/** A fit, a joint or a system is often named by what it is of. */
function viaOthers(item: Item, stems: readonly string[], vocabulary: Vocabulary): number {
  if (!VIA.includes(item.kind)) return 0;
  const related = [...(vocabulary.related.get(item.id) ?? [])];
  const scores = related.map((id) => {
    const other = vocabulary.spec.items.get(id);
    if (other === undefined) return 0;
    return Math.max(likeness(other, stems, vocabulary), isShortFor(other, stems, vocabulary) ? 0.75 : 0);
  });
  return 0.75 * Math.max(0, ...scores);
}

const VIA: readonly ItemKind[] = ['fit', 'joint', 'system'];

/** Names of what these verbs take are short sentences: they are looked for in all that is said, not in one phrase. */
export const NAMED_BY_SENTENCE: ReadonlySet<Verb> = new Set([
  'check',
  'witness',
  'record',
  'fill',
  'drain',
  'alter',
]);

function sentenceScore(item: Item, {said: {verb, sentence}, vocabulary}: Field): number {
  if (!NAMED_BY_SENTENCE.has(verb) && item.kind !== 'fit') return 0;
  const alterations =
    verb === 'alter' && item.kind === 'part'
      ? [...vocabulary.spec.items.values()].filter(
          (one) => one.kind === 'alteration' && one.of.some(({value}) => value === item.id),
        )
      : [];
  const share = Math.max(...[item, ...alterations].map((one) => mentioned(one, sentence, vocabulary)));
  return share < 0.5 ? share * 0.5 : share * 0.95;
}

/** `them`, or nothing named at all: what the step, or the one before it, dealt with last. */
function pronounScore(item: Item, {said: {phrases, own, recent, verb}, items, vocabulary}: Field): number {
  const knows = phrases.some(({role, words}) =>
    words.some(({stem}) => role !== 'with' && items.some((one) => isShortFor(one, [stem], vocabulary))),
  );
  // From one step to the next only what holds or closes the same thing is taken for granted.
  if (knows || isStranger(phrases, vocabulary) || (own.length === 0 && !FOLLOWS.has(verb))) return 0;
  const near = own.length > 0 ? own : recent.slice(0, 3);
  const last = near.find((id) => items.some((one) => one.id === id));
  if (last === item.id) return own.length > 0 ? 0.75 : 0.5;
  const follows = near.some((id) => vocabulary.related.get(id)?.has(item.id));
  return follows ? (FOLLOWS.has(verb) ? 0.5 : 0.35) : 0;
}

/** Something is named that the specification does not know: it is no word for what came before. */
function isStranger(phrases: readonly Phrase[], {weights}: Vocabulary): boolean {
  return phrases.some(
    ({role, named, words}) =>
      role === 'object' && named && words.every(({stem}) => !weights.has(stem) && !OF_ANYTHING.has(stem)),
  );
}

/** Words for a part of what is in hand, or for what goes on it. */
export const OF_ANYTHING: ReadonlySet<string> = new Set(
  `bead ring drop film coat layer thread end leg ear tab pin nut bolt screw stud head face edge rim lip seat side
  strip wire piece lot whole rest set pair reading`.split(/\s+/),
);

/** A part that went in is held, a bolt that was tightened is locked. */
const FOLLOWS: ReadonlySet<Verb> = new Set(['torque', 'lock', 'stripe', 'seal', 'loosen']);

/** A hold point is due when the text has dealt with what it asks for, and has not been signed. */
function doneScore(item: Item, {said: {verb, recent, sentence}, vocabulary}: Field): number {
  if (verb !== 'witness' || item.kind !== 'hold-point' || recent.includes(item.id)) return 0;
  const done = item.asks.filter(({value}) => recent.includes(value)).length / Math.max(1, item.asks.length);
  return Math.min(0.9, (done === 0 ? 0.2 : 0.4 + 0.4 * done) + 0.4 * mentioned(item, sentence, vocabulary));
}

/** `Read the strips`: those that were laid last. */
function stripScore(item: Item, {said: {verb, phrases, recent}}: Field): number {
  if (verb !== 'measure' || item.kind !== 'fit' || item.by !== 'strip' || !recent.includes(item.id)) return 0;
  return phrases.some(({words}) => words.some(({stem}) => stem === 'strip' || stem === 'measuring'))
    ? 0.8
    : 0;
}

/** The limits that a text states are as good as a name, where they are those of one fit or check alone. */
function limitsScore(item: Item, {said: {verb, agreement}}: Field): number {
  return (verb === 'measure' || verb === 'check') && agreement(item, verb) === 1 ? 0.5 : 0;
}

function contextScore(item: Item, {said, vocabulary}: Field): number {
  const {recent, own, heading, verb, agreement} = said;
  const near = vocabulary.related.get(item.id);
  const place = recent.slice(0, REACH).indexOf(item.id);
  const touched = own.includes(item.id) ? 0.25 : place < 0 || verb === 'torque' ? 0 : 0.2 - place * 0.02;
  const linked = recent.slice(0, REACH).findIndex((id) => near?.has(id));
  const beside = linked < 0 ? 0 : (verb === 'torque' ? 0.4 : 0.3) - linked * 0.03;
  const above = heading.size === 0 ? 0 : 0.3 * mentioned(item, heading, vocabulary);
  // Surfaces are what is cleaned and lubed; a part stands for them only where none is named.
  const surface = item.kind === 'surface' && (verb === 'clean' || verb === 'lube') ? 0.1 : 0;
  return touched + beside + above + surface + 0.45 * agreement(item, verb);
}

/** How many items back something is still in hand. */
const REACH = 8;
