/** The head of every page: what the page may never do, and that no text in it can turn its own order round. */
import {createHash} from 'node:crypto';
import {h} from 'hastscript';
import {expect, test} from 'vitest';
import {type HtmlPage, htmlPage} from '../../src/print/html-page.js';

const PAGE: HtmlPage = {language: 'de', title: 'Bericht', style: 'p { margin: 0; }', body: [h('p', 'Text')]};

function policyOf(page: HtmlPage): readonly string[] {
  const [, policy = ''] = /Content-Security-Policy" content="([^"]*)"/.exec(htmlPage(page)) ?? [];
  return policy.replaceAll('&#x27;', "'").split('; ').sort();
}

const NOTHING = ["base-uri 'none'", "default-src 'none'", "form-action 'none'", "style-src 'unsafe-inline'"];

test('a page may ask for nothing, send nothing and run nothing', () => {
  expect(policyOf(PAGE)).toEqual(NOTHING);
  expect(htmlPage(PAGE)).toContain('<meta name="referrer" content="no-referrer">');
});

test('pictures are let in from inside the file alone, and one script by its hash', () => {
  const script = 'document.title = "ü";';
  const hash = createHash('sha256').update(script).digest('base64');
  expect(policyOf({...PAGE, pictures: true})).toEqual([...NOTHING, 'img-src data:'].sort());
  expect(policyOf({...PAGE, script})).toEqual([...NOTHING, `script-src 'sha256-${hash}'`].sort());
});

test('marks that turn the order of a text are taken out, of what is read and of what is read aloud', () => {
  const turned = 'torque \u202e54\u202c N·m';
  const body = [h('section', {ariaLabel: turned}, [h('p', turned), h('div', h('em', turned))])];
  const html = htmlPage({...PAGE, title: turned, body});
  expect(html).not.toMatch(/[\u202c\u202e]/);
  expect(html.match(/torque 54 N·m/g)).toHaveLength(4);
});
