/** Practice: what holds for all items of a kind, and what an item must say that departs from it. */
import {describe, expect, it} from 'vitest';
import type {Texts} from './marked.js';
import {expectMarked, readClean, SHOP} from './marked.js';

function withPractice(practice: string, engine: string): Texts {
  return {shop: `${SHOP}practice:\n${practice}`, engine};
}

const BEARINGS =
  '  - {every: surface, type: plain-bearing, is: {assembly: lubed, lubricants: [lube]}, source: maker}\n';

describe('practice', () => {
  it('fills in what an item leaves out, with its own source', () => {
    const spec = readClean(withPractice(BEARINGS, 'surfaces: {bore: {type: plain-bearing}}\n'));
    expect(spec.items.get('bore')).toMatchObject({
      assembly: {value: 'lubed', source: 'maker', fromPractice: true, where: {file: 'shop.yaml'}},
      lubricants: [{value: 'lube'}],
    });
  });

  it('speaks to the type that it names, and to no other', () => {
    expectMarked(
      withPractice(BEARINGS, 'surfaces: {«spec-silent|face»: {}, «spec-silent|rim»: {type: gasket-face}}\n'),
    );
  });

  it('of a type goes before that of all types, wherever it stands', () => {
    const practice = `  - {every: surface, is: {assembly: clean}}\n${BEARINGS}`;
    const spec = readClean(withPractice(practice, 'surfaces: {bore: {type: plain-bearing}, face: {}}\n'));
    expect(spec.items.get('bore')).toMatchObject({assembly: {value: 'lubed'}});
    expect(spec.items.get('face')).toMatchObject({assembly: {value: 'clean'}, lubricants: []});
  });

  const departures: readonly [string, string, string][] = [
    [
      'another word',
      BEARINGS,
      'surfaces: {bore: {type: plain-bearing, assembly: «spec-contradiction|dry»}}\n',
    ],
    [
      'another list',
      BEARINGS,
      'surfaces: {bore: {type: plain-bearing, lubricants: «spec-contradiction|[oil]»}}\n',
    ],
    [
      'another amount',
      '  - {every: fastener, is: {torque: 60 lbf·ft, threads: dry, lock: wire}}\n',
      'fasteners: {bolts: {torque: «spec-contradiction|65 lbf·ft»}}\n',
    ],
    [
      'another answer to yes or no',
      '  - {every: part, is: {single-use: true}}\n',
      'parts: {ring: {single-use: «spec-contradiction|false»}}\n',
    ],
  ];
  it.each(departures)('asks why an item departs: %s', (_, practice, engine) => {
    const [problem] = expectMarked(withPractice(practice, engine));
    expect(problem?.says).toMatch(/ departs from practice without saying why$/);
    expect(problem?.related).toMatchObject([{where: {file: 'shop.yaml'}}]);
  });

  it.each([
    [
      'a departure that says why',
      BEARINGS,
      'surfaces: {bore: {type: plain-bearing, assembly: {value: dry, because: a bush that holds oil}}}\n',
    ],
    [
      'a list that says why',
      BEARINGS,
      'surfaces: {bore: {type: plain-bearing, lubricants: {value: [oil], because: no lube reaches it}}}\n',
    ],
    [
      'the same value in other units, and the same list in another order',
      '  - {every: fastener, is: {torque: 85 lbf·ft, threads: [oil, lube], lock: wire}}\n',
      'fasteners: {bolts: {torque: 115 N·m, threads: [lube, oil]}}\n',
    ],
  ])('lets stand %s', (_, practice, engine) => {
    readClean(withPractice(practice, engine));
  });

  it('asks once for the reason of none, and for what is unknown', () => {
    const practice = '  - {every: fastener, is: {torque: snug, threads: dry, lock: wire}}\n';
    expectMarked(
      withPractice(
        practice,
        'fasteners: {one: {lock: «spec-silent|none»}, two: {lock: «spec-silent|unknown»}}\n',
      ),
    );
  });

  it('does not fill in what has lost its point', () => {
    const practice = `  - {every: surface, is: {lubricants: [lube]}}
  - {every: fastener, is: {torque: 60 lbf·ft, passes: [30 lbf·ft, 60 lbf·ft], angle: 90°, threads: dry, lock: wire}}
  - {every: fit, is: {by: strip, using: [strip]}}
`;
    const spec = readClean(
      withPractice(
        practice,
        `surfaces: {face: {assembly: dry}, bore: {assembly: lubed}}
fasteners: {bolts: {torque: {value: 20 lbf·ft, because: small}}}
fits: {gap: {limits: 1–2 mm, when: {}, by: {value: gauge, because: no room}}}
`,
      ),
    );
    expect(spec.items.get('face')).toMatchObject({lubricants: []});
    expect(spec.items.get('bore')).toMatchObject({lubricants: [{value: 'lube'}]});
    expect(spec.items.get('bolts')).not.toHaveProperty('passes');
    expect(spec.items.get('bolts')).not.toHaveProperty('angle');
    expect(spec.items.get('gap')).toMatchObject({by: 'gauge', using: []});
  });

  it('has its own faults found once, however many items it speaks to', () => {
    const practice = `  - {every: fastener, is: {torque: «unit-missing|60», threads: [«unknown-item|ool»], lock: wire}}
  - {every: surface, is: {assembly: lubed}, source: «unknown-item|huose»}
`;
    expectMarked(
      withPractice(practice, 'fasteners: {one: {}, two: {}, three: {}}\nsurfaces: {face: {}, rim: {}}\n'),
    );
  });

  it('has a source, or its file has', () => {
    const shop = `${SHOP.replace('source: house\n', '').replace('range: 0.001–0.025 in', 'gauge: true').replace(', range: 0.001–0.003 in', '')}practice:
  - {every: surface, is: {assembly: «source-missing|lubed»}}
`;
    const [problem] = expectMarked({shop, engine: 'surfaces: {one: {}, two: {}}\n'});
    expect(problem?.says).toBe('assembly in practice has no source');
  });

  it('is in vain where it is not in a shape that can be read', () => {
    expectMarked(withPractice('  - «spec-form|dry»\n', 'parts: {ring: {}}\n'));
  });

  const OILED = '  - {every: surface, type: «unknown-item|plain-baering», is: {assembly: dry}}\n';
  it.each([
    [
      'a slip of the one type there is',
      OILED,
      'surfaces: {bore: {type: plain-bearing, assembly: clean}}\n',
      true,
    ],
    [
      'of another kind',
      BEARINGS.replace('surface,', 'part,').replace(/is: .*lube\]}/, 'is: {single-use: true}'),
      'surfaces: {bore: {type: plain-baering, assembly: clean}}\n',
      false,
    ],
    [
      'that only another engine has',
      BEARINGS,
      'surfaces: {bore: {type: gasket-face, assembly: clean}}\n',
      false,
    ],
    [
      'told from another by its number',
      '  - {every: fastener, type: m6-stud, is: {lock: wire}}\n',
      'fasteners: {nuts: {type: m8-stud, torque: snug, threads: dry, lock: wire}}\n',
      false,
    ],
    [
      'beside one that practice names too',
      `${BEARINGS}  - {every: surface, type: plane-bearing, is: {assembly: dry}}\n`,
      'surfaces: {bore: {type: plain-bearing}}\n',
      false,
    ],
  ])('of a type that no item has: %s', (_, practice, engine, isSlip) => {
    const problems = expectMarked(withPractice(practice, engine));
    expect(problems.map(({says, hint, fix}) => [says, hint, fix?.title])).toEqual(
      isSlip
        ? [
            [
              'practice speaks of the type plain-baering, and no surface is of that type',
              'did you mean plain-bearing?',
              'Write plain-bearing',
            ],
          ]
        : [],
    );
  });
});
