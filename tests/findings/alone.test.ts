/** A procedure that no book lists: blamed for what its own steps promise and break, and for nothing that another may do. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import type {HouseFinding} from '../../src/findings/house.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  crankshaft: {reused: true, closes: [main-journals]}
  main-shells: {single-use: true, alterations: [grind-off-lip]}
  main-caps: {closes: [cap-faces], after: [crankshaft]}
  sump: {}
joints:
  sump-joint: {between: [block, sump], seal: [paper-gasket]}
surfaces:
  main-journals: {on: crankshaft, assembly: lubed, lubricants: [assembly-lube]}
  cap-faces: {on: main-caps, assembly: clean}
  bench-face: {assembly: lubed, lubricants: [assembly-lube]}
fasteners:
  main-cap-bolts:
    holds: [main-caps]
    torque: 60 lbf·ft
    threads: [engine-oil]
    lock: {value: none, because: they stretch}
fits:
  main-clearance:
    between: [main-journals]
    limits: 0.001–0.003 in
    by: strip
    using: [strip-green]
    rework: true
    when: {installed: [main-caps], tight: [main-cap-bolts]}
  end-play: {between: [crankshaft], limits: 0.003–0.009 in, using: [feeler-gauges], when: {installed: [main-caps], tight: [main-cap-bolts]}}
hold-points:
  bottom-end-closed: {asks: [main-caps, main-cap-bolts, sump], by: shop lead}
alterations:
  grind-off-lip: {of: [main-shells], does: grind the locating lip flush}
`;

/** Names and items of what is found, in the order of the text. */
function found(steps: string, alone: boolean): string[] {
  const {findings} = check(book({engine: ENGINE, procedures: {'procedure.md': steps}}), {alone});
  return findings.map(({name, item}) => `${name} ${item ?? ''}`.trim());
}

/** Wrong as a whole book, and right as a part of one. */
const ELSEWHERE: readonly [string, string, string][] = [
  ['a surface is cleaned and lubed', 'clean-first cap-faces', '1. Set the caps on. `install: main-caps`'],
  [
    'a surface is cleaned and left for another to lube',
    'clean-first main-journals',
    '1. Oil it. `lube: main-journals with assembly-lube`',
  ],
  [
    'a surface of nothing is cleaned',
    'clean-first bench-face',
    '1. Oil it. `lube: bench-face with assembly-lube`',
  ],
  ['a joint is cleaned', 'clean-first sump-joint', '1. Lay the gasket. `seal: sump-joint with paper-gasket`'],
  ['a surface is lubed', 'lube-first main-journals', '1. Lower it in. `install: crankshaft`'],
  ['a part is inspected', 'inspect-first crankshaft', '1. Lower it in. `install: crankshaft`'],
  ['a part is renewed', 'single-use-reused main-shells', '1. Press them in. `install: main-shells`'],
  ['a part is altered', 'alter-first main-shells', '1. Press them in. `install: main-shells`'],
  [
    'threads are oiled',
    'thread-condition main-cap-bolts',
    '1. Tighten the bolts. `torque: main-cap-bolts to 60 lbf·ft`',
  ],
  [
    'threads are oiled, and wired here',
    'thread-condition main-cap-bolts',
    '1. Tighten the bolts. `torque: main-cap-bolts to 60 lbf·ft`\n2. Wire them. `lock: main-cap-bolts with wire-032`',
  ],
  ['a part goes in', 'install-order sump', '1. Lift the sump off. `remove: sump`'],
  [
    'a strip is laid',
    'measured-slack main-clearance',
    '1. Read the strip. `measure: main-clearance with strip-green`',
  ],
  [
    'a fit is read',
    'unmeasured-branch end-play',
    '1. Only then. `if: end-play is out`\n   1. Lift it out. `remove: crankshaft`',
  ],
  [
    'parts, fasteners, fits and hold points are dealt with',
    'left-out sump',
    '1. Look. `inspect: crankshaft for cracks`',
  ],
  ['a branch is written', 'rework-missing main-clearance', '1. Look. `inspect: crankshaft for cracks`'],
];

/** Broken by the procedure's own steps. */
const ITS_OWN: readonly [string, string, string][] = [
  [
    'takes new ones too late',
    'single-use-reused main-shells',
    '1. Press them in. `install: main-shells`\n2. Take new ones. `renew: main-shells`',
  ],
  [
    'cleans too late',
    'clean-first cap-faces',
    '1. Set the caps on. `install: main-caps`\n2. Wipe the faces. `clean: cap-faces`',
  ],
  [
    'cleans the part too late',
    'clean-first cap-faces',
    '1. Set the caps on. `install: main-caps`\n2. Wipe the caps. `clean: main-caps`',
  ],
  [
    'dirties what may have been clean',
    'clean-first cap-faces',
    '1. Lift the caps off. `remove: main-caps`\n2. Set them on again. `install: main-caps`',
  ],
  [
    'lubes too late',
    'lube-first main-journals',
    '1. Lower it in. `install: crankshaft`\n2. Oil it. `lube: main-journals with assembly-lube`',
  ],
  [
    'alters too late',
    'alter-first main-shells',
    '1. Press them in. `install: main-shells`\n2. Grind them. `alter: main-shells by grind-off-lip`',
  ],
  [
    'wipes what is lubed already',
    'clean-first main-journals',
    '1. Oil it. `lube: main-journals with assembly-lube`\n2. Wipe it. `clean: main-journals`',
  ],
  [
    'wipes what is sealed already',
    'clean-first sump-joint',
    '1. Lay the gasket. `seal: sump-joint with paper-gasket`\n2. Wipe the faces. `clean: sump-joint`',
  ],
  [
    'looks at a part that is in',
    'inspect-first crankshaft',
    '1. Lower it in. `install: crankshaft`\n2. Look. `inspect: crankshaft for cracks`',
  ],
  [
    'renews a part that is in',
    'inspect-first crankshaft',
    '1. Lower it in. `install: crankshaft`\n2. Take a new one. `renew: crankshaft`',
  ],
  [
    'takes off what it puts on after that',
    'install-order sump',
    '1. Lift the sump off. `remove: sump`\n2. Lift the sump on. `install: sump`',
  ],
  [
    'reads a strip before it lays one',
    'measured-slack main-clearance',
    '1. Read it. `measure: main-clearance with strip-green`\n2. Lay one. `lay: main-clearance with strip-green`',
  ],
  [
    'uses what serves once a second time',
    'single-use-reused main-shells',
    '1. New shells. `renew: main-shells`\n2. Take the old ones out. `remove: main-shells`\n3. Press them in. `install: main-shells`',
  ],
  [
    'installs in the wrong order',
    'install-order main-caps',
    '1. Set the caps on. `install: main-caps`\n2. Lower it in. `install: crankshaft`',
  ],
  [
    'leaves slack what it slackened',
    'left-slack main-cap-bolts',
    '1. Slacken the bolts. `loosen: main-cap-bolts`',
  ],
  ['leaves out what it took out', 'left-out sump', '1. Lift the sump off. `remove: sump`'],
  [
    'lays a strip and never reads it',
    'left-unmeasured main-clearance',
    '1. Lay a strip. `lay: main-clearance with strip-green`',
  ],
];

describe('alone, a procedure is not blamed where another may have seen to it that', () => {
  it.each(ELSEWHERE)('%s', (_, expected, steps) => {
    expect(found(steps, false)).toContain(expected);
    expect(found(steps, true)).not.toContain(expected);
  });
});

describe('alone, a procedure is blamed where it', () => {
  it.each(ITS_OWN)('%s', (_, expected, steps) => {
    expect(found(steps, true)).toContain(expected);
  });

  it('cannot be read', () => {
    expect(found('1. Lower it in. `instal: crankshaft`', true)).toContain('unknown-verb');
  });
});

it('a check that comes before what its own steps do first is told', () => {
  const engine = `${ENGINE}checks:\n  drag: {expect: turns by hand, after: [end-play]}\n`;
  const steps = '1. Turn it. `check: drag`\n2. Read it. `measure: end-play using feeler-gauges`\n';
  const {findings} = check(book({engine, procedures: {'procedure.md': steps}}), {alone: true});
  expect(findings.map(({message}) => message)).toContain('drag is checked before end-play is measured');
});

it('a procedure that is right alone is silent', () => {
  const steps = '1. Wipe the faces. `clean: cap-faces`\n2. Set the caps on. `install: main-caps`';
  expect(found(steps, true)).toEqual([]);
});

it('a rule of the house tells alone what is left undone about no item', () => {
  const rule: HouseFinding = {
    ...{name: 'house-signed', severity: 'error', group: 'left undone', summary: 'x', why: 'x'},
    end: ({report}) =>
      report({where: {file: 'procedure.md', span: {start: 0, end: 0}}, message: 'nobody signed'}),
  };
  const whole = book({engine: ENGINE, procedures: {'procedure.md': '1. Look.'}});
  const {findings} = check(whole, {alone: true, house: [rule]});
  expect(findings.map(({name}) => name)).toEqual(['house-signed']);
});

it('a waiver of what is left out is not stale', () => {
  const waived =
    '1. Set the caps on. `install: main-caps` `waive: clean-first by A. Lead because they came wrapped`';
  expect(found(waived, false)).not.toContain('clean-first cap-faces');
  expect(found(waived, true)).toEqual([]);
});

describe('a book of which a file could not be read', () => {
  const gap = {where: {file: 'engine.yaml', span: {start: 0, end: 0}}, value: 'lost.md'};
  const names = (steps: string) => {
    const whole = book({engine: ENGINE, procedures: {'procedure.md': steps}});
    return check({...whole, unread: [gap]}).findings.map(({name, item}) => `${name} ${item}`);
  };

  it('is not blamed for what the file may do', () => {
    expect(names('1. Look it over. `inspect: crankshaft for cracks`')).toEqual([]);
  });

  it('is blamed for what was undone and never made good', () => {
    const steps =
      '1. Lower it in. `inspect: crankshaft` `install: crankshaft`\n2. Lift it out. `remove: crankshaft`';
    expect(names(steps)).toContain('left-out crankshaft');
  });
});
