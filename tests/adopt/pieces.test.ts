/** Commands that say two things, and materials that the specification does not know: neither may go by in silence. */
import {expect, it} from 'vitest';
import {draftOf} from '../../src/adopt/draft.js';
import {proposalsFor, SURE} from '../../src/adopt/proposals.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {source} from '../../src/text/source.js';

const SHOP = `
shop: {name: Example Works}
sources: {house: {title: House notes, note: invented}}
source: house
tools: {torque-wrench: {gauge: true}}
consumables:
  solvent: {use: cleaner}
  assembly-lube: {use: lubricant}
  engine-oil: {use: lubricant}
  gasket-goo: {use: sealant}
  wire-032: {name: 0.032 in safety wire, use: lock, lock: safety-wire}
`;

const ENGINE = `
engine: {id: small, name: Small engine}
source: house
build: []
parts:
  block: {given: true}
  camshaft: {}
  sump: {}
surfaces:
  cam-lobes: {on: camshaft, assembly: lubed, lubricants: [assembly-lube]}
  gear-teeth: {on: camshaft, assembly: lubed, lubricants: [engine-oil]}
joints:
  sump-joint: {between: [block, sump], seal: [gasket-goo]}
fasteners:
  pump-bolts: {holds: [sump], torque: 18 lbf·ft, lock: safety-wire}
  sump-bolts: {holds: [sump], torque: 75 lbf·in, lock: {value: none, because: cork}}
`;

const spec = readSpecification({
  shop: source('shop.yaml', SHOP),
  engine: source('engine.yaml', ENGINE),
  bases: [],
});

function proposed(says: string): string[] {
  return proposalsFor(readProcedure(source('x.md', `1. ${says}\n`)), spec).map(
    ({tag, confidence}) => `${confidence >= SURE ? '' : '? '}${tag}`,
  );
}

function leftOf(says: string): string {
  const options = {spec, others: [], today: '2026-04-05', name: 'Plain'};
  const {text} = draftOf(readProcedure(source('x.md', `1. ${says}\n`)), options);
  return /For these no tag was found:\n\n((?:- .*\n)*)/.exec(text)?.[1] ?? '';
}

it.each([
  [
    'Lube the cam lobes with assembly lube and the gear teeth with engine oil.',
    ['lube: cam-lobes with assembly-lube', 'lube: gear-teeth with engine-oil'],
  ],
  [
    'Torque the pump bolts to 18 lbf·ft and the sump bolts to 75 lbf·in.',
    ['torque: pump-bolts to 18 lbf·ft', 'torque: sump-bolts to 75 lbf·in'],
  ],
  ['Lube the cam lobes and the gear teeth with engine oil.', ['lube: cam-lobes, gear-teeth with engine-oil']],
  ['Clean the sump joint with solvent and a brush with soft bristles.', ['clean: sump-joint with solvent']],
])('one command, one tag for each thing that it says: %s', (says, tags) => {
  expect(proposed(says)).toEqual(tags);
  expect(leftOf(says)).toBe('');
});

it.each([
  [
    'Lube the cam lobes with assembly lube and the tappet bores with engine oil.',
    ['lube: cam-lobes with assembly-lube'],
    '- step 1 says "the tappet bores with engine oil"\n',
  ],
  [
    'Lube the tappet bores with engine oil and the cam lobes with assembly lube.',
    ['lube: cam-lobes with assembly-lube'],
    '- step 1 says "the tappet bores with engine oil"\n',
  ],
])('the half for which there is no tag is listed: %s', (says, tags, left) => {
  expect(proposed(says)).toEqual(tags);
  expect(leftOf(says)).toBe(left);
});

it.each([
  ['Lube the cam lobes with graphite grease.', ['? lube: cam-lobes with assembly-lube']],
  ['Lube the cam lobes with a film of graphite paste.', ['? lube: cam-lobes with assembly-lube']],
  ['Smear graphite paste on the cam lobes.', ['? lube: cam-lobes']],
  ['Seal the sump joint with red paste.', ['? seal: sump-joint']],
  ['Wire the pump bolts with stainless wire.', ['? lock: pump-bolts with wire-032']],
])('a material that the specification does not know is asked about: %s', (says, tags) => {
  expect(proposed(says)).toEqual(tags);
});

it.each([
  ['Lube the cam lobes.', ['lube: cam-lobes with assembly-lube']],
  ['Lube the cam lobes with plain engine oil.', ['lube: cam-lobes with engine-oil']],
  ['Lube the cam lobes with a thin film of engine oil.', ['lube: cam-lobes with engine-oil']],
  ['Smear a thin film of assembly lube on the cam lobes.', ['lube: cam-lobes with assembly-lube']],
  ['Lube the cam lobes with a soft brush.', ['lube: cam-lobes with assembly-lube']],
  ['Wire the pump bolts with safety wire.', ['lock: pump-bolts with wire-032']],
])('one that it knows, a tool, or none at all is not: %s', (says, tags) => {
  expect(proposed(says)).toEqual(tags);
});
