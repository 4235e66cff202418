/**
 * Locks, passes, threads and names of fasteners, and all that is told of them: every word, where it stands, its story and its
 * mend. Read against the builds by hand; every value is invented.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import {whole} from '../help/whole.js';

type Told = readonly [tags: readonly string[], told: readonly string[]];

describe.each<[title: string, engine: string, ...rows: Told[]]>([
  [
    'bolts that are wired',
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, lock: safety-wire}
`,
    [['install: caps', 'torque: bolts', 'lock: bolts with wire-032'], []],
    [
      ['install: caps', 'lock: bolts with wire-032', 'torque: bolts', 'lock: bolts'],
      [
        'lock-before-torque: bolts are locked before the final torque @ 2 bolts',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [
      ['install: caps', 'torque: bolts', 'lock: bolts[rear] with cotter-pins', 'lock: bolts[front]'],
      [
        'lock-wrong-kind: bolts[rear] are locked with cotter-pins, and the specification asks for safety-wire @ 3 bolts[rear]',
        '  see: bolts, bolts is specified with lock: safety-wire',
        '  fix: Lock with safety-wire',
        '    2 / 3. Do it. `lock: bolts[rear] with safety-wire`',
      ],
    ],
    [
      ['install: caps', 'torque: bolts[front]', 'lock: bolts', 'torque: bolts[rear]', 'lock: bolts'],
      [
        'lock-before-torque: bolts[rear] are locked before the final torque @ 3 bolts[rear]',
        '  see: bolts, bolts is specified here',
      ],
    ],
  ],
  [
    'bolts with two locks that go on first',
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, lock: [spring-washer, self-locking-nut]}
`,
    [
      ['install: caps', 'torque: bolts', 'lock: bolts with spring-washer, self-locking-nut'],
      [
        'lock-before-torque: bolts are already at final torque, and spring-washer and self-locking-nut go on before it @ 3 bolts',
        '  story: 2, step 2 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [
      [
        'install: caps',
        'lock: bolts with spring-washer',
        'lock: bolts with self-locking-nut',
        'torque: bolts',
      ],
      [],
    ],
    [
      [
        'install: caps',
        'lock: bolts with spring-washer',
        'torque: bolts[front]',
        'lock: bolts with self-locking-nut',
        'torque: bolts[rear]',
      ],
      [
        'lock-before-torque: bolts[front] are already at final torque, and self-locking-nut goes on before it @ 4 bolts[front]',
        '  story: 3, step 3 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [
      ['install: caps', 'lock: bolts', 'torque: bolts'],
      [
        'lock-wrong-kind: bolts: which of spring-washer and self-locking-nut goes on here is not said @ 2 bolts',
        '  see: bolts, bolts is specified with lock: [spring-washer, self-locking-nut]',
      ],
    ],
  ],
  [
    'bolts that take no lock',
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
`,
    [
      ['install: caps', 'torque: bolts', 'lock: bolts with wire-032'],
      [
        'lock-wrong-kind: bolts are specified without a lock @ 3 bolts',
        '  see: bolts, bolts is specified with lock: none',
      ],
    ],
    [
      ['install: caps', 'lock: bolts[front]', 'torque: bolts'],
      [
        'lock-before-torque: bolts[front] are locked before the final torque @ 2 bolts[front]',
        '  see: bolts, bolts is specified here',
        'lock-wrong-kind: bolts[front] are specified without a lock @ 2 bolts[front]',
        '  see: bolts, bolts is specified with lock: none',
      ],
    ],
  ],
  [
    'bolts whose lock nobody knows',
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, lock: unknown}
`,
    [
      ['install: caps', 'torque: bolts', 'lock: bolts with wire-032'],
      ['spec-silent: lock of bolts is unknown; find out, and write it down with its source @ bolts bolts'],
    ],
    [
      ['install: caps', 'lock: bolts', 'torque: bolts'],
      [
        'spec-silent: lock of bolts is unknown; find out, and write it down with its source @ bolts bolts',
        'lock-before-torque: bolts are locked before the final torque @ 2 bolts',
        '  see: bolts, bolts is specified here',
      ],
    ],
  ],
  [
    'bolts without a torque on a spring washer',
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: {value: none, because: by feel}, threads: dry, lock: spring-washer}
`,
    [['install: caps', 'torque: bolts', 'lock: bolts with spring-washer'], []],
  ],
  [
    'bolts on a spring washer whose torque nobody knows',
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: unknown, threads: dry, lock: spring-washer}
`,
    [
      ['install: caps', 'torque: bolts', 'lock: bolts with spring-washer'],
      ['spec-silent: torque of bolts is unknown; find out, and write it down with its source @ bolts bolts'],
    ],
  ],
  [
    'passes of a torque',
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
`,
    [['install: caps', 'torque: bolts to 40 lbf·ft in 20, 40'], []],
    [
      ['install: caps', 'torque: bolts to 40 lbf·ft in 20, 20, 40'],
      [
        'passes-not-rising: bolts: the pass of 20 lbf·ft is not above the one before it @ 2 bolts',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [
      ['install: caps', 'torque: bolts to 40 lbf·ft in 20, 30'],
      [
        'passes-not-rising: bolts: the last pass is 30 lbf·ft, not 40 lbf·ft @ 2 bolts',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [
      ['install: caps', 'torque: bolts to 40 lbf·ft in 40, 20, 40'],
      [
        'passes-not-rising: bolts: the pass of 20 lbf·ft is not above the one before it @ 2 bolts',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [['install: caps', 'torque: bolts to 20 lbf·ft', 'torque: bolts to 40 lbf·ft'], []],
    [
      [
        'install: caps',
        'torque: bolts to 20 lbf·ft',
        'torque: bolts to 10 lbf·ft',
        'torque: bolts to 40 lbf·ft',
      ],
      [
        'passes-not-rising: bolts: 10 lbf·ft is below the 20 lbf·ft of step 2 @ 3 bolts',
        '  story: 2, step 2 of procedure.md: tight (torque: bolts)',
      ],
    ],
    [
      [
        'install: caps',
        'torque: bolts to 20 lbf·ft',
        'torque: bolts to 20 lbf·ft',
        'torque: bolts to 40 lbf·ft',
      ],
      [],
    ],
    [
      ['install: caps', 'torque: bolts[rear] to 20 lbf·ft', 'torque: bolts to 40 lbf·ft in 10, 40'],
      [
        'passes-not-rising: bolts[rear]: 10 lbf·ft is below the 20 lbf·ft of step 2 @ 3 bolts[rear]',
        '  story: 2, step 2 of procedure.md: tight (torque: bolts)',
      ],
    ],
    [['install: caps', 'torque: bolts to snug', 'torque: bolts to 40 lbf·ft in 20, 40 lbf·ft'], []],
    [
      [
        'install: caps',
        'torque: bolts to 20 lbf·ft',
        'loosen: bolts',
        'torque: bolts to 40 lbf·ft in 10, 40',
      ],
      [
        'value-disagrees: bolts are torqued to 20 lbf·ft (27 N·m), and 40 lbf·ft (54 N·m) is specified @ 2 bolts',
        '  see: bolts, bolts is specified here',
        '  fix: Write 40 lbf·ft',
        '    1 / 2. Do it. `torque: bolts to 40 lbf·ft`',
      ],
    ],
    [['install: caps', 'torque: bolts in 20, 40 lbf·ft'], []],
    [
      ['install: caps', 'torque: bolts to 30–40 lbf·ft in 20, 40'],
      [
        'passes-not-rising: bolts: the last pass is 40 lbf·ft, not 30–40 lbf·ft @ 2 bolts',
        '  see: bolts, bolts is specified here',
        'value-disagrees: bolts are torqued to 30–40 lbf·ft (41–54 N·m), and 40 lbf·ft (54 N·m) is specified @ 2 bolts',
        '  see: bolts, bolts is specified here',
        '  fix: Write 40 lbf·ft',
        '    1 / 2. Do it. `torque: bolts to 40 lbf·ft in 20, 40`',
      ],
    ],
    [
      ['install: caps', 'torque: bolts to 35 lbf·ft in 20, 35'],
      [
        'value-disagrees: bolts are torqued to 35 lbf·ft (47 N·m), and 40 lbf·ft (54 N·m) is specified @ 2 bolts',
        '  see: bolts, bolts is specified here',
      ],
    ],
  ],
  [
    'passes of a torque that specifies its own',
    `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, passes: [20 lbf·ft, 40 lbf·ft], threads: dry, lock: {value: none, because: stretch}}
`,
    [['install: caps', 'torque: bolts to 40 lbf·ft in 20, 40'], []],
    [
      ['install: caps', 'torque: bolts to 40 lbf·ft in 40, 20, 40'],
      [
        'passes-not-rising: bolts: the pass of 20 lbf·ft is not above the one before it @ 2 bolts',
        '  see: bolts, bolts is specified here',
        'value-disagrees: bolts are torqued in passes of 40 lbf·ft (54 N·m), 20 lbf·ft (27 N·m), 40 lbf·ft (54 N·m), and 20 lbf·ft (27 N·m), 40 lbf·ft (54 N·m) are specified @ 2 bolts',
        '  see: bolts, bolts is specified here',
        '  fix: Write 20 lbf·ft, 40 lbf·ft',
        '    1 / 2. Do it. `torque: bolts to 40 lbf·ft in 20 lbf·ft, 40 lbf·ft`',
      ],
    ],
    [['install: caps', 'torque: bolts'], []],
    [
      ['install: caps', 'torque: bolts to 40 lbf·ft in 20, 30, 40'],
      [
        'value-disagrees: bolts are torqued in passes of 20 lbf·ft (27 N·m), 30 lbf·ft (41 N·m), 40 lbf·ft (54 N·m), and 20 lbf·ft (27 N·m), 40 lbf·ft (54 N·m) are specified @ 2 bolts',
        '  see: bolts, bolts is specified here',
        '  fix: Write 20 lbf·ft, 40 lbf·ft',
        '    1 / 2. Do it. `torque: bolts to 40 lbf·ft in 20 lbf·ft, 40 lbf·ft`',
      ],
    ],
    [
      ['install: caps', 'torque: bolts to 40 lbf·ft in 15, 40'],
      [
        'value-disagrees: bolts are torqued in passes of 15 lbf·ft (20 N·m), 40 lbf·ft (54 N·m), and 20 lbf·ft (27 N·m), 40 lbf·ft (54 N·m) are specified @ 2 bolts',
        '  see: bolts, bolts is specified here',
        '  fix: Write 20 lbf·ft, 40 lbf·ft',
        '    1 / 2. Do it. `torque: bolts to 40 lbf·ft in 20 lbf·ft, 40 lbf·ft`',
      ],
    ],
    [
      ['install: caps', 'torque: bolts in 25, 40 lbf·ft'],
      [
        'value-disagrees: bolts are torqued in passes of 25 lbf·ft (34 N·m), 40 lbf·ft (54 N·m), and 20 lbf·ft (27 N·m), 40 lbf·ft (54 N·m) are specified @ 2 bolts',
        '  see: bolts, bolts is specified here',
        '  fix: Write 20 lbf·ft, 40 lbf·ft',
        '    1 / 2. Do it. `torque: bolts in 20 lbf·ft, 40 lbf·ft`',
      ],
    ],
  ],
  [
    'parts and bolts that are used once',
    `
parts:
  block: {given: true}
  caps: {single-use: true}
fasteners:
  bolts: {count: 4, single-use: true, holds: [caps], torque: 40 lbf·ft, threads: [engine-oil], lock: {value: none, because: stretch}}
`,
    [['renew: caps', 'renew: bolts', 'lube: bolts', 'install: caps', 'torque: bolts'], []],
    [
      ['renew: caps', 'lube: bolts', 'install: caps', 'torque: bolts to snug', 'torque: bolts'],
      [
        'single-use-reused: bolts serve once, and come to their final torque without being renewed @ 5 bolts',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [
      ['renew: bolts', 'lube: bolts', 'install: caps', 'torque: bolts'],
      [
        'single-use-reused: caps serve once, and go in without being renewed @ 3 caps',
        '  see: caps, caps is specified here',
      ],
    ],
    [
      [
        'renew: caps',
        'renew: bolts',
        'lube: bolts',
        'install: caps',
        'torque: bolts',
        'loosen: bolts',
        'torque: bolts',
      ],
      [
        'single-use-reused: bolts serve once, and come to their final torque a second time @ 7 bolts',
        '  story: 2, step 2 of procedure.md: renewed (renew: bolts)',
        '  story: 6, step 6 of procedure.md: no longer renewed (loosen: bolts)',
        '  see: bolts, bolts is specified here',
      ],
    ],
    [
      [
        'renew: caps',
        'renew: bolts',
        'lube: bolts',
        'install: caps',
        'torque: bolts',
        'loosen: bolts',
        'torque: bolts to snug',
        'renew: bolts',
        'lube: bolts',
        'torque: bolts',
      ],
      [],
    ],
    [
      ['renew: caps', 'renew: bolts', 'lube: bolts with assembly-lube', 'install: caps', 'torque: bolts'],
      [
        'thread-condition: bolts come to torque with assembly-lube on the threads, and the torque is for engine-oil on the threads @ 5 bolts',
        '  story: 3, step 3 of procedure.md: threads coated (lube: bolts)',
        '  see: bolts, bolts is specified with engine-oil on the threads',
      ],
    ],
    [
      ['renew: caps', 'renew: bolts', 'install: caps', 'torque: bolts'],
      [
        'thread-condition: bolts come to torque with dry threads, and the torque is for engine-oil on the threads @ 4 bolts',
        '  see: bolts, bolts is specified with engine-oil on the threads',
      ],
    ],
  ],
  [
    'names that are nearly right',
    `
parts:
  block: {given: true}
  caps: {at: [front, rear]}
fasteners:
  main-bolts: {at: [front, rear], holds: [caps], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
`,
    [
      ['install: caps', 'torque: main-bolt to 40 lbf·ft'],
      [
        'unknown-item: main-bolt is not in the specification; did you mean main-bolts? @ 2 main-bolt',
        '  fix: Write main-bolts',
        '    1 / 2. Do it. `torque: main-bolts to 40 lbf·ft`',
        'left-slack: main-bolts end the build slack: no step torques them @ 1 main-bolts',
        '  see: 2, follows from this slip: main-bolt is not in the specification; did you mean main-bolts?',
        '  see: main-bolts, main-bolts must be torqued',
      ],
    ],
    [
      ['install: caps', 'torque: main-bolt to 20 lbf·ft', 'torque: main-bolt to 40 lbf·ft'],
      [
        'unknown-item: main-bolts is named nowhere, and every place that means it says main-bolt; did you mean main-bolt here? @ main-bolts main-bolt',
        '  see: 2, main-bolt is named here',
        '  see: 3, main-bolt is named here',
        '  fix: Write main-bolt here, as the 2 places do',
        '    fasteners: /   main-bolt: {at: [front, rear], holds: [caps], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}',
        'left-slack: main-bolts end the build slack: no step torques them @ 1 main-bolts',
        '  see: main-bolts, main-bolts must be torqued',
        '  fix: Write the missing step: torque main-bolts',
        '    1 / 2. Tighten the main bolts. `torque: main-bolts to 40 lbf·ft`',
      ],
    ],
    [
      [
        'install: caps',
        'torque: main-bolt to 20 lbf·ft',
        'torque: main-bolts to 40 lbf·ft',
        'turn: main-bolts',
      ],
      [
        'unknown-item: main-bolt is not in the specification; did you mean main-bolts? @ 2 main-bolt',
        '  fix: Write main-bolts',
        '    1 / 2. Do it. `torque: main-bolts to 20 lbf·ft`',
        'wrong-kind: main-bolts is a fastener, and `turn` takes a part @ 4 main-bolts',
        '  see: main-bolts, main-bolts is specified here',
      ],
    ],
    [
      ['install: caps', 'torque: main-bolt to 20 lbf·ft', 'torque: main-bols to 40 lbf·ft'],
      [
        'unknown-item: main-bolt is not in the specification; did you mean main-bolts? @ 2 main-bolt',
        '  fix: Write main-bolts',
        '    1 / 2. Do it. `torque: main-bolts to 20 lbf·ft`',
        'unknown-item: main-bols is not in the specification; did you mean main-bolts? @ 3 main-bols',
        '  fix: Write main-bolts',
        '    2 / 3. Do it. `torque: main-bolts to 40 lbf·ft`',
        'left-slack: main-bolts end the build slack: no step torques them @ 1 main-bolts',
        '  see: 2, may follow from this slip: main-bolt is not in the specification; did you mean main-bolts?',
        '  see: 3, may follow from this slip: main-bols is not in the specification; did you mean main-bolts?',
        '  see: main-bolts, main-bolts must be torqued',
      ],
    ],
    [
      [
        'install: caps using soft-malet',
        'turn: caps using soft-malet',
        'torque: main-bolts using soft-mallets',
      ],
      [
        'tool-not-in-shop: soft-malet is not a tool of the shop; did you mean soft-mallet? @ 1 soft-malet',
        '  see: 2, here too',
        '  fix: Write soft-mallet at all 2 places',
        '     / 1. Do it. `install: caps using soft-mallet`',
        '    1 / 2. Do it. `turn: caps using soft-mallet`',
        'tool-not-in-shop: soft-mallets is not a tool of the shop; did you mean soft-mallet? @ 3 soft-mallets',
        '  fix: Write soft-mallet',
        '    2 / 3. Do it. `torque: main-bolts using soft-mallet`',
      ],
    ],
    [
      ['install: caps[frnt]', 'install: caps[frnt]', 'torque: main-bolts'],
      [
        'left-out: caps are never installed @ caps caps',
        '  see: caps, caps belong in the engine',
        'unknown-item: caps has no place frnt; did you mean front? @ 1 caps',
        '  see: caps, caps is specified here',
        'unknown-item: caps has no place frnt; did you mean front? @ 2 caps',
        '  see: caps, caps is specified here',
      ],
    ],
  ],
])('%s', (_, engine, ...rows) => {
  it.each(rows.map(([tags, told]) => [tags.join(' · '), tags, told] as const))('%s', (_title, tags, told) => {
    expect(whole(engine, tags)).toEqual(told);
  });
});
