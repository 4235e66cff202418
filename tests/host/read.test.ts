/** Files that are no text must be refused with one clear message, and never read further than needed. */
import {execFileSync} from 'node:child_process';
import {symlink, truncate} from 'node:fs/promises';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {failureText} from '../../src/host/failure.js';
import {LIMITS, readText} from '../../src/host/read.js';
import {temporaryFolder} from './temporary.js';

const REFUSED: readonly {name: string; bytes: string | Uint8Array; says: string}[] = [
  {name: 'empty', bytes: '', says: 'f.md: it is empty; write it, or take its name out'},
  {name: 'white space only', bytes: ' \n\t\n', says: 'f.md: it is empty; write it, or take its name out'},
  {name: 'binary', bytes: '# A\nb\0c\n', says: 'f.md:2: it is binary, not text; name a text file'},
  {
    name: 'Latin-1',
    bytes: Buffer.from('# Ö\n\nmuch\n', 'latin1'),
    says: 'f.md:1: it is not written in UTF-8; save it as UTF-8',
  },
  {
    name: 'cut off within a character at the end of the last line',
    bytes: Buffer.from('# A\nb\nc ½', 'utf8').subarray(0, -1),
    says: 'f.md:3: it is not written in UTF-8; save it as UTF-8',
  },
  {
    name: 'UTF-16',
    bytes: Buffer.from('\uFEFF# A\n', 'utf16le'),
    says: 'f.md: it is written in UTF-16; save it as UTF-8',
  },
];

describe('a file that is no text', () => {
  test.each(REFUSED)('$name', async ({bytes, says}) => {
    const folder = await temporaryFolder({'f.md': bytes});
    const read = await readText(join(folder, 'f.md'), 'f.md', LIMITS.procedure);
    expect(read.ok ? 'read' : failureText(read)).toBe(says);
  });

  test('a file of 50 MB', async () => {
    const folder = await temporaryFolder({'f.md': ''});
    await truncate(join(folder, 'f.md'), 50_000_000);
    const read = await readText(join(folder, 'f.md'), 'f.md', LIMITS.procedure);
    expect(read.ok ? 'read' : failureText(read)).toBe(
      'f.md: it is too large: 47.7 MiB, and 4 MiB is the most; split it, or see that it is the right file',
    );
  });

  test.each([
    {path: 'none.md', says: 'f.md: there is no such file or folder; see that the name is right'},
    {path: '.', says: 'f.md: it is a folder, not a file; name a file'},
    {path: 'pipe', says: 'f.md: it is a device or a pipe, not a file; name a text file'},
    {path: 'round', says: 'f.md: its symbolic links go round in a circle; mend the links'},
    {
      path: 'file.md/inner.md',
      says: 'f.md: a part of its path is a file, not a folder; see that the name is right',
    },
  ])('$path', async ({path, says}) => {
    const folder = await temporaryFolder({'file.md': '# A\n'});
    execFileSync('mkfifo', [join(folder, 'pipe')]);
    await symlink('round', join(folder, 'round'));
    const read = await readText(join(folder, path), 'f.md', LIMITS.procedure);
    expect(read.ok ? 'read' : failureText(read)).toBe(says);
  });

  test('a device', async () => {
    const read = await readText('/dev/zero', 'f.md', LIMITS.procedure);
    expect(read.ok ? 'read' : failureText(read)).toBe(
      'f.md: it is a device or a pipe, not a file; name a text file',
    );
  });
});

describe('a file that is text', () => {
  test.each([
    {name: 'plain', bytes: '# A\n', text: '# A\n', mark: false},
    {name: 'with a byte-order mark', bytes: '\uFEFF# A\n', text: '# A\n', mark: true},
    {name: 'with a replacement character of its own', bytes: 'a\uFFFDb', text: 'a\uFFFDb', mark: false},
    {name: 'of every plane', bytes: '½ 中 😀\r\n', text: '½ 中 😀\r\n', mark: false},
  ])('$name', async ({bytes, text, mark}) => {
    const folder = await temporaryFolder({'f.md': bytes});
    const read = await readText(join(folder, 'f.md'), 'f.md', LIMITS.procedure);
    expect(read).toMatchObject({ok: true, source: {file: 'f.md', text, mark}});
  });

  test('exactly as large as may be', async () => {
    const folder = await temporaryFolder({'f.md': 'a'.repeat(100), 'g.md': 'a'.repeat(101)});
    expect((await readText(join(folder, 'f.md'), 'f.md', 100)).ok).toBe(true);
    expect((await readText(join(folder, 'g.md'), 'g.md', 100)).ok).toBe(false);
  });
});
