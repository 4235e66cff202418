/** `wmark adopt` on files: where the draft goes, what is never overwritten, and what it says when it cannot. */
import {readFileSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, it} from 'vitest';
import {smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

const PLAIN = '1. Wipe the seat with solvent.\n2. Drive the plug in.\n';
const DRAFT =
  /^---\ntitle: Old plug\nrevision: A\ndate: \d{4}-\d\d-\d\d\n---\n\n1\. Wipe the seat with solvent\. `clean: seat with solvent`\n2\. Drive the plug in\. `install: plug`\n$/;

describe('wmark adopt', () => {
  it('writes the draft to standard output, by the engine.yaml named, and leaves the original alone', async () => {
    const folder = await temporaryFolder({...smallBook(), 'old/02-old-plug.md': PLAIN});
    const {code, out, err} = wmark(folder, 'adopt', 'old/02-old-plug.md', '--engine', 'book/engine.yaml');
    expect({code, err}).toEqual({
      code: 0,
      err: 'wmark: by book/engine.yaml: 2 tags written, 0 to settle, 0 asked for and not said\n',
    });
    expect(out).toMatch(DRAFT);
    expect(readFileSync(join(folder, 'old/02-old-plug.md'), 'utf8')).toBe(PLAIN);
  });

  it('takes the engine.yaml of the book above, and its draft wants nothing but a place in the book', async () => {
    const folder = await temporaryFolder(smallBook({'book/old-plug.md': PLAIN}));
    expect(wmark(folder, 'adopt', 'book/old-plug.md', '--out', 'book/draft.md').code).toBe(0);
    expect(readFileSync(join(folder, 'book/draft.md'), 'utf8')).toMatch(DRAFT);
    const {out} = wmark(folder, 'check', 'book/draft.md');
    expect(out).toContain('[not-in-build]');
    expect(out).toContain('0 errors, 1 warning\n');
    expect(wmark(folder, 'tidy', '--check', 'book/draft.md').code).toBe(0);
  });

  it('overwrites nothing unless it is told to, not even the original', async () => {
    const folder = await temporaryFolder(smallBook({'book/old-plug.md': PLAIN}));
    const words = ['adopt', 'book/old-plug.md', '--out', 'book/old-plug.md'];
    const refused = wmark(folder, ...words);
    expect({code: refused.code, out: refused.out}).toEqual({code: 2, out: ''});
    expect(refused.err).toBe(
      'wmark: book/old-plug.md: it is there already; name another file, or say --replace\n',
    );
    expect(readFileSync(join(folder, 'book/old-plug.md'), 'utf8')).toBe(PLAIN);
    expect(wmark(folder, ...words, '--replace').code).toBe(0);
    expect(readFileSync(join(folder, 'book/old-plug.md'), 'utf8')).toMatch(DRAFT);
  });

  it.each([
    ['a file that is not there', 'gone.md', [], 'there is no such file or folder'],
    ['no steps', 'book/prose.md', [], 'it has no steps; write its steps as a numbered list'],
    ['no book above', 'alone.md', [], 'name the engine.yaml to go by with --engine'],
    [
      'an engine that is not there',
      'alone.md',
      ['--engine', 'gone.yaml'],
      'gone.yaml: there is no such file or folder',
    ],
    ['no text', 'book/binary.md', [], 'it is binary, not text'],
  ])('says what is wrong: %s', async (_, file, more, says) => {
    const folder = await temporaryFolder({
      ...smallBook(),
      'book/prose.md': 'Only prose.\n',
      'book/binary.md': new Uint8Array([65, 0, 66]),
      'alone.md': PLAIN,
    });
    const {code, out, err} = wmark(folder, 'adopt', file, ...more);
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toContain(says);
  });
});
