/** Runs of safety wire, threads and what is on them: all that is told of it. Every value is invented. */
import {describe} from 'vitest';
import {SILENT, tellsOf} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
consumables:
  wire: {use: lock, lock: safety-wire}
  thick-wire: {use: lock, lock: safety-wire, size: 0.051 in}
  thread-lock: {use: lock, lock: threadlocker}
  engine-oil: {use: lubricant}
  paste: {use: sealant}
`;
const bolts = (rest: string) => `parts:
  block: {given: true}
  cap: {}
fasteners:
  bolts: {holds: [cap], torque: 40 lbf·ft, ${rest}}
`;
const wired = (spots: string, runs: string, lock = 'wire') =>
  bolts(`count: 4, threads: dry, lock: ${lock}, layout: {unit: in, ${spots}}${runs && `, runs: [${runs}]`}`);
const line = (...at: readonly number[]) => at.map((x, index) => `b${index + 1}: [${x}, 0]`).join(', ');
const many = (count: number) => wired(line(...Array.from({length: count}, (_, index) => 7 * index)), '');

describe('a run of wire', () => {
  tellsOf(
    'wire-run',
    [
      [
        'over a wide gap and a narrow one',
        wired(line(0, 7, 9), '[b1, b2, b3]'),
        'install: cap',
        `
wire-run bolts: bolts: the run b1, b2, b3 spans 7.00 in (177.8 mm), and beyond 6 in (150 mm) fasteners are not wired together (TM 10-3930-659-34 2-22), unless the maker shows another run`,
      ],
      [
        'over a narrow gap and a wide one',
        wired(line(0, 2, 9), '[b1, b2, b3]'),
        'install: cap',
        `
wire-run bolts: bolts: the run b1, b2, b3 spans 7.00 in (177.8 mm), and beyond 6 in (150 mm) fasteners are not wired together (TM 10-3930-659-34 2-22), unless the maker shows another run`,
      ],
      [
        'of too many, wide apart',
        wired(line(0, 4.5, 9, 13.5), '[b1, b2, b3, b4]'),
        'install: cap',
        `
wire-run bolts: bolts: the run b1, b2, b3, b4 joins 4 that are up to 4.50 in (114.3 mm) apart, and from 4 in (100 mm) on 3 is the most (TM 10-3930-659-34 2-22), unless the maker shows another run`,
      ],
      ['as far apart as they may be', wired(line(0, 6), '[b1, b2]'), 'install: cap', SILENT],
      [
        'as far apart as they may be, but for what comes of counting in inches',
        wired(line(0, 6.000000006), '[b1, b2]'),
        'install: cap',
        SILENT,
      ],
      ['of three, wide apart', wired(line(0, 4.5, 9), '[b1, b2, b3]'), 'install: cap', SILENT],
      [
        'that is too long',
        wired(line(0, 3.9, 7.8, 11.7, 15.6, 19.5, 23.4), '[b1, b2, b3, b4, b5, b6, b7]'),
        'install: cap',
        `
wire-run bolts: bolts: the run b1, b2, b3, b4, b5, b6, b7 takes 63 in (1610 mm) of wire, and 24 in (610 mm) is the most (wire length, TM 10-3930-659-34 2-22), unless the maker shows another run`,
      ],
      [
        'that is too long, of thick wire',
        wired(line(0, 3.9, 7.8, 11.7, 15.6, 19.5, 23.4), '[b1, b2, b3, b4, b5, b6, b7]', 'thick-wire'),
        'install: cap',
        `
wire-run bolts: bolts: the run b1, b2, b3, b4, b5, b6, b7 takes 67 in (1690 mm) of wire, and 24 in (610 mm) is the most (wire length, TM 10-3930-659-34 2-22), unless the maker shows another run`,
      ],
      ['with one that the layout lacks', wired(line(0, 7), '[b1, b2, b9]'), 'install: cap', SILENT],
      ['of one', wired(line(0, 7), '[b1]'), 'install: cap', SILENT],
      ['that is not stated, of one', wired(line(0), ''), 'install: cap', SILENT],
      [
        'that is not stated, of as many as an engine may have',
        many(500),
        'install: cap',
        `
wire-run bolts: bolts: b1 is 7.00 in (177.8 mm) from its nearest neighbour, and beyond 6 in (150 mm) fasteners are not wired together (TM 10-3930-659-34 2-22); wire it to a tie point and write its run as one, unless the maker shows another run`,
      ],
      ['that is not stated, of more than any engine has', many(501), 'install: cap', SILENT],
    ],
    SHOP,
  );
  tellsOf(
    'wire-size',
    [
      [
        'through a hole of which only the most is known',
        bolts('threads: dry, lock: thick-wire, hole: max 0.03 in'),
        'install: cap',
        SILENT,
      ],
      ['through no hole', bolts('threads: dry, lock: thick-wire'), 'install: cap', SILENT],
      [
        'through no hole, as it is put in',
        bolts('threads: dry, lock: wire'),
        'install: cap; torque: bolts to 40 lbf·ft; lock: bolts with thick-wire',
        SILENT,
      ],
      [
        'that is too thick',
        bolts('threads: dry, lock: thick-wire, hole: 0.047 in'),
        'install: cap',
        `
wire-size bolts: bolts: thick-wire of 0.051 in (1.30 mm) is too thick for a hole of 0.047 in (1.19 mm), which takes 0.032–0.041 in (0.82–1.04 mm) (wire by hole, AC 43.13-1B 7-124)
  see engine.yaml:8: bolts is specified here`,
      ],
      [
        'through no hole, where only the step names it',
        bolts('threads: dry, lock: wire'),
        'install: cap; torque: bolts; lock: bolts with thick-wire',
        SILENT,
      ],
      ['on a part', bolts('threads: dry, lock: wire, hole: 0.047 in'), 'lock: cap with thick-wire', SILENT],
    ],
    SHOP,
  );
});

const NO_LOCK = 'lock: {value: none, because: stretch}';

describe('a thread', () => {
  tellsOf(
    'thread-unknown',
    [
      [
        'that is none',
        bolts(`threads: dry, thread: 1/2-14 UNC, ${NO_LOCK}`),
        'install: cap',
        `
thread-unknown bolts: bolts: 1/2 UNC has 13 threads per inch, not 14; it has 1/2-13 UNC, 1/2-20 UNF, 1/2-28 UNEF`,
      ],
      [
        'that is special',
        bolts(`threads: dry, thread: {value: 1/2-14 UNC, because: special}, ${NO_LOCK}`),
        'install: cap',
        SILENT,
      ],
    ],
    SHOP,
  );
  tellsOf(
    'thread-engagement',
    [
      [
        'without a grade',
        bolts(`threads: dry, thread: 1/2-13 UNC, engagement: 0.2 in, into: cast iron, ${NO_LOCK}`),
        'install: cap',
        SILENT,
      ],
      [
        'that goes in as far as it must, but for what comes of counting in inches',
        bolts(
          `threads: dry, thread: 1/2-13 UNC, grade: SAE 8, engagement: 0.810999999189 in, into: cast iron, ${NO_LOCK}`,
        ),
        'install: cap',
        SILENT,
      ],
      [
        'that goes in too little',
        bolts(
          `threads: dry, thread: 1/2-13 UNC, grade: SAE 8, engagement: 0.2 in, into: cast iron, ${NO_LOCK}`,
        ),
        'install: cap',
        `
thread-engagement bolts: bolts: 0.2 in (5 mm) of 1/2-13 UNC in cast iron is less than the 0.811 in (20.60 mm) that the full strength of SAE J429 grade 8 takes (length of engagement, FED-STD-H28/2B); the maker's figure outranks this estimate`,
      ],
    ],
    SHOP,
  );
  const graded = (rest: string) =>
    bolts(`thread: 1/2-13 UNC, grade: SAE 8, ${rest}, ${NO_LOCK}`).replace('40 lbf', '300 lbf');
  tellsOf(
    'preload-out-of-range',
    [
      ['of which nothing is known', graded('count: 2'), 'install: cap', SILENT],
      ['of which it is unknown', graded('threads: unknown'), 'install: cap', SILENT],
      [
        'that is dry',
        graded('threads: dry'),
        'install: cap',
        `
preload-out-of-range bolts: bolts: 300 lbf·ft (407 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 211 % of the proof load of SAE J429 grade 8 by F = T/(K·d), above 90 %, and 137–285 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'that is oiled',
        graded('threads: [engine-oil]'),
        'install: cap',
        `
preload-out-of-range bolts: bolts: 300 lbf·ft (407 N·m) on 1/2-13 UNC with K = 0.18 (engine-oil) is 235 % of the proof load of SAE J429 grade 8 by F = T/(K·d), above 90 %, and 176–294 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'that is sealed',
        graded('threads: [paste]'),
        'install: cap',
        `
preload-out-of-range bolts: bolts: 300 lbf·ft (407 N·m) on 1/2-13 UNC with K = 0.20 (paste) is 211 % of the proof load of SAE J429 grade 8 by F = T/(K·d), above 90 %, and 137–285 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      ['with what nobody knows', graded('threads: [nobody]'), 'install: cap', SILENT],
      [
        'that is torqued to a tolerance',
        graded('threads: dry').replace('300 lbf', '300 ±5 lbf'),
        'install: cap',
        `
preload-out-of-range bolts: bolts: 300 ±5 lbf·ft (400–413 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 211 % of the proof load of SAE J429 grade 8 by F = T/(K·d), above 90 %, and 137–285 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
    ],
    SHOP,
  );
});

const waits = (rest: string) => `parts:
  block: {given: true}
  cap: {after: [stop]}
  stop: {}
fasteners:
  first: {count: 2, holds: [cap], torque: 40 lbf·ft, threads: dry, lock: wire, stripe: true}
  bolts: {count: 2, holds: [cap], threads: dry, ${rest}}
`;
const LATER = '; install: stop; torque: first; lock: first with wire; stripe: first';

describe('what is tightened or locked before another', () => {
  tellsOf(
    'install-order',
    [
      ['is a part', waits(`torque: 10 lbf·ft, ${NO_LOCK}`), `torque: cap${LATER}`, SILENT],
      [
        'is a part that is locked',
        waits(`torque: 10 lbf·ft, ${NO_LOCK}`),
        `lock: cap with wire${LATER}`,
        SILENT,
      ],
      [
        'waits for bolts that are tight and not locked',
        waits(`torque: 10 lbf·ft, after: [first], ${NO_LOCK}`),
        'install: stop; torque: first; torque: bolts; lock: first with wire; stripe: first',
        SILENT,
      ],
      [
        'waits for bolts that are slack',
        waits(`torque: 10 lbf·ft, after: [first], ${NO_LOCK}`),
        `torque: bolts${LATER}`,
        `
install-order bolts: bolts are torqued before first are tight
  see engine.yaml:10: bolts are torqued after first`,
      ],
      [
        'is run down, though no torque is specified',
        waits(`after: [first], ${NO_LOCK}`),
        `torque: bolts to snug${LATER}`,
        SILENT,
      ],
      [
        'has threadlocker on, of which the step says nothing',
        waits('torque: 10 lbf·ft, lock: thread-lock, lock-after: [first]'),
        `lock: bolts${LATER}`,
        SILENT,
      ],
      [
        'has wire on, of which the step says nothing',
        waits('torque: 10 lbf·ft, lock: wire, lock-after: [first]'),
        `lock: bolts${LATER}`,
        `
install-order bolts: bolts are locked before first are torqued
  see engine.yaml:10: bolts are locked after first`,
      ],
      [
        'has threadlocker and wire on',
        waits('torque: 10 lbf·ft, lock: [thread-lock, wire], lock-after: [first]'),
        `lock: bolts with thread-lock, wire${LATER}`,
        `
install-order bolts: bolts are locked before first are torqued
  see engine.yaml:10: bolts are locked after first`,
      ],
      [
        'has a lock of which nobody knows',
        waits('torque: 10 lbf·ft, lock-after: [first]'),
        `lock: bolts${LATER}`,
        `
install-order bolts: bolts are locked before first are torqued
  see engine.yaml:10: bolts are locked after first`,
      ],
    ],
    SHOP,
  );
});
