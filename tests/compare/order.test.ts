/** What was done is still done, but not of the engine as it was then: checks, readings and cautions that moved, joints opened again. */
import {describe, expect, it} from 'vitest';
import {compared, ENGINE, made, STEPS, said} from './small.js';

const CHECKED = `${ENGINE}checks:\n  turns: {expect: turns freely by hand}\n`;
const CHECK = 'Turn the shaft over. `check: turns`\n';

function grave(before: string, now: string, engine = CHECKED): string[] {
  return said(compared(made(before, engine), made(now, engine))).filter((one) => !one.startsWith('reworded'));
}

describe('a check, a reading or a signature that moved across work', () => {
  const before = STEPS.replace('8. Read the play', `8. ${CHECK}9. Read the play`);
  it.each([
    [
      'a check before the torque that it came after',
      before,
      STEPS.replace('6. Tighten the bolts.', `6. ${CHECK}7. Tighten the bolts.`),
      [
        'changed: turns: checked before bolts is tightened, studs is tightened now, the other way round before',
      ],
    ],
    [
      'a check after a lock that it came before',
      before,
      STEPS.replace('11. Copy', `11. ${CHECK}12. Copy`),
      ['changed: turns: checked after bolts is locked now, the other way round before'],
    ],
    [
      'a check moved past a reading',
      before,
      STEPS.replace('9. Where it is out', `9. ${CHECK}9. Where it is out`),
      [],
    ],
    [
      'a signature before the lock that it asks for',
      STEPS,
      STEPS.replace(/13\. (Have.*\n)/, '').replace(
        '10. Wire',
        '10. Have it signed. `witness: closed by "shop lead"`\n11. Wire',
      ),
      ['weakened: closed: witnessed before bolts is locked now, the other way round before'],
    ],
  ])('%s', (_, old, now, says) => {
    expect(old).not.toBe(now);
    expect(grave(old, now)).toEqual(says);
  });

  it('a trial fit that moved whole makes no difference', () => {
    const trial = '`install: cap using soft-mallet` and off again. `remove: cap`\n';
    const old = STEPS.replace('8. Read', `8. ${CHECK}9. Read`).replace(
      '1. Look',
      `1. Try the cap. ${trial}2. Look`,
    );
    const now = STEPS.replace('1. Look', `1. ${CHECK}2. Try the cap. ${trial}3. Look`);
    expect(grave(old, now).some((one) => one.includes('installed'))).toBe(true);
    const first = STEPS.replace('1. Look', `1. ${CHECK}2. Try the cap. ${trial}3. Look`);
    const second = STEPS.replace('1. Look', `1. Try the cap. ${trial}2. ${CHECK}3. Look`);
    expect(grave(first, second).filter((one) => one.includes('turns'))).toEqual([]);
  });
});

describe('a caution that moved', () => {
  const CAUTION = '\n> **Caution:** Wire ends cut. Glasses on. `hazard: cut-ends`\n\n';
  const shop = (steps: string) =>
    made(
      steps,
      ENGINE,
      `shop: {name: Example Works}
sources: {house: {title: House notes, note: invented}}
source: house
tools: {soft-mallet: soft mallet, dial: {name: dial indicator, gauge: true}}
consumables:
  solvent: {use: cleaner, hazards: [fire]}
  oil: {use: lubricant}
  grease: {use: lubricant}
  gasket-goo: {use: sealant, cure: 24 h}
  wire-032: {use: lock, lock: safety-wire, hazards: [cut-ends]}
`,
    );
  const near = shop(STEPS.replace('10. Wire', `${CAUTION}10. Wire`));

  it.each([
    [
      'far from the work that it warns of',
      STEPS.replace('2. Wipe', `${CAUTION}2. Wipe`),
      'weakened: caution on cut-ends: stands 9 steps farther before step 10 of 01-cap.md, of which it warns',
    ],
    [
      'by one step',
      STEPS.replace('9. Where', `${CAUTION}9. Where`),
      'changed: caution on cut-ends: stands 2 steps farther before step 10 of 01-cap.md, of which it warns',
    ],
  ])('%s', (_, steps, says) => {
    const {changes} = compared(near, shop(steps));
    expect(
      changes.filter(({effect}) => effect !== 'reworded').map(({effect, message}) => `${effect}: ${message}`),
    ).toEqual([says]);
    expect(said(compared(shop(steps), near)).filter((one) => one.includes('farther'))).toEqual([]);
  });

  it('not by a step that is new between', () => {
    const now = STEPS.replace('10. Wire', `${CAUTION}10. Lay the pliers out.\n11. Wire`);
    expect(said(compared(near, shop(now))).filter((one) => one.includes('farther'))).toEqual([]);
  });
});

it('slackening what closes a sealed joint, and tightening it again, is no strengthening and names the joint', () => {
  const now = STEPS.replace(
    '8. Read',
    '8. Slacken the studs. `loosen: studs`\n9. Tighten them. `torque: studs`\n10. Read',
  );
  const lines = grave(STEPS, now, ENGINE);
  expect(lines).toContain('changed: studs: loosened after joint was sealed');
  expect(lines).toContain('changed: studs: tightened at one step more');
  expect(lines.filter((one) => one.startsWith('strengthened'))).toEqual([]);
});
