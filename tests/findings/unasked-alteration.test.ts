/** Alterations that nothing asks for, so that nobody would miss the step that makes them. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';
import {found} from '../help/found.js';

const engine = (flywheel: string, lap: string, pulley = '') => `
parts:
  block: {given: true}
  flywheel: {${flywheel}}
  pulley: {${pulley}}
alterations:
  lap: {${lap}}
  drill: {of: [block], does: drill it}
`;

const IN = ['alter: block by drill', 'install: flywheel', 'install: pulley'];
const LAP = 'alter: flywheel by lap';
const MUTE = (part: string) =>
  `spec-silent: lap is an alteration of ${part} that nothing asks for and no step makes; write alterations: [lap] beside ${part} or a substitute of it, or take it out`;

describe('an alteration that nothing asks for', () => {
  it.each<readonly [string, string, readonly string[], readonly string[]]>([
    ['is told', engine('', 'of: [flywheel]'), IN, [MUTE('flywheel')]],
    [
      'is misspelt where it is made, which is told alone',
      engine('', 'of: [flywheel]'),
      ['alter: flywheel by lapp', ...IN],
      ['unknown-item: lapp is not in the specification; did you mean lap?'],
    ],
    ['is made by a step all the same', engine('', 'of: [flywheel]'), [LAP, ...IN], []],
    [
      'is made by a step that does not say which',
      engine('', 'of: [flywheel]'),
      ['alter: flywheel', ...IN],
      [],
    ],
    ['is asked for by its part', engine('alterations: [lap]', 'of: [flywheel]'), [LAP, ...IN], []],
    [
      'is asked for by a substitute of its part',
      engine('substitutes: {six-flywheel: {alterations: [lap]}}', 'of: [flywheel]'),
      IN,
      [],
    ],
    [
      'is another than its part asks for',
      engine('alterations: [drill]', 'of: [flywheel]').replace('of: [block]', 'of: [block, flywheel]'),
      ['alter: flywheel by drill', ...IN],
      [MUTE('flywheel')],
    ],
    ['is made to one of its two parts', engine('', 'of: [flywheel, pulley]'), [LAP, ...IN], [MUTE('pulley')]],
    [
      'is another than the step makes',
      engine('', 'of: [flywheel]').replace('drill: {of: [block]', 'drill: {of: [block, flywheel]'),
      ['alter: flywheel by drill', ...IN],
      [MUTE('flywheel')],
    ],
    [
      'and is of no part',
      engine('', 'does: lap it'),
      IN,
      [
        'spec-silent: lap is an alteration of no part, and none asks for it; write of: [a part], and the same in the alterations of that part',
      ],
    ],
    [
      'and is of no part, but asked for by one',
      engine('alterations: [lap]', 'does: lap it'),
      [LAP, ...IN],
      [],
    ],
    [
      'and is of a part that there is not, which is told alone',
      engine('', 'of: [flywhel]'),
      IN,
      ['unknown-item: nothing is called flywhel; did you mean flywheel?'],
    ],
  ])('%s', (_, text, tags, says) => {
    expect(found(text, tags)).toEqual(says);
  });

  it('may be made in another procedure, so that one checked alone is not blamed', () => {
    const made = book({
      engine: engine('', 'of: [flywheel]'),
      procedures: {'p.md': '\n1. Fit it. `install: flywheel`\n'},
    });
    const names = (alone: boolean) => check(made, {alone}).findings.map(({name}) => name);
    expect(names(true)).not.toContain('spec-silent');
    expect(names(false)).toContain('spec-silent');
  });
});
