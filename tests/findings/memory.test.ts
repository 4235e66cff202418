/** A check that takes over what is still the same finds what a fresh one finds, and works nothing out twice. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {forJob} from '../../src/build/for-job.js';
import {program} from '../../src/build/program.js';
import {check} from '../../src/findings/check.js';
import {Memory} from '../../src/findings/memory.js';
import {FINDINGS} from '../../src/findings/registry.js';
import type {Job} from '../../src/spec/job.js';
import {book, exampleBook} from '../help/example.js';

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
  expect(memory.part(procedure, spec, 1)).not.toBe(part);
  expect(memory.part(procedure, {...spec}, 0)).not.toBe(part);
  for (const of of [spec, part, spec, part]) memory.found(of, kind, look);
  expect(looked).toBe(2);
  memory.found({...part}, kind, look);
  expect(looked).toBe(3);
});

describe('for a job', () => {
  const ENGINE = `
options: {keel: {}, sail: {}}
parts:
  block: {given: true}
  pump: {only: keel}
  shells: {substitutes: {twins: {alterations: [grind-lip]}}}
alterations:
  grind-lip: {of: [shells], does: grind the lip flush}
`;
  const whole = book({
    engine: ENGINE,
    procedures: {
      'pump.md': '1. a `clean: block`\n2. b `install: pump` `only: keel`\n',
      'shells.md': '1. a `install: shells`\n',
    },
    job: 'options: [keel]\nsubstitutes: {shells: twins}\n',
  });
  const {job} = whole;
  if (job === undefined) throw new Error('the book has no job');
  const other: Job = {...job, options: [], substitutes: new Map()};

  it('keeps the procedures as they hold for it, but those that get a step', () => {
    const memory = new Memory();
    const [first, again] = [forJob(whole, memory), forJob(whole, memory)];
    expect(again.spec).toBe(first.spec);
    expect(again.procedures[0]).toBe(first.procedures[0]);
    expect(again.procedures[1]).not.toBe(first.procedures[1]);
    expect(again).toEqual(forJob(whole));
  });

  it.each<[string, (given: Book) => Book]>([
    ['the job', (given) => ({...given, job: other})],
    ['the specification', (given) => ({...given, spec: {...given.spec}})],
    ['the procedure', (given) => ({...given, procedures: given.procedures.map((one) => ({...one}))})],
  ])('makes them anew where %s is another', (_, change) => {
    const memory = new Memory();
    const [first, now] = [forJob(whole, memory), forJob(change(whole), memory)];
    expect(now.procedures[0]).not.toBe(first.procedures[0]);
    expect(now).toEqual(forJob(change(whole)));
  });

  it('keeps what was found of every job at once, and of the book', () => {
    const memory = new Memory();
    const [procedure] = whole.procedures;
    if (procedure === undefined) throw new Error('the book has no procedure');
    const specs = [
      whole.spec,
      memory.specification(job, whole.spec),
      memory.specification(other, whole.spec),
    ];
    const parts = () => specs.map((spec) => memory.part(procedure, spec, 0));
    const before = parts();
    for (const [index, part] of parts().entries()) expect(part).toBe(before[index]);
    expect(new Set(before).size).toBe(3);
  });

  it('reads a procedure with its slips mended once, for as long as it is mended so', () => {
    const memory = new Memory();
    const [procedure] = whole.procedures;
    if (procedure === undefined) throw new Error('the book has no procedure');
    const {text} = procedure.source;
    const read = memory.mended(procedure, text);
    expect(memory.mended(procedure, text)).toBe(read);
    const other = memory.mended(procedure, `${text}\n`);
    expect(other.source.text).toBe(`${text}\n`);
    expect(memory.mended(procedure, `${text}\n`)).toBe(other);
  });

  it('reads the relations of a specification once', () => {
    const memory = new Memory();
    const known = memory.relations(whole.spec);
    expect(memory.relations(whole.spec)).toBe(known);
    expect(memory.relations({...whole.spec})).not.toBe(known);
  });
});

it('a step more or less in a procedure changes nothing in those behind it, whose steps still count as later', () => {
  const texts = (steps: string) => ({
    engine: 'parts:\n  block: {given: true}\n',
    procedures: {'a.md': steps, 'b.md': '1. b `clean: block`\n'},
  });
  const memory = new Memory();
  const {spec, procedures} = book(texts('1. a `clean: block`\n'));
  const longer = book(texts('1. a `clean: block`\n2. c\n')).procedures;
  const [, last] = procedures;
  if (last === undefined) throw new Error('the book has no second procedure');
  const [before, now] = [procedures, [...longer.slice(0, 1), last]].map((some) =>
    program({spec, procedures: some, problems: []}, memory.part),
  );
  expect(now?.parts[1]).toBe(before?.parts[1]);
  const orders = now?.steps.map(({order}) => order) ?? [];
  expect(orders).toHaveLength(3);
  expect(orders).toEqual([...new Set(orders)].sort((one, other) => one - other));
});

it('remembers what it read of words, for as long as they are asked for', () => {
  const {words} = new Memory();
  const other = (length: number) => words.numbers(' '.repeat(length));
  const said = 'Bring the bolts up to 60 lbf·ft.';
  const [numbers, commands] = [words.numbers(said), words.commands(said)];
  expect(numbers).toHaveLength(1);
  expect(commands).toHaveLength(1);
  expect(words.numbers(said)).toBe(numbers);
  expect(words.commands(said)).toBe(commands);
  // Two million characters make the memory full: what was asked for since the last time is kept.
  other(1_000_001);
  other(1_000_002);
  expect(words.numbers(said)).toBe(numbers);
  other(1_000_003);
  other(1_000_004);
  expect(words.numbers(said)).toBe(numbers);
  other(1_000_005);
  other(1_000_006);
  other(1_000_007);
  other(1_000_008);
  expect(words.numbers(said)).not.toBe(numbers);
  expect(words.numbers(said)).toEqual(numbers);
  const since = 'Bring the nuts up to 40 lbf·ft.';
  expect(words.numbers(since)).toBe(words.numbers(since));
});

it('is full beyond two million characters, and not with them', () => {
  const {words} = new Memory();
  const said = 'Bring the bolts up to 60 lbf·ft.';
  const numbers = words.numbers(said);
  words.numbers(' '.repeat(2_000_000 - said.length));
  words.numbers(' '.repeat(2_000_001));
  expect(words.numbers(said)).toBe(numbers);
});
