/** Words that nothing checks: in steps, between them and in cautions; each is told with both wordings, lost negations first. */
import {describe, expect, it} from 'vitest';
import {lostGuards} from '../../src/compare/guard-words.js';
import {compared, made, STEPS, said} from './small.js';

describe('guarding words that a text lost', () => {
  it.each([
    ['none', 'Wipe it dry.', 'Dry it with a wipe.', []],
    ['never', 'Never back: go on to the next slot.', 'Ease it back to the last one.', ['never']],
    ['not', 'Not grease: it sets.', 'Grease will do.', ['not']],
    ['no', 'No sealant of any kind.', 'A bead of sealant helps.', ['no']],
    ['nobody', 'From now on nobody turns the shaft.', 'Turn the shaft once to bed it.', ['nobody']],
    ["don't", "Don't turn it.", 'Turn it.', ['not']],
    ['can’t', 'It can’t be seen later.', 'It can be seen later.', ['cannot']],
    ['one for another of its kind', 'Never turn it.', 'Do not turn it.', []],
    ['only', 'Turn it only by hand.', 'Turn it by hand.', ['only']],
    ['before', 'Wire it before the sump goes on.', 'Wire it when the sump is on.', ['before']],
    ['every', 'Who touches every wire and tab.', 'Who nods.', ['every']],
    ['one of two', 'Never back. Not by hand.', 'Back a little. Not by hand.', ['never']],
    ['a whole sentence', 'Oil it. Never grease.', 'Oil it.', ['never']],
    ['the way to turn', 'Tighten it anti-clockwise.', 'Tighten it clockwise.', ['anticlockwise']],
    ['the hand of a thread', 'It has a left-hand thread.', 'It has a thread.', ['left']],
    ['the way that it faces', 'Lips inward, arrow to the exhaust.', 'Lips clean.', ['inward', 'arrow']],
    ['case and marks do not count', 'NEVER back', 'never, back', []],
  ])('%s', (_, before, now, lost) => {
    expect(lostGuards(before, now, () => false)).toEqual(lost);
  });

  it('are not lost with a sentence that stands elsewhere now', () => {
    expect(lostGuards('Oil it. Never grease!', 'Oil it.', (one) => one === 'never grease')).toEqual([]);
  });
});

describe('words of steps', () => {
  it('are told beside a graver change of the same step', () => {
    const old = STEPS.replace('Tighten the bolts.', 'Tighten the bolts. Nobody jerks at the wrench.');
    const now = old.replace('Nobody jerks', 'Jerk').replace('in 20, 30, 40', 'in 30, 40');
    const comparison = compared(made(old), made(now));
    expect(said(comparison)).toEqual([
      'weakened: bolts: passes 20 lbf·ft, 30 lbf·ft, 40 lbf·ft, now 30 lbf·ft, 40 lbf·ft',
      'reworded: step 6 of 01-cap.md: worded anew, without “nobody”',
    ]);
    const words = comparison.changes.at(-1);
    expect([words?.before.at[0]?.says, words?.now.at[0]?.says]).toEqual([
      'step 6 of 01-cap.md: Tighten the bolts. Nobody jerks at the wrench.',
      'step 6 of 01-cap.md: Tighten the bolts. Jerk at the wrench.',
    ]);
  });

  it('that lost a negation come before others', () => {
    const old = STEPS.replace('Copy the number.', 'Copy the number. Never guess it.');
    const now = old.replace('Look over', 'Go over').replace(' Never guess it.', '');
    expect(said(compared(made(old), made(now)))).toEqual([
      'reworded: step 11 of 01-cap.md: worded anew, without “never”',
      'reworded: step 1 of 01-cap.md: worded anew',
    ]);
  });

  it('of paragraphs and pictures below a step are its words too', () => {
    const old = STEPS.replace(
      '`lube: face with oil`',
      '`lube: face with oil`\n\n   Never let it run into the joint.\n',
    );
    expect(said(compared(made(old), made()))).toEqual([
      'reworded: step 3 of 01-cap.md: worded anew, without “never”',
    ]);
  });
});

describe('words outside steps', () => {
  const INTRO = 'Number one is at the front. Pick the caps up in that order, and never swap two.\n\n';
  const old = `${INTRO}${STEPS}`;

  it.each([
    [
      'an introduction worded anew',
      old.replace(INTRO, 'Number one is at the rear. Pick the caps up in any order, and swap two.\n\n'),
      ['reworded: text of 01-cap.md: “Number one is at the front. Pick the …” worded anew, without “never”'],
    ],
    [
      'an introduction taken out',
      STEPS,
      ['reworded: text of 01-cap.md: “Number one is at the front. Pick the …” dropped, without “never”'],
    ],
    ['a heading', old.replace('## Cap', '## The cap'), ['reworded: heading of 01-cap.md: “Cap” worded anew']],
    [
      'a note that is new',
      old.replace('## Cap\n', '## Cap\n\n- Have the lamp at hand.\n'),
      ['reworded: text of 01-cap.md: “- Have the lamp at hand.” new'],
    ],
  ])('%s', (_, now, says) => {
    const comparison = compared(made(old), made(now));
    expect(said(comparison)).toEqual(says);
    expect(comparison.changes[0]?.before.at.length).toBe(now.includes('lamp') ? 0 : 1);
  });

  it('two passages of one procedure are two changes', () => {
    const two = `First, the lamp is lit here.\n\nThen, the bench is cleared.\n\n${STEPS}`;
    const now = two.replace('lit here', 'lit there').replace('bench is', 'table is');
    expect(said(compared(made(two), made(now)))).toHaveLength(2);
  });
});

describe('steps joined, split and moved', () => {
  it('a step joined to another is a box fewer', () => {
    const now = STEPS.replace('\n3. Oil the face.', ' Oil the face.');
    const {changes} = compared(made(), made(now));
    expect(changes.map(({effect, message}) => `${effect}: ${message}`)).toContain(
      'changed: step 3 of 01-cap.md: joined to step 2 of 01-cap.md: one box and one set of initials fewer',
    );
    expect(changes.some(({effect}) => effect === 'weakened')).toBe(false);
  });

  it('steps that moved together are told once', () => {
    const [head = '', rest = ''] = STEPS.split('11. Copy');
    const moved = `## Numbers first\n\n1. Read the plate on the bearer aloud.\n2. Say whose engine it is and why it came in.\n\n`;
    const last = (text: string) => `${text}\n${moved}`;
    const comparison = compared(made(`${moved}${head}11. Copy${rest}`), made(last(`${head}11. Copy${rest}`)));
    const lines = said(comparison).filter((one) => one.includes('moved'));
    expect(lines).toEqual(['reworded: steps 14–15 of 01-cap.md: moved, steps 1–2 of 01-cap.md before']);
  });
});

it('a caution without a hazard word that stays as it was is no change', () => {
  const old = STEPS.replace('3. Oil', '> **Notice:** The face is soft.\n\n3. Oil');
  const now = old.replace('Tighten the studs.', 'Tighten the studs evenly.');
  expect(said(compared(made(old), made(now)))).toEqual([
    expect.stringMatching(/^reworded: step 7 .* worded anew$/),
  ]);
});
