/** Every kind of remark: what brings it up, and that a good record brings up none. */
import {describe, expect, test} from 'vitest';
import {askedOfBook} from '../../src/host/asked-of-build.js';
import {judgeBuild} from '../../src/readings/judge.js';
import type {SheetRecord} from '../../src/readings/record.js';
import {REMARK_NAMES, type RemarkName} from '../../src/readings/report.js';
import {withEntry} from '../../src/readings/seal.js';
import {amount} from '../help/amount.js';
import {book} from '../help/example.js';
import {sampleRecord, withEntries} from '../help/record.js';
import {buildOf, judged, SMALL, SMALL_BOOK, sample, told} from './small.js';

const CRANK = '01-crank';
const LATER = '2026-03-03T08:00:00Z';

/** Answers by the key of the box; an empty one leaves it unanswered. */
function answered(answers: Readonly<Record<string, string>>) {
  return sample({answer: ({key}, usual) => answers[key] ?? usual});
}

/** Added after everything else, one minute apart. */
function added(...entries: readonly (readonly [by: string, box: string, value: string, at?: string])[]) {
  return withEntries(
    sample(),
    CRANK,
    entries.map(([by, box, value, at], index) => ({
      at: at ?? `2026-03-03T08:0${index}:00Z`,
      by,
      box,
      value,
    })),
  );
}

/** The first sheet alone, as far as its fourth step, one place passed over. */
function underWay() {
  const record = sample();
  return {
    ...record,
    sheets: record.sheets.slice(0, 1).map((sheet) => {
      const end = sheet.entries.findIndex(({box}) => box === '4:done');
      return sheet.entries
        .slice(0, end + 1)
        .filter(({box}) => box !== '2:1:rear')
        .reduce(withEntry, {...sheet, entries: []});
    }),
  };
}

function sheetChanged(change: (sheet: SheetRecord) => SheetRecord) {
  const record = sample();
  return {...record, sheets: record.sheets.map((sheet, index) => (index === 0 ? change(sheet) : sheet))};
}

test('a good record has nothing to be remarked on', () => {
  const report = judged(sample());
  expect(report.remarks).toEqual([]);
  expect(
    report.sheets.map(({state, asked, answered: done, seals}) => [state, asked === done, seals]),
  ).toEqual([
    ['judged', true, 'follow'],
    ['judged', true, 'follow'],
  ]);
  expect(report.readings.map(({state}) => state)).toEqual(Array(7).fill('in'));
  expect(report.signatures.map(({by, state}) => [by, state])).toEqual(Array(3).fill(['CD', 'signed']));
});

const REWORKED: Readonly<Record<string, string>> = {
  '4:1:front': '0.0041',
};

/** The second round of the loop, and what its readings say. */
function secondRound(record: ReturnType<typeof sample>, ...readings: readonly (readonly [string, string])[]) {
  const ticks = ['4:done', '5:done'].map((key) => [`${key}@2`, 'done'] as const);
  return withEntries(
    record,
    CRANK,
    [...ticks, ...readings].map(([box, value]) => ({at: LATER, by: 'AB', box, value})),
  );
}

const BACK = sample({
  answer: ({key, step}, usual) => REWORKED[key] ?? (/^5/.test(step) ? 'done' : usual),
});

/** In each the remarks of the whole record, and what the message of the first must say. */
const CASES: readonly {
  readonly name: RemarkName;
  readonly record: ReturnType<typeof sample>;
  readonly remarks: readonly string[];
  readonly says: string;
}[] = [
  {
    name: 'out',
    record: answered({'7:1': '0.0081'}),
    remarks: [`out ${CRANK}/7`, `signed-over-out ${CRANK}/8`, `signed-over-out ${CRANK}`],
    says: 'end play: 0.0081 in (AB, 2026-03-02 08:50 UTC); over its limits, 0.004–0.008 in',
  },
  {
    name: 'near',
    // Half the resolution of the indicator, 0.0005 in, lies between the reading and what it would prove.
    record: answered({'7:1': '0.0076'}),
    remarks: [`near ${CRANK}/7`],
    says: 'end play: 0.0076 in (AB, 2026-03-02 08:50 UTC) is within 0.004–0.008 in by less than the gauge may be out, ±0.0005 in',
  },
  {
    name: 'no-initials',
    record: added(['it will bed in', '4:1:rear', '0.0026'], ['it will bed in', '4:1:front', '0.0026']),
    remarks: [`no-initials ${CRANK}`],
    says: '“it will bed in” stands where initials must (one to five letters, no blanks) at step 4',
  },
  {
    name: 'unreadable',
    record: answered({'7:1': 'a bit tight'}),
    remarks: [`unreadable ${CRANK}/7`],
    says: 'end play: "a bit tight" is no number',
  },
  {
    name: 'missing',
    record: answered({'1:1': '', '4:1:front': ''}),
    remarks: [`missing ${CRANK}/1`, `missing ${CRANK}/4`],
    says: 'not answered: Write down engine number',
  },
  {
    name: 'sheet-missing',
    record: {...sample(), sheets: sample().sheets.slice(1)},
    remarks: [`sheet-missing ${CRANK}`],
    says: 'there is no record of this sheet',
  },
  {
    name: 'not-begun',
    record: {...sample(), sheets: sample().sheets.slice(0, 1)},
    remarks: ['not-begun 02-close'],
    says: 'not begun',
  },
  {
    name: 'still-open',
    record: underWay(),
    remarks: [`still-open ${CRANK}/2`, `still-open ${CRANK}`, 'not-begun 02-close'],
    says: 'passed over, not answered: Measure main journal, rear',
  },
  {
    name: 'works-out-wrong',
    record: answered({'2:1:front': '2.4991', '3:1:front': '2.5024'}),
    remarks: [],
    says: '',
  },
  {
    name: 'same-hand',
    record: sample({
      by: ({kind, key}, usual) => (kind === 'hold' && key !== 'closing:checked' ? 'a.b.' : usual),
    }),
    remarks: [`same-hand ${CRANK}/8`],
    says: 'crank in: a.b. signed what a.b. did at steps 6, 7, 8; a hold point takes a second person',
  },
  {
    name: 'signed-early',
    record: added(['AB', '7:1', ''], ['AB', '7:1', '0.0061']),
    remarks: [`signed-early ${CRANK}/8`],
    says: 'crank in: signed by CD on 2026-03-02 08:56 UTC before everything was there at step 7',
  },
  {
    name: 'written-over',
    record: signedAgain(
      withEntries(answered({'4:1:front': '0.0041'}), CRANK, [
        {at: LATER, by: 'AB', box: '4:1:front', value: '0.0031'},
      ]),
    ),
    remarks: [`written-over ${CRANK}/4`],
    says: 'main clearance, front: 0.0041 in, which is out of its limits, was written over with 0.0031 in (AB, 2026-03-03 08:00 UTC)',
  },
  {
    name: 'reworked',
    record: signedAgain(secondRound(BACK, ['4:1:front@2', '0.0031'])),
    remarks: [`reworked ${CRANK}/4`],
    says: 'main clearance, front: was 0.0041 in (AB, 2026-03-02 08:26 UTC), and 0.0031 in when read again',
  },
  {
    name: 'signed-over-out',
    record: added(['AB', '7:1', '0.0081'], ['CD', '8:hold:crank-in', 'done'], ['AB', '7:1', '0.0061']),
    remarks: [`signed-over-out ${CRANK}/8`, `signed-early ${CRANK}/8`, `written-over ${CRANK}/7`],
    says: 'crank in: signed by CD on 2026-03-03 08:01 UTC over what is out of its limits: step 7 (Measure end play)',
  },
  {
    name: 'accepted',
    record: added(
      ['AB', '7:1', '0.0081'],
      ['CD', '7:1:accepted', 'it is the last shim'],
      ['CD', '8:hold:crank-in', 'done'],
      ['CD', 'closing:checked', 'done'],
    ),
    remarks: [`accepted ${CRANK}/7`],
    says: 'end play: 0.0081 in (AB, 2026-03-03 08:00 UTC); over its limits, 0.004–0.008 in; accepted by CD, 2026-03-03 08:01 UTC, because “it is the last shim”',
  },
  {
    name: 'signed-ahead',
    record: added(['CD', '8:hold:crank-in', 'the gauge is away'], ['AB', '7:1', '0.0061']),
    remarks: [`signed-ahead ${CRANK}/8`],
    says: 'before everything was there at step 7, because “the gauge is away”',
  },
  {
    name: 'gauge-due',
    record: added(['AB', '2:1:rear', '2.4995', '2027-01-04T08:00:00Z']),
    remarks: [`gauge-due ${CRANK}/2`],
    says: 'main journal was read on 2027-01-04 with micrometers, whose calibration ran out on 2026-12-31',
  },
  {
    name: 'clock-back',
    record: added(['AB', '1:done', 'done', '2026-03-02T07:00:00Z']),
    remarks: [`clock-back ${CRANK}`],
    says: 'the clock goes back once: entry 29 is of 2026-03-02 07:00 UTC, the one before it of 2026-03-02 09:08 UTC',
  },
  {
    name: 'out-of-order',
    record: inOtherOrder(['3:1:front', '3:1:rear', '3:done'], '7:1'),
    remarks: [`out-of-order ${CRANK}`],
    says: 'entered out of the order of the sheet: step 3 (2026-03-02 08:',
  },
  {
    name: 'seal-broken',
    record: sheetChanged((sheet) => ({
      ...sheet,
      entries: sheet.entries.map((entry) => (entry.box === '7:1' ? {...entry, value: '0.0055'} : entry)),
    })),
    remarks: [`seal-broken ${CRANK}`],
    says: 'the seal of entry 19 (7:1, 2026-03-02 08:50 UTC) does not fit',
  },
  {
    name: 'book-changed',
    record: sampleRecord(
      SMALL.sheets.map(({form}, index) => (index === 0 ? {...form, fingerprint: 'ab'.repeat(32)} : form)),
      {seed: 1},
    ),
    remarks: [`book-changed ${CRANK}`],
    says: 'the book has changed since this sheet was made (sheet ababababab, book now ',
  },
  {
    name: 'sheet-unknown',
    record: withSheet('99-other'),
    remarks: ['sheet-unknown 99-other'],
    says: 'the book has no procedure of this name',
  },
  {
    name: 'box-unknown',
    record: added(['AB', '77:done', 'done']),
    remarks: [`box-unknown ${CRANK}`],
    says: 'the sheet has no box 77:done',
  },
];

/** The sign-off given anew after everything else. */
function signedAgain(record: ReturnType<typeof sample>) {
  return withEntries(record, CRANK, [{at: LATER, by: 'CD', box: 'closing:checked', value: 'done'}]);
}

/** The entries of some boxes put before that of another one, sealed as if they had come like this. */
function inOtherOrder(boxes: readonly string[], before: string) {
  return sheetChanged((sheet) => {
    const moved = sheet.entries.filter(({box}) => boxes.includes(box));
    const rest = sheet.entries.filter(({box}) => !boxes.includes(box));
    const place = rest.findIndex(({box}) => box === before);
    const order = [...rest.slice(0, place), ...moved, ...rest.slice(place)];
    const times = sheet.entries.map(({at}) => at);
    return order
      .map(({by, box, value}, index) => ({at: times[index] ?? LATER, by, box, value}))
      .reduce(withEntry, {...sheet, entries: []});
  });
}

function withSheet(procedure: string) {
  const record = sample();
  const [sheet] = record.sheets;
  if (sheet === undefined) throw new Error('no sheet');
  return {...record, sheets: [...record.sheets, {...sheet, procedure, entries: []}]};
}

test('a build that is under way has nothing wrong, and its open places are told from missing ones', () => {
  const report = judged(underWay());
  expect(report.remarks.filter(({severity}) => severity !== 'information')).toEqual([]);
  expect(report.sheets.map(({state}) => state)).toEqual(['judged', 'not-begun']);
  expect(report.readings.filter(({state}) => state === 'open').map(({item}) => item)).toEqual([
    'journal-size',
    'end-play',
  ]);
  expect(report.signatures.map(({state}) => state)).toEqual(['open', 'open']);
  expect(report.remarks.map(({message}) => message)).toEqual([
    'passed over, not answered: Measure main journal, rear',
    expect.stringMatching(/^\d+ boxes are still to be answered from step 6 on$/),
    'not begun',
  ]);
});

test('once the last sheet is begun, what the others lack is missing', () => {
  const [first] = underWay().sheets;
  const [, last] = sample().sheets;
  if (first === undefined || last === undefined) throw new Error('no sheets');
  const report = judged({...sample(), sheets: [first, {...last, entries: last.entries.slice(0, 1)}]});
  expect(
    report.remarks.some(({name, sheet, step}) => name === 'missing' && sheet === CRANK && step === '2'),
  ).toBe(true);
  expect(report.remarks.filter(({name}) => name === 'still-open').map(({sheet}) => sheet)).toEqual([
    '02-close',
  ]);
});

describe('a record with one thing wrong has that remark and no other', () => {
  test.each(CASES.filter(({remarks}) => remarks.length > 0))('$name', ({name, record, remarks, says}) => {
    const report = judged(record);
    expect(told(report.remarks)).toEqual(remarks);
    expect(report.remarks[0]?.message).toContain(says);
    expect(report.remarks[0]?.name).toBe(name);
  });
});

test('clearance worked out from journal and bore', () => {
  // 2.5024 less 2.4991 is 0.0033, and 2.5025 less 2.4990 is 0.0035; one tenth more is out.
  const well = judged(
    answered({'2:1:front': '2.4991', '3:1:front': '2.5024', '2:1:rear': '2.4990', '3:1:rear': '2.5025'}),
  );
  expect(well.worked.map(({place, smallest, largest, state}) => [place, smallest, largest, state])).toEqual([
    ['front', 0.0033, 0.0033, 'in'],
    ['rear', 0.0035, 0.0035, 'in'],
  ]);
  expect(told(well.remarks)).toEqual([
    // Both lie right at a limit of their size.
    'near 01-crank/2',
    'near 01-crank/3',
  ]);
  const loose = judged(answered({'2:1:front': '2.4980', '3:1:front': '2.5020'}));
  expect(told(loose.remarks)).toEqual([
    'out 01-crank/2',
    'signed-over-out 01-crank',
    'works-out-wrong 01-crank/4',
  ]);
  expect(loose.remarks[2]?.message).toMatch(
    /^main clearance, front: works out at 0\.0040 in \(main bore 2\.5020 in less main journal 2\.4980 in\); limits 0\.0020–0\.0035 in, and 0\.002\d+ in was read$/,
  );
});

test('readings that are no sizes work nothing out', async () => {
  const limits = (fit: string, value: string) => {
    const item = SMALL_BOOK.spec.items.get(fit);
    if (item?.kind !== 'fit' || item.limits === undefined) throw new Error('no such fit');
    const items = new Map([
      ...SMALL_BOOK.spec.items,
      [fit, {...item, limits: {...item.limits, value: amount(value, 'length')}}],
    ]);
    return {...SMALL_BOOK, spec: {...SMALL_BOOK.spec, items}};
  };
  for (const taper of ['max 0.0010 in', '0.0005–0.0010 in', '1.0–1.1 in', 'min 2.0 in']) {
    const asked = await askedOfBook(limits('journal-size', taper));
    expect(judged(sample({}, asked), {asked}).worked).toEqual([]);
  }
  const asked = await askedOfBook(limits('journal-size', '2.48–2.49 in'));
  expect(judged(sample({}, asked), {asked}).worked).toHaveLength(2);
});

test('records of one sheet that go different ways', () => {
  const one = added(['AB', '1:done', 'done']);
  const other = added(['EF', '2:done', 'done']);
  const report = judgeBuild(buildOf(one, other), SMALL);
  expect(told(report.remarks)).toEqual(['records-differ 01-crank']);
  expect(report.remarks[0]?.message).toContain('1.record.json and 2.record.json');
  // An earlier export of the same sheet says nothing against the later one.
  expect(judgeBuild(buildOf(sample(), one), SMALL).remarks).toEqual([]);
  expect(judgeBuild(buildOf(one, sample()), SMALL).sheets[0]?.entries).toBe(29);
  // Nor do two records that one tablet put together.
  const both = withEntries(other, CRANK, [
    {at: '2026-03-03T08:00:00Z', by: 'AB', box: '1:done', value: 'done'},
  ]);
  expect(judgeBuild(buildOf(one, other, both), SMALL).remarks).toEqual([]);
});

test('a stamped number that is not the one of the job', async () => {
  const asked = {
    ...SMALL,
    sheets: SMALL.sheets.map((sheet) => ({
      ...sheet,
      form: {
        ...sheet.form,
        boxes: sheet.form.boxes.map((box) => (box.kind === 'line' ? {...box, expected: 'X 100'} : box)),
      },
    })),
  };
  expect(judged(sample({}, asked), {asked}).remarks).toEqual([]);
  const same = sample({answer: (box, usual) => (box.kind === 'line' ? 'x100' : usual)}, asked);
  expect(judged(same, {asked}).remarks).toEqual([]);
  const other = sample({answer: (box, usual) => (box.kind === 'line' ? 'X 101' : usual)}, asked);
  expect(judged(other, {asked}).remarks.map(({name, message}) => [name, message])).toEqual([
    ['mark-differs', 'Write down engine number: "X 101" was written down (AB), and the job says "X 100"'],
  ]);
});

test('there is a case for every kind of remark', () => {
  const tried = new Set<string>([
    ...CASES.map(({name}) => name),
    'records-differ',
    'mark-differs',
    'cure-short',
  ]);
  expect(REMARK_NAMES.filter((name) => !tried.has(name))).toEqual([]);
});

describe('branches', () => {
  test('a reading that is out calls for its rework, and only then', () => {
    const out = judged(answered({'4:1:rear': '0.0050'}));
    expect(told(out.remarks)).toEqual([
      'out 01-crank/4',
      'signed-over-out 01-crank',
      'missing 01-crank/5',
      'missing 01-crank/5a',
      'missing 01-crank/5b',
    ]);
    expect(judged(sample()).sheets[0]?.asked).toBe(28);
    expect(out.sheets[0]?.asked).toBe(33);
  });

  test('going back asks for the next round, but not for places that were within', () => {
    const begun = judged(BACK);
    expect(told(begun.remarks)).toEqual(['out 01-crank/4', 'signed-over-out 01-crank', 'missing 01-crank/4']);
    expect(begun.remarks[2]?.message).toBe('not answered: Read the clearance; Measure main clearance, front');
    const done = signedAgain(secondRound(BACK, ['4:1:front@2', '0.0031']));
    expect(told(judged(done).remarks)).toEqual(['reworked 01-crank/4']);
    const places = judged(done).readings.map(({place, rounds}) => [place, rounds.map(({value}) => value)]);
    expect(places).toContainEqual(['front', ['0.0041', '0.0031']]);
  });

  test('a third round is one more', () => {
    const twice = secondRound(
      BACK,
      ['4:1:front@2', '0.0042'],
      ['5a:done@2', 'done'],
      ['5a:1:front@2', 'done'],
      ['5b:done@2', 'done'],
    );
    const report = judged(
      withEntries(
        twice,
        CRANK,
        [
          ['4:1:front@3', '0.0030'],
          ['4:done@3', 'done'],
          ['5:done@3', 'done'],
        ].map(([box = '', value = '']) => ({at: LATER, by: 'AB', box, value})),
      ),
    );
    expect(told(report.remarks)).toEqual(['signed-over-out 01-crank', 'reworked 01-crank/4']);
    expect(report.readings.find(({rounds}) => rounds.length === 3)?.rounds.map(({round}) => round)).toEqual([
      1, 2, 3,
    ]);
  });

  test('a record from before there were rounds is read as it was written', () => {
    const old = withEntries(BACK, CRANK, [
      {at: LATER, by: 'AB', box: '4:1:front:again', value: '0.0031'},
      {at: LATER, by: 'AB', box: '4:1:rear:again', value: '0.0029'},
    ]);
    expect(told(judged(signedAgain(old)).remarks)).toEqual(['reworked 01-crank/4']);
  });

  test.each([
    ['over, then within', ['0.25', '0.15'], ['3', '3a']],
    ['under, then within', ['0.05', '0.15'], ['2', '2a']],
    ['within at once', ['0.15'], []],
    ['over, under, then within', ['0.25', '0.05', '0.15'], ['3', '3a', '2@2', '2a@2']],
    ['under, over, then within', ['0.05', '0.25', '0.15'], ['2', '2a', '3@2', '3a@2']],
    ['over twice', ['0.25', '0.22', '0.15'], ['3', '3a', '3@2', '3a@2']],
  ])('the heading of a branch is struck with it: %s', async (_, values, followed) => {
    const steps = `
1. Read it. \`measure: play\` \`step: read\`
2. Too tight: \`if: play is under\`
   1. Open it up. \`repeat: read\`
3. Too loose: \`if: play is over\`
   1. Close it up. \`repeat: read\`
4. Show it. \`witness: shown\`
`;
    const engine = `
parts: {block: {given: true}}
fits:
  play: {between: [block], limits: 0.1–0.2 in, rework: true, when: {installed: [block]}}
hold-points: {shown: {}}
`;
    const asked = await askedOfBook(book({engine, procedures: {'p.md': steps}}));
    const keys = values.flatMap((value, at) => [
      [at === 0 ? '1:1' : `1:1@${at + 1}`, value] as const,
      [at === 0 ? '1:done' : `1:done@${at + 1}`, 'done'] as const,
    ]);
    const ticks = followed.map((step) => [step.replace(/(@\d)?$/, ':done$1'), 'done'] as const);
    const usual = sample({answer: ({key}, said) => (/^[14]:|^closing/.test(key) ? '' : said)}, asked);
    const last = [
      ['4:done'],
      ['4:hold:shown', 'CD'],
      ['closing:complete'],
      ['closing:built'],
      ['closing:checked', 'CD'],
    ];
    const said = [
      ...[...keys, ...ticks].map(([box, value]) => ({at: LATER, by: 'AB', box, value})),
      ...last.map(([box = '', by = 'AB']) => ({at: LATER, by, box, value: 'done'})),
    ];
    const whole = withEntries(usual, 'p', said);
    const names = told(judged(whole, {asked}).remarks).filter((one) => !one.startsWith('reworked'));
    expect(names).toEqual([]);
    // Every tick of the way that was gone is asked for: one left out is missed.
    for (const [box] of ticks) {
      const less = withEntries(
        usual,
        'p',
        said.filter((one) => one.box !== box),
      );
      expect(judged(less, {asked}).remarks.map(({name}) => name)).not.toEqual(
        judged(whole, {asked}).remarks.map(({name}) => name),
      );
    }
  });

  test('a hold point in a branch that is not called for is not missed', () => {
    const engine = `
parts: {block: {given: true}}
fits:
  play: {between: [block], limits: 0.1–0.2 in, when: {installed: [block]}}
hold-points: {shown: {}, kept: {}}
`;
    const steps = `
1. Read it. \`measure: play\`
2. Where it is out: \`if: play is out\`
   1. Show it. \`witness: shown\`
3. Where it is in: \`if: play is in\`
   1. Say so. \`witness: kept\`
`;
    const branched = book({engine, procedures: {'p.md': steps}});
    return askedOfBook(branched).then((asked) => {
      const states = (value: string) =>
        judged(sample({answer: ({key}, usual) => (key === '1:1' ? value : usual)}, asked), {
          asked,
        }).signatures.map(({item, state}) => [item, state]);
      const [not, missing, signed] = ['not-called-for', 'missing', 'signed'];
      expect(states('0.15')).toEqual([
        ['shown', not],
        ['kept', missing],
        ['closing', signed],
      ]);
      expect(states('0.25')).toEqual([
        ['shown', missing],
        ['kept', not],
        ['closing', signed],
      ]);
      expect(states('')).toEqual([
        ['shown', not],
        ['kept', not],
        ['closing', signed],
      ]);
    });
  });
});

describe('less than nought', () => {
  const made = (limits: string) =>
    book({
      shop: 'shop: {name: Example Works, units: metric}\nsources: {house: {title: notes, note: invented}}\n',
      engine: `fits: {run-out: {limits: ${limits}}}\n`,
      procedures: {'p.md': '\n1. Read it. `measure: run-out`\n'},
    });

  test.each([
    ['max 0.03 mm', '-0.01', 'unreadable', ['unreadable p/1']],
    ['max 0.03 mm', '−0.05', 'unreadable', ['unreadable p/1']],
    ['max 0.03 mm', '0', 'in', []],
    ['max 0.03 mm', '0.05', 'out', ['out p/1', 'signed-over-out p']],
    ['-0.02–0.03 mm', '-0.01', 'in', []],
  ])('of %s: %s is %s', async (limits, value, state, names) => {
    const asked = await askedOfBook(made(limits));
    const answer = ({key}: {readonly key: string}, usual: string) => (key === '1:1' ? value : usual);
    const {remarks, readings} = judged(sample({answer}, asked), {asked});
    expect(readings[0]?.state).toBe(state);
    expect(told(remarks)).toEqual(names);
    if (state !== 'unreadable') return;
    expect(remarks[0]?.message).toMatch(
      /^run out: [−-]0\.0\d mm is less than nought, which it cannot be \(AB, /,
    );
  });
});

describe('what cures', () => {
  const made = book({
    shop: `
shop: {name: Example Works}
sources: {house: {title: notes, note: invented}}
consumables: {goo: {use: sealant, cure: {value: 4 h, source: house}}}
`,
    engine: 'joints: {gap: {seal: [goo]}}\n',
    procedures: {'p.md': '\n1. Leave it. `cure: gap`\n'},
  });

  test.each([
    ['2026-03-02 08:00', '2026-03-02 12:00', undefined],
    ['08:00', '2026-03-02 12:30', undefined],
    ['2026-03-02 17:00', '2026-03-02 17:10', 'cure-short p/1'],
    ['2026-03-02 17:00', '2026-03-02 16:00', 'cure-short p/1'],
    ['2026-03-02 17:00', 'X', 'unreadable p/1'],
  ])('from %s to %s', async (started, finished, name) => {
    const asked = await askedOfBook(made);
    const answer = ({key}: {readonly key: string}, usual: string) =>
      ({'1:1:started': started, '1:1:finished': finished})[key] ?? usual;
    const {remarks} = judged(sample({answer}, asked), {asked});
    expect(told(remarks)).toEqual(name === undefined ? [] : [name]);
    if (finished.endsWith('17:10')) {
      expect(remarks[0]?.message).toBe(
        'Cure gap, Finished (date, time): 2026-03-02 17:10 by the clock on the wall (AB) is 10 min after it started (2026-03-02 17:00); at least 4 h is asked for',
      );
    }
  });
});

describe('a book that has changed since', () => {
  const changed = {...SMALL_BOOK, procedures: SMALL_BOOK.procedures.slice(0, 1)};

  test('is judged no further, unless asked', async () => {
    const asked = await askedOfBook(changed);
    const record = {...answered({'7:1': '0.0099'}), sheets: answered({'7:1': '0.0099'}).sheets.slice(0, 1)};
    const plain = judged(record, {asked});
    expect(told(plain.remarks)).toEqual(['book-changed 01-crank']);
    expect(plain.readings).toEqual([]);
    const anyway = judged(record, {asked, evenIfChanged: true});
    expect(told(anyway.remarks)).toEqual([
      'out 01-crank/7',
      'signed-over-out 01-crank/8',
      'signed-over-out 01-crank',
      'book-changed 01-crank',
    ]);
    expect(anyway.remarks[3]?.message).toContain('as you asked');
  });

  test('says of seals what there is to say', () => {
    const stale = sampleRecord(
      SMALL.sheets.map(({form}) => ({...form, fingerprint: 'cd'.repeat(32)})),
      {seed: 2},
    );
    const [first, ...rest] = stale.sheets;
    if (first === undefined) throw new Error('no sheet');
    const cut = {...first, entries: first.entries.slice(1)};
    const report = judged({...stale, sheets: [cut, ...rest]});
    expect(told(report.remarks)).toEqual([
      'seal-broken 01-crank',
      'book-changed 01-crank',
      'book-changed 02-close',
    ]);
  });
});

test('an answer taken back leaves the box open, and its history stays', () => {
  const report = judged(added(['AB', '7:1', '']));
  expect(told(report.remarks)).toEqual(['missing 01-crank/7', 'signed-early 01-crank/8']);
  const corrected = judged(added(['AB', '2:1:front', '2.4994']));
  expect(corrected.readings[0]?.rounds).toMatchObject([
    {value: '2.4994', before: [{value: '2.4996', by: 'AB'}]},
  ]);
});

test('a sheet sealed anew after a change goes unnoticed: seals are no proof', () => {
  const record = sheetChanged((sheet) => {
    const entries = sheet.entries.map(({seal: _, ...entry}) =>
      entry.box === '7:1' ? {...entry, value: '0.0055'} : entry,
    );
    return entries.reduce(withEntry, {...sheet, entries: []});
  });
  expect(judged(record).remarks).toEqual([]);
});
