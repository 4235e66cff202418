/** Sheets in a real browser: what assistive technology finds wrong, what comes out on paper, and that nothing runs. */
/// <reference lib="dom" />

import type {Browser} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {bookLists} from '../../src/sheet/book-lists.js';
import {compileCover} from '../../src/sheet/cover.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {coverHtml} from '../../src/sheet/html-cover.js';
import {listsHtml} from '../../src/sheet/lists-html.js';
import type {Paper} from '../../src/spec/model.js';
import {openBrowser} from '../help/browser.js';
import {accessibilityFaults, activeParts, headingLevels, openPage, STILL} from '../help/page.js';
import {outsideOf, PAPER_SIZES, type PdfPage, readPdf} from '../help/pdf.js';
import {FINGERPRINT, firstSheet} from '../help/sheet.js';
import {hardBook, hostileBook} from './hard.js';
import {BRANCH, ENDINGS, LENGTHS, OPENINGS, ofLength, withBranch} from './of-length.js';
import {trialBook} from './trial.js';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
});

function sheetOf(book: Book, paper: Paper = 'A4'): string {
  return sheetHtml(firstSheet(book, {paper}));
}

function coverOf(book: Book, paper: Paper = 'A4'): string {
  return coverHtml(compileCover(book, {fingerprint: FINGERPRINT, paper}));
}

async function printed(html: string): Promise<PdfPage[]> {
  const {page} = await openPage(browser, html);
  const bytes = await page.pdf({preferCSSPageSize: true, printBackground: true});
  await page.close();
  return readPdf(bytes);
}

const documents = [
  ['the trial sheet', sheetOf(trialBook)],
  ['the cover of the trial book', coverOf(trialBook)],
  ['the hard sheet', sheetOf(hardBook)],
  ['the hostile sheet', sheetOf(hostileBook)],
  ['the hostile cover', coverOf(hostileBook)],
] as const;

describe.each(documents)('%s on screen', (_, html) => {
  test('gives an accessibility engine nothing to find', async () => {
    const {page} = await openPage(browser, html);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.close();
  });

  test('runs nothing, asks for nothing and holds no way to', async () => {
    const {page, trouble} = await openPage(browser, html);
    expect(await activeParts(page)).toEqual(STILL);
    const links = await page
      .locator('a')
      .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
    expect(links.filter((href) => !/^https:\/\/|^[^:/]+\.html$/.test(href))).toEqual([]);
    expect(trouble).toEqual([]);
    await page.close();
  });

  test.each([1024, 640])('is no wider than a window of %i', async (width) => {
    const {page} = await openPage(browser, html);
    await page.setViewportSize({width, height: 800});
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
    await page.close();
  });

  test('skips no level of heading and names every region once', async () => {
    const {page} = await openPage(browser, html);
    const levels = await headingLevels(page);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, at) => level > (levels[at - 1] ?? 0) + 1)).toEqual([]);
    await page.close();
  });
});

describe.each(['A4', 'Letter'] as const)('on %s paper', (paper) => {
  test.each(['trial', 'hard'] as const)(
    'the %s sheet has every step, and its head and foot on every page',
    async (name) => {
      const book = name === 'trial' ? trialBook : hardBook;
      const pages = await printed(sheetOf(book, paper));
      pages.forEach((page, at) => {
        expect([page.width, page.height].map(Math.round)).toEqual([...PAPER_SIZES[paper]]);
        expect(page.text).toContain(`Page ${at + 1} of ${pages.length}`);
        expect(page.text).toContain(`rev. ${name === 'trial' ? 'C' : 'A'}`);
        expect(page.text).toContain('0123456789');
        expect(outsideOf(page)).toEqual([]);
      });
      const words = new Set(pages.flatMap(({text}) => text.split(' ')));
      const numbers = book.procedures[0]?.steps.map(({number}) => number) ?? [];
      expect(numbers.filter((number) => !words.has(number))).toEqual([]);
    },
  );

  test('what must be read together stands on one page', async () => {
    const pages = await printed(sheetOf(hardBook, paper));
    const pageOf = (word: string) => pages.findIndex(({text}) => text.includes(word));
    for (let step = 1; step <= 46; step++) {
      const page = pageOf(`first${step}x`);
      expect(page, `step ${step}`).toBeGreaterThanOrEqual(0);

      expect(pageOf(`last${step}x`), `the end of step ${step}`).toBe(page);
      if (pages.some(({text}) => text.includes(`warn${step}x`))) {
        expect(pageOf(`warn${step}x`), `the caution of step ${step}`).toBe(page);
      }
    }
    expect(pageOf('Witnessed by')).toBe(pageOf('first44x'));
  });

  test('the heads of the table come again on every page that its steps run over to', async () => {
    const pages = await printed(sheetOf(hardBook, paper));
    const withSteps = pages.filter(({text}) => /first\d+x/.test(text));
    expect(withSteps.length).toBeGreaterThan(5);
    for (const {text} of withSteps) expect(text).toContain('Values and readings');
  });

  test('the cover lists its procedures', async () => {
    const pages = await printed(coverOf(trialBook, paper));
    expect(pages[0]?.text).toContain('Camshaft, crankshaft and head');
    expect(pages.at(-1)?.text).toContain(`Page ${pages.length} of ${pages.length}`);
  });
});

describe('the sign-off stands never alone', () => {
  test.each(ENDINGS)('%s', async (_, more, word) => {
    const on = new Set<number>();
    for (const steps of LENGTHS) {
      const pages = await printed(sheetOf(ofLength(steps, more)));
      const pageOf = (said: string) => pages.findIndex(({text}) => text.includes(said));
      const page = pageOf('Sign-off');
      expect(pageOf(word(steps)), `${steps} steps`).toBe(page);
      expect(pageOf('Checked by'), `${steps} steps`).toBe(page);
      on.add(page);
    }
    expect(on.size).toBeGreaterThan(1);
  });
});

describe('a step that opens a branch', () => {
  test.each([1, 3, 60])('stands with its condition and the first of its %i steps', async (subs) => {
    const on = new Set<number>();
    for (const steps of OPENINGS) {
      const pages = await printed(sheetOf(withBranch(steps, subs)));
      const [page, ...others] = BRANCH.map((word) => pages.findIndex(({text}) => text.includes(word)));
      expect(others, `${steps} steps`).toEqual([page, page]);
      on.add(page ?? -1);
    }
    expect(on.size).toBeGreaterThan(1);
  });
});

// On a phone the heads of a table have no room: each cell says its own, and no two lie over each other.
describe('a table with heads, on a telephone', () => {
  test.each([
    ['sheet', sheetOf(trialBook)],
    ['hard sheet', sheetOf(hardBook)],
    ['cover', coverOf(trialBook)],
    ['lists', listsHtml(bookLists(trialBook, {fingerprint: FINGERPRINT}), [], {paper: 'A4'})],
  ])('%s', async (_, html) => {
    const {page} = await openPage(browser, html);
    for (const [width, shown] of [
      [390, true],
      [800, false],
    ] as const) {
      await page.setViewportSize({width, height: 800});
      const cells = await page.locator('table.list:has(thead) tbody tr:not(.more) td').evaluateAll((all) =>
        all
          .filter((cell) => cell.textContent !== '')
          .map((cell) => {
            const at = [...(cell.parentElement?.children ?? [])].indexOf(cell);
            const head = cell.closest('table')?.querySelectorAll('thead th')[at]?.textContent;
            return [getComputedStyle(cell, '::before').content, `"${head}: "`];
          }),
      );
      expect(cells.length).toBeGreaterThan(3);
      for (const [content, head] of cells) expect(content).toBe(shown ? head : 'none');
    }
    await page.setViewportSize({width: 390, height: 800});
    const over = await page.locator('table.list tr').evaluateAll((rows) =>
      rows.flatMap((row) => {
        const cells = [...row.children].map((cell) => {
          const range = document.createRange();
          range.selectNodeContents(cell);
          return range.getBoundingClientRect();
        });
        return cells.some((one, at) =>
          cells
            .slice(at + 1)
            .some(
              (other) =>
                one.left + 1 < other.right &&
                other.left + 1 < one.right &&
                one.top + 1 < other.bottom &&
                other.top + 1 < one.bottom,
            ),
        )
          ? [row.textContent]
          : [];
      }),
    );
    expect(over).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
    await page.close();
  });
});

test('on a telephone the text of a step has most of the width, and what is hidden stays hidden', async () => {
  const {page} = await openPage(browser, sheetOf(trialBook));
  await page.setViewportSize({width: 390, height: 800});
  const widths = await page
    .locator('td.what')
    .evaluateAll((cells) => cells.map((cell) => cell.getBoundingClientRect().width));
  expect(Math.min(...widths)).toBeGreaterThan(200);
  await page
    .locator('tbody.sub')
    .first()
    .evaluate((body) => body.setAttribute('hidden', ''));
  expect(await page.locator('tbody.sub').first().isVisible()).toBe(false);
  expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
  await page.close();
});
