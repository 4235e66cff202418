/** Branches and repeats: what holds where ways meet, and rework loops judged right. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  crankshaft: {given: true}
  main-shells: {single-use: true}
  main-caps: {closes: [shell-faces, journals], after: [main-shells]}
surfaces:
  shell-faces: {on: main-shells, assembly: lubed, lubricants: [assembly-lube]}
  journals: {on: crankshaft, assembly: lubed, lubricants: [assembly-lube]}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: [engine-oil], lock: safety-wire}
fits:
  main-clearance:
    between: [shell-faces, journals]
    limits: 0.0015–0.0030 in
    by: strip
    using: [strip-green]
    when: {installed: [main-caps], tight: [main-cap-bolts]}
hold-points:
  bottom-end-closed: {asks: [main-clearance, main-cap-bolts], by: shop lead}
`;

const TRIAL = `
1. Fit new shells. \`renew: main-shells\` \`install: main-shells\`
2. Oil the threads. \`lube: main-cap-bolts with engine-oil\`
3. Wipe shells and journals dry. \`clean: shell-faces, journals\` \`step: trial\`
4. Lay the strips. \`lay: main-clearance with strip-green\`
5. Set the caps on. \`install: main-caps\`
6. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
7. Slacken the bolts. \`loosen: main-cap-bolts\`
8. Lift the caps off. \`remove: main-caps\`
9. Read the strips. \`measure: main-clearance\`
`;

const REWORK = `10. Where a reading is out: \`if: main-clearance is out\`
    1. Take the shells out. \`remove: main-shells\`
    2. Fit the next undersize. \`renew: main-shells\` \`install: main-shells\`
    3. Go back and read again. \`repeat: trial\`
`;

const FINAL = `11. Wipe the strips away. \`clean: shell-faces, journals\`
12. Coat shells and journals. \`lube: shell-faces, journals with assembly-lube\`
13. Set the caps on. \`install: main-caps\`
14. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
15. Wire the bolts. \`lock: main-cap-bolts with wire-032\`
16. Sign. \`witness: bottom-end-closed by "shop lead"\`
`;

describe('a rework loop', () => {
  it('that goes back and reads again is clean', () => {
    expect(found(TRIAL + REWORK + FINAL)).toEqual([]);
  });

  it('that does not go back leaves the new shells unread', () => {
    const once = REWORK.replace(/ {4}3\. Go back.*\n/, '');
    expect(found(TRIAL + once + FINAL)).toContain('left-unmeasured main-clearance');
  });

  it('that changes the shells without taking them out is seen', () => {
    const inPlace = REWORK.replace(/ {4}1\. Take the shells out.*\n/, '');
    expect(found(TRIAL + inPlace + FINAL)).toContain('install-order main-shells');
  });

  it('that goes back to where the shells are fitted, without taking them out, is seen', () => {
    const fromTheTop = (TRIAL + REWORK + FINAL)
      .replace(' `step: trial`', '')
      .replace('1. Fit new shells.', '1. Fit new shells. `step: trial`')
      .replace(/ {4}1\. Take the shells out.*\n/, '')
      .replace(/ {4}2\. Fit the next undersize.*\n/, '')
      .replace('3. Go back', '1. Go back');
    expect(found(fromTheTop)).toEqual(['install-order main-shells']);
  });

  it('that goes back too far down, past the laying of the strip, is seen', () => {
    const late = (TRIAL + REWORK + FINAL)
      .replace(' `step: trial`', '')
      .replace('`install: main-caps`\n6.', '`install: main-caps` `step: trial`\n6.');
    expect(found(late)).toContain('measured-too-late main-clearance');
  });

  it('with something undone in it that is never made good is told at the end', () => {
    // The bolts are renewed of their oil only before the loop; a wash in the loop takes nothing of that back.
    const worse = REWORK.replace('`remove: main-shells`', '`remove: main-shells` `loosen: main-cap-bolts`');
    expect(found(TRIAL + worse + FINAL)).toEqual([]);
  });
});

describe('what goes wrong the second time round', () => {
  const told = (steps: string, engine = ENGINE) =>
    check(book({engine, procedures: {'procedure.md': steps}})).findings.map(({message}) => message);
  const SECOND = /, the second time round, after step 10c goes back to step (\d+)$/;

  it('says so, and which step goes back where', () => {
    const late = (TRIAL + REWORK + FINAL)
      .replace(' `step: trial`', '')
      .replace('`install: main-caps`\n6.', '`install: main-caps` `step: trial`\n6.');
    const messages = told(late).filter((message) => message.startsWith('main-clearance is read'));
    expect(messages.map((message) => SECOND.exec(message)?.[1])).toEqual(['5']);
    const {findings} = check(book({engine: ENGINE, procedures: {'procedure.md': late}}));
    const stories = findings.filter(({name}) => name === 'measured-too-late').map(({story}) => story);
    expect(stories.map((story) => story.at(-1)?.says)).toEqual([
      'step 10c of procedure.md: back to step 5, for the second time round',
    ]);
  });

  it('is not said of what goes wrong at the first', () => {
    const never = (TRIAL + REWORK + FINAL).replace(/4\. Lay the strips\. .*\n/, '4. Wait.\n');
    const messages = told(never).filter((message) => message.includes('main-clearance'));
    expect(messages).not.toEqual([]);
    expect(messages.filter((message) => message.includes('second time'))).toEqual([]);
  });

  it('is not said of what goes wrong below the repeat', () => {
    const dry = (TRIAL + REWORK + FINAL).replace(/12\. Coat.*\n/, '12. Wait.\n');
    const messages = told(dry).filter((message) => message.includes('shell-faces'));
    expect(messages).not.toEqual([]);
    expect(messages.filter((message) => message.includes('second time'))).toEqual([]);
  });
});

describe('a way out', () => {
  const all = (rework: string) => found(TRIAL + rework + FINAL);

  it('is missing where a step of the branch goes back to itself', () => {
    expect(all(REWORK.replace('`repeat: trial`', '`step: self` `repeat: self`'))).toContain(
      'endless-repeat ',
    );
  });

  it('is missing where it goes back to another step of the branch', () => {
    const within = REWORK.replace('`remove: main-shells`', '`remove: main-shells` `step: out`').replace(
      '`repeat: trial`',
      '`repeat: out`',
    );
    expect(all(within)).toContain('endless-repeat ');
  });

  it('is missing outside of any branch, and brings nothing else with it', () => {
    expect(all(REWORK.replace('`if: main-clearance is out`', ''))).toEqual(['endless-repeat ']);
  });

  it('is there where the step that asks is gone back to', () => {
    const asked = REWORK.replace('`if: main-clearance is out`', '`if: main-clearance is out` `step: ask`');
    expect(all(asked.replace('`repeat: trial`', '`repeat: ask`'))).not.toContain('endless-repeat ');
  });
});

describe('a branch', () => {
  const steps = (rework: string) => `
1. Fit new shells. \`renew: main-shells\` \`install: main-shells\`
2. Read it. \`check: turns-freely\`
3. Where it does not: \`if: turns-freely is out\`
${rework}`;
  const engine = `
parts:
  block: {given: true}
  main-shells: {single-use: true}
checks:
  turns-freely: {expect: turns by hand}
`;

  it('keeps only what holds on both ways', () => {
    const broken = steps('   1. Take the shells out. `remove: main-shells`\n');
    expect(found(broken, engine)).toContain('left-out main-shells');
  });

  it('keeps what is undone and made good within it', () => {
    const mended = steps(
      '   1. Take the shells out. `remove: main-shells`\n   2. Fit the next set. `renew: main-shells` `install: main-shells`\n',
    );
    expect(found(mended, engine)).toEqual([]);
  });

  it('does not count what only it does', () => {
    const only = `
1. Read it. \`check: turns-freely\`
2. Where it does not: \`if: turns-freely is out\`
   1. Fit new shells. \`renew: main-shells\` \`install: main-shells\`
`;
    expect(found(only, engine)).toContain('left-out main-shells');
  });

  it('on a reading never taken is seen', () => {
    const unread = steps('   1. Turn it again. `check: turns-freely`\n').replace(
      '`check: turns-freely`\n3',
      '\n3',
    );
    expect(found(unread, engine)).toContain('unmeasured-branch turns-freely');
  });
});

/** `name item`, sorted. */
function found(steps: string, engine = ENGINE): string[] {
  const {findings} = check(book({engine, procedures: {'procedure.md': steps}}));
  return findings
    .filter(({severity}) => severity !== 'information')
    .map(({name, item}) => `${name} ${item ?? ''}`)
    .sort();
}
