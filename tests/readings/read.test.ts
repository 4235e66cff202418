/** Record files: what is read, what is refused and where, and that nothing makes the reader throw. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {plainJson, readJson} from '../../src/readings/placed-json.js';
import {readRecord} from '../../src/readings/read.js';
import {readingNumber} from '../../src/readings/reading-number.js';
import {positionAt, source} from '../../src/text/source.js';
import {sample} from './small.js';

const SEAL = '0'.repeat(64);

const ENTRY = `{"at": "2026-03-01T09:30:00Z", "by": "AB", "box": "1:done", "value": "done", "seal": "${SEAL}"}`;

function file(entry: string): string {
  return `{"record": 1, "engine": "four", "sheets": [
  {"procedure": "01-a", "title": "A", "revision": "1", "fingerprint": "${SEAL}", "entries": [
    ${entry}
  ]}
]}`;
}

function refused(text: string): string[] {
  const from = source('1.record.json', text);
  const read = readRecord(from);
  if (read.ok) return [];
  return read.problems.map(({span, says}) => {
    const {line, column} = positionAt(from, span.start);
    return `${line}:${column}: ${says}`;
  });
}

test('what a sheet exports is read as it was', () => {
  const record = sample();
  expect(readRecord(source('r', JSON.stringify(record, null, 2)))).toEqual({ok: true, record});
});

describe('what is refused, and where', () => {
  test.each<[string, string, string[]]>([
    ['a text that breaks off', file(ENTRY).slice(0, -3), ['4:5: the file breaks off here']],
    ['an entry without a comma after it', file(`${ENTRY} ${ENTRY}`), ['3:158: a comma or ] is due here']],
    ['no JSON at all', 'record: 1', ['1:1: no value of JSON begins like this']],
    ['more after the end', `${file(ENTRY)} x`, ['5:4: there is more after the end of the value']],
    ['a comma before an end', file(`${ENTRY},`), ['4:3: a comma stands before this end']],
    ['a text without an end', '{"record', ['1:2: this text never ends']],
    [
      'a line break in a text',
      '{"rec\nord": 1}',
      ['1:2: this text holds a line break, another control or an unknown escape'],
    ],
    ['a key twice', '{"record": 1, "record": 1}', ['1:15: record stands twice']],
    ['a word that is none', '{"record": yes}', ['1:12: no value of JSON begins like this']],
    ['another kind of file', '[]', ['1:1: the file is not keys with values in braces']],
    ['another version', file(ENTRY).replace('1,', '2,'), ['1:12: record is not 1']],
    [
      'a key too many',
      file(ENTRY.replace('"by"', '"note": "x", "by"')),
      ['3:36: sheets.0.entries.0 takes no key note'],
    ],
    ['a key too few', file(ENTRY.replace('"by": "AB", ', '')), ['3:5: sheets.0.entries.0.by is missing']],
    [
      'no time',
      file(ENTRY.replace('2026-03-01T09:30:00Z', 'noon')),
      ['3:12: sheets.0.entries.0.at is not a time like 2026-03-01T09:30:00Z'],
    ],
    [
      'a date that is none',
      file(ENTRY.replace('03-01', '02-30')),
      ['3:12: sheets.0.entries.0.at is not a time like 2026-03-01T09:30:00Z'],
    ],
    [
      'no seal',
      file(ENTRY.replace(SEAL, 'wax')),
      ['3:90: sheets.0.entries.0.seal is not 64 hexadecimal digits'],
    ],
    [
      'a number for a text',
      file(ENTRY.replace('"done"', '1')),
      ['3:74: sheets.0.entries.0.value is not a text in quotes'],
    ],
    [
      'nobody',
      file(ENTRY.replace('AB', '')),
      ['3:42: sheets.0.entries.0.by is not at least one character long'],
    ],
    [
      'a very long value',
      file(ENTRY.replace('"done"', `"${'9'.repeat(2001)}"`)),
      ['3:74: sheets.0.entries.0.value is not at most 2000 characters long'],
    ],
    [
      'a list for the entries',
      file('').replace('[\n    \n  ]', '{}'),
      ['2:150: sheets.0.entries is not a list in brackets'],
    ],
  ])('%s', (_, text, problems) => {
    expect(refused(text)).toEqual(problems);
  });

  test('no more than ten problems are listed', () => {
    expect(refused(file(Array(50).fill('{}').join(',')))).toHaveLength(10);
  });

  test('nesting that would end the process', () => {
    expect(refused('['.repeat(200_000))).toEqual(['1:18: it is nested too deeply']);
  });
});

describe('JSON', () => {
  test('is read as the language reads it', () => {
    fc.assert(
      fc.property(fc.jsonValue({maxDepth: 4}), fc.constantFrom(0, 2), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        const node = readJson(text);
        expect(node.type).not.toBe('fault');
        if (node.type !== 'fault') expect(plainJson(node)).toEqual(JSON.parse(text));
      }),
    );
  });

  test('every span slices to its own value', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.string(), fc.integer(), fc.constant(null))), (values) => {
        const text = JSON.stringify(values, null, 1);
        const node = readJson(text);
        if (node.type !== 'array') throw new Error('a list was written');
        const read = node.items.map(({span}): unknown => JSON.parse(text.slice(span.start, span.end)));
        expect(read).toEqual(values);
      }),
    );
  });

  test('a text is read or refused as the language does', () => {
    const pieces = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"',
      '1',
      '-',
      '0',
      '.5',
      'true',
      'nul',
      ' ',
      '\\',
      'e3',
    );
    fc.assert(
      fc.property(fc.array(pieces, {maxLength: 12}), (list) => {
        const text = list.join('');
        expect([text, readJson(text).type === 'fault']).toEqual([text, !parses(text)]);
      }),
      {numRuns: 3000},
    );
  });

  test('`__proto__` is a key like any other', () => {
    const node = readJson('{"__proto__": {"x": 1}}');
    if (node.type === 'fault') throw new Error(node.says);
    const value = plainJson(node);
    expect(Object.keys(Object(value))).toEqual(['__proto__']);
    expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
  });
});

/** By the language's own reader, which takes a key twice. */
function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return !/"a"[^,]*:.*"a"[^,]*:/s.test(text);
  } catch {
    return false;
  }
}

test('any prefix of a record is refused, and nothing throws', () => {
  const text = file(ENTRY);
  for (let end = 0; end < text.length; end++) expect(readRecord({text: text.slice(0, end)}).ok).toBe(false);
});

test.each<[string, number | undefined]>([
  ['0.0025', 0.0025],
  [' 0,0025 ', 0.0025],
  ['.002', 0.002],
  ['−0.5', -0.5],
  ['+1', 1],
  ['12.', 12],
  ['', undefined],
  ['.', undefined],
  ['1e3', undefined],
  ['3/4', undefined],
  ['0x10', undefined],
  ['1,234.5', undefined],
  ['2 thou', undefined],
  ['Infinity', undefined],
  ['9'.repeat(400), undefined],
])('a reading of %j', (text, value) => {
  expect(readingNumber(text)).toBe(value);
});
