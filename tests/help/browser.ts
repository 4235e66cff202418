/** A real Chromium for tests: the one that comes inside a package on Linux x64, elsewhere the system's own. */
import {existsSync} from 'node:fs';
import chromium from '@sparticuz/chromium';
import {type Browser, chromium as driver} from 'playwright-core';

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Where systems keep a Chromium or a browser made of it; `CHROMIUM` names another. */
const USUAL = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/**
 * Starts a browser; close it after use.
 * @throws Error where this machine has none: a missing browser must not pass for a passed test.
 */
export async function openBrowser(): Promise<Browser> {
  const executablePath = await browserPath();
  if (executablePath === undefined) {
    throw new Error(
      'No Chromium on this machine: install one, or name it in the environment variable CHROMIUM.',
    );
  }
  return driver.launch({executablePath, args: FLAGS, headless: true});
}

async function browserPath(): Promise<string | undefined> {
  const {CHROMIUM} = process.env;
  if (CHROMIUM !== undefined) return CHROMIUM;
  if (process.platform === 'linux' && process.arch === 'x64') return chromium.executablePath();
  return USUAL.find((path) => existsSync(path));
}
