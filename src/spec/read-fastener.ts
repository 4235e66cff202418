/** Makes a group of fasteners: torque, threads, lock, and where each one sits. */
import type {Amount} from '../quantity/model.js';
import type {Problem} from '../text/problem.js';
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
import {type Fastener, LOCKS} from './model.js';
import {base, namesOr} from './read-base.js';
import {FIRSTS} from './sections.js';
import {NAME_PATTERN} from './shapes/values.js';
import {entryOf, isScalar, type Node, type ScalarNode, textOf} from './tree.js';

/** The group of fasteners that a reader's fields make. */
export function fastener(reader: ItemReader): Fastener {
  const layout = reader.raw.fields.get('layout')?.value;
  return {
    kind: 'fastener',
    ...base(reader),
    count: whole(reader, 'count'),
    holds: references(reader, 'holds', ['part']),
    after: references(reader, 'after', ['part', 'fastener', 'joint']),
    lockAfter: references(reader, 'lock-after', FIRSTS),
    ...defined({
      thread: specified(reader, 'thread', textOf),
      grade: specified(reader, 'grade', textOf),
      torque: specified(reader, 'torque', amountOr(reader, 'torque', ['snug', 'none', 'unknown'])),
      angle: specified(reader, 'angle', amount(reader, 'angle')),
      passes: specified(reader, 'passes', (node) => torques(reader, node)),
      threads: specified(reader, 'threads', namesOr(reader, ['dry', 'unknown'], ['consumable'])),
      lock: specified(reader, 'lock', (node) => locks(reader, node)),
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

/** Kinds of lock by their names, or the names of consumables that are one. */
function locks(reader: ItemReader, node: Node): readonly string[] | 'none' | 'unknown' | undefined {
  const said = textOf(node);
  if (said === 'none' || said === 'unknown') return said;
  // What is no name at all is said by the form.
  const names = scalarsOf(node).filter(({text}) => NAME_PATTERN.test(text));
  const locks = names.filter(({text}) => text !== 'none' && text !== 'unknown');
  for (const one of names) if (!locks.includes(one)) reader.problems.push(standsAlone(one, reader));
  for (const {text, where} of locks)
    if (!isLockKind(text)) refer(reader, {value: text, where}, ['consumable'], LOCKS);
  return locks.length === 0 ? undefined : [...new Set(locks.map(({text}) => text))];
}

function standsAlone({text, where}: ScalarNode, {raw: {id}}: ItemReader): Problem {
  const hint = 'take it out of the list, or write it in place of the list';
  return {name: 'spec-form', where, says: `${text} is no lock, and cannot stand beside one`, hint, item: id};
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
