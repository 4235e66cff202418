/** Names of items: every one must lead to an item of a kind that can stand there, and every item has its own. */
import {describe, expect, it} from 'vitest';
import {ENGINE_SECTIONS, KIND_SAYS, SECTION_OF, SHOP_SECTIONS} from '../../src/spec/sections.js';
import {engineFile, shopFile} from '../../src/spec/shapes/files.js';
import {expectMarked, readClean, readMarked, SHOP} from './marked.js';

const BOLTS = 'torque: snug, threads: dry, lock: wire';

describe('names that lead nowhere', () => {
  const cases: readonly [string, string, string][] = [
    [
      'a part misspelt',
      `parts: {main-caps: {}}\nfasteners: {bolts: {${BOLTS}, holds: [«unknown-item|main-cap»]}}\n`,
      'did you mean main-caps?',
    ],
    ['a tool', 'parts: {shaft: {using: [«unknown-item|malet»]}}\n', 'did you mean mallet?'],
    [
      'a near name of a kind that cannot stand there is no hint',
      `parts: {plug: {seats-in: «unknown-item|malet»}}\n`,
      'add it under surfaces:',
    ],
    [
      'a lubricant of the threads in a list',
      'fasteners: {bolts: {torque: snug, threads: [oil, «unknown-item|grease»], lock: wire}}\n',
      'add it under consumables:',
    ],
    [
      'a lock that is neither a kind nor a consumable',
      'fasteners: {bolts: {torque: snug, threads: dry, lock: «unknown-item|safty-wire»}}\n',
      'did you mean safety-wire?',
    ],
    [
      'a seal inside a value with its note',
      'joints: {seam: {seal: {value: [«unknown-item|papre»], note: thin}}}\n',
      'did you mean paper?',
    ],
    [
      'what a hold point asks',
      'hold-points: {stop: {asks: [«unknown-item|gap»]}}\n',
      'add it to engine.yaml',
    ],
    [
      'what is barred',
      'barred: [{what: [«unknown-item|silicon»], because: beads}]\n',
      'did you mean silicone?',
    ],
    [
      'a kind of lock that is barred',
      'barred: [{what: [«unknown-item|spring-wsher»], because: weak}]\n',
      'did you mean spring-washer?',
    ],
    [
      'where it is barred',
      'joints: {seam: {seal: [silicone]}}\nbarred: [{what: [paper], on: [«unknown-item|seams»], because: thin}]\n',
      'did you mean seam?',
    ],
    [
      'a place of a size',
      'surfaces: {bores: {at: [front, rear], assembly: dry, sizes: {front: 2 in, «unknown-item|raer»: 1 in}}}\n',
      'did you mean rear?',
    ],
    [
      'a place of a surface that has none',
      'surfaces: {bores: {assembly: dry, sizes: {«unknown-item|front»: 2 in}}}\n',
      'add front to its at',
    ],
  ];
  it.each(cases)('%s', (_, engine, hint) => {
    expect(expectMarked({engine})[0]?.hint).toBe(hint);
  });

  it('are all found, though hints end after many', () => {
    const names = Array.from({length: 300}, (_, index) => `m${index}`);
    const engine = `parts: {shaft: {using: [${names.join(', ')}]}}\n`;
    const {spec} = readMarked({engine});
    expect(spec.problems.filter(({name}) => name === 'unknown-item')).toHaveLength(300);
  });
});

describe('names of the wrong kind', () => {
  const cases: readonly [string, string, string][] = [
    [
      'a surface to come after',
      'surfaces: {seam: {assembly: dry}}\nparts: {shaft: {after: [«wrong-kind|seam»]}}\n',
      'seam is a surface where a part, a joint, a fastener, a fit, a mark, a check, a hold point or a system is due',
    ],
    [
      'a part that a fit is tight with',
      'parts: {caps: {}}\nfits: {gap: {limits: 1–2 mm, when: {installed: [caps], tight: [«wrong-kind|caps»]}}}\n',
      'caps is a part where a fastener is due',
    ],
    [
      'a tool as a lock',
      'fasteners: {bolts: {torque: snug, threads: dry, lock: «wrong-kind|hammer»}}\n',
      'hammer is a tool where a consumable is due',
    ],
    [
      'a consumable to install with',
      'parts: {shaft: {using: [«wrong-kind|oil»]}}\n',
      'oil is a consumable where a tool is due',
    ],
  ];
  it.each(cases)('%s', (_, engine, says) => {
    const [problem] = expectMarked({engine});
    expect(problem?.says).toBe(says);
    expect(problem?.related).toHaveLength(1);
  });
});

describe('a name means one item', () => {
  it('across sections', () => {
    const [problem] = expectMarked({
      engine: 'parts: {plug: {}}\nmarks: {«spec-contradiction|plug»: {}}\n',
    });
    expect(problem?.related?.[0]?.says).toBe('it is first here');
  });

  it('across files', () => {
    const shop = SHOP.replace('  oil:', '  «spec-contradiction|shaft»: {use: other}\n  oil:');
    expectMarked({shop, engine: 'parts: {shaft: {}}\n'});
  });

  it('and a place one place', () => {
    expectMarked({engine: 'parts: {plug: {at: [front, rear, «spec-contradiction|front»]}}\n'});
  });
});

describe('what can be named', () => {
  it('a gasket that is a part, a strip that reads a fit, a kind of lock, a surface that a joint is between', () => {
    readClean({
      engine: `
parts: {ring: {}, block: {}}
surfaces: {face: {on: block, assembly: clean}}
joints: {seam: {between: [block, face], seal: [ring]}}
fits: {gap: {between: [face, ring], limits: 1–2 mm, by: strip, using: [strip, feelers], when: {}}}
fasteners: {bolts: {torque: snug, threads: [oil], lock: cotter-pin}}
barred: [{what: [spring-washer, silicone, hammer], on: [bolts, seam], because: they come off}]
`,
    });
  });
});

describe('sections', () => {
  it('are those of the shapes, and each kind has one', () => {
    const sections: readonly string[] = [...Object.keys(ENGINE_SECTIONS), ...Object.keys(SHOP_SECTIONS)];
    const keys = [...Object.keys(engineFile.shape), ...Object.keys(shopFile.shape)];
    expect(sections.filter((section) => !keys.includes(section))).toEqual([]);
    expect(Object.values(SECTION_OF).toSorted()).toEqual(sections.toSorted());
    expect(Object.keys(KIND_SAYS).toSorted()).toEqual(Object.keys(SECTION_OF).toSorted());
  });
});
