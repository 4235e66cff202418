/** Writing several files: all or none, whole, and nothing left lying about. */
import {mkdir, readdir, readFile, symlink} from 'node:fs/promises';
import {join} from 'node:path';
import {expect, test} from 'vitest';
import {failureText} from '../../src/host/failure.js';
import {writeFiles} from '../../src/host/write.js';
import {temporaryFolder} from './temporary.js';

test('new files in new folders', async () => {
  const folder = await temporaryFolder();
  const path = join(folder, 'out', 'deep', 'a.html');
  expect(await writeFiles([{path, text: 'å'}])).toEqual({ok: true});
  expect(await readFile(path, 'utf8')).toBe('å');
  expect(await readdir(join(folder, 'out', 'deep'))).toEqual(['a.html']);
});

test('in place of older ones', async () => {
  const folder = await temporaryFolder({'a.html': 'old', 'b.html': 'old', 'c.html': 'other'});
  const outputs = ['a.html', 'b.html'].map((name) => ({path: join(folder, name), text: 'new'}));
  expect(await writeFiles(outputs)).toEqual({ok: true});
  expect(await readFile(join(folder, 'a.html'), 'utf8')).toBe('new');
  expect((await readdir(folder)).sort()).toEqual(['a.html', 'b.html', 'c.html']);
});

test('a symbolic link gives way to the file and its target is left alone', async () => {
  const folder = await temporaryFolder({'target.txt': 'mine'});
  await symlink('target.txt', join(folder, 'a.html'));
  expect(await writeFiles([{path: join(folder, 'a.html'), text: 'new'}])).toEqual({ok: true});
  expect(await readFile(join(folder, 'target.txt'), 'utf8')).toBe('mine');
});

test('one name taken by a folder: none is written, nothing is left', async () => {
  const folder = await temporaryFolder({'a.html': 'old'});
  await mkdir(join(folder, 'b.html'));
  const outputs = ['a.html', 'b.html'].map((name) => ({path: join(folder, name), text: 'new'}));
  const result = await writeFiles(outputs);
  expect(result.ok ? 'written' : failureText(result)).toBe(
    `${join(folder, 'b.html')}: it is a folder, not a file; name a file`,
  );
  expect(await readFile(join(folder, 'a.html'), 'utf8')).toBe('old');
  expect((await readdir(folder)).sort()).toEqual(['a.html', 'b.html']);
});

test('folders that it made go again when it fails', async () => {
  const folder = await temporaryFolder({file: 'a file where a folder is due'});
  const outputs = [join(folder, 'new', 'deep', 'a.html'), join(folder, 'file', 'b.html')];
  const result = await writeFiles(outputs.map((path) => ({path, text: 'new'})));
  expect(result).toMatchObject({ok: false, says: 'a file has the name of a folder that is needed'});
  expect(await readdir(folder)).toEqual(['file']);
});

test('an error that the system did not make is thrown on', async () => {
  await expect(writeFiles([{path: 'a\0b', text: 'new'}])).rejects.toThrow();
});
