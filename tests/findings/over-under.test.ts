/** Branches on one side of the limits of a reading. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {found} from '../help/found.js';

const engine = (limits: string) => `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [block, shaft], limits: ${limits}, rework: true, using: [feeler-gauges], when: {installed: [shaft], tight: []}}
`;

const READ = ['install: shaft', 'measure: play using feeler-gauges'];
const branch = (is: string) => `\`if: play is ${is}\`\n   1. Fetch the shop lead.`;

describe('a branch on one side of the limits', () => {
  it.each<readonly [string, string, readonly string[], readonly string[]]>([
    ['both sides', '0.004–0.008 in', [branch('over'), branch('under')], []],
    ['out is both', '0.004–0.008 in', [branch('out')], []],
    [
      'one side of two is not said',
      '0.004–0.008 in',
      [branch('over')],
      ['rework-missing: play may be under, and no step says what to do then'],
    ],
    ['the only side that there is', 'max 0.008 in', [branch('over')], []],
    ['the only side that there is, from below', 'min 0.004 in', [branch('under')], []],
    [
      'a side that there is not',
      'max 0.008 in',
      [branch('over'), branch('under')],
      ['unreachable-step: play has no lower limit that it could be under'],
    ],
  ])('%s', (_, limits, branches, says) => {
    expect(found(engine(limits), [...READ, ...branches])).toEqual(says);
  });

  it('hangs on a reading like any other', () => {
    const tags = ['install: shaft', branch('out'), branch('over'), 'measure: play using feeler-gauges'];
    expect(found(engine('0.004–0.008 in'), tags)).toEqual([
      'unmeasured-branch: play is not read before the branch that hangs on it',
      'unmeasured-branch: play is not read before the branch that hangs on it',
    ]);
  });

  it('joins what it does with what holds without it', () => {
    const tags = [...READ, branch('under'), '`if: play is over`\n   1. Take it out. `remove: shaft`'];
    expect(found(engine('0.004–0.008 in'), tags)).toEqual([
      'left-out: shaft ends the build out: done at step 1, undone at step 4a of procedure.md (remove: shaft) and never made good',
    ]);
  });
});
