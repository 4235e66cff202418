/** No text of a procedure may drive a terminal or turn its own order round. */
import fc from 'fast-check';
import {expect, test} from 'vitest';
import {printable, withoutUnseen} from '../../src/text/printable.js';

test.each([
  {name: 'plain text stays', text: '85 lbf·ft ½ ⌀ 中 😀', shown: '85 lbf·ft ½ ⌀ 中 😀'},
  {name: 'an escape sequence', text: '\u001B[31mred', shown: '\\u001b[31mred'},
  {name: 'line ends', text: 'a\r\nb\tc', shown: 'a\\r\\nb\\tc'},
  {name: 'a C1 control', text: '\u009B31m', shown: '\\u009b31m'},
  {name: 'a right-to-left override', text: 'abc\u202Edcba', shown: 'abc\\u202edcba'},
  {name: 'a line separator', text: 'a\u2028b', shown: 'a\\u2028b'},
])('$name', ({text, shown}) => {
  expect(printable(text)).toBe(shown);
});

test('nothing unseen is left, and a second time changes nothing', () => {
  fc.assert(
    fc.property(fc.string({unit: 'binary'}), (text) => {
      const shown = printable(text);
      expect(shown).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/u);
      expect(printable(shown)).toBe(shown);
    }),
  );
});

test.each([
  {name: 'a turned direction', text: 'abc\u202Edcba', shown: 'abcdcba'},
  {name: 'controls and a lone carriage return', text: 'a\u0007b\rc', shown: 'abc'},
  {name: 'line feeds, tabs and joiners stay', text: 'a\nb\tc\u200Dd\u200E', shown: 'a\nb\tc\u200Dd\u200E'},
])('a page goes without $name', ({text, shown}) => {
  expect(withoutUnseen(text)).toBe(shown);
});
