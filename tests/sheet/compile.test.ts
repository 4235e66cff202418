/** What a tag adds to its row, and what stands before the steps: trade practice as the design gives it, no outside source. */
import {describe, expect, test} from 'vitest';
import {sheetMarkdown} from '../../src/sheet/markdown.js';
import type {Entry, Row, Sheet, SheetBlock} from '../../src/sheet/model.js';
import {ENGLISH} from '../../src/sheet/words.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';
import {firstProcedure, firstSheet} from '../help/sheet.js';
import {trialBook} from './trial.js';

const ENGINE = `
parts:
  caps: {at: [front, rear]}
  shaft: {turning: true, using: [soft-mallet], note: the long end goes forward}
  shells: {at: [front, rear], quantity: 4, single-use: true}
  pump: {hazards: [heavy-lift]}
  block: {given: true}
surfaces:
  journals: {on: block, at: [front, rear], assembly: lubed, lubricants: [assembly-lube, engine-oil]}
joints:
  cover-joint: {seal: [liquid-gasket, paper-gasket]}
fasteners:
  cap-bolts:
    at: [front, rear]
    torque: {value: 85 lbf·ft, note: oiled threads}
    passes: [30 lbf·ft, 60 lbf·ft]
    threads: [engine-oil]
    lock: safety-wire
    angle: 90°
  studs:
    torque: unknown
    threads: dry
    lock: {value: none, because: they bottom}
  cover-screws:
    torque: snug
    threads: unknown
    lock: cotter-pin
    layout: {unit: in, left: [0, 0], right: [4, 0], top: [2, 1]}
    order: [top, right, left]
  rail-screws:
    torque: 20 N·m
    threads: dry
    lock: spring-washer
    runs: [[front-1, front-2], [rear-1, rear-2]]
    layout: {unit: in, front-1: [0, 0], front-2: [2, 0], rear-1: [0, 4], rear-2: [2, 4]}
    at: [front, rear]
fits:
  clearance: {at: [front, rear], limits: 0.0015–0.0035 in, by: strip, using: [strip-green]}
  float: {limits: unknown, using: [feeler-gauges]}
checks:
  lash: {limits: 0.30 mm, using: [feeler-gauges]}
  swings: {expect: it swings freely}
marks:
  block-number: {stamped: on the rail, matches: plate-number}
  plate-number: {}
hold-points:
  closed: {asks: [clearance, swings], by: shop lead}
systems:
  cooling: {with: [coolant], amount: 6.0 L}
alterations:
  ease: {of: [shaft], does: ease the bore by hand, using: [soft-mallet]}
`;

const SHOP = `${EXAMPLE_SHOP}
practice: []
`;

function sheetOf(markdown: string, shop = SHOP): Sheet {
  const made = book({shop, engine: ENGINE, procedures: {'one.md': markdown}});
  expect(firstProcedure(made).problems).toEqual([]);
  return firstSheet(made);
}

function rowsOf(sheet: Sheet): Row[] {
  const below = (row: Row): Row[] => [row, ...row.rows.flatMap(below)];
  const isRow = (block: SheetBlock) => block.type === 'row';
  return sheet.sections.flatMap(({content}) => content.filter(isRow).flatMap(({row}) => below(row)));
}

/** The entries of a sheet of one step with this tag. */
function entriesOf(tag: string, shop?: string): readonly Entry[] {
  return rowsOf(sheetOf(`1. Do it. \`${tag}\`\n`, shop))[0]?.entries ?? [];
}

/** An entry as lines, as short as a test can read. */
function shown(entry: Entry): string[] {
  const facts = entry.facts.map(({label, text, also, note}) =>
    [`${label}: ${text}`, also && `(${also})`, note && `[${note}]`].filter(Boolean).join(' '),
  );
  return [`${entry.title} ${entry.subject}`, ...facts, ...blanksOf(entry)];
}

function blanksOf({blanks}: Entry): string[] {
  if (blanks === undefined) return [];
  if (blanks.type === 'tightening') {
    const names = blanks.positions.map((name, at) => (blanks.ordered ? `${at + 1} ${name}` : name));
    return blanks.passes.map(({label, value}) => `${label} ${value?.text ?? ''} → ${names.join(', ')}`);
  }
  const again = blanks.type === 'readings' && blanks.again ? ' twice' : '';
  const limits = blanks.type === 'readings' ? `${blanks.unit} ${blanks.limits?.text ?? ''}` : '';
  return [`${blanks.type}${again} ${limits} → ${blanks.labels.join(', ')}`];
}

describe('a tag that leaves a value out takes it from the specification', () => {
  const cases: readonly (readonly [string, readonly string[]])[] = [
    ['lube: journals', ['Lube journals', 'With: assembly lube or engine oil', 'ticks  → front, rear']],
    ['lube: cap-bolts', ['Lube cap bolts', 'With: engine oil', 'ticks  → front, rear']],
    ['seal: cover-joint', ['Seal cover joint', 'With: liquid gasket or paper gasket']],
    [
      'cure: cover-joint',
      [
        'Cure cover joint',
        'Leave for at least: 24 h',
        'lines  → Started (date, time), Finished (date, time)',
      ],
    ],
    [
      'cure: liquid-gasket',
      [
        'Cure liquid gasket',
        'Leave for at least: 24 h',
        'lines  → Started (date, time), Finished (date, time)',
      ],
    ],
    ['lock: cap-bolts', ['Lock cap bolts', 'With: safety wire', 'ticks  → front, rear']],
    ['fill: cooling', ['Fill cooling', 'With: coolant', 'Amount: 6.3 US qt (6.0 L)']],
    [
      'measure: clearance',
      ['Measure clearance', 'Using: strip green', 'readings in 0.0015–0.0035 in → front, rear'],
    ],
    [
      'measure: float',
      ['Measure float', 'Using: feeler gauges', 'readings  not known: ask the shop lead → '],
    ],
    ['lay: clearance', ['Lay strip clearance', 'Using: strip green', 'ticks  → front, rear']],
    ['check: swings', ['Check swings', 'Expect: it swings freely']],
    [
      'install: shaft',
      [
        'Fit shaft',
        'Using: soft-faced mallet',
        'How: turn it as it goes in',
        'Note: the long end goes forward',
      ],
    ],
    [
      'record: block-number',
      ['Write down block number', 'Stamped: on the rail', 'Must match: plate number', 'lines  → '],
    ],
    [
      'alter: shaft by ease',
      ['Alter shaft', 'Alteration: ease the bore by hand', 'Note: the long end goes forward'],
    ],
    ['torque: studs', ['Torque studs', 'To: not known: ask the shop lead', 'Threads: dry']],
  ];
  test.each(cases)('%s', (tag, expected) => {
    expect(entriesOf(tag).map(shown)).toEqual([expected]);
  });
});

describe('a tag that states a value is printed as it stands, in both systems', () => {
  const cases: readonly (readonly [string, readonly string[]])[] = [
    [
      'measure: clearance[rear] within 0.002–0.003 in using feeler-gauges',
      ['Measure clearance (rear)', 'Using: feeler gauges', 'readings in 0.002–0.003 in → rear'],
    ],
    [
      'measure: clearance with strip-green',
      ['Measure clearance', 'With: strip green', 'readings in 0.0015–0.0035 in → front, rear'],
    ],
    [
      'fill: cooling to the bottom of the neck',
      ['Fill cooling', 'To: the bottom of the neck', 'With: coolant', 'Amount: 6.3 US qt (6.0 L)'],
    ],
    // What the system holds is said once, and beside another amount.
    ['fill: cooling to 6.0 L', ['Fill cooling', 'To: 6.3 US qt (6.0 L)', 'With: coolant']],
    ['fill: cooling to 6000 mL', ['Fill cooling', 'To: 202.88 US fl oz (6000 mL)', 'With: coolant']],
    [
      'fill: cooling to 5.0 L',
      ['Fill cooling', 'To: 5.3 US qt (5.0 L)', 'With: coolant', 'Amount: 6.3 US qt (6.0 L)'],
    ],
    [
      'lock: cap-bolts[front] with safety-wire 0.041 in',
      ['Lock cap bolts (front)', 'With: safety wire 0.041 in'],
    ],
    ['inspect: caps for cracks, burrs', ['Inspect caps', 'Look for: cracks, burrs', 'ticks  → front, rear']],
    [
      'clean: journals with solvent using soft-mallet',
      ['Clean journals', 'With: solvent', 'Using: soft-faced mallet', 'ticks  → front, rear'],
    ],
  ];
  test.each(cases)('%s', (tag, expected) => {
    expect(entriesOf(tag).map(shown)).toEqual([expected]);
  });

  test('an entry that would only say again what the prose says is left out', () => {
    expect(entriesOf('install: pump')).toEqual([]);
    expect(entriesOf('remove: pump')).toEqual([]);
  });

  test('a torque has both systems and the shop’s note', () => {
    const [entry] = entriesOf('torque: cap-bolts to 85 lbf·ft in 30, 60, 85');
    expect(entry?.facts[0]).toEqual({label: 'To', text: '85 lbf·ft', also: '115 N·m', note: 'oiled threads'});
  });

  test('a metric shop has its own units first', () => {
    const metric = SHOP.replace('{name: Example Works}', '{name: Example Works, units: metric}');
    const [torque] = entriesOf('torque: cap-bolts to 85 lbf·ft', metric);
    expect(torque?.facts[0]).toMatchObject({text: '115 N·m', also: '85 lbf·ft'});
    const [lash] = entriesOf('check: lash', metric);
    expect(lash?.blanks).toMatchObject({unit: 'mm', limits: {text: '0.30 mm'}});
    const [clearance] = entriesOf('measure: clearance', metric);
    expect(clearance?.blanks).toMatchObject({unit: 'mm', limits: {also: '0.0015–0.0035 in'}});
  });
});

describe('drawings', () => {
  test('a lock with safety wire draws its runs, with the numbers of the tightening', () => {
    const [entry] = entriesOf('lock: rail-screws with safety-wire');
    expect(entry?.drawing).toMatchObject({
      kind: 'wire',
      wires: [
        [0, 1],
        [2, 3],
      ],
      points: [{number: 1}, {number: 4}, {number: 3}, {number: 2}],
    });
    expect(entry?.drawing).not.toHaveProperty('leftHanded');
    expect(entriesOf('lock: rail-screws[rear] with safety-wire')[0]?.drawing?.wires).toEqual([[2, 3]]);
  });

  test.each(['lock: rail-screws with spring-washer', 'lock: cap-bolts with safety-wire'])(
    '%s has nothing to draw',
    (tag) => {
      for (const entry of entriesOf(tag)) expect(entry).not.toHaveProperty('drawing');
    },
  );

  test('a strip is drawn in each place that it is laid in', () => {
    expect(entriesOf('lay: clearance with strip-green')[0]?.drawing).toMatchObject({
      kind: 'strips',
      points: [
        {name: 'front', x: 0},
        {name: 'rear', x: 1},
      ],
    });
    expect(entriesOf('lay: clearance[front] with strip-green')[0]).not.toHaveProperty('drawing');
  });

  test('each list of places is drawn once, with the items that share it', () => {
    const {before} = sheetOf(
      '1. Fit. `install: caps`\n2. Oil. `lube: journals with engine-oil`\n3. Fit. `install: shaft`\n',
    );
    expect(before.places).toMatchObject([
      {
        items: ['caps', 'journals'],
        more: false,
        drawing: {kind: 'places', points: [{name: 'front'}, {name: 'rear'}]},
      },
    ]);
  });
});

describe('the boxes of a tightening', () => {
  const cases: readonly (readonly [string, readonly string[]])[] = [
    [
      'torque: cap-bolts',
      [
        'Pass 1 30 lbf·ft → front, rear',
        'Pass 2 60 lbf·ft → front, rear',
        'Pass 3 85 lbf·ft → front, rear',
        'Then turn 90° → front, rear',
      ],
    ],
    [
      'torque: cap-bolts to 85 lbf·ft in 40, 85',
      ['Pass 1 40 lbf·ft → front, rear', 'Pass 2 85 lbf·ft → front, rear', 'Then turn 90° → front, rear'],
    ],
    ['torque: cap-bolts to 40 lbf·ft', ['ticks  → front, rear']],
    ['torque: cap-bolts[front] to 40 lbf·ft', []],
    ['torque: studs', []],
    ['torque: cover-screws', ['Done  → 1 top, 2 right, 3 left']],
    ['torque: rail-screws[rear]', ['Torque 15 lbf·ft → 1 rear 1, 2 rear 2']],
  ];
  test.each(cases)('%s', (tag, expected) => {
    expect(entriesOf(tag).flatMap(blanksOf)).toEqual(expected);
  });

  test('the drawing is to scale, y upwards, and numbered as the shop states the order', () => {
    const [ordered] = entriesOf('torque: cover-screws');
    expect(ordered?.blanks).toMatchObject({
      drawing: {
        width: 1,
        height: 0.25,
        points: [
          {name: 'left', x: 0, y: 0.25, number: 3},
          {name: 'right', x: 1, y: 0.25, number: 2},
          {name: 'top', x: 0.5, y: 0, number: 1},
        ],
      },
    });
    expect(ordered?.blanks).not.toHaveProperty('note');
  });

  test('where the shop states no order, it is worked out from the layout, and said to be', () => {
    const [worked] = entriesOf('torque: rail-screws');
    expect(worked?.blanks).toMatchObject({
      ordered: true,
      note: ENGLISH.orderWorked,
      // Four in a ring: opposite pairs, as `wmark figure tightening-order` says.
      positions: ['front 1', 'rear 2', 'rear 1', 'front 2'],
      drawing: {
        width: 0.5,
        height: 1,
        points: [
          {name: 'front 1', x: 0, y: 1, number: 1},
          {name: 'front 2', x: 0.5, y: 1, number: 4},
          {name: 'rear 1', x: 0, y: 0, number: 3},
          {name: 'rear 2', x: 0.5, y: 0, number: 2},
        ],
      },
    });
  });

  test('passes that are steps of their own are not printed again at the last of them', () => {
    const sheet = sheetOf('1. Half. `torque: cap-bolts to 40 lbf·ft`\n2. All. `torque: cap-bolts`\n');
    expect(rowsOf(sheet).map(({entries}) => entries.flatMap(blanksOf))).toEqual([
      ['ticks  → front, rear'],
      ['Torque 85 lbf·ft → front, rear', 'Then turn 90° → front, rear'],
    ]);
  });

  test('an angle that is a step of its own is printed there alone', () => {
    const sheet = sheetOf(
      '1. Torque. `torque: cap-bolts to 85 lbf·ft in 30, 85`\n2. Turn. `torque: cap-bolts turn 90°`\n',
    );
    const [first, second] = rowsOf(sheet).map(({entries}) => entries.flatMap(shown));
    expect(first?.join()).not.toContain('turn');
    expect(second).toEqual([
      'Torque cap bolts',
      'Then turn: 90°',
      'Threads: engine oil',
      'ticks  → front, rear',
    ]);
  });
});

describe('steps', () => {
  test('a branch says when it is followed, a loop where it goes and which readings come again', () => {
    const sheet = sheetOf(
      '1. Clean. `clean: journals` `step: wiped`\n2. Read. `measure: clearance` `if: clearance[rear] is out`\n   1. Wipe. `repeat: wiped`\n3. Read. `measure: clearance`\n',
    );
    const rows = rowsOf(sheet);
    expect(rows.map(({number}) => number)).toEqual(['1', '2', '2a', '3']);
    expect(rows[1]?.onlyIf).toBe('Only if clearance (rear) is out of limits');
    const [back, round] = rows[2]?.entries.flatMap(shown) ?? [];
    expect(back).toBe('Go back to step 1');
    expect(round).toContain('Write nothing over.');
    expect(rows.map(({backTo}) => backTo)).toEqual([undefined, undefined, '1', undefined]);
    expect(
      rows.map(({entries}) => entries.some(({blanks}) => blanks?.type === 'readings' && blanks.again)),
    ).toEqual([false, true, false, false]);
  });

  test.each([
    ['over', '', 'over 0.0035 in (0.088 mm)'],
    ['under', '', 'under 0.0015 in (0.039 mm)'],
    ['under', ' within 0.0020–0.0030 in', 'under 0.0020 in (0.051 mm)'],
    ['over', ' within min 0.0020 in', 'over its limits'],
    ['out', '', 'out of limits'],
  ])('a branch names the limit of the reading that opens it: %s%s', (is, within, says) => {
    const sheet = sheetOf(
      `1. Read. \`measure: clearance${within}\`\n2. So: \`if: clearance is ${is}\`\n   1. Mend. \`clean: journals\`\n`,
    );
    expect(rowsOf(sheet)[1]?.onlyIf).toBe(`Only if clearance is ${says}`);
    expect(sheetMarkdown(sheet)).toContain(`${says}: If not, strike step 2 and its sub-steps through`);
  });

  test('a check without limits can be other than expected, not out of limits', () => {
    const made = book({
      engine: 'checks:\n  spins: {expect: it spins}\n',
      procedures: {'one.md': '\n1. Spin it. `check: spins` `if: spins is out`\n   1. Ask.\n'},
    });
    const [row] = rowsOf(firstSheet(made));
    expect(row?.onlyIf).toBe('Only if spins is not as expected');
  });

  test('a hold point names what is looked at and who signs', () => {
    const [own, named] = rowsOf(
      sheetOf('1. Call. `witness: closed`\n2. Call. `witness: closed by the works manager`\n'),
    );
    expect(own?.holds).toMatchObject([{name: 'closed', by: 'shop lead', asks: ['clearance', 'swings']}]);
    expect(named?.holds[0]?.by).toBe('the works manager');
  });

  test('a step that the front matter lets go without a tag stands on the sheet with its box', () => {
    const front = '---\ntitle: One\nrevision: A\ndate: 2026-03-01\nuntagged: [the lamp]\n---\n\n';
    const sheet = sheetOf(`${front}1. Hang up the lamp.\n2. Call. \`witness: closed\`\n`);
    expect(rowsOf(sheet).map(({number, key}) => [number, key])).toEqual([
      ['1', '1:done'],
      ['2', '2:done'],
    ]);
    const text = sheetMarkdown(sheet);
    expect(text).toContain('☐ **1** Hang up the lamp.');
    expect(text).not.toContain('untagged');
  });

  test('cautions go with the step after them; one that none follows stays in its section', () => {
    const sheet = sheetOf(
      '> **Warning:** Hot. `hazard: hot-metal, eyes`\n\n1. Do it.\n\n> **Notice:** Sweep up.\n',
    );
    const [section] = sheet.sections;
    expect(section?.content.map(({type}) => type)).toEqual(['row', 'notice']);
    const [row] = rowsOf(sheet);
    expect(row?.notices).toEqual([
      {signal: 'warning', prose: [{type: 'text', value: 'Hot.'}], hazards: ['hot metal', 'eyes']},
    ]);
  });

  test('headings never skip a level on the way down', () => {
    const sheet = sheetOf(
      '## A\n\n1. Do it.\n\n#### B\n\n2. Do it.\n\n## C\n\n3. Do it.\n\n# D\n\n4. Do it.\n',
    );
    expect(sheet.sections.map(({title, level}) => [title, level])).toEqual([
      ['A', 2],
      ['B', 3],
      ['C', 2],
      ['D', 2],
    ]);
  });

  test('a name that nothing answers to is printed, not dropped', () => {
    const made = book({engine: ENGINE, procedures: {'one.md': '1. Do it. `lube: odd-thing with odd-oil`\n'}});
    expect(rowsOf(firstSheet(made))[0]?.entries.map(shown)).toEqual([['Lube odd thing', 'With: odd oil']]);
  });
});

describe('waivers', () => {
  const step = '1. Do it. `install: pump` `waive: install-order WHO because the bay is narrow`\n';
  const front = '---\ntitle: One\nrevision: A\ndate: 2026-03-01\napproved: J. Orrin\n---\n\n';

  test('carry reason and approver to the end of the sheet', () => {
    expect(sheetOf(front + step.replace('WHO', 'by R. Tide')).waivers).toEqual([
      {step: '1', finding: 'install order', reason: 'the bay is narrow', approvedBy: 'R. Tide'},
    ]);
  });

  test('the approver of the procedure stands in where none is named', () => {
    expect(sheetOf(front + step.replace('WHO ', '')).waivers[0]?.approvedBy).toBe('J. Orrin');
    expect(sheetOf(step.replace('WHO ', '')).waivers[0]).not.toHaveProperty('approvedBy');
  });
});

describe('before you start', () => {
  const {before} = sheetOf(
    [
      '1. One. `lube: journals` `install: caps[front]`',
      '2. Two. `install: caps[rear] using steel-hammer` `renew: shells[front]`',
      '3. Three. `torque: cap-bolts` `lock: cap-bolts with wire-032` `seal: cover-joint with liquid-gasket`',
      '4. Four. `install: shaft` `install: pump` `alter: shaft by ease` `measure: float`',
      '5. Five. `lube: journals`',
      '',
    ].join('\n'),
  );

  test('tools that the tags name or the specification offers, with their steps', () => {
    expect(before.tools.map(({names, steps}) => [names.join(' or '), steps.join()])).toEqual([
      ['steel hammer', '2'],
      ['soft-faced mallet', '4'],
      ['feeler gauges', '4'],
    ]);
  });

  test('consumables; of those that the specification offers any one will do', () => {
    expect(before.consumables.map(({names, steps}) => [names.join(' or '), steps.join()])).toEqual([
      ['assembly lube or engine oil', '1,5'],
      ['wire 032', '3'],
      ['liquid gasket', '3'],
    ]);
    expect(before.consumables[2]?.cure).toEqual({text: '24 h'});
  });

  test('parts in number by place, and single-use parts apart', () => {
    expect(before.parts.map(({name, quantity}) => [name, quantity])).toEqual([
      ['caps', 2],
      ['shaft', 1],
      ['pump', 1],
    ]);
    expect(before.parts[2]?.hazards).toEqual(['heavy lift']);
    expect(before.newParts.map(({name, quantity}) => [name, quantity])).toEqual([['shells', 2]]);
  });
});

describe('the sheet as data', () => {
  const procedure = firstProcedure(trialBook);
  const sheet = firstSheet(trialBook, {job: 'B-17', engineNumber: '4471'});

  test('has every step once, in reading order', () => {
    expect(rowsOf(sheet).map(({number}) => number)).toEqual(procedure.steps.map(({number}) => number));
  });

  test('survives a round trip through JSON', () => {
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet);
  });

  test('has at its head what ties it to the book', () => {
    expect(sheet.head).toEqual({
      shop: 'Brackwater Engine Works',
      engine: 'Example engine',
      job: 'B-17',
      engineNumber: '4471',
      title: 'Camshaft, crankshaft and head',
      revision: 'C',
      date: '2026-05-14',
      author: 'J. Marsh',
      approved: 'R. Tide',
      fingerprint: '0123456789',
      turn: {number: 1, of: 1},
    });
  });
});
