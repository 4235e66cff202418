/**
 * Pages of sheets, cover and report held against kept pictures, in a real browser: what moved, or is gone, is noticed;
 * a changed date or another smoothing of edges is not. `npm run pages` renews the pictures.
 */
import {readFileSync} from 'node:fs';
import type {Browser} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import {type PdfMaker, pdfMaker} from '../../src/host/pdf.js';
import type {Print} from '../../src/print/document.js';
import {openBrowser} from '../help/browser.js';
import {pageWith} from '../help/pdf.js';
import {difference, TOLERANCE} from './compare.js';
import {type KeptPage, keptPages, pdfOf} from './pages.js';
import {openStudio, type Picture, type Studio} from './picture.js';

let browser: Browser;
let studio: Studio;
let make: PdfMaker;
beforeAll(async () => {
  browser = await openBrowser();
  studio = await openStudio(browser);
  make = await pdfMaker();
});
afterAll(async () => {
  await studio?.close();
  await browser?.close();
});

const PAGES = keptPages();

function pageNamed(name: string): KeptPage {
  const page = PAGES.find((one) => one.name === name);
  if (page === undefined) throw new Error(`no page ${name}`);
  return page;
}

async function picture({print, has}: KeptPage, fold?: number): Promise<Picture> {
  const pdf = await pdfOf(print, make);
  return studio.draw(pdf, await pageWith(pdf, has), fold);
}

function kept(name: string): Promise<Picture> {
  return studio.read(readFileSync(new URL(`../fixtures/pages/${name}.png`, import.meta.url)));
}

test.each(PAGES.map((page) => [page.name, page] as const))('%s looks as it was kept', async (name, page) => {
  expect(difference(await picture(page), await kept(name))).toBeLessThanOrEqual(TOLERANCE);
});

/** The print with its JSON changed. */
function changed(page: KeptPage, change: (json: string) => string): KeptPage {
  const print: Print = {...page.print, data: JSON.parse(change(JSON.stringify(page.print.data)))};
  return {...page, print};
}

function replacing(from: string, to: string) {
  return (json: string) => {
    if (!json.includes(from)) throw new Error(`nothing to change: ${from}`);
    return json.replaceAll(from, to);
  };
}

describe('a fault is noticed', () => {
  test.each<[string, string, (json: string) => string]>([
    [
      'steps',
      'a drawing that is gone',
      (json) => json.replace(/"svg":"<svg.*?<\/svg>"/g, `"svg":"${EMPTY}"`),
    ],
    [
      'hold-point',
      'a box that is gone',
      replacing(
        '"labels":["front","second","centre","fourth","rear"]',
        '"labels":["front","second","centre","fourth"]',
      ),
    ],
    [
      'steps',
      'a block that a longer text moved down',
      replacing(
        'Bring the head bolts up in the order drawn.',
        'When all of it is clean and dry, and nobody is in the way of the long bar, bring the head bolts up in the order drawn, resting after each pass. Bring the head bolts up in the order drawn.',
      ),
    ],
    ['hold-point', 'a hold point that is gone', (json) => json.replace(/"holds":\[\{.*?\}\]/g, '"holds":[]')],
    [
      'report',
      'a drawing that is gone',
      (json) => json.replace(/"svg":"<svg.*?<\/svg>"/g, `"svg":"${EMPTY}"`),
    ],
    ['cover', 'a row that is gone', (json) => json.replace(/"waivers":\[.*?\]/, '"waivers":[]')],
  ])('%s: %s', async (name, _, change) => {
    const off = difference(await picture(changed(pageNamed(name), change)), await kept(name));
    expect(off).toBeGreaterThan(TOLERANCE);
  });

  test('one tick box of 7 mm wiped off a page of steps', async () => {
    const whole = await kept('steps');
    const off = difference(wiped(whole), whole);
    expect(off).toBeGreaterThan(TOLERANCE);
  });
});

/** As large as a drawing, with nothing in it. */
const EMPTY = "<svg xmlns='http://www.w3.org/2000/svg' width='50mm' height='30mm' viewBox='0 0 50 30'></svg>";

describe('what is no fault is not', () => {
  test.each<[string, string, (json: string) => string]>([
    ['cover', 'other dates', replacing('2026-05-14', '2027-12-30')],
    ['cover', 'another fingerprint', replacing('0123456789', 'f0e1d2c3b4')],
    ['steps', 'another fingerprint', replacing('0123456789', 'f0e1d2c3b4')],
    ['report', 'another day', replacing('2026-03-02', '2027-11-28')],
  ])('%s: %s', async (name, _, change) => {
    const off = difference(await picture(changed(pageNamed(name), change)), await kept(name));
    expect(off).toBeLessThanOrEqual(TOLERANCE);
  });

  test.each(PAGES.slice(2).map((page) => [page.name, page] as const))(
    '%s drawn with another smoothing of edges',
    async (name, page) => {
      const off = difference(await picture(page, 5), await kept(name));
      expect(off).toBeLessThanOrEqual(TOLERANCE);
    },
  );
});

/** The first tick box of the column of boxes, found by its upper edge, made white. */
function wiped({width, height, grey}: Picture): Picture {
  const left = Math.round((14 / 210) * width);
  const size = Math.ceil((9 / 297) * height);
  const top = Math.round((25.5 / 297) * height);
  return {
    width,
    height,
    grey: grey.map((light, at) => {
      const [x, y] = [at % width, Math.floor(at / width)];
      return x >= left && x < left + size && y >= top && y < top + size ? 255 : light;
    }),
  };
}
