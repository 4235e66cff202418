/**
 * Reads YAML 1.2 from people and from strangers into a tree with places. Size and depth are capped before
 * anything is composed, and aliases are refused, so that no text can expand or recurse without end.
 */
import {
  Composer,
  type CST,
  isMap,
  isScalar,
  isSeq,
  Lexer,
  type ParsedNode,
  Parser,
  type Scalar,
  type YAMLMap,
} from 'yaml';
import {addAll} from '../text/add-all.js';
import type {Problem} from '../text/problem.js';
import type {Source, Where} from '../text/source.js';
import {FLOW_DEPTH, readFlows, readPlainLines} from './flow.js';
import type {Entry, MapNode, Node, ScalarNode} from './tree.js';
import {colonMissing, faultsOf, lineFrom} from './yaml-faults.js';
import {type LeftOpen, Openings} from './yaml-open.js';

/** What a text may be at most: UTF-16 units, and levels of maps and lists inside each other. */
export interface YamlCaps {
  readonly size: number;
  readonly depth: number;
}

/** More than any book needs: a text that is larger or deeper is no book, or an attack. */
export const BOOK_CAPS: YamlCaps = {size: 1024 * 1024, depth: 64};

export interface YamlReading {
  /** Undefined where nothing could be read, or there is nothing. */
  readonly tree?: Node;
  readonly problems: readonly Problem[];
  /** The text is not YAML: what the tree holds is a guess, and what it lacks may well be written. */
  readonly broken: boolean;
}

/** More faults than this, in one text, are the echo of the first ones. */
const FAULTS_SHOWN = 20;

/** Reads one YAML document. The first of two equal keys is kept, and an alias reads as an empty value. */
export function readYaml(from: Source, caps: YamlCaps = BOOK_CAPS): YamlReading {
  if (from.text.length > caps.size) return unreadable(oversize(from, caps.size));
  const plain = readPlainLines(from.file, from.text);
  if (plain !== undefined) return {tree: plain, problems: [], broken: false};
  return readMasked(from, caps) ?? readWhole(from, caps, {masked: from.text, values: new Map()});
}

/**
 * With the plain values in brackets read beforehand. That they stand where a value does shows afterwards: each was then
 * read as one word. Undefined where one was not, or anything is wrong with the text.
 */
function readMasked(from: Source, caps: YamlCaps): YamlReading | undefined {
  const flows = readFlows(from.file, from.text);
  if (flows.values.size === 0) return undefined;
  const values = new Map(flows.values);
  const reading = readWhole(from, {...caps, depth: caps.depth - FLOW_DEPTH}, {...flows, values});
  return values.size === 0 && reading.problems.length === 0 ? reading : undefined;
}

/** Takes each of the values that are known out of `values` when it comes to it. */
function readWhole(
  from: Source,
  caps: YamlCaps,
  {masked, values}: {readonly masked: string; readonly values: Map<number, Node>},
): YamlReading {
  const tokens = tokensWithin(masked, caps.depth);
  if (tokens.tooDeepAt !== undefined) return unreadable(tooDeep(from, tokens.tooDeepAt, caps.depth));
  // The library's own check for equal keys takes time with the square of their number; `mapOf` makes it instead.
  const composer = new Composer({
    schema: 'core',
    version: '1.2',
    uniqueKeys: false,
    prettyErrors: false,
    resolveKnownTags: false,
  });
  const [document, ...more] = composer.compose(tokens.tokens, true, from.text.length);
  const problems: Problem[] = [];
  const faults = [...(document?.errors ?? []), ...(document?.warnings ?? [])];
  addAll(problems, faultsOf(from, faults, tokens.open));
  for (const other of more.slice(0, 1)) problems.push(secondDocument(from, other.range[0]));
  const contents = document?.contents;
  const reader = {file: from.file, text: from.text, values, problems, broken: problems.length > 0};
  const tree = contents ? nodeOf(reader, contents) : undefined;
  return {...(tree && {tree}), problems: problems.slice(0, FAULTS_SHOWN), broken: reader.broken};
}

/** What the conversion of nodes needs to know, and where it leaves what it finds wrong. */
interface Reader {
  readonly file: string;
  readonly text: string;
  /** Values that were read already, by their offsets. */
  readonly values: Map<number, Node>;
  readonly problems: Problem[];
  broken: boolean;
}

function unreadable(problem: Problem): YamlReading {
  return {problems: [problem], broken: true};
}

function oversize(from: Source, size: number): Problem {
  const says = `the file holds ${from.text.length} characters where at most ${size} are read`;
  return {name: 'spec-form', where: at(from.file, 0, 0), says, hint: 'split the engine or the shop in two'};
}

function tooDeep(from: Source, offset: number, depth: number): Problem {
  const where = at(from.file, offset, Math.min(offset + 1, from.text.length));
  const says = `maps and lists are nested more than ${depth} deep`;
  return {name: 'spec-form', where, says, hint: 'close the brackets or indent less'};
}

function secondDocument(from: Source, offset: number): Problem {
  const where = at(from.file, offset, Math.min(offset + 3, from.text.length));
  const says = 'a second document starts where the file should go on';
  return {
    name: 'spec-form',
    where,
    says,
    hint: 'take the line --- out, or put what follows in a file of its own',
  };
}

/** The parser keeps its own stack, which is the depth; only composing its tokens would recurse. */
function tokensWithin(
  text: string,
  depth: number,
): {tokens: CST.Token[]; open: LeftOpen; tooDeepAt?: number} {
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  const open = new Openings();
  for (const lexeme of new Lexer().lex(text)) {
    open.see(lexeme, parser.offset);
    for (const token of parser.next(lexeme)) tokens.push(token);
    // The document and a scalar stand on the stack too, so that a stack this short needs no counting.
    if (parser.stack.length > depth && levelsOn(parser.stack) > depth)
      return {tokens: [], open, tooDeepAt: parser.offset};
  }
  for (const token of parser.end()) tokens.push(token);
  return {tokens, open};
}

const COLLECTIONS: ReadonlySet<CST.Token['type']> = new Set(['block-map', 'block-seq', 'flow-collection']);

function levelsOn(stack: readonly CST.Token[]): number {
  return stack.filter((token) => COLLECTIONS.has(token.type)).length;
}

function nodeOf(reader: Reader, node: ParsedNode): Node {
  const known = reader.values.get(node.range[0]);
  if (known?.where.span.end === node.range[1]) {
    reader.values.delete(node.range[0]);
    return known;
  }
  if (isMap(node)) return mapOf(reader, node);
  const where = at(reader.file, node.range[0], node.range[1]);
  if (isSeq(node)) return {type: 'list', where, items: node.items.map((item) => nodeOf(reader, item))};
  if (isScalar(node)) return scalarOf(reader, node, where);
  const says = 'an alias stands for a value that is written elsewhere';
  reader.problems.push({name: 'spec-form', where, says, hint: 'write the value itself here'});
  return {type: 'empty', where, text: ''};
}

function mapOf(reader: Reader, node: YAMLMap.Parsed): MapNode {
  const entries = new Map<string, Entry>();
  for (const pair of node.items) {
    const entry = entryFrom(reader, pair.key, pair.value);
    const first = entry && entries.get(entry.key);
    if (first) reader.problems.push(twice(first, entry));
    else if (entry) entries.set(entry.key, entry);
  }
  return {type: 'map', where: at(reader.file, node.range[0], node.range[1]), entries: [...entries.values()]};
}

function entryFrom(reader: Reader, keyNode: ParsedNode, valueNode: ParsedNode | null): Entry | undefined {
  const key = nodeOf(reader, keyNode);
  // An object of JavaScript cannot carry this key as a value of its own everywhere, and no trade needs it.
  if (!isName(key) || key.text === '__proto__') {
    const says = 'this cannot be a key';
    reader.problems.push({name: 'spec-form', where: key.where, says, hint: 'write a plain word'});
    return undefined;
  }
  // Without its colon a key goes on to the next: `block {given: true}` has the key `block {given`.
  const forgotten = /^[\w-]+ +[[{]/.test(key.text)
    ? colonMissing(lineFrom(reader.text, key.where.span.start))
    : undefined;
  if (forgotten !== undefined) {
    reader.problems.push({name: 'spec-form', where: key.where, ...forgotten});
    reader.broken = true;
    return undefined;
  }
  const end = key.where.span.end;
  const missing: Node = {type: 'empty', where: at(reader.file, end, end), text: ''};
  return {key: key.text, keyWhere: key.where, value: valueNode ? nodeOf(reader, valueNode) : missing};
}

function isName(node: Node): node is ScalarNode {
  return node.type === 'text' || node.type === 'number' || node.type === 'boolean';
}

function twice(first: Entry, second: Entry): Problem {
  return {
    name: 'spec-form',
    where: second.keyWhere,
    says: `the key ${second.key} stands here a second time`,
    hint: 'keep one of the two',
    related: [{where: first.keyWhere, says: 'it is first here'}],
  };
}

function scalarOf(reader: Reader, node: Scalar.Parsed, where: Where): ScalarNode {
  const {start, end} = where.span;
  const written = reader.text.slice(start, end);
  if (node.value === null) return {type: 'empty', where, text: ''};
  if (typeof node.value === 'number') return {type: 'number', where, text: written, exact: start};
  if (typeof node.value === 'boolean') return {type: 'boolean', where, text: written, exact: start};
  const text = String(node.value);
  if (written === text) return {type: 'text', where, text, exact: start};
  if (written.slice(1, -1) === text) return {type: 'text', where, text, exact: start + 1};
  return {type: 'text', where, text};
}

function at(file: string, start: number, end: number): Where {
  return {file, span: {start, end}};
}
