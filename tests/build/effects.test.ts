/** What tags do to the facts of the engine, where no example of a finding shows it: told by what the check misses. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  crankshaft: {given: true}
  caps: {closes: [journals, cap-joint]}
  cover: {closes: [cover-joint], alterations: [relieve]}
surfaces:
  journals: {on: crankshaft, assembly: lubed}
joints:
  cap-joint: {between: [block, caps], seal: [liquid-gasket]}
  cover-joint: {between: [block, cover], seal: [liquid-gasket, slow-gasket]}
fasteners:
  cap-bolts: {holds: [caps], torque: 30 lbf·ft, angle: 90°, threads: dry, lock: {value: none, because: stretched}}
  cover-bolts: {holds: [cover], torque: snug, angle: 90°, threads: dry, lock: {value: none, because: stretched}}
alterations:
  relieve: {of: [cover], does: file the corner}
`;

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  solvent: {use: cleaner}
  assembly-lube: {use: lubricant}
  liquid-gasket: {use: sealant, cure: {value: 24 h, source: house}}
  slow-gasket: {use: sealant, cure: {value: 48 h, source: house}}
`;

const STEPS: readonly string[] = [
  'clean: journals, cap-joint, cover-joint',
  'lube: crankshaft with assembly-lube',
  'seal: cap-joint with liquid-gasket',
  'install: caps',
  'torque: cap-bolts to 30 lbf·ft',
  'torque: cap-bolts turn 90°',
  'alter: cover',
  'seal: cover-joint with liquid-gasket',
  'install: cover',
  'torque: cover-bolts turn 90°',
  'cure: liquid-gasket for 24 h',
];

it.each<readonly [title: string, was: string, is: string | undefined, finds: readonly string[]]>([
  ['all of it is content', '', '', []],
  [
    'a part lubed is its surfaces lubed',
    'lube: crankshaft with assembly-lube',
    undefined,
    ['lube-first journals'],
  ],
  [
    'its surfaces lubed serve as well',
    'lube: crankshaft with assembly-lube',
    'lube: journals with assembly-lube',
    [],
  ],
  ['an angle alone is no torque', 'torque: cap-bolts to 30 lbf·ft', undefined, ['left-slack cap-bolts']],
  [
    'a torque without its angle is not final',
    'torque: cap-bolts turn 90°',
    undefined,
    ['left-slack cap-bolts'],
  ],
  [
    'snug wants its angle',
    'torque: cover-bolts turn 90°',
    'torque: cover-bolts to snug',
    ['left-slack cover-bolts'],
  ],
  ['an alteration needs no name where there is one', 'alter: cover', undefined, ['alter-first cover']],
  [
    'a sealant left to cure cures every joint made up with it',
    'cure: liquid-gasket for 24 h',
    undefined,
    ['left-unsealed cap-joint', 'left-unsealed cover-joint'],
  ],
  [
    'and no joint that was made up with another',
    'seal: cover-joint with liquid-gasket',
    'seal: cover-joint with slow-gasket',
    ['left-unsealed cover-joint'],
  ],
])('%s', (_title, was, is, finds) => {
  const steps = STEPS.flatMap((step) => (step === was ? (is === undefined ? [] : [is]) : [step]));
  const procedure = steps.map((step, index) => `${index + 1}. Do it. \`${step}\``).join('\n');
  const {findings} = check(
    book({engine: ENGINE, shop: SHOP, procedures: {'procedure.md': `\n${procedure}\n`}}),
  );
  const named = findings
    .filter(({severity}) => severity === 'error')
    .map(({name, item}) => `${name} ${item}`);
  expect(named).toEqual(finds);
});
