/** The walk through a build: who is called when, what stays where ways part and meet, and how often a loop is gone round. */
import {describe, expect, it} from 'vitest';
import {ledger, type Visitor} from '../../src/build/ledger.js';
import {book} from '../help/example.js';
import {found} from '../help/found.js';

const ENGINE = `
parts:
  block: {given: true}
  cover: {closes: [joint]}
  pump: {}
joints:
  joint: {between: [block, cover], seal: [paper-gasket]}
checks:
  turns: {}
  leak: {}
`;

const STRAIGHT = '1. a `install: pump`\n2. b `check: turns`\n3. c `if: turns is out`\n   1. d `turn: pump`\n';
const ROUND = `1. a \`install: pump\`
2. b \`check: turns\` \`step: ask\`
3. c
   1. d
   2. e \`if: turns is out\`
      1. f \`turn: pump\`
      2. g \`repeat: ask\`
`;

function run(...procedures: string[]) {
  const texts = procedures.map((text, at) => [`${at + 1}.md`, text] as const);
  return ledger(book({engine: ENGINE, procedures: Object.fromEntries(texts)}));
}

/** Every call, in order. */
function calls(...procedures: string[]): string {
  const told: string[] = [];
  const visitor: Required<Visitor> = {
    step: ({step}) => told.push(step.number),
    before: ({verb, item}) => told.push(`${verb} ${item.id}`),
    after: ({verb}) => told.push(`${verb}d`),
    branch: ({when}) => told.push(`${when.item.id} is ${when.is}?`),
    repeat: ({repeat}, _, gained) => told.push(`to ${repeat?.id} (${gained.length})`),
    end: () => told.push('end'),
    settling: (on) => told.push(on ? 'settling' : 'settled'),
  };
  run(...procedures).walk(visitor);
  return told.join(', ');
}

describe('a walk', () => {
  it('calls a visitor at each step, action and branch, once where nothing goes back', () => {
    expect(calls(STRAIGHT)).toBe(
      '1, install pump, installd, 2, check turns, checkd, 3, turns is out?, 3a, turn pump, turnd, end',
    );
  });

  it('goes round a procedure with a repeat before, until no more is lost, and over no other', () => {
    const round =
      '1, install pump, installd, 2, check turns, checkd, 3, 3a, 3b, turns is out?, 3b1, turn pump, turnd, 3b2, to ask (0)';
    expect(calls('1. z', ROUND)).toBe(`1, settling, ${round}, settled, ${round}, end`);
  });

  it('asks nothing of a visitor', () => {
    expect(() => run(STRAIGHT, ROUND).walk({})).not.toThrow();
  });

  it('keeps what was done among the sub-steps beside a branch', () => {
    let held: readonly boolean[] = [];
    run('1. a\n   1. b `install: pump`\n   2. c `if: turns is out`\n      1. d `install: cover`\n').walk({
      end(state) {
        held = ['pump', 'cover'].map((id) => state.holds('installed', id, ''));
      },
    });
    expect(held).toEqual([true, false]);
  });
});

describe('a repeat', () => {
  const OPEN = `
parts:
  block: {given: true}
  cover: {alterations: [relieve]}
  lid: {closes: [seat]}
surfaces:
  seat: {on: block, assembly: clean}
  face: {on: cover, assembly: {value: unknown, because: nobody knows}}
alterations:
  relieve: {of: [cover], does: file the corner}
checks:
  turns: {expect: turns by hand}
  leak: {expect: dry}
`;
  const errors = (...tags: string[]) =>
    found(OPEN, ['`check: turns` `check: leak`', ...tags]).filter((line) => !/^(spec-|left-)/.test(line));

  it('of a step that is still to come goes nowhere', () => {
    const late = '1. a `install: pump` `repeat: late`\n2. b `step: late` `turn: pump`\n';
    const round = '1, install pump, installd, 2, turn pump, turnd';
    expect(calls(late)).toBe(`settling, ${round}, settled, ${round}, end`);
    const wait = '`if: turns is out`\n   1. On. `repeat: late`\n   2. Wait.';
    expect(errors(wait, '`turn: lid` `step: late`')).toEqual([
      'endless-repeat: `repeat: late` names a step that does not stand before it',
    ]);
    expect(errors('`install: lid` `repeat: late`', '`clean: face` `step: late`')).toEqual([
      'clean-first: seat is not clean when lid closes it, and goes together clean',
      'endless-repeat: `repeat: late` names a step that does not stand before it',
    ]);
  });

  it('takes away what it undid for all who go back past it', () => {
    expect(
      errors(
        'clean: face',
        '`lube: face with engine-oil` `step: outer`',
        '`check: turns` `step: inner`',
        '`if: turns is out`\n   1. File it. `alter: cover by relieve`\n   2. Back. `repeat: inner`',
        '`if: leak is out`\n   1. Back. `repeat: outer`',
      ),
    ).toEqual([
      'clean-first: face is lubed but is no longer clean, the second time round, after step 6a goes back to step 3',
    ]);
  });

  it('of a trial fit that is wrong each time comes to an end, and tells of the last', () => {
    expect(
      errors(
        'install: lid',
        '`remove: lid` `step: trial`',
        'install: lid',
        '`if: turns is out`\n   1. Back. `repeat: trial`',
      ),
    ).toEqual(['clean-first: seat is not clean when lid closes it, and goes together clean']);
  });

  it('leads past the steps behind it, which are told as one stretch', () => {
    expect(
      errors(
        '`check: turns` `step: ask`',
        '`if: turns is out`\n   1. Back. `repeat: ask`\n   2. Wait.\n   3. Wait on.',
        '`if: leak is out`\n   1. Back. `repeat: ask`\n   2. Wait.',
      ),
    ).toEqual([
      'unreachable-step: steps 3b to 3c are never reached: the repeat above is always taken',
      'unreachable-step: step 4b is never reached: the repeat above is always taken',
    ]);
  });
});
