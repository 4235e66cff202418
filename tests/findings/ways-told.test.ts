/**
 * Ways that part and ways that go back, and all that is told of them: every word, where it stands, its story. Read against
 * the builds by hand; every value is invented.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import {whole} from '../help/whole.js';

type Told = readonly [tags: readonly string[], told: readonly string[]];

describe.each<[title: string, engine: string, ...rows: Told[]]>([
  [
    'a way that goes back',
    `
parts:
  block: {given: true}
  shaft: {}
  caps: {at: [front, rear], closes: [seat]}
surfaces:
  seat: {on: block, at: [front, rear], assembly: clean}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
  nut: {holds: [shaft], torque: 10 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
checks:
  drag: {expect: turns by hand}
  free: {limits: max 3 lbf·in}
`,
    [
      [
        'clean: seat',
        'install: shaft',
        'torque: nut',
        '`install: caps` `step: fit`',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: drag is out`\n    1. Do it. Back. `repeat: fit`',
      ],
      [
        'install-order: caps are still in when step 8a goes back to fit, and go in again after that @ 9 caps',
        '  story: 4, step 4 of procedure.md: in (install: caps)',
        'install-order: bolts are still tight when step 8a goes back to fit, and are torqued again after that @ 9 bolts',
        '  story: 5, step 5 of procedure.md: tight (torque: bolts)',
      ],
    ],
    [
      [
        'clean: seat',
        'install: shaft',
        '`torque: nut` `step: fit`',
        'install: caps[front]',
        'install: caps[rear]',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: drag is out`\n    1. Do it. `loosen: nut`\n    2. Do it. `remove: caps`\n    3. Do it. Back. `repeat: fit`',
      ],
      [
        'clean-first: seat[front] is not clean when caps close it, and goes together clean, the second time round, after step 9c goes back to step 3 @ 4 seat[front]',
        '  story: 1, step 1 of procedure.md: clean (clean: seat)',
        '  story: 11, step 9b of procedure.md: no longer clean (remove: caps)',
        '  story: 12, step 9c of procedure.md: back to step 3, for the second time round',
        '  see: seat, seat is specified here',
        'clean-first: seat[rear] is not clean when caps close it, and goes together clean, the second time round, after step 9c goes back to step 3 @ 5 seat[rear]',
        '  story: 1, step 1 of procedure.md: clean (clean: seat)',
        '  story: 11, step 9b of procedure.md: no longer clean (remove: caps)',
        '  story: 12, step 9c of procedure.md: back to step 3, for the second time round',
        '  see: seat, seat is specified here',
        'install-order: bolts are still tight when caps come off @ 11 bolts',
        '  story: 6, step 6 of procedure.md: tight (torque: bolts)',
        '  see: bolts, bolts hold caps',
      ],
    ],
    [
      [
        'clean: seat',
        'install: shaft',
        '`torque: nut` `step: fit`',
        'install: caps',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: drag is out`\n    1. Do it. `loosen: nut`\n    2. Do it. `loosen: bolts`\n    3. Do it. `remove: caps[front]`\n    4. Do it. Back. `repeat: fit`',
      ],
      [
        'clean-first: seat[front] is not clean when caps close it, and goes together clean, the second time round, after step 8d goes back to step 3 @ 4 seat[front]',
        '  story: 1, step 1 of procedure.md: clean (clean: seat)',
        '  story: 11, step 8c of procedure.md: no longer clean (remove: caps)',
        '  story: 12, step 8d of procedure.md: back to step 3, for the second time round',
        '  see: seat, seat is specified here',
        'install-order: caps[rear] are still in when step 8d goes back to fit, and go in again after that @ 12 caps[rear]',
        '  story: 4, step 4 of procedure.md: in (install: caps)',
      ],
    ],
    [
      [
        '`clean: seat` `step: wipe`',
        '`install: shaft`',
        'torque: nut',
        '`step: fit` `turn: shaft`',
        '`install: caps`',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: drag is out`\n    1. Do it. `loosen: bolts`\n    2. Do it. `remove: caps`\n    3. Do it. Back. `repeat: fit`',
        'check: free',
        '`if: free is over`\n    1. Do it. `loosen: bolts, nut`\n    2. Do it. `remove: caps`\n    3. Do it. `remove: shaft`\n    4. Back. `repeat: wipe`',
      ],
      [
        'clean-first: seat is not clean when caps close it, and goes together clean, the second time round, after step 9c goes back to step 4 @ 5 seat',
        '  story: 1, step 1 of procedure.md: clean (clean: seat)',
        '  story: 11, step 9b of procedure.md: no longer clean (remove: caps)',
        '  story: 12, step 9c of procedure.md: back to step 4, for the second time round',
        '  see: seat, seat is specified here',
      ],
    ],
  ],
  [
    'a branch, and what hangs on it',
    `
parts:
  block: {given: true}
  shaft: {}
  caps: {at: [front, rear], closes: [seat]}
surfaces:
  seat: {on: block, at: [front, rear], assembly: clean}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
  nut: {holds: [shaft], torque: 10 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
checks:
  drag: {expect: turns by hand}
  free: {limits: max 3 lbf·in}
`,
    [
      [
        'clean: seat',
        'install: shaft',
        'torque: nut',
        '`install: caps` `step: fit`',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: drag is over`\n    1. Set it right. `turn: shaft`',
      ],
      [
        'unreachable-step: drag has no upper limit that it could be over @ 8 drag',
        '  see: drag, drag is specified here',
      ],
    ],
    [
      [
        'clean: seat',
        'install: shaft',
        'torque: nut',
        '`install: caps` `step: fit`',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: drag is under`\n    1. Set it right. `turn: shaft`',
      ],
      [
        'unreachable-step: drag has no lower limit that it could be under @ 8 drag',
        '  see: drag, drag is specified here',
      ],
    ],
    [
      [
        'clean: seat',
        'install: shaft',
        'torque: nut',
        '`install: caps` `step: fit`',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: drag is in`\n    1. Set it right. `turn: shaft`',
      ],
      [],
    ],
    [
      [
        'clean: seat',
        'install: shaft',
        'torque: nut',
        '`install: caps` `step: fit`',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: free is under`\n    1. Set it right. `turn: shaft`',
      ],
      [
        'unreachable-step: free has no lower limit that it could be under @ 8 free',
        '  see: free, free is specified here',
      ],
    ],
    [
      [
        'clean: seat',
        'install: shaft',
        'torque: nut',
        '`install: caps` `step: fit`',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: free is over`\n    1. Set it right. `turn: shaft`',
      ],
      [],
    ],
    [
      [
        'clean: seat',
        'install: shaft',
        'torque: nut',
        '`install: caps` `step: fit`',
        'torque: bolts',
        'check: free',
        'check: drag',
        '`if: free is over`',
      ],
      ['rework-missing: free: the branch has no steps under it @ 8 free'],
    ],
  ],
  [
    'a play between two limits, and a drag judged in words',
    `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [block, shaft], limits: 0.004–0.008 in, rework: true, using: [feeler-gauges], when: {installed: [shaft], tight: []}}
checks:
  drag: {expect: turns by hand, rework: true}
`,
    [
      ['install: shaft', 'measure: play using feeler-gauges', 'check: drag'],
      [
        'rework-missing: play may be out, and no step says what to do then @ 2 play',
        '  see: play, play is specified with rework',
        'rework-missing: drag may be out, and no step says what to do then @ 3 drag',
        '  see: drag, drag is specified with rework',
      ],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: play is out`\n   1. Fetch the shop lead.',
        '`if: drag is out`\n   1. Fetch the shop lead.',
      ],
      [],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: play is over`\n   1. Fetch the shop lead.',
        '`if: drag is over`\n   1. Fetch the shop lead.',
      ],
      [
        'rework-missing: play may be under, and no step says what to do then @ 2 play',
        '  see: play, play is specified with rework',
        'unreachable-step: drag has no upper limit that it could be over @ 6 drag',
        '  see: drag, drag is specified here',
      ],
    ],
    [
      [
        'install: shaft',
        'check: drag',
        'measure: play using feeler-gauges',
        '`if: drag is in`\n   1. Fetch the shop lead.',
        '`if: play is under`\n   1. Fetch the shop lead.',
      ],
      [
        'rework-missing: play may be over, and no step says what to do then @ 3 play',
        '  see: play, play is specified with rework',
      ],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: drag is in`\n   1. Fetch the shop lead.',
        '`if: play is over`\n   1. Fetch the shop lead.',
        '`if: play is under`\n   1. Fetch the shop lead.',
      ],
      [],
    ],
  ],
  [
    'a play with one limit, and a drag judged in words',
    `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [block, shaft], limits: max 0.008 in, rework: true, using: [feeler-gauges], when: {installed: [shaft], tight: []}}
checks:
  drag: {expect: turns by hand, rework: true}
`,
    [
      ['install: shaft', 'measure: play using feeler-gauges', 'check: drag'],
      [
        'rework-missing: play may be out, and no step says what to do then @ 2 play',
        '  see: play, play is specified with rework',
        'rework-missing: drag may be out, and no step says what to do then @ 3 drag',
        '  see: drag, drag is specified with rework',
      ],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: play is out`\n   1. Fetch the shop lead.',
        '`if: drag is out`\n   1. Fetch the shop lead.',
      ],
      [],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: play is over`\n   1. Fetch the shop lead.',
        '`if: drag is over`\n   1. Fetch the shop lead.',
      ],
      [
        'unreachable-step: drag has no upper limit that it could be over @ 6 drag',
        '  see: drag, drag is specified here',
      ],
    ],
    [
      [
        'install: shaft',
        'check: drag',
        'measure: play using feeler-gauges',
        '`if: drag is in`\n   1. Fetch the shop lead.',
        '`if: play is under`\n   1. Fetch the shop lead.',
      ],
      [
        'rework-missing: play may be over, and no step says what to do then @ 3 play',
        '  see: play, play is specified with rework',
        'unreachable-step: play has no lower limit that it could be under @ 6 play',
        '  see: play, play is specified here',
      ],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: drag is in`\n   1. Fetch the shop lead.',
        '`if: play is over`\n   1. Fetch the shop lead.',
        '`if: play is under`\n   1. Fetch the shop lead.',
      ],
      [
        'unreachable-step: play has no lower limit that it could be under @ 8 play',
        '  see: play, play is specified here',
      ],
    ],
  ],
  [
    'a play that is aimed at, and a drag judged in words',
    `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [block, shaft], limits: 0.006 in, rework: true, using: [feeler-gauges], when: {installed: [shaft], tight: []}}
checks:
  drag: {expect: turns by hand, rework: true}
`,
    [
      ['install: shaft', 'measure: play using feeler-gauges', 'check: drag'],
      [
        'rework-missing: play may be out, and no step says what to do then @ 2 play',
        '  see: play, play is specified with rework',
        'rework-missing: drag may be out, and no step says what to do then @ 3 drag',
        '  see: drag, drag is specified with rework',
      ],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: play is out`\n   1. Fetch the shop lead.',
        '`if: drag is out`\n   1. Fetch the shop lead.',
      ],
      [],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: play is over`\n   1. Fetch the shop lead.',
        '`if: drag is over`\n   1. Fetch the shop lead.',
      ],
      [
        'unreachable-step: play has no upper limit that it could be over @ 4 play',
        '  see: play, play is specified here',
        'unreachable-step: drag has no upper limit that it could be over @ 6 drag',
        '  see: drag, drag is specified here',
      ],
    ],
    [
      [
        'install: shaft',
        'check: drag',
        'measure: play using feeler-gauges',
        '`if: drag is in`\n   1. Fetch the shop lead.',
        '`if: play is under`\n   1. Fetch the shop lead.',
      ],
      [
        'unreachable-step: play has no lower limit that it could be under @ 6 play',
        '  see: play, play is specified here',
      ],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: drag is in`\n   1. Fetch the shop lead.',
        '`if: play is over`\n   1. Fetch the shop lead.',
        '`if: play is under`\n   1. Fetch the shop lead.',
      ],
      [
        'unreachable-step: play has no upper limit that it could be over @ 6 play',
        '  see: play, play is specified here',
        'unreachable-step: play has no lower limit that it could be under @ 8 play',
        '  see: play, play is specified here',
      ],
    ],
  ],
  [
    'a play whose limits nobody knows, and a drag judged in words',
    `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [block, shaft], limits: unknown, rework: true, using: [feeler-gauges], when: {installed: [shaft], tight: []}}
checks:
  drag: {expect: turns by hand, rework: true}
`,
    [
      ['install: shaft', 'measure: play using feeler-gauges', 'check: drag'],
      [
        'spec-silent: limits of play is unknown; find out, and write it down with its source @ play play',
        'rework-missing: play may be out, and no step says what to do then @ 2 play',
        '  see: play, play is specified with rework',
        'rework-missing: drag may be out, and no step says what to do then @ 3 drag',
        '  see: drag, drag is specified with rework',
      ],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: play is out`\n   1. Fetch the shop lead.',
        '`if: drag is out`\n   1. Fetch the shop lead.',
      ],
      ['spec-silent: limits of play is unknown; find out, and write it down with its source @ play play'],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: play is over`\n   1. Fetch the shop lead.',
        '`if: drag is over`\n   1. Fetch the shop lead.',
      ],
      [
        'spec-silent: limits of play is unknown; find out, and write it down with its source @ play play',
        'rework-missing: play may be under, and no step says what to do then @ 2 play',
        '  see: play, play is specified with rework',
        'unreachable-step: drag has no upper limit that it could be over @ 6 drag',
        '  see: drag, drag is specified here',
      ],
    ],
    [
      [
        'install: shaft',
        'check: drag',
        'measure: play using feeler-gauges',
        '`if: drag is in`\n   1. Fetch the shop lead.',
        '`if: play is under`\n   1. Fetch the shop lead.',
      ],
      [
        'spec-silent: limits of play is unknown; find out, and write it down with its source @ play play',
        'rework-missing: play may be over, and no step says what to do then @ 3 play',
        '  see: play, play is specified with rework',
      ],
    ],
    [
      [
        'install: shaft',
        'measure: play using feeler-gauges',
        'check: drag',
        '`if: drag is in`\n   1. Fetch the shop lead.',
        '`if: play is over`\n   1. Fetch the shop lead.',
        '`if: play is under`\n   1. Fetch the shop lead.',
      ],
      ['spec-silent: limits of play is unknown; find out, and write it down with its source @ play play'],
    ],
  ],
])('%s', (_, engine, ...rows) => {
  it.each(rows.map(([tags, told]) => [tags.join(' · '), tags, told] as const))('%s', (_title, tags, told) => {
    expect(whole(engine, tags)).toEqual(told);
  });
});
