/** Texts that are small and mean much, or are large and mean nothing: read to their end, told, and never in silence. */
import {describe, expect, test} from 'vitest';
import {readProcedure} from '../../src/procedure/read.js';
import {readRecord} from '../../src/readings/read.js';
import {readJob} from '../../src/spec/job.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {readYaml} from '../../src/spec/yaml.js';
import {source} from '../../src/text/source.js';
import {wmark} from '../cli/run.js';
import {ENGINE, SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';

const YAML: readonly (readonly [string, string])[] = [
  ['an alias of itself', 'a: &a [*a]\n'],
  [
    'aliases of aliases',
    `${Array.from({length: 20}, (_, at) => `a${at}: &a${at} [*a${at - 1}, *a${at - 1}]\n`).join('')}`,
  ],
  ['merge keys', 'base: &b {x: 1}\nparts: {plug: {<<: *b, <<: *b}}\n'],
  ['an anchor that nobody uses', 'parts: &a {plug: {}}\n'],
  ['a tag of another language', 'parts: !!js/function "function () { process.exit(9) }"\n'],
  ['a tag of an object', 'parts: !!python/object/apply:os.system ["id"]\n'],
  ['binary', 'parts: !!binary "R0lGODlh"\n'],
  ['a set and an ordered map', 'parts: !!set {a, b}\nfits: !!omap [a: 1]\n'],
  ['a hundred thousand brackets', '['.repeat(100_000)],
  ['a hundred thousand braces', '{a: '.repeat(100_000)],
  ['a hundred thousand dashes', '- '.repeat(100_000)],
  ['a hundred thousand questions', '? '.repeat(100_000)],
  ['indented a thousand deep', Array.from({length: 1_000}, (_, at) => `${' '.repeat(at)}a:\n`).join('')],
  ['five thousand equal keys', 'plug: {}\n'.repeat(5_000)],
  ['a scalar of half a million letters', `engine: {id: small, name: "${'x'.repeat(500_000)}"}\n`],
  ['a name of half a million letters', `${'x'.repeat(500_000)}: {}\n`],
  ['a number of half a million figures', `engine: {id: small, revision: ${'9'.repeat(500_000)}}\n`],
  ['a folded text of many lines', `note: >\n${'  x\n'.repeat(10_000)}`],
  ['a thousand documents', '---\na: 1\n'.repeat(1_000)],
  ['directives', '%YAML 9.9\n%TAG ! tag:x,2000:\n---\na: 1\n'],
  ['nothing but a mark', '\uFEFF\uFEFF\uFEFF'],
  ['nothing but ends of lines', '\r\n\r\u2028\u0085\n'.repeat(1_000)],
  ['escapes of half surrogates', 'engine: {id: "\\uD800", name: "\\uDFFF\\x00\\e"}\n'],
  ['keys that are lists', '? [a, b]\n: c\n? {d: e}\n: f\n'],
  ['keys of every type', 'null: 1\ntrue: 2\n1: 3\n1.0: 4\n~: 5\n"": 6\n'],
];

describe('YAML', () => {
  test.each(YAML)('%s', (_, text) => {
    const {problems} = readYaml(source('a.yaml', text));
    expect(problems.length).toBeLessThanOrEqual(20);
    for (const {where, says} of problems) {
      expect(where.span.start).toBeGreaterThanOrEqual(0);
      expect(where.span.start).toBeLessThanOrEqual(where.span.end);
      expect(where.span.end).toBeLessThanOrEqual(text.length);
      expect(says.length).toBeLessThan(400);
    }
    const files = {shop: source('shop.yaml', text), engine: source('engine.yaml', text), bases: []};
    const spec = readSpecification(files);
    expect(spec.problems.length).toBeGreaterThan(0);
    expect(readSpecification({...files, shop: source('shop.yaml', SHOP)}).problems).toBeInstanceOf(Array);
    expect(readJob(source('jobs/1.yaml', text), spec).problems).toBeInstanceOf(Array);
    expect(readProcedure(source('a.md', `---\n${text}\n---\n\n1. x\n`)).problems.length).toBeGreaterThan(0);
  });
});

const HASH = '0'.repeat(64);
const ENTRY = `{"at":"2026-03-02T08:00:00Z","by":"AB","box":"1:done","value":"done","seal":"${HASH}"}`;
const record = (entries: string, more = '') =>
  `{"record":1,"engine":"a",${more}"sheets":[{"procedure":"p","title":"","revision":"","fingerprint":"${HASH}","entries":[${entries}]}]}`;

describe('records', () => {
  test.each([
    ['a hundred thousand brackets', '['.repeat(100_000)],
    ['a hundred thousand objects', '{"a":'.repeat(100_000)],
    ['closed again', `${'['.repeat(5_000)}${']'.repeat(5_000)}`],
    ['a key twice', record(ENTRY, '"engine":"b",')],
    ['a key of the prototype', record(ENTRY, '"__proto__":{"record":1},')],
    ['a number too large', record(ENTRY, '"job":1e999,')],
    ['a megabyte in a field', record(ENTRY.replace('AB', 'x'.repeat(1_000_000)))],
    ['a hundred thousand faults', record(Array.from({length: 100_000}, () => '{}').join(','))],
    ['half a text', record(ENTRY).slice(0, -3)],
    ['two texts', record(ENTRY) + record(ENTRY)],
    ['nothing', ''],
    ['a mark', '\uFEFF'],
    ['another form', 'record: 1\nengine: a\n'],
  ])('%s', (_, text) => {
    const read = readRecord({text});
    if (read.ok) throw new Error('it was taken for a record');
    expect(read.problems.length).toBeLessThanOrEqual(20);
    for (const {span, says} of read.problems) {
      expect(span.start).toBeLessThanOrEqual(span.end);
      expect(span.end).toBeLessThanOrEqual(text.length);
      expect(says.length).toBeLessThan(400);
    }
  });

  test('fifty thousand entries are read', () => {
    const read = readRecord({text: record(Array.from({length: 50_000}, () => ENTRY).join(','))});
    expect(read.ok && read.record.sheets[0]?.entries.length).toBe(50_000);
  });
});

/** What no text is, as bytes; each is named in one line, and never a fault of the tool. */
const BYTES: readonly (readonly [string, Uint8Array])[] = [
  ['UTF-16', Buffer.from(`\uFEFF${ENGINE}`, 'utf16le')],
  ['UTF-16 the other way', Buffer.from(`\uFEFF${ENGINE}`, 'utf16le').swap16()],
  ['UTF-16 without a mark', Buffer.from(ENGINE, 'utf16le')],
  ['NUL', Buffer.from('a: \0\n')],
  ['not UTF-8', Buffer.from([0x61, 0x3a, 0x20, 0xff, 0xfe, 0xc0, 0x80])],
  ['overlong', Buffer.from([0x61, 0x3a, 0x20, 0xe0, 0x80, 0xaf])],
  ['half a character', Buffer.from([0x61, 0x3a, 0x20, 0xf0, 0x9f])],
  ['a surrogate as UTF-8', Buffer.from([0x61, 0x3a, 0x20, 0xed, 0xa0, 0x80])],
  ['a packed file', Buffer.from([0x1f, 0x8b, 0x08, 0x00, 0x00, 0x00, 0x00, 0x00])],
  ['20 MB on one line', Buffer.alloc(20_000_000, 'a')],
];

test.each(BYTES)('bytes that are %s', async (_, bytes) => {
  const folder = await temporaryFolder({
    ...smallBook(),
    'engine/engine.yaml': bytes,
    'engine/shop.yaml': SHOP,
    'record.json': bytes,
  });
  const read = wmark(folder, 'check', 'engine');
  expect(read.code).toBe(2);
  expect(read.err).toMatch(/^wmark: engine\/engine\.yaml(?::\d+)?: it is [^\n]*; [^\n]*\n$/);
  const records = wmark(folder, 'readings', 'record.json', '--book', 'book');
  expect(records.code).toBe(2);
  expect(records.err).toMatch(/^wmark: record\.json(?::\d+)*: [^\n]*\n/);
  const inBook = await temporaryFolder(smallBook({'book/plug.md': bytes}));
  const {code, out} = wmark(inBook, 'check', 'book');
  expect(code).toBe(1);
  expect(out).toContain('[file-unreadable]');
});
