/** Places in a text, edits of it, and nearest names: small functions that everything else points with. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {clipped} from '../../src/text/clipped.js';
import {applyEdits, editFault} from '../../src/text/edit.js';
import {nearest} from '../../src/text/nearest.js';
import {offsetAt, positionAt, slice, source} from '../../src/text/source.js';

describe('source', () => {
  test('a byte-order mark is taken off and remembered', () => {
    expect(source('a.md', '\uFEFF# A')).toMatchObject({text: '# A', mark: true});
    expect(source('a.md', '# A')).toMatchObject({text: '# A', mark: false});
    expect(slice(source('a.md', '\uFEFF# A'), {start: 0, end: 1})).toBe('#');
  });

  test.each([
    ['', [0]],
    ['one', [0]],
    ['one\ntwo', [0, 4]],
    ['one\r\ntwo', [0, 5]],
    ['one\rtwo', [0, 4]],
    ['\n\n', [0, 1, 2]],
    ['\r\r\n\n', [0, 1, 3, 4]],
  ])('the lines of %j start at %j', (text, lines) => {
    expect(source('a.md', text).lines).toEqual(lines);
  });

  test.each([
    [0, 1, 1],
    [3, 1, 4],
    [4, 2, 1],
    [5, 2, 2],
    [99, 3, 1],
    [-1, 1, 1],
  ])('offset %d is line %d, column %d', (offset, line, column) => {
    expect(positionAt(source('a.md', 'one\n😀\n'), offset)).toEqual({line, column});
  });

  test('a place outside the text is taken to its nearer end', () => {
    const text = source('a.md', 'one\ntwo');
    expect(offsetAt(text, {line: 99, column: 1})).toBe(4);
    expect(offsetAt(text, {line: 0, column: 0})).toBe(0);
    expect(offsetAt(text, {line: 1, column: 99})).toBe(4);
    expect(offsetAt(text, {line: 2, column: 99})).toBe(7);
  });

  test('the offset of the position of an offset is that offset', () => {
    const texts = fc.string({unit: fc.constantFrom('a', 'é', '😀', '\n', '\r', '\r\n', ' ')});
    fc.assert(
      fc.property(texts, fc.nat(60), (raw, at) => {
        const text = source('a.md', raw);
        const offset = Math.min(at, text.text.length);
        expect(offsetAt(text, positionAt(text, offset))).toBe(offset);
      }),
    );
  });
});

describe('edits', () => {
  test.each([
    ['replace', [{span: {start: 0, end: 3}, text: 'two'}], 'two three'],
    ['insert', [{span: {start: 3, end: 3}, text: ','}], 'one, three'],
    ['delete', [{span: {start: 3, end: 9}, text: ''}], 'one'],
    [
      'several',
      [
        {span: {start: 0, end: 1}, text: 'O'},
        {span: {start: 3, end: 4}, text: '-'},
      ],
      'One-three',
    ],
    [
      'touching',
      [
        {span: {start: 0, end: 3}, text: 'a'},
        {span: {start: 3, end: 3}, text: 'b'},
      ],
      'ab three',
    ],
    ['none', [], 'one three'],
  ])('%s', (_, edits, expected) => expect(applyEdits('one three', edits)).toBe(expected));

  test.each([
    ['backwards', [{span: {start: 3, end: 1}, text: ''}], /ends at 1 before it starts/],
    [
      'overlapping',
      [
        {span: {start: 0, end: 3}, text: ''},
        {span: {start: 2, end: 4}, text: ''},
      ],
      /at 2 stands in/,
    ],
    [
      'out of order',
      [
        {span: {start: 5, end: 6}, text: ''},
        {span: {start: 0, end: 1}, text: ''},
      ],
      /at 0 stands in/,
    ],
    ['past the end', [{span: {start: 0, end: 10}, text: ''}], /ends at 10, past the text's 9/],
  ])('%s is refused', (_, edits, fault) => {
    expect(editFault(edits, 9)).toMatch(fault);
    expect(() => applyEdits('one three', edits)).toThrow(RangeError);
  });

  test('what is edited away comes back by the reverse edit', () => {
    fc.assert(
      fc.property(fc.string(), fc.nat(), fc.nat(), fc.string(), (text, a, b, replacement) => {
        const [start, end] = [a, b].map((n) => n % (text.length + 1)).sort((x, y) => x - y);
        if (start === undefined || end === undefined) return;
        const edited = applyEdits(text, [{span: {start, end}, text: replacement}]);
        const back = {span: {start, end: start + replacement.length}, text: text.slice(start, end)};
        expect(applyEdits(edited, [back])).toBe(text);
      }),
    );
  });
});

describe('nearest', () => {
  const names = ['main-caps', 'main-cap-bolts', 'camshaft', 'camshaft-bores', 'rod-caps', 'block'];

  test.each([
    ['main-cap', 'main-caps'],
    ['mian-caps', 'main-caps'],
    ['camshft', 'camshaft'],
    ['camshaft-bore', 'camshaft-bores'],
    ['block', 'block'],
    ['blok', 'block'],
    ['piston', undefined],
    ['', undefined],
    ['zz', undefined],
  ])('%j is nearest to %j', (word, expected) => expect(nearest(word, names)).toBe(expected));

  test('a swap of neighbours is one slip, not two', () => {
    expect(nearest('ab', ['ba'])).toBe('ba');
    expect(nearest('abcd', ['badc'])).toBeUndefined();
  });

  test('the first of equally near names is taken, and no candidates give none', () => {
    expect(nearest('cat', ['bat', 'hat'])).toBe('bat');
    expect(nearest('cat', [])).toBeUndefined();
  });

  test('a word is nearest to itself, and one slip away is found', () => {
    const words = fc.string({unit: fc.constantFrom(...'abc-'.split('')), minLength: 3, maxLength: 12});
    fc.assert(
      fc.property(words, fc.nat(), (word, at) => {
        expect(nearest(word, ['zzzzzzzz', word])).toBe(word);
        const cut = at % word.length;
        expect(nearest(word.slice(0, cut) + word.slice(cut + 1), [word])).toBe(word);
      }),
    );
  });
});

describe('clipped', () => {
  test.each([
    ['short', 5, 'short'],
    ['longer', 5, 'long…'],
    ['abc😀d', 5, 'abc…'],
    ['ab😀de', 5, 'ab😀…'],
    ['', 5, ''],
  ])('%j in %d is %j', (text, most, expected) => {
    expect(clipped(text, most)).toBe(expected);
  });
});
