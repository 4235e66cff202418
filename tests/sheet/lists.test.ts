/** The lists of a build: what they hold, how it is counted, and every form in which they are printed. */
import fc from 'fast-check';
import {HtmlValidate} from 'html-validate';
import {describe, expect, it, test} from 'vitest';
import {forJob} from '../../src/build/for-job.js';
import {bookLists} from '../../src/sheet/book-lists.js';
import type {BookLists} from '../../src/sheet/list-model.js';
import {listTables} from '../../src/sheet/list-tables.js';
import {listsCsv} from '../../src/sheet/lists-csv.js';
import {listsHtml} from '../../src/sheet/lists-html.js';
import {listsMarkdown} from '../../src/sheet/lists-markdown.js';
import {listsText} from '../../src/sheet/lists-text.js';
import {bySheet} from '../../src/sheet/step-runs.js';
import {book} from '../help/example.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
  works: {title: Works sheets}
tools:
  torque-wrench: {name: torque wrench, range: 20–150 lbf·ft, serial: W-1, due: 2026-03-01, gauge: true, source: house}
  feeler-gauges: {gauge: true, due: 2027-03-01}
  mallet: soft mallet
consumables:
  engine-oil: {name: engine oil, use: lubricant}
  coolant: {use: fluid, hazards: [poison]}
  paper: {name: paper gasket, use: gasket}
  goo: {use: sealant, cure: {value: 24 h, source: house}, hazards: [skin]}
  wire: {use: lock, lock: safety-wire}
  pins: {name: cotter pins, use: lock, lock: cotter-pin}
  strip: {use: strip, range: {value: 0.001–0.003 in, source: house}}
`;

const ENGINE = `
options: {starter: {}}
parts:
  block: {given: true}
  caps: {at: [front, rear], quantity: 2}
  plugs: {at: [left, right], single-use: true, hazards: [sharp-edges]}
  pump: {using: [mallet]}
  motor: {only: starter}
joints:
  pump-joint: {between: [block, pump], seal: [paper]}
  plug-joint: {at: [left, right], between: [block, plugs], seal: [goo]}
fasteners:
  cap-bolts:
    name: cap bolts
    at: [front, rear]
    count: 4
    holds: [caps]
    thread: 1/2-13 UNC
    grade: SAE 8
    torque: {value: 80 lbf·ft, source: works, note: oiled threads}
    passes: [30 lbf·ft, 60 lbf·ft, 80 lbf·ft]
    threads: [engine-oil]
    lock: cotter-pin
    stripe: true
    angle: 90°
  pump-nut: {holds: [pump], torque: snug, threads: dry, lock: {value: none, because: it is snug}}
  odd-bolt: {torque: unknown}
fits:
  clearance: {at: [front, rear], between: [caps], limits: 0.001–0.003 in, by: strip, using: [strip], when: {installed: [caps], tight: [cap-bolts]}}
systems:
  cooling: {with: [coolant], amount: 7 US qt, joints: [pump-joint, plug-joint]}
`;

const head = (title: string, time?: string) =>
  `---\ntitle: ${title}\nrevision: A\ndate: 2026-03-01\n${time === undefined ? '' : `time: ${time}\n`}---\n\n`;

const PLUGS = `${head('Plugs', '2 h')}
1. Wet the rims. \`seal: plug-joint with goo\`
2. New plugs. \`renew: plugs\`
3. Drive them in. \`install: plugs using mallet\`
4. Leave them. \`cure: plug-joint\`
5. Look. \`inspect: plugs\`
`;

const CAPS = `${head('Caps', '60 min')}
1. Lay the strips. \`lay: clearance\`
2. Set the caps on. \`install: caps\`
3. Oil. \`lube: cap-bolts\`
4. Torque. \`torque: cap-bolts using torque-wrench\`
5. Read. \`measure: clearance\` \`if: clearance is out\`
   1. Again. \`lay: clearance[front]\` \`lock: cap-bolts with pins\`
6. Off and on. \`remove: caps\`
7. On for good. \`install: caps[front]\`
8. And the other. \`install: caps[rear]\`
9. Torque. \`torque: cap-bolts using torque-wrench\`
10. Pin the front. \`lock: cap-bolts[front] with pins\`
11. Pin the rear. \`lock: cap-bolts[rear] with pins\`
`;

const PUMP = `${head('Pump')}
1. Gasket. \`seal: pump-joint\`
2. Pump. \`install: pump\`
3. Nut. \`torque: pump-nut\`
4. Motor. \`install: motor\` \`only: starter\`
5. Fill. \`fill: cooling\`
`;

const BOOK = {shop: SHOP, engine: ENGINE, procedures: {'1.md': PLUGS, '2.md': CAPS, '3.md': PUMP}};

const OPTIONS = {fingerprint: '0123456789abcdef', today: '2026-03-02'};

function made(job?: string, change: Partial<typeof BOOK> = {}): BookLists {
  return bookLists(forJob(book({...BOOK, ...change, job})), OPTIONS);
}

describe('a list', () => {
  const lists = made();
  const byName = <T extends {readonly names: readonly string[]}>(lines: readonly T[]) =>
    new Map(lines.map((line) => [line.names.join(), line]));

  it('of tools has each once, its calibration and every step of every sheet', () => {
    const tools = byName(lists.tools);
    expect([...tools.keys()]).toEqual(['soft mallet', 'torque wrench']);
    expect(tools.get('soft mallet')).toMatchObject({steps: ['1.3', '3.2'], overdue: false});
    expect(tools.get('torque wrench')).toMatchObject({
      serial: 'W-1',
      due: '2026-03-01',
      overdue: true,
      steps: ['2.4', '2.9'],
    });
    const before = bookLists(book(BOOK), {...OPTIONS, today: '2026-03-01'});
    expect(byName(before.tools).get('torque wrench')).toMatchObject({overdue: false});
  });

  it('of consumables says how much, or how often', () => {
    const told = lists.consumables.map(({names, quantities, uses}) => [
      names.join(),
      quantities.map(({text}) => text).join(),
      uses,
    ]);
    expect(told).toEqual([
      ['goo', '', 1],
      // Two places, and one more only if a reading is out.
      ['strip', '2', 3],
      ['engine oil', '', 1],
      ['cotter pins', '4', 3],
      ['paper gasket', '1', 1],
      ['coolant', '7 US qt', 1],
    ]);
    expect(byName(lists.consumables).get('goo')).toMatchObject({hazards: ['skin'], cure: {text: '24 h'}});
  });

  it('of parts counts what is fitted twice once, and new ones apart', () => {
    expect(lists.parts.map(({name, quantity, steps}) => [name, quantity, steps.length])).toEqual([
      ['caps', 2, 3],
      ['pump', 1, 1],
      ['motor', 1, 1],
    ]);
    expect(lists.newParts).toEqual([
      {name: 'plugs', quantity: 2, hazards: ['sharp edges'], steps: ['1.2', '1.3']},
    ]);
  });

  it('of torques has every fastener of the specification, those too that no step tightens', () => {
    expect(lists.torques).toEqual([
      {
        id: 'cap-bolts',
        name: 'cap bolts',
        count: 4,
        thread: '1/2-13 UNC',
        grade: 'SAE 8',
        threads: 'engine oil',
        passes: [
          {text: '30 lbf·ft', also: '41 N·m'},
          {text: '60 lbf·ft', also: '81 N·m'},
          {text: '80 lbf·ft', also: '108 N·m'},
        ],
        torque: {text: '80 lbf·ft', also: '108 N·m'},
        angle: {text: '90°'},
        lock: 'cotter pin',
        stripe: true,
        source: 'Works sheets',
        note: 'oiled threads',
        steps: ['2.4', '2.9'],
      },
      {
        id: 'pump-nut',
        name: 'pump nut',
        count: 1,
        threads: 'dry',
        passes: [],
        torque: {text: 'snug by hand tool'},
        lock: 'none',
        source: 'Example house notes',
        steps: ['3.3'],
      },
      {
        id: 'odd-bolt',
        name: 'odd bolt',
        count: 1,
        passes: [],
        torque: {text: 'not known: ask the shop lead'},
        source: 'Example house notes',
        steps: [],
      },
    ]);
  });

  it('of time has the stretches between cures, what is unknown, and what goes on meanwhile', () => {
    const {time} = lists;
    expect(
      time?.stretches.map(({id, hands, wait, start, end, during}) => [
        id,
        hands?.text,
        wait?.text,
        start.text,
        end.text,
        during.join(),
      ]),
    ).toEqual([
      ['1.1–4', '96 min', '24.0 h', '0 min', '25.6 h', '2'],
      ['1.5', '24 min', undefined, '25.6 h', '26.0 h', ''],
      ['2', '60 min', undefined, '0 min', '60 min', ''],
      ['3', undefined, undefined, '26.0 h', '26.0 h', ''],
    ]);
    expect(time).toMatchObject({
      handsOn: {text: '3.0 h'},
      waits: {text: '24.0 h'},
      earliest: {text: '26.0 h'},
      path: ['1.1–4', '1.5'],
      alone: {finish: {text: '26.0 h'}, order: ['1.1–4', '2', '1.5', '3']},
      untimed: ['Pump'],
      unknownWaits: [],
    });
  });

  it('of time is left out where nobody knows any, and says what cures for nobody knows how long', () => {
    expect(made(undefined, {procedures: {'1.md': PUMP, '2.md': PUMP, '3.md': PUMP}}).time).toBeUndefined();
    const unknown = made(undefined, {shop: SHOP.replace(', cure: {value: 24 h, source: house}', '')});
    expect(unknown.time?.unknownWaits).toEqual(['plug joint']);
  });

  it('is that of the job', () => {
    const own = made('');
    expect(own.parts.map(({name}) => name)).toEqual(['caps', 'pump']);
    expect(own.job).toBe('1');
  });

  it('is of some procedures only, where only they are asked for', () => {
    const some = bookLists(book(BOOK), {...OPTIONS, only: new Set(['2.md'])});
    expect(some.tools.map(({steps}) => steps)).toEqual([['2.4', '2.9']]);
    expect(some.torques.map(({id}) => id)).toEqual(['cap-bolts']);
    expect(some.time).toBeUndefined();
  });
});

describe('the tables', () => {
  const lists = made();

  it('leave out lists that hold nothing, or that nobody asked for', () => {
    expect(listTables(lists).map(({name}) => name)).toEqual([
      'tools',
      'consumables',
      'parts',
      'new-parts',
      'torques',
      'time',
    ]);
    expect(listTables(lists, ['time', 'tools']).map(({name}) => name)).toEqual(['tools', 'time']);
    expect(listTables({...lists, newParts: []}, ['new-parts'])).toEqual([]);
  });

  it('have a value a column', () => {
    for (const {columns, rows} of listTables(lists)) {
      for (const row of rows) expect(row).toHaveLength(columns.length);
    }
  });

  it.each([
    [['4.7', '4.8', '4.9', '4.12', '5.3'], '4 · 7–9, 12; 5 · 3'],
    [['4.J1', '4.J2', '10.3b', '10.3b2'], '4 · J1, J2; 10 · 3b, 3b2'],
    [[], ''],
  ])('tell steps %j by sheet', (steps, expected) => {
    expect(bySheet(steps).replaceAll('\u00A0', ' ')).toBe(expected);
  });
});

test.each([
  ['text', (lists: BookLists) => listsText([lists])],
  ['Markdown', (lists: BookLists) => listsMarkdown([lists])],
  ['HTML', (lists: BookLists) => listsHtml(lists, [], {paper: 'A4'})],
  ['CSV', (lists: BookLists) => listsCsv([lists])],
])('as %s every list is printed, in both systems, with its cautions', (form, print) => {
  const text = print(made('')).replaceAll('\u00A0', ' ');
  for (const piece of ['Tools and gauges', 'Torque table', 'New parts, to order', '2026-03-01, run out'])
    expect(text).toContain(piece);
  expect(text).toMatch(/80 lbf·ft.*108 N·m/s);
  expect(text).toContain('2 · 4, 9');
  if (form === 'CSV') return;
  expect(text).toContain('This is an estimate.');
  expect(text).toContain('The maker’s data come first.');
  expect(text).toContain('No time of work is stated for: Pump.');
  expect(
    print({...made(''), tools: [], consumables: [], parts: [], newParts: [], torques: []}),
  ).not.toContain('Nothing to list');
});

test('as text and Markdown a list of nothing says so', () => {
  const {time: _, ...rest} = made();
  const none = {...rest, tools: [], consumables: [], parts: [], newParts: [], torques: []};
  for (const text of [listsText([none]), listsMarkdown([none]), listsHtml(none, [], {paper: 'A4'})])
    expect(text).toContain('Nothing to list.');
});

describe('comma-separated values', () => {
  /** The grammar of RFC 4180, section 2, read as it stands there. */
  function parsed(text: string): string[][] {
    const records: string[][] = [];
    let rest = text;
    while (rest !== '') {
      const record: string[] = [];
      for (;;) {
        const [whole = '', escaped] = /^"((?:[^"]|"")*)"/.exec(rest) ?? [];
        if (whole === '') throw new Error(`no field at ${rest.slice(0, 20)}`);
        record.push((escaped ?? '').replaceAll('""', '"'));
        rest = rest.slice(whole.length);
        if (!rest.startsWith(',')) break;
        rest = rest.slice(1);
      }
      if (!rest.startsWith('\r\n')) throw new Error(`no line end at ${rest.slice(0, 20)}`);
      rest = rest.slice(2);
      records.push(record);
    }
    return records;
  }

  const lists = made();
  const named = (name: string): BookLists => {
    return {...lists, parts: [{name, quantity: 1, hazards: [], steps: []}]};
  };
  const nameOf = (name: string) => parsed(listsCsv([named(name)], ['parts']).slice(1))[1]?.[3];

  it('are read back by RFC 4180, with as many fields in each record, whatever the names', () => {
    fc.assert(
      fc.property(fc.string({unit: 'binary'}), (name) => {
        const records = parsed(listsCsv([named(name), named('pump')]).slice(1));
        expect(new Set(records.map(({length}) => length)).size).toBe(1);
      }),
    );
  });

  it('say that they are UTF-8', () => {
    expect(listsCsv([made()]).startsWith('\uFEFF"Engine","Job no.","List"')).toBe(true);
  });

  /** The characters of "CSV Injection", OWASP Foundation; payloads in its manner. */
  it.each([
    ["=cmd|' /C calc'!A0", "'=cmd|' /C calc'!A0"],
    ['+1+1', "'+1+1"],
    ['-2+3', "'-2+3"],
    ['@SUM(1+1)', "'@SUM(1+1)"],
    ['\t=1+1', "'=1+1"],
    ['\r=1+1', "'=1+1"],
    ['\n=1+1', "'=1+1"],
    ['＝1+1', "'＝1+1"],
    ['pump";=1+1', 'pump";\'=1+1'],
    ['pump\n=1+1', 'pump =1+1'],
    ['=1+1";=1+2', "'=1+1\";'=1+2"],
    ['1/2 in, "soft"', '1/2 in, "soft"'],
  ])('make no formula of %j', (name, expected) => {
    expect(nameOf(name)).toBe(expected);
  });

  it('start no field with what a spreadsheet takes for a formula, whatever the names', () => {
    fc.assert(
      fc.property(
        fc.string({unit: fc.constantFrom('=', '+', '-', '@', '"', ';', ',', ' ', '\t', '\r', '\n', 'a')}),
        (name) => {
          for (const record of parsed(listsCsv([named(name)]).slice(1)))
            for (const value of record) expect(value).not.toMatch(/(?:^|[;\t\r\n])\s*[=+\-@]/);
        },
      ),
    );
  });
});

test('as HTML they are valid', async () => {
  const validator = new HtmlValidate({extends: ['html-validate:standard']});
  const report = await validator.validateString(listsHtml(made(), [made('')], {paper: 'A4'}));
  expect(report.results.flatMap(({messages}) => messages.map(({message}) => message))).toEqual([]);
});

test('nothing that a book names can become markup', () => {
  const evil = '<script>alert(1)</script>[x](javascript:a)';
  const lists = made();
  const bad = {...lists, engine: evil, parts: [{name: evil, quantity: 1, hazards: [evil], steps: []}]};
  expect(listsHtml(bad, [bad], {paper: 'A4'})).not.toContain('<script');
  expect(listsMarkdown([bad])).not.toMatch(/(?<!\\)<script|(?<!\\)\[x\]\(/);
});
