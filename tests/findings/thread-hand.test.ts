/** Left-hand threads: which way the prose turns them, and what the sheet says of them. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {compileSheet} from '../../src/sheet/compile.js';
import {book} from '../help/example.js';

const made = (thread: string, steps: string) =>
  book({
    engine: `
parts:
  flywheel: {}
fasteners:
  flywheel-nut: {holds: [flywheel], ${thread}torque: 80 lbf·ft, threads: dry, lock: {value: none, because: the taper holds}}
`,
    procedures: {'procedure.md': `\n1. Press it on. \`install: flywheel\`\n${steps}\n`},
  });

const LEFT = 'thread: M20×1.5 LH, ';
const RIGHT = 'thread: M20×1.5, ';
const tighten = (prose: string) => `2. ${prose} \`torque: flywheel-nut\``;
const slacken = (prose: string) =>
  `${tighten('Run it up.')}\n3. ${prose} \`loosen: flywheel-nut\`\n4. Bring it up again. \`torque: flywheel-nut\``;

describe('the way in which the prose turns a fastener', () => {
  it.each<readonly [string, string, string, readonly string[]]>([
    ['left-hand, anticlockwise', LEFT, tighten('Tighten it anticlockwise.'), []],
    [
      'left-hand, clockwise',
      LEFT,
      tighten('Tighten it clockwise.'),
      ['flywheel-nut: the prose says clockwise, and a left-hand thread is tightened anticlockwise'],
    ],
    [
      'right-hand, anticlockwise',
      RIGHT,
      tighten('Tighten it Anti-Clockwise.'),
      ['flywheel-nut: the prose says anti-clockwise, and a right-hand thread is tightened clockwise'],
    ],
    [
      'left-hand, slackened anticlockwise',
      LEFT,
      slacken('Undo it counterclockwise.'),
      ['flywheel-nut: the prose says counterclockwise, and a left-hand thread is slackened clockwise'],
    ],
    [
      'right-hand, slackened clockwise',
      RIGHT,
      slacken('Undo it clockwise.'),
      ['flywheel-nut: the prose says clockwise, and a right-hand thread is slackened anticlockwise'],
    ],
    ['right-hand, slackened anticlockwise', RIGHT, slacken('Undo it anticlockwise.'), []],
    ['a thread that nobody states', '', tighten('Tighten it anticlockwise.'), []],
    ['the engine is what turns', LEFT, tighten('Turn the crankshaft clockwise until the nut is on top.'), []],
    [
      'the engine turns in another sentence',
      LEFT,
      tighten('Turn the crankshaft clockwise. Tighten the nut clockwise.'),
      ['flywheel-nut: the prose says clockwise, and a left-hand thread is tightened anticlockwise'],
    ],
    [
      'a pipe thread',
      'thread: 1/2 BSP LH, ',
      tighten('Screw it in clockwise.'),
      ['flywheel-nut: the prose says clockwise, and a left-hand thread is tightened anticlockwise'],
    ],
  ])('%s', (_, thread, steps, says) => {
    const {findings} = check(made(thread, steps), {today: '2026-06-01'});
    expect(findings.filter(({name}) => name === 'prose-disagrees').map(({message}) => message)).toEqual(says);
  });
});

describe('a left-hand thread on the sheet', () => {
  const facts = (thread: string) => {
    const one = made(thread, slacken('Undo it.'));
    const [procedure] = one.procedures;
    if (procedure === undefined) throw new Error('no procedure');
    return JSON.stringify(compileSheet(one, procedure, {fingerprint: '0123456789abcdef'}).sections);
  };

  it('says which way to turn it, to tighten and to slacken', () => {
    expect(facts(LEFT)).toMatch(/"left-hand thread","text":"tightens anticlockwise"/);
    expect(facts(LEFT)).toMatch(/"left-hand thread","text":"slackens clockwise"/);
  });

  it('says nothing of a right-hand one', () => {
    expect(facts(RIGHT)).not.toMatch(/clockwise/);
  });
});
