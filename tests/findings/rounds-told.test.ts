/**
 * Steps that are come to a second time, and what is still in or tight then: all that is told of it, by which way it goes
 * back. Read against the builds by hand.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import {book} from '../help/example.js';
import {toldOf} from '../help/found.js';
import {tells} from '../help/stories.js';

const ENGINE = `
parts:
  block: {given: true}
  shaft: {}
  cover: {}
  shells: {at: [front, rear]}
  caps: {at: [front, rear], closes: [seat]}
surfaces:
  seat: {on: block, at: [front, rear], assembly: clean}
fasteners:
  nut: {holds: [shaft], torque: 10 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
checks:
  drag: {expect: turns by hand}
  free: {expect: turns by hand, after: [caps]}
`;

describe('the second time round', () => {
  tells(ENGINE, [
    [
      'is told of what the step itself did the time before',
      'install: shaft; torque: nut; clean: seat; install: caps; install: shells; install: cover; `step: again` `remove: cover`; check: drag; `if: drag is out`\n    1. Back. `repeat: again`; install: cover; check: free',
      `
install-order cover: cover comes out but is not in, the second time round, after step 9a goes back to step 7
  story: step 6 of procedure.md: in (install: cover)
  story: step 7 of procedure.md: no longer in (remove: cover)
  story: step 9a of procedure.md: back to step 7, for the second time round`,
    ],
    [
      'is not told of what the same tag did to another that it names',
      'install: shaft; torque: nut; clean: seat; install: caps; install: shells; install: cover; `step: again` `turn: shaft`; remove: cover, cover; install: cover; check: drag; `if: drag is out`\n    1. Back. `repeat: again`; check: free',
      `
install-order cover: cover comes out but is not in
  story: step 6 of procedure.md: in (install: cover)
  story: step 8 of procedure.md: no longer in (remove: cover)`,
    ],
    [
      'is told with all that is wrong then, and not by halves',
      'install: shaft; torque: nut; clean: seat; install: shells; install: cover; install: caps[front]; `step: again` `check: free`; `if: free is out`\n    1. Do it. `remove: caps[front]`\n    2. Back. `repeat: again`; clean: seat; install: caps; check: drag',
      `
install-order free: free is checked before caps are in, the second time round, after step 8b goes back to step 7
  story: step 6 of procedure.md: in (install: caps)
  story: step 8a of procedure.md: no longer in (remove: caps)
  story: step 8b of procedure.md: back to step 7, for the second time round
  see engine.yaml:17: free is checked after caps
install-order caps[front]: caps[front] come out but are not in, the second time round, after step 8b goes back to step 7
  story: step 6 of procedure.md: in (install: caps)
  story: step 8a of procedure.md: no longer in (remove: caps)
  story: step 8b of procedure.md: back to step 7, for the second time round`,
    ],
    [
      'finds in what went in meanwhile, each at its own places',
      'check: free; clean: seat; `step: again` `check: drag`; install: caps[front]; install: shells[rear]; install: shaft; torque: nut; `if: drag is out`\n    1. Back. `repeat: again`; install: cover; install: caps[rear]; install: shells[front]',
      `
install-order free: free is checked before caps are in
  see engine.yaml:17: free is checked after caps
install-order caps[front]: caps[front] are still in when step 8a goes back to again, and go in again after that
  story: step 4 of procedure.md: in (install: caps)
install-order shells[rear]: shells[rear] are still in when step 8a goes back to again, and go in again after that
  story: step 5 of procedure.md: in (install: shells)
install-order shaft: shaft is still in when step 8a goes back to again, and goes in again after that
  story: step 6 of procedure.md: in (install: shaft)
install-order nut: nut is still tight when step 8a goes back to again, and is torqued again after that
  story: step 7 of procedure.md: tight (torque: nut)`,
    ],
    [
      'is by the way back that comes after all of the story',
      'install: shaft; torque: nut; clean: seat; install: shells; install: cover; `step: again` `install: caps`; check: drag; `if: drag is out`\n    1. Do it. `remove: caps[front]`\n    2. Back. `repeat: again`; check: free; `if: free is out`\n    1. Do it. `remove: caps`\n    2. Back. `repeat: again`',
      `
clean-first seat: seat is not clean when caps close it, and goes together clean, the second time round, after step 10b goes back to step 6
  story: step 3 of procedure.md: clean (clean: seat)
  story: step 8a of procedure.md: no longer clean (remove: caps)
  story: step 10a of procedure.md: no longer clean (remove: caps)
  story: step 10b of procedure.md: back to step 6, for the second time round
  see engine.yaml:12: seat is specified here
install-order caps[rear]: caps[rear] are still in when step 8b goes back to again, and go in again after that
  story: step 6 of procedure.md: in (install: caps)`,
    ],
    [
      'is by the first way back that comes after the story',
      'install: shaft; torque: nut; clean: seat; install: shells; install: cover; `step: again` `install: caps`; check: drag; `if: drag is out`\n    1. Do it. `remove: caps`\n    2. Back. `repeat: again`; check: free; `if: free is out`\n    1. Do it. `remove: caps`\n    2. Back. `repeat: again`',
      `
clean-first seat: seat is not clean when caps close it, and goes together clean, the second time round, after step 8b goes back to step 6
  story: step 3 of procedure.md: clean (clean: seat)
  story: step 8a of procedure.md: no longer clean (remove: caps)
  story: step 8b of procedure.md: back to step 6, for the second time round
  see engine.yaml:12: seat is specified here`,
    ],
    [
      'is by no way back that begins below the step',
      'install: shaft; torque: nut; clean: seat; install: shells; install: cover; install: caps; `step: again` `check: free`; `step: inner` `check: drag`; `if: drag is out`\n    1. Do it. `remove: caps`\n    2. Back. `repeat: inner`; `if: free is out`\n    1. Do it. `turn: shaft`\n    2. Back. `repeat: again`; clean: seat; install: caps',
      `
install-order free: free is checked before caps are in, the second time round, after step 10b goes back to step 7
  story: step 6 of procedure.md: in (install: caps)
  story: step 9a of procedure.md: no longer in (remove: caps)
  story: step 10b of procedure.md: back to step 7, for the second time round
  see engine.yaml:17: free is checked after caps
install-order caps: caps come out but are not in, the second time round, after step 9b goes back to step 8
  story: step 6 of procedure.md: in (install: caps)
  story: step 9a of procedure.md: no longer in (remove: caps)
  story: step 9b of procedure.md: back to step 8, for the second time round`,
    ],
  ]);
});

/** So long that what stands behind it stands far down. */
const LONG = 'A word on the shaft, which has a story. '.repeat(12);

describe('of two procedures', () => {
  it.each<[title: string, first: string, second: string, lines: string]>([
    [
      'what was done in the one is no later in the other, wherever it stands',
      `1. Do it. \`install: shaft\` \`torque: nut\`
2. ${LONG} \`install: cover\`
3. Do it. \`remove: cover\`
`,
      `1. Do it. \`step: again\` \`remove: cover\`
2. Do it. \`check: drag\`
3. Out. \`if: drag is out\`
   1. ${LONG} ${LONG} \`turn: shaft\`
   2. Back. \`repeat: again\`
`,
      `
  story: step 2 of a.md: in (install: cover)
  story: step 3 of a.md: no longer in (remove: cover)
install-order cover: cover comes out but is not in
  story: step 2 of a.md: in (install: cover)
  story: step 3 of a.md: no longer in (remove: cover)`,
    ],
    [
      'a way back is one of the procedure of the step',
      `1. Do it. \`install: shaft\` \`torque: nut\` \`clean: seat\` \`step: wipe\`
2. Do it. \`check: drag\`
3. Out. \`if: drag is out\`
   1. ${LONG} ${LONG} \`turn: shaft\`
   2. Back. \`repeat: wipe\`
`,
      `1. Do it. \`step: again\` \`install: caps\`
2. Do it. \`check: free\`
3. Out. \`if: free is out\`
   1. Do it. \`remove: caps\`
   2. Back. \`repeat: again\`
`,
      `
two-actions seat: seat: step 1 does several things that have nothing to do with each other (install shaft, clean seat); make each a step
install-order shaft: shaft is still in when step 3b goes back to wipe, and goes in again after that
  story: step 1 of a.md: in (install: shaft)
install-order nut: nut is still tight when step 3b goes back to wipe, and is torqued again after that
  story: step 1 of a.md: tight (torque: nut)
clean-first seat: seat is not clean when caps close it, and goes together clean, the second time round, after step 3b goes back to step 1
  story: step 1 of a.md: clean (clean: seat)
  story: step 3a of b.md: no longer clean (remove: caps)
  story: step 3b of b.md: back to step 1, for the second time round`,
    ],
  ])('%s', (_, first, second, lines) => {
    const told = toldOf(book({engine: ENGINE, procedures: {'a.md': first, 'b.md': second}}));
    const its = told.filter((line) => !/^left-(?:out|unchecked)|see engine/.test(line));
    expect(['', ...its].join('\n')).toBe(lines);
  });
});
