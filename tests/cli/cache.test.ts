/** Answers that are kept: the same to the byte as fresh ones, and never told when anything that they hang on has changed. */
import {copyFile, mkdir, readdir, readFile, rm, symlink, utimes, writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {generatedBook} from '../bench/generated.js';
import {ENGINE, PROCEDURE, SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {shell, wmark} from './run.js';

const UNCLEAN = PROCEDURE.replace('1. Wipe the seat with solvent. `clean: seat with solvent`\n2.', '1.');
const JOB = 'job: {number: S-1, engine: small}\n';
const PNG = Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex');

const entries = async (folder: string) =>
  (await readdir(join(folder, 'kept', 'answers'))).filter((name) => name.endsWith('.entry'));

const check = (folder: string, ...words: readonly string[]) =>
  wmark(folder, 'check', '--cache', 'kept', ...words);

describe('the same to the byte', () => {
  const {shop, engine, procedures} = generatedBook(60, 20);
  const FILES = {
    ...smallBook({'book/plug.md': UNCLEAN, 'book/jobs/S-1.yaml': JOB}),
    'made/shop.yaml': shop,
    'made/engine.yaml': engine,
    ...Object.fromEntries(
      [...procedures].map(([name, text]) => [`made/${name}`, text.replace('torque:', 'torqe:')]),
    ),
    'broken/engine.yaml': 'a\0',
  };

  test.each([
    ['text'],
    ['json'],
    ['sarif'],
    ['annotations'],
    ['junit'],
    ['text', '--job', 'S-1'],
    ['json', 'book/plug.md'],
    ['json', 'book/jobs/S-1.yaml'],
    ['json', '--slice', '1/2'],
  ])('--as %s %s %s', async (...words) => {
    const folder = await temporaryFolder(FILES);
    const bare = wmark(folder, 'check', '--no-cache', '--as', ...words);
    expect(check(folder, '--as', ...words)).toEqual(bare);
    expect((await entries(folder)).length).toBeGreaterThan(0);
    expect(check(folder, '--as', ...words)).toEqual(bare);
  });
});

test('a kept answer is told without reading the book: what stands in the entry is what is said', async () => {
  const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
  const {out} = check(folder, 'book');
  const [name = ''] = await entries(folder);
  const path = join(folder, 'kept', 'answers', name);
  const other = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
  await mkdir(join(other, 'kept', 'answers'), {recursive: true});
  await copyFile(path, join(other, 'kept', 'answers', name));
  const text = await readFile(path, 'utf8');
  expect(text).toContain('clean-first');
  // Sealed anew, as nobody but wmark does.
  const forged = await shellSealed(folder, path);
  expect(forged).not.toBe(text);
  expect(check(folder, 'book').out).toBe(out.replaceAll('clean-first', 'CLEAN-FIRST'));
});

/** Changes a word in the entry and seals it as the tool does. */
async function shellSealed(folder: string, path: string): Promise<string> {
  const script = `
    const {createHash} = require('node:crypto');
    const {readFileSync, writeFileSync} = require('node:fs');
    const text = readFileSync('${path}', 'utf8').slice(65).replaceAll('clean-first', 'CLEAN-FIRST');
    writeFileSync('${path}', createHash('sha256').update(text).digest('hex') + '\\n' + text);`;
  await writeFile(join(folder, 'seal.cjs'), script);
  shell(folder, `"${process.execPath}" seal.cjs`);
  return readFile(path, 'utf8');
}

describe('nothing that has changed is told from before', () => {
  const WITH_PICTURE = PROCEDURE.replace('Drive the plug in.', 'Drive the plug in. ![it](a.png)');
  const BASE = 'parts:\n  extra: {given: true}\n';
  const START = {
    ...smallBook({
      'book/shop.yaml': undefined,
      'book/engine.yaml': `extends: ../base/engine.yaml\n${ENGINE}`,
      'book/plug.md': WITH_PICTURE,
      'book/a.png': PNG,
      'book/jobs/S-1.yaml': JOB,
    }),
    'shop.yaml': SHOP,
    'base/engine.yaml': BASE,
  };
  const write = (path: string, text: string | Uint8Array) => (folder: string) =>
    writeFile(join(folder, path), text);

  test.each([
    ['a procedure', write('book/plug.md', UNCLEAN)],
    ['the specification', write('book/engine.yaml', ENGINE)],
    ['its base', write('base/engine.yaml', 'parts:\n  second: {}\n')],
    ['the shop', write('shop.yaml', SHOP.replace('soft-mallet:', 'mallet:'))],
    ['a nearer shop', write('book/shop.yaml', SHOP.replace('soft-mallet:', 'mallet:'))],
    ['a picture that is gone', (folder: string) => rm(join(folder, 'book/a.png'))],
    ['a picture that is none', write('book/a.png', 'no picture')],
    ['a job', write('book/jobs/S-1.yaml', 'job: {number: S-1, engine: other}\n')],
    ['a new job', write('book/jobs/S-2.yaml', JOB)],
    ['a procedure that is gone', (folder: string) => rm(join(folder, 'book/plug.md'))],
    ['a procedure that leads elsewhere', linked],
    ['a repository that begins below the shop', (folder: string) => mkdir(join(folder, 'book/.git'))],
  ])('%s', async (_, change) => {
    const folder = await temporaryFolder(START);
    const before = check(folder, '--as', 'json');
    await change(folder);
    const after = wmark(folder, 'check', '--no-cache', '--as', 'json');
    expect(after).not.toEqual(before);
    expect(check(folder, '--as', 'json')).toEqual(after);
  });

  async function linked(folder: string): Promise<void> {
    await writeFile(join(folder, 'elsewhere.md'), UNCLEAN);
    await rm(join(folder, 'book/plug.md'));
    await symlink('../elsewhere.md', join(folder, 'book/plug.md'));
  }

  test('a date on which calibration runs out', async () => {
    const shop = SHOP.replace('soft-faced mallet', '{name: mallet, gauge: true, due: 2026-03-01}');
    const folder = await temporaryFolder(smallBook({'book/shop.yaml': shop}));
    await writeFile(join(folder, 'day.mjs'), ON_ANOTHER_DAY);
    const on = (date: string) =>
      shell(
        folder,
        `export DAY=${date} NODE_OPTIONS="--import $PWD/day.mjs"; eval $WMARK check --cache kept book || true`,
      ).out;
    expect(on('2026-02-27')).toContain('\n0 errors, 0 warnings');
    expect(on('2026-03-01')).toContain('\n0 errors, 0 warnings');
    expect(on('2026-03-02')).toContain('today is 2026-03-02');
    expect(on('2026-03-03')).toContain('today is 2026-03-03');
    // A clock that was put back.
    expect(on('2026-02-28')).toContain('\n0 errors, 0 warnings');
  });
});

/** Noon of the day that DAY names, for whoever asks what time it is. */
const ON_ANOTHER_DAY = `
const True = Date;
globalThis.Date = class extends True {
  constructor(...of) {
    super(...(of.length === 0 ? [process.env.DAY + 'T12:00:00'] : of));
  }
};`;

describe('an entry that is no good is made anew', () => {
  test.each([
    ['cut short', (text: string) => text.slice(0, text.length / 2)],
    ['empty', () => ''],
    ['of zeros', (text: string) => '\0'.repeat(text.length)],
    ['with one letter changed', (text: string) => text.replace('clean-first', 'clean-First')],
    ['of another program', () => '{"answer": 42}\n'],
  ])('%s', async (_, damage) => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
    const first = check(folder, 'book');
    const [name = ''] = await entries(folder);
    const path = join(folder, 'kept', 'answers', name);
    const whole = await readFile(path, 'utf8');
    await writeFile(path, damage(whole));
    expect(check(folder, 'book')).toEqual(first);
    expect(await readFile(path, 'utf8')).toBe(whole);
  });

  test('with the name of another', async () => {
    const folder = await temporaryFolder({
      ...smallBook({'book/plug.md': UNCLEAN}),
      'other/shop.yaml': SHOP,
      'other/engine.yaml': ENGINE,
      'other/plug.md': PROCEDURE,
    });
    const first = check(folder, '.');
    const [one = '', other = ''] = (await entries(folder)).map((name) =>
      join(folder, 'kept', 'answers', name),
    );
    await copyFile(one, other);
    expect(check(folder, '.')).toEqual(first);
  });

  test('a folder', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
    const first = check(folder, 'book');
    const [name = ''] = await entries(folder);
    await rm(join(folder, 'kept', 'answers', name));
    await mkdir(join(folder, 'kept', 'answers', name));
    expect(check(folder, 'book')).toEqual(first);
  });
});

test('where nothing can be kept, the check is as without', async () => {
  const folder = await temporaryFolder({...smallBook(), taken: 'a file'});
  expect(wmark(folder, 'check', '--cache', 'taken', 'book')).toEqual(
    wmark(folder, 'check', '--no-cache', 'book'),
  );
  expect(wmark(folder, 'check', '--no-cache', 'book').code).toBe(0);
});

test('where it lies: by XDG_CACHE_HOME', async () => {
  const folder = await temporaryFolder(smallBook());
  shell(folder, 'XDG_CACHE_HOME="$PWD/home" eval $WMARK check book');
  expect(await readdir(join(folder, 'home', 'witness-mark', 'answers'))).toHaveLength(2);
  shell(folder, 'XDG_CACHE_HOME="$PWD/none" eval $WMARK check --no-cache book');
  expect(await readdir(folder)).toEqual(['book', 'home']);
});

test('old entries and writes that were killed are swept, and nothing of anybody else', async () => {
  const folder = await temporaryFolder(smallBook());
  check(folder, 'book');
  const kept = join(folder, 'kept', 'answers');
  const old = new Date('2026-01-01');
  const [stale, write, mine] = [
    `${'0'.repeat(64)}.entry`,
    '01234567-89ab-cdef-0123-456789abcdef.tmp',
    'notes.txt',
  ];
  for (const name of [stale, write, mine, 'swept']) {
    await writeFile(join(kept, name), '');
    await utimes(join(kept, name), old, old);
  }
  await writeFile(join(folder, 'book', 'plug.md'), UNCLEAN);
  check(folder, 'book');
  const left = await readdir(kept);
  expect(left).toContain(mine);
  expect(left).not.toContain(stale);
  expect(left).not.toContain(write);
  expect(await entries(folder)).toHaveLength(1);
});

test('several runs at once on one folder, all with the same answer', async () => {
  const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
  const alone = wmark(folder, 'check', '--no-cache', 'book').out;
  const {out} = shell(
    folder,
    `for i in 1 2 3 4; do eval $WMARK check --cache kept book > out$i & done; wait
     cat out1 out2 out3 out4`,
  );
  expect(out).toBe(alone.repeat(4));
  expect(await entries(folder)).toHaveLength(1);
});
