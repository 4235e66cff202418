/** What is on the engine for a while only, and the bolts that hold it. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {found} from '../help/found.js';

const ENGINE = `
parts:
  block: {given: true}
  stand-plate: {temporary: true}
  port-plugs: {at: [left, right], temporary: true, seats-in: oil-ports}
  sump: {closes: [oil-ports]}
surfaces:
  oil-ports: {on: block, assembly: clean}
fasteners:
  stand-bolts: {count: 4, holds: [stand-plate], torque: 30 lbf·ft, threads: dry, lock: safety-wire, stripe: true}
`;

const SUMP = ['clean: oil-ports', 'install: sump'];
const STAND = ['install: stand-plate', 'torque: stand-bolts to 30 lbf·ft'];

describe('what is temporary', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['need not go in at all', SUMP, []],
    [
      'comes out again, and its bolts with it, never locked',
      [...STAND, ...SUMP, 'loosen: stand-bolts', 'remove: stand-plate'],
      [],
    ],
    [
      'is still in at the end',
      [...STAND, ...SUMP],
      ['left-in: stand-plate is temporary, and still in at the end of the build'],
    ],
    [
      'is taken off with its bolts tight',
      [...STAND, ...SUMP, 'remove: stand-plate'],
      ['install-order: stand-bolts are still tight when stand-plate comes off'],
    ],
    ['is out before its seat is closed', ['install: port-plugs', 'remove: port-plugs', ...SUMP], []],
    [
      'is closed over in one place, and comes out too late',
      ['install: port-plugs', 'remove: port-plugs[left]', ...SUMP, 'remove: port-plugs[right]'],
      ['left-in: port-plugs[right] is temporary, and still in when sump closes over it'],
    ],
    [
      'is closed over and never comes out, which is told once',
      ['install: port-plugs', ...SUMP],
      ['left-in: port-plugs is temporary, and still in at the end of the build'],
    ],
    [
      'may be closed over by what comes off again',
      ['install: port-plugs', ...SUMP, 'remove: sump', 'remove: port-plugs', ...SUMP],
      [],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(ENGINE, tags)).toEqual(says);
  });

  it.each<readonly [string, readonly string[], readonly string[]]>([
    [
      'blocks nothing while it is out',
      ['turn: shaft', 'install: pins', 'remove: pins', 'turn: shaft, cam'],
      [],
    ],
    [
      'blocks a shaft',
      ['install: pins', 'turn: shaft', 'remove: pins'],
      ['turned-blocked: shaft is turned while pins, which block it, are in'],
    ],
    [
      'blocks it with one of two pins left in',
      ['install: pins', 'remove: pins[left]', 'turn: shaft', 'remove: pins[right]'],
      ['turned-blocked: shaft is turned while pins[right], which block it, are in'],
    ],
    ['blocks no other shaft', ['install: pins', 'turn: cam', 'remove: pins'], []],
    [
      'blocks a shaft that is turned as it goes in',
      ['remove: shaft', 'install: pins', 'install: shaft', 'turn: shaft', 'remove: pins'],
      ['turned-blocked: shaft is turned while pins, which block it, are in'],
    ],
  ])('%s', (_, tags, says) => {
    const engine = `
parts:
  block: {given: true}
  shaft: {}
  cam: {}
  pins: {at: [left, right], temporary: true, blocks: [shaft]}
`;
    expect(found(engine, ['install: shaft, cam', ...tags])).toEqual(says);
  });

  it('is not there from the start', () => {
    const engine = ENGINE.replace('stand-plate: {', 'stand-plate: {given: true, ');
    expect(found(engine, SUMP)).toEqual([
      'spec-contradiction: stand-plate is given, and temporary; take one of the two out',
    ]);
  });
});
