/** What a book's YAML reads as when all is well: every field of every kind, and the head of the book. */
import {describe, expect, it} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {itemsOfKind, placesOf} from '../../src/spec/items.js';
import {isLockKind, LOCK_KINDS} from '../../src/spec/locks.js';
import type {ItemKind} from '../../src/spec/model.js';
import {LOCKS} from '../../src/spec/model.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {SECTION_OF} from '../../src/spec/sections.js';
import {ITEM_SHAPES} from '../../src/spec/shapes/items.js';
import {type Entry, type Node, valueAt} from '../../src/spec/tree.js';
import {readYaml} from '../../src/spec/yaml.js';
import {slice, source} from '../../src/text/source.js';
import {readClean, SHOP} from './marked.js';

const ENGINE = `
parts:
  block: {name: cylinder block, given: true}
  shaft:
    name: camshaft
    at: [front, rear]
    type: shaft
    source: maker
    note: turn it as it goes in
    quantity: 2
    closes: [bores]
    after: [plug, gap, drag, stop, number, bolts, seam, cooling]
    given: false
    temporary: true
    blocks: [plug]
    single-use: true
    reused: true
    turning: true
    alterations: [grind]
    using: [mallet]
    hazards: [pinch, heavy]
    size: {value: 2 in, source: house, note: nominal, because: measured}
    seats-in: bores
    substitutes: {twin-shaft: {name: shaft of the twin, alterations: [grind], note: one lip more}}
  plug: {}
surfaces:
  bores:
    on: block
    at: [front, rear]
    assembly: lubed
    lubricants: [lube]
    sizes: {front: 2 in, rear: {value: 2 in, source: maker}}
    order: falling
    grinds: [0.010 in, 0.020 in]
  face: {assembly: clean, size: 1 in}
joints:
  seam: {between: [block, shaft], seal: [paper, silicone]}
  bare: {seal: {value: none, because: metal to metal}}
fasteners:
  bolts:
    at: [front, rear]
    count: 4
    holds: [shaft]
    after: [plug, seam]
    thread: 1/2-13 UNC
    grade: 8.8
    torque: 60 lbf·ft
    angle: 90°
    passes: [30 lbf·ft, 60 lbf·ft]
    threads: [oil]
    lock: wire
    stripe: true
    single-use: true
    hole: 0.062 in
    engagement: 0.75 in
    into: cast iron
    runs: [[a, b]]
    layout: {unit: mm, a: [0, 0], b: [-1.5, 2]}
    order: [b, a]
fits:
  gap:
    between: [shaft, bores]
    limits: 0.0015–0.0035 in
    by: strip
    using: [strip]
    rework: true
    disturbed-by: [bolts, shaft]
    when: {installed: [shaft], tight: [bolts]}
  size-one: {limits: 2 in, when: {}}
  size-two: {limits: 2 in, when: {}}
  taper: {limits: max 0.001 in, taper-of: [size-one, size-two], when: {}}
  round: {limits: max 0.001 in, out-of-round-of: [size-one, size-two], when: {}}
marks:
  number: {stamped: front left, matches: plate}
  plate: {}
checks:
  drag: {expect: turns freely, limits: max 5 lbf·ft, using: [feelers], rework: true, hazards: [pinch], after: [number, seam], disturbed-by: [plug]}
hold-points:
  stop: {asks: [bolts, gap], by: shop lead}
systems:
  cooling: {joints: [seam], closed-by: [plug, bolts], with: [coolant], amount: 7 qt, hazards: [scald], after: [stop, drag]}
alterations:
  grind: {of: [shaft], does: grind it, using: [hammer], hazards: [eyes]}
barred:
  - {what: [silicone, cotter-pin], on: [bare], because: beads, source: maker}
build: [one.md, ../two.md]
`;

const SHOP_WHOLE =
  `${SHOP}  coolant: {name: coolant, use: fluid, hazards: [poison], cure: 1 h, size: 1 mm, note: blue, k: {value: 0.15, source: house}}
severity: {two-actions: information}
`
    .replace('shop: {name: Test Works}', 'shop: {name: Test Works, paper: Letter, units: metric}')
    .replace(
      'mallet: soft-faced mallet',
      'mallet: {name: mallet, range: 20–150 lbf·ft, resolution: 1 lbf·ft, accuracy: class A, calibrated: 2026-03-01, due: 2027-03-01, serial: 0123, gauge: true, type: wrench}',
    );

const at = (...values: string[]) => values.map((value) => expect.objectContaining({value}));

describe('a whole book', () => {
  const spec = readClean({shop: SHOP_WHOLE, engine: ENGINE});
  const item = (id: string) => spec.items.get(id);

  it('has its shop, its engine and its build', () => {
    expect(spec.shop).toMatchObject({name: 'Test Works', paper: 'Letter', units: 'metric'});
    expect(spec.shop.severity.get('two-actions')?.value).toBe('information');
    expect(spec.engine).toMatchObject({id: 'test', name: 'test'});
    expect(spec.build.map(({value}) => value)).toEqual(['one.md', '../two.md']);
    expect(spec.sources.get('house')).toMatchObject({id: 'house', title: 'House notes'});
    expect([...spec.files.keys()]).toEqual(['engine.yaml', 'shop.yaml']);
    expect(spec.bars).toMatchObject([
      {what: at('silicone', 'cotter-pin'), on: at('bare'), because: 'beads', source: 'maker'},
    ]);
  });

  const cases: readonly [string, object][] = [
    ['block', {kind: 'part', name: 'cylinder block', given: true, singleUse: false, quantity: 1, at: []}],
    [
      'shaft',
      {
        kind: 'part',
        name: 'camshaft',
        at: ['front', 'rear'],
        type: 'shaft',
        source: 'maker',
        note: 'turn it as it goes in',
        quantity: 2,
        closes: at('bores'),
        after: at('plug', 'gap', 'drag', 'stop', 'number', 'bolts', 'seam', 'cooling'),
        given: false,
        temporary: true,
        blocks: at('plug'),
        singleUse: true,
        reused: true,
        turning: true,
        alterations: at('grind'),
        using: at('mallet'),
        hazards: at('pinch', 'heavy'),
        size: {
          value: {form: 'single', value: quantity(2, 'in')},
          source: 'house',
          note: 'nominal',
          because: 'measured',
        },
        seatsIn: {value: 'bores'},
      },
    ],
    [
      'bores',
      {
        kind: 'surface',
        name: 'bores',
        on: {value: 'block'},
        assembly: {value: 'lubed', source: 'house'},
        lubricants: at('lube'),
        order: {value: 'falling'},
        grinds: [
          {value: {form: 'single', value: {value: 0.01}}},
          {value: {form: 'single', value: {value: 0.02}}},
        ],
      },
    ],
    ['seam', {kind: 'joint', between: at('block', 'shaft'), seal: {value: ['paper', 'silicone']}}],
    ['bare', {kind: 'joint', seal: {value: 'none', because: 'metal to metal'}}],
    [
      'bolts',
      {
        kind: 'fastener',
        count: 4,
        holds: at('shaft'),
        after: at('plug', 'seam'),
        thread: {value: '1/2-13 UNC'},
        grade: {value: '8.8'},
        torque: {value: {form: 'single', value: quantity(60, 'lbf·ft')}},
        angle: {value: {form: 'single', value: quantity(90, '°')}},
        passes: {value: [{value: quantity(30, 'lbf·ft')}, {value: quantity(60, 'lbf·ft')}]},
        threads: {value: ['oil']},
        lock: {value: ['wire']},
        stripe: true,
        singleUse: true,
        hole: {value: {form: 'single', value: quantity(0.062, 'in')}},
        engagement: {value: {form: 'single', value: quantity(0.75, 'in')}},
        into: {value: 'cast iron'},
        runs: [{value: ['a', 'b']}],
        layout: [
          {id: 'a', x: 0, y: 0},
          {id: 'b', x: -1.5, y: 2},
        ],
        layoutUnit: 'mm',
        order: ['b', 'a'],
      },
    ],
    [
      'gap',
      {
        kind: 'fit',
        between: at('shaft', 'bores'),
        limits: {value: {form: 'range', low: quantity(0.0015, 'in'), high: quantity(0.0035, 'in')}},
        by: 'strip',
        rework: true,
        using: at('strip'),
        when: {installed: at('shaft'), tight: at('bolts')},
        taperOf: [],
        outOfRoundOf: [],
        disturbedBy: at('bolts', 'shaft'),
      },
    ],
    ['taper', {kind: 'fit', taperOf: at('size-one', 'size-two'), outOfRoundOf: []}],
    ['round', {kind: 'fit', taperOf: [], outOfRoundOf: at('size-one', 'size-two')}],
    ['number', {kind: 'mark', stamped: 'front left', matches: {value: 'plate'}}],
    [
      'drag',
      {
        kind: 'check',
        expect: 'turns freely',
        after: at('number', 'seam'),
        disturbedBy: at('plug'),
        limits: {value: {form: 'most', high: quantity(5, 'lbf·ft')}},
        using: at('feelers'),
        rework: true,
        hazards: at('pinch'),
      },
    ],
    ['stop', {kind: 'hold-point', name: 'stop', asks: at('bolts', 'gap'), by: 'shop lead'}],
    [
      'cooling',
      {
        kind: 'system',
        joints: at('seam'),
        closedBy: at('plug', 'bolts'),
        after: at('stop', 'drag'),
        with: at('coolant'),
        amount: {value: {form: 'single'}},
        hazards: at('scald'),
      },
    ],
    [
      'grind',
      {kind: 'alteration', of: at('shaft'), does: 'grind it', using: at('hammer'), hazards: at('eyes')},
    ],
    [
      'mallet',
      {
        kind: 'tool',
        type: 'wrench',
        range: {value: {form: 'range'}},
        resolution: {value: {form: 'single'}},
        accuracy: {value: 'class A'},
        calibrated: {value: '2026-03-01'},
        due: {value: '2027-03-01'},
        serial: '0123',
        gauge: true,
      },
    ],
    ['hammer', {kind: 'tool', name: 'steel hammer', gauge: false}],
    [
      'coolant',
      {
        kind: 'consumable',
        use: 'fluid',
        hazards: at('poison'),
        cure: {value: {value: quantity(1, 'h')}},
        size: {value: {value: quantity(1, 'mm')}},
        k: {value: 0.15, source: 'house'},
        note: 'blue',
      },
    ],
    ['wire', {kind: 'consumable', use: 'lock', lock: 'safety-wire'}],
    ['strip', {kind: 'consumable', use: 'strip', range: {value: {form: 'range'}}}],
  ];
  it.each(cases)('has %s', (id, due) => {
    expect(item(id)).toMatchObject(due);
  });

  it('has the parts of other engines that may take the place of its own', () => {
    const shaft = item('shaft');
    expect(shaft?.kind === 'part' ? [...shaft.substitutes] : []).toMatchObject([
      ['twin-shaft', {name: 'shaft of the twin', alterations: at('grind'), note: 'one lip more'}],
    ]);
  });

  it('has sizes by place, or for all places', () => {
    const sizes = (id: string) => {
      const surface = item(id);
      return surface?.kind === 'surface'
        ? [...surface.sizes].map(([place, size]) => [place, size.source])
        : undefined;
    };
    expect(sizes('bores')).toEqual([
      ['front', 'house'],
      ['rear', 'maker'],
    ]);
    expect(sizes('face')).toEqual([['', 'house']]);
  });

  it('points from every item to its id, and from every value to what is written', () => {
    for (const {id, where} of spec.items.values()) {
      const file = spec.files.get(where.file);
      expect(file && slice(file, where.span)).toBe(id);
    }
    const bolts = item('bolts');
    const file = spec.files.get('engine.yaml');
    const torque = bolts?.kind === 'fastener' ? bolts.torque : undefined;
    expect(file && torque && slice(file, torque.where.span)).toBe('60 lbf·ft');
  });

  it('writes every key that the shapes have, so that the cases above can miss none', () => {
    const trees = [ENGINE, SHOP_WHOLE].map((text) => readYaml(source('x.yaml', text)).tree);
    const unwritten = Object.entries(ITEM_SHAPES).flatMap(([kind, shape]) => {
      const items = trees.flatMap((tree) =>
        entriesOf(valueAt(tree, SECTION_OF[isKind(kind) ? kind : 'part'])),
      );
      const written = new Set(items.flatMap(({value}) => entriesOf(value).map(({key}) => key)));
      return Object.keys(shape.shape)
        .filter((key) => !written.has(key) && !READ_ALIKE.includes(key))
        .map((key) => `${kind} ${key}`);
    });
    expect(unwritten).toEqual([]);
  });
});

/** Read by one function whatever the kind, and written above for one. */
const READ_ALIKE = ['name', 'at', 'type', 'only', 'source', 'note'];

function entriesOf(node: Node | undefined): readonly Entry[] {
  return node?.type === 'map' ? node.entries : [];
}

function isKind(word: string): word is ItemKind {
  return Object.hasOwn(SECTION_OF, word);
}

describe('items', () => {
  it('are given by kind, in the order of the text', () => {
    const spec = readClean({engine: 'parts: {zinc: {}, anode: {at: [1, 2]}}\n'});
    expect(itemsOfKind(spec, 'part').map(({id}) => id)).toEqual(['zinc', 'anode']);
    const kinds: readonly ItemKind[] = ['tool', 'fit'];
    expect(kinds.map((kind) => itemsOfKind(spec, kind).length)).toEqual([3, 0]);
  });

  it('are in one unnamed place where they name none', () => {
    expect(placesOf({at: []})).toEqual(['']);
    expect(placesOf({at: ['front', 'rear']})).toEqual(['front', 'rear']);
  });
});

describe('locks', () => {
  it('are the kinds that the shapes know, each with its time', () => {
    expect(Object.keys(LOCK_KINDS).toSorted()).toEqual([...LOCKS].toSorted());
    expect(isLockKind('safety-wire')).toBe(true);
    expect(['toString', 'wire', ''].some(isLockKind)).toBe(false);
  });

  // Common practice, no source.
  it('go on before the torque where they sit on the thread or under the head', () => {
    const before = LOCKS.filter((lock) => LOCK_KINDS[lock].goesOn === 'before');
    expect(before).toEqual(['threadlocker', 'spring-washer', 'self-locking-nut']);
  });
});

describe('whatever is missing', () => {
  it.each([
    ['no shop', undefined, 'engine: {id: lone, note: alone}\n'],
    ['two empty files', '', ''],
    ['two files that are not YAML', '{', '['],
  ])('gives a specification: %s', (_, shop, engine) => {
    const spec = readSpecification({
      ...(shop !== undefined && {shop: source('shop.yaml', shop)}),
      engine: source('engine.yaml', engine),
      bases: [],
    });
    expect(spec.shop).toMatchObject({name: '', paper: 'A4', units: 'inch'});
    expect(spec.items.size).toBe(0);
    expect(spec.problems.length > 0).toBe(shop !== undefined);
  });

  it('keeps to the cause where a file is not YAML', () => {
    const spec = readSpecification({
      shop: source('shop.yaml', 'shop: {name: x\ntools: {a: {}}\n'),
      engine: source('engine.yaml', 'engine: {id: x}\nparts: {shaft: {using: [mallet]}}\n'),
      bases: [],
    });
    expect(new Set(spec.problems.map(({name, where}) => `${where.file} ${name}`))).toEqual(
      new Set(['shop.yaml spec-form']),
    );
    expect(spec.items.has('shaft')).toBe(true);
  });
});
