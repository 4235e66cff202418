/** Slices of a check, put together, are the report of one run: in every form, with the same exit status. */

import {writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import fc from 'fast-check';
import {afterAll, describe, expect, test} from 'vitest';
import {placesIn} from '../../src/cli/slice.js';
import {ran} from '../help/command.js';
import {ENGINE, PROCEDURE, SHOP} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';

/** Small books that differ in what is found of them, and in whether they can be read at all. */
const UNCLEAN = PROCEDURE.replace('1. Wipe the seat with solvent. `clean: seat with solvent`\n2.', '1.');
const KINDS: readonly {readonly [name: string]: string}[] = [
  {'engine.yaml': ENGINE, 'plug.md': PROCEDURE},
  {'engine.yaml': ENGINE, 'plug.md': UNCLEAN},
  {'engine.yaml': ENGINE, 'plug.md': PROCEDURE.replace('solvent`', 'soap`')},
  {'engine.yaml': ENGINE.replace('[plug.md]', '[plug.md, gone.md]'), 'plug.md': UNCLEAN},
  {'engine.yaml': ENGINE.replace('build: [plug.md]', '')},
  {'engine.yaml': 'a\0'},
  {
    'engine.yaml': ENGINE,
    'plug.md': UNCLEAN,
    'jobs/S-1.yaml': 'job: {number: S-1, engine: small}\n',
    'jobs/S-2.yaml': 'job: {number: S-2, engine: other}\n',
  },
];

const FORMS = ['text', 'json', 'sarif', 'annotations', 'junit'] as const;

const start = process.cwd();
afterAll(() => process.chdir(start));

async function folderOf(kinds: readonly number[]): Promise<string> {
  const files = kinds.flatMap((kind, index) =>
    Object.entries(KINDS[kind] ?? {}).map(([name, text]) => [`b${index}/${name}`, text] as const),
  );
  const folder = await temporaryFolder({'shop.yaml': SHOP, ...Object.fromEntries(files)});
  process.chdir(folder);
  return folder;
}

async function sliced(folder: string, of: number, words: readonly string[]): Promise<string[]> {
  const names: string[] = [];
  for (let number = 1; number <= of; number++) {
    const {out} = await ran('check', '--slice', `${number}/${of}`, '--as', 'json', ...words);
    names.push(`${number}.json`);
    await writeFile(join(folder, `${number}.json`), out);
  }
  return names;
}

test('random books, random numbers of slices, every form', {timeout: 240_000}, async () => {
  const books = fc.array(fc.nat(KINDS.length - 1), {minLength: 1, maxLength: 7});
  const words = fc.constantFrom([], ['--job', 'S-1'], ['--job', 'all'], ['.', 'nowhere']);
  const stop = fc.constantFrom([], ['--stop-on', 'warning']);
  await fc.assert(
    fc.asyncProperty(
      books,
      fc.integer({min: 1, max: 5}),
      words,
      stop,
      fc.constantFrom(...FORMS),
      async (kinds, of, asked, stops, form) => {
        const folder = await folderOf(kinds);
        const whole = await ran('check', '--as', form, ...stops, ...asked);
        const names = await sliced(folder, of, asked);
        const merged = await ran('merge', '--as', form, ...stops, ...names.reverse());
        expect(merged).toEqual(whole);
      },
    ),
    {numRuns: 40, seed: 8},
  );
});

test('known findings count over all slices together', async () => {
  const folder = await folderOf([1, 1, 2, 0, 3]);
  const shared = 'shop: {name: Small Works}\nunheard: 1\n';
  await writeFile(join(folder, 'shop.yaml'), SHOP + shared.slice(shared.indexOf('unheard')));
  expect((await ran('known', 'known.yaml', '--because', 'old', '--owner', 'RT')).code).toBe(0);
  const names = await sliced(folder, 3, []);
  for (const form of FORMS) {
    const whole = await ran('check', '--known', 'known.yaml', '--as', form);
    expect(whole.code).toBe(0);
    expect(await ran('merge', '--known', 'known.yaml', '--as', form, ...names)).toEqual(whole);
  }
  expect(await ran('check', '--slice', '1/3', '--known', 'known.yaml')).toEqual({
    code: 2,
    out: '',
    err: 'wmark: --known counts findings over all books, and a slice sees only some; give --known to `wmark merge`\n',
  });
});

test('more slices than books: the others are empty, and no failure', async () => {
  await folderOf([0]);
  const shares = await Promise.all([1, 2, 3].map((number) => ran('check', '--slice', `${number}/3`)));
  expect(shares.map(({code}) => code)).toEqual([0, 0, 0]);
  expect(shares.filter(({out}) => out.startsWith('1 book,'))).toHaveLength(1);
});

describe('reports that do not belong together are refused', () => {
  const refused = async (...names: readonly string[]) => {
    const {code, out, err} = await ran('merge', ...names);
    expect({code, out}).toEqual({code: 2, out: ''});
    return err;
  };

  test('a slice that is missing, or there twice', async () => {
    const [one = '', two = '', three = ''] = await sliced(await folderOf([0, 1, 2]), 3, []);
    expect(await refused(one, three)).toBe('wmark: slice 2/3 is missing; name the reports of all slices\n');
    expect(await refused(one, two, three, two)).toBe('wmark: slice 2/3 is there twice; name each once\n');
  });

  test('of another run', async () => {
    const folder = await folderOf([0, 1, 2]);
    const [one = '', two = ''] = await sliced(folder, 2, []);
    const {out} = await ran('check', '--slice', '2/2', '--as', 'json', 'b0');
    await writeFile(join(folder, two), out);
    expect(await refused(one, two)).toBe(
      'wmark: 2.json: it is not of the same run as 1.json; check the same paths of the same revision with the same wmark, --slice 1/N to N/N\n',
    );
  });

  test('what is no report of a slice', async () => {
    const folder = await folderOf([0]);
    await writeFile(join(folder, 'whole.json'), (await ran('check', '--as', 'json')).out);
    await writeFile(join(folder, 'other.json'), '{"slice": 1');
    const hint = 'name what `wmark check --slice K/N --as json` printed';
    expect(await refused('whole.json')).toBe(`wmark: whole.json: it is not the report of a slice; ${hint}\n`);
    expect(await refused('other.json')).toBe(`wmark: other.json: it is no report of the check; ${hint}\n`);
    expect(await refused('gone.json')).toContain('wmark: gone.json: there is no such file or folder');
  });
});

test.each(['0/3', '4/3', '1', '1/0', 'a/b', '-1/2', '1/3/5'])('%s is no slice', async (word) => {
  const {code, err} = await ran('check', '--slice', word);
  expect(code).toBe(2);
  expect(err).toContain('It is the number of a slice and how many there are: 1/4, 2/4, 3/4 or 4/4.');
});

test('every book is in one slice, slices differ by one, and new books move nobody but by their rank', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.string(), {maxLength: 60}), fc.integer({min: 1, max: 9}), (names, of) => {
      const slices = Array.from({length: of}, (_, index) => placesIn(names, {number: index + 1, of}));
      expect(slices.flat().sort((one, other) => one - other)).toEqual(names.map((_, at) => at));
      const sizes = slices.map(({length}) => length);
      expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    }),
  );
});
