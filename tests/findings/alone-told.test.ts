/** A procedure that no book lists, and what its own steps do too late: all that is told of it. Common practice, no source. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';
import {SILENT, type Story} from '../help/stories.js';

const ENGINE = `
parts:
  block: {given: true}
  caps: {}
  shaft: {closes: [journals, bores]}
  flywheel: {}
  plug: {single-use: true}
surfaces:
  rim: {assembly: lubed, lubricants: [engine-oil]}
  bores: {on: block, assembly: lubed, lubricants: [engine-oil]}
  journals: {on: shaft, assembly: lubed, lubricants: [engine-oil]}
fasteners:
  studs: {holds: [caps], torque: 40 lbf·ft, threads: [thread-lock, engine-oil], lock: thread-lock}
  bolts: {holds: [caps], torque: 40 lbf·ft, threads: [engine-oil], lock: {value: none, because: stretch}}
checks:
  turns: {expect: freely}
hold-points:
  closed: {asks: [turns], by: shop lead}
alterations:
  lap: {of: [flywheel]}
  drill: {of: [flywheel]}
`;

const SHOP = EXAMPLE_SHOP.replace(
  'consumables:\n',
  'consumables:\n  thread-lock: {use: lock, lock: threadlocker}\n',
);

it.each<Story>([
  [
    'a surface that no part closes is lubed with another',
    'lube: rim with assembly-lube',
    `
lube-first: rim ends the build without engine-oil`,
  ],
  [
    'a surface is lubed with two others',
    'clean: bores, journals; lube: bores with assembly-lube, solvent; lube: journals with engine-oil; install: shaft',
    `
lube-first: bores carry assembly-lube and solvent, not engine-oil, when shaft closes them`,
  ],
  [
    'what is signed for is done after the signature',
    'witness: closed by "shop lead"; check: turns',
    `
witnessed-early: closed is signed at step 1 before turns are as it asks`,
  ],
  [
    'nothing is done',
    'inspect: shaft',
    `
left-out: shaft is never installed`,
  ],
  [
    'threads are left as they come',
    'torque: studs',
    `
left-unlocked: studs are never locked; the specification asks for thread-lock`,
  ],
  [
    'threads are oiled too late',
    'torque: studs; lube: studs with engine-oil',
    `
left-unlocked: studs are never locked; the specification asks for thread-lock
thread-condition: studs come to torque with dry threads, and the torque is for thread-lock or engine-oil on the threads`,
  ],
  [
    'threads are locked too late',
    'torque: studs; lock: studs with thread-lock',
    `
thread-condition: studs come to torque with dry threads, and the torque is for thread-lock or engine-oil on the threads
lock-before-torque: studs are already at final torque, and thread-lock goes on before it`,
  ],
  [
    'threads that take no lock are oiled too late',
    'torque: bolts; lube: bolts with engine-oil',
    `
thread-condition: bolts come to torque with dry threads, and the torque is for engine-oil on the threads`,
  ],
  ['threads that take no lock are oiled by another', 'torque: bolts', SILENT],
  ['what serves once is taken new by another', 'install: plug', SILENT],
  [
    'what serves once is taken new too late',
    'install: plug; renew: plug',
    `
single-use-reused: plug serves once, and goes in without being renewed`,
  ],
  ['a surface is lubed by another', 'install: shaft', SILENT],
  [
    'a surface is lubed too late',
    'clean: bores, journals; install: shaft; lube: journals, bores with engine-oil',
    `
lube-first: journals are not lubed with engine-oil when shaft closes them
lube-first: bores are not lubed with engine-oil when shaft closes them`,
  ],
  [
    'a part is altered otherwise',
    'alter: flywheel by drill; install: flywheel',
    `
spec-silent: lap is an alteration of flywheel that nothing asks for and no step makes; write alterations: [lap] beside flywheel or a substitute of it, or take it out`,
  ],
  ['a part is altered by another', 'install: flywheel', SILENT],
])('alone, %s', (_, tags, lines) => {
  const steps = tags.split('; ').map((tag, index) => `${index + 1}. Do it. \`${tag}\``);
  const whole = book({engine: ENGINE, shop: SHOP, procedures: {'procedure.md': `\n${steps.join('\n')}\n`}});
  const {findings} = check(whole, {alone: true});
  expect(['', ...findings.map(({name, message}) => `${name}: ${message}`)].join('\n')).toBe(lines);
});
