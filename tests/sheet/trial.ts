/** A book with something of everything that a sheet prints, for tests and for looking at. Every value is invented. */
import type {Item} from '../../src/spec/model.js';
import {amount, base, fastener, located, part, procedure, specification, specified} from './hand-made.js';

const NOWHERE = {file: 'shop.yaml', span: {start: 0, end: 0}};
const MAINS = ['front', 'second', 'centre', 'fourth', 'rear'];

const items: readonly Item[] = [
  part('camshaft', {using: [located('soft-mallet')], turning: true}),
  part('main-caps', {at: MAINS}),
  part('crankshaft', {hazards: [located('heavy-lift')]}),
  part('main-shells', {at: MAINS, quantity: 10, alterations: [located('grind-off-lip')]}),
  part('core-plugs', {at: ['front', 'middle', 'rear'], singleUse: true}),
  part('cylinder-head', {name: 'cylinder head', hazards: [located('heavy-lift')]}),
  {
    ...base('camshaft-bores'),
    kind: 'surface',
    at: ['front', 'second', 'third', 'rear'],
    lubricants: [located('assembly-lube')],
    sizes: new Map(),
    assembly: specified('lubed'),
  },
  {
    ...base('main-saddles'),
    kind: 'surface',
    at: MAINS,
    lubricants: [],
    sizes: new Map(),
    assembly: specified('dry'),
  },
  {...base('sump-joint'), kind: 'joint', between: [], seal: specified(['liquid-gasket'])},
  fastener('main-cap-bolts', {
    at: MAINS,
    count: 10,
    torque: specified(amount('85 lbf·ft'), {note: 'oiled threads'}),
    passes: specified([amount('30 lbf·ft'), amount('60 lbf·ft'), amount('85 lbf·ft')]),
    threads: specified(['engine-oil']),
    lock: specified('safety-wire'),
  }),
  fastener('head-bolts', {
    count: 10,
    torque: specified(amount('65 lbf·ft')),
    passes: specified([amount('25 lbf·ft'), amount('45 lbf·ft'), amount('65 lbf·ft')]),
    angle: specified(amount('90°')),
    threads: specified('dry'),
    layout: [0, 1, 2, 3, 4].flatMap((column) => [
      {id: `exhaust-${column + 1}`, x: column * 3.6, y: 0},
      {id: `inlet-${column + 1}`, x: column * 3.6, y: 5.2},
    ]),
    order: [
      'inlet-3',
      'exhaust-3',
      'exhaust-2',
      'inlet-2',
      'inlet-4',
      'exhaust-4',
      'exhaust-1',
      'inlet-1',
      'inlet-5',
      'exhaust-5',
    ],
  }),
  fastener('pump-bolts', {
    count: 3,
    torque: specified(amount('120 lbf·in')),
    lock: specified('threadlocker'),
  }),
  {
    ...base('main-clearance'),
    kind: 'fit',
    at: MAINS,
    between: [],
    limits: specified(amount('0.0015–0.0035 in')),
    by: 'strip',
    using: [located('strip-green')],
  },
  {
    ...base('camshaft-end-float'),
    kind: 'fit',
    between: [],
    limits: specified(amount('0.004–0.009 in')),
    by: 'gauge',
    using: [located('dial-gauge'), located('feeler-gauges')],
  },
  {
    ...base('valve-lash'),
    kind: 'check',
    at: ['1 inlet', '1 exhaust', '2 inlet', '2 exhaust', '3 inlet', '3 exhaust', '4 inlet', '4 exhaust'],
    limits: specified(amount('0.011–0.013 in')),
    using: [located('feeler-gauges')],
    hazards: [],
  },
  {
    ...base('turns-freely'),
    kind: 'check',
    expect: 'the crankshaft turns by hand through two whole turns without a tight spot',
    using: [],
    hazards: [],
  },
  {
    ...base('engine-number'),
    kind: 'mark',
    stamped: 'front left of the block',
    matches: located('hull-plate-number'),
  },
  {...base('hull-plate-number'), kind: 'mark', stamped: 'hull plate'},
  {
    ...base('bottom-end-closed'),
    kind: 'hold-point',
    asks: [located('main-cap-bolts'), located('main-clearance'), located('turns-freely')],
    by: 'shop lead',
  },
  {
    ...base('cooling'),
    name: 'cooling system',
    kind: 'system',
    joints: [],
    closedBy: [],
    with: [located('coolant')],
    amount: specified(amount('7 US qt')),
    hazards: [],
  },
  {
    ...base('grind-off-lip'),
    kind: 'alteration',
    of: [located('main-shells')],
    does: 'grind the locating lip flush with the back of the shell',
    using: [located('bench-grinder')],
    hazards: [located('eyes'), located('hot-metal')],
  },
  {
    ...base('torque-wrench-half'),
    name: '1/2 in torque wrench',
    kind: 'tool',
    gauge: true,
    range: specified(amount('20–150 lbf·ft')),
    due: located('2027-03-01'),
    serial: 'BW-14',
  },
  {...base('soft-mallet'), name: 'soft-faced mallet', kind: 'tool', gauge: false},
  {...base('bench-grinder'), kind: 'tool', gauge: false},
  {
    ...base('dial-gauge'),
    name: 'dial gauge and stand',
    kind: 'tool',
    gauge: true,
    due: located('2026-11-30'),
  },
  {...base('feeler-gauges'), kind: 'tool', gauge: true, due: located('2027-01-15')},
  {...base('assembly-lube'), kind: 'consumable', use: 'lubricant', hazards: [located('skin')]},
  {
    ...base('engine-oil'),
    name: 'engine oil SAE 30',
    kind: 'consumable',
    use: 'lubricant',
    hazards: [located('skin')],
  },
  {...base('coolant'), kind: 'consumable', use: 'fluid', hazards: [located('poison'), located('skin')]},
  {
    ...base('brake-cleaner'),
    kind: 'consumable',
    use: 'cleaner',
    hazards: [located('fire'), located('vapour')],
  },
  {
    ...base('liquid-gasket'),
    kind: 'consumable',
    use: 'sealant',
    hazards: [located('vapour')],
    cure: specified(amount('24 h')),
  },
  {...base('strip-green'), name: 'green gauging strip', kind: 'consumable', use: 'strip', hazards: []},
];

export const trialSpec = specification(items, {
  sources: new Map([
    [
      'house-notes',
      {
        id: 'house-notes',
        title: 'Brackwater house notes',
        date: '2026-01-15',
        note: 'invented',
        where: NOWHERE,
      },
    ],
  ]),
});

export const trialProcedure = procedure(
  [
    {
      title: 'Camshaft',
      steps: [
        {text: 'Read the engine number off the block and write it down.', tags: ['record: engine-number']},
        {
          text: 'Wash every camshaft bore with brake cleaner and dry it with *clean* air.',
          tags: ['clean: camshaft-bores with brake-cleaner'],
          cautions: [
            [
              'danger',
              'Brake cleaner vapour near the heater explodes. Turn the heater off, and open the doors before you start.',
              'fire',
              'vapour',
            ],
            ['warning', 'Compressed air throws chips into eyes. Keep the nozzle away from people.', 'eyes'],
          ],
        },
        {
          text: 'Brush lube on every camshaft journal and lobe.',
          tags: ['lube: camshaft-bores with assembly-lube'],
        },
        {
          text: 'Slide the camshaft in from the front, turning as it goes.',
          tags: ['install: camshaft using soft-mallet', 'turn: camshaft'],
          cautions: [['notice', 'A steel hammer cracks the core. Use the soft mallet.']],
        },
        {
          text: 'Measure the end float with the dial gauge.',
          tags: ['measure: camshaft-end-float using dial-gauge'],
        },
      ],
    },
    {
      title: 'Crankshaft and main bearings',
      steps: [
        {
          text: 'Grind the locating lip off each shell, cooling between passes.',
          tags: ['alter: main-shells by grind-off-lip'],
          cautions: [
            [
              'caution',
              'The shell gets hot, and the wheel throws sparks. Wear a face shield and hold the shell with pliers.',
              'eyes',
              'hot-metal',
            ],
          ],
        },
        {text: 'Lay the crankshaft in its shells, dry.', tags: ['install: crankshaft', 'step: crank-in']},
        {
          text: 'Lay a strip along each journal and fit the caps.',
          tags: ['lay: main-clearance', 'install: main-caps'],
        },
        {
          text: 'Bring the main cap bolts up in three passes.',
          tags: ['torque: main-cap-bolts to 85 lbf·ft in 30, 60, 85 using torque-wrench-half'],
        },
        {
          text: 'Take the caps off and read each strip at its widest.',
          tags: [
            'measure: main-clearance within 0.0015–0.0035 in with strip-green',
            'if: main-clearance is out',
          ],
          steps: [
            {text: 'Find out why: wrong shell size, dirt behind a shell, or a worn journal.'},
            {
              text: 'Put it right, clean all five saddles again, and lay new strips.',
              tags: ['clean: main-saddles', 'repeat: crank-in'],
            },
          ],
        },
        {text: 'Bring the bolts up for good.', tags: ['torque: main-cap-bolts using torque-wrench-half']},
        {
          text: 'Wire the bolts in pairs, pulling tight.',
          tags: ['lock: main-cap-bolts with safety-wire 0.041 in'],
        },
        {
          text: 'Turn the crankshaft by hand through two turns.',
          tags: ['check: turns-freely', 'witness: bottom-end-closed'],
        },
      ],
    },
    {
      title: 'Head, sump and filling',
      steps: [
        {
          text: 'Fit three new core plugs.',
          tags: [
            'renew: core-plugs',
            'install: core-plugs',
            'waive: single-use-reused by shop lead because "the rear plug was new last winter and has never seen coolant"',
          ],
        },
        {text: 'Lower the head on and run the bolts down by hand.', tags: ['install: cylinder-head']},
        {
          text: 'Bring the head bolts up in the order drawn.',
          tags: ['torque: head-bolts using torque-wrench-half'],
        },
        {text: 'Set the valve lash on a cold engine.', tags: ['check: valve-lash']},
        {text: 'Seal the sump joint.', tags: ['seal: sump-joint with liquid-gasket']},
        {text: 'Nip up the pump bolts.', tags: ['torque: pump-bolts', 'lock: pump-bolts']},
        {text: 'Leave the sump joint alone.', tags: ['cure: sump-joint']},
        {
          text: 'Fill the cooling system.',
          tags: ['fill: cooling with coolant to the bottom of the filler neck'],
          cautions: [
            ['caution', 'Coolant is sweet and poisonous. Wipe up every drop: dogs drink it.', 'poison'],
          ],
        },
      ],
    },
  ],
  {
    title: 'Camshaft, crankshaft and head',
    revision: 'C',
    date: '2026-05-14',
    author: 'J. Marsh',
    approved: 'R. Tide',
  },
  '03-camshaft.md',
);

export const trialBook = {spec: trialSpec, procedures: [trialProcedure]};
