/** What a page says to a reading, a time or initials that it does not write down, in the words of both languages. */
import type {Browser, Page} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import type {Language} from '../../src/spec/model.js';
import {openBrowser} from '../help/browser.js';
import {book} from '../help/example.js';
import {begin, boxOf, exportedFrom, openSheet, read, signAnyway, tabletHtml, verdictOf} from './profile.js';

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

describe('initials that are none', () => {
  const faultOf = (page: Page) => page.getByRole('dialog').getByRole('alert').textContent();

  test.each([
    ['en', 'Write initials: one to five letters, no blanks.'],
    ['de', 'Ein Kürzel schreiben: ein bis fünf Buchstaben, kein Leerzeichen.'],
  ] as const)('are refused by the question who works: %s', async (language, says) => {
    const {page} = await openSheet(browser, await tabletHtml(made(language, 'max 0.03 mm')));
    await boxOf(page, '1:done').click();
    const input = page.getByRole('dialog').getByRole('textbox');
    for (const typed of ['A B', 'it will bed in', 'AB12', '1', 'ABCDEF', '-']) {
      await input.fill(typed);
      await page.keyboard.press('Enter');
      expect([typed, await faultOf(page)]).toEqual([typed, says]);
    }
    await input.fill('Ä.Bé');
    await page.keyboard.press('Enter');
    expect(await boxOf(page, '1:done').getAttribute('aria-checked')).toBe('true');
  });

  test('are refused where a reading is accepted: the reason stands in their field', async () => {
    const {page} = await openSheet(browser, await tabletHtml(made('en', 'max 0.03 mm')));
    await begin(page, '1:done', 'AB');
    await read(page, '1:1', '0.05');
    await page.getByRole('button', {name: /^Accept as it is/}).click();
    await signAnyway(page, 'will bed in', 'CD');
    expect(await faultOf(page)).toBe('Write initials: one to five letters, no blanks.');
    await signAnyway(page, 'CD', 'will bed in');
    const {text} = await exportedFrom(page);
    expect(text).toContain('"by": "CD"');
    expect(text).toContain('will bed in');
  });

  test('are refused where a second person signs, and are not remembered from before', async () => {
    const {page} = await openSheet(browser, await tabletHtml(made('en', 'max 0.03 mm')), (context) =>
      context.addInitScript(() => {
        sessionStorage.setItem('witness-mark who', 'it will bed in');
      }),
    );
    await begin(page, '1:done', 'AB');
    await boxOf(page, 'closing:checked').click();
    await signAnyway(page, 'C D', 'nobody else is here');
    expect(await faultOf(page)).toBe('Write initials: one to five letters, no blanks.');
  });
});
