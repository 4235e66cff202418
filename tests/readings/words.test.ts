/** Every word that a build report says by itself comes from one object, and a German shop reads it in German. */
import {describe, expect, test} from 'vitest';
import {askedOfBook} from '../../src/host/asked-of-build.js';
import {buildsOf} from '../../src/readings/builds.js';
import {GERMAN} from '../../src/readings/german.js';
import {readingsHtml} from '../../src/readings/html.js';
import {judgeBuild} from '../../src/readings/judge.js';
import {LANGUAGES} from '../../src/readings/languages.js';
import type {BuildRecord} from '../../src/readings/record.js';
import type {ReadingsReport} from '../../src/readings/report.js';
import {spreadOf} from '../../src/readings/spread.js';
import {reportText} from '../../src/readings/text.js';
import {counted, ENGLISH, type ReportWords} from '../../src/readings/words.js';
import {SMALL, SMALL_BOOK, sample} from './small.js';

/** Every word of the object by its path, without those that are no words. */
function leaves(words: object, path = ''): [string, string][] {
  return Object.entries(words).flatMap(([key, value]): [string, string][] =>
    typeof value === 'string' ? [[`${path}${key}`, value]] : leaves(value, `${path}${key}.`),
  );
}

/** Lines of one text, which each language breaks where it likes. */
const LINES = /^sealsSay\./;
const english = leaves(ENGLISH).filter(([path]) => !LINES.test(path));
const german = new Map(leaves(GERMAN).filter(([path]) => !LINES.test(path)));

describe('German', () => {
  test('has every word, with the same holes to fill', () => {
    const holes = (text: string) => [...new Set(text.match(/\{[a-z]+\}/g))].sort();
    expect([...german.keys()].sort()).toEqual(english.map(([path]) => path).sort());
    for (const [path, text] of english) {
      // What is said of one need not say how many.
      const own = holes(german.get(path) ?? '');
      expect(path === 'remarks.cureBefore' ? own : holes(text), path).toEqual(own);
    }
  });

  test('has no empty word and none left in English', () => {
    expect(english.filter(([path, text]) => german.get(path) === text)).toEqual([]);
    expect([...german.values(), ...GERMAN.sealsSay].filter((text) => text.trim() === '')).toEqual([]);
  });
});

const asked = await askedOfBook({
  ...SMALL_BOOK,
  spec: {...SMALL_BOOK.spec, shop: {...SMALL_BOOK.spec.shop, language: 'de'}},
});

/** One build with all sorts of faults, one of half a sheet, one by an older book, and one without fault. */
function records(of: typeof SMALL): BuildRecord[] {
  const wrong: Record<string, string> = {
    '7:1': '0.0081',
    '4:1:front': '0.0020',
    '4:1:rear': '0.0050',
    '2:1:front': 'tight',
    '2:1:rear': '2.4950',
    '3:1:front': '',
    '1:1': '',
  };
  const late = sample({engineNumber: 'X-1', seed: 1, answer: ({key}, usual) => wrong[key] ?? usual}, of);
  const same = sample({engineNumber: 'X-2', by: () => 'AB'}, of);
  const [first, ...rest] = same.sheets;
  if (first === undefined) throw new Error('no sheet');
  const open = {...first, entries: first.entries.slice(0, 5).reverse()};
  const old = {...first, fingerprint: 'f'.repeat(64)};
  return [
    late,
    {...same, engineNumber: 'X-3', sheets: [open]},
    {...same, engineNumber: 'X-4', sheets: [old, {...first, procedure: 'other'}]},
    {...same, engineNumber: 'X-5', sheets: [first, ...rest]},
    {...sample({engineNumber: 'X-5', seed: 7}, of), sheets: [open]},
    sample({engineNumber: 'X-6', seed: 9}, of),
  ];
}

function reportOn(of: typeof SMALL): ReadingsReport {
  const named = records(of).map((record, index) => ({file: `${index + 1}.record.json`, record}));
  const builds = buildsOf(named).map((build) => judgeBuild(build, of));
  return {builds, spread: spreadOf(builds)};
}

/** What a language says between its holes, where that is long enough to be told from a word of the author's. */
function phrases(words: ReportWords): string[] {
  return leaves(words)
    .flatMap(([, text]) => text.split(/\{[a-z]+\}/))
    .filter((text) => text.length > 7 && text !== AUTHORS);
}

/** What the book calls its mark. */
const AUTHORS = 'engine number ';

/** The text that a reader meets, labels for assistive technology included, on one line. */
function visible(html: string): string {
  const labels = [...html.matchAll(/aria-label="([^"]*)"/g)].map(([, label]) => label).join(' ');
  const body = html.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<[^>]*>/g, ' ');
  return `${body} ${labels}`.replaceAll('&#x22;', '"').replace(/\s+/g, ' ');
}

describe('a report for a German shop', () => {
  const report = reportOn(asked);
  const html = readingsHtml(report, LANGUAGES.de);
  test.each([
    ['HTML', visible(html), visible(readingsHtml(reportOn(SMALL)))],
    ['text', reportText(report, LANGUAGES.de), reportText(reportOn(SMALL))],
  ])('has no English of ours in it, as %s', (_, text, inEnglish) => {
    const left = (of: string) => phrases(ENGLISH).filter((phrase) => of.includes(phrase));
    expect(left(text)).toEqual([]);
    // The same records meet most of the words, so that one left in English would have been seen.
    expect(left(inEnglish).length).toBeGreaterThan(40);
  });

  test('says which language it is in', () => {
    expect(html).toContain('<html lang="de">');
    expect(readingsHtml(report)).toContain('<html lang="en">');
  });

  test('remarks in German on what is out, missing, signed by one hand and of another book', () => {
    const messages = report.builds.flatMap(({remarks}) => remarks).map(({message}) => message);
    for (const said of [
      'über den Grenzwerten, 0.004–0.008 in',
      'ist keine Zahl',
      'nicht ausgefüllt: ',
      'ein Haltepunkt verlangt eine zweite Person',
      'das Siegel von Eintrag 1 ',
      'das Buch hat sich geändert',
    ])
      expect(messages.filter((message) => message.includes(said))).not.toEqual([]);
  });
});

test.each([
  [0, '0 sheets'],
  [1, '1 sheet'],
  [2, '2 sheets'],
])('%i is counted as %s', (count, says) => {
  expect(counted(count, ENGLISH.counts.sheets)).toBe(says);
});
