/** Files and folders that change, vanish or go round in circles while they are looked at: never a fault, never half a text. */
import {appendFileSync, rmSync, truncateSync, writeFileSync} from 'node:fs';
import {mkdir, symlink, utimes} from 'node:fs/promises';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {DISK} from '../../src/host/disk.js';
import {failureText} from '../../src/host/failure.js';
import {findBooks} from '../../src/host/find-books.js';
import {loadBooks} from '../../src/host/load.js';
import {LIMITS, readText} from '../../src/host/read.js';
import {FRESH, type Reader} from '../../src/host/reader.js';
import {stillHolds, traced} from '../../src/host/trace.js';
import {shell} from '../cli/run.js';
import {PROCEDURE, smallBook} from './small-book.js';
import {temporaryFolder} from './temporary.js';

describe('a file that is written while it is read', () => {
  /** Loaded before the command: what DO says is done to plug.md after the first read of each opening. */
  const HOOK = `
import fs from 'node:fs/promises';
import {appendFileSync, rmSync, truncateSync} from 'node:fs';
import {syncBuiltinESMExports} from 'node:module';
let left = Number(process.env.TIMES);
const open = fs.open;
fs.open = async (path, ...rest) => {
  const handle = await open(path, ...rest);
  if (!path.endsWith('plug.md')) return handle;
  const read = handle.read.bind(handle);
  let first = true;
  handle.read = async (...of) => {
    const told = await read(...of);
    if (first && left-- > 0) {
      if (process.env.DO === 'grow') appendFileSync(path, '3. Turn the plug.\\n');
      if (process.env.DO === 'truncate') truncateSync(path, 60);
      if (process.env.DO === 'remove') rmSync(path);
    }
    first = false;
    return told;
  };
  return handle;
};
syncBuiltinESMExports();
`;

  const ran = async (what: string, times: number) => {
    const folder = await temporaryFolder({...smallBook(), 'hook.mjs': HOOK});
    return shell(
      folder,
      `export DO=${what} TIMES=${times} NODE_OPTIONS="--import $PWD/hook.mjs"
       eval $WMARK check --no-cache book || true
       unset NODE_OPTIONS
       echo then
       eval $WMARK check --no-cache book || true`,
    );
  };

  test.each([
    ['grow', 1],
    ['truncate', 1],
  ])('%s: the text is what it is afterwards', async (what, times) => {
    const {out, err} = await ran(what, times);
    const [now, then] = out.split('then\n');
    expect(now).toBe(then);
    expect(err).toBe('');
  });

  test('one that never comes to rest is no text', async () => {
    const {out} = await ran('grow', 9);
    expect(out).toContain(
      "error: plug.md can't be read: somebody is writing it; run the command again when it is saved  [file-unreadable]",
    );
  });

  test('one that is removed is read to its end, as it was', async () => {
    const {out, err} = await ran('remove', 1);
    const [now, then] = out.split('then\n');
    expect(now).toContain('0 errors');
    expect(then).toContain('there is no file plug.md');
    expect(err).toBe('');
  });
});

describe('a book of which something vanishes between two looks at it', () => {
  /** The disk, on which something is done just before the nth question. */
  const disturbed = (nth: number, disturb: () => void): Reader => {
    let asked = 0;
    const counting =
      <A extends readonly unknown[], R>(ask: (...of: A) => R) =>
      (...of: A): R => {
        if (++asked === nth) disturb();
        return ask(...of);
      };
    const disk = {
      ...DISK,
      truePath: counting(DISK.truePath),
      exists: counting(DISK.exists),
      kind: counting(DISK.kind),
      names: counting(DISK.names),
      picture: counting(DISK.picture),
    };
    return {...FRESH, text: counting(DISK.text), disk};
  };

  const WITH_PICTURE = PROCEDURE.replace('Drive the plug in.', 'Drive the plug in. ![it](a.png)');
  const FILES = smallBook({
    'book/plug.md': WITH_PICTURE,
    'book/a.png': Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'),
    'book/jobs/S-1.yaml': 'job: {number: S-1, engine: small}\n',
  });

  test.each(['book/plug.md', 'book/a.png', 'book/jobs', 'book/engine.yaml', 'book/shop.yaml', 'book'])(
    '%s, at every question',
    async (path) => {
      for (let nth = 1; nth <= 24; nth++) {
        const folder = await temporaryFolder(FILES);
        const gone = () => rmSync(join(folder, path), {recursive: true});
        // It says something, or has seen all before; it does not throw.
        const {books, failures} = await loadBooks(['book'], folder, disturbed(nth, gone));
        expect(books.length + failures.length).toBeGreaterThan(0);
      }
    },
  );
});

test('a folder that is removed during the search is passed by, and the others are found', async () => {
  const folder = await temporaryFolder({
    ...smallBook(),
    'a/engine.yaml': 'x',
    'hook.mjs': `
import fs from 'node:fs/promises';
import {rmSync} from 'node:fs';
import {syncBuiltinESMExports} from 'node:module';
const readdir = fs.readdir;
fs.readdir = async (...of) => {
  const names = await readdir(...of);
  rmSync('a', {recursive: true, force: true});
  return names;
};
syncBuiltinESMExports();
`,
  });
  const ran = shell(folder, 'export NODE_OPTIONS="--import $PWD/hook.mjs"; eval $WMARK check --no-cache .');
  expect(ran).toMatchObject({code: 0, err: ''});
  expect(ran.out).toContain('1 book, 1 procedure');
});

test('what is asked twice and answered in two ways is never kept', async () => {
  const folder = await temporaryFolder({'a.md': 'one'});
  const path = join(folder, 'a.md');
  const {reader, trace} = traced(FRESH);
  await reader.text(path, 'a.md', LIMITS.procedure);
  const before = trace();
  expect(before && (await stillHolds(before, DISK))).toBe(true);
  writeFileSync(path, 'two');
  expect(before && (await stillHolds(before, DISK))).toBe(false);
  await reader.text(path, 'a.md', LIMITS.procedure);
  expect(trace()).toBeUndefined();
});

test('the time of a file says nothing: an old one and one of the future are read alike', async () => {
  const folder = await temporaryFolder(smallBook());
  for (const date of ['1970-01-02', '2107-01-01']) {
    await utimes(join(folder, 'book/plug.md'), new Date(date), new Date(date));
    expect((await loadBooks(['book'], folder)).failures).toEqual([]);
  }
});

test('a text that is cut off within a letter is no text, and says where', async () => {
  const folder = await temporaryFolder({'a.md': 'one\ntwo µ'});
  truncateSync(join(folder, 'a.md'), 9);
  const read = await readText(join(folder, 'a.md'), 'a.md', LIMITS.procedure);
  expect(read.ok ? '' : failureText(read)).toBe('a.md:2: it is not written in UTF-8; save it as UTF-8');
  appendFileSync(join(folder, 'a.md'), Buffer.from([0xb5]));
  expect((await readText(join(folder, 'a.md'), 'a.md', LIMITS.procedure)).ok).toBe(true);
});

describe('links that go round in circles', () => {
  test('are never followed in a search, and lead nowhere by name', async () => {
    const folder = await temporaryFolder(smallBook());
    await symlink('../book', join(folder, 'book', 'again'));
    await symlink('loop', join(folder, 'loop'));
    await symlink('.', join(folder, 'here'));
    await mkdir(join(folder, 'deep'));
    await symlink('../..', join(folder, 'deep', 'up'));
    const {found, failures} = await findBooks(['.', 'here', 'book/again/again', 'loop'], folder);
    expect(found.map(({engineFile}) => engineFile)).toEqual([join(folder, 'book', 'engine.yaml')]);
    expect(failures.map(failureText)).toEqual([
      'loop: there is no such file or folder; see that the path is right',
    ]);
  });

  test('in the place of files of a book are findings', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': undefined}));
    await symlink('plug.md', join(folder, 'book', 'plug.md'));
    await symlink('.', join(folder, 'book', 'jobs'));
    const {books, failures} = await loadBooks(['book'], folder);
    expect(failures).toEqual([]);
    expect(books[0]?.book.problems.map(({says}) => says)).toContain('there is no file plug.md');
  });
});
