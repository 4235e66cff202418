/** The whole way: a book to its sheet, the sheet in a browser, its exported record to the report. */
import {readFileSync} from 'node:fs';
import {writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import type {Browser} from 'playwright-core';
import {afterAll, beforeAll, expect, test} from 'vitest';
import {openBrowser} from '../help/browser.js';
import {smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {begin, boxOf, exportedFrom, initials, openSheet, read} from '../tablet/profile.js';
import {wmark} from './run.js';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
});

const FIT = `fits:
  gap: {at: [left, right], between: [block], limits: {value: 0.010–0.020 in, because: invented}, when: {installed: [block]}}
`;
const STEPS = '3. Read the gap. `measure: gap using feeler-gauges`\n';

test('what was entered on the tablet is what the report tells', async () => {
  const small = smallBook();
  const folder = await temporaryFolder({
    ...small,
    'book/shop.yaml': String(small['book/shop.yaml']).replace(
      'tools: {',
      'tools: {feeler-gauges: {gauge: true}, ',
    ),
    'book/engine.yaml': small['book/engine.yaml'] + FIT,
    'book/plug.md': small['book/plug.md'] + STEPS,
  });
  const made = wmark(folder, 'sheet', 'book', '--out', 'out');
  expect([made.code, made.err]).toEqual([0, '']);
  const {page} = await openSheet(browser, readFileSync(join(folder, 'out/small/plug.html'), 'utf8'));
  await begin(page, '1:done', 'JM');
  // Once a reading is out, the sign-off is refused: it is given before here.
  await boxOf(page, 'closing:built').click();
  await boxOf(page, 'closing:checked').click();
  await initials(page, 'RT');
  await read(page, '3:1:left', '0.0215');
  await read(page, '3:1:right', '.012');
  const {text} = await exportedFrom(page);
  await writeFile(join(folder, '7.record.json'), text);
  const {code, out, err} = wmark(folder, 'readings', '7.record.json');
  expect([code, err]).toEqual([1, '']);
  expect(out).toMatch(
    /\n {2}plug, step 3: error: gap, left: 0\.0215 in \(JM, [-\d]+ [\d:]+ UTC\); over its limits, 0\.010–0\.020 in {2}\[out\]\n/,
  );
  expect(out).toContain('plug, step 2: error: not answered: Drive the plug in  [missing]\n');
  expect(out).not.toMatch(/step 1:|right|signed-over-out|same-hand|seal-broken|book-changed/);
});
