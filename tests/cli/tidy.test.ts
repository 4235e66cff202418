/** `wmark tidy` on files: what it writes, what it leaves alone, what it says, and its exit status. */
import {chmodSync, readFileSync, statSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, it} from 'vitest';
import {rewriteFiles} from '../../src/host/rewrite.js';
import {source} from '../../src/text/source.js';
import {PROCEDURE, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

const LOOSE = PROCEDURE.replace('`clean: seat with solvent`', '`clean:seat  with solvent`').replace(
  '2. Drive',
  '1. Drive',
);
const TIDIED = LOOSE.replace('`clean:seat  with solvent`', '`clean: seat with solvent`').replace(
  '1. Drive',
  '1. Drive',
);

describe('wmark tidy', () => {
  it('writes the canonical form, and then finds nothing more to do', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': LOOSE.replace('1. Drive', '3. Drive')}));
    const first = wmark(folder, 'tidy', 'book');
    expect(first).toEqual({
      code: 0,
      err: '',
      out: [
        'book/plug.md:8:33: `clean:seat  with solvent` becomes `clean: seat with solvent`',
        'book/plug.md:9:1: step number 3 becomes 2',
        '1 procedure was changed, 0 procedures were tidy',
        '',
      ].join('\n'),
    });
    expect(readFileSync(join(folder, 'book/plug.md'), 'utf8')).toBe(PROCEDURE);
    expect(wmark(folder, 'tidy', 'book', '--check')).toEqual({
      code: 0,
      err: '',
      out: '1 procedure was tidy\n',
    });
  });

  it('only says what it would do with --check, and shows it with --show', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': LOOSE}));
    const {code, out} = wmark(folder, 'tidy', '--check', '--show');
    expect(code).toBe(1);
    expect(out).toContain('  8 - 1. Wipe the seat with solvent. `clean:seat  with solvent`\n');
    expect(out).toContain('  8 + 1. Wipe the seat with solvent. `clean: seat with solvent`\n');
    expect(out).toContain('1 procedure would be changed');
    expect(readFileSync(join(folder, 'book/plug.md'), 'utf8')).toBe(LOOSE);
  });

  it.each([
    ['a byte-order mark', (text: string) => `\uFEFF${text}`],
    ['CR LF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['CR alone', (text: string) => text.replaceAll('\n', '\r')],
    ['no line end at the end', (text: string) => text.trimEnd()],
  ])('keeps %s', async (_, written) => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': written(LOOSE)}));
    expect(wmark(folder, 'tidy').code).toBe(0);
    expect(readFileSync(join(folder, 'book/plug.md'), 'utf8')).toBe(written(TIDIED));
  });

  it('keeps the permissions of a file', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': LOOSE}));
    chmodSync(join(folder, 'book/plug.md'), 0o640);
    wmark(folder, 'tidy');
    expect(statSync(join(folder, 'book/plug.md')).mode & 0o777).toBe(0o640);
  });

  it('makes the fixes that are mere spelling with --fix, and leaves the others', async () => {
    const text = LOOSE.replace('`clean:seat', '`Clean: Seat')
      .replace('`install: plug', '`instal: plug')
      .replace('soft-mallet', 'soft-malet');
    const folder = await temporaryFolder(smallBook({'book/plug.md': text}));
    const {code, out, err} = wmark(folder, 'tidy', '--fix');
    expect(code).toBe(0);
    expect(out).toContain('book/plug.md:8:33: Write `clean:`  [tag-form]\n');
    expect(out).toContain('book/plug.md:8:40: Write seat  [tag-form]\n');
    expect(out).toContain('book/plug.md:9:24: Write `install`  [unknown-verb]\n');
    expect(err).toBe('wmark: fixes left to you, since they change more than spelling: 1\n');
    expect(readFileSync(join(folder, 'book/plug.md'), 'utf8')).toBe(
      TIDIED.replace('soft-mallet', 'soft-malet'),
    );
  });

  it('reports what cannot be read and tidies the rest', async () => {
    const engine = smallBook()['book/engine.yaml'];
    const folder = await temporaryFolder(
      smallBook({
        'book/plug.md': LOOSE,
        'book/other.md': new Uint8Array([0xff, 0xfe, 0x41, 0]),
        'book/engine.yaml': String(engine).replace('[plug.md]', '[plug.md, other.md, gone.md]'),
      }),
    );
    const {code, err} = wmark(folder, 'tidy');
    expect(code).toBe(2);
    expect(err).toContain("other.md can't be read");
    expect(err).toContain('there is no file gone.md');
    expect(readFileSync(join(folder, 'book/plug.md'), 'utf8')).toBe(TIDIED);
  });

  it('says so where there is nothing', async () => {
    const folder = await temporaryFolder();
    expect(wmark(folder, 'tidy', 'nowhere').code).toBe(2);
  });
});

describe('rewriting', () => {
  it('leaves a file alone that changed meanwhile', async () => {
    const folder = await temporaryFolder({'a.md': 'new', 'b.md': 'old'});
    const rewrites = ['a.md', 'b.md'].map((file) => ({before: source(file, 'old'), text: 'mine'}));
    const {files, failures} = await rewriteFiles(rewrites, folder);
    expect(files).toEqual(['b.md']);
    expect(failures.map(({says}) => says)).toEqual([
      'it changed while it was worked on, and was left as it is',
    ]);
    expect(readFileSync(join(folder, 'a.md'), 'utf8')).toBe('new');
    expect(readFileSync(join(folder, 'b.md'), 'utf8')).toBe('mine');
  });
});
