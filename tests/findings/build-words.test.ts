/**
 * What the findings along the build say of small books, every word of every one: one place of two, one fastener and
 * several, done never or undone again. Read against the books by hand; every value is invented.
 */
import {describe, expect, it} from 'vitest';
import {found} from '../help/found.js';

type Told = readonly [tags: readonly string[], findings: readonly string[]];

const PUMP = `
parts:
  block: {given: true}
  cover: {after: [pump]}
  pump: {at: [front, rear]}
fasteners:
  pump-bolts: {at: [front, rear], count: 4, holds: [pump], torque: 18 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
  cover-nut: {count: 1, holds: [cover], torque: 10 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
`;
const BUILT = ['install: pump', 'torque: pump-bolts', 'install: cover', 'torque: cover-nut'];

const CAM = `
parts:
  block: {given: true}
  camshaft: {closes: [bores]}
surfaces:
  bores: {on: block, assembly: lubed, lubricants: [assembly-lube]}
`;

const LIP = CAM.replace('closes: [bores]', '');

const JOINT = `
parts:
  block: {given: true}
  cover: {closes: [joint]}
joints:
  joint: {between: [block, cover], seal: [liquid-gasket]}
`;

const CURE = 'cure: joint for 24 h';

const SEAT = `
parts:
  block: {given: true}
  cover: {closes: [seat]}
surfaces:
  seat: {on: block, assembly: clean}
`;

const PLAY = `
parts:
  block: {given: true}
  shaft: {}
  caps: {}
fasteners:
  bolts: {holds: [caps], torque: 18 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
fits:
  play: {between: [block, shaft], limits: 0.004–0.008 in, using: [feeler-gauges], when: {installed: [shaft, caps], tight: [bolts]}}
`;
const CLOSED = ['install: shaft', 'install: caps', 'torque: bolts'];

describe.each<[title: string, engine: string, ...told: Told[]]>([
  [
    'parts that go in and come out',
    PUMP,
    [BUILT, []],
    [
      ['install: pump[front]', ...BUILT],
      ['install-order: pump[front] goes in but is in already since step 1'],
    ],
    [[...BUILT, 'install: pump'], ['install-order: pump goes in but is in already since step 1']],
    [['remove: cover', ...BUILT], ['install-order: cover comes out but is not in']],
    [
      [...BUILT, 'remove: cover', 'install: cover', 'torque: cover-nut'],
      ['install-order: cover-nut is still tight when cover comes off'],
    ],
    [
      [...BUILT, 'remove: pump[rear]', 'install: pump[rear]', 'torque: pump-bolts[rear]'],
      ['install-order: pump-bolts[rear] are still tight when pump comes off'],
    ],
    [['torque: pump-bolts', ...BUILT], ['install-order: pump is not in when pump-bolts are torqued']],
    [['torque: cover-nut', ...BUILT], ['install-order: cover is not in when cover-nut is torqued']],
  ],
  [
    'bores that are lubed',
    CAM,
    [['clean: bores', 'lube: bores with assembly-lube', 'install: camshaft'], []],
    [
      ['clean: bores', 'install: camshaft'],
      ['lube-first: bores are not lubed with assembly-lube when camshaft closes them'],
    ],
    [
      ['clean: bores', 'lube: bores with assembly-lube', 'clean: bores', 'install: camshaft'],
      ['lube-first: bores are no longer lubed with assembly-lube when camshaft closes them'],
    ],
    [
      ['lube: bores with assembly-lube', 'install: camshaft'],
      ['clean-first: bores are lubed but were never cleaned'],
    ],
    [
      ['clean: bores', 'lube: bores with engine-oil', 'install: camshaft'],
      ['lube-first: bores carry engine-oil, not assembly-lube, when camshaft closes them'],
    ],
  ],
  [
    'bores that nothing closes',
    LIP,
    [['install: camshaft', 'clean: bores', 'lube: bores with assembly-lube'], []],
    [['install: camshaft'], ['lube-first: bores end the build without assembly-lube']],
    [
      ['install: camshaft', 'clean: bores', 'lube: bores with assembly-lube', 'clean: bores'],
      ['lube-first: bores end the build without assembly-lube'],
    ],
  ],
  [
    'a joint that is sealed',
    JOINT,
    [['clean: joint', 'seal: joint with liquid-gasket', 'install: cover', CURE], []],
    [
      ['seal: joint with liquid-gasket', 'install: cover', CURE],
      ['clean-first: joint is sealed but its faces are not clean'],
    ],
    [
      ['clean: joint', 'install: cover', 'seal: joint with liquid-gasket', CURE],
      ['install-order: joint is not made up when cover closes it'],
    ],
  ],
  [
    'a seat that is clean',
    SEAT,
    [['clean: seat', 'install: cover'], []],
    [['install: cover'], ['clean-first: seat is not clean when cover closes it, and goes together clean']],
    [
      ['clean: seat', 'lube: seat with engine-oil', 'install: cover'],
      ['clean-first: seat still carries lubricant when cover closes it, and goes together clean'],
    ],
  ],
  [
    'a play with the bolts tight',
    PLAY,
    [[...CLOSED, 'measure: play'], []],
    [
      ['install: shaft', 'install: caps', 'measure: play', 'torque: bolts'],
      ['measured-slack: play is measured while bolts are slack'],
    ],
    [
      [...CLOSED, 'loosen: bolts', 'measure: play', 'torque: bolts'],
      ['measured-slack: play is measured while bolts are slack'],
    ],
    [
      ['install: shaft', 'measure: play', 'install: caps', 'torque: bolts'],
      ['measured-slack: play is measured while caps are out and bolts are slack'],
    ],
  ],
])('%s', (_, engine, ...told) => {
  it.each(told.map(([tags, findings]) => [tags.join(' · '), tags, findings] as const))(
    '%s',
    (_title, tags, findings) => {
      expect(found(engine, tags)).toEqual(findings);
    },
  );
});
