/** What the items of a specification are called, and how well some words name one of them. */
import type {Item, Specification} from '../spec/model.js';
import {wordsOf} from './words.js';

export interface Vocabulary {
  readonly spec: Specification;
  /** Stems of an item's name and of its id. */
  readonly names: ReadonlyMap<string, readonly (readonly string[])[]>;
  /** How much a stem tells: the rarer among the items, the more. */
  readonly weights: ReadonlyMap<string, number>;
  /** Items that one of them names: the part that a bolt holds, the surfaces of a fit, and the other way round. */
  readonly related: ReadonlyMap<string, ReadonlySet<string>>;
}

export function vocabularyOf(spec: Specification): Vocabulary {
  const items = [...spec.items.values()];
  const names = new Map(items.map((item) => [item.id, namesOf(item)]));
  const counts = new Map<string, number>();
  for (const forms of names.values())
    for (const stem of new Set(forms.flat())) counts.set(stem, (counts.get(stem) ?? 0) + 1);
  const weights = new Map(
    [...counts].map(([stem, count]) => [stem, 0.5 + Math.log((items.length + 1) / count)] as const),
  );
  return {spec, names, weights, related: relationsOf(items)};
}

/** `shaft` for the crankshaft: a word that no item has, and that ends the word of one of them alone. */
export function completed(stem: string, near: ReadonlySet<string>, {weights}: Vocabulary): string {
  if (stem.length < 3 || weights.has(stem)) return stem;
  const longer = [...weights.keys()].filter((one) => one.endsWith(stem));
  const [only, second] = longer;
  if (only !== undefined && second === undefined) return only;
  const [nearest, other] = longer.filter((one) => near.has(one));
  return nearest !== undefined && other === undefined ? nearest : stem;
}

/** Words of a name that tell nothing. */
const EMPTY: ReadonlySet<string> = new Set(
  'the a an of its their his with for to in on and all by , is be through up down out off over at no'.split(
    ' ',
  ),
);

function namesOf(item: Item): string[][] {
  const does = item.kind === 'alteration' && item.does !== undefined ? [item.does] : [];
  const forms = [item.name, item.id.replaceAll('-', ' '), ...does].map((text) =>
    wordsOf(text)
      .map(({stem}) => stem)
      .filter((stem) => !EMPTY.has(stem)),
  );
  const seen = new Set<string>();
  return forms.filter((form) => {
    const key = form.join(' ');
    return form.length > 0 && !seen.has(key) && seen.add(key);
  });
}

/** From 0 to 1: how well the words of a phrase name the item, and nothing but it. */
export function likeness(item: Item, stems: readonly string[], {names, weights}: Vocabulary): number {
  const said = new Set(stems.filter((stem) => weights.has(stem)));
  if (said.size === 0) return 0;
  const forms = names.get(item.id) ?? [];
  return Math.max(0, ...forms.map((form) => formLikeness(form, said, weights)));
}

/** Whether the words hold the last word of one of the item's names: a reamer, and not only a hand. */
export function namesHead(item: Item, stems: readonly string[], {names}: Vocabulary): boolean {
  return (names.get(item.id) ?? []).some((form) => stems.includes(form.at(-1) ?? ''));
}

function formLikeness(
  form: readonly string[],
  said: ReadonlySet<string>,
  weights: ReadonlyMap<string, number>,
): number {
  const weigh = (stems: Iterable<string>) =>
    [...stems].reduce((sum, stem) => sum + (weights.get(stem) ?? 0), 0);
  const shared = weigh(new Set(form.filter((stem) => said.has(stem))));
  if (shared === 0) return 0;
  const covered = shared / weigh(new Set(form));
  const meant = shared / weigh(said);
  // `main caps` may be short for the bolts of them, but is first of all the caps.
  const head = said.has(form.at(-1) ?? '') ? 1 : 0.7;
  return head * ((2 * covered * meant) / (covered + meant));
}

/** Whether everything in the words that is anybody's name is in the item's: `caps` for the main caps. */
export function isShortFor(item: Item, stems: readonly string[], {names, weights}: Vocabulary): boolean {
  const said = stems.filter((stem) => weights.has(stem));
  return (
    said.length > 0 && (names.get(item.id) ?? []).some((form) => said.every((stem) => form.includes(stem)))
  );
}

/** From 0 to 1: how much of the item's name stands among the words, in whatever order. */
export function mentioned(item: Item, stems: ReadonlySet<string>, {names, weights}: Vocabulary): number {
  const forms = names.get(item.id) ?? [];
  const weigh = (some: readonly string[]) => some.reduce((sum, stem) => sum + (weights.get(stem) ?? 0), 0);
  return Math.max(0, ...forms.map((form) => weigh(form.filter((stem) => stems.has(stem))) / weigh(form)));
}

function relationsOf(items: readonly Item[]): Map<string, Set<string>> {
  const related = new Map<string, Set<string>>();
  const add = (one: string, other: string) => {
    for (const [from, to] of [
      [one, other],
      [other, one],
    ] as const)
      related.set(from, (related.get(from) ?? new Set()).add(to));
  };
  for (const item of items) for (const other of namedBy(item)) add(item.id, other);
  return related;
}

function namedBy(item: Item): string[] {
  const values = (list: readonly {readonly value: string}[]) => list.map(({value}) => value);
  switch (item.kind) {
    case 'part':
      return values(item.closes);
    case 'surface':
      return item.on === undefined ? [] : [item.on.value];
    case 'joint':
      return values(item.between);
    case 'fastener':
      return values(item.holds);
    case 'fit':
      return values(item.between);
    case 'hold-point':
      return values(item.asks);
    case 'system':
      return values(item.closedBy);
    case 'alteration':
      return values(item.of);
    default:
      return [];
  }
}
