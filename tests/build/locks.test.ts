/** Torques, locks and signatures in every order: which of them stand at the end, told by what the check misses. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  caps: {alterations: [relieve, drill]}
fasteners:
  wired: {holds: [caps], torque: 30 lbf·ft, threads: dry, lock: safety-wire}
  glued: {holds: [caps], torque: 30 lbf·ft, threads: [blue], lock: threadlocker}
alterations:
  relieve: {of: [caps], does: file the corner}
  drill: {of: [caps], does: drill the oil hole}
hold-points:
  closed: {asks: [wired, glued]}
`;

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  wire: {use: lock, lock: safety-wire}
  blue: {use: lock, lock: threadlocker}
`;

const ALTER = ['alter: caps by relieve', 'alter: caps by drill', 'install: caps'];
const GLUED = ['lock: glued with blue', 'torque: glued to 30 lbf·ft'];
const WIRED = ['torque: wired to 30 lbf·ft', 'lock: wired with wire'];
const SIGNED = 'witness: closed by A. Penrose';

it.each<readonly [title: string, steps: readonly string[], finds: readonly string[]]>([
  ['each in its order is content', [...ALTER, ...GLUED, ...WIRED, SIGNED], []],
  [
    'a bolt tightened once more has lost its wire',
    [...ALTER, ...GLUED, ...WIRED, 'torque: wired to 30 lbf·ft', SIGNED],
    ['witnessed-early closed', 'left-unlocked wired'],
  ],
  [
    'threadlocker goes on first and stays on when the bolt is tightened in two goes',
    [
      ...ALTER,
      'lock: glued with blue',
      'torque: glued to 10 lbf·ft',
      'torque: glued to 30 lbf·ft',
      ...WIRED,
      SIGNED,
    ],
    [],
  ],
  [
    'with another lock beside it too',
    [...ALTER, 'lock: glued with wire, blue', 'torque: glued to 30 lbf·ft', ...WIRED, SIGNED],
    // The wire is of the wrong kind, and a torque still to come would slacken it.
    ['lock-before-torque glued', 'lock-wrong-kind glued'],
  ],
  [
    'a torque below the specified one with another to come is not the last',
    [
      ...ALTER,
      ...GLUED,
      'torque: wired to 10 lbf·ft',
      'lock: wired with wire',
      'torque: wired to 30 lbf·ft',
      SIGNED,
    ],
    ['lock-before-torque wired', 'left-unlocked wired', 'witnessed-early closed'],
  ],
  [
    'a bolt slackened and never made good',
    [...ALTER, ...GLUED, ...WIRED, 'loosen: wired', SIGNED],
    ['witnessed-early closed', 'left-slack wired', 'left-unlocked wired'],
  ],
  [
    'a bolt slackened after the signature takes it back',
    [...ALTER, ...GLUED, ...WIRED, SIGNED, 'loosen: wired', ...WIRED],
    ['left-unwitnessed closed'],
  ],
  [
    'a bolt slackened and made good before it',
    [...ALTER, ...GLUED, ...WIRED, 'loosen: wired', ...WIRED, SIGNED],
    [],
  ],
  [
    'one alteration of two',
    ['alter: caps by relieve', 'install: caps', ...GLUED, ...WIRED, SIGNED],
    ['alter-first caps'],
  ],
])('%s', (_title, steps, finds) => {
  const procedure = steps.map((step, index) => `${index + 1}. Do it. \`${step}\``).join('\n');
  const {findings} = check(
    book({engine: ENGINE, shop: SHOP, procedures: {'procedure.md': `\n${procedure}\n`}}),
  );
  const named = findings
    .filter(({severity}) => severity === 'error')
    .map(({name, item}) => `${name} ${item}`);
  expect(named.sort()).toEqual([...finds].sort());
});
