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

describe('a branch that names places', () => {
  const PLACED = engine('0.004–0.008 in')
    .replace('shaft: {}', 'shaft: {at: [left, mid, right]}')
    .replace('play: {', 'play: {at: [left, mid, right], ');
  const at = (places: string, is: string) => branch(is).replace('play', `play[${places}]`);

  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['all of them, one by one', [at('left', 'out'), at('mid, right', 'out')], []],
    ['some on one side, and all on the other', [at('left, mid, right', 'over'), branch('under')], []],
    [
      'one of three',
      [at('left', 'out')],
      ['rework-missing: play[mid, right] may be out, and no step says what to do then'],
    ],
    [
      'one of three on one side, which leaves two cases',
      [at('left', 'under'), branch('over')],
      ['rework-missing: play[mid, right] may be under, and no step says what to do then'],
    ],
    [
      'another side in each place',
      [at('left', 'under'), at('mid', 'over'), at('right', 'out')],
      [
        'rework-missing: play[left] may be over, and no step says what to do then',
        'rework-missing: play[mid] may be under, and no step says what to do then',
      ],
    ],
    [
      'a place that there is not, which stands for none',
      [at('front', 'out')],
      ['unknown-item: play has no place front; its places are: left, mid, right'],
    ],
  ])('%s', (_, branches, says) => {
    expect(found(PLACED, [...READ, ...branches])).toEqual(says);
  });

  it('hangs on the readings of those places alone', () => {
    const read = (places: string) => `measure: play[${places}] using feeler-gauges`;
    const rest = [read('mid, right'), at('mid, right', 'out')];
    expect(found(PLACED, ['install: shaft', read('left'), at('left', 'out'), ...rest])).toEqual([]);
    expect(found(PLACED, ['install: shaft', at('left, mid', 'out'), read('left'), ...rest])).toEqual([
      'unmeasured-branch: play[left, mid] is not read before the branch that hangs on it',
    ]);
  });
});

/** The words of a step against the side that its tag says; play lies between nought and more. */
describe('the side that the prose names', () => {
  const LIMITS = '0.004–0.008 in';
  const says = (prose: string, is: string, fit = 'play') => {
    const steps = [
      ...READ.map((tag) => tag.replace('play', fit)),
      `\`if: ${fit} is ${is}\` ${prose}\n   1. Fetch the shop lead.`,
      `\`if: ${fit} is ${is === 'over' ? 'under' : 'over'}\`\n   1. Fetch the shop lead.`,
    ];
    return found(engine(LIMITS).replace('play', fit), steps).filter((one) => one.startsWith('prose-'));
  };

  it.each<[prose: string, is: string, named?: string]>([
    ['Too tight, so fit thinner shims.', 'over', 'too tight'],
    ['Where it is too loose, fit others.', 'under', 'too loose'],
    ['A reading over its limits.', 'under', 'over its limits'],
    ['Below the lower limit, stop.', 'over', 'below the lower limit'],
    ['It is too\n   large.', 'under', 'too large'],
    ['Too small to pass.', 'over', 'too small'],
    ['Too tight, so fit thinner shims.', 'under'],
    ['Where it is too loose, fit others.', 'over'],
    ['It must not be too tight, and is too loose.', 'under'],
    ['Neither too tight nor too loose.', 'over'],
    ['The shells are too thin.', 'over'],
    ['It is not too tight here.', 'over'],
    ['It must no longer be too tight.', 'over'],
    ['Fetch the shop lead.', 'over'],
  ])('%s (%s)', (prose, is, named?: string) => {
    expect(says(prose, is)).toEqual(
      named === undefined ? [] : [`prose-disagrees: play: the prose says ${named}, the tag is ${is}`],
    );
  });

  it('takes a press fit that is too tight for one that is over', () => {
    expect(says('Too tight to press in.', 'over', 'press-play')).toEqual([]);
    expect(says('Too tight to press in.', 'under', 'press-play')).toEqual([]);
  });

  it.each<[prose: string, is: string]>([
    ['Too large to press in.', 'under'],
    ['Too small to press in.', 'over'],
  ])('knows of a press fit that is %s', (prose, is) => {
    const said = prose.slice(0, 9).toLowerCase();
    expect(says(prose, is, 'press-play')).toEqual([
      `prose-disagrees: press-play: the prose says ${said}, the tag is ${is}`,
    ]);
  });

  it.each<[prose: string, item: string, ...told: string[]]>([
    ['Too small to turn.', 'float', 'prose-disagrees: float: the prose says too small, the tag is over'],
    ['Too tight to turn.', 'float'],
    ['Too small to turn.', 'block', 'wrong-kind: block is a part, and `if` takes a fit or a check'],
    [
      'Too small to turn.',
      'nobody',
      'unknown-item: nobody is not in the specification; add it to engine.yaml or shop.yaml, or correct the id',
    ],
  ])('%s (%s, which is no fit)', (prose, item, ...told) => {
    const steps = [`\`if: ${item} is over\` ${prose}\n   1. Fetch the shop lead.`];
    const whole = `${engine(LIMITS)}checks:\n  float: {limits: 0.1–0.2 mm}\n`;
    const own = found(whole, steps).filter((one) => /^(?:prose-|wrong-kind|unknown-item)/.test(one));
    expect(own).toEqual(told);
  });

  it('says nothing of a branch for readings out of limits on either side', () => {
    expect(found(engine(LIMITS), [...READ, `${branch('out').replace('`\n', '` Too tight.\n')}`])).toEqual([]);
  });
});
