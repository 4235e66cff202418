/** A short run of the fuzzer with a fixed seed, and every input that once broke something; `npm run fuzz` goes on longer. */
import {existsSync, readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {seeded} from '../help/random.js';
import {faultOf, fuzz} from './fuzz.js';
import {minimised} from './minimise.js';
import {mutated} from './mutate.js';
import {subjects} from './subjects.js';

const KEPT = 'tests/abuse/kept';
const SUBJECTS = subjects();

/** Few, since each of the larger ones reads, checks, prints and compares a whole book. */
const INPUTS: {readonly [subject: string]: number} = {tag: 1_000, amount: 1_000, record: 200};

test.each(SUBJECTS)(
  '$name: no text breaks it',
  async (subject) => {
    const most = INPUTS[subject.name] ?? 20;
    const {crashes} = await fuzz(
      {...subject, seeds: subject.seeds.slice(0, 12)},
      {random: seeded(5), more: (inputs) => inputs < most},
    );
    expect(crashes).toEqual([]);
  },
  300_000,
);

describe('inputs that once broke something', () => {
  for (const subject of SUBJECTS) {
    const folder = join(KEPT, subject.name);
    for (const name of existsSync(folder) ? readdirSync(folder) : []) {
      test(`${subject.name} ${name}`, () => {
        expect(faultOf(subject, readFileSync(join(folder, name), 'utf8'))).toBeUndefined();
      });
    }
  }
});

test.each(SUBJECTS.filter(({name}) => name in INPUTS))('$name: nor does any string at all', (subject) => {
  fc.assert(
    fc.property(fc.oneof(fc.string({unit: 'binary'}), fc.string(), fc.json()), (text) => {
      expect(faultOf(subject, text)).toBeUndefined();
    }),
    {numRuns: 200},
  );
});

test('the same seed makes the same inputs, and a fault is made short', async () => {
  const made = () =>
    Array.from({length: 50}, (_, at) => mutated('install: cap', ['torque: bolts'], seeded(at)));
  expect(made()).toEqual(made());
  const breaks = {
    name: 'made up',
    seeds: ['some text'],
    run: (text: string) => {
      if (text.includes('`')) throw new Error('a tick');
    },
  };
  const {crashes} = await fuzz(breaks, {random: seeded(1), more: (inputs) => inputs < 2_000});
  expect(crashes).toMatchObject([{text: '`'}]);
  expect(await minimised('abcxdefxgh', async (text) => text.split('x').length === 3)).toBe('xx');
});
