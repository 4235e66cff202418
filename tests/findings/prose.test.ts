/** The rules that read shop prose are right in 95 of 100 cases, on the sentences that they were tuned on and on others. */
import {describe, expect, it} from 'vitest';
import {commandsIn} from '../../src/findings/commands.js';
import {scoreCommands, scoreNumbers} from './prose.js';
import {TUNED} from './prose-corpus.js';
import {HELD_OUT} from './prose-held-out.js';

const DUE = 0.95;

describe.each([
  ['tuned', TUNED],
  ['held out', HELD_OUT],
])('the part %s', (_, cases) => {
  it('is large enough for a share of 100 to mean something', () => {
    expect(cases.length).toBeGreaterThanOrEqual(200);
    expect(cases.flatMap(({commands}) => commands).length).toBeGreaterThanOrEqual(100);
    expect(cases.filter(({number}) => number === 'disagrees').length).toBeGreaterThanOrEqual(30);
    expect(
      cases.filter(({number}) => number === 'agrees' || number === 'none').length,
    ).toBeGreaterThanOrEqual(40);
  });

  it('has its commands found, and no others', () => {
    const {precision, recall} = scoreCommands(cases);
    expect(precision).toBeGreaterThanOrEqual(DUE);
    expect(recall).toBeGreaterThanOrEqual(DUE);
  });

  it('has the numbers found that disagree with the tag, and no others', () => {
    const {precision, recall} = scoreNumbers(cases);
    expect(precision).toBeGreaterThanOrEqual(DUE);
    expect(recall).toBeGreaterThanOrEqual(DUE);
  });
});

it('has no sentence in both parts', () => {
  const tuned = new Set(TUNED.map(({says}) => says));
  expect(HELD_OUT.filter(({says}) => tuned.has(says))).toEqual([]);
});

describe('a command that a tag of another verb does not make good', () => {
  it.each<[string, string]>([
    ['Push the ring onto the piston.', 'measure'],
    ['Turn the crankshaft clockwise.', 'torque'],
    ['Turn the crankshaft until the nut is up, clockwise.', 'torque'],
  ])('%s', (sentence, verb) => {
    const commands = commandsIn(sentence);
    expect(commands.length).toBeGreaterThan(0);
    expect(commands.some(({fits}) => fits.some((one) => one === verb))).toBe(false);
  });
});

describe('a command that a tag of another verb makes good', () => {
  it.each<[string, string]>([
    ['Push a ring down each bore.', 'measure'],
    ['Turn it anticlockwise.', 'torque'],
    ['Turn the nut anti-clockwise.', 'loosen'],
    ['Turn the castle nut counterclockwise.', 'torque'],
    ['Spin the spindle: smooth all the way.', 'inspect'],
    ['Scrape the blue spots off the lining.', 'alter'],
    ['Smear the thread with joint paste.', 'seal'],
    ['Run a lock nut down on each stud.', 'lock'],
    ['Let paraffin stand in each port.', 'check'],
    ['Pour both saddles in one go.', 'install'],
  ])('%s', (sentence, verb) => {
    const commands = commandsIn(sentence);
    expect(commands.length).toBeGreaterThan(0);
    expect(commands.every(({fits}) => fits.some((one) => one === verb))).toBe(true);
  });
});
