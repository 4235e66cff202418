/** Pieces of the HTML that a browser test does not look at one by one. */
import {HtmlValidate} from 'html-validate';
import {describe, expect, test} from 'vitest';
import {compileCover} from '../../src/sheet/cover.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {coverHtml} from '../../src/sheet/html-cover.js';
import {sheetPrint} from '../../src/sheet/print.js';
import {sheetNames} from '../../src/sheet/sheet-names.js';
import {runs} from '../../src/sheet/step-runs.js';
import {book} from '../help/example.js';
import {firstSheet} from '../help/sheet.js';
import {hardBook, hostileBook} from './hard.js';
import {trialBook} from './trial.js';

const OPTIONS = {fingerprint: '0123456789abcdef'};

function htmlOf(markdown: string): string {
  const made = book({engine: 'parts:\n  pump: {}\n', procedures: {'one.md': markdown}});
  return sheetHtml(firstSheet(made));
}

const PIXEL =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGP4//8/AAX+Av4N70a4AAAAAElFTkSuQmCC';

describe('a picture', () => {
  test('inside the file is shown, with its words', () => {
    expect(htmlOf(`1. Look.\n\n   ![the pump](${PIXEL} "Pump, from below")\n`)).toContain(
      `<figure class="figure"><img src="${PIXEL}" alt="the pump"><figcaption>Pump, from below</figcaption></figure>`,
    );
  });

  test.each([
    'pump.png',
    'https://example.org/pump.png',
    'data:image/svg+xml;base64,AAAA',
    'data:text/html;base64,AAAA',
  ])('at %s is a frame with its words', (url) => {
    const html = htmlOf(`1. Look.\n\n   ![the pump](${url})\n`);
    expect(html).not.toContain('<img');
    expect(html).toContain('<figcaption class="missing">Picture: the pump</figcaption>');
  });
});

describe('the same book', () => {
  test.each([
    ['trial', trialBook],
    ['hostile', hostileBook],
  ] as const)('%s gives the same bytes', (_, made) => {
    const once = () => sheetHtml(firstSheet(made)) + coverHtml(compileCover(made, OPTIONS));
    expect(once()).toBe(once());
  });
});

test('marks that turn the direction of text do not come through', () => {
  const html = htmlOf('1. Torque to 58\u202E lbf·ft \u2066and\u0007 no more.\n');
  expect(html).toContain('<p>Torque to 58 lbf·ft and no more.</p>');
});

test('a procedure without steps, title or anything is still a whole page', () => {
  const html = htmlOf('');
  expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
  expect(html).toContain('Sign-off');
});

test('a caution stands in one table body with its step', () => {
  const html = htmlOf('> **Warning:** Hot.\n\n1. Lift the pump.\n');
  const body = html.split('<tbody').find((part) => part.includes('Hot.'));
  expect(body).toContain('Lift the pump.');
});

// One that needs the width of the step takes the others along; else the last of the work would stand before the first.
describe('values stand beside a step or below it, never both, and in the order of its tags', () => {
  test.each([
    ['`clean: journals` `lube: journals with assembly-lube`', ['Clean', 'Lube'], 'values'],
    ['`clean: journals` `lay: clearance`', ['Clean', 'Lay strip'], 'wide'],
    ['`lay: clearance` `clean: journals`', ['Lay strip', 'Clean'], 'wide'],
    ['`clean: journals` `measure: clearance` `step: read`', ['Clean', 'Measure'], 'wide'],
    ['`measure: clearance`', ['Measure'], 'values'],
  ])('%s', (tags, titles, place) => {
    const again = tags.includes('step: read')
      ? '\n2. Where it is out: `if: clearance is out`\n   1. Again. `repeat: read`\n'
      : '';
    const made = book({
      engine: `
parts: {shaft: {}}
surfaces: {journals: {on: shaft, at: [front, rear], assembly: dry}}
fits: {clearance: {at: [front, rear], limits: 0.0015–0.0035 in, by: strip, using: [strip-green]}}
`,
      procedures: {'one.md': `\n1. Do it all. ${tags}\n${again}`},
    });
    const sheet = firstSheet(made);
    const step =
      sheetHtml(sheet)
        .split('<tbody class="step')
        .find((part) => part.includes('Do it all.')) ?? '';
    expect([...step.matchAll(/entry-title"><b>([^<]*)/g)].map(([, title]) => title)).toEqual(titles);
    expect(step.includes('class="values"')).toBe(place === 'values');
    expect(step.includes('class="wide"')).toBe(place === 'wide');
    const printed = JSON.parse(JSON.stringify(sheetPrint(sheet, () => undefined).data));
    const [group] = printed.sections[0].parts[0].runs[0].groups;
    expect([group.beside.length, group.wide.length]).toEqual(
      place === 'wide' ? [0, titles.length] : [titles.length, 0],
    );
  });
});

describe('names of sheets', () => {
  test('are those of the procedures, never twice, never the cover’s', () => {
    const files = ['a/01-block.md', 'b/01-block.md', 'b/01-Block.MD', 'index.md', 'c\\02.md', '.md'];
    const made = book({
      engine: '',
      procedures: Object.fromEntries(files.map((file) => [file, '1. Do it.\n'])),
    });
    expect(sheetNames(made.procedures)).toEqual([
      '01-block',
      '01-block-2',
      '01-Block-3',
      'index-2',
      '02',
      'sheet',
    ]);
  });

  test('are escaped where the cover links to them', () => {
    expect(coverHtml(compileCover(hostileBook, OPTIONS))).toContain(
      'href="%22%3E%3Cimg%20src%3Dx%20onerror%3D%22window.hit%3D1%22%3E.html"',
    );
  });
});

test.each([
  ['1', '1'],
  ['1 2', '1 2'],
  ['1 2 3 5', '1–3 5'],
  ['2 3a 4 5 6', '2 3a 4–6'],
  ['', ''],
])('steps %s are printed %s', (steps, expected) => {
  expect(runs(steps.split(' ').filter(Boolean)).join(' ')).toBe(expected);
});

describe('is valid by an HTML validator', () => {
  // HTML lets `>` stand in text; the one rule left out asks for more.
  const sheets = {trial: trialBook, hard: hardBook, hostile: hostileBook};
  test.each(Object.entries(sheets))('the %s book', async (_, of) => {
    for (const html of [sheetHtml(firstSheet(of)), coverHtml(compileCover(of, OPTIONS))]) {
      const {results} = await new HtmlValidate({
        extends: ['html-validate:standard'],
        rules: {'no-raw-characters': 'off'},
      }).validateString(html);
      const said = results.flatMap(({messages}) =>
        messages.map(({ruleId, message}) => `${ruleId}: ${message}`),
      );
      expect([...new Set(said)]).toEqual([]);
    }
  });
});
