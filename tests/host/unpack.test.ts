/** A revision unpacked to a folder holds its files under their own names, whatever those are made of. */
import {readdir, readFile} from 'node:fs/promises';
import {join} from 'node:path';
import {expect, test} from 'vitest';
import {repositoryOf, revisionIn} from '../../src/host/revision.js';
import {withUnpacked} from '../../src/host/unpack.js';
import {scratch} from '../cli/git.js';

async function unpackedFrom<T>(files: Readonly<Record<string, string>>, use: (top: string) => Promise<T>) {
  const repo = await scratch(files);
  const repository = await repositoryOf(repo.folder, repo.folder);
  if (!repository.ok) throw new Error(repository.says);
  const revision = await revisionIn(repository, 'HEAD');
  if (!revision.ok) throw new Error(revision.says);
  return withUnpacked(repository, revision, '', ({top}) => use(top));
}

test('a name with a tab in it does not take the place of the file before the tab', async () => {
  const text = await unpackedFrom(
    {'engine.yaml': 'engine: {id: true-one}\n', 'engine.yaml\t.yaml': 'engine: {id: false-one}\n'},
    (top) => readFile(join(top, 'engine.yaml'), 'utf8'),
  );
  expect(text).toBe('engine: {id: true-one}\n');
});

test('pictures are brought, in more than one go where they are many; other files are not', async () => {
  const pictures = Array.from({length: 6}, (_, at) => [`shots/${at}.JPG`, `${at}`.repeat(7 * 1024 * 1024)]);
  const files = {'engine.yaml': 'engine: {id: one}\n', 'film.mp4': 'x', ...Object.fromEntries(pictures)};
  const brought = await unpackedFrom(files, (top) => readdir(top, {recursive: true}));
  expect(brought).toEqual(expect.arrayContaining(['engine.yaml', ...pictures.map(([name]) => name)]));
  expect(brought).not.toContain('film.mp4');
});
