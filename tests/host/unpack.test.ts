/** A revision unpacked to a folder holds its files under their own names, whatever those are made of. */
import {readFile} from 'node:fs/promises';
import {join} from 'node:path';
import {expect, test} from 'vitest';
import {repositoryOf, revisionIn} from '../../src/host/revision.js';
import {withUnpacked} from '../../src/host/unpack.js';
import {scratch} from '../cli/git.js';

test('a name with a tab in it does not take the place of the file before the tab', async () => {
  const repo = await scratch({
    'engine.yaml': 'engine: {id: true-one}\n',
    'engine.yaml\t.yaml': 'engine: {id: false-one}\n',
  });
  const repository = await repositoryOf(repo.folder, repo.folder);
  if (!repository.ok) throw new Error(repository.says);
  const revision = await revisionIn(repository, 'HEAD');
  if (!revision.ok) throw new Error(revision.says);
  const text = await withUnpacked(repository, revision, '', ({top}) =>
    readFile(join(top, 'engine.yaml'), 'utf8'),
  );
  expect(text).toBe('engine: {id: true-one}\n');
});
