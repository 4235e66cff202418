/** Which tags bring a hazard: the item that is handled, what is named, and the only thing that can be meant where nothing is. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  grinder: grinder
consumables:
  solvent: {use: cleaner, hazards: [vapour]}
  thick-oil: {use: lubricant, hazards: [slippery]}
  thin-oil: {use: lubricant, hazards: [stains]}
  hot-glue: {use: sealant, hazards: [burn]}
  wire: {use: lock, lock: safety-wire, hazards: [sharp]}
  antifreeze: {use: fluid, hazards: [poison]}
  water: {use: fluid}
  paper: {use: gasket}
`;

const ENGINE = `
parts:
  block: {given: true}
  head: {hazards: [heavy], closes: [gasket-face, bores], alterations: [grind-lip]}
  cover: {closes: [two-faces], alterations: [grind-lip, file-lip]}
surfaces:
  bores: {on: block, assembly: lubed, lubricants: [thick-oil]}
  pads: {on: block, assembly: lubed, lubricants: [thick-oil, thin-oil]}
joints:
  gasket-face: {between: [block, head], seal: [hot-glue]}
  two-faces: {between: [block, cover], seal: none}
  wide-face: {between: [block], seal: [hot-glue, paper]}
  bare-face: {between: [block]}
fasteners:
  head-bolts: {holds: [head], torque: 30 lbf·ft, threads: [thick-oil], lock: wire}
  wide-bolts: {holds: [cover], torque: 30 lbf·ft, threads: [thick-oil, thin-oil], lock: {value: none, because: stretched}}
  bare-bolts: {holds: [cover], torque: 30 lbf·ft, lock: {value: none, because: stretched}}
  cover-bolts: {holds: [cover], torque: 30 lbf·ft, threads: dry, lock: {value: none, because: stretched}}
checks:
  spin: {expect: freely, hazards: [trap]}
systems:
  steam: {joints: [], with: [water], amount: 3 qt, hazards: [scald]}
  wide: {joints: [], with: [water, antifreeze], amount: 3 qt}
  cooling: {joints: [gasket-face], closed-by: [head], with: [antifreeze], amount: 3 qt}
alterations:
  grind-lip: {of: [head, cover], does: grind the lip, using: [grinder], hazards: [eyes]}
  file-lip: {of: [cover], does: file the lip}
`;

it.each<readonly [tag: string, hazards: readonly string[]]>([
  ['install: head', ['head: heavy']],
  ['turn: head', ['head: heavy']],
  ['inspect: head', []],
  ['clean: head', []],
  ['clean: head with solvent', ['solvent: vapour']],
  ['alter: head by grind-lip', ['grind-lip: eyes', 'head: heavy']],
  ['alter: head', ['grind-lip: eyes', 'head: heavy']],
  ['alter: cover', []],
  ['alter: cover by file-lip', []],
  ['lube: bores', ['thick-oil: slippery']],
  ['lube: bores with thin-oil', ['thin-oil: stains']],
  ['lube: pads', []],
  ['clean: bores', []],
  ['inspect: bores', []],
  ['alter: head by file-lip', ['head: heavy']],
  ['lube: head-bolts with thin-oil', ['thin-oil: stains']],
  ['lube: wide-bolts', []],
  ['lube: bare-bolts', []],
  ['seal: wide-face', []],
  ['clean: gasket-face', []],
  ['seal: bare-face', []],
  ['fill: cooling with water', []],
  ['fill: wide', []],
  ['check: spin', ['spin: trap']],
  ['fill: steam', ['steam: scald']],
  ['lube: head-bolts', ['thick-oil: slippery']],
  ['lube: cover-bolts', []],
  ['seal: gasket-face', ['hot-glue: burn']],
  ['seal: two-faces', []],
  ['lock: head-bolts', ['wire: sharp']],
  ['torque: head-bolts', []],
  ['lock: cover-bolts', []],
  ['fill: cooling', ['antifreeze: poison']],
  ['cure: gasket-face for 1 h', []],
])('%s', (tag, hazards) => {
  const {findings} = check(
    book({engine: ENGINE, shop: SHOP, procedures: {'procedure.md': `\n1. Do it. \`${tag}\`\n`}}),
  );
  const told = findings
    .filter(({name}) => name === 'caution-missing')
    .map(({message}) => /^(\S+) brings the hazard (\S+) at step 1/.exec(message)?.slice(1).join(': '));
  expect(told.sort()).toEqual(hazards);
});
