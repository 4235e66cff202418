/** HTML as a page of a real browser: what it does when it is opened, what in it could act, and what assistive technology finds wrong. */
/// <reference lib="dom" />
import axe, {type AxeResults} from 'axe-core';
import type {Browser, Page} from 'playwright-core';

export interface OpenedPage {
  readonly page: Page;
  /** What it asked for outside itself, the boxes that a script opened, and the errors of scripts. */
  readonly trouble: string[];
}

/** As wide as a tablet that stands on its side; whoever opens it closes it. */
export async function openPage(browser: Browser, html: string): Promise<OpenedPage> {
  const page = await browser.newPage({viewport: {width: 1024, height: 1366}});
  const trouble = troubleOf(page);
  await page.setContent(html, {waitUntil: 'load'});
  return {page, trouble};
}

/** Notes from now on whatever a page must not do; `outside` are the addresses that it must not ask for. */
export function troubleOf(page: Page, outside = /^(?:https?|file|ws):/): string[] {
  const trouble: string[] = [];
  page.on('request', (request) => {
    if (outside.test(request.url())) trouble.push(request.url());
  });
  page.on('dialog', async (dialog) => {
    trouble.push(`dialog ${dialog.message()}`);
    await dialog.dismiss();
  });
  page.on('pageerror', ({message}) => trouble.push(message));
  return trouble;
}

/** What of a page could act; `hit` is what the attacks of the tests try to set. */
export function activeParts(page: Page) {
  return page.evaluate(() => ({
    hit: 'hit' in globalThis,
    elements: [
      ...document.querySelectorAll(
        'iframe, object, embed, form, base, link, img, meta[http-equiv=refresh], video, audio',
      ),
    ].map(({outerHTML}) => outerHTML),
    scripts: document.scripts.length,
    handlers: [...document.querySelectorAll('*')].filter((element) =>
      element.getAttributeNames().some((name) => name.startsWith('on')),
    ).length,
    // Addresses of other sheets have no protocol on a page that has no address itself.
    links: [...document.links].flatMap(({protocol, outerHTML}) =>
      ['http:', 'https:', 'about:', 'mailto:', ':'].includes(protocol) ? [] : [outerHTML],
    ),
    styles: document.querySelectorAll('style').length,
  }));
}

/** A page that does nothing. */
export const STILL = {hit: false, elements: [], scripts: 0, handlers: 0, links: [], styles: 1};

/**
 * What an accessibility engine finds wrong. The page's own policy forbids scripts; the engine is let in from outside.
 * @throws Error where it found next to nothing to look at: that is no page without a fault.
 */
export async function accessibilityFaults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const {violations, passes} = await page.evaluate<AxeResults>('axe.run()');
  if (passes.length <= 10) throw new Error(`only ${passes.length} rules had anything to look at`);
  return violations.map(({id, nodes}) => `${id}: ${nodes.map(({html}) => html).join(' ')}`);
}

/** 1 for the title of the page, and so on, in the order of the page. */
export function headingLevels(page: Page): Promise<number[]> {
  return page
    .locator('h1, h2, h3, h4, h5, h6')
    .evaluateAll((all) => all.map(({tagName}) => Number(tagName.slice(1))));
}
