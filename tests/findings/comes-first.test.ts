/** What must come before a check, a filling, a part over a joint: hold points, cures, whole systems. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';
import {found} from '../help/found.js';

const ENGINE = `
parts:
  block: {given: true}
  dial-mount: {temporary: true}
  lip-seals: {at: [front, rear], after: [case-joint]}
joints:
  case-joint: {between: [block], seal: [liquid-gasket]}
  side-joints: {at: [left, right], between: [block], seal: [paper-gasket, liquid-gasket]}
fasteners:
  plug: {torque: 20 lbf·ft, threads: dry, lock: safety-wire, stripe: true}
  strap-bolts: {count: 2, after: [case-joint, side-joints], torque: 9 lbf·ft, threads: dry, lock: {value: none, because: short}}
fits:
  gap: {between: [block], limits: max 0.010 in, using: [feeler-gauges], when: {installed: [], tight: []}}
marks:
  number: {stamped: on the boss}
checks:
  timing: {expect: the marks meet, after: [dial-mount, gap, number]}
  compression: {expect: even}
  first-start: {expect: runs, after: [may-start, oil]}
hold-points:
  may-start: {asks: [timing], by: shop lead}
systems:
  oil: {joints: [], closed-by: [], with: [engine-oil], after: [plug, compression]}
`;

const JOINTS = [
  'clean: case-joint, side-joints',
  'seal: case-joint with liquid-gasket',
  'seal: side-joints with paper-gasket',
  'cure: case-joint for 24 h',
];
const WHOLE = [
  ...JOINTS,
  'install: lip-seals',
  'torque: strap-bolts to 9 lbf·ft',
  'torque: plug to 20 lbf·ft',
  'lock: plug with wire-032',
  'stripe: plug',
  'check: compression',
  'fill: oil with engine-oil',
  'record: number',
  'measure: gap using feeler-gauges',
  'install: dial-mount',
  'check: timing',
  'remove: dial-mount',
  'witness: may-start by "shop lead"',
  'check: first-start',
];

/** The steps with one moved before another, or left out. */
function moved(step: string, before?: string): string[] {
  const tag = WHOLE.find((one) => one.startsWith(step)) ?? step;
  const rest = WHOLE.filter((one) => one !== tag);
  return before === undefined ? rest : rest.flatMap((one) => (one.startsWith(before) ? [tag, one] : [one]));
}

describe('what comes before a check, a filling, a part over a joint', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['is all there', WHOLE, []],
    [
      'a start before its hold point is signed',
      moved('check: first-start', 'witness: may-start'),
      ['install-order: first-start is checked before may-start is witnessed'],
    ],
    [
      'a start before the oil is in',
      moved('fill: oil', 'record: nothing').concat('fill: oil with engine-oil'),
      ['install-order: first-start is checked before oil is filled'],
    ],
    [
      'a start for which nobody ever signs, which is told once',
      moved('witness: may-start'),
      ['left-unwitnessed: may-start is never witnessed'],
    ],
    [
      'a check made without what is put on for it',
      moved('install: dial-mount').filter((one) => one !== 'remove: dial-mount'),
      ['install-order: timing is checked before dial-mount is in'],
    ],
    [
      'a check made before a reading',
      moved('measure: gap', 'remove: dial-mount'),
      ['install-order: timing is checked before gap is measured'],
    ],
    [
      'a check made before a number is written down',
      moved('record: number', 'remove: dial-mount'),
      ['install-order: timing is checked before number is recorded'],
    ],
    [
      'a check made too early, though it is made again in time',
      moved('nothing', 'measure: gap').flatMap((one) => (one === 'nothing' ? ['check: timing'] : [one])),
      [
        'install-order: timing is checked before dial-mount is in',
        'install-order: timing is checked before gap is measured',
      ],
    ],
    [
      'a filling before a check',
      moved('check: compression', 'record: number'),
      ['install-order: oil is filled before compression is checked'],
    ],
    [
      'a filling before the plug is tight',
      WHOLE.flatMap((one) => {
        if (one.startsWith('torque: plug')) return [];
        return one.startsWith('lock: plug')
          ? ['fill: oil with engine-oil', 'torque: plug to 20 lbf·ft', one]
          : [one];
      }),
      [
        'install-order: oil is filled before plug is torqued',
        'install-order: oil is filled before compression is checked',
      ],
    ],
    [
      'a filling before the plug is locked',
      moved('lock: plug', 'record: number'),
      ['install-order: oil is filled before plug is locked'],
    ],
    [
      'a filling before the plug is striped',
      moved('stripe: plug', 'record: number'),
      ['install-order: oil is filled before plug is striped'],
    ],
    [
      'seals driven in while the joint cures',
      moved('install: lip-seals', 'cure: case-joint'),
      ['install-order: lip-seals go in before case-joint, which must be cured first'],
    ],
    [
      'seals driven in before the joint is made up',
      moved('install: lip-seals', 'seal: case-joint'),
      ['install-order: lip-seals go in before case-joint, which must be sealed first'],
    ],
    [
      'bolts drawn down while one joint cures, and the other has no cure in it',
      moved('torque: strap-bolts', 'cure: case-joint'),
      ['install-order: strap-bolts are torqued before case-joint is cured'],
    ],
    [
      'bolts drawn down over a joint not yet made up in one place',
      moved('seal: side-joints').flatMap((one) => {
        if (one.startsWith('cure')) return ['seal: side-joints[right] with paper-gasket', one];
        return one.startsWith('torque: plug') ? ['seal: side-joints[left] with paper-gasket', one] : [one];
      }),
      ['install-order: strap-bolts are torqued before side-joints[left] are sealed'],
    ],
    [
      'bolts drawn down over a joint that cures in one place and is open in the other',
      moved('seal: side-joints').flatMap((one) => {
        if (one.startsWith('cure')) return ['seal: side-joints[right] with liquid-gasket', one];
        return one.startsWith('torque: plug')
          ? ['seal: side-joints[left] with paper-gasket', 'cure: side-joints[right] for 24 h', one]
          : [one];
      }),
      [
        'install-order: strap-bolts are torqued before side-joints[left] are sealed',
        'install-order: strap-bolts are torqued before side-joints[right] are cured',
      ],
    ],
    [
      'a joint that no step leaves to cure, which is told once',
      moved('cure: case-joint'),
      ['left-unsealed: case-joint is sealed but never left to cure'],
    ],
    [
      'a joint that cures with all that its sealant is on',
      moved('cure: case-joint').flatMap((one) =>
        one.startsWith('install: lip-seals') ? [one, 'cure: liquid-gasket for 24 h'] : [one],
      ),
      ['install-order: lip-seals go in before case-joint, which must be cured first'],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(ENGINE, tags)).toEqual(says);
  });

  it('was there and is no more, which the story tells', () => {
    const tags = WHOLE.flatMap((one) =>
      one === 'check: first-start'
        ? ['measure: gap using feeler-gauges', 'drain: oil', one, 'fill: oil with engine-oil']
        : [one],
    );
    const steps = tags.map((tag, index) => `${index + 1}. Do it. \`${tag}\``).join('\n');
    const [finding] = check(book({engine: ENGINE, procedures: {'p.md': `\n${steps}\n`}})).findings;
    expect(finding?.message).toBe('first-start is checked before oil is filled');
    expect(finding?.story.map(({says}) => says)).toEqual([
      'step 11 of p.md: filled (fill: oil)',
      'step 19 of p.md: no longer filled (drain: oil)',
    ]);
    expect(finding?.related.map(({says}) => says)).toEqual(['first-start is checked after oil']);
  });

  it('may stand in another procedure, so that one checked alone is not blamed', () => {
    const engine = book({engine: ENGINE, procedures: {'p.md': '\n1. Do it. `check: timing`\n'}});
    const names = (alone: boolean) => check(engine, {alone}).findings.map(({name}) => name);
    expect(names(true)).not.toContain('install-order');
    expect(names(false)).toContain('install-order');
  });
});

/** Tightened while the bead is wet, wired when it has set. */
describe('what comes before the wire', () => {
  const LOCKED = `
parts:
  block: {given: true}
joints:
  case-joint: {between: [block], seal: [liquid-gasket]}
fasteners:
  case-bolts: {count: 6, lock-after: [case-joint], torque: 15 lbf·ft, threads: [locker], lock: [threadlocker, safety-wire]}
`;
  const MATERIALS = `
shop: {name: Example Works}
sources: {house: {title: Example house notes, note: invented}}
consumables:
  liquid-gasket: {use: sealant, cure: {value: 24 h, source: house}}
  locker: {use: lock, lock: threadlocker}
  wire: {use: lock, lock: safety-wire}
`;
  const [wire, cure] = ['lock: case-bolts with wire', 'cure: case-joint for 24 h'];
  const begun = [
    'clean: case-joint',
    'seal: case-joint with liquid-gasket',
    'lock: case-bolts with locker',
    'torque: case-bolts to 15 lbf·ft',
  ];
  const early = (is: string) => [`install-order: case-bolts are locked before case-joint is ${is}`];

  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['is the cure, for which threadlocker does not wait', [...begun, cure, wire], []],
    ['is the cure, which comes after it', [...begun, wire, cure], early('cured')],
    [
      'is a seal that is not there yet',
      [begun[0] ?? '', ...begun.slice(2), wire, begun[1] ?? '', cure],
      early('sealed'),
    ],
    [
      'is nothing at all once it cannot be missed twice',
      [...begun, wire],
      ['left-unsealed: case-joint is sealed but never left to cure'],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(LOCKED, tags, MATERIALS)).toEqual(says);
  });

  it('gets no wire offered behind the torque, where it would be too early', () => {
    const made = (lockAfter: string) => {
      const steps = [...begun, cure].map((tag, index) => `${index + 1}. Do it. \`${tag}\``).join('\n');
      const engine = LOCKED.replace('lock-after: [case-joint], ', lockAfter);
      const {findings} = check(book({shop: MATERIALS, engine, procedures: {'p.md': `\n${steps}\n`}}));
      return findings.filter(({name}) => name === 'left-unlocked').map(({fix}) => fix !== undefined);
    };
    expect(made('')).toEqual([true]);
    expect(made('lock-after: [case-joint], ')).toEqual([false]);
  });
});

describe('orders that cannot be', () => {
  it.each<readonly [string, string, string]>([
    [
      'a start that its own hold point asks for',
      ENGINE.replace('asks: [timing]', 'asks: [timing, first-start]'),
      'spec-contradiction: no part of the circle can be the first: first-start after may-start after first-start',
    ],
    [
      'oil that waits for the start',
      ENGINE.replace('after: [plug, compression]', 'after: [plug, first-start]'),
      'spec-contradiction: no part of the circle can be the first: first-start after oil after first-start',
    ],
  ])('%s', (_, engine, says) => {
    expect(found(engine, WHOLE).filter((one) => one.startsWith('spec-'))).toEqual([
      `${says}; take out the one that need not wait`,
    ]);
  });

  it('a check with a part in that waits for the check is a trial fit, and none of them', () => {
    const engine =
      'parts: {block: {given: true}, gear: {after: [mesh]}}\nchecks: {mesh: {expect: even, after: [gear]}}\n';
    expect(found(engine, ['install: gear', 'check: mesh', 'remove: gear', 'install: gear'])).toEqual([]);
  });
});
