/**
 * Books whose wrong places are marked in the text: `«unit-missing|85»` stands for `85` and for a problem of that
 * name with that very span.
 */
import {expect} from 'vitest';
import type {Specification} from '../../src/spec/model.js';
import {readSpecification} from '../../src/spec/resolve.js';
import type {Problem} from '../../src/text/problem.js';
import {positionAt, type Source, source} from '../../src/text/source.js';

export interface Texts {
  readonly shop?: string;
  /** What stands below the head that every test engine has. */
  readonly engine: string;
  /** Nearest first, whole files. */
  readonly bases?: readonly string[];
}

export const SHOP = `
shop: {name: Test Works}
source: house
sources:
  house: {title: House notes}
  maker: {title: Maker's sheet}
tools:
  mallet: soft-faced mallet
  hammer: steel hammer
  feelers: {name: feeler gauges, range: 0.001–0.025 in}
consumables:
  lube: {use: lubricant}
  oil: {use: lubricant}
  silicone: {use: sealant}
  paper: {use: gasket}
  wire: {use: lock, lock: safety-wire}
  strip: {use: strip, range: 0.001–0.003 in}
`;

const HEAD = 'engine: {id: test}\nsource: house\n';

/** The specification of marked texts, and the problems that their marks ask for. */
export function readMarked(texts: Texts): {spec: Specification; due: string[]; found: string[]} {
  const shop = unmarked('shop.yaml', texts.shop ?? SHOP);
  const engine = unmarked('engine.yaml', HEAD + texts.engine);
  const bases = (texts.bases ?? []).map((text, index) => unmarked(`base-${index + 1}.yaml`, text));
  const spec = readSpecification({
    shop: shop.from,
    engine: engine.from,
    bases: bases.map(({from}) => from),
  });
  const due = [engine, ...bases, shop].flatMap((one) => one.due);
  return {spec, due, found: spec.problems.map((problem) => shown(spec, problem))};
}

/** Asserts that the texts have just the marked problems, in the order of files and of text; gives them back. */
export function expectMarked(texts: Texts): readonly Problem[] {
  const {spec, due, found} = readMarked(texts);
  expect(found).toEqual(due);
  return spec.problems;
}

/** The specification of texts that have no problem. */
export function readClean(texts: Texts): Specification {
  const {spec, found} = readMarked(texts);
  expect(found).toEqual([]);
  return spec;
}

const MARK = /«([a-z-]+)\|([^»]*)»/g;

function unmarked(file: string, text: string): {from: Source; due: string[]} {
  let plain = '';
  let done = 0;
  const marks: {name: string; start: number; end: number}[] = [];
  for (const found of text.matchAll(MARK)) {
    const [whole, name = '', inner = ''] = found;
    plain += text.slice(done, found.index);
    marks.push({name, start: plain.length, end: plain.length + inner.length});
    plain += inner;
    done = found.index + whole.length;
  }
  const from = source(file, plain + text.slice(done));
  return {from, due: marks.map(({name, start, end}) => `${placeOf(from, start, end)} ${name}`)};
}

function shown(spec: Specification, {name, where}: Problem): string {
  const from = spec.files.get(where.file);
  if (from === undefined) return `${where.file} is not among the files: ${name}`;
  return `${placeOf(from, where.span.start, where.span.end)} ${name}`;
}

function placeOf(from: Source, start: number, end: number): string {
  const [first, last] = [positionAt(from, start), positionAt(from, end)];
  const text = from.text.slice(start, end);
  return `${from.file}:${first.line}:${first.column}-${last.line}:${last.column} ${text}`;
}
