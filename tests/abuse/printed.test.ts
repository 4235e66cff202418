/**
 * Whatever a book, a job or a record holds, and in whatever form it is reported, nothing that is printed can drive a
 * terminal, turn its own order round, or break out of its form.
 */

import {relative} from 'node:path';
import {HtmlValidate} from 'html-validate';
import {describe, expect, test} from 'vitest';
import {type Ran, ran} from '../help/command.js';
import {readCsv} from '../help/csv.js';
import {temporaryFolder} from '../host/temporary.js';
import {HOSTILE, hostile, hostileFiles, hostileRecord, startingFiles} from './hostile-files.js';
import {ARMED, UNSEEN} from './terminal.js';

/** `HOSTILE` and the like stand for the folders of the test. */
async function printed(words: readonly string[]): Promise<Ran> {
  const folder = await temporaryFolder({
    ...hostileFiles('book'),
    ...hostileFiles('other'),
    ...(await startingFiles('plain')),
    'other/plug.md': '---\ntitle: x\nrevision: A\ndate: 2026-01-15\n---\n\n1. No.\n',
    'record.json': await hostileRecord('0'.repeat(64)),
    'broken.json': `{"${hostile(0).replaceAll('"', '')}": 1}`,
    'broken.md': hostile(0),
    'broken/engine.yaml': hostile(3),
    'broken/shop.yaml': `shop: {name: x}\n${hostile(0)}`,
  });
  const here = relative(process.cwd(), folder);
  return ran(...words.map((word) => word.replace('@', `${here}/`)));
}

/** Everything that prints what others wrote, in the forms for people. */
const TEXTS: readonly (readonly string[])[] = [
  ['check', '@book'],
  ['check', '@book/plug.md'],
  ['check', '@book', '--job', hostile(0)],
  ['check', '@book', '--job', 'all'],
  ['check', '@broken'],
  ['check', '@broken.md'],
  ['check', hostile(0)],
  ['check', '@book', '--known', '@book/shop.yaml'],
  ['check', '@book', '--only-changed', '--since', hostile(0)],
  ['compare', '@book', '@other'],
  ['compare', '@other', '@book'],
  ['compare', '@book', hostile(1)],
  ['compare', '--since', hostile(2), '@book'],
  ['story', 'bolts', '@book'],
  ['story', 'plug', '@book'],
  ['story', hostile(0), '@book'],
  ['coverage', '@book'],
  ['lists', '@book'],
  ['lists', '@book', '--job', 'all'],
  ['lists', '@book', '--list', hostile(0)],
  ['tidy', '@book', '--check'],
  ['tidy', '@book', '--fix', '--show'],
  ['tidy', hostile(0)],
  ['readings', '@record.json', '--book', '@plain', '--even-if-changed'],
  ['readings', '@record.json', '--book', hostile(0)],
  ['readings', '@broken.json', hostile(4)],
  ['known', '@known.yaml', '@book', '--because', hostile(0), '--owner', hostile(1)],
  ['why', hostile(0)],
  ['figure', hostile(0)],
  ['figure', 'ring-gap', '--bore', hostile(0)],
  ['figure', 'ring-gap', hostile(0), hostile(1)],
  ['adopt', hostile(0)],
  ['adopt', '@book/plug.md', '--engine', hostile(0)],
  [hostile(0)],
  ['check', `--${hostile(0)}`],
];

// The words themselves would drive the terminal of whoever runs the tests.
test.each(TEXTS.map((words, at) => ({at, words})))('text $at', async ({words}) => {
  const {code, out, err} = await printed(words);
  expect(out + err).not.toBe('');
  expect(code).not.toBe(3);
  for (const line of (out + err).split('\n')) {
    expect(line).not.toMatch(ARMED);
    expect(line).not.toMatch(UNSEEN);
  }
});

const JSON_FORMS: readonly (readonly string[])[] = [
  ['check', '@book', '--as', 'json'],
  ['check', '@book', '--as', 'sarif'],
  ['compare', '@book', '@other', '--as', 'json'],
  ['compare', '@book', '@other', '--as', 'sarif'],
  ['coverage', '@book', '--as', 'json'],
  ['story', 'bolts', '@book', '--as', 'json'],
  ['lists', '@book', '--as', 'json'],
  ['readings', '@record.json', '--book', '@plain', '--even-if-changed', '--as', 'json'],
];

describe('JSON', () => {
  test.each(JSON_FORMS)('%s %s %s %s %s', async (...words) => {
    const {out, code} = await printed(words);
    expect(code).not.toBe(3);
    expect(out).not.toMatch(ARMED);
    expect(JSON.parse(out)).toBeTypeOf('object');
  });

  test('says what the text said', async () => {
    const {out} = await printed(['lists', '@book', '--as', 'json']);
    expect(JSON.stringify(JSON.parse(out))).toContain(JSON.stringify(HOSTILE[2]).slice(1, -1));
  });
});

/** A tag of well-formed XML whose attributes hold no bare mark. */
const XML_TAG = /<(?:\?xml [^<>]*\?|\/[a-z-]+|[a-z-]+(?: [a-z]+="[^"<]*")*\/?)>/g;
const BARE = /[<]|&(?!(?:amp|lt|gt|quot);)/;

test('JUnit is well-formed', async () => {
  const {out, code} = await printed(['check', '@book', '--as', 'junit']);
  expect(code).toBe(1);
  expect(out).not.toMatch(ARMED);
  expect(out.replace(XML_TAG, '')).not.toMatch(BARE);
  expect(out).not.toMatch(/&(?!(?:amp|lt|gt|quot);)|[\uFFFE\uFFFF]/);
});

test('annotations: each line is one command of ours', async () => {
  const {out} = await printed(['check', '@book', '--as', 'annotations']);
  for (const line of out.trim().split('\n')) {
    expect(line).toMatch(/^::(?:error|warning|notice) file=[^:,]*,line=\d+,[^:]*::/);
    expect(line).not.toMatch(ARMED);
  }
});

describe('CSV: a field is a text, wherever it is opened', () => {
  test.each([
    [['lists', '@book', '--as', 'csv']],
    [['readings', '@record.json', '--book', '@plain', '--even-if-changed', '--as', 'csv']],
  ])('%s', async (words) => {
    const {out, code} = await printed(words);
    expect(code).not.toBe(3);
    expect(out).not.toMatch(ARMED);
    for (const line of readCsv(out.replace(/^\uFEFF/, '')))
      for (const field of line) expect(field).not.toMatch(/^\s*[=+@]|^\s*-(?!\d)/);
  });
});

const HTML_FORMS: readonly (readonly string[])[] = [
  ['compare', '@book', '@other', '--as', 'html'],
  ['coverage', '@book', '--as', 'html'],
  ['lists', '@book', '--as', 'html'],
  ['readings', '@record.json', '--book', '@plain', '--even-if-changed', '--as', 'html'],
];

/** A page on a screen may ask for nothing and send nothing, whatever stands in it. */
const STRICT = `content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'`;

const VALIDATOR = new HtmlValidate({extends: ['html-validate:standard']});

describe('HTML', () => {
  test.each(HTML_FORMS)('%s %s %s %s', async (...words) => {
    const {out, code} = await printed(words);
    expect(code).not.toBe(3);
    expect(out).not.toMatch(ARMED);
    expect(out).not.toMatch(/href="javascript|src="http/);
    expect(out.replaceAll('&#x27;', "'")).toContain(STRICT);
    // A tag in the value of an attribute is only text, and is passed over here with the tag around it.
    const tags = out.match(/<[a-z][^<>"]*(?:"[^"]*"[^<>"]*)*>/g) ?? [];
    expect(tags.filter((tag) => tag.startsWith('<script'))).toEqual([]);
    const {results} = await VALIDATOR.validateString(out);
    const told = results.flatMap(({messages}) =>
      messages.map(({ruleId, message}) => `${ruleId}: ${message}`),
    );
    expect(told.filter((one) => /close|parser|attribute|duplicate|element-permitted/.test(one))).toEqual([]);
  });
});

describe('Markdown: no markup of ours is closed by a text', () => {
  test.each([
    [['compare', '@book', '@other', '--as', 'markdown']],
    [['coverage', '@book', '--as', 'markdown']],
    [['lists', '@book', '--as', 'markdown']],
  ])('%s', async (words) => {
    const {out, code} = await printed(words);
    expect(code).not.toBe(3);
    expect(out).not.toMatch(ARMED);
    expect(out).not.toMatch(/(?<!\\)<script|(?<!\\)\]\(javascript:|(?<!\\)!\[p\]\(http/);
  });
});
