/** Build reports as PDF, read back with an independent library: text, order, tags, fonts, drawings, and that hostile text stays text. */
import {createHash} from 'node:crypto';
import {beforeAll, describe, expect, test} from 'vitest';
import {type Pdf, type PdfMaker, pdfMaker} from '../../src/host/pdf.js';
import {buildsOf} from '../../src/readings/builds.js';
import {judgeBuild} from '../../src/readings/judge.js';
import {LANGUAGES} from '../../src/readings/languages.js';
import {reportPrint} from '../../src/readings/print.js';
import type {BuildRecord} from '../../src/readings/record.js';
import type {ReadingsReport} from '../../src/readings/report.js';
import {spreadOf} from '../../src/readings/spread.js';
import type {Paper} from '../../src/spec/model.js';
import {outsideOf, PAPER_SIZES, pdfText, readPdf, readPdfDocument, readTagged} from '../help/pdf.js';
import {withEntries} from '../help/record.js';
import {SMALL, sample} from '../readings/small.js';
import {ATTACKS} from '../sheet/hard.js';

let make: PdfMaker;
beforeAll(async () => {
  make = await pdfMaker();
});

function reportOf(...records: readonly BuildRecord[]): ReadingsReport {
  const named = records.map((record, index) => ({file: `${index + 1}.record.json`, record}));
  const builds = buildsOf(named).map((build) => judgeBuild(build, SMALL));
  return {builds, spread: spreadOf(builds)};
}

function pdfOf(report: ReadingsReport, paper: Paper = 'A4'): Pdf {
  const pdf = make(() => reportPrint(report, paper), []);
  if (!pdf.ok) throw new Error(pdf.says);
  return pdf;
}

const ONE = reportOf(
  sample({
    answer: ({key}, value) => ({'7:1': '0.0081', '4:1:front': '0.0020', '1:1': ''})[key] ?? value,
  }),
);
const TWO = reportOf(
  sample({answer: ({key}, value) => ({'7:1': '0.0081'})[key] ?? value}),
  sample({engineNumber: 'X-2', seed: 404}),
);

describe.each(['A4', 'Letter'] as const)('on %s paper', (paper) => {
  test('head and foot stand on every page, and nothing runs off it', async () => {
    const pages = await readPdf(pdfOf(TWO, paper).bytes);
    expect(pages.length).toBeGreaterThan(2);
    pages.forEach((page, at) => {
      expect([page.width, page.height].map(Math.round)).toEqual([...PAPER_SIZES[paper]]);
      for (const words of [`Page ${at + 1} of ${pages.length}`, '2 builds', 'Build report', 'Entries until'])
        expect(page.text).toContain(words);
      expect(outsideOf(page, 20)).toEqual([]);
    });
  });
});

describe('the document', () => {
  test('says what it is, is tagged and has its fonts inside', async () => {
    const about = await readPdfDocument(pdfOf(ONE).bytes);
    expect(about).toMatchObject({
      title: 'Build report: Example engine, engine number X-1',
      language: 'en',
      created: 'D:20260302000000Z',
      tagged: true,
      fontsOutside: [],
    });
    expect(about.packet).toContain('<pdfuaid:part>1</pdfuaid:part>');
    expect(about.bookmarks).toEqual([
      'Engine X-1',
      'Example engine, engine number X-1',
      'Out of limits, or not readable',
      'Near a limit',
      'Missing',
      'Readings',
      'end play: 0.004–0.008 in',
      'main clearance: 0.0020–0.0035 in',
      'main journal: 2.4990–2.5000 in',
      'main bore: 2.5015–2.5025 in',
      'Worked out from sizes',
      'Who witnessed what',
      'Sheets and seals',
    ]);
    expect([...about.roles]).toEqual(
      expect.arrayContaining(['H1', 'H2', 'H3', 'H4', 'Table', 'TH', 'TD', 'Figure', 'L', 'LI']),
    );
    expect(about.fonts.filter((font) => !/^[A-Z]{6}\+DejaVuSans/.test(font))).toEqual([]);
  });

  test('draws the readings with lines, each drawing with words in its place', async () => {
    const {alternatives, pictures} = await readPdfDocument(pdfOf(ONE).bytes);
    expect(pictures).toBe(0);
    expect(alternatives).toEqual(
      ['end play', 'main clearance', 'main journal', 'main bore'].map(
        (fit) => `Drawing of the readings of ${fit}, which the table says in words`,
      ),
    );
  });

  test('is the same bytes every time, whatever was printed before', async () => {
    const digest = ({bytes}: Pdf) => createHash('sha256').update(bytes).digest('hex');
    const first = digest(pdfOf(ONE));
    pdfOf(TWO);
    make = await pdfMaker();
    expect(digest(pdfOf(ONE))).toBe(first);
  });
});

test('is printed in the language that is asked for, and says so', async () => {
  const pdf = make(() => reportPrint(TWO, 'A4', LANGUAGES.de), []);
  if (!pdf.ok) throw new Error(pdf.says);
  expect(await readPdfDocument(pdf.bytes)).toMatchObject({language: 'de', title: 'Montageberichte'});
  const text = await pdfText(pdf.bytes);
  for (const words of [
    'Seite 1 von',
    '2 Montagen',
    'Einträge bis',
    'Streuung über die Montagen',
    'Prüfziffer',
  ])
    expect(text).toContain(words);
  expect(text).not.toMatch(/Build report|Entries until|Spread over|Who witnessed/);
});

test('what is wrong is met first, then the readings, signatures and seals', async () => {
  const said = (await readTagged(pdfOf(ONE).bytes))
    .map(({text}) => text)
    .join(' ')
    .replace(/\s+/g, ' ');
  const order = [
    '32 of 33',
    'end play: 0.0081 in (AB, 2026-03-02 08:50 UTC); over its limits, 0.004–',
    'not answered: Write down engine number',
    'end play: 0.004–0.008 in',
    '0.0081 in out AB, 2026-03-02 08:50',
    'main clearance: 0.0020–0.0035 in',
    'Who witnessed what',
    'crank in shop lead CD',
    'Sheets and seals',
    'A seal is made over each entry',
  ].map((words) => said.indexOf(words));
  expect(order).toEqual([...order].sort((one, other) => one - other));
  expect(order.every((place) => place >= 0)).toBe(true);
});

test('several builds have an overview and the spread of each fit', async () => {
  const text = await pdfText(pdfOf(TWO).bytes);
  for (const words of [
    'Build reports: 2 builds',
    'nothing wrong',
    'Spread over the builds',
    'Deviation',
    'X-2: 0.00',
  ])
    expect(text).toContain(words);
  const {alternatives} = await readPdfDocument(pdfOf(TWO).bytes);
  expect(alternatives.filter((words) => words.includes('in every build'))).toHaveLength(4);
});

test('what is out and accepted says so at the head of its build and in its row', async () => {
  const taken = sample({answer: ({key}, value) => ({'7:1': '0.0081'})[key] ?? value});
  const accepted = withEntries(taken, '01-crank', [
    {at: '2026-03-03T08:00:00Z', by: 'CD', box: '7:1:accepted', value: 'it is the last shim'},
  ]);
  const text = await pdfText(pdfOf(reportOf(accepted, sample({engineNumber: 'X-2', seed: 404}))).bytes);
  expect(text).toMatch(/\d errors?; 1 accepted as it is/);
  expect(text).toContain('0.0081 in out, accepted as it is AB');
});

test('waivers stand there with their reasons', async () => {
  const [build] = ONE.builds;
  if (build === undefined) throw new Error('no build');
  const waivers = [
    {
      sheet: '01-crank',
      step: '3',
      finding: 'barred tool',
      reason: 'the rail is stoned flat',
      approvedBy: 'R. T.',
    },
  ];
  const text = await pdfText(pdfOf({builds: [{...build, waivers}], spread: []}).bytes);
  expect(text).toContain('the rail is stoned flat');
  expect(text).toContain('R. T.');
});

/** Markup that would run or read files, were it read as Typst. */
const MARKUP = [
  '#panic("hit")',
  '#read("/etc/passwd")',
  '"]) #panic("hit") #(["',
  '= Heading <build-1> @build-1',
];

describe('hostile text', () => {
  const folded = (text: string) => text.replace(/\s/g, '');
  const attacks = [...ATTACKS, ...MARKUP];

  test('of a record is printed as it was typed', async () => {
    const report = reportOf(
      ...attacks.map((attack, at) =>
        sample({
          seed: at,
          engineNumber: attack,
          answer: ({kind}, value) => (kind === 'line' ? attack : value),
        }),
      ),
    );
    const text = folded(await pdfText(pdfOf(report).bytes));
    for (const attack of attacks) expect(text).toContain(folded(attack));
  });

  test('an initial that no font has leaves a frame, and is told', async () => {
    const pdf = pdfOf(reportOf(sample({by: () => 'A\u{12000}'})));
    expect(pdf.missing).toEqual(['\u{12000}']);
    expect(await pdfText(pdf.bytes)).toContain('A▯');
  });

  test('a record of one very long word still prints', async () => {
    const pages = await readPdf(pdfOf(reportOf(sample({by: () => 'W'.repeat(400)}))).bytes);
    for (const page of pages) {
      const outside = page.pieces.filter(({text, x, width}) => text.trim() !== '' && x + width > page.width);
      expect(outside).toEqual([]);
    }
  });
});
