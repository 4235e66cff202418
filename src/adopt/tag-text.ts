/** The text of a tag: its targets with their places, and the clauses that the prose has words for. */
import type {Verb} from '../procedure/verbs.js';
import type {Item, Specification} from '../spec/model.js';
import type {Heard} from './heard.js';
import {materialOf, toolOf} from './material.js';
import type {Phrase} from './phrases.js';
import {valueClauses} from './values.js';
import {mentioned, type Vocabulary} from './vocabulary.js';
import {wordsOf} from './words.js';

/** Without backticks, in the canonical order of clauses; the first of the items says what the numbers are of. */
export function tagText(verb: Verb, items: readonly Item[], heard: Heard, vocabulary: Vocabulary): string {
  const [first] = items;
  const names = items.map((item) => item.id + placesIn(item, heard.phrases));
  const clauses = first === undefined ? '' : clausesOf(verb, first, heard, vocabulary);
  return `${verb}: ${names.join(', ')}${clauses}`;
}

/** What is cleaned or lubed of a part with one surface is that surface. */
export function workedItem(verb: Verb, item: Item, spec: Specification): Item {
  if (item.kind !== 'part' || (verb !== 'clean' && verb !== 'lube')) return item;
  const [surface, second] = [...spec.items.values()].filter(
    (one) => one.kind === 'surface' && one.on?.value === item.id,
  );
  return surface === undefined || second !== undefined ? item : surface;
}

function clausesOf(
  verb: Verb,
  item: Item,
  {phrases, withWord, stretch, sentence, text}: Heard,
  vocabulary: Vocabulary,
): string {
  if (verb === 'alter') return alterationClause(item, sentence, vocabulary);
  // `Lube it with engine oil` names the oil; `oil it` has nothing but the word.
  const material =
    materialOf(verb, item, phrases, vocabulary) ?? materialOf(verb, item, withWord, vocabulary);
  const tool = toolOf(phrases, vocabulary);
  const defects = verb === 'inspect' ? /\bfor\s+(.+)$/s.exec(text)?.[1] : undefined;
  return [
    material && verb !== 'install' ? ` with ${material.id}` : '',
    valueClauses(verb, item, stretch),
    tool && TOOLED.has(verb) ? ` using ${tool.id}` : '',
    defects === undefined ? '' : ` for ${quotedWhereNeeded(defects.replace(/\s+/g, ' ').trim())}`,
  ].join('');
}

/** Verbs that take a tool and whose tool the prose names. */
const TOOLED: ReadonlySet<Verb> = new Set([
  'clean',
  'inspect',
  'measure',
  'lube',
  'seal',
  'install',
  'remove',
  'torque',
  'loosen',
  'check',
  'turn',
]);

/** `[front]` where a phrase names some of the item's places and not all. */
function placesIn(item: Item, phrases: readonly Phrase[]): string {
  const said = new Set(phrases.flatMap(({words}) => words.map(({text}) => text)));
  const own = new Set(wordsOf(`${item.name} ${item.id.replaceAll('-', ' ')}`).map(({text}) => text));
  const named = item.at.filter((place) => said.has(place) && !own.has(place));
  return named.length === 0 || named.length === item.at.length ? '' : `[${named.join(', ')}]`;
}

function alterationClause(part: Item, sentence: ReadonlySet<string>, vocabulary: Vocabulary): string {
  const ranked = [...vocabulary.spec.items.values()]
    .filter((one) => one.kind === 'alteration' && one.of.some(({value}) => value === part.id))
    .map((one) => ({id: one.id, share: mentioned(one, sentence, vocabulary)}))
    .sort((one, other) => other.share - one.share);
  const [best] = ranked;
  return best === undefined || best.share === 0 ? '' : ` by ${best.id}`;
}

function quotedWhereNeeded(text: string): string {
  return /\b(?:with|using|to|in|within|for|turn|by|is|because)\b/.test(text) && !text.includes('"')
    ? `"${text}"`
    : text;
}
