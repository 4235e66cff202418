/** What must come before a tightening: pins that keep a shaft from turning, other fasteners. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';
import {found} from '../help/found.js';

const NO_LOCK = 'lock: {value: none, because: stretch holds them}';
const ENGINE = `
parts:
  block: {given: true}
  dowels: {at: [left, right]}
  crank-pin: {temporary: true}
  main-cap: {}
fasteners:
  main-bolts: {at: [left, right], count: 4, holds: [main-cap], after: [dowels], torque: 80 lbf·ft, threads: dry, ${NO_LOCK}}
  side-bolts: {count: 2, holds: [main-cap], after: [main-bolts], torque: 30 lbf·ft, threads: dry, ${NO_LOCK}}
  pulley-bolt: {after: [crank-pin], torque: 130 lbf·ft, threads: dry, ${NO_LOCK}}
  cover-nut: {after: [crank-pin], torque: snug, threads: dry, ${NO_LOCK}}
`;

const MAIN = ['install: dowels', 'install: main-cap', 'torque: main-bolts to 80 lbf·ft'];
const SIDE = 'torque: side-bolts to 30 lbf·ft';
const PIN = ['install: crank-pin', 'torque: pulley-bolt to 130 lbf·ft', 'torque: cover-nut to snug'];
const WHOLE = [...MAIN, SIDE, ...PIN, 'remove: crank-pin'];

/** The steps with one put before the one that is named, or in its place, or with it left out. */
function changed(...changes: readonly (readonly [at: string, steps: readonly string[]])[]): string[] {
  return WHOLE.flatMap((step) => changes.find(([at]) => step.startsWith(at))?.[1] ?? [step]);
}

describe('what must come before a tightening', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['is there', WHOLE, []],
    [
      'never goes in, and no other finding would miss it, for it is temporary',
      changed(['install: crank-pin', []], ['remove: crank-pin', []]),
      [
        'install-order: pulley-bolt is torqued before crank-pin is in',
        'install-order: cover-nut is torqued before crank-pin is in',
      ],
    ],
    [
      'goes in only after the tightening',
      changed(
        ['install: crank-pin', []],
        ['torque: pulley-bolt', ['torque: pulley-bolt to 130 lbf·ft', 'install: crank-pin']],
      ),
      ['install-order: pulley-bolt is torqued before crank-pin is in'],
    ],
    [
      'is out for one pass, though it is in for the last',
      changed(['install: crank-pin', ['torque: pulley-bolt to 60 lbf·ft', 'install: crank-pin']]),
      ['install-order: pulley-bolt is torqued before crank-pin is in'],
    ],
    [
      'need not be there to run the bolt down',
      changed(['install: crank-pin', ['torque: pulley-bolt to snug', 'install: crank-pin']]),
      [],
    ],
    [
      'is missing at one place',
      changed(
        ['install: dowels', ['install: dowels[left]']],
        ['remove: crank-pin', ['remove: crank-pin', 'install: dowels[right]']],
      ),
      ['install-order: main-bolts are torqued before dowels[right] are in'],
    ],
    [
      'and never goes in where it should stay is missed once, at the end',
      changed(['install: dowels', ['install: dowels[left]']]),
      ['left-out: dowels[right] are never installed'],
    ],
    [
      'is another fastener, which is tight only later',
      changed(['torque: main-bolts', []], ['torque: side-bolts', [SIDE, 'torque: main-bolts to 80 lbf·ft']]),
      ['install-order: side-bolts are torqued before main-bolts are tight'],
    ],
    [
      'is another fastener, which is snug only',
      changed(
        ['torque: main-bolts', ['torque: main-bolts to snug']],
        ['torque: side-bolts', [SIDE, 'torque: main-bolts to 80 lbf·ft']],
      ),
      ['install-order: side-bolts are torqued before main-bolts are tight'],
    ],
    [
      'is another fastener, which no step ever tightens: that is told once',
      changed(['torque: main-bolts', []]),
      ['left-slack: main-bolts end the build slack: no step torques them'],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(ENGINE, tags)).toEqual(says);
  });

  it('was taken out again, which the story tells', () => {
    const steps = changed([
      'torque: pulley-bolt',
      ['remove: crank-pin', 'torque: pulley-bolt to 130 lbf·ft'],
    ]);
    const numbered = steps.map((tag, index) => `${index + 1}. Do it. \`${tag}\``).join('\n');
    const [finding] = check(book({engine: ENGINE, procedures: {'p.md': `\n${numbered}\n`}})).findings;
    expect(finding?.message).toBe('pulley-bolt is torqued before crank-pin is in');
    expect(finding?.story.map(({says}) => says)).toEqual([
      'step 5 of p.md: in (install: crank-pin)',
      'step 6 of p.md: no longer in (remove: crank-pin)',
    ]);
    expect(finding?.related.map(({says}) => says)).toEqual(['pulley-bolt is torqued after crank-pin']);
  });

  it('may stand in another procedure, so that one checked alone is not blamed', () => {
    const engine = book({
      engine: ENGINE,
      procedures: {'p.md': '\n1. Do it. `torque: pulley-bolt to 130 lbf·ft`\n'},
    });
    const names = (alone: boolean) => check(engine, {alone}).findings.map(({name}) => name);
    expect(names(true)).not.toContain('install-order');
    expect(names(false)).toContain('install-order');
  });

  it('holds for what a part waits for as well: a temporary part that never goes in', () => {
    const engine = 'parts: {block: {given: true}, pin: {temporary: true}, gear: {after: [pin]}}\n';
    expect(found(engine, ['install: gear'])).toEqual([
      'install-order: gear goes in before pin, which must be in first',
    ]);
  });
});
