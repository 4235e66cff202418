/** The shop lead's first minute in a real VS Code in a real browser: forget a lock, see it, mend it, look at the sheet. */
import {spawnSync} from 'node:child_process';
import {cp, mkdtemp, readFile, rm} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {join, resolve, sep} from 'node:path';
import type {Frame, Page} from 'playwright-core';
import {openBrowser} from '../help/browser.js';
import {installed, startCodeServer} from './code-server.js';

const FILE = '04-crankshaft.md';
const WAIT = {timeout: 120_000};

/** Throws where something is not as it should be. With a folder for them, takes pictures on the way. */
export function tryVsCode(pictures: string | undefined): Promise<void> {
  return tryWith({}, (page, path) => firstMinute(page, path, pictures));
}

/** The same extension in the browser alone: the settings leave it no process of Node. */
export function tryVsCodeWeb(pictures: string | undefined): Promise<void> {
  const settings = {'remote.extensionKind': {'witness-mark.witness-mark': ['web']}};
  return tryWith(settings, async (page, path) => {
    await firstMinute(page, path, pictures && join(pictures, 'web'));
    const {stdout} = spawnSync('ps', ['-eo', 'args'], {encoding: 'utf8'});
    const folder = path.slice(0, path.indexOf(`${sep}books${sep}`));
    const process = stdout.split('\n').find((line) => line.includes(folder) && line.includes('server.mjs'));
    if (process !== undefined) throw new Error(`the server runs on the machine: ${process}`);
    step('no process of the machine serves it');
  });
}

async function tryWith(
  settings: Readonly<Record<string, unknown>>,
  trial: (page: Page, path: string) => Promise<void>,
): Promise<void> {
  const data = await mkdtemp(join(tmpdir(), 'wmark-vscode-'));
  const book = join(data, 'books');
  await cp('procedures', book, {recursive: true});
  const server = await startCodeServer(installed(), data, resolve('out/witness-mark.vsix'), book, settings);
  const browser = await openBrowser();
  try {
    const page = await browser.newPage({viewport: {width: 1180, height: 660}});
    page.on('console', (told) => {
      if (told.type() === 'error' && told.text().includes('Witness Mark')) step(told.text());
    });
    await page.goto(server.url, WAIT);
    await trial(page, join(book, 'ottermouth-four', FILE));
  } catch (error) {
    await browser
      .contexts()[0]
      ?.pages()[0]
      ?.screenshot({path: resolve('.cache/vscode-failed.png')})
      .catch(() => undefined);
    throw error;
  } finally {
    await browser.close();
    server.process.kill();
    await rm(data, {recursive: true, force: true, maxRetries: 5});
  }
}

async function firstMinute(page: Page, path: string, pictures: string | undefined): Promise<void> {
  const text = await readFile(path, 'utf8');
  const lines = text.split('\n');
  const lock = lines.findIndex((line) => line.startsWith('29. '));
  const torque = lines.findIndex(
    (line, index) => index > lock - 20 && line.includes('`torque: main-cap-bolts'),
  );
  await page.locator('.monaco-workbench').waitFor(WAIT);
  await open(page, FILE);
  step('opened the procedure');
  // The line above the text comes from the server, so it is there.
  await page.getByText('nothing left undone in the book').first().waitFor(WAIT);
  await page.keyboard.press('Control+B');
  await goTo(page, lock + 1);
  for (let line = lock; line < lock + 2; line++) await page.keyboard.press('Control+Shift+K');
  await goTo(page, torque + 1);
  const squiggle = page.locator('.squiggly-error').first();
  await squiggle.waitFor({state: 'attached', ...WAIT});
  step('deleted the step that locks the main cap bolts: underlined');
  await picture(page, pictures, 'finding');
  await goTo(page, torque + 1, 20);
  await page.keyboard.press('Control+.');
  const fix = page.getByText('Write the missing step: lock main-cap-bolts').first();
  await fix.waitFor(WAIT);
  await fix.click();
  await squiggle.waitFor({state: 'detached', ...WAIT});
  step('applied the fix: gone');
  await command(page, 'Witness Mark: Lay the Sheet beside the Text');
  await sheetAtStep(page, '26');
  step('laid the sheet beside the text, at the step of the cursor');
  await picture(page, pictures, 'sheet');
}

async function open(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+P');
  const input = page.locator('.quick-input-widget input').first();
  await input.waitFor(WAIT);
  await input.fill(name);
  await page.locator('.quick-input-list .monaco-list-row').filter({hasText: name}).first().waitFor(WAIT);
  await page.keyboard.press('Enter');
  await page.locator('.monaco-editor .view-lines').first().waitFor(WAIT);
}

async function goTo(page: Page, line: number, column = 1): Promise<void> {
  await command(page, `:${line}:${column}`, '');
}

/** Chooses a command by its words; `:LINE` goes to a line. */
async function command(page: Page, words: string, lead = '>'): Promise<void> {
  await page.keyboard.press('F1');
  const input = page.locator('.quick-input-widget input').first();
  await input.waitFor(WAIT);
  await input.fill(lead + words);
  await page.locator('.quick-input-list .monaco-list-row').first().waitFor(WAIT);
  await page.keyboard.press('Enter');
  await input.waitFor({state: 'hidden', ...WAIT});
}

/**
 * Waits until the sheet shows the step as the one of the cursor. It stands in a frame of a frame, and VS Code may lay
 * both anew at any moment, so each look begins at the page.
 */
async function sheetAtStep(page: Page, number: string): Promise<void> {
  const end = Date.now() + WAIT.timeout;
  let seen: string | undefined;
  while (Date.now() < end) {
    for (const frame of page.frames()) {
      seen = (await shownStep(frame)) ?? seen;
      if (seen === number) return;
    }
    await page.waitForTimeout(200);
  }
  throw new Error(
    seen === undefined
      ? 'the sheet never came'
      : `the sheet is at step ${seen}, and the cursor at step ${number}`,
  );
}

/** Nothing where the frame holds no sheet, or was taken away while it was looked at. */
async function shownStep(frame: Frame): Promise<string | undefined> {
  try {
    const [first] = await frame.locator('tbody.step.here th').allTextContents();
    return first;
  } catch {
    return undefined;
  }
}

async function picture(page: Page, folder: string | undefined, name: string): Promise<void> {
  if (folder !== undefined) await page.screenshot({path: join(folder, `${name}.png`)});
}

function step(says: string): void {
  console.log(`  vscode: ${says}`);
}
