/** A sheet on a tablet as a page: for everybody, on paper, quick when it is long, and deaf to what attacks it. */
/// <reference lib="dom" />

import type {Browser, Page} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {RECORD, type SheetRecord} from '../../src/readings/record.js';
import {withEntry} from '../../src/readings/seal.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {openBrowser} from '../help/browser.js';
import {book} from '../help/example.js';
import {accessibilityFaults} from '../help/page.js';
import {readPdf} from '../help/pdf.js';
import {firstSheet} from '../help/sheet.js';
import {ATTACKS, hardBook, hostileBook} from '../sheet/hard.js';
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
} from './profile.js';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
});

/** Something of everything: ticks, readings in, near, out and refused, a branch open, a hold point signed. */
async function filled(page: Page): Promise<void> {
  await begin(page, '4:done', 'JM');
  await boxOf(page, '2:1:front').click();
  await read(page, '5:1', '.0065');
  await read(page, '10:1:front', '0.0016');
  await read(page, '10:1:second', '0.0036');
  await read(page, '10:1:centre', '2,5');
  await read(page, '1:1', 'OM 4711');
  await boxOf(page, '16:1:1:inlet-3').click();
  await boxOf(page, '20:1:started').fill('2026-03-01 08:00');
  await read(page, '20:1:finished', '2026-03-01 09:00');
  await read(page, '17:1:1-inlet', '0.019');
  await page.getByRole('button', {name: /^Accept as it is.*1 inlet/}).click();
  await signAnyway(page, 'SL', 'the maker allows it');
}

describe('for everybody', () => {
  test('an accessibility engine finds nothing, empty, filled in, and with a question open', async () => {
    const {page} = await openSheet(browser, await tabletHtml(trialBook));
    expect(await accessibilityFaults(page)).toEqual([]);
    await filled(page);
    expect(await accessibilityFaults(page)).toEqual([]);
    await boxOf(page, '13:hold:bottom-end-closed').click();
    expect(await page.getByRole('dialog').count()).toBe(1);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  // WCAG 2.2, 2.5.5 (AAA): 44 by 44 CSS pixels.
  test.each([1280, 1024, 820, 768, 600, 390])(
    'every target is 44 pixels large, and the page no wider than %i',
    async (width) => {
      const {page} = await openSheet(browser, await tabletHtml(trialBook));
      await page.setViewportSize({width, height: 1000});
      await filled(page);
      const small = await page.locator('button:visible, input:visible').evaluateAll((all) =>
        all.flatMap((element) => {
          const {width: wide, height} = element.getBoundingClientRect();
          return Math.min(wide, height) < 43.9 ? [`${element.outerHTML} ${wide} × ${height}`] : [];
        }),
      );
      expect(small).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      // What stands on a button has room there, and so has a date and time of day in its field.
      const tight = await page
        .locator('[data-now]:visible, input.line:visible')
        .evaluateAll((all) =>
          all.flatMap((element) =>
            element.scrollWidth > element.clientWidth + 1 ? [element.outerHTML] : [],
          ),
        );
      expect(tight).toEqual([]);
      // And none lies over another, or out of its cell.
      const over = await page.locator('td:visible').evaluateAll((cells) =>
        cells.flatMap((cell) => {
          const {right} = cell.getBoundingClientRect();
          return [...cell.querySelectorAll('button, input')].flatMap((element) =>
            element.getBoundingClientRect().right > right + 1 ? [element.outerHTML] : [],
          );
        }),
      );
      expect(over).toEqual([]);
    },
  );

  test('what has the focus is never under the bar', async () => {
    const {page} = await openSheet(browser, await tabletHtml(trialBook));
    await boxOf(page, '12:done').focus();
    for (let at = 0; at < 30; at++) {
      await page.keyboard.press('Shift+Tab');
      const [bar, top] = await page.evaluate(() => [
        document.querySelector('.t-bar')?.getBoundingClientRect().bottom ?? 0,
        document.activeElement?.getBoundingClientRect().top ?? 0,
      ]);
      expect(top).toBeGreaterThanOrEqual(bar ?? 0);
    }
  });
});

function withoutScript(made: Book): string {
  return sheetHtml(firstSheet(made));
}

async function printed(page: Page): Promise<string[]> {
  const pages = await readPdf(await page.pdf({preferCSSPageSize: true, printBackground: true}));
  return pages.map(({text}) => text);
}

/** What stands on each page, letter by letter: boxes that are controls come in another order inside the PDF. */
async function letters(page: Page): Promise<string[]> {
  return (await printed(page)).map((text) => [...text.replace(/\s/g, '')].sort().join(''));
}

describe('on paper', () => {
  test.each([
    ['trial', trialBook],
    ['hard', hardBook],
  ])('the empty %s sheet is that which has no script', async (_, made) => {
    const plain = await openSheet(browser, withoutScript(made));
    const active = await openSheet(browser, await tabletHtml(made));
    expect(await letters(active.page)).toEqual(await letters(plain.page));
  });

  test('and without JavaScript as well', async () => {
    const html = await tabletHtml(trialBook);
    const context = await browser.newContext({javaScriptEnabled: false});
    const page = await context.newPage();
    await page.setContent(html);
    const plain = await openSheet(browser, withoutScript(trialBook));
    const texts = await letters(page);
    await context.close();
    expect(texts).toEqual(await letters(plain.page));
  });

  test('what was filled in stands there, and no control does', async () => {
    const {page} = await openSheet(browser, await tabletHtml(trialBook));
    const empty = (await printed(page)).join(' ');
    await filled(page);
    const text = (await printed(page)).join(' ');
    for (const word of [
      'JM',
      'SL',
      'accepted as it is',
      'the maker allows it',
      'TOO SHORT: 1 h',
      'Stop: show the shop lead.',
      '.0065',
      '0.0036',
      'OM 4711',
      'within limits',
      'OUT OF LIMITS',
      'in the last tenth',
    ]) {
      expect(empty).not.toContain(word);
      expect(text).toContain(word);
    }
    for (const word of [
      'Export record',
      'Next open',
      'Working:',
      'Sign ',
      'Show these steps',
      'Fold these steps',
      'Now',
      'Read again after',
      'Accept as it is …',
      ' done of',
      'of 169',
    ]) {
      expect(text).not.toContain(word);
    }
  });
});

// Heads on paper: Reading, Round 2, Round 3; on the screen one field shows the round that the work has come to.
describe('rounds on paper', () => {
  /** What is seen in the cells of a reading, one after the other. */
  async function cellsOf(page: Page): Promise<string[]> {
    const cells = await boxOf(page, '10:1:front').locator('xpath=ancestor::tr[1]/td').all();
    return Promise.all(
      cells.map(async (cell) => {
        if (!(await cell.isVisible())) return 'hidden';
        // biome-ignore lint/performance/useDomNodeTextContent: what is hidden in the cell does not count.
        return (await cell.innerText()).replace(/\s+/g, ' ').trim();
      }),
    );
  }

  async function back(page: Page): Promise<void> {
    await boxOf(page, '10b:done').click();
    await page
      .getByRole('dialog')
      .getByRole('button', {name: /^Go back/})
      .click();
  }

  const OVER = 'OUT OF LIMITS: OVER (JM)';

  test.each([
    [['0.0030'], ['in within limits', 'in', 'in']],
    [['0.0036'], ['in OUT OF LIMITS: OVER', 'in', 'in']],
    [
      ['0.0036', '0.0030'],
      [`0.0036in ${OVER}`, '0.0030in within limits (JM)', 'in'],
    ],
    [
      ['0.0036', '0.0038', '0.0030'],
      [`0.0036in ${OVER}`, `0.0038in ${OVER}`, '0.0030in within limits (JM)'],
    ],
    [
      ['0.0036', '0.0038', '0.0037', '0.0030'],
      [`0.0036in ${OVER}`, `0.0038in ${OVER}`, `0.0037in ${OVER} 4: 0.0030 within limits (JM)`],
    ],
  ] as const)('%j stand in columns of their own', async (values, cells) => {
    const {page} = await openSheet(browser, await tabletHtml(trialBook));
    await begin(page, '7:done', 'JM');
    for (const [at, value] of values.entries()) {
      if (at > 0) await back(page);
      await read(page, '10:1:front', value);
    }
    expect((await cellsOf(page)).slice(1)).toEqual(['hidden', 'hidden']);
    expect(await boxOf(page, '10:1:front').inputValue()).toBe(values.at(-1));
    await page.emulateMedia({media: 'print'});
    expect(await cellsOf(page)).toEqual(cells);
  });

  test('a round that is asked for and not read yet leaves its column empty', async () => {
    const {page} = await openSheet(browser, await tabletHtml(trialBook));
    await begin(page, '7:done', 'JM');
    await read(page, '10:1:front', '0.0036');
    await back(page);
    await page.emulateMedia({media: 'print'});
    expect(await cellsOf(page)).toEqual([`0.0036in ${OVER}`, 'in', 'in']);
    // And a round taken back leaves nothing behind.
    await page.emulateMedia({media: 'screen'});
    await read(page, '10:1:front', '0.0030');
    await read(page, '10:1:front', '');
    await page.emulateMedia({media: 'print'});
    expect(await cellsOf(page)).toEqual([`0.0036in ${OVER}`, 'in', 'in']);
  });
});

/** A book of one procedure with this many steps, each with a reading at two places. */
function longBook(count: number): Book {
  const step = (at: number) => `${at + 1}. Read it. \`measure: play\`\n`;
  return book({
    engine: 'fits:\n  play: {at: [front, rear], limits: 0.004–0.007 in}\n',
    procedures: {'one.md': `\n## All\n\n${Array.from({length: count}, (_, at) => step(at)).join('')}`},
  });
}

test('a tick changes as little of a page of 500 steps as of one of 20', async () => {
  const changes = async (count: number) => {
    const {page} = await openSheet(browser, await tabletHtml(longBook(count)));
    await begin(page, '3:done', 'JM');
    await page.evaluate(() => {
      const seen: MutationRecord[] = [];
      new MutationObserver((records) => seen.push(...records)).observe(document, {
        subtree: true,
        childList: true,
        attributes: true,
        characterData: true,
      });
      Object.assign(window, {seen});
    });
    await boxOf(page, '7:done').click();
    await read(page, '8:1:rear', '0.005');
    return page.evaluate(() => ('seen' in window && Array.isArray(window.seen) ? window.seen.length : 0));
  };
  const few = await changes(20);
  expect(few).toBeGreaterThan(5);
  expect(await changes(500)).toBe(few);
});

/** What of a page could act, beside the data and the one script that belong there. */
function active(page: Page): Promise<unknown> {
  return page.evaluate(() => ({
    hit: 'hit' in window,
    scripts: document.scripts.length,
    others: document.querySelectorAll('iframe, object, embed, form, base, link, meta[http-equiv=refresh]')
      .length,
    handlers: [...document.querySelectorAll('*')].filter((element) =>
      element.getAttributeNames().some((name) => name.startsWith('on')),
    ).length,
    images: document.querySelectorAll('img').length,
    styles: document.querySelectorAll('style').length,
  }));
}

const HARMLESS = {hit: false, scripts: 2, others: 0, handlers: 0, images: 0, styles: 1};

// The attacks are of the kinds that OWASP's cheat sheet on script injection lists.
describe('hostile texts', () => {
  test('in titles, ids, captions, names and cautions do nothing', async () => {
    const {page, trouble} = await openSheet(
      browser,
      await tabletHtml(hostileBook, {job: ATTACKS[0], engineNumber: ATTACKS[1]}),
    );
    await begin(page, '1:done', ATTACKS[0].slice(0, 40));
    await initials(page, 'JM');
    const last = hostileBook.procedures[0]?.steps.at(-1)?.number;
    await boxOf(page, `${last}:hold:hold`).click();
    expect(await page.getByRole('dialog').getByRole('heading').textContent()).toContain(ATTACKS[0]);
    await signAnyway(page, ATTACKS[1].slice(0, 40), ATTACKS[2]);
    await initials(page, 'RT');
    await exportedFrom(page);
    expect(await active(page)).toEqual(HARMLESS);
    expect(trouble).toEqual([]);
  });

  test('as readings, numbers and initials do nothing', async () => {
    const {page, trouble} = await openSheet(browser, await tabletHtml(trialBook));
    await begin(page, '4:done', 'JM');
    for (const attack of ATTACKS) {
      await read(page, '5:1', attack);
      await read(page, '1:1', attack);
      await page.getByRole('textbox', {name: 'Engine number', exact: true}).fill(attack);
      await page.getByRole('button', {name: 'Change'}).click();
      await initials(page, attack.slice(0, 40));
      expect(await page.getByRole('alert').last().textContent()).toContain('Write initials');
      await initials(page, 'KO');
      const ticked = (await boxOf(page, '7:done').getAttribute('aria-checked')) === 'true';
      await (ticked ? takeBack(page, '7:done') : boxOf(page, '7:done').click());
    }
    await page.reload();
    expect(await boxOf(page, '1:1').inputValue()).toBe(ATTACKS.at(-1));
    expect(await active(page)).toEqual(HARMLESS);
    expect(trouble).toEqual([]);
  });

  test('in a record that is taken in do nothing, and in one that is not', async () => {
    const {page, trouble} = await openSheet(browser, await tabletHtml(trialBook));
    const record = RECORD.parse(JSON.parse((await exportedFrom(page)).text));
    const [empty] = record.sheets;
    if (empty === undefined) throw new Error('no sheet');
    const keys = ['1:1', '5:1', '4:done', '13:hold:bottom-end-closed', ...ATTACKS];
    let hostile: SheetRecord = {...empty, title: ATTACKS[0], revision: ATTACKS[1]};
    for (const value of ATTACKS) {
      for (const box of keys) {
        hostile = withEntry(hostile, {at: '2026-03-01T00:00:00Z', by: value.slice(0, 40), box, value});
      }
    }
    const other = {...hostile, procedure: ATTACKS[2], entries: []};
    await importInto(page, JSON.stringify({...record, engineNumber: ATTACKS[3], sheets: [hostile, other]}));
    await page.getByText(`${hostile.entries.length} entries taken in`).waitFor();
    expect(await boxOf(page, '1:1').inputValue()).toBe(ATTACKS.at(-1));
    await page.reload();
    for (const refused of [
      {...record, engine: ATTACKS[0]},
      {...record, engineNumber: ATTACKS[5]},
      {...record, sheets: [{...hostile, fingerprint: 'f'.repeat(64)}]},
      {...record, sheets: [{...hostile, procedure: ATTACKS[4]}]},
    ]) {
      await importInto(page, JSON.stringify(refused));
      await page.getByRole('status').filter({hasText: 'was not taken in'}).waitFor();
    }
    expect(await active(page)).toEqual(HARMLESS);
    expect(trouble).toEqual([]);
  });

  test('put into the page as a script are stopped by its policy', async () => {
    const html = await tabletHtml(trialBook);
    const put = html.replace(
      '</main>',
      '</main><script>window.hit=1</script><img src=x onerror="window.hit=1">',
    );
    expect(put).not.toBe(html);
    const {page, trouble} = await openSheet(browser, put);
    expect(await page.evaluate(() => 'hit' in window)).toBe(false);
    expect(trouble.join(' ')).toContain('Content Security Policy');
    // The sheet's own script still runs.
    await begin(page, '4:done', 'JM');
    expect(await boxOf(page, '4:done').getAttribute('aria-checked')).toBe('true');
  });
});

// The date beside a signature, on screen and paper, was cut short when its line was narrow.
test('no date beside a signature is cut', async () => {
  const {page} = await openSheet(browser, await tabletHtml(trialBook));
  await boxOf(page, '13:hold:bottom-end-closed').click();
  await signAnyway(page, 'RT', 'shown here');
  for (const media of ['screen', 'print'] as const) {
    await page.emulateMedia({media});
    const cut = await page
      .locator('.line.date:visible')
      .evaluateAll((lines) =>
        lines.flatMap((line) => (line.scrollWidth > line.clientWidth + 1 ? [line.textContent] : [])),
      );
    expect(cut).toEqual([]);
  }
});

test('the script is small, and nothing in it could end its element', async () => {
  const html = await tabletHtml(trialBook);
  const script = /<script>([\s\S]*?)<\/script>/.exec(html)?.[1] ?? '';
  expect(script.length).toBeGreaterThan(10_000);
  expect(script.length).toBeLessThan(45_000);
  expect(html.split('</script>')).toHaveLength(3);
  expect(script).not.toContain('<!--');
});
