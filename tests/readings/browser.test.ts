/** Build reports in a real browser: what assistive technology finds wrong, that nothing runs, and what comes out on paper. */
/// <reference lib="dom" />
import axe, {type AxeResults} from 'axe-core';
import type {Browser, Page} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import {buildsOf} from '../../src/readings/builds.js';
import {readingsHtml} from '../../src/readings/html.js';
import {judgeBuild} from '../../src/readings/judge.js';
import type {BuildRecord} from '../../src/readings/record.js';
import {spreadOf} from '../../src/readings/spread.js';
import {openBrowser} from '../help/browser.js';
import {readPdf} from '../help/pdf.js';
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

const asked: string[] = [];

/** Notes whatever the page asks for outside itself. */
async function opened(html: string): Promise<Page> {
  const page = await browser.newPage({viewport: {width: 1024, height: 1366}});
  page.on('request', (request) => {
    if (/^(?:https?|file|ws):/.test(request.url())) asked.push(request.url());
  });
  await page.setContent(html, {waitUntil: 'load'});
  return page;
}

describe.each([
  ['the report on two builds', usual],
  ['the report on hostile records', hostile],
])('%s', (_, html) => {
  test('gives an accessibility engine nothing to find', async () => {
    const page = await opened(html);
    await page.evaluate(axe.source);
    const {violations, passes} = await page.evaluate<AxeResults>('axe.run()');
    expect(violations.map(({id, nodes}) => `${id}: ${nodes.map(({html: node}) => node).join(' ')}`)).toEqual(
      [],
    );
    expect(passes.length).toBeGreaterThan(10);
    await page.close();
  });

  test('runs nothing and asks for nothing', async () => {
    const page = await opened(html);
    expect(
      await page.evaluate(`({
      hit: 'hit' in globalThis,
      active: document.querySelectorAll('script, iframe, object, embed, form, base, link, img, meta[http-equiv=refresh]').length,
      handlers: [...document.querySelectorAll('*')].filter(
        (element) => element.getAttributeNames().some((name) => name.startsWith('on'))).length,
      styles: document.querySelectorAll('style').length,
    })`),
    ).toEqual({hit: false, active: 0, handlers: 0, styles: 1});
    expect(asked).toEqual([]);
    await page.close();
  });

  test.each([1024, 480])('is no wider than a window of %i', async (width) => {
    const page = await opened(html);
    await page.setViewportSize({width, height: 800});
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
    await page.close();
  });

  test('skips no level of heading', async () => {
    const page = await opened(html);
    const levels = await page
      .locator('h1, h2, h3, h4')
      .evaluateAll((all) => all.map(({tagName}) => Number(tagName.slice(1))));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, at) => level > (levels[at - 1] ?? 0) + 1)).toEqual([]);
    await page.close();
  });
});

test('prints with every reading on the page', async () => {
  const page = await opened(usual);
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
    const outside = each.pieces.filter(
      ({text: piece, x, width}) => piece.trim() !== '' && (x < 0 || x + width > each.width),
    );
    expect(outside).toEqual([]);
  }
});
