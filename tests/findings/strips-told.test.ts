/** Strips that are laid and shafts that are turned: all that is told of it. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';
import {SILENT, tellsOf} from '../help/stories.js';

const ENGINE = `
parts:
  block: {given: true}
  shaft: {given: true}
  shafts: {}
  caps: {at: [front, rear]}
  pin: {temporary: true, blocks: [shaft, shafts]}
  pins: {temporary: true, blocks: [shaft]}
surfaces:
  face: {on: caps, at: [front, rear], assembly: lubed, lubricants: [assembly-lube]}
  journals: {on: shaft, assembly: clean}
fits:
  play: {at: [front, rear], between: [shaft, face, journals, nobody], limits: 0.001–0.003 in, by: strip, using: [strip-green], when: {installed: [], tight: []}}
  plays: {at: [front, rear], between: [shafts], limits: 0.001–0.003 in, by: strip, using: [strip-green], when: {installed: [], tight: []}}
`;

describe('a strip', () => {
  tellsOf(
    'strip-not-dry',
    [
      ['is laid on what is clean', ENGINE, 'clean: face, journals; lay: play with strip-green', SILENT],
      [
        'is laid on one face with oil and one that is not clean',
        ENGINE,
        'clean: journals; clean: face[front]; lube: face[front] with assembly-lube; lay: play with strip-green',
        `
strip-not-dry play: play: the strip is laid while face carries lubricant
  story: step 2 of procedure.md: clean (clean: face)
  story: step 3 of procedure.md: lubed (lube: face)
  see engine.yaml:13: face is specified here`,
      ],
      [
        'is laid on what is not clean',
        ENGINE,
        'lay: play with strip-green',
        `
strip-not-dry play: play: the strip is laid while face is not clean
  see engine.yaml:13: face is specified here
strip-not-dry play: play: the strip is laid while journals are not clean
  see engine.yaml:14: journals is specified here`,
      ],
      ['is laid on a part', ENGINE, 'lay: block with strip-green', SILENT],
    ],
    EXAMPLE_SHOP,
  );
  tellsOf(
    'strip-turned',
    [
      [
        'is turned with a shaft',
        ENGINE,
        'clean: face, journals; lay: play[front] with strip-green; turn: shaft',
        `
strip-turned play[front]: play[front] has a gauging strip in it when shaft is turned
  story: step 2 of procedure.md: gauging strip in it (lay: play)`,
      ],
      [
        'is turned with several shafts',
        ENGINE,
        'lay: plays with strip-green; turn: shafts',
        `
strip-turned plays: plays have a gauging strip in them when shafts are turned
  story: step 1 of procedure.md: gauging strip in it (lay: plays)`,
      ],
    ],
    EXAMPLE_SHOP,
  );
  tellsOf(
    'turned-blocked',
    [
      [
        'is out of it: one pin blocks a shaft',
        ENGINE,
        'install: pin; turn: shaft',
        `
turned-blocked shaft: shaft is turned while pin, which blocks it, is in
  story: step 1 of procedure.md: in (install: pin)
  see engine.yaml:10: pin blocks shaft`,
      ],
      [
        'is out of it: pins block a shaft',
        ENGINE,
        'install: pins; turn: shaft',
        `
turned-blocked shaft: shaft is turned while pins, which block it, are in
  story: step 1 of procedure.md: in (install: pins)
  see engine.yaml:11: pins block shaft`,
      ],
      [
        'is out of it: one pin blocks shafts',
        ENGINE,
        'install: pin; turn: shafts',
        `
turned-blocked shafts: shafts are turned while pin, which blocks it, is in
  story: step 1 of procedure.md: in (install: pin)
  see engine.yaml:10: pin blocks shafts`,
      ],
    ],
    EXAMPLE_SHOP,
  );
});

const BRANCH = '`if: gap is out`\n   1. Fetch the shop lead.';
const GAP = `
parts:
  block: {given: true}
fits:
  gap: {between: [block], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: []}}
checks:
  drag: {limits: 2–4 lbf, using: [feeler-gauges]}
`;

/** What a procedure checked alone is blamed for, which keeps what its own steps promise. */
describe('alone', () => {
  it.each<[title: string, engine: string, tags: readonly string[], names: readonly string[]]>([
    ['a branch on what another reads', GAP, [BRANCH], []],
    ['a branch on what it reads later', GAP, [BRANCH, 'measure: gap'], ['unmeasured-branch']],
    [
      'a branch on what it checks later',
      GAP,
      [BRANCH.replace('gap', 'drag'), 'check: drag'],
      ['unmeasured-branch'],
    ],
    ['a strip on what another cleans', ENGINE, ['lay: play with strip-green'], []],
    [
      'a strip on what it cleans later',
      ENGINE,
      ['lay: play with strip-green', 'clean: face'],
      ['strip-not-dry'],
    ],
  ])('%s', (_, engine, tags, names) => {
    const steps = tags.map((tag, at) => `${at + 1}. Do it. ${tag.startsWith('`') ? tag : `\`${tag}\``}`);
    const whole = book({engine, procedures: {'procedure.md': `\n${steps.join('\n')}\n`}});
    const its = check(whole, {alone: true}).findings.map(({name}) => name);
    expect(its.filter((name) => name === 'unmeasured-branch' || name === 'strip-not-dry')).toEqual(names);
  });
});
