/** A comma within braces parts entries: what it took apart is put together, told once, and mended by the fix. */
import {describe, expect, it} from 'vitest';
import {readSpecification} from '../../src/spec/resolve.js';
import {applyEdits} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {SHOP} from './marked.js';

const engineOf = (line: string) => `engine: {id: engine, name: Engine}
sources: {book: {title: Book, note: invented}}
source: book
parts: {block: {given: true}, shaft: {given: true}}
build: []
${line}
`;
const read = (line: string) =>
  readSpecification({
    shop: source('shop.yaml', SHOP),
    engine: source('engine.yaml', engineOf(line)),
    bases: [],
  });
const gap = (rest: string) =>
  `fits: {gap: {between: [block, shaft], ${rest}when: {installed: [], tight: []}}}`;
const lock = (because: string) =>
  `fasteners: {nut: {holds: [shaft], torque: snug, threads: dry, lock: {value: none, because: ${because}}}}`;

describe('a comma within braces', () => {
  it.each([
    [
      gap('limits: 0,9–1,2 mm, '),
      'limits: ',
      'write decimals with a point: 0.9–1.2 mm',
      gap('limits: 0.9–1.2 mm, '),
    ],
    [
      gap('limits: max 0,05 mm, '),
      'limits: ',
      'write decimals with a point: max 0.05 mm',
      gap('limits: max 0.05 mm, '),
    ],
    [
      lock('the taper holds, not the thread'),
      'because: ',
      'put a text with a comma in quotes: "the taper holds, not the thread"',
      lock('"the taper holds, not the thread"'),
    ],
    [
      lock('“the taper, the key, not 0,5 turns”'),
      'because: ',
      'put a text with a comma in quotes: "the taper, the key, not 0,5 turns"',
      lock('"the taper, the key, not 0,5 turns"'),
    ],
    [
      lock('the "works", not the maker\'s sheet'),
      'because: ',
      "put a text with a comma in quotes: 'the \"works\", not the maker''s sheet'",
      lock("'the \"works\", not the maker''s sheet'"),
    ],
    [
      'surfaces: {bores: {on: block, at: front, rear, assembly: dry}}',
      'at: ',
      'put a list in square brackets: [front, rear]',
      'surfaces: {bores: {on: block, at: [front, rear], assembly: dry}}',
    ],
  ])('%s', (wrong, key, hint, right) => {
    const {problems} = read(wrong);
    expect(problems.map((one) => one.hint)).toEqual([hint]);
    expect(problems[0]?.says.startsWith(`${key}a comma parts the entries`)).toBe(true);
    expect(applyEdits(engineOf(wrong), problems[0]?.fix?.edits ?? [])).toBe(engineOf(right));
    expect(read(right).problems).toEqual([]);
  });

  it('between three figures is not mended by a guess', () => {
    const {problems} = read(gap('limits: max 1,200 mm, '));
    expect(problems.map(({hint, fix}) => [hint, fix])).toEqual([
      ['write a decimal with a point, and a large number without a comma', undefined],
    ]);
  });

  it.each([
    [
      'a key that lacks its colon',
      'surfaces: {bore: {on: block, assembly dry}}',
      'there is no colon behind assembly',
    ],
    ['a key that lacks its value', 'surfaces: {bore: {on: block, assembly}}', 'assembly is empty where'],
    ['a misspelt key', 'surfaces: {bore: {on: block, assembly: dry, nmae}}', 'bore takes no key nmae'],
    ['the name of an item', 'marks: {number: on the block, other}', ''],
    [
      'what follows a list',
      'surfaces: {bore: {on: block, assembly: lubed, lubricants: [oil], hot}}',
      'bore takes no key hot',
    ],
    [
      'a key with a value',
      'surfaces: {bore: {assembly: dry, on: block, heavy: true}}',
      'bore takes no key heavy',
    ],
    [
      'the next line',
      'surfaces: {bore: {assembly: dry, on: block,\n  heavy one}}',
      'bore takes no key heavy one',
    ],
  ])('stays one between entries before %s', (_, line, says) => {
    const told = read(line).problems.map((one) => one.says);
    expect(told.filter((one) => one.includes('a comma parts'))).toEqual([]);
    expect(told.join('\n')).toContain(says);
  });
});
