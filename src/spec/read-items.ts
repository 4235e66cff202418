/** Makes an item of each kind out of its fields. What cannot be read is left out; the shapes have said why. */
import {NUT_FACTOR_RANGE} from '../trade/nut-factors.js';
import {defined} from './defined.js';
import {
  amount,
  amountOr,
  choice,
  flag,
  type ItemReader,
  located,
  reference,
  references,
  specified,
  text,
  whole,
  words,
} from './fields.js';
import {CONSUMABLE_USES, type Fit, type Item, type ItemKind, type ItemOf, LOCKS} from './model.js';
import {base, namesOr} from './read-base.js';
import {fastener} from './read-fastener.js';
import {substitutes} from './read-substitutes.js';
import {surface} from './read-surface.js';
import {ENGINE_KINDS, FIRSTS} from './sections.js';
import {type Node, textOf} from './tree.js';

/** The item that a reader's fields make. */
export function itemOf(reader: ItemReader): Item {
  return READERS[reader.raw.kind](reader);
}

const READERS: {readonly [K in ItemKind]: (reader: ItemReader) => ItemOf<K>} = {
  part: (reader) => ({
    kind: 'part',
    ...base(reader),
    closes: references(reader, 'closes', ['surface', 'joint']),
    after: references(reader, 'after', FIRSTS),
    given: flag(reader, 'given'),
    temporary: flag(reader, 'temporary'),
    blocks: references(reader, 'blocks', ['part']),
    singleUse: flag(reader, 'single-use'),
    reused: flag(reader, 'reused'),
    alterations: references(reader, 'alterations', ['alteration']),
    using: references(reader, 'using', ['tool']),
    turning: flag(reader, 'turning'),
    ...defined({
      size: specified(reader, 'size', amount(reader, 'length')),
      seatsIn: reference(reader, 'seats-in', ['surface']),
    }),
    hazards: words(reader, 'hazards'),
    quantity: whole(reader, 'quantity'),
    substitutes: substitutes(reader),
  }),
  surface,
  joint: (reader) => ({
    kind: 'joint',
    ...base(reader),
    between: references(reader, 'between', ['part', 'surface']),
    ...defined({
      seal: specified(reader, 'seal', namesOr(reader, ['none', 'unknown'], ['consumable', 'part'])),
    }),
  }),
  fastener,
  fit: (reader) => ({
    kind: 'fit',
    ...base(reader),
    between: references(reader, 'between', ['surface', 'part']),
    ...defined({
      limits: specified(reader, 'limits', amountOr(reader, 'length', ['unknown'])),
      when: when(reader),
    }),
    by: choice(reader, 'by', ['strip', 'gauge']) ?? 'gauge',
    taperOf: references(reader, 'taper-of', ['fit']),
    outOfRoundOf: references(reader, 'out-of-round-of', ['fit']),
    disturbedBy: references(reader, 'disturbed-by', ['fastener', 'part']),
    rework: flag(reader, 'rework'),
    using: references(reader, 'using', ['tool', 'consumable']),
  }),
  mark: (reader) => ({
    kind: 'mark',
    ...base(reader),
    ...defined({stamped: text(reader, 'stamped'), matches: reference(reader, 'matches', ['mark'])}),
  }),
  check: (reader) => ({
    kind: 'check',
    ...base(reader),
    ...defined({
      limits: specified(reader, 'limits', amount(reader)),
      expect: text(reader, 'expect'),
    }),
    after: references(reader, 'after', FIRSTS),
    disturbedBy: references(reader, 'disturbed-by', ['fastener', 'part']),
    rework: flag(reader, 'rework'),
    using: references(reader, 'using', ['tool', 'consumable']),
    hazards: words(reader, 'hazards'),
  }),
  'hold-point': (reader) => ({
    kind: 'hold-point',
    ...base(reader),
    asks: references(reader, 'asks', ENGINE_KINDS),
    ...defined({by: text(reader, 'by')}),
  }),
  system: (reader) => ({
    kind: 'system',
    ...base(reader),
    joints: references(reader, 'joints', ['joint']),
    closedBy: references(reader, 'closed-by', ['part', 'fastener']),
    after: references(reader, 'after', FIRSTS),
    with: references(reader, 'with', ['consumable']),
    ...defined({amount: specified(reader, 'amount', amount(reader, 'volume'))}),
    hazards: words(reader, 'hazards'),
  }),
  alteration: (reader) => ({
    kind: 'alteration',
    ...base(reader),
    of: references(reader, 'of', ['part']),
    ...defined({does: text(reader, 'does')}),
    using: references(reader, 'using', ['tool', 'consumable']),
    hazards: words(reader, 'hazards'),
  }),
  tool: (reader) => ({
    kind: 'tool',
    ...base(reader),
    ...defined({
      range: specified(reader, 'range', amount(reader)),
      resolution: specified(reader, 'resolution', amount(reader)),
      accuracy: specified(reader, 'accuracy', textOf),
      calibrated: located(reader, 'calibrated'),
      due: located(reader, 'due'),
      serial: text(reader, 'serial'),
    }),
    gauge: flag(reader, 'gauge'),
  }),
  consumable: (reader) => ({
    kind: 'consumable',
    ...base(reader),
    use: choice(reader, 'use', CONSUMABLE_USES) ?? 'other',
    ...defined({
      lock: choice(reader, 'lock', LOCKS),
      cure: specified(reader, 'cure', amount(reader, 'time')),
      k: specified(reader, 'k', nutFactor),
      range: specified(reader, 'range', amount(reader, 'length')),
      size: specified(reader, 'size', amount(reader, 'length')),
    }),
    hazards: words(reader, 'hazards'),
  }),
};

/** What is no number, or no nut factor, the shape has said. */
function nutFactor(node: Node): number | undefined {
  const k = node.type === 'number' ? Number(node.text) : Number.NaN;
  return k >= NUT_FACTOR_RANGE.low && k <= NUT_FACTOR_RANGE.high ? k : undefined;
}

/** When a fit is measured; undefined where the specification is silent. */
function when(reader: ItemReader): Fit['when'] {
  const field = reader.raw.fields.get('when');
  if (field?.value.type !== 'map') return undefined;
  const fields = new Map(field.value.entries.map((entry) => [entry.key, entry]));
  const inner: ItemReader = {...reader, raw: {...reader.raw, fields}};
  return {
    installed: references(inner, 'installed', ['part']),
    tight: references(inner, 'tight', ['fastener']),
    where: field.keyWhere,
  };
}
