/** The specification read backwards: what holds, closes, asks for and lies on what. */
import {expect, it} from 'vitest';
import {ledger} from '../../src/build/ledger.js';
import {closedBy, type ItemRelations, meetingPlaces, relations} from '../../src/build/relations.js';
import type {Item} from '../../src/spec/model.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  crankshaft: {}
  shells: {at: [front, rear]}
  caps: {at: [front, rear], closes: [faces, cap-joint, bolts, nowhere]}
  sump: {closes: [cap-joint]}
surfaces:
  journals: {on: crankshaft, at: [front, rear]}
  faces: {on: shells, at: [front, rear]}
  loose: {}
joints:
  cap-joint: {between: [block, caps]}
fasteners:
  bolts: {holds: [caps, shells], at: [front, rear]}
  nuts: {holds: [sump]}
fits:
  clearance: {between: [journals, faces], by: strip, when: {installed: [caps], tight: [bolts]}}
  early: {between: [loose, block], by: strip}
  float: {between: [journals, crankshaft], by: gauge, when: {installed: [crankshaft], tight: [nuts]}}
marks:
  number: {}
checks:
  leak: {}
systems:
  oil: {joints: [cap-joint], closed-by: [sump]}
hold-points:
  closed: {asks: [bolts, float]}
  signed: {asks: [bolts]}
`;

const ids = (items: readonly {readonly id: string}[]) => items.map(({id}) => id).join(' ');

function read(map: ReadonlyMap<string, readonly {readonly id: string}[]>): Record<string, string> {
  return Object.fromEntries([...map].flatMap(([id, items]) => (items.length > 0 ? [[id, ids(items)]] : [])));
}

function known(): ItemRelations {
  return relations(book({engine: ENGINE, procedures: {'a.md': '1. a\n'}}).spec);
}

function item({spec}: ItemRelations, id: string): Item {
  const found = spec.items.get(id);
  if (found === undefined) throw new Error(`the engine has no ${id}`);
  return found;
}

it('says of each item what bears on it', () => {
  const all = known();
  expect({
    holders: read(all.holders),
    surfacesOn: read(all.surfacesOn),
    fitsOf: read(all.fitsOf),
    stripsUnder: read(all.stripsUnder),
    closed: read(all.closed),
    closers: read(all.closers),
    askedBy: read(all.askedBy),
    loadedBy: read(all.loadedBy),
  }).toEqual({
    holders: {caps: 'bolts', shells: 'bolts', sump: 'nuts'},
    surfacesOn: {crankshaft: 'journals', shells: 'faces'},
    fitsOf: {
      journals: 'clearance float',
      crankshaft: 'clearance float',
      faces: 'clearance',
      shells: 'clearance',
      loose: 'early',
      block: 'early',
    },
    stripsUnder: {bolts: 'clearance'},
    closed: {caps: 'faces cap-joint', sump: 'cap-joint'},
    closers: {faces: 'caps', 'cap-joint': 'caps sump', bolts: 'caps', nowhere: 'caps'},
    askedBy: {bolts: 'closed signed', float: 'closed'},
    loadedBy: {'cap-joint': 'oil'},
  });
});

it('lists the items of each kind', () => {
  const {parts, surfaces, joints, fasteners, fits, marks, checks, holdPoints, systems, tools} = known();
  expect(
    [parts, surfaces, joints, fasteners, fits, marks, checks, holdPoints, systems, tools].map(ids),
  ).toEqual([
    'block crankshaft shells caps sump',
    'journals faces loose',
    'cap-joint',
    'bolts nuts',
    'clearance early float',
    'number',
    'leak',
    'closed signed',
    'oil',
    'soft-mallet steel-hammer feeler-gauges',
  ]);
});

it.each([
  ['shells', ['front'], 'bolts', ['front']],
  ['shells', ['rear', 'front'], 'bolts', ['front', 'rear']],
  ['crankshaft', [''], 'bolts', ['front', 'rear']],
  ['shells', ['front'], 'sump', ['']],
  ['crankshaft', [''], 'sump', ['']],
])('%s at %j meets %s at its places', (id, places, other, expected) => {
  const all = known();
  expect(meetingPlaces(item(all, id), places, item(all, other))).toEqual(expected);
});

it('a part that closes nothing closes nothing', () => {
  const {relations: all} = ledger(book({engine: 'parts:\n  cover: {}\n', procedures: {'a.md': '1. a\n'}}));
  const cover = all.parts[0];
  expect(cover && closedBy(all, cover)).toEqual([]);
});
