/**
 * A book reads nothing outside the folder of its shop.yaml and writes nothing outside the folder that it is told to,
 * whatever its names, links and jobs are made of: each case is what a stranger could put into a pull request.
 */

import {readdir, readFile, rm, symlink} from 'node:fs/promises';
import {join, relative} from 'node:path';
import {describe, expect, test} from 'vitest';
import {wmark} from '../cli/run.js';
import {type Ran, ran} from '../help/command.js';
import {ENGINE, PROCEDURE, SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';

const SECRET = 'tide-gate-nine';
const SECRETS = {
  'secret.md': PROCEDURE.replaceAll('Plug', SECRET).replaceAll('seat', SECRET),
  'secret.yaml': ENGINE.replace('id: small', `id: ${SECRET}\n  ${SECRET}: ${SECRET}`),
  'secret.txt': `root:x:0:0:${SECRET}\n${SECRET}: [${SECRET}\n`,
  'secret.png': `\u0089PNG\r\n\u001A\n${SECRET}`,
  'jobs/secret.yaml': `job: {number: ${SECRET}, engine: ${SECRET}}\n`,
};

/** A small book in `room/book`, with the secrets beside and above it. */
async function room(changes: {readonly [path: string]: string} = {}): Promise<string> {
  const files = Object.entries(smallBook(changes)).map(([path, text]) => [`room/${path}`, text] as const);
  return temporaryFolder({...SECRETS, ...Object.fromEntries(files), 'room/.git/HEAD': ''});
}

function said(folder: string, ...words: readonly string[]): Promise<Ran> {
  const here = relative(process.cwd(), folder);
  return ran(...words.map((word) => word.replace('@', `${here}/`)));
}

/** Nothing that any command prints of the book holds a word of the secrets. */
async function expectKept(folder: string, path = '@room/book'): Promise<string> {
  const told = [
    await said(folder, 'check', path),
    await said(folder, 'check', path, '--as', 'json'),
    await said(folder, 'lists', path),
    await said(folder, 'coverage', path),
    await said(folder, 'tidy', path, '--show'),
  ];
  for (const {code, out, err} of told) {
    expect(out + err).not.toContain(SECRET);
    expect(code).not.toBe(3);
  }
  const [first] = told;
  expect(first?.code).not.toBe(0);
  return `${first?.out}${first?.err}`;
}

/** Ways of writing the name of a file above the shop. */
const NAMES = (file: string, folder: string) => [
  `../../${file}`,
  `../book/../../${file}`,
  `./././../../${file}`,
  `nothing/../../../${file}`,
  join(folder, file),
  `file://${join(folder, file)}`,
  `C:\\${file}`,
  `..\\..\\${file}`,
  `\\\\server\\share\\${file}`,
  `//server/share/${file}`,
  `~/${file}`,
  `$HOME/${file}`,
  `%2e%2e/%2e%2e/${file}`,
  `../../${file.toUpperCase()}`,
  '/etc/hostname',
  '/dev/stdin',
  '/proc/self/environ',
  '.',
  '..',
];

describe('a name that leads out', () => {
  test('of build:', async () => {
    const folder = await room();
    for (const name of NAMES('secret.md', folder)) {
      const one = await room({
        'book/engine.yaml': ENGINE.replace('plug.md', `plug.md, ${JSON.stringify(name)}`),
      });
      expect(await expectKept(one)).toContain('[file-unreadable]');
    }
  });

  test('of extends:', async () => {
    const folder = await room();
    for (const name of NAMES('secret.yaml', folder)) {
      const one = await room({'book/engine.yaml': `extends: ${JSON.stringify(name)}\n${ENGINE}`});
      await expectKept(one);
    }
  });

  test('of a picture', async () => {
    const folder = await room();
    const pictures = NAMES('secret.png', folder).map((name) => `\n   ![x](<${name}>)\n`);
    const one = await room({'book/plug.md': `${PROCEDURE}${pictures.join('')}`});
    const {out: text} = await said(one, 'check', '@room/book');
    expect(text.match(/\[picture-missing\]/g)?.length).toBeGreaterThanOrEqual(pictures.length - 2);
    expect(wmark(one, 'sheet', 'room/book', '--out', 'out').code).toBe(0);
    const html = await readFile(join(one, 'out/small/plug.html'), 'utf8');
    expect(html).not.toContain(Buffer.from(SECRET).toString('base64').slice(0, 12));
    expect(html).not.toContain('<img');
  });
});

describe('a symbolic link that leads out', () => {
  test.each([
    ['a procedure', 'book/plug.md', '../../secret.md'],
    ['a base', 'book/base.yaml', '../../secret.yaml'],
    ['the shop', 'book/shop.yaml', '../../secret.txt'],
    ['the shop, to a folder that holds the book', 'book/shop.yaml', '../../secret.yaml'],
    ['the engine', 'book/engine.yaml', '../../secret.txt'],
    ['the engine of a book below', 'book/below/engine.yaml', '../../../secret.yaml'],
    ['a job', 'book/jobs/1.yaml', '../../../jobs/secret.yaml'],
    ['the folder of jobs', 'book/jobs', '../../jobs'],
  ])('as %s', async (_, at, target) => {
    const folder = await room({
      'book/engine.yaml': at.includes('base') ? `extends: base.yaml\n${ENGINE}` : ENGINE,
      'book/below/other.yaml': '',
      ...(at.includes('jobs/') && {'book/jobs/2.yaml': 'job: {number: 2, engine: none}\n'}),
      [at.replace('/jobs', '/x')]: 'x',
    });
    const path = join(folder, 'room', at);
    await rm(path, {force: true});
    await symlink(target, path);
    await expectKept(folder);
  });

  test('as the shop, widening what may be read', async () => {
    const folder = await room({'book/engine.yaml': ENGINE.replace('plug.md', '../../secret.md')});
    await rm(join(folder, 'room/book/shop.yaml'));
    await symlink('../../secret.txt', join(folder, 'room/book/shop.yaml'));
    expect(await expectKept(folder)).toContain("it leads outside the shop's folder");
  });

  test('but one to the shop above is no more than the search would find', async () => {
    const folder = await room({'shop.yaml': SHOP});
    await rm(join(folder, 'room/book/shop.yaml'));
    await symlink('../shop.yaml', join(folder, 'room/book/shop.yaml'));
    expect((await said(folder, 'check', '@room/book')).code).toBe(0);
  });
});

describe('sheets are written below --out only', () => {
  test.each([
    '../../evil',
    '..',
    '.',
    '/tmp/evil',
    'a/b',
    'a\\b',
    'C:x',
    '\u0001',
    'x'.repeat(300),
    '...',
    'NUL ',
  ])('for a job whose number is %j', async (number) => {
    const folder = await room({
      'book/jobs/1.yaml': `job: {number: ${JSON.stringify(number)}, engine: small}\n`,
    });
    const {code} = wmark(
      folder,
      'sheet',
      'room/book',
      '--job',
      'all',
      '--out',
      'room/out/deep',
      '--even-with-errors',
    );
    expect(code).not.toBe(3);
    expect((await readdir(folder)).sort()).toEqual(
      ['jobs', 'room', ...Object.keys(SECRETS).filter((name) => !name.includes('/'))].sort(),
    );
    const below = (await readdir(join(folder, 'room'))).filter((name) => name !== 'out');
    expect(below.sort()).toEqual(['.git', 'book']);
    if (code === 0) expect(await readdir(join(folder, 'room/out'))).toEqual(['deep']);
  });

  test('and not through a link that lies there', async () => {
    const folder = await room({'out/keep.txt': ''});
    await symlink('../../jobs', join(folder, 'room/out/small'));
    const {code, err} = wmark(folder, 'sheet', 'room/book', '--out', 'room/out');
    expect(code).toBe(2);
    expect(err).toContain('a symbolic link there leads out of the folder to write to; take the link away');
    expect(await readdir(join(folder, 'jobs'))).toEqual(['secret.yaml']);
  });

  test('two procedures whose names differ in case only, or not at all, get a file each', async () => {
    const build = 'build: [plug.md, PLUG.md, deep/plug.md, index.md, deep/Index.md]';
    const again = PROCEDURE.slice(0, PROCEDURE.indexOf('1.')).concat('1. Look.\n');
    const folder = await room({
      'book/engine.yaml': ENGINE.replace('build: [plug.md]', build),
      ...Object.fromEntries(
        ['PLUG.md', 'deep/plug.md', 'index.md', 'deep/Index.md'].map((name) => [`book/${name}`, again]),
      ),
    });
    expect(wmark(folder, 'sheet', 'room/book', '--out', 'out').code).toBe(0);
    const names = (await readdir(join(folder, 'out/small'))).map((name) => name.toLowerCase());
    expect(names).toHaveLength(6);
    expect(new Set(names).size).toBe(6);
  });
});
