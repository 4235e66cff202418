/** A sheet on a tablet, in a real browser: what a person does with it, and what is left of that afterwards. */
/// <reference lib="dom" />

import type {Browser} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import {RECORD} from '../../src/readings/record.js';
import {brokenAt} from '../../src/readings/seal.js';
import {openBrowser} from '../help/browser.js';
import {FINGERPRINT} from '../help/sheet.js';
import {trialBook} from '../sheet/trial.js';
import {
  begin,
  boxOf,
  exportedFrom,
  importInto,
  initials,
  openSheet,
  read,
  signAnyway,
  tabletHtml,
  takeBack,
  verdictOf,
} from './profile.js';

let browser: Browser;
let html: string;
beforeAll(async () => {
  browser = await openBrowser();
  html = await tabletHtml(trialBook, {job: '1047'});
});
afterAll(async () => {
  await browser?.close();
});

describe('ticks', () => {
  test('ask once who works, and stamp initials and time', async () => {
    const {page, trouble} = await openSheet(browser, html);
    const box = page.getByRole('checkbox', {name: 'Step 1 done'});
    await box.click();
    await expect.poll(() => page.getByRole('dialog').count()).toBe(1);
    await initials(page, 'JM');
    expect(await box.getAttribute('aria-checked')).toBe('true');
    const row = page.locator('tbody.step', {has: box});
    expect(await row.locator('.initials').textContent()).toMatch(/^JM\d{4}-\d\d-\d\d \d\d:\d\d$/);
    await page.getByRole('checkbox', {name: 'Clean camshaft bores, second'}).click();
    expect(await page.getByRole('dialog').count()).toBe(0);
    expect(await page.getByText('Working: JM').count()).toBe(1);
    expect(await page.getByRole('status').textContent()).toBe('Ticked.');
    expect(trouble).toEqual([]);
  });

  test('are not made where nobody says who works', async () => {
    const {page} = await openSheet(browser, html);
    await boxOf(page, '1:done').click();
    await page.keyboard.press('Enter');
    expect(await page.getByRole('alert').last().textContent()).toBe(
      'Write initials: one to five letters, no blanks.',
    );
    await page.keyboard.press('Escape');
    expect(await page.getByRole('dialog').count()).toBe(0);
    expect(await boxOf(page, '1:done').getAttribute('aria-checked')).toBe('false');
  });

  test('are taken back by a second press and a yes, which is an entry of its own', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await boxOf(page, '4:done').click();
    await page.getByRole('button', {name: 'Cancel'}).click();
    expect(await boxOf(page, '4:done').getAttribute('aria-checked')).toBe('true');
    await takeBack(page, '4:done');
    expect(await boxOf(page, '4:done').getAttribute('aria-checked')).toBe('false');
    const {sheets} = RECORD.parse(JSON.parse((await exportedFrom(page)).text));
    expect(sheets[0]?.entries.map(({box, by, value}) => [box, by, value])).toEqual([
      ['4:done', 'JM', 'done'],
      ['4:done', 'JM', ''],
    ]);
  });

  test('of a step whose boxes are open say so', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '2:done', 'JM');
    expect(await page.getByRole('status').textContent()).toBe(
      'Step 2 is ticked; boxes of it that are still open: 4.',
    );
  });

  test('can be made with the keyboard alone', async () => {
    const {page} = await openSheet(browser, html);
    await boxOf(page, '4:done').focus();
    await page.keyboard.press('Space');
    await page.keyboard.type('JM');
    await page.keyboard.press('Enter');
    expect(await boxOf(page, '4:done').getAttribute('aria-checked')).toBe('true');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-box'))).toBe('5:done');
  });

  test('carry the initials of the next one who works', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await page.getByRole('button', {name: 'Change'}).click();
    await initials(page, 'KO');
    await boxOf(page, '7:done').click();
    const {sheets} = RECORD.parse(JSON.parse((await exportedFrom(page)).text));
    expect(sheets[0]?.entries.map(({by}) => by)).toEqual(['JM', 'KO']);
  });
});

describe('readings', () => {
  // Limits 0.004–0.009 in; no accuracy is known of the gauge, so the last tenth of 0.005 in is near.
  test.each([
    ['0.0065', 'in', 'within limits'],
    ['.0065', 'in', 'within limits'],
    ['0.0065 in', 'in', 'within limits'],
    ['0.009', 'near', 'near the limit: in the last tenth of the tolerance'],
    ['0.0041', 'near', 'near the limit: in the last tenth of the tolerance'],
    ['0.0091', 'out', 'OUT OF LIMITS: OVER'],
    ['-0.006', 'out', 'OUT OF LIMITS: UNDER'],
    ['6.5', 'out', 'OUT OF LIMITS: OVER'],
    ['6', 'out', 'OUT OF LIMITS: OVER (Is 0.006 in meant? Then write that.)'],
    ['0,0065', 'refused', 'Not written down: write a decimal with a point, such as 2.5.'],
    ['6 thou', 'refused', 'Not written down: write a number alone (in), such as 0.0025.'],
  ])('%s is %s as it is typed, and after', async (text, state, says) => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await boxOf(page, '5:1').pressSequentially(text);
    const verdict = verdictOf(page, '5:1');
    expect(await verdict.textContent()).toBe(says);
    expect(await verdict.getAttribute('class')).toBe(`verdict ${state}`);
    expect(await verdict.locator('svg').count()).toBe(1);
    await page.keyboard.press('Tab');
    expect(await verdict.textContent()).toBe(says);
    expect(await page.getByRole('status').textContent()).toContain(says);
    const {sheets} = RECORD.parse(JSON.parse((await exportedFrom(page)).text));
    const written = state === 'refused' ? [] : [text.replace(' in', '')];
    expect(sheets[0]?.entries.slice(1).map(({value}) => value)).toEqual(written);
  });

  test('have their unit and limits for a screen reader', async () => {
    const {page} = await openSheet(browser, html);
    const input = page.getByRole('textbox', {name: 'Measure main clearance, front, in'});
    const described = await input.getAttribute('aria-describedby');
    expect(await page.locator(`#${described}`).count()).toBe(1);
    expect(await input.getAttribute('inputmode')).toBe('decimal');
  });

  test('out of limits open the steps for that', async () => {
    const {page} = await openSheet(browser, html);
    const rework = boxOf(page, '10a:done');
    const fold = page.getByRole('button', {name: /these steps/});
    expect([await rework.isVisible(), await fold.textContent()]).toEqual([false, 'Show these steps']);
    await begin(page, '4:done', 'JM');
    const before = await page.locator('.t-bar .t-progress').textContent();
    await read(page, '10:1:front', '0.0025');
    expect(await rework.isVisible()).toBe(false);
    await read(page, '10:1:second', '0.0036');
    expect(await rework.isVisible()).toBe(true);
    expect(await page.getByRole('status').textContent()).toContain('the steps for that are open now');
    const count = (text: string | null) => Number(/of (\d+)/.exec(text ?? '')?.[1]);
    // The two steps of the branch, and five saddles.
    expect(count(await page.locator('.t-bar .t-progress').textContent())).toBe(count(before) + 7);
    await read(page, '10:1:second', '0.0030');
    expect(await rework.isVisible()).toBe(false);
    await fold.click();
    expect(await rework.isVisible()).toBe(true);
  });
});

describe('a reading out of limits', () => {
  test('stops: it says so, at every tick, and neither section nor sheet is signed over it', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await read(page, '5:1', '0.0095');
    expect(await page.getByRole('status').textContent()).toBe(
      'Written down: OUT OF LIMITS: OVER. Stop: show the shop lead.',
    );
    expect(await page.locator('.stop.standing').textContent()).toContain(
      'This sheet has no steps for a reading out of limits.',
    );
    await boxOf(page, '7:done').click();
    expect(await page.getByRole('status').textContent()).toBe('Ticked. Out of limits: step 5.');
    for (const key of ['section:2:done', 'closing:complete', 'closing:built', 'closing:checked']) {
      await boxOf(page, key).click();
      expect(await page.getByRole('dialog').textContent()).toContain(
        'step 5, Measure camshaft end float: 0.0095 in',
      );
      await page.getByRole('button', {name: 'OK'}).click();
    }
    const {sheets} = RECORD.parse(JSON.parse((await exportedFrom(page)).text));
    expect(sheets[0]?.entries.map(({box}) => box)).toEqual(['4:done', '5:1', '7:done']);
  });

  test('is read again in a box of its own, after a reload as well', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await read(page, '5:1', '0.0095');
    await page.getByRole('button', {name: /^Read again after rework/}).click();
    await read(page, '5:1', '0.0065');
    expect(await page.locator('.stop.standing').count()).toBe(0);
    expect(await page.locator('.rounds', {hasText: '1: 0.0095 (JM)'}).count()).toBe(1);
    await boxOf(page, 'section:2:done').click();
    expect(await boxOf(page, 'section:2:done').getAttribute('aria-checked')).toBe('true');
    await page.reload();
    expect(await boxOf(page, '5:1').inputValue()).toBe('0.0065');
    const {sheets} = RECORD.parse(JSON.parse((await exportedFrom(page)).text));
    expect(sheets[0]?.entries.map(({box, value}) => [box, value])).toEqual([
      ['4:done', 'done'],
      ['5:1', '0.0095'],
      ['5:1@2', '0.0065'],
      ['section:2:done', 'done'],
    ]);
  });

  test('is accepted as it is by somebody else, with a reason', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await read(page, '5:1', '0.0095');
    await page.getByRole('button', {name: /^Accept as it is/}).click();
    await signAnyway(page, 'JM', 'thrust plate is new');
    expect(await page.getByRole('dialog').getByRole('alert').textContent()).toContain('JM took this reading');
    await initials(page, 'SL');
    expect(await page.locator('.stop').filter({hasText: 'accepted'}).textContent()).toMatch(
      /0\.0095 in: accepted as it is by SL, \d{4}-\d\d-\d\d \d\d:\d\d, because “thrust plate is new”/,
    );
    await boxOf(page, 'section:2:done').click();
    expect(await boxOf(page, 'section:2:done').getAttribute('aria-checked')).toBe('true');
  });
});

describe('a loop of rework', () => {
  test('has boxes for every round, and keeps what stood in those before', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '7:done', 'JM');
    await boxOf(page, '10:done').click();
    for (const value of ['0.0036', '0.0038', '0.0030']) {
      await read(page, '10:1:front', value);
      if (value === '0.0030') break;
      await boxOf(page, '10b:done').click();
      await page.getByRole('dialog').getByRole('button', {name: 'Go back to step 7'}).click();
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-box')))
        .toBe('7:done');
      expect(await boxOf(page, '7:done').getAttribute('aria-checked')).toBe('false');
      expect(await boxOf(page, '10:1:front').inputValue()).toBe('');
      await boxOf(page, '7:done').click();
    }
    expect(await page.getByRole('status').textContent()).toBe('Written down: within limits.');
    expect(await page.locator('.stop.standing').count()).toBe(0);
    const stamp = page.locator('[data-stamp="7:done"]');
    expect(await stamp.textContent()).toMatch(/^1: JM2: JMRound 3JM\d{4}/);
    const {sheets} = RECORD.parse(JSON.parse((await exportedFrom(page)).text));
    expect(sheets[0]?.entries.map(({box}) => box)).toEqual([
      '7:done',
      '10:done',
      '10:1:front',
      '10b:done',
      '7:done@2',
      '10:1:front@2',
      '10b:done@2',
      '7:done@3',
      '10:1:front@3',
    ]);
  });

  test('shows at the small boxes what was ticked in the round before', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '7:done', 'JM');
    const [place, pass] = ['8:2:front', '9:1:1:front'].map((key) => boxOf(page, key));
    for (const box of [place, pass]) await box?.click();
    await read(page, '10:1:front', '0.0036');
    await boxOf(page, '10b:done').click();
    await page.getByRole('dialog').getByRole('button', {name: 'Go back to step 7'}).click();
    for (const box of [place, pass]) {
      expect(await box?.getAttribute('aria-checked')).toBe('false');
      expect(await box?.getAttribute('data-before')).toBe('1✓');
      expect(await box?.getAttribute('aria-label')).toMatch(/, 1: JM, Round 2$/);
    }
    expect(await boxOf(page, '8:2:rear').getAttribute('data-before')).toBeNull();
    // Small, and in its place: it makes no box larger.
    const sizes = await page
      .locator('button.box[data-before]')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().width));
    expect(sizes).toEqual([44, 44]);
  });
});

describe('times of curing', () => {
  test('are times, and long enough', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await read(page, '20:1:started', 'X');
    expect(await page.getByRole('status').textContent()).toContain('write a time');
    await read(page, '20:1:started', '2026-03-01 17:00');
    await read(page, '20:1:finished', '2026-03-01 17:10');
    expect(await verdictOf(page, '20:1:finished').textContent()).toBe(
      'TOO SHORT: 10 min, at least 24 h is asked for',
    );
    await read(page, '20:1:finished', '2026-03-02 17:00');
    expect(await verdictOf(page, '20:1:finished').textContent()).toBe('left for 24 h');
    await page.locator('[data-now="20:1:started"]').click();
    expect(await boxOf(page, '20:1:started').inputValue()).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d$/);
  });
});

describe('hold points', () => {
  test('are not signed by whoever did the work, whatever the spelling, nor before it is done', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '9:done', 'JM');
    await page.getByRole('button', {name: 'Sign: bottom end closed'}).click();
    expect(await page.getByRole('dialog').textContent()).toMatch(/Open: steps 8, 9, 10, 11, 12/);
    await signAnyway(page, 'j.m.', 'the strips are lost');
    expect(await page.getByRole('dialog').getByRole('alert').textContent()).toBe(
      'j.m. did step 9, and cannot sign for it. A second person must.',
    );
    await initials(page, 'RT');
    const signed = page.getByRole('button', {name: /^bottom end closed: signed by RT, \d{4}-/});
    expect(await signed.textContent()).toBe('RT');
    expect(await page.getByRole('status').textContent()).toMatch(/^Signed, but open: steps 8, 9, 10, 11, 12/);
    // Nor does whoever signed go on with the work, and what is looked at goes by the second person too.
    await boxOf(page, '13:hold:bottom-end-closed:turns-freely').click();
    await initials(page, 'RT');
    await page.getByRole('button', {name: 'Change'}).click();
    await initials(page, 'RT');
    await boxOf(page, '12:done').click();
    expect(await page.getByRole('status').textContent()).toBe(
      'RT signed for “bottom end closed”, and cannot do the work that was signed for.',
    );
    const {sheets} = RECORD.parse(JSON.parse((await exportedFrom(page)).text));
    expect(sheets[0]?.entries.map(({box, by, value}) => [box, by, value])).toEqual([
      ['9:done', 'JM', 'done'],
      ['13:hold:bottom-end-closed', 'RT', 'the strips are lost'],
      ['13:hold:bottom-end-closed:turns-freely', 'RT', 'done'],
    ]);
  });

  test('the sign-off takes two people as well', async () => {
    const {page} = await openSheet(browser, html);
    await page.getByRole('button', {name: 'Sign: Built by'}).click();
    await initials(page, 'JM');
    await page.getByRole('button', {name: /^Sign: Checked by/}).click();
    await initials(page, 'JM');
    expect(await page.getByRole('dialog').getByRole('alert').textContent()).toContain(
      'A second person must.',
    );
  });
});

describe('the record', () => {
  test('is there again after a reload, and who works as well', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await read(page, '5:1', '.0065');
    await read(page, '1:1', 'OM 4711');
    await page.reload();
    expect(await boxOf(page, '4:done').getAttribute('aria-checked')).toBe('true');
    expect(await boxOf(page, '5:1').inputValue()).toBe('.0065');
    expect(await boxOf(page, '1:1').inputValue()).toBe('OM 4711');
    expect(await page.getByText('Working: JM').count()).toBe(1);
  });

  test('has what was typed and not left when the page went', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await boxOf(page, '5:1').pressSequentially('0.0065');
    await page.reload();
    expect(await boxOf(page, '5:1').inputValue()).toBe('0.0065');
  });

  test('goes out under the number of the job, and comes into an empty profile the same', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await read(page, '5:1', '.0095');
    await read(page, '1:1', 'OM 4711');
    await takeBack(page, '4:done');
    const {file, text} = await exportedFrom(page);
    expect(file).toBe('1047.record.json');
    const record = RECORD.parse(JSON.parse(text));
    expect(record).toMatchObject({engine: 'example', job: '1047'});
    expect(record.sheets).toMatchObject([
      {procedure: '03-camshaft', revision: 'C', fingerprint: FINGERPRINT},
    ]);
    expect(record.sheets.map(brokenAt)).toEqual([undefined]);

    const other = await openSheet(browser, html);
    expect(await boxOf(other.page, '5:1').inputValue()).toBe('');
    await importInto(other.page, text);
    await other.page.getByText('4 entries taken in; 0 were here already.').waitFor();
    expect(await boxOf(other.page, '5:1').inputValue()).toBe('.0095');
    expect((await exportedFrom(other.page)).text).toBe(text);
    await importInto(other.page, text);
    await other.page.getByText('0 entries taken in; 4 were here already.').waitFor();
  });

  test('of two tablets that went apart becomes one', async () => {
    const one = await openSheet(browser, html);
    await begin(one.page, '4:done', 'JM');
    const shared = (await exportedFrom(one.page)).text;
    const two = await openSheet(browser, html);
    await importInto(two.page, shared);
    await two.page.getByText('1 entries taken in').waitFor();
    await begin(two.page, '6:done', 'KO');
    await boxOf(one.page, '7:done').click();
    await importInto(one.page, (await exportedFrom(two.page)).text);
    await one.page.getByText('The two records had gone apart').waitFor();
    const {sheets} = RECORD.parse(JSON.parse((await exportedFrom(one.page)).text));
    expect(sheets[0]?.entries.map(({box}) => box)).toEqual(['4:done', '6:done', '7:done']);
    expect(sheets.map(brokenAt)).toEqual([undefined]);
  });

  test('that was changed after it was written, or is of something else, is not taken in', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    const {text} = await exportedFrom(page);
    const other = await openSheet(browser, html);
    const refused = async (changed: string, says: string | RegExp) => {
      await importInto(other.page, changed);
      await other.page.getByRole('status').filter({hasText: says}).waitFor();
      expect(await boxOf(other.page, '4:done').getAttribute('aria-checked')).toBe('false');
    };
    await refused(text.replace('"JM"', '"KO"'), 'entry 1 of 03-camshaft does not carry the seal');
    await refused(text.replace('"job": "1047"', '"job": "1048"'), 'of job or engine number 1048');
    await refused(text.replace('"engine": "example"', '"engine": "else"'), 'of another engine, else');
    await refused(text.replace(FINGERPRINT, 'f'.repeat(64)), 'revision C, fingerprint ffffffffff');
    await refused(text.slice(0, -9), 'it is not a record');
    await refused(text.replace('"record": 1', '"record": 2'), 'it is not a record');
  });

  test('that was changed on the device shows as such, and is kept', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await page.evaluate(() => {
      const [key = ''] = Object.keys(localStorage);
      localStorage.setItem(key, (localStorage.getItem(key) ?? '').replace('"JM"', '"KO"'));
    });
    await page.reload();
    expect(await page.locator('.t-alarm').textContent()).toContain(
      'changed by other means than this page, from entry 1 on',
    );
    expect(await boxOf(page, '4:done').getAttribute('aria-checked')).toBe('true');
  });

  test('that can’t be read is put aside', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await page.evaluate(() => {
      const [key = ''] = Object.keys(localStorage);
      localStorage.setItem(key, '{"sheet":');
    });
    await page.reload();
    expect(await page.locator('.t-alarm').textContent()).toContain('can’t be read');
    await boxOf(page, '7:done').click();
    await page.reload();
    expect(await boxOf(page, '7:done').getAttribute('aria-checked')).toBe('true');
    expect(await page.evaluate(() => Object.values(localStorage))).toContain('{"sheet":');
  });

  test('makes room for the next one only when asked twice', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await page.getByText('Record', {exact: true}).click();
    await page.getByRole('button', {name: 'New record'}).click();
    await page.getByRole('button', {name: 'Cancel'}).click();
    expect(await boxOf(page, '4:done').getAttribute('aria-checked')).toBe('true');
    await page.getByRole('button', {name: 'New record'}).click();
    await page.getByRole('button', {name: 'Delete and begin'}).click();
    expect(await boxOf(page, '4:done').getAttribute('aria-checked')).toBe('false');
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
  });

  test('takes the number of the engine where the sheet has none', async () => {
    const {page} = await openSheet(browser, await tabletHtml(trialBook));
    await page.getByRole('textbox', {name: 'Engine number', exact: true}).fill('OM 4711/b');
    await begin(page, '4:done', 'JM');
    await page.reload();
    expect(await page.getByRole('textbox', {name: 'Engine number', exact: true}).inputValue()).toBe(
      'OM 4711/b',
    );
    const {file, text} = await exportedFrom(page);
    expect(file).toBe('OM-4711-b.record.json');
    expect(RECORD.parse(JSON.parse(text)).engineNumber).toBe('OM 4711/b');
  });

  test('goes along to a second window on the same sheet', async () => {
    const {page, context, url} = await openSheet(browser, html);
    const second = await context.newPage();
    await second.goto(url);
    await begin(page, '4:done', 'JM');
    await expect.poll(() => boxOf(second, '4:done').getAttribute('aria-checked')).toBe('true');
    await begin(second, '7:done', 'KO');
    await expect.poll(() => boxOf(page, '7:done').getAttribute('aria-checked')).toBe('true');
    expect(RECORD.parse(JSON.parse((await exportedFrom(page)).text)).sheets[0]?.entries).toHaveLength(2);
  });
});

describe('a device that keeps nothing', () => {
  test('says so where its storage is forbidden, and works on', async () => {
    const {page} = await openSheet(browser, html, (context) =>
      context.addInitScript(() => {
        for (const name of ['localStorage', 'sessionStorage']) {
          Object.defineProperty(window, name, {
            get() {
              throw new DOMException('forbidden', 'SecurityError');
            },
          });
        }
      }),
    );
    expect(await page.locator('.t-alarm').textContent()).toContain('keeps nothing on the device');
    await begin(page, '4:done', 'JM');
    expect(RECORD.parse(JSON.parse((await exportedFrom(page)).text)).sheets[0]?.entries).toHaveLength(1);
  });

  test('says so when its storage is full, and loses nothing of what is on the page', async () => {
    const {page} = await openSheet(browser, html);
    await begin(page, '4:done', 'JM');
    await page.evaluate(() => {
      for (let size = 4_000_000; size >= 1; size = Math.floor(size / 2)) {
        try {
          for (let at = 0; ; at++) localStorage.setItem(`full ${size} ${at}`, 'x'.repeat(size));
        } catch {
          // No room for so much: on with less.
        }
      }
    });
    await boxOf(page, '7:done').click();
    expect(await page.locator('.t-alarm').textContent()).toContain('storage of this device is full');
    expect(await boxOf(page, '7:done').getAttribute('aria-checked')).toBe('true');
    await page.evaluate(() => {
      for (const key of Object.keys(localStorage)) if (key.startsWith('full')) localStorage.removeItem(key);
    });
    await boxOf(page, '6:done').click();
    expect(await page.locator('.t-alarm').textContent()).toBe('');
    await page.reload();
    expect(await boxOf(page, '7:done').getAttribute('aria-checked')).toBe('true');
  });
});

test('progress counts by section and over all, and leads to the next open box', async () => {
  const {page} = await openSheet(browser, html);
  await begin(page, '1:done', 'JM');
  const section = page.locator('section[data-section=section-2] .t-progress');
  expect(await section.textContent()).toMatch(/^1 of 16 done$/);
  await page.getByRole('button', {name: 'Next open box'}).click();
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-box'))).toBe('before:tools:1');
});
