/** Whatever is done to a book's YAML, reading gives a specification and problems that lie inside the texts. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {Specification} from '../../src/spec/model.js';
import {extendsOf, readSpecification} from '../../src/spec/resolve.js';
import type {Problem} from '../../src/text/problem.js';
import {source} from '../../src/text/source.js';
import {SHOP} from './marked.js';

const ENGINE = `engine: {id: test}
extends: base.yaml
source: house
sources: {own: {title: Own}}
parts:
  shaft: {at: [front, rear], after: [plug], closes: [bores], size: {value: 2 in, source: own}, seats-in: bores}
  plug: {single-use: true, using: [mallet], hazards: [eyes]}
surfaces:
  bores: {at: [front, rear], assembly: lubed, lubricants: [lube], sizes: {front: 2 in, rear: 1.9 in}, order: falling}
joints: {seam: {between: [shaft, plug], seal: [silicone]}}
fasteners:
  bolts: {count: 2, torque: 60 lbf·ft, passes: [30 lbf·ft, 60 lbf·ft], threads: dry, lock: wire, layout: {unit: in, a: [0, 1], b: [2, 3]}, order: [a, b]}
fits: {gap: {limits: 0.001–0.002 in, by: strip, using: [strip], when: {installed: [shaft], tight: [bolts]}}}
barred: [{what: [paper], on: [seam], because: thin}]
build: [one.md]
`;

const PRACTICE = 'practice: [{every: surface, type: bearing, is: {assembly: dry}, source: maker}]\n';

const PIECES = [
  '',
  ' ',
  '\n',
  '  ',
  '\t',
  ':',
  ': ',
  '- ',
  '{',
  '}',
  '[',
  ']',
  ',',
  '"',
  "'",
  '#',
  '&a',
  '*a',
  '!!int',
  '|',
  '>-',
  'null',
  '~',
  'true',
  '0',
  '-1',
  '1e999',
  '.nan',
  '85',
  'lbf·ft',
  '«',
  '\u0000',
  '😀',
  '\uD800',
  'constructor',
  '__proto__',
  'toString',
  'shaft',
  'value: ',
  'unknown',
  'none',
  '---\n',
  '%YAML 1.1\n---\n',
  '\r',
] as const;

/** Cuts, doublings, swaps and insertions at any places of a text. */
function mutated(text: string): fc.Arbitrary<string> {
  const place = fc.nat({max: text.length});
  const change = fc.record({
    from: place,
    length: fc.nat({max: 30}),
    piece: fc.constantFrom(...PIECES),
    again: fc.boolean(),
  });
  return fc.array(change, {maxLength: 6}).map((changes) =>
    changes.reduce((now, {from, length, piece, again}) => {
      const cut = now.slice(from, from + length);
      return now.slice(0, from) + piece + (again ? cut + cut : '') + now.slice(from + length);
    }, text),
  );
}

function faultsOf(spec: Specification): string[] {
  return spec.problems.flatMap((problem) => {
    const places = [problem.where, ...(problem.related ?? []).map(({where}) => where)];
    return places.flatMap(({file, span}) => {
      const length = spec.files.get(file)?.text.length ?? -1;
      const inside = 0 <= span.start && span.start <= span.end && span.end <= length;
      return inside ? [] : [`${problem.name} at ${span.start}–${span.end} of ${length} in ${file}`];
    });
  });
}

describe('mutated books', () => {
  it('are read without a throw, every problem inside its text, worded, and said once', () => {
    const shop = SHOP + PRACTICE;
    fc.assert(
      fc.property(mutated(shop), mutated(ENGINE), mutated(ENGINE), (shopText, engineText, baseText) => {
        const engine = source('engine.yaml', engineText);
        const spec = readSpecification({
          shop: source('shop.yaml', shopText),
          engine,
          bases: [source('base.yaml', baseText)],
        });
        expect(faultsOf(spec)).toEqual([]);
        expect(spec.problems.filter(isUnworded)).toEqual([]);
        expect(new Set(spec.problems.map(keyOf)).size).toBe(spec.problems.length);
        for (const [id, item] of spec.items) expect(item.id).toBe(id);
        extendsOf(engine);
      }),
      {numRuns: 300},
    );
  });

  it('are what they were, unmutated', () => {
    const spec = readSpecification({
      shop: source('shop.yaml', SHOP + PRACTICE),
      engine: source('engine.yaml', ENGINE),
      bases: [],
    });
    expect(spec.problems).toEqual([]);
    expect(spec.items.size).toBe(15);
  });
});

function isUnworded({says, hint}: Problem): boolean {
  return `${says}${hint ?? ''}`.includes('undefined') || says === '' || says.endsWith('.');
}

function keyOf({name, where, says}: Problem): string {
  return `${where.file} ${where.span.start} ${name} ${says}`;
}
