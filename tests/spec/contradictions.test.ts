/** The specification against itself: values, materials and orders that cannot stand beside each other. */
import {describe, expect, it} from 'vitest';
import {expectMarked, readClean, readMarked, SHOP} from './marked.js';

const BOLTS = 'torque: 60 lbf·ft, threads: dry, lock: wire';

describe('values', () => {
  const wrong: readonly [string, string, string][] = [
    [
      'passes that do not rise',
      `fasteners: {bolts: {${BOLTS}, passes: «spec-contradiction|[30 lbf·ft, 20 lbf·ft, 60 lbf·ft]»}}\n`,
      'pass 2 of bolts is no higher than pass 1',
    ],
    [
      'passes that stop short of the torque',
      `fasteners: {bolts: {${BOLTS}, passes: «spec-contradiction|[30 lbf·ft, 50 lbf·ft]»}}\n`,
      'the last pass of bolts is not its torque',
    ],
    [
      'passes to a torque that is snug',
      'fasteners: {bolts: {torque: snug, threads: dry, lock: wire, passes: «spec-contradiction|[30 lbf·ft]»}}\n',
      'the last pass of bolts is not its torque',
    ],
    [
      'a taper of one reading',
      `fits: {a: {limits: 1.000 in, when: {}}, taper: {taper-of: [«spec-contradiction|a»], limits: max 0.001 in, when: {}}}\n`,
      'the taper of one reading is nothing',
    ],
    [
      'an out-of-round at a place that one of its fits does not read',
      `fits:
  a: {at: [front, rear], limits: 1.000 in, when: {}}
  b: {at: [front], limits: 1.000 in, when: {}}
  round: {at: [front, rear], out-of-round-of: [a, «spec-contradiction|b»], limits: max 0.001 in, when: {}}
`,
      'round is worked out at rear, where b is not read',
    ],
    [
      'a taper of itself',
      `fits: {a: {limits: 1.000 in, when: {}}, taper: {taper-of: [a, «spec-contradiction|taper»], limits: max 0.001 in, when: {}}}\n`,
      'taper is worked out from itself',
    ],
    [
      'a taper that is an out-of-round too',
      `fits:
  a: {limits: 1.000 in, when: {}}
  b: {limits: 1.000 in, when: {}}
  shape: {taper-of: [a, b], out-of-round-of: [«spec-contradiction|a», b], limits: max 0.001 in, when: {}}
`,
      'shape is both a taper and an out-of-round',
    ],
    [
      'bearing bores out of order',
      `surfaces:
  bores:
    at: [front, second, rear]
    assembly: lubed
    sizes: {front: 2.125 in, second: 2.085 in, rear: «spec-contradiction|2.105 in»}
    order: falling
`,
      'bores[rear] is larger than bores[second] where sizes are falling',
    ],
    [
      'a core plug of another size than its bore',
      `parts: {plug: {size: «spec-contradiction|1-1/8 in», seats-in: seat}}
surfaces: {seat: {assembly: clean, size: 1-1/2 in}}
`,
      'the size of plug is not that of seat, where it seats',
    ],
    [
      'a plug that fits one of its places and not the other',
      `parts: {plug: {at: [front, rear], size: «spec-contradiction|1-1/2 in», seats-in: seat}}
surfaces: {seat: {at: [front, rear], assembly: clean, sizes: {front: 1.500 in, rear: 1.125 in}}}
`,
      'the size of plug is not that of seat[rear], where it seats',
    ],
  ];
  it.each(wrong)('%s', (_, engine, says) => {
    expect(expectMarked({engine})[0]?.says).toBe(says);
  });

  it('let stand what agrees: other units, neighbours of one size, a pass within a torque with limits', () => {
    readClean({
      engine: `
parts: {plug: {size: 38.1 mm, seats-in: seat}}
surfaces:
  seat: {assembly: clean, size: 1-1/2 in}
  bores: {at: [a, b, c], assembly: dry, sizes: {a: 2 in, b: 2 in, c: 50 mm}, order: falling}
fasteners:
  bolts: {torque: 55–65 lbf·ft, threads: dry, lock: wire, passes: [40 N·m, 60 lbf·ft]}
  nuts: {torque: 115 N·m, threads: dry, lock: wire, passes: [60 lbf·ft, 85 lbf·ft]}
`,
    });
  });
});

describe('materials', () => {
  const wrong: readonly [string, string, string][] = [
    [
      'a lubricant that is a sealant',
      'surfaces: {face: {assembly: lubed, lubricants: [oil, «spec-contradiction|silicone»]}}\n',
      'silicone is a sealant where a lubricant is due',
    ],
    [
      'a lock that is a gasket',
      'fasteners: {bolts: {torque: snug, threads: dry, lock: «spec-contradiction|paper»}}\n',
      'paper is a gasket where a lock is due',
    ],
    [
      'a strip that is a lubricant',
      'fits: {gap: {limits: 1–2 mm, by: strip, using: [«spec-contradiction|oil»], when: {}}}\n',
      'oil is a lubricant where a gauging strip is due',
    ],
    [
      'a dry surface with a lubricant',
      'surfaces: {face: {assembly: dry, lubricants: [«spec-contradiction|oil»]}}\n',
      'face goes together dry, and names oil as its lubricant',
    ],
    [
      'silicone on a joint where it is barred',
      'joints: {seam: {seal: «spec-contradiction|[silicone]»}}\nbarred: [{what: [silicone], on: [seam], because: beads come loose}]\n',
      'silicone is barred on seam: beads come loose',
    ],
    [
      'a hammer that is barred everywhere',
      'parts: {shaft: {using: [mallet, «spec-contradiction|hammer»]}}\nbarred: [{what: [hammer], because: it bruises}]\n',
      'steel hammer is barred on shaft: it bruises',
    ],
    [
      'a kind of lock that is barred',
      `fasteners: {bolts: {torque: snug, threads: dry, lock: «spec-contradiction|cotter-pin»}}\nbarred: [{what: [cotter-pin], on: [bolts], because: no room}]\n`,
      'cotter-pin is barred on bolts: no room',
    ],
    [
      'a consumable of a kind of lock that is barred',
      `fasteners: {bolts: {torque: snug, threads: dry, lock: «spec-contradiction|wire»}}\nbarred: [{what: [safety-wire], on: [bolts], because: no holes}]\n`,
      'wire is barred on bolts: no holes',
    ],
    [
      'a thread lubricant that is barred',
      `fasteners: {bolts: {torque: snug, threads: «spec-contradiction|[oil]», lock: wire}}\nbarred: [{what: [oil], on: [bolts], because: stretch}]\n`,
      'oil is barred on bolts: stretch',
    ],
    [
      'a lubricant that is barred',
      'surfaces: {face: {assembly: lubed, lubricants: [«spec-contradiction|oil»]}}\nbarred: [{what: [oil], on: [face], because: thin}]\n',
      'oil is barred on face: thin',
    ],
  ];
  it.each(wrong)('%s', (_, engine, says) => {
    const [problem] = expectMarked({engine});
    expect(problem?.says).toBe(says);
    expect(problem?.related).toHaveLength(1);
  });

  it('a kind of lock for a consumable that is none', () => {
    const shop = SHOP.replace(
      '  oil: {use: lubricant}',
      '  «spec-contradiction|oil»: {use: lubricant, lock: cotter-pin}',
    );
    expectMarked({shop, engine: ''});
  });

  it('a bar that names more than a thousand, which would be held against every item', () => {
    const names = Array.from({length: 1001}, () => 'paper').join(', ');
    const [problem] = expectMarked({engine: `barred: [{what: «spec-form|[${names}]», because: thin}]\n`});
    expect(problem?.says).toBe('what is a list where at most 1000 entries is due');
  });

  it('let stand what is barred elsewhere', () => {
    readClean({
      engine:
        'joints: {seam: {seal: [silicone]}, other: {seal: [paper]}}\nbarred: [{what: [silicone], on: [other], because: beads}]\n',
    });
  });
});

describe('orders', () => {
  it('finds parts that wait for each other, each circle once', () => {
    const [first, second] = expectMarked({
      engine: `parts:
  one: {after: [«spec-contradiction|three»]}
  two: {after: [one]}
  three: {after: [two]}
  four: {after: [«spec-contradiction|four»]}
  five: {after: [one, four]}
`,
    });
    expect(first?.says).toBe('no part of the circle can be the first: one after three after two after one');
    expect(first?.related).toHaveLength(2);
    expect(second?.says).toBe('no part of the circle can be the first: four after four');
  });

  it('shows of circles that share a part one, and the other once that is cut', () => {
    const [problem] = expectMarked({
      engine:
        'parts: {one: {after: [«spec-contradiction|two», three]}, two: {after: [one]}, three: {after: [one]}}\n',
    });
    expect(problem?.says).toBe('no part of the circle can be the first: one after two after one');
    expectMarked({
      engine:
        'parts: {one: {after: [«spec-contradiction|three»]}, two: {after: [one]}, three: {after: [one]}}\n',
    });
  });

  it('finds a part and a fastener that wait for each other', () => {
    const [problem] = expectMarked({
      engine:
        'parts: {pin: {after: [«spec-contradiction|bolt»]}}\nfasteners: {bolt: {after: [pin], torque: snug, threads: dry, lock: wire}}\n',
    });
    expect(problem?.says).toBe('no part of the circle can be the first: pin after bolt after pin');
  });

  it('takes a trial fit for no circle', () => {
    readClean({
      engine: 'parts: {caps: {after: [gap]}}\nfits: {gap: {limits: 1–2 mm, when: {installed: [caps]}}}\n',
    });
  });

  it('follows ten thousand parts, half of them a circle, half a chain that leads to it', () => {
    const parts = Array.from({length: 10_000}, (_, index) => `  p${index}: {after: [p${index + 1}]}\n`);
    const {spec} = readMarked({engine: `parts:\n${parts.join('')}  p10000: {after: [p5000]}\n`});
    expect(spec.problems).toHaveLength(1);
    expect(spec.problems[0]?.related).toHaveLength(12);
  });

  const wrong: readonly [string, string, string][] = [
    [
      'a joint closed by a part that does not meet in it',
      `parts: {block: {}, sump: {}, cover: {closes: [«spec-contradiction|seam»]}}
joints: {seam: {between: [block, sump], seal: [paper]}}
`,
      'cover closes seam, which is not between it and anything',
    ],
    [
      'a tightening order that names none of the layout',
      `fasteners: {«spec-contradiction|bolts»: {${BOLTS}, count: 2, layout: {unit: in, a: [0, 0], b: [1, 0]}, order: [a, b, c]}}\n`,
      'the order of bolts names c, which it has not',
    ],
    [
      'a tightening order that leaves one out',
      `fasteners: {«spec-contradiction|bolts»: {${BOLTS}, count: 2, layout: {unit: in, a: [0, 0], b: [1, 0]}, order: [a]}}\n`,
      'the order of bolts leaves out b',
    ],
    [
      'a layout of fewer than there are',
      `fasteners: {«spec-contradiction|bolts»: {${BOLTS}, count: 3, layout: {unit: in, a: [0, 0], b: [1, 0]}}}\n`,
      'the layout of bolts shows 2 where there are 3',
    ],
    [
      'a run of wire through what the layout has not',
      `fasteners: {bolts: {${BOLTS}, count: 2, layout: {unit: in, a: [0, 0], b: [1, 0]}, runs: [«spec-contradiction|[a, b, c]»]}}\n`,
      'a run of bolts names c, which its layout has not',
    ],
    [
      'a run of wire without a layout',
      `fasteners: {bolts: {${BOLTS}, count: 1, runs: [«spec-contradiction|[a]»]}}\n`,
      'a run of bolts names a, which its layout has not',
    ],
    [
      'runs of wire that leave one out',
      `fasteners: {bolts: {${BOLTS}, count: 2, layout: {unit: in, a: [0, 0], b: [1, 0]}, runs: [«spec-contradiction|[b]»]}}\n`,
      'the runs of bolts leave out a',
    ],
    [
      'two runs of wire through one bolt',
      `fasteners: {bolts: {${BOLTS}, count: 2, layout: {unit: in, a: [0, 0], b: [1, 0]}, runs: [[a, b], «spec-contradiction|[b]»]}}\n`,
      'the runs of bolts go through b twice',
    ],
  ];
  it.each(wrong)('%s', (_, engine, says) => {
    expect(expectMarked({engine})[0]?.says).toBe(says);
  });

  it('says of every number of an order that is missing or twice', () => {
    const {spec} = readMarked({engine: `fasteners: {bolts: {${BOLTS}, count: 4, order: [1, 3, 3, 5]}}\n`});
    expect(spec.problems.map(({says}) => says)).toEqual([
      'the order of bolts names 3 twice',
      'the order of bolts names 5, which it has not',
      'the order of bolts leaves out 2',
      'the order of bolts leaves out 4',
    ]);
  });

  it('takes layout and order for the whole group or for one place', () => {
    readClean({
      engine: `
parts: {block: {}, sump: {closes: [seam, face-seam]}}
surfaces: {flange: {on: sump, assembly: clean}}
joints: {seam: {between: [block, sump], seal: [paper]}, face-seam: {between: [block, flange], seal: [paper]}}
fasteners:
  all: {${BOLTS}, at: [front, rear], count: 4, order: [1, 4, 2, 3]}
  each: {${BOLTS}, at: [front, rear], count: 4, order: [2, 1]}
  drawn: {${BOLTS}, at: [front, rear], count: 4, layout: {unit: mm, a: [0, 0], b: [30.5, -1]}, order: [b, a]}
`,
    });
  });
});
