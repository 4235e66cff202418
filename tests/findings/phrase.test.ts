/** What a finding says of an item agrees with how many of it there are. */
import {describe, expect, it} from 'vitest';
import {closing, inNumber, listed} from '../../src/findings/phrase.js';
import {book} from '../help/example.js';
import {found} from '../help/found.js';
import {tells} from '../help/stories.js';

const {items} = book({
  engine: `
parts: {caps: {}, cover: {}, camshaft-axis: {}}
fasteners: {screw-set: {count: 4}, crank-nut: {}}
`,
  procedures: {},
}).spec;

function item(id: string) {
  const one = items.get(id);
  if (one === undefined) throw new Error(`no ${id}`);
  return one;
}

describe('words behind an item', () => {
  it.each([
    ['caps', 'are sealed but their faces are not clean'],
    ['cover', 'is sealed but its faces are not clean'],
    ['camshaft-axis', 'is sealed but its faces are not clean'],
    ['screw-set', 'are sealed but their faces are not clean'],
    ['crank-nut', 'is sealed but its faces are not clean'],
  ])('of %s', (id, words) => {
    expect(inNumber(item(id), '[is|are] sealed but [its|their] faces are not clean')).toBe(words);
  });

  it.each([
    ['caps', 'cover', 'caps close it'],
    ['cover', 'caps', 'cover closes them'],
  ])('where %s close or closes %s', (cover, closed, says) => {
    expect(closing(item(cover), item(closed))).toBe(says);
  });

  it('leave brackets alone that are no choice', () => {
    expect(inNumber(item('caps'), 'caps[front, rear] [goes|go] in')).toBe('caps[front, rear] go in');
  });
});

it.each([
  [[], ''],
  [['oil'], 'oil'],
  [['oil', 'paste'], 'oil or paste'],
  [['oil', 'paste', 'wax'], 'oil, paste or wax'],
])('lists %j', (words, says) => {
  expect(listed(words)).toBe(says);
});

describe('a story', () => {
  tells(
    `
parts:
  block: {given: true}
  cap: {}
fasteners:
  stud: {holds: [cap], torque: 40 N·m, threads: dry, lock: safety-wire}
checks:
  drag: {expect: freely, after: [stud]}
`,
    [
      [
        'is told in the order of the tags, also in one step',
        'install: cap; `lock: stud with wire-032` `torque: stud`; check: drag; lock: stud with wire-032',
        `
lock-before-torque stud: stud is locked before the final torque
  see engine.yaml:9: stud is specified here
install-order drag: drag is checked before stud is locked
  story: step 2 of procedure.md: locked (lock: stud)
  story: step 2 of procedure.md: tight (torque: stud)
  story: step 2 of procedure.md: no longer locked (torque: stud)
  see engine.yaml:11: drag is checked after stud`,
      ],
    ],
  );
});

const ENGINE = `
parts:
  block: {given: true}
  caps: {closes: [bores, seams], reused: true, after: [studs]}
  studs: {}
surfaces:
  bores: {on: block, assembly: lubed}
joints:
  seams: {between: [block, caps], seal: [liquid-gasket]}
`;

describe('findings on several', () => {
  it('speak of all of them', () => {
    const steps = ['clean: bores', 'install: caps', 'install: studs', 'seal: seams with liquid-gasket'];
    expect(found(ENGINE, steps).sort()).toEqual([
      'clean-first: seams are sealed but their faces are not clean',
      'inspect-first: caps are reused parts and go in without inspection',
      'install-order: caps go in before studs, which must be in first',
      'install-order: seams are not made up when caps close them',
      'left-unsealed: seams are sealed but never left to cure',
      'lube-first: bores are not lubed when caps close them',
    ]);
  });

  it('speak of a surface that nothing closes as it ends', () => {
    const engine = 'parts: {block: {given: true}}\nsurfaces: {bores: {on: block, assembly: lubed}}\n';
    expect(found(engine, ['clean: bores'])).toEqual(['lube-first: bores end the build without lubricant']);
  });
});
