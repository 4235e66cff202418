/** Makes a group of fasteners: torque, threads, lock, and where each one sits. */
import type {Amount} from '../quantity/model.js';
import {readTappedMetal} from '../trade/tapped-metals.js';
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
      engagement: specified(reader, 'engagement', amount(reader, 'length')),
      into: specified(reader, 'into', (node) => metal(reader, node)),
    }),
    stripe: flag(reader, 'stripe'),
    singleUse: flag(reader, 'single-use'),
    layout: layoutOf(layout),
    layoutUnit: textOf(entryOf(layout, 'unit')?.value) === 'mm' ? 'mm' : 'in',
    runs: runs(reader),
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

/** A metal that the tables do not have is said at once, for a slip of the pen would silence what is worked out from it. */
function metal(reader: ItemReader, node: Node): string | undefined {
  const said = textOf(node);
  if (said === undefined || said === 'unknown') return undefined;
  const reading = readTappedMetal(said);
  if (reading.ok) return said;
  const {says, hint} = reading;
  reader.problems.push({name: 'spec-form', where: node.where, says, hint, item: reader.raw.id});
  return undefined;
}

function runs(reader: ItemReader): Fastener['runs'] {
  const list = reader.raw.fields.get('runs')?.value;
  if (list?.type !== 'list') return [];
  return list.items.flatMap((run) => {
    const names = scalarsOf(run).map((one) => one.text);
    return run.type === 'list' && names.length > 0 ? [{value: names, where: run.where}] : [];
  });
}

function layoutOf(node: Node | undefined): Fastener['layout'] {
  const entries = node?.type === 'map' ? node.entries : [];
  return entries.flatMap(({key: id, value}) => {
    if (id === 'unit' || value.type !== 'list') return [];
    const [x, y] = value.items.map((item) => (isScalar(item) ? Number(item.text) : Number.NaN));
    return x !== undefined && y !== undefined && Number.isFinite(x + y) ? [{id, x, y}] : [];
  });
}
