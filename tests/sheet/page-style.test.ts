/** Text that goes into the style sheet, and names that must fit the running head. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {shortened} from '../../src/print/running.js';
import {cssString, pageStyle} from '../../src/sheet/page-style.js';
import {ENGLISH} from '../../src/sheet/words.js';

/** Reads a CSS string back: CSS Syntax Level 3, sections 4.3.5 and 4.3.7, as far as hexadecimal escapes go. */
function readBack(css: string): string {
  expect(css).toMatch(/^"(?:[^"\\\n\r\f<>{}]|\\[0-9a-f]{1,6} )*"$/u);
  return css
    .slice(1, -1)
    .replace(/\\([0-9a-f]{1,6}) /g, (_, hex: string) => String.fromCodePoint(Number.parseInt(hex, 16)));
}

describe('a CSS string', () => {
  test.each([
    'Crankshaft · rev. A',
    'a"b\\c',
    '</style><script>',
    "'; } * { display: none } '",
    '½ × 90°',
    'Größe 曲軸',
  ])('%j reads back as it was', (text) => {
    expect(readBack(cssString(text))).toBe(text);
  });

  test('any text reads back, controls as the replacement character', () => {
    fc.assert(
      fc.property(fc.string({unit: 'binary'}), (text) => {
        // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that are replaced.
        const expected = text.replace(/[\u0000-\u001F]/g, '\uFFFD');
        expect(readBack(cssString(text))).toBe(expected);
      }),
    );
  });

  test('lone surrogates', () => {
    expect(readBack(cssString('a\uD800b'))).toBe('a\uFFFDb');
  });
});

describe('a name on the running head', () => {
  test.each([
    ['Crankshaft', 20, 'Crankshaft'],
    ['Crankshaft and main bearings', 12, 'Crankshaft…'],
    ['曲軸と主軸受', 6, '曲軸…'],
  ])('%s in %i', (text, room, expected) => {
    expect(shortened(text, room)).toBe(expected);
  });

  test('is cut so that revision and fingerprint are always there', () => {
    const long = 'x'.repeat(500);
    const style = pageStyle(
      {left: {name: long, rest: ' · rev. C'}, right: {name: long, rest: ' · 0123456789'}},
      'A4',
      ENGLISH,
    );
    const contents = [...style.matchAll(/@top-(?:left|right) \{ content: ("[^"]*")/g)].map(([, css]) =>
      readBack(css ?? ''),
    );
    expect(contents.map((text) => text.slice(-13))).toEqual(
      ['x… · rev. C', ' · 0123456789'].map((end) => expect.stringContaining(end.slice(-11))),
    );
    expect(contents.join('').length).toBeLessThanOrEqual(84);
  });

  test('a short title leaves its room to the engine', () => {
    const engine = 'Ottermouth Four launch engine, second series';
    const style = pageStyle(
      {left: {name: 'Sump', rest: ' · rev. C'}, right: {name: engine, rest: ' · 0123456789'}},
      'A4',
      ENGLISH,
    );
    expect(style).toContain(cssString(`${engine} · 0123456789`));
  });
});

test('the words of "page n of m" stand in the order of their language', () => {
  const words = {...ENGLISH, page: 'Blatt {number} von {of}!'};
  const style = pageStyle({left: {name: '', rest: ''}, right: {name: '', rest: ''}}, 'Letter', words);
  expect(style).toContain('content: "Blatt " counter(page) " von " counter(pages) "\\21 ";');
  expect(style).toContain('size: letter portrait;');
});
