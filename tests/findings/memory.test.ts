/** A check that takes over what is still the same finds what a fresh one finds, and works nothing out twice. */
import {expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import {Memory} from '../../src/findings/memory.js';
import type {FindingKind} from '../../src/findings/model.js';
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

it('looks at a specification and at a procedure once, for as long as they are the same', () => {
  const looked: string[] = [];
  const kind: FindingKind = {
    name: 'looked-at',
    group: 'reading',
    severity: 'warning',
    summary: 'counts how often it is called',
    why: 'so that one sees it',
    source: 'common practice, no source',
    specification: () => looked.push('specification'),
    part: ({procedure}) => looked.push(procedure.front.revision),
  };
  const [first] = EXAMPLES;
  if (first === undefined) throw new Error('there is no example');
  const book = exampleBook(first.example, 'right');
  const memory = new Memory();
  check(book, {memory, also: [kind]});
  check(book, {memory, also: [kind]});
  expect(looked).toEqual(['specification', 'A']);
  const [procedure] = book.procedures;
  if (procedure === undefined) throw new Error('the example has no procedure');
  check({...book, procedures: [{...procedure}]}, {memory, also: [kind]});
  expect(looked).toEqual(['specification', 'A', 'A']);
});
