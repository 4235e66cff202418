/** What is barred, and on what: all that is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tellsOf} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  mallet: soft-faced mallet
  drift: brass drift
  hammer: steel hammer
  feelers: {name: feeler gauges, gauge: true}
consumables:
  silicone: {use: sealant}
  solvent: {use: cleaner}
  engine-oil: {use: lubricant}
  wire: {use: lock, lock: safety-wire}
`;

const engine = (cam: string, bar: string) => `
parts:
  block: {given: true}
  cam: {${cam}}
surfaces:
  bores: {on: block, assembly: clean}
  lobes: {on: cam, assembly: clean}
  edge: {assembly: clean}
joints:
  rim: {between: [block, cam], seal: [silicone]}
fasteners:
  nuts: {count: 2, holds: [block, cam], torque: 20 lbf·ft, threads: dry, lock: safety-wire}
barred:
  - {${bar}, because: it burrs}
`;

describe('a tool is barred', () => {
  tellsOf(
    'barred-tool',
    [
      [
        'a tool on the part itself, and the only one that the part asks for in its place',
        engine('using: [mallet]', 'what: [hammer], on: [cam]'),
        'install: cam using hammer',
        `
barred-tool cam: cam is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here
  fix: Use mallet: "mallet" for "hammer"`,
      ],
      [
        'a tool on a part that asks for none',
        engine('reused: false', 'what: [hammer], on: [cam]'),
        'install: cam using hammer',
        `
barred-tool cam: cam is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      [
        'a tool on a part that asks for either of two',
        engine('using: [mallet, drift]', 'what: [hammer], on: [cam]'),
        'install: cam using hammer',
        `
barred-tool cam: cam is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      [
        'a tool beside another',
        engine('using: [mallet]', 'what: [hammer], on: [cam]'),
        'install: cam using hammer, mallet',
        `
barred-tool cam: cam is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      [
        'a tool on a part that asks for what is barred too',
        engine('using: [drift]', 'what: [hammer, drift], on: [cam]'),
        'install: cam using hammer',
        `
barred-tool cam: cam is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      [
        'a tool on the fasteners of the part',
        engine('using: [mallet]', 'what: [hammer], on: [cam]'),
        'torque: nuts using hammer',
        `
barred-tool nuts: nuts is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      [
        'a tool on a surface, and not on the fasteners',
        engine('reused: false', 'what: [hammer], on: [bores]'),
        'torque: nuts using hammer',
        SILENT,
      ],
      [
        'a tool on what the part does not close',
        engine('closes: [bores]', 'what: [hammer], on: [rim]'),
        'install: cam using hammer',
        SILENT,
      ],
      [
        'a tool on a surface that the part closes',
        engine('closes: [bores]', 'what: [hammer], on: [bores]'),
        'install: cam using hammer',
        `
barred-tool cam: cam is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      [
        'a tool on a surface that the part does not close',
        engine('reused: false', 'what: [hammer], on: [bores]'),
        'install: cam using hammer',
        SILENT,
      ],
      [
        'a tool on a surface of the part',
        engine('reused: false', 'what: [hammer], on: [lobes]'),
        'install: cam using hammer',
        `
barred-tool cam: cam is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      [
        'a tool on a surface of another part',
        engine('reused: false', 'what: [hammer], on: [bores]'),
        'clean: cam using hammer',
        SILENT,
      ],
      [
        'a tool on a surface that is on no part, and on one that nobody knows',
        engine('reused: false', 'what: [hammer], on: [edge, lobs]'),
        'clean: cam using hammer',
        SILENT,
      ],
      [
        'a tool on the surface',
        engine('reused: false', 'what: [hammer], on: [bores]'),
        'clean: bores using hammer',
        `
barred-tool bores: bores is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      [
        'a tool anywhere in the engine',
        engine('reused: false', 'what: [hammer]'),
        'clean: bores using hammer',
        `
barred-tool bores: bores is worked on with hammer, which is barred there: it burrs
  see engine.yaml:17: hammer is barred here`,
      ],
      ['another tool', engine('reused: false', 'what: [hammer]'), 'clean: bores using mallet', SILENT],
      ['no tool', engine('reused: false', 'what: [hammer]'), 'clean: bores', SILENT],
    ],
    SHOP,
  );
});

describe('a material is barred', () => {
  tellsOf(
    'barred-material',
    [
      [
        'on its joint',
        engine('reused: false', 'what: [solvent, silicone], on: [rim]'),
        'seal: rim with silicone',
        `
barred-material rim: rim is given silicone, which is barred there: it burrs
  see engine.yaml:17: silicone is barred here`,
      ],
      [
        'on another joint',
        engine('reused: false', 'what: [silicone], on: [bores]'),
        'seal: rim with silicone',
        SILENT,
      ],
      [
        'by its kind',
        engine('reused: false', 'what: [safety-wire], on: [nuts]'),
        'lock: nuts with wire',
        `
barred-material nuts: nuts is given wire, which is barred there: it burrs
  see engine.yaml:17: wire is barred here`,
      ],
      [
        'by the kind, where the tag names that',
        engine('reused: false', 'what: [safety-wire], on: [nuts]'),
        'lock: nuts with safety-wire',
        `
barred-material nuts: nuts is given safety-wire, which is barred there: it burrs
  see engine.yaml:17: safety-wire is barred here`,
      ],
      [
        'on what the fasteners hold',
        engine('reused: false', 'what: [wire], on: [cam]'),
        'lock: nuts with wire',
        `
barred-material nuts: nuts is given wire, which is barred there: it burrs
  see engine.yaml:17: wire is barred here`,
      ],
      [
        'as a tool',
        engine('reused: false', 'what: [solvent], on: [bores]'),
        'clean: bores using solvent',
        SILENT,
      ],
    ],
    SHOP,
  );
});
