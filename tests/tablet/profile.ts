/** Opens sheets in a browser as a person does: from a file, each test with a profile of its own. */
import {writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {pathToFileURL} from 'node:url';
import type {Browser, BrowserContext, Page} from 'playwright-core';
import {onTestFinished} from 'vitest';
import {tabletScript} from '../../.config/tablet.mjs';
import type {Book} from '../../src/build/book.js';
import type {SheetOptions} from '../../src/sheet/compile.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {troubleOf} from '../help/page.js';
import {firstSheet} from '../help/sheet.js';
import {temporaryFolder} from '../host/temporary.js';

/** The first sheet of a book, with the script in it. */
export async function tabletHtml(book: Book, options: Partial<SheetOptions> = {}): Promise<string> {
  const {text: script} = await tabletScript();
  return sheetHtml(firstSheet(book, options), {script});
}

/** A page on a profile: its own, or one that another page has. */
export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly url: string;
  /** What it asked for outside itself, what went wrong in it, and what its policy forbade. */
  readonly trouble: string[];
}

export async function openSheet(
  browser: Browser,
  html: string,
  init?: (context: BrowserContext) => Promise<unknown>,
): Promise<Opened> {
  const folder = await temporaryFolder();
  const path = join(folder, 'sheet.html');
  await writeFile(path, html);
  const context = await browser.newContext({viewport: {width: 820, height: 1180}, acceptDownloads: true});
  onTestFinished(() => context.close());
  await init?.(context);
  const page = await context.newPage();
  // It comes from a file itself.
  const trouble = troubleOf(page, /^(?:https?|ws):/);
  page.on('console', (message) => {
    if (message.type() === 'error') trouble.push(message.text());
  });
  const url = pathToFileURL(path).href;
  await page.goto(url);
  return {page, context, url, trouble};
}

export function boxOf(page: Page, key: string) {
  return page.locator(`[data-box=${JSON.stringify(key)}]`);
}

/** Answers the question that stands open with initials. */
export async function initials(page: Page, who: string): Promise<void> {
  await page.getByRole('textbox', {name: 'Initials'}).fill(who);
  await page.keyboard.press('Enter');
}

/** Signs all the same where something is open, and says why. */
export async function signAnyway(page: Page, who: string, reason: string): Promise<void> {
  await page.getByRole('textbox', {name: 'Because'}).fill(reason);
  await initials(page, who);
}

/** Presses a box that has an answer, and takes that back. */
export async function takeBack(page: Page, key: string): Promise<void> {
  await boxOf(page, key).click();
  await page.getByRole('button', {name: 'Take back', exact: true}).click();
}

/** Ticks a first box, and says who does it. */
export async function begin(page: Page, key: string, who: string): Promise<void> {
  await boxOf(page, key).click();
  await initials(page, who);
}

/** Writes a reading or number and goes on to the next box. */
export async function read(page: Page, key: string, value: string): Promise<void> {
  await boxOf(page, key).fill(value);
  await page.keyboard.press('Tab');
}

/** The text that stands beside a reading. */
export function verdictOf(page: Page, key: string) {
  return boxOf(page, key).locator('xpath=../following-sibling::*[1]');
}

/** What the page gives out as a file. */
export async function exportedFrom(page: Page): Promise<{readonly file: string; readonly text: string}> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', {name: 'Export record'}).click(),
  ]);
  const stream = await download.createReadStream();
  let text = '';
  for await (const chunk of stream) text += String(chunk);
  return {file: download.suggestedFilename(), text};
}

export async function importInto(page: Page, text: string, name = 'any.record.json'): Promise<void> {
  await page
    .locator('input[type=file]')
    .setInputFiles({name, mimeType: 'application/json', buffer: Buffer.from(text)});
}
