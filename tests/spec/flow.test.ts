/** Values in brackets, most of which are read without the YAML library: they must read as the library reads them. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {isMap, isScalar, isSeq, type ParsedNode, parseDocument} from 'yaml';
import {readFlows} from '../../src/spec/flow.js';
import type {Node} from '../../src/spec/tree.js';
import {readYaml} from '../../src/spec/yaml.js';
import {source} from '../../src/text/source.js';

/** What a node says and where, as our reader has it. */
function ours(node: Node): unknown {
  const {start, end} = node.where.span;
  if (node.type === 'list') return [start, end, node.items.map(ours)];
  if (node.type === 'map') {
    const entries = node.entries.map(({key, keyWhere: {span}, value}) => [
      key,
      span.start,
      span.end,
      ours(value),
    ]);
    return [start, end, entries];
  }
  const exact = node.type === 'empty' ? undefined : node.exact;
  return [start, end, node.type, node.text, exact === undefined ? undefined : exact - start];
}

/** The same, as the library has it: the nodes of `parseDocument` and their ranges. */
function theirs(text: string, node: ParsedNode): unknown {
  const [start, end] = node.range;
  if (isSeq(node)) return [start, end, node.items.map((item) => theirs(text, item))];
  if (isMap(node)) {
    const entries = node.items.map(({key, value}) => {
      const [from, to] = key.range;
      return [text.slice(from, to), from, to, value ? theirs(text, value) : [to, to, 'empty', '', undefined]];
    });
    return [start, end, entries];
  }
  const value = isScalar(node) ? node.value : undefined;
  const written = text.slice(start, end);
  if (value === null) return [start, end, 'empty', '', undefined];
  if (typeof value !== 'string') return [start, end, typeof value, written, 0];
  return [start, end, 'text', value, written === value ? 0 : written.slice(1, -1) === value ? 1 : undefined];
}

function expectSame(text: string): void {
  const document = parseDocument(text, {schema: 'core', version: '1.2', uniqueKeys: false});
  const {tree, problems} = readYaml(source('x.yaml', text));
  const wrong = document.errors.length + document.warnings.length > 0 || !document.contents;
  expect(problems.length > 0).toBe(wrong);
  if (!wrong && document.contents) expect(tree && ours(tree)).toEqual(theirs(text, document.contents));
}

const word = fc.constantFrom(
  ...[
    'a',
    'b-1',
    '85 lbf·ft',
    '0x1F',
    '012',
    '0o7',
    '1e3',
    '.5',
    '.inf',
    '-1',
    '+1',
    '.nan',
    'true',
    'False',
    'null',
    '~',
  ],
  ...[
    "maker's",
    'a"b',
    '±0.1',
    '≤ 5',
    '<b>',
    '(x)',
    '1-1/2',
    '%',
    'x\u00A0',
    '\u00A0x',
    'a  b',
    '🔥',
    '2026-01-15',
    'x:y',
    '>',
    '> x',
    '|',
    '- x',
    '? x',
    '&x',
    'a, b',
    '...',
  ],
);
const space = fc.constantFrom('', '', ' ', '  ');
const {value} = fc.letrec<{value: string}>((tie) => {
  const list = fc.tuple(
    space,
    fc.array(tie('value'), {maxLength: 4}),
    space,
    fc.constantFrom(', ', ',', '  ,  '),
  );
  return {
    value: fc.oneof(
      {maxDepth: 6, depthSize: 'large'},
      word,
      list.map(([before, values, after, comma]) => `[${before}${values.join(comma)}${after}]`),
      list.map(([before, values, after, comma]) => {
        return `{${before}${values.map((one, index) => `k${index}: ${one}`).join(comma)}${after}}`;
      }),
    ),
  };
});
const line = fc.tuple(
  fc.constantFrom('', '', '', '  '),
  value,
  fc.constantFrom('', '', '', '', ' ', ' # why', '\r', ' x'),
);

describe('values in brackets', () => {
  it('read as the library reads them, and are wrong where it says so', () => {
    const text = fc.array(line, {minLength: 1, maxLength: 4}).map((lines) => {
      return lines.map(([indent, one, end], index) => `${indent}key-${index}: ${one}${end}\n`).join('');
    });
    fc.assert(fc.property(text, expectSame), {numRuns: 400});
  });

  it.each([
    ['under a list', '- {a: b}\n- [c, {d: 1}]\n- a: [b]\n'],
    ['as the whole', '# x\n{a: [b]}\n'],
    ['in a text of several lines', 'a: >-\n  b: [c]\nd: "e\n  f: [g]\n  "\n'],
    ['in a text without quotes', 'a: b\n  c [d]\n'],
    ['going on below', 'a: [b]\n  c\n'],
    ['over a deeper line', 'a: {b: c}\n  d: [e]\n'],
    ['in brackets of several lines', 'a: [\n  {b: c},\n  [d]\n]\n'],
    ['in such brackets without a comma', 'a: [\n  [b]\n  [c]\n]\n'],
    ['after a document', 'a: [b]\n...\n'],
    ['never closed', 'a: [b\nc: {d: e}\n'],
    ['a key marked as one, without a value', 'a: [? x]\n'],
    ['deeper than is read here', 'a: [[[[[[b]]]]]]\n'],
  ])('%s', (_, text) => {
    expectSame(text);
    expectSame(text.replaceAll('\n', '\r\n'));
  });

  it('count towards the depth that is read', () => {
    const nested = (levels: number) => `a: ${'['.repeat(levels)}b${']'.repeat(levels)}\n`;
    const under = (levels: number, text: string) =>
      Array.from({length: levels}, (_, at) => `${' '.repeat(at)}k:\n`).join('') + ' '.repeat(levels) + text;
    expect(readYaml(source('x.yaml', under(60, nested(3)))).problems).toEqual([]);
    expect(readYaml(source('x.yaml', under(61, nested(3)))).problems).toHaveLength(1);
  });

  it('are nearly all read without the library in a specification as people write it', () => {
    const text = 'a: {b: c, d: [1, 2]}\ne:\n  f: [g]\n  h: {i: "j"}\n- [k]\n';
    expect(
      [...readFlows('x.yaml', text).values.values()].map(({where}) =>
        text.slice(where.span.start, where.span.end),
      ),
    ).toEqual(['{b: c, d: [1, 2]}', '[g]', '[k]']);
  });
});
