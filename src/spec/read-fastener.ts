/** Makes a group of fasteners: torque, threads, lock, and where each one sits. */
import type {Amount} from '../quantity/model.js';
import {defined} from './defined.js';
import {
  amount,
  amountOr,
  flag,
  type ItemReader,
  refer,
  references,
  scalarsOf,
  specified,
  whole,
  words,
} from './fields.js';
import {isLockKind} from './locks.js';
import type {Fastener} from './model.js';
import {base, namesOr} from './read-base.js';
import {LOCKS} from './shapes/values.js';
import {entryOf, isScalar, type Node, textOf} from './tree.js';

export function fastener(reader: ItemReader): Fastener {
  const layout = reader.raw.fields.get('layout')?.value;
  return {
    kind: 'fastener',
    ...base(reader),
    count: whole(reader, 'count'),
    holds: references(reader, 'holds', ['part']),
    ...defined({
      thread: specified(reader, 'thread', textOf),
      grade: specified(reader, 'grade', textOf),
      torque: specified(reader, 'torque', amountOr(reader, 'torque', ['snug', 'none', 'unknown'])),
      angle: specified(reader, 'angle', amount(reader, 'angle')),
      passes: specified(reader, 'passes', (node) => torques(reader, node)),
      threads: specified(reader, 'threads', namesOr(reader, ['dry', 'unknown'], ['consumable'])),
      lock: specified(reader, 'lock', (node) => lock(reader, node)),
      hole: specified(reader, 'hole', amount(reader, 'length')),
    }),
    singleUse: flag(reader, 'single-use'),
    layout: layoutOf(layout),
    layoutUnit: textOf(entryOf(layout, 'unit')?.value) === 'mm' ? 'mm' : 'in',
    order: words(reader, 'order').map((one) => one.value),
  };
}

function torques(reader: ItemReader, node: Node): readonly Amount[] | undefined {
  const read = amount(reader, 'torque');
  const found = scalarsOf(node).map(read);
  const amounts = found.filter((one): one is Amount => one !== undefined);
  return amounts.length === 0 || amounts.length < found.length ? undefined : amounts;
}

/** A kind of lock by its name, or the name of a consumable that is one. */
function lock(reader: ItemReader, node: Node): string | undefined {
  const found = textOf(node);
  if (found === undefined || found === 'none' || found === 'unknown' || isLockKind(found)) return found;
  refer(reader, found, node.where, ['consumable'], LOCKS);
  return found;
}

function layoutOf(node: Node | undefined): Fastener['layout'] {
  const entries = node?.type === 'map' ? node.entries : [];
  return entries.flatMap(({key: id, value}) => {
    if (id === 'unit' || value.type !== 'list') return [];
    const [x, y] = value.items.map((item) => (isScalar(item) ? Number(item.text) : Number.NaN));
    return x !== undefined && y !== undefined && Number.isFinite(x + y) ? [{id, x, y}] : [];
  });
}
