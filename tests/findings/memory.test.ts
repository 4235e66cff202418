/** A check that takes over what is still the same finds what a fresh one finds, and works nothing out twice. */
import {expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import {Memory} from '../../src/findings/memory.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {exampleBook} from '../help/example.js';

const EXAMPLES = FINDINGS.flatMap(({name, example}) => (example ? [{name, example}] : []));

it.each(EXAMPLES)('finds the same with a memory: $name', ({example}) => {
  const memory = new Memory();
  const [wrong, right] = [exampleBook(example, 'wrong'), exampleBook(example, 'right')];
  // The same specification under other steps, and the same steps once more.
  const mixed: Book = {...wrong, procedures: right.procedures};
  for (const book of [wrong, right, mixed, wrong]) {
    expect(check(book, {memory})).toEqual(check(book));
  }
});

it('works nothing out twice for as long as the specification and the procedure are the same', () => {
  const [first] = EXAMPLES;
  const [kind] = FINDINGS;
  if (first === undefined || kind === undefined) throw new Error('there is no example');
  const {spec, procedures} = exampleBook(first.example, 'right');
  const [procedure] = procedures;
  if (procedure === undefined) throw new Error('the example has no procedure');
  const memory = new Memory();
  let looked = 0;
  const look = () => {
    looked++;
    return [];
  };
  const part = memory.part(procedure, spec, 0);
  expect(memory.part(procedure, spec, 0)).toBe(part);
  expect(memory.part({...procedure}, spec, 0)).not.toBe(part);
  expect(memory.part(procedure, {...spec}, 0)).not.toBe(part);
  for (const of of [spec, part, spec, part]) memory.found(of, kind, look);
  expect(looked).toBe(2);
  memory.found({...part}, kind, look);
  expect(looked).toBe(3);
});
