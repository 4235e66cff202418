/** Values: amounts with their units in place, where each comes from, and what an item leaves unsaid. */
import {describe, expect, it} from 'vitest';
import {expectMarked, readClean, readMarked, SHOP} from './marked.js';

const SURE = 'torque: snug, threads: dry, lock: wire';

describe('amounts', () => {
  const cases: readonly [string, string, string][] = [
    [
      'without a unit, plain',
      `fasteners: {bolts: {torque: «unit-missing|85», threads: dry, lock: wire}}\n`,
      '85 has no unit where a torque is due',
    ],
    [
      'without a unit, in double quotes',
      `fasteners: {bolts: {torque: "«unit-missing|85»", threads: dry, lock: wire}}\n`,
      '85 has no unit where a torque is due',
    ],
    [
      'of another kind, at the unit alone',
      `fasteners: {bolts: {torque: 85 «unit-wrong-kind|lb», threads: dry, lock: wire}}\n`,
      'lb is a mass where a torque is due',
    ],
    [
      'of another kind, in single quotes, inside a value with its source',
      `fasteners: {bolts: {torque: {value: '12 «unit-wrong-kind|kg»', source: maker}, threads: dry, lock: wire}}\n`,
      'kg is a mass where a torque is due',
    ],
    [
      'of another kind, folded, where the place in the file is not that in the text',
      `fasteners:\n  bolts:\n    torque: «unit-wrong-kind|>-\n      85\n      kg\n»    threads: dry\n    lock: wire\n`,
      'kg is a mass where a torque is due',
    ],
    [
      'escaped, likewise',
      'fasteners: {bolts: {torque: «unit-wrong-kind|"85\\x20kg"», threads: dry, lock: wire}}\n',
      'kg is a mass where a torque is due',
    ],
    [
      'in a list of passes',
      `fasteners: {bolts: {torque: 60 lbf·ft, passes: [30 lbf·ft, «unit-missing|60»], threads: dry, lock: wire}}\n`,
      '60 has no unit where a torque is due',
    ],
    [
      'that is no number',
      `fasteners: {bolts: {${SURE}, hole: «spec-form|small»}}\n`,
      '"small" does not start with a number',
    ],
    [
      'by place',
      'surfaces: {bore: {at: [front], assembly: dry, sizes: {front: 2 «unit-wrong-kind|h»}}}\n',
      'h is a time where a length is due',
    ],
    [
      'whose limits are the wrong way round',
      'fits: {gap: {limits: «spec-form|0.005–0.003 in», when: {}}}\n',
      'the lower limit stands above the upper one',
    ],
  ];
  it.each(cases)('%s', (_, engine, says) => {
    expect(expectMarked({engine})[0]?.says).toBe(says);
  });

  it('hints at the word that was meant', () => {
    const [problem] = expectMarked({
      engine: 'fasteners: {bolts: {torque: «spec-form|sung», threads: dry, lock: wire}}\n',
    });
    expect(problem?.hint).toBe('did you mean snug?');
  });

  it('reads a check and a tool in any dimension, but a tool in one', () => {
    readClean({engine: 'checks: {oil-pressure: {limits: min 40 psi}, drag: {limits: max 5 lbf·ft}}\n'});
    const shop = SHOP.replace(
      'mallet: soft-faced mallet',
      'mallet: {range: 1–5 lbf·ft, resolution: «unit-wrong-kind|1 psi»}',
    );
    expectMarked({shop, engine: ''});
  });
});

describe('sources', () => {
  it('stand in for each other: the value, then the item, then the file', () => {
    const spec = readClean({
      engine: `fasteners:
  own: {torque: {value: snug, source: maker}, threads: dry, lock: wire, source: house}
  item: {${SURE}, source: maker}
  file: {${SURE}}
`,
    });
    const sources = ['own', 'item', 'file'].map((id) => {
      const item = spec.items.get(id);
      return item?.kind === 'fastener' ? [item.torque?.source, item.threads?.source] : [];
    });
    expect(sources).toEqual([
      ['maker', 'house'],
      ['maker', 'maker'],
      ['house', 'house'],
    ]);
  });

  it('are missed where there is none at all, but not of what is unknown or none', () => {
    const engine = `
parts: {seat: {size: «source-missing|1 in»}}
joints: {seam: {seal: {value: none, because: metal to metal}}}
fits: {gap: {limits: «spec-silent|unknown», when: {}}}
`;
    const base = `engine: {id: base}\n${engine}`;
    expectMarked({engine: 'extends: base-1.yaml\n', bases: [base]});
  });

  it.each([
    [
      'of a value',
      `parts: {seat: {size: {value: 1 in, source: «unknown-item|makr»}}}\n`,
      'did you mean maker?',
    ],
    ['of an item', `parts: {seat: {source: «unknown-item|bench-notes»}}\n`, 'add bench-notes under sources:'],
    [
      'of a bar',
      `barred: [{what: [paper], because: thin, source: «unknown-item|hous»}]\n`,
      'did you mean house?',
    ],
    [
      'of a list',
      `parts: {seat: {using: {value: [mallet], source: «unknown-item|hous»}}}\n`,
      'did you mean house?',
    ],
  ])('are looked up: %s', (_, engine, hint) => {
    const [problem] = expectMarked({engine});
    expect(problem).toMatchObject({hint, says: expect.stringMatching(/ is not a source$/)});
  });

  it('of a whole file are looked up once', () => {
    const shop = SHOP.replace('source: house', 'source: «unknown-item|hose»');
    expectMarked({shop, engine: 'parts: {one: {size: 1 in}, two: {size: 2 in}}\n'});
  });

  it('listed in both files contradict each other', () => {
    const [problem] = expectMarked({engine: 'sources: {«spec-contradiction|house»: {title: Other}}\n'});
    expect(problem?.related).toMatchObject([{where: {file: 'shop.yaml'}}]);
  });
});

describe('no silence', () => {
  const cases: readonly [string, string, readonly string[]][] = [
    [
      'a fastener',
      'fasteners: {«spec-silent|bolts»: {torque: snug, lock: wire}}\n',
      ['bolts does not say its threads'],
    ],
    ['a surface', 'surfaces: {«spec-silent|face»: {}}\n', ['face does not say its assembly']],
    ['a joint', 'joints: {«spec-silent|seam»: {}}\n', ['seam does not say its seal']],
    ['a fit without limits', 'fits: {«spec-silent|gap»: {when: {}}}\n', ['gap does not say its limits']],
    [
      'a fit without its time',
      'fits: {«spec-silent|gap»: {limits: 1–2 mm}}\n',
      ['gap does not say when it is measured'],
    ],
    [
      'what is unknown',
      'surfaces: {face: {assembly: «spec-silent|unknown»}}\n',
      ['assembly of face is unknown'],
    ],
    [
      'an unknown that carries a note',
      'joints: {seam: {seal: {value: «spec-silent|unknown», note: ask the yard}}}\n',
      ['seal of seam is unknown'],
    ],
    [
      'an unknown thread',
      `fasteners: {bolts: {${SURE}, thread: «spec-silent|unknown»}}\n`,
      ['thread of bolts is unknown'],
    ],
    [
      'an unknown size, which is no amount',
      'parts: {plug: {size: «spec-silent|unknown»}}\n',
      ['size of plug is unknown'],
    ],
    [
      'a lock of none without a reason',
      'fasteners: {bolts: {torque: snug, threads: dry, lock: «spec-silent|none»}}\n',
      ['lock of bolts is none without a reason'],
    ],
    [
      'a torque of none without a reason',
      'fasteners: {pins: {torque: «spec-silent|none», threads: dry, lock: wire}}\n',
      ['torque of pins is none without a reason'],
    ],
    [
      'a seal of none whose reason is missing',
      'joints: {seam: {seal: {value: «spec-silent|none», note: metal}}}\n',
      ['seal of seam is none without a reason'],
    ],
  ];
  it.each(cases)('%s', (_, engine, says) => {
    expect(expectMarked({engine}).map((one) => one.says)).toEqual(says);
  });

  it('asks for everything that an item should say', () => {
    const {spec} = readMarked({engine: 'fasteners: {bolts: {}}\n'});
    expect(spec.problems.map(({says}) => says)).toEqual([
      'bolts does not say its torque',
      'bolts does not say its threads',
      'bolts does not say its lock',
    ]);
  });

  it('asks nothing of what is written, even where it cannot be read', () => {
    expectMarked({engine: 'surfaces: {face: {assembly: «spec-form|wet»}}\n'});
  });

  it('asks which kind of lock a consumable is', () => {
    const shop = SHOP.replace('wire: {use: lock, lock: safety-wire}', '«spec-silent|wire»: {use: lock}');
    expectMarked({shop, engine: ''});
  });
});
