/** The materials and tools that a command names, and whether an item goes together with them. */
import {lockKindOf} from '../build/locks.js';
import type {Verb} from '../procedure/verbs.js';
import {locksOf} from '../spec/locks.js';
import type {Consumable, ConsumableUse, Fastener, Item, LockKind, Tool} from '../spec/model.js';
import type {Phrase} from './phrases.js';
import {likeness, namesHead, type Vocabulary} from './vocabulary.js';

/** What a verb is done with. */
const USES: {readonly [verb in Verb]?: readonly ConsumableUse[]} = {
  clean: ['cleaner'],
  inspect: ['other'],
  lube: ['lubricant'],
  seal: ['sealant', 'gasket'],
  lock: ['lock'],
  stripe: ['other'],
  lay: ['strip'],
  measure: ['strip'],
  fill: ['fluid', 'lubricant'],
};

/** The consumable that the phrases name, of a use that the verb has; undefined where it is not one alone. */
export function materialOf(
  verb: Verb,
  item: Item | undefined,
  phrases: readonly Phrase[],
  vocabulary: Vocabulary,
): Consumable | undefined {
  const uses = USES[verb] ?? [];
  const due = item === undefined ? [] : asked(verb, item);
  const all = [...vocabulary.spec.items.values()].filter(
    (one): one is Consumable => one.kind === 'consumable' && uses.includes(one.use),
  );
  return bestOf(all, phrases, vocabulary, (one) => (due.includes(one.id) ? 0.3 : 0));
}

/** The phrases without those that name what the verb is done with: `grease` is no part of the camshaft. */
export function withoutMaterials(
  verb: Verb,
  phrases: readonly Phrase[],
  vocabulary: Vocabulary,
): readonly Phrase[] {
  const uses = USES[verb] ?? [];
  const all = [...vocabulary.spec.items.values()].filter(
    (one) => one.kind === 'consumable' && uses.includes(one.use),
  );
  const rest = phrases.filter(({words}) => {
    const best = Math.max(0, ...all.map((one) => likeness(one, stemsOf(words), vocabulary)));
    return best < NAMED;
  });
  return rest.length > 0 ? rest : phrases;
}

const NAMED = 0.75;

/** The tool after `with` or `using`. */
export function toolOf(phrases: readonly Phrase[], vocabulary: Vocabulary): Tool | undefined {
  const tools = [...vocabulary.spec.items.values()].filter((one): one is Tool => one.kind === 'tool');
  const named = phrases.filter(({role}) => role === 'with' || role === 'onto');
  const meant = tools.filter((tool) => named.some(({words}) => namesHead(tool, stemsOf(words), vocabulary)));
  return bestOf(meant, named, vocabulary, () => 0);
}

function bestOf<T extends Item>(
  all: readonly T[],
  phrases: readonly Phrase[],
  vocabulary: Vocabulary,
  bonus: (one: T) => number,
): T | undefined {
  const ranked = all
    .map((one) => {
      const like = Math.max(0, ...phrases.map(({words}) => likeness(one, stemsOf(words), vocabulary)));
      return {one, like, score: like + bonus(one)};
    })
    .filter(({like}) => like >= LEAST)
    .sort((one, other) => other.score - one.score);
  const [best, second] = ranked;
  return best !== undefined && best.score - (second?.score ?? 0) > CLOSE ? best.one : undefined;
}

const LEAST = 0.45;
const CLOSE = 0.05;

function stemsOf(words: Phrase['words']): string[] {
  return words.map(({stem}) => stem);
}

/** What the specification asks for with this item. */
function asked(verb: Verb, item: Item): readonly string[] {
  if (item.kind === 'surface' && verb === 'lube') return item.lubricants.map(({value}) => value);
  if (item.kind === 'fastener' && verb === 'lube') return listed(item.threads?.value);
  if (item.kind === 'joint') return listed(item.seal?.value);
  if (item.kind === 'fastener' && verb === 'lock') return listed(item.lock?.value);
  if (item.kind === 'system') return item.with.map(({value}) => value);
  return item.kind === 'fit' ? item.using.map(({value}) => value) : [];
}

function listed(value: string | readonly string[] | undefined): readonly string[] {
  return value === undefined ? [] : typeof value === 'string' ? [value] : value;
}

/** 1 where the words name what the item asks for, −1 where they name another, 0 where either says nothing. */
export function materialAgreement(
  verb: Verb,
  item: Item,
  phrases: readonly Phrase[],
  stems: ReadonlySet<string>,
  vocabulary: Vocabulary,
): number {
  if (verb === 'lock' && item.kind === 'fastener') return lockAgreement(item, stems, vocabulary);
  const due = asked(verb, item);
  if (due.length === 0) return 0;
  const named = materialOf(verb, item, phrases, vocabulary);
  if (named === undefined) return 0;
  return due.includes(named.id) ? 0.5 : -0.5;
}

function lockAgreement(fastener: Fastener, stems: ReadonlySet<string>, {spec}: Vocabulary): number {
  if (fastener.lock === undefined) return 0;
  const kinds = locksOf(fastener).map((lock) => lockKindOf(spec, lock));
  if (kinds.length === 0) return fastener.lock.value === 'none' ? -1 : 0;
  const said = [...stems].map((stem) => LOCK_WORDS.get(stem)).filter((one) => one !== undefined);
  return said.length === 0 ? 0 : said.some((one) => kinds.includes(one)) ? 0.6 : -1;
}

const LOCK_WORDS: ReadonlyMap<string, LockKind> = new Map<string, LockKind>([
  ['wire', 'safety-wire'],
  ['cotter', 'cotter-pin'],
  ['tab', 'tab-washer'],
  ['threadlocker', 'threadlocker'],
  ['stake', 'staking'],
  ['peen', 'staking'],
]);
