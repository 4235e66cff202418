/** The names in engine.yaml, shop.yaml and jobs: keys that give an item its name, and values that name one. */
import type {ItemKind} from '../spec/model.js';
import {ENGINE_SECTIONS, FIRSTS, SHOP_SECTIONS} from '../spec/sections.js';
import {type Entry, isScalar, type MapNode, type Node, type ScalarNode} from '../spec/tree.js';
import {readYaml} from '../spec/yaml.js';
import type {Source, Where} from '../text/source.js';
import type {Mention, MentionKind} from './mention.js';

const ANY: readonly ItemKind[] = Object.values(ENGINE_SECTIONS);

/** Fields whose values name items, and the kinds of item that can stand there. */
export const NAMING_FIELDS: Readonly<Record<string, readonly ItemKind[]>> = {
  closes: ['surface', 'joint'],
  blocks: ['part'],
  after: FIRSTS,
  using: ['tool', 'consumable'],
  alterations: ['alteration'],
  'seats-in': ['surface'],
  on: ANY,
  lubricants: ['consumable'],
  between: ['part', 'surface'],
  'taper-of': ['fit'],
  'out-of-round-of': ['fit'],
  'disturbed-by': ['fastener', 'part'],
  seal: ['consumable', 'part'],
  holds: ['part'],
  threads: ['consumable'],
  lock: ['consumable'],
  installed: ['part'],
  tight: ['fastener'],
  matches: ['mark'],
  asks: ANY,
  joints: ['joint'],
  'closed-by': ['part', 'fastener'],
  with: ['consumable'],
  of: ['part'],
  what: ['consumable', 'tool', 'part'],
};

/** Every name in the file. A file that is not YAML gives those in the part of it that could be read. */
export function yamlMentions(source: Source): readonly Mention[] {
  const {tree} = readYaml(source);
  if (tree?.type !== 'map') return [];
  const job = tree.entries.some(({key}) => key === 'job');
  return tree.entries.flatMap((entry) => (job ? ofJob(entry) : ofBook(entry)));
}

function ofBook({key, value}: Entry): Mention[] {
  if (Object.hasOwn(ENGINE_SECTIONS, key) || Object.hasOwn(SHOP_SECTIONS, key)) return entries(value, item);
  switch (key) {
    case 'sources':
      return entries(value, (entry) => [give('source', entry)]);
    case 'options':
      return entries(value, (entry) => [give('option', entry)]);
    case 'severity':
      return entries(value, ({key: id, keyWhere}) => [use('finding', id, keyWhere)]);
    case 'build':
      return scalars(value).map((scalar) => use('file', scalar.text, scalar.where));
    case 'extends':
    case 'source':
      return scalars(value).map(({text, where}) => use(key === 'source' ? 'source' : 'file', text, where));
    default:
      return fields(value);
  }
}

function ofJob({key, value}: Entry): Mention[] {
  if (key === 'options') return scalars(value).map(({text, where}) => use('option', text, where));
  if (key === 'job') return [];
  return entries(value, (entry) => [
    use('item', entry.key, entry.keyWhere),
    ...(key === 'substitutes'
      ? scalars(entry.value).map(({text, where}) => use('substitute', text, where))
      : []),
  ]);
}

/** An entry without a value drops the item of the base. */
function item(entry: Entry): Mention[] {
  const dropped = entry.value.type === 'empty';
  return [dropped ? use('item', entry.key, entry.keyWhere) : give('item', entry), ...fields(entry.value)];
}

/** Names in the fields of an item, of a practice or of what is barred, and in the fields below those. */
function fields(node: Node): Mention[] {
  if (node.type === 'list') return node.items.flatMap(fields);
  if (node.type !== 'map') return [];
  return node.entries.flatMap(({key, value}) => {
    if (key === 'source') return scalars(value).map(({text, where}) => use('source', text, where));
    if (key === 'only') return scalars(value).map(({text, where}) => use('option', text, where));
    if (key === 'substitutes') {
      return entries(value, (entry) => [give('substitute', entry), ...fields(entry.value)]);
    }
    if (!Object.hasOwn(NAMING_FIELDS, key)) return fields(value);
    const stated = value.type === 'map' ? valueIn(value) : value;
    const named = stated === undefined ? [] : scalars(stated).filter(({text}) => !WORDS.has(text));
    return [
      ...named.map(({text, where}) => use('item', text, where)),
      ...(value.type === 'map' ? fields(value) : []),
    ];
  });
}

/** What may stand where a name does, and is none. */
const WORDS: ReadonlySet<string> = new Set(['none', 'unknown', 'dry']);

function valueIn(map: MapNode): Node | undefined {
  return map.entries.find(({key}) => key === 'value')?.value;
}

function entries(node: Node, read: (entry: Entry) => Mention[]): Mention[] {
  return node.type === 'map' ? node.entries.flatMap(read) : [];
}

function scalars(node: Node): ScalarNode[] {
  const nodes = node.type === 'list' ? node.items : [node];
  return nodes.filter((one): one is ScalarNode => isScalar(one) && one.type !== 'empty');
}

function give(kind: MentionKind, {key: id, keyWhere: where}: Entry): Mention {
  return {kind, id, where, gives: true};
}

function use(kind: MentionKind, id: string, where: Where): Mention {
  return {kind, id, where, gives: false};
}
