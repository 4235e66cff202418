/** Every text of a published list of hostile ones (`naughty.ts`), wherever a person may write: on all pages, on paper, on the tablet, in the terminal. */
/// <reference lib="dom" />

import {mkdir, mkdtemp, realpath, rm, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import {HtmlValidate} from 'html-validate';
import type {Browser} from 'playwright-core';
import {afterAll, beforeAll, expect, test, vi} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {forJob} from '../../src/build/for-job.js';
import {askedOfBook} from '../../src/host/asked-of-build.js';
import {loadBooks} from '../../src/host/load.js';
import {type PdfMaker, pdfMaker} from '../../src/host/pdf.js';
import {buildsOf} from '../../src/readings/builds.js';
import {type Asked, judgeBuild} from '../../src/readings/judge.js';
import {reportPrint} from '../../src/readings/print.js';
import {type BuildRecord, RECORD} from '../../src/readings/record.js';
import {withEntry} from '../../src/readings/seal.js';
import {compileSheet} from '../../src/sheet/compile.js';
import {compileCover} from '../../src/sheet/cover.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {coverHtml} from '../../src/sheet/html-cover.js';
import {sheetPrint} from '../../src/sheet/print.js';
import {coverPrint} from '../../src/sheet/print-cover.js';
import {openBrowser} from '../help/browser.js';
import {type Ran, ran} from '../help/command.js';
import {readCsv} from '../help/csv.js';
import {activeParts, openPage, STILL} from '../help/page.js';
import {readPdf} from '../help/pdf.js';
import {FINGERPRINT} from '../help/sheet.js';
import {begin, exportedFrom, importInto, initials, openSheet, tabletHtml} from '../tablet/profile.js';
import {leanFiles, NAUGHTY, naughtyFiles, naughtyIds} from './naughty.js';
import {ARMED, UNSEEN} from './terminal.js';

// Each test takes seconds, but several times as long where the machine has other things to do.
vi.setConfig({testTimeout: 300_000});

let browser: Browser;
let make: PdfMaker;
let folder: string;
let book: Book;
let lean: Book;
let record: BuildRecord;
let asked: Asked;

beforeAll(async () => {
  browser = await openBrowser();
  make = await pdfMaker();
  folder = await realpath(await mkdtemp(join(tmpdir(), 'wmark-')));
  await put({
    ...naughtyFiles('book'),
    ...leanFiles('lean'),
    ...leanFiles('other', 1),
    ...naughtyIds('ids'),
  });
  const {books} = await loadBooks([join(folder, 'book')]);
  const [loaded] = books;
  const [job] = loaded?.jobs ?? [];
  if (loaded === undefined || job === undefined) throw new Error('no book, or no job');
  book = forJob({...loaded.book, job});
  const [second] = (await loadBooks([join(folder, 'lean')])).books;
  if (second === undefined) throw new Error('no lean book');
  lean = second.book;
  asked = await askedOfBook(lean);
  record = recordOf(asked);
  await put({'record.json': JSON.stringify(record)});
});
afterAll(async () => {
  await browser?.close();
  await rm(folder, {recursive: true, force: true});
});

async function put(files: {readonly [path: string]: string}): Promise<void> {
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), {recursive: true});
    await writeFile(join(folder, path), text);
  }
}

/** Each box answered with the next string, by a hand whose initials are one too. */
function recordOf({sheets, spec}: Asked): BuildRecord {
  let turn = 0;
  const next = () => NAUGHTY[turn++ % NAUGHTY.length] ?? '';
  return {
    record: 1,
    engine: spec.engine.id,
    engineNumber: NAUGHTY.slice(240, 270).join(' ').slice(0, 2000),
    sheets: sheets.map(({form: {procedure, title, revision, fingerprint, boxes}}) => {
      const empty = {procedure, title, revision, fingerprint, entries: []};
      return boxes.reduce<BuildRecord['sheets'][number]>(
        (sheet, {key}) =>
          withEntry(sheet, {
            at: '2026-03-01T08:00:00Z',
            by: next().slice(0, 40) || 'JM',
            box: key,
            value: next(),
          }),
        empty,
      );
    }),
  };
}

/** What a command prints; a leading `@` stands for the folder of this test. */
function told(...words: readonly string[]): Promise<Ran> {
  return ran(...words.map((word) => word.replace(/^@/, `${folder}/`)));
}

/** Letters alone: without white space, what is not seen, and the escapes that stand for that in reports. */
function folded(text: string): string {
  return text.replace(/\\u(?:[0-9a-f]{4}|\{[0-9a-f]+\})|[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\s\uFFFD]/gu, '');
}

function lacking(text: string): string[] {
  const whole = folded(text);
  return NAUGHTY.filter((one) => !whole.includes(folded(one)));
}

const VALIDATOR = new HtmlValidate({
  extends: ['html-validate:standard'],
  // A bare `>` is text in HTML.
  rules: {'no-raw-characters': 'off'},
});

async function faultsOf(html: string): Promise<string[]> {
  const {results} = await VALIDATOR.validateString(html);
  return [
    ...new Set(results.flatMap(({messages}) => messages.map(({ruleId, message}) => `${ruleId}: ${message}`))),
  ];
}

function sheetsOf() {
  return book.procedures.map((procedure) => compileSheet(book, procedure, {fingerprint: FINGERPRINT}));
}

/** Every page that is made for people, each with whether every string must stand on it. */
const PAGES: readonly (readonly [name: string, html: () => Promise<readonly string[]>, all: boolean])[] = [
  ['the sheets', async () => sheetsOf().map((sheet) => sheetHtml(sheet)), true],
  ['the cover', async () => [coverHtml(compileCover(book, {fingerprint: FINGERPRINT}))], true],
  ['the lists', async () => [(await told('lists', '@book', '--as', 'html')).out], true],
  [
    'the build report',
    async () => [(await told('readings', '@record.json', '--book', '@lean', '--as', 'html')).out],
    true,
  ],
  ['the comparison', async () => [(await told('compare', '@lean', '@other', '--as', 'html')).out], false],
  ['the coverage', async () => [(await told('coverage', '@lean', '--as', 'html')).out], false],
];

test.each(PAGES)('%s: nothing runs, all is text, and valid', async (_, html, all) => {
  const pages = await html();
  let text = '';
  for (const one of pages) {
    expect(one).toMatch(/^<!doctype html>/);
    expect(one).not.toMatch(ARMED);
    const {page, trouble} = await openPage(browser, one);
    expect(await activeParts(page)).toEqual(STILL);
    text += await page.evaluate(() => document.documentElement.textContent ?? '');
    await page.close();
    expect(trouble).toEqual([]);
    expect(await faultsOf(one)).toEqual([]);
  }
  if (all) expect(lacking(text)).toEqual([]);
});

test('on paper: a sheet, a cover and a report come out', async () => {
  const sheets = lean.procedures.map((procedure) =>
    compileSheet(lean, procedure, {fingerprint: FINGERPRINT}),
  );
  const [build] = buildsOf([{file: 'record.json', record}]);
  if (build === undefined) throw new Error('no build');
  const report = {builds: [judgeBuild(build, asked)], spread: []};
  const prints = [
    ...sheets.map((sheet) => make((pathOf) => sheetPrint(sheet, pathOf), [])),
    make(() => coverPrint(compileCover(book, {fingerprint: FINGERPRINT})), []),
    make(() => reportPrint(report, 'A4'), []),
  ];
  for (const pdf of prints) {
    if (!pdf.ok) throw new Error(pdf.says);
    const pages = await readPdf(pdf.bytes);
    expect(pages).toHaveLength(pdf.pages);
  }
  // Symbols that no font has stand as frames; the figures in them and everywhere else stay.
  const [sheet] = prints;
  const text = sheet?.ok ? (await readPdf(sheet.bytes)).map((page) => page.text).join(' ') : '';
  expect(text).toContain('▯');
  expect(text.split('1.0–2.0 mm').length - 1).toBeGreaterThanOrEqual(NAUGHTY.length);
});

test('on the tablet: what is typed does nothing, and comes out as it was', async () => {
  const {page, trouble} = await openSheet(browser, await tabletHtml(lean));
  await begin(page, '1:done', NAUGHTY.find((text) => text.includes('<script>'))?.slice(0, 40) ?? '');
  // They are no initials, and the question stays.
  await initials(page, 'JM');
  const typed = await page.evaluate((texts) => {
    return texts.map((text, at) => {
      const input = document.querySelector<HTMLInputElement>(`input[data-box="${at + 1}:1"]`);
      if (input === null) throw new Error(`there is no input ${at}`);
      input.focus();
      input.value = text;
      input.dispatchEvent(new Event('input', {bubbles: true}));
      input.dispatchEvent(new Event('change', {bubbles: true}));
      input.blur();
      return [input.dataset.box ?? '', text.trim()] as const;
    });
  }, NAUGHTY);
  const last = lastAnswers((await exportedFrom(page)).text);
  expect(typed.filter(([box, value]) => (last.get(box) ?? '') !== value)).toEqual([]);
  expect(trouble).toEqual([]);
});

test('on the tablet: a record of them is taken in, and given out again as it was', async () => {
  const {page, trouble} = await openSheet(browser, await tabletHtml(lean));
  // Seals are made over the fingerprint too.
  const sheets = asked.sheets.map(({form, waivers}) => ({
    form: {...form, fingerprint: FINGERPRINT},
    waivers,
  }));
  const taken = recordOf({...asked, sheets});
  await importInto(page, JSON.stringify(taken));
  await page.getByText(' entries taken in').waitFor();
  const {text} = await exportedFrom(page);
  expect([...lastAnswers(text)]).toEqual([...lastAnswers(JSON.stringify(taken))]);
  // Our own script, and the data that it reads.
  expect(await activeParts(page)).toEqual({...STILL, scripts: 2});
  expect(trouble).toEqual([]);
});

/** What the boxes of the first sheet say in the end. */
function lastAnswers(json: string): Map<string, string> {
  const [sheet] = RECORD.parse(JSON.parse(json)).sheets;
  return new Map(sheet?.entries.map(({box, value}) => [box, value]));
}

/** Everything that reads a book or record and prints text. */
const TEXTS: readonly (readonly string[])[] = [
  ['check', '@book'],
  ['check', '@ids'],
  ['compare', '@lean', '@other'],
  ['lists', '@book'],
  ['story', 'mark-450', '@lean'],
  ['readings', '@record.json', '--book', '@lean'],
];

test.each(TEXTS)('in the terminal: %s %s', async (...words) => {
  const {code, out, err} = await told(...words);
  expect([0, 1, 2]).toContain(code);
  const said = out + err;
  expect(said.length).toBeGreaterThan(100);
  for (const line of said.split('\n')) {
    expect(line).not.toMatch(ARMED);
    expect(line).not.toMatch(UNSEEN);
  }
});

test('CSV and Markdown', async () => {
  const csv = await told('lists', '@book', '--as', 'csv');
  const fields = readCsv(csv.out.replace(/^\uFEFF/, ''));
  expect(lacking(fields.flat().join(' '))).toEqual([]);
  for (const line of fields) for (const field of line) expect(field).not.toMatch(/^\s*[=+@]|^\s*-(?!\d)/);
  const markdown = await told('lists', '@book', '--as', 'markdown');
  expect(markdown.out).not.toMatch(ARMED);
  expect(markdown.out).not.toMatch(/(?<!\\)<(?:script|img|svg|iframe)/i);
});
