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

/** Steps with a fastener of either hand, of none that is known, and things that are no fasteners. */
describe('a step that turns more than one thing', () => {
  const ENGINE = `
parts:
  flywheel: {}
  pulley: {}
  fan: {}
fasteners:
  left: {holds: [flywheel], thread: M20×1.5 LH, torque: 80 lbf·ft, threads: [engine-oil], lock: {value: none, because: taper}}
  other-left: {holds: [pulley], thread: M20×1.5 LH, torque: 80 lbf·ft, threads: dry, lock: {value: none, because: taper}}
  right: {holds: [pulley], thread: M20×1.5, torque: 80 lbf·ft, threads: dry, lock: {value: none, because: taper}}
  secret: {holds: [fan], thread: {value: unknown, because: the plate is gone}, torque: 80 lbf·ft, threads: dry, lock: {value: none, because: taper}}
`;
  const LEFT_TIGHTENED = 'left: clockwise, a left-hand thread is tightened anticlockwise';

  it.each<readonly [tags: string, prose: string, ...told: string[]]>([
    ['`torque: left`', 'Tighten it clockwise.', LEFT_TIGHTENED],
    [
      '`torque: left`',
      'Clockwise it goes, and back counter-clockwise.',
      LEFT_TIGHTENED.replace('clock', 'Clock'),
    ],
    ['`torque: left`', 'Hold the key. Tighten it clockwise.', LEFT_TIGHTENED],
    ['`torque: left, other-left`', 'Tighten them clockwise.', LEFT_TIGHTENED],
    ['`torque: left, right`', 'Tighten them clockwise.'],
    ['`torque: right, left`', 'Tighten them anticlockwise.'],
    ['`torque: left, secret`', 'Tighten them clockwise.'],
    ['`torque: left` `loosen: other-left`', 'Tighten it clockwise.'],
    ['`install: pulley` `torque: left`', 'Tighten it clockwise.', LEFT_TIGHTENED],
    ['`lube: left` `torque: left`', 'Tighten it clockwise.', LEFT_TIGHTENED],
    ['`torque: secret`', 'Tighten it anticlockwise.'],
    ['`torque: fan, left`', 'Tighten it clockwise.', LEFT_TIGHTENED],
    ['`torque: nobody, left`', 'Tighten it clockwise.', LEFT_TIGHTENED],
    ['`torque: nobody`', 'Tighten it clockwise.'],
  ])('%s: %s', (tags, prose, ...told) => {
    const one = book({engine: ENGINE, procedures: {'procedure.md': `\n1. ${prose} ${tags}\n`}});
    const text = one.procedures[0]?.source.text ?? '';
    const found = check(one, {today: '2026-06-01'}).findings.filter(({name}) => name === 'prose-disagrees');
    const said = found.map(({where: {span}, item, message, related}) => {
      expect(
        related.map(({where, says}) => `${says} ${text.slice(where.span.start, where.span.end)}`),
      ).toEqual([`the tag torque: ${tags.split('torque: ')[1]?.split('`')[0]}`]);
      return `${item}: ${text.slice(span.start, span.end)}, ${message.split(', and ')[1]}`;
    });
    expect(said).toEqual(told);
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
