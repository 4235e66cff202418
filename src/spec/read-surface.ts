/** Makes a surface: how it goes together, and its sizes by place. */
import type {Amount} from '../quantity/model.js';
import type {Problem} from '../text/problem.js';
import {defined} from './defined.js';
import {
  amount,
  choice,
  type ItemReader,
  located,
  reference,
  references,
  scalarsOf,
  specified,
  specifiedField,
} from './fields.js';
import {type Specified, SURFACE_STATES, type Surface} from './model.js';
import {nearName} from './near.js';
import {base} from './read-base.js';
import {type Entry, textOf} from './tree.js';

/** The surface that a reader's fields make. */
export function surface(reader: ItemReader): Surface {
  const order = located(reader, 'order');
  const direction = choice(reader, 'order', ['rising', 'falling']);
  const states = [...SURFACE_STATES, 'unknown'] as const;
  const common = base(reader);
  return {
    kind: 'surface',
    ...common,
    ...defined({
      on: reference(reader, 'on', ['part']),
      assembly: specified(reader, 'assembly', (node) => states.find((state) => state === textOf(node))),
    }),
    lubricants: references(reader, 'lubricants', ['consumable']),
    sizes: sizes(reader, common.at),
    grinds: grinds(reader),
    ...(order && direction && {order: {value: direction, where: order.where}}),
  };
}

function sizes(reader: ItemReader, places: readonly string[]): ReadonlyMap<string, Specified<Amount>> {
  const found = new Map<string, Specified<Amount>>();
  const everywhere = specified(reader, 'size', amount(reader, 'length'));
  if (everywhere) found.set('', everywhere);
  const byPlace = reader.raw.fields.get('sizes');
  if (byPlace?.value.type !== 'map') return found;
  const known = new Set(places);
  for (const entry of byPlace.value.entries) {
    if (!known.has(entry.key)) reader.problems.push(unknownPlace(reader, entry, known));
    const title = `size ${entry.key}`;
    const size = specifiedField(reader, {...byPlace, ...entry}, amount(reader, 'length'), title);
    if (size) found.set(entry.key, size);
  }
  return found;
}

function grinds(reader: ItemReader): Surface['grinds'] {
  const list = reader.raw.fields.get('grinds')?.value;
  if (list === undefined) return [];
  const read = amount(reader, 'length');
  return scalarsOf(list).flatMap((node) => {
    const value = read(node);
    return value === undefined ? [] : [{value, where: node.where}];
  });
}

function unknownPlace(reader: ItemReader, {key, keyWhere}: Entry, places: ReadonlySet<string>): Problem {
  const {id} = reader.raw;
  const near = nearName(key, places, reader.problems.length);
  const hint = near === undefined ? `add ${key} to its at` : `did you mean ${near}?`;
  return {name: 'unknown-item', where: keyWhere, says: `${id} has no place ${key}`, hint, item: id};
}
