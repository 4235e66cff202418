/** Every word that a sheet or cover prints by itself comes from one object, so that another language is another object. */
import {describe, expect, test} from 'vitest';
import {compileCover} from '../../src/sheet/cover.js';
import {GERMAN} from '../../src/sheet/german.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {coverHtml} from '../../src/sheet/html-cover.js';
import {sheetMarkdown} from '../../src/sheet/markdown.js';
import {printed} from '../../src/sheet/value.js';
import {ENGLISH, fill, type Words} from '../../src/sheet/words.js';
import {LOCK_KINDS} from '../../src/spec/locks.js';
import {amount} from '../help/amount.js';
import {FINGERPRINT, firstSheet} from '../help/sheet.js';
import {TRIAL_TEXTS, trialBook} from './trial.js';

/** A language of one letter: whatever it prints is told from everything that the author wrote. */
const FOREIGN: Words = foreign(ENGLISH);

function foreign<T>(words: T): T {
  const said = JSON.stringify(words, (key, value) => {
    if (typeof value !== 'string' || key === 'language') return value;
    return value.replace(/\{[a-z]+\}|\p{L}+/gu, (word) => (word.startsWith('{') ? word : 'жж'));
  });
  return JSON.parse(said);
}

const options = {fingerprint: FINGERPRINT, words: FOREIGN};
const sheet = firstSheet(trialBook, options);

/** The text that a reader meets, labels for assistive technology included. */
function visible(html: string): string {
  const labels = [...html.matchAll(/aria-label="([^"]*)"/g)].map(([, label]) => label).join(' ');
  const running = [...html.matchAll(/\{ content: ([^;]*);/g)]
    .map(([, css]) => css?.replace(/counters?\(\w+\)|attr\([\w-]+\)/g, ''))
    .join(' ');
  const body = html.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<[^>]*>/g, ' ');
  return `${body} ${labels} ${running.replace(/\\[0-9a-f]+ /g, ' ')}`;
}

describe('nothing is printed that is neither the author’s nor in the words', () => {
  const written = new Set(
    TRIAL_TEXTS.join(' ')
      .toLowerCase()
      .match(/[a-z]+/g),
  );
  /** Units, entities of HTML, the name that the helper gives the engine, and the letters of step numbers. */
  const units = new Set('lbf ft n m in mm l us qt h max min rem quot amp x example b'.split(' '));
  test.each([
    ['sheet', visible(sheetHtml(sheet))],
    ['cover', visible(coverHtml(compileCover(trialBook, options)))],
    ['Markdown', sheetMarkdown(sheet)],
  ])('%s', (_, text) => {
    const words = text.toLowerCase().match(/[a-z]+/g) ?? [];
    expect(words.length).toBeGreaterThan(20);
    expect([...new Set(words)].filter((word) => !written.has(word) && !units.has(word))).toEqual([]);
    expect(text).toContain('жж');
  });
});

describe('German', () => {
  /** Every word of the object by its path, without those that are no words. */
  function leaves(words: object, path = ''): [string, string][] {
    return Object.entries(words).flatMap(([key, value]): [string, string][] =>
      typeof value === 'string' ? [[`${path}${key}`, value]] : leaves(value, `${path}${key}.`),
    );
  }
  const english = leaves(ENGLISH);
  const german = new Map(leaves(GERMAN));

  test('has every word, with the same holes to fill', () => {
    const holes = (text: string) => (text.match(/\{[a-z]+\}/g) ?? []).sort();
    expect([...german.keys()].sort()).toEqual(english.map(([path]) => path).sort());
    for (const [path, text] of english) expect(holes(german.get(path) ?? ''), path).toEqual(holes(text));
  });

  test('has no empty word and none left in English', () => {
    const same = english.filter(([path, text]) => german.get(path) === text).map(([path]) => path);
    // OK is what one says in both.
    expect(same).toEqual(['and', 'tablet.ok']);
    expect([...german.values()].filter((text) => text.trim() === '')).toEqual([]);
  });

  test('is printed where the shop asks for it, unless another language is asked for', () => {
    const shop = {...trialBook.spec.shop, language: 'de'} as const;
    const book = {...trialBook, spec: {...trialBook.spec, shop}};
    expect(firstSheet(book).words).toBe(GERMAN);
    expect(compileCover(book, {fingerprint: FINGERPRINT}).words).toBe(GERMAN);
    expect(firstSheet(book, {words: ENGLISH}).words).toBe(ENGLISH);
    const html = sheetHtml(firstSheet(book));
    expect(html).toContain('<html lang="de">');
    for (const words of ['Nur wenn main clearance außerhalb', 'WARNUNG', 'Haltepunkt', 'Stufe 1', 'Nr.'])
      expect(html).toContain(words);
  });

  test('says ranges, turns and days in its own words', () => {
    const text = (written: string) => printed(amount(written), {spec: trialBook.spec, words: GERMAN}).text;
    expect([text('-0.002 to 0.001 in'), text('2 turns'), text('3 days')]).toEqual([
      '−0.002 bis 0.001 in',
      '2 Umdr.',
      '3 d',
    ]);
  });
});

test('the language is that of the words', () => {
  expect(sheetHtml({...sheet, words: {...FOREIGN, language: 'cs'}})).toContain('<html lang="cs">');
});

test('every kind of lock has a word', () => {
  expect(Object.keys(ENGLISH.locks)).toEqual(Object.keys(LOCK_KINDS));
});

test.each([
  ['{number} of {of}', {number: 2, of: 9}, '2 of 9'],
  ['{of}/{number}', {number: 2, of: 9}, '9/2'],
  ['{number} {other}', {number: '{of}', of: 9}, '{of} {other}'],
  ['{toString}', {}, '{toString}'],
  ['plain', {}, 'plain'],
])('%s is filled', (phrase, values, expected) => {
  expect(fill(phrase, values)).toBe(expected);
});
