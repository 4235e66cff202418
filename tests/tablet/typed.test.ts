/** What a page says to a reading, a time or initials that it does not write down, in the words of both languages. */
import type {Browser} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import type {Language} from '../../src/spec/model.js';
import {openBrowser} from '../help/browser.js';
import {book} from '../help/example.js';
import {begin, boxOf, openSheet, read, tabletHtml, verdictOf} from './profile.js';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
});

function made(language: Language, limits: string): Book {
  return book({
    shop: `shop: {name: Example Works, units: metric, language: ${language}}\nsources: {house: {title: notes, note: invented}}\n`,
    engine: `fits: {run-out: {limits: ${limits}}}\nchecks: {oil-pressure: {limits: 2–4 bar}}\n`,
    procedures: {'one.md': '\n1. Read it. `measure: run-out`\n2. Read it. `check: oil-pressure`\n'},
  });
}

describe('a reading is answered with', () => {
  test.each([
    ['en', 'max 0.03 mm', '-0.01', 'Not written down: it cannot be less than nought. Read it again.'],
    [
      'de',
      'max 0.03 mm',
      '-0.01',
      'Nicht eingetragen: Weniger als null kann es nicht sein. Noch einmal messen.',
    ],
    ['en', 'max 0.03 mm', '0.05', 'OUT OF LIMITS: OVER'],
    ['en', 'max 0.03 mm', '0.031', 'OUT OF LIMITS: OVER'],
    ['en', 'max 0.03 mm', '3', 'OUT OF LIMITS: OVER (Is 0.03 mm meant? Then write that.)'],
    ['de', 'max 0.03 mm', '3', 'ÜBER DEN GRENZWERTEN (Ist 0.03 mm gemeint? Dann das schreiben.)'],
    ['en', 'max 0.03 mm', 'x', 'Not written down: write a number alone (mm), such as 0.06.'],
    ['de', 'max 0.03 mm', 'x', 'Nicht eingetragen: nur eine Zahl schreiben (mm), etwa 0.06.'],
  ] as const)('%s, %s: %s', async (language, limits, typed, says) => {
    const {page} = await openSheet(browser, await tabletHtml(made(language, limits)));
    await boxOf(page, '1:1').pressSequentially(typed);
    expect(await verdictOf(page, '1:1').textContent()).toBe(says);
  });

  test('an example in its own unit', async () => {
    const {page} = await openSheet(browser, await tabletHtml(made('en', 'max 0.03 mm')));
    await boxOf(page, '2:1').pressSequentially('x');
    expect(await verdictOf(page, '2:1').textContent()).toBe(
      'Not written down: write a number alone (bar), such as 2.5.',
    );
  });

  test('nothing in the record where it is refused', async () => {
    const {page} = await openSheet(browser, await tabletHtml(made('en', 'max 0.03 mm')));
    await begin(page, '1:done', 'JM');
    await read(page, '1:1', '-0.01');
    expect(await page.getByRole('status').textContent()).toContain('less than nought');
    await page.reload();
    expect(await boxOf(page, '1:1').inputValue()).toBe('');
  });
});
