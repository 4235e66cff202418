/** Reads what a book says of itself: shop, engine, sources, and the procedures in build order. */
import type {Problem} from '../text/problem.js';
import type {Where} from '../text/source.js';
import {defined} from './defined.js';
import {wordsIn} from './fields.js';
import type {BookFile} from './file.js';
import {mergedSection, type Owned} from './merge.js';
import {
  type Engine,
  LANGUAGE_TAGS,
  type Located,
  PAPERS,
  SEVERITIES,
  type Severity,
  type Shop,
  type SourceNote,
  SYSTEMS,
} from './model.js';
import {type Entry, entryOf, type Node, textOf} from './tree.js';

/** The shop; without shop.yaml, one without a name. */
export function shopOf(file: BookFile | undefined, otherwise: Where): Shop {
  const shop = file && entryOf(file.tree, 'shop')?.value;
  const said = (key: string) => textOf(entryOf(shop, key)?.value);
  const severity = file && entryOf(file.tree, 'severity')?.value;
  return {
    name: said('name') ?? '',
    paper: oneOf(PAPERS, said('paper')),
    units: oneOf(SYSTEMS, said('units')),
    language: oneOf(LANGUAGE_TAGS, said('language')),
    severity: new Map(severity?.type === 'map' ? severity.entries.flatMap(severityOf) : []),
    where: shop?.where ?? otherwise,
  };
}

/** The word that was written, where it is one of these; else the first of them. The shape has said what is amiss. */
function oneOf<const W extends string>(words: readonly [W, ...W[]], said: string | undefined): W {
  return words.find((word) => word === said) ?? words[0];
}

/** Each by the name of a finding, and where that name stands. */
function severityOf({key, keyWhere, value}: Entry): [string, Located<Severity>][] {
  const said = textOf(value);
  const severity = SEVERITIES.find((one) => one === said);
  return severity === undefined ? [] : [[key, {value: severity, where: keyWhere}]];
}

/** The engine of the nearest file that names one. */
export function engineOf(chain: readonly BookFile[], otherwise: Where): Engine {
  const node = chain
    .map((file) => entryOf(file.tree, 'engine')?.value)
    .find((value) => value?.type === 'map');
  const id = entryOf(node, 'id')?.value;
  return {
    id: textOf(id) ?? '',
    name: textOf(entryOf(node, 'name')?.value) ?? textOf(id)?.replaceAll('-', ' ') ?? '',
    ...defined({note: textOf(entryOf(node, 'note')?.value)}),
    where: id?.where ?? node?.where ?? otherwise,
  };
}

/** The procedures of the nearest file that lists any: a list goes as a whole, since its order is what it says. */
export function buildOf(chain: readonly BookFile[]): readonly Located<string>[] {
  const list = chain.map((file) => entryOf(file.tree, 'build')?.value).find((value) => value !== undefined);
  return wordsIn(list);
}

/** The sources of the shop and of the engine, one name space. */
export function sourcesOf(
  shop: BookFile | undefined,
  chain: readonly BookFile[],
  problems: Problem[],
): ReadonlyMap<string, SourceNote> {
  const ofShop = shop ? mergedSection([shop], 'sources', problems) : [];
  const sources = new Map<string, SourceNote>();
  for (const owned of [...ofShop, ...mergedSection(chain, 'sources', problems)]) {
    const {key, keyWhere, value} = owned.entry;
    const first = sources.get(key);
    if (first) problems.push(secondSource(owned, first));
    else sources.set(key, sourceNote(key, keyWhere, value));
  }
  return sources;
}

function sourceNote(id: string, where: Where, node: Node): SourceNote {
  const part = (key: string) => textOf(entryOf(node, key)?.value);
  const rest = defined({date: part('date'), note: part('note')});
  return {id, title: part('title') ?? textOf(node) ?? id, ...rest, where};
}

function secondSource({entry}: Owned, first: SourceNote): Problem {
  return {
    name: 'spec-contradiction',
    where: entry.keyWhere,
    says: `the source ${entry.key} is listed twice`,
    hint: 'give one of the two another name',
    related: [{where: first.where, says: 'it is first listed here'}],
  };
}
