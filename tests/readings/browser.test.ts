/** Build reports in a real browser: what assistive technology finds wrong, that nothing runs, and what comes out on paper. */
/// <reference lib="dom" />
import type {Browser} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import {buildsOf} from '../../src/readings/builds.js';
import {readingsHtml} from '../../src/readings/html.js';
import {judgeBuild} from '../../src/readings/judge.js';
import type {BuildRecord} from '../../src/readings/record.js';
import {spreadOf} from '../../src/readings/spread.js';
import {openBrowser} from '../help/browser.js';
import {accessibilityFaults, activeParts, headingLevels, openPage, STILL} from '../help/page.js';
import {outsideOf, readPdf} from '../help/pdf.js';
import {ATTACKS} from '../sheet/hard.js';
import {SMALL, sample} from './small.js';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
});

function htmlOf(...records: readonly BuildRecord[]): string {
  const builds = buildsOf(records.map((record, index) => ({file: `${index + 1}.record.json`, record}))).map(
    (build) => judgeBuild(build, SMALL),
  );
  return readingsHtml({builds, spread: spreadOf(builds)});
}

const usual = htmlOf(
  sample({
    answer: ({key}, value) =>
      ({'7:1': '0.0081', '4:1:front': '0.0041', '2:1:rear': '2.4990', '1:1': ''})[key] ?? value,
  }),
  sample({engineNumber: 'X-2', seed: 404}),
);

/** Every text that a stranger's file can bring along. */
const attacked = ATTACKS.map((attack, at) => {
  const record = sample({
    seed: at,
    engineNumber: attack,
    answer: ({kind}, value) => (kind === 'reading' && at % 2 === 0 ? value : attack),
    by: () => attack.slice(0, 40),
  });
  return {
    ...record,
    sheets: [...record.sheets, {...strange(record), procedure: attack, title: attack, revision: attack}],
  };
});

function strange({sheets}: BuildRecord) {
  const [sheet] = sheets;
  if (sheet === undefined) throw new Error('no sheet');
  return sheet;
}

const hostile = htmlOf(...attacked);

describe.each([
  ['the report on two builds', usual],
  ['the report on hostile records', hostile],
])('%s', (_, html) => {
  test('gives an accessibility engine nothing to find', async () => {
    const {page} = await openPage(browser, html);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.close();
  });

  test('runs nothing and asks for nothing', async () => {
    const {page, trouble} = await openPage(browser, html);
    expect(await activeParts(page)).toEqual(STILL);
    expect(trouble).toEqual([]);
    await page.close();
  });

  test.each([1024, 480])('is no wider than a window of %i', async (width) => {
    const {page} = await openPage(browser, html);
    await page.setViewportSize({width, height: 800});
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
    await page.close();
  });

  test('skips no level of heading', async () => {
    const {page} = await openPage(browser, html);
    const levels = await headingLevels(page);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, at) => level > (levels[at - 1] ?? 0) + 1)).toEqual([]);
    await page.close();
  });
});

test('prints with every reading on the page', async () => {
  const {page} = await openPage(browser, usual);
  const pages = await readPdf(await page.pdf({format: 'A4', preferCSSPageSize: true, printBackground: true}));
  await page.close();
  const text = pages.map((each) => each.text).join(' ');
  for (const said of [
    '0.0081 in',
    '0.0041 in',
    '2.4990 in',
    'not answered: Write down engine number',
    'Spread over the builds',
  ])
    expect(text).toContain(said);
  for (const each of pages) {
    expect(outsideOf(each)).toEqual([]);
  }
});
