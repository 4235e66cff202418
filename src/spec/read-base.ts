/** What every item has, whatever its kind, and lists of names that a word may stand in for. */
import {defined} from './defined.js';
import {type ItemReader, located, refer, scalarsOf, text, words} from './fields.js';
import type {ItemKind, Located} from './model.js';
import {type Node, textOf} from './tree.js';

/** The fields of every kind. Notes what the item's `source:` and `only:` name, to be looked up later. */
export function base(reader: ItemReader) {
  const {id, where} = reader.raw;
  const source = located(reader, 'source');
  if (source) reader.sources.push({id: source.value, where: source.where, item: id});
  const only = words(reader, 'only');
  reader.options.push(...only.map(({value, where: at}) => ({id: value, where: at, item: id})));
  return {
    id,
    name: text(reader, 'name') ?? id.replaceAll('-', ' '),
    at: places(reader),
    only,
    where,
    ...defined({type: text(reader, 'type'), source: source?.value, note: text(reader, 'note')}),
  };
}

/** The places in order, each once. */
function places(reader: ItemReader): readonly string[] {
  const found = new Map<string, Located<string>>();
  for (const place of words(reader, 'at')) {
    const first = found.get(place.value);
    if (first === undefined) found.set(place.value, place);
    else {
      reader.problems.push({
        name: 'spec-contradiction',
        where: place.where,
        says: `${reader.raw.id} has the place ${place.value} twice`,
        hint: 'take one out',
        item: reader.raw.id,
        related: [{where: first.where, says: 'it is first here'}],
      });
    }
  }
  return [...found.keys()];
}

/** One of the words, or a list of names of items. */
export function namesOr<const W extends string>(
  reader: ItemReader,
  instead: readonly W[],
  kinds: readonly ItemKind[],
): (node: Node) => W | readonly string[] | undefined {
  return (node) => {
    const word = instead.find((one) => one === textOf(node));
    if (word !== undefined) return word;
    const names = scalarsOf(node);
    for (const {text: value, where} of names) refer(reader, {value, where}, kinds, instead);
    return names.length === 0 ? undefined : names.map((one) => one.text);
  };
}
