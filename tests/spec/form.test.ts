/** The shapes of shop.yaml and engine.yaml: what does not fit is found at its key or value, with what was meant. */
import {describe, expect, it} from 'vitest';
import {engineFile, shopFile} from '../../src/spec/shapes/files.js';
import {keysAt} from '../../src/spec/shapes/keys.js';
import {expectMarked, readMarked} from './marked.js';

const ENGINE_CASES: readonly [string, string, string, string | undefined][] = [
  [
    'an unknown section',
    '«spec-form|fasteners-of-it»: {}\n',
    'fasteners-of-it is not a key of this file',
    'it takes engine, extends, source, sources, options, parts, surfaces, joints, fasteners, fits, marks, checks, hold-points, systems, alterations, barred or build',
  ],
  [
    'a section misspelt',
    '«spec-form|surface»: {}\n',
    'surface is not a key of this file',
    'did you mean surfaces?',
  ],
  [
    'a key misspelt in an item',
    'parts:\n  shaft:\n    «spec-form|qantity»: 1\n',
    'shaft takes no key qantity',
    'did you mean quantity?',
  ],
  [
    'a key misspelt beside the right one',
    'parts:\n  shaft:\n    quantity: 1\n    «spec-form|qantity»: 1\n',
    'shaft takes no key qantity',
    'quantity stands here already: take one out',
  ],
  [
    'a key misspelt inside a value',
    'joints: {seam: {seal: {value: [paper], «spec-form|becuase»: thin}}}\n',
    'seal takes no key becuase',
    'did you mean because?',
  ],
  [
    'a key without its colon in brackets',
    'parts: {shaft: {given: true, «spec-form|quantity 2»}}\n',
    'there is no colon behind quantity',
    'write quantity: 2',
  ],
  [
    'an id in capitals',
    'parts: {«spec-form|MainCaps»: {}}\n',
    'MainCaps is not a kebab-case name: lower-case letters, digits and single hyphens',
    'write main-caps',
  ],
  [
    'a name with blanks in a list',
    'parts: {shaft: {hazards: [pinch, «spec-form|hot metal»]}}\n',
    'hot metal is not a kebab-case name: lower-case letters, digits and single hyphens',
    'write hot-metal',
  ],
  [
    'a word that is none of those due',
    'surfaces: {face: {assembly: «spec-form|lube»}}\n',
    'assembly is lube where clean, dry, lubed, unknown or keys with values is due',
    'did you mean lubed?',
  ],
  [
    'one name where a list is due',
    'parts: {shaft: {using: «spec-form|mallet»}}\n',
    'using is mallet where a list or keys with values is due',
    'put it in brackets: [mallet]',
  ],
  [
    'true or false where text is due',
    'parts: {shaft: {name: «spec-form|true»}}\n',
    'name is true where text is due',
    "put it in quotes: 'true'",
  ],
  [
    'text where true or false is due',
    'parts: {shaft: {given: «spec-form|yes»}}\n',
    'given is yes where true or false is due',
    undefined,
  ],
  [
    'a fraction where a whole number is due',
    'parts: {shaft: {quantity: «spec-form|1.5»}}\n',
    'quantity is 1.5 where a whole number is due',
    undefined,
  ],
  [
    'more than any engine has',
    'parts: {shaft: {quantity: «spec-form|99999»}}\n',
    'quantity is 99999 where at most 10000 is due',
    undefined,
  ],
  [
    'a value left empty',
    'parts:\n  shaft:\n    «spec-form|note»:\n',
    'note is empty where text is due',
    undefined,
  ],
  [
    'a map where a list is due, at its key, for it runs over lines',
    'parts:\n  shaft:\n    «spec-form|closes»:\n      face: 1\n      edge: 2\n',
    'closes is a map of keys where a list is due',
    undefined,
  ],
  [
    'a list for an item',
    'parts: {shaft: «spec-form|[1, 2]»}\n',
    'shaft is a list where keys with values or text is due',
    undefined,
  ],
  [
    'a point without its second number',
    `fasteners: {bolts: {torque: snug, threads: dry, lock: wire, layout: {unit: in, a: «spec-form|[1]»}}}\n`,
    'a stands in the layout with one number where two are due, how far across and how far up',
    'write a: [1, 0]',
  ],
  [
    'a point with a third number',
    `fasteners: {bolts: {torque: snug, threads: dry, lock: wire, layout: {unit: in, a: «spec-form|[1, 2, 3]»}}}\n`,
    'a stands in the layout with 3 numbers where two are due, how far across and how far up',
    'write a: [1, 2]',
  ],
  [
    'a point without numbers',
    `fasteners: {bolts: {torque: snug, threads: dry, lock: wire, layout: {unit: in, a: «spec-form|[]»}}}\n`,
    'a stands in the layout with no number where two are due, how far across and how far up',
    'write a: [0, 0]',
  ],
  [
    'two locks as one text',
    'fasteners: {bolts: {torque: snug, threads: dry, lock: «spec-form|safety-wire and tab-washer»}}\n',
    'safety-wire and tab-washer is not a kebab-case name: lower-case letters, digits and single hyphens',
    'write several as a list: [safety-wire, tab-washer]',
  ],
  [
    'no lock beside one',
    'fasteners: {bolts: {torque: snug, threads: dry, lock: [safety-wire, «spec-form|none»]}}\n',
    'none is no lock, and cannot stand beside one',
    'take it out of the list, or write it in place of the list',
  ],
  [
    'a list of nothing',
    'fasteners: {bolts: {torque: snug, threads: dry, lock: «spec-form|[]»}}\n',
    'lock is an empty list where at least one entry is due',
    undefined,
  ],
  [
    'a metal misspelt',
    'fasteners: {bolts: {torque: snug, threads: dry, lock: wire, into: «spec-form|cast irn»}}\n',
    '"cast irn" is not a metal in the table',
    'did you mean cast iron?',
  ],
  [
    'a run of wire that is no list',
    'fasteners: {bolts: {torque: snug, threads: dry, lock: wire, runs: [«spec-form|a»]}}\n',
    'entry 1 of runs is a where a list is due',
    'put it in brackets: [a]',
  ],
  [
    'a layout without its unit',
    'fasteners: {bolts: {torque: snug, threads: dry, lock: wire, «spec-form|layout»: {a: [1, 2]}}}\n',
    'layout has no unit',
    'add unit: …',
  ],
  [
    'a bar without a reason, at its section, for the bar has no key',
    '«spec-form|barred»: [{what: [paper]}]\n',
    'entry 1 of barred has no because',
    'add because: …',
  ],
];

describe('engine.yaml', () => {
  it.each(ENGINE_CASES)('%s', (_, engine, says, hint) => {
    expectMarked({engine});
    const {spec} = readMarked({engine});
    expect(spec.problems[0]?.says).toBe(says);
    expect(spec.problems[0]?.hint).toBe(hint);
  });

  it('finds every misfit of an item at once', () => {
    expectMarked({
      engine: `parts:
  shaft:
    «spec-form|nmae»: cam shaft
    given: «spec-form|maybe»
    at: [front, «spec-form|Rear»]
`,
    });
  });

  it('shows the first two hundred misfits of a file that was written for something else', () => {
    const keys = Array.from({length: 5000}, (_, index) => `k${index}: 1\n`).join('');
    expect(readMarked({engine: keys}).spec.problems).toHaveLength(200);
    const places = Array.from({length: 5000}, (_, index) => `P${index}`).join(', ');
    expect(readMarked({engine: `parts: {shaft: {at: [${places}]}}\n`}).spec.problems).toHaveLength(200);
  });

  it('names the item', () => {
    const [problem] = expectMarked({engine: 'parts: {shaft: {given: «spec-form|maybe»}}\n'});
    expect(problem?.item).toBe('shaft');
  });

  it('takes numbers for text where a name or a place looks like one', () => {
    const {spec, found} = readMarked({
      engine: 'parts: {shaft: {name: 4, at: [1, 2]}}\nmarks: {number: {stamped: 7}}\n',
    });
    expect(found).toEqual([]);
    expect(spec.items.get('shaft')).toMatchObject({name: '4', at: ['1', '2']});
  });
});

describe('shop.yaml', () => {
  const cases: readonly [string, string, string, string | undefined][] = [
    ['no shop', '«spec-form|»sources: {house: {title: x}}\n', 'the key shop is missing', 'add shop: …'],
    [
      'a paper that no printer has',
      'shop: {name: x, paper: «spec-form|A44»}\nsources: {house: {title: x}}\n',
      'paper is A44 where A4 or Letter is due',
      'did you mean A4?',
    ],
    [
      'a severity misspelt',
      'shop: {name: x}\nsources: {house: {title: x}}\nseverity: {two-actions: «spec-form|warn»}\n',
      'two-actions is warn where error, warning, information or off is due',
      undefined,
    ],
    [
      'a consumable without its use',
      'shop: {name: x}\nsources: {house: {title: x}}\nconsumables: {«spec-form|oil»: {name: oil}}\n',
      'oil has no use',
      'add use: …',
    ],
    [
      'practice for a kind that there is not',
      'shop: {name: x}\nsources: {house: {title: x}}\npractice: [{every: «spec-form|surfaces», is: {assembly: dry}}]\n',
      'every is surfaces where part, surface, joint, fastener, fit, mark, check, hold-point, system, alteration, tool or consumable is due',
      'did you mean surface?',
    ],
    [
      'practice that states a field of another kind',
      'shop: {name: x}\nsources: {house: {title: x}}\npractice: [{every: surface, is: {«spec-form|torque»: snug}}]\n',
      'is takes no key torque',
      'it takes assembly or lubricants',
    ],
    [
      'a day that is none',
      'shop: {name: x}\nsources: {house: {title: x}}\ntools: {wrench: {due: «spec-form|2026-02-30»}}\n',
      'due: February 2026 has 28 days',
      'write a day from 01 to 28',
    ],
    [
      'a day of June that is none',
      'shop: {name: x}\nsources: {house: {title: x}}\ntools: {wrench: {due: «spec-form|2027-06-31»}}\n',
      'due: June 2027 has 30 days',
      'write a day from 01 to 30',
    ],
    [
      'a leap day too many',
      'shop: {name: x}\nsources: {house: {title: x}}\ntools: {wrench: {due: «spec-form|2028-02-30»}}\n',
      'due: February 2028 has 29 days',
      'write a day from 01 to 29',
    ],
    [
      'a month that is none',
      'shop: {name: x}\nsources: {house: {title: x}}\ntools: {wrench: {due: «spec-form|2027-13-01»}}\n',
      'due: there is no month 13',
      'write year, month and day: 2026-03-01 is the first of March',
    ],
    [
      'a day nought',
      'shop: {name: x}\nsources: {house: {title: x}}\ntools: {wrench: {due: «spec-form|2027-06-00»}}\n',
      'due: there is no day 00',
      'write a day from 01 to 30',
    ],
    [
      'another order of the day',
      'shop: {name: x}\nsources: {house: {title: x}}\ntools: {wrench: {due: «spec-form|01.06.2027»}}\n',
      'due is not a date',
      'write it as 2026-03-01',
    ],
    [
      'a nut factor above any that is published',
      'shop: {name: x}\nsource: house\nsources: {house: {title: x}}\nconsumables: {oil: {use: lubricant, k: «spec-form|0.36»}}\n',
      'k is 0.36 where at most 0.35 is due',
      undefined,
    ],
    ['an empty file', '«spec-form|»', 'the file is empty', 'begin with shop:'],
    ['a list', '«spec-form|- shop»\n- tools\n', 'the file does not start with a key', 'begin with shop:'],
  ];
  it.each(cases)('%s', (_, shop, says, hint) => {
    const [problem] = expectMarked({shop, engine: ''});
    expect(problem?.says).toBe(says);
    expect(problem?.hint).toBe(hint);
  });
});

describe('keysAt', () => {
  it('goes through sections, lists, and the ways of writing a value', () => {
    expect(keysAt(engineFile, ['engine'])).toEqual(['id', 'name', 'note']);
    expect(keysAt(engineFile, ['barred', 0])).toEqual(['what', 'on', 'because', 'source']);
    expect(keysAt(engineFile, ['fits', 'any', 'limits'])).toEqual(['value', 'source', 'note', 'because']);
    expect(keysAt(shopFile, ['practice', 0], {practice: [{every: 'joint'}]})).toEqual([
      'every',
      'type',
      'is',
      'source',
      'note',
    ]);
    expect(keysAt(shopFile, ['practice', 0, 'is'], {practice: [{every: 'joint'}]})).toEqual(['seal']);
    expect(keysAt(shopFile, ['shop', 'name', 'deeper'])).toEqual([]);
  });
});
