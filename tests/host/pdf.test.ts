/** Sheets as PDF, read back with an independent library: text, order, tags, fonts, metadata, and that hostile text stays text. */
import {createHash} from 'node:crypto';
import {beforeAll, describe, expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {type Pdf, type PdfMaker, pdfMaker} from '../../src/host/pdf.js';
import {compileCover} from '../../src/sheet/cover.js';
import {GERMAN} from '../../src/sheet/german.js';
import type {Sheet, SheetBlock} from '../../src/sheet/model.js';
import {sheetPrint} from '../../src/sheet/print.js';
import {coverPrint} from '../../src/sheet/print-cover.js';
import {ENGLISH} from '../../src/sheet/words.js';
import type {Paper} from '../../src/spec/model.js';
import {book} from '../help/example.js';
import {
  outsideOf,
  PAPER_SIZES,
  type PdfPage,
  pageWith,
  pdfText,
  readPdf,
  readPdfDocument,
  readTagged,
} from '../help/pdf.js';
import {FINGERPRINT, firstSheet} from '../help/sheet.js';
import {ATTACKS, hardBook, hostileBook} from '../sheet/hard.js';
import {BRANCH, ENDINGS, LENGTHS, OPENINGS, ofLength, withBranch} from '../sheet/of-length.js';
import {trialBook} from '../sheet/trial.js';

let make: PdfMaker;
beforeAll(async () => {
  make = await pdfMaker();
});

const OPTIONS = {fingerprint: FINGERPRINT};

function compiled(of: Book, paper: Paper = 'A4'): Sheet {
  return firstSheet(of, {paper});
}

function sheetPdf(sheet: Sheet, pictures: readonly string[] = []): Pdf {
  return whole(make((pathOf) => sheetPrint(sheet, pathOf), pictures));
}

function coverPdf(of: Book): Pdf {
  return whole(make(() => coverPrint(compileCover(of, OPTIONS)), []));
}

function whole(pdf: ReturnType<PdfMaker>): Pdf {
  if (!pdf.ok) throw new Error(pdf.says);
  return pdf;
}

describe.each(['A4', 'Letter'] as const)('on %s paper', (paper) => {
  let trial: PdfPage[];
  let hard: PdfPage[];
  beforeAll(async () => {
    trial = await readPdf(sheetPdf(compiled(trialBook, paper)).bytes);
    hard = await readPdf(sheetPdf(compiled(hardBook, paper)).bytes);
  });

  test('head and foot stand on every page, and nothing runs off it', () => {
    for (const [name, pages] of [
      ['C', trial],
      ['A', hard],
    ] as const) {
      pages.forEach((page, at) => {
        expect([page.width, page.height].map(Math.round)).toEqual([...PAPER_SIZES[paper]]);
        for (const words of [
          `Page ${at + 1} of ${pages.length}`,
          `rev. ${name}`,
          '0123456789',
          'Engine no.',
          'Initials:',
        ])
          expect(page.text).toContain(words);
        expect(outsideOf(page, 20)).toEqual([]);
      });
    }
  });

  test('every step stands there once, in order', () => {
    const text = hard.map((page) => page.text).join(' ');
    const places = Array.from({length: 46}, (_, at) => text.indexOf(`first${at + 1}x`));
    expect(places.filter((place) => place < 0)).toEqual([]);
    expect(places).toEqual([...places].sort((one, other) => one - other));
    const numbers = trialBook.procedures[0]?.steps.map(({number}) => number) ?? [];
    const words = new Set(trial.flatMap(({pieces}) => pieces.map(({text: piece}) => piece)));
    expect(numbers.filter((number) => !words.has(number))).toEqual([]);
  });

  test('what must be read together stands on one page', () => {
    const pageOf = (word: string) => hard.findIndex(({text}) => text.includes(word));
    for (let step = 1; step <= 46; step++) {
      const page = pageOf(`first${step}x`);
      expect(pageOf(`last${step}x`), `the end of step ${step}`).toBe(page);
      const warned = pageOf(`warn${step}x`);
      if (warned >= 0) expect(warned, `the caution of step ${step}`).toBe(page);
    }
    expect(pageOf('Witnessed by')).toBe(pageOf('first44x'));
  });

  test('the heads of the table come again on every page that its steps run over to', () => {
    const withSteps = hard.filter(({text}) => /first\d+x/.test(text));
    expect(withSteps.length).toBeGreaterThan(5);
    for (const {text} of withSteps) expect(text).toContain('Values and readings');
  });
});

describe('the sign-off stands never alone', () => {
  test.each(ENDINGS)('%s', async (_, more, word) => {
    const pages = new Set<number>();
    for (const steps of LENGTHS) {
      const {bytes} = sheetPdf(compiled(ofLength(steps, more)));
      const page = await pageWith(bytes, 'Sign-off');
      expect(await pageWith(bytes, word(steps)), `${steps} steps`).toBe(page);
      pages.add(page);
    }
    expect(pages.size).toBeGreaterThan(1);
  });
});

describe('a step that opens a branch', () => {
  test.each([1, 3, 60])('stands with its condition and the first of its %i steps', async (subs) => {
    const on = new Set<number>();
    for (const steps of OPENINGS) {
      const pages = await readPdf(sheetPdf(compiled(withBranch(steps, subs))).bytes);
      const [page, ...others] = BRANCH.map((word) => pages.findIndex(({text}) => text.includes(word)));
      expect(others, `${steps} steps`).toEqual([page, page]);
      on.add(page ?? -1);
    }
    expect(on.size).toBeGreaterThan(1);
  });

  test('is let go where the first below it is taller than a page', async () => {
    const pages = await readPdf(sheetPdf(compiled(withBranch(10, 2, true))).bytes);
    const text = pages.map((page) => page.text).join(' ');
    // The foot of a page stands inside of some.
    expect(text.split('Rub it down with care.').length).toBeGreaterThan(390);
    for (const word of [...BRANCH, 'sub2x', 'Sign-off']) expect(text).toContain(word);
    expect(pages.length).toBeLessThan(12);
  });
});

// Of many words the first are bold, as in HTML: what goes back, not how. What is bold has a tag of its own.
test('the way back says in bold what to do, and no more', async () => {
  const {bytes} = sheetPdf(compiled(trialBook));
  const texts = await readTagged(bytes);
  const boldOf = (words: string) =>
    texts.filter(({text}) => text.includes(words)).map(({roles}) => roles.at(-1) === 'Span');
  expect(boldOf('Go back')).toContain(true);
  const told = boldOf('tick, read and initial');
  expect(told.length).toBeGreaterThan(0);
  expect(told).not.toContain(true);
});

describe('the document', () => {
  test('says what it is, is tagged and has its fonts inside', async () => {
    const about = await readPdfDocument(sheetPdf(compiled(trialBook)).bytes);
    expect(about).toMatchObject({
      title: 'Camshaft, crankshaft and head · rev. C · Example engine',
      author: 'J. Marsh',
      language: 'en',
      created: 'D:20260514000000Z',
      tagged: true,
      fontsOutside: [],
    });
    expect(about.packet).toContain('<pdfuaid:part>1</pdfuaid:part>');
    expect(about.bookmarks).toEqual([
      'Camshaft, crankshaft and head',
      'Read first',
      'Before you start',
      'Tools and gauges',
      'Consumables',
      'Parts',
      'New parts, every time',
      'What the places are called',
      'Camshaft',
      'Crankshaft and main bearings',
      'Head, sump and filling',
      'Waivers',
      'Sign-off',
    ]);
    expect([...about.roles]).toEqual(
      expect.arrayContaining(['H1', 'H2', 'H3', 'Table', 'TH', 'TD', 'Figure']),
    );
    expect(about.fonts.length).toBeGreaterThanOrEqual(3);
    expect(about.fonts.filter((font) => !/^[A-Z]{6}\+DejaVuSans/.test(font))).toEqual([]);
    expect(about.alternatives.join()).toContain('1 inlet 3, 2 exhaust 3');
  });

  test.each([
    ['a sheet', () => sheetPdf(compiled(trialBook))],
    ['a sheet of hard cases', () => sheetPdf(compiled(hardBook))],
    ['a cover', () => coverPdf(trialBook)],
  ])('%s is read aloud in the order in which it is drawn', async (_, made) => {
    const texts = await readTagged(made().bytes);
    const astray = texts.filter(({page, drawn}, at) => {
      const before = texts[at - 1];
      return before?.page === page && before.drawn > drawn;
    });
    expect(texts.length).toBeGreaterThan(20);
    expect(astray).toEqual([]);
  });

  test('the number of a step is read before its text, and a pass before its value', async () => {
    const said = (await readTagged(sheetPdf(compiled(trialBook)).bytes)).map(({text}) => text.trim());
    const at = said.indexOf('Bring the main cap bolts up in three passes.');
    expect(said[at - 1]).toBe('9');
    const pass = said.indexOf('Pass 1', at);
    expect(said.slice(pass, pass + 3)).toEqual(['Pass 1', '30 lbf·ft', '(41 N·m)']);
  });

  test('is the same bytes every time, whatever was printed before', async () => {
    const digest = ({bytes}: Pdf) => createHash('sha256').update(bytes).digest('hex');
    const first = [digest(sheetPdf(compiled(trialBook))), digest(coverPdf(trialBook))];
    sheetPdf(compiled(hardBook));
    make = await pdfMaker();
    expect([digest(sheetPdf(compiled(trialBook))), digest(coverPdf(trialBook))]).toEqual(first);
  });

  test('the cover lists its procedures, hold points and sources', async () => {
    const text = await pdfText(coverPdf(trialBook).bytes);
    for (const words of [
      'Camshaft, crankshaft and head',
      '1 · 13',
      'bottom end closed',
      'Brackwater house notes',
      'Page 1 of 1',
    ])
      expect(text).toContain(words);
  });
});

test('another language leaves no word of the first one on the page', async () => {
  const options = {...OPTIONS, words: GERMAN};
  const pdf = sheetPdf(firstSheet(trialBook, options));
  const cover = whole(make(() => coverPrint(compileCover(trialBook, options)), []));
  expect((await readPdfDocument(pdf.bytes)).language).toBe('de');
  const text = `${await pdfText(pdf.bytes)} ${await pdfText(cover.bytes)}`;
  for (const said of ['Seite 1 von', 'Montageblatt 1 von 1', 'GEFAHR', 'Abschnitt fertig', GERMAN.holdText])
    expect(text).toContain(said);
  const phrases = Object.values(ENGLISH).flatMap((word) =>
    typeof word === 'string' ? [word] : Object.values(word),
  );
  const left = phrases.filter(
    (phrase) => phrase.length > 7 && !phrase.includes('{') && text.includes(phrase),
  );
  expect(left).toEqual([]);
});

/** A book of one step, with a note for its part. */
function saying(note: string, step = 'Look.'): Book {
  return book({
    engine: `parts:\n  wheel: {note: ${JSON.stringify(note)}}`,
    procedures: {
      'a.md': `---\ntitle: A\nrevision: A\ndate: 2026-02-03\n---\n\n## Look\n\n1. ${step} \`install: wheel\`\n`,
    },
  });
}

describe('characters', () => {
  test.each([
    'ABC ≥ ± · ° × ⌀ µ ½ ⅜ Ω',
    'Åse Đorđević, Łukasz Świętosławski, Ngọc, Ærø',
    'Жанна Ёлкина, Ελένη Παπαδοπούλου',
    'Հայկ, ქართული',
  ])('%s is printed with fonts that come with the tool', async (name) => {
    const pdf = sheetPdf(compiled(saying(name)));
    expect(pdf.missing).toEqual([]);
    // Signs that look alike share a glyph, and so a place in the text: µ and μ.
    expect((await pdfText(pdf.bytes)).normalize('NFKC')).toContain(name.normalize('NFKC'));
  });

  test('one that no font has leaves a frame, and is told', async () => {
    const pdf = sheetPdf(compiled(saying('seal \u{12000} and \u{E123} here')));
    expect([...pdf.missing].sort()).toEqual(['\u{12000}', '\u{E123}'].sort());
    expect(await pdfText(pdf.bytes)).toContain('seal ▯ and ▯ here');
  });

  test('those that hide text or turn it are left out', async () => {
    expect(
      await pdfText(sheetPdf(compiled(saying('to\u202Eft 85\u2066 lbf\uFEFF, \u0007bell'))).bytes),
    ).toContain('toft 85 lbf, bell');
  });
});

/**
 * Typst markup and code that would run, read files or break out, were any of it read as source: by its reference,
 * sections "Syntax", "Scripting" and "Data loading" (from memory).
 */
const TYPST_ATTACKS = [
  '#panic("hit")',
  '#read("/etc/passwd")',
  '#{while true {}}',
  '$ integral_0^oo $',
  '"]) #panic("hit") #(["',
  '= Heading <label> @label',
  '*bold* _it_ `raw` // comment /* block */',
  '\\u{41} \\#hash ~ --- ...',
  '#import "@preview/evil:1.0.0"',
  '#eval("1+1")',
];

describe('hostile text', () => {
  test.each(TYPST_ATTACKS)('%s is printed as it was typed', async (attack) => {
    const text = await pdfText(sheetPdf(compiled(saying(attack))).bytes);
    expect(text.replace(/\s/g, '')).toContain(attack.replace(/\s/g, ''));
  });

  test('a sheet full of attacks on HTML prints them as text', async () => {
    const text = (await pdfText(sheetPdf(compiled(hostileBook)).bytes)).replace(/\s/g, '');
    for (const attack of ATTACKS) expect(text).toContain(attack.replace(/\s/g, ''));
    expect(coverPdf(hostileBook).pages).toBeGreaterThan(0);
  });

  test('a step longer than a page goes on overleaf and loses nothing', async () => {
    const words = Array.from({length: 1800}, (_, at) => `w${at}x`);
    const pages = await readPdf(sheetPdf(compiled(saying('', words.join(' ')))).bytes);
    const text = pages.map((page) => page.text).join(' ');
    expect(words.filter((word) => !text.includes(word))).toEqual([]);
    for (const {pieces} of pages) expect(Math.min(...pieces.map(({y}) => y))).toBeGreaterThan(20);
  });
});

describe('a step of forty lines of one kind loses nothing', () => {
  const lines = (of: (at: number) => string) => Array.from({length: 60}, (_, at) => of(at)).join('\n');
  test.each([
    ['bullets', `Look.\n\n${lines((at) => `   - w${at}x`)}\n\n2. More.`],
    ['typed text', `Look.\n\n   \`\`\`\n${lines((at) => `   w${at}x`)}\n   \`\`\`\n\n2. More.`],
    ['short words', lines((at) => `w${at}x and on\\`).replace(/\n/g, '\n   ')],
  ])('%s', async (_, step) => {
    const pages = await readPdf(sheetPdf(compiled(saying('x', step))).bytes);
    const text = pages.map((page) => page.text).join(' ');
    expect(Array.from({length: 60}, (_one, at) => `w${at}x`).filter((word) => !text.includes(word))).toEqual(
      [],
    );
    for (const {pieces} of pages) expect(Math.min(...pieces.map(({y}) => y))).toBeGreaterThan(20);
  });
});

/** One white pixel. */
const PIXEL =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGP4//8/AAX+Av4N70a4AAAAAElFTkSuQmCC';

describe('pictures', () => {
  const pictured = (url: string): Sheet => {
    const sheet = compiled(saying('x'));
    const figure: SheetBlock = {type: 'figure', figure: {url, alt: 'the pump', caption: 'Pump, from below'}};
    return {...sheet, sections: [{title: 'Look', level: 2, content: [figure]}]};
  };

  test('are embedded with their words and captions', async () => {
    const {bytes} = sheetPdf(pictured(PIXEL), [PIXEL]);
    expect((await readPdfDocument(bytes)).alternatives).toContain('the pump');
    expect(await pdfText(sheetPdf(pictured(PIXEL), [PIXEL]).bytes)).toContain('Pump, from below');
  });

  test.each(['broken.png', 'data:image/png;base64,iVBORw0KGgo=', 'data:image/jpeg;base64,/9j/4AAQ'])(
    '%s, which is none, leaves a frame that says so',
    async (url) => {
      expect(await pdfText(sheetPdf(pictured(url), [url]).bytes)).toContain('Picture: Pump, from below');
    },
  );
});
