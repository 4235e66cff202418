/** The folder of kept texts: bounded, swept once a day, and wherever the system keeps such things. */
import {readdir, utimes, writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {expect, test} from 'vitest';
import {cacheIn, NO_CACHE} from '../../src/host/cache.js';
import {cacheFolder} from '../../src/host/cache-folder.js';
import {temporaryFolder} from './temporary.js';

const DAY = 24 * 60 * 60 * 1000;

test('what is put is got, by its key alone', async () => {
  const cache = cacheIn(await temporaryFolder());
  await cache.put('one', 'å\n1');
  await cache.put('two', '');
  expect([await cache.get('one'), await cache.get('two'), await cache.get('three')]).toEqual([
    'å\n1',
    '',
    undefined,
  ]);
  await cache.put('one', '2');
  expect(await cache.get('one')).toBe('2');
});

test('the oldest go where there is too much', async () => {
  const folder = await temporaryFolder();
  const cache = cacheIn(folder, {bytes: 1_000, days: 30});
  const seen = new Set<string>();
  for (const [index, key] of ['a', 'b', 'c', 'd'].entries()) {
    await cache.put(key, 'x'.repeat(200));
    const time = new Date(Date.now() - (4 - index) * 60_000);
    for (const name of await readdir(folder))
      if (!seen.has(name)) await utimes(join(folder, name), time, time);
    for (const name of await readdir(folder)) seen.add(name);
  }
  await cache.sweep();
  expect([await cache.get('a'), (await cache.get('d'))?.length]).toEqual([undefined, 200]);
});

test.each([
  ['never swept', undefined, true],
  ['swept an hour ago', -DAY / 24, false],
  ['swept the day before yesterday', -2 * DAY, true],
  ['swept next year, before the clock was put back', 365 * DAY, true],
])('%s', async (_, ago, isSwept) => {
  const folder = await temporaryFolder();
  const at = (milliseconds: number) => new Date(Date.now() + milliseconds);
  const mark = join(folder, 'swept');
  const stale = join(folder, `${'0'.repeat(64)}.entry`);
  await writeFile(stale, '');
  await utimes(stale, at(-31 * DAY), at(-31 * DAY));
  if (ago !== undefined) {
    await writeFile(mark, '');
    await utimes(mark, at(ago), at(ago));
  }
  const cache = cacheIn(folder);
  await cache.sweep();
  // A run that kept nothing new has nothing to make room for.
  expect(await readdir(folder)).toContain(`${'0'.repeat(64)}.entry`);
  await cache.put('new', 'text');
  await cache.sweep();
  expect((await readdir(folder)).includes(`${'0'.repeat(64)}.entry`)).toBe(!isSwept);
});

test('an entry that is asked for stays', async () => {
  const folder = await temporaryFolder();
  const cache = cacheIn(folder, {bytes: 1_000_000, days: 30});
  await cache.put('old', 'text');
  const [name = ''] = await readdir(folder);
  const old = new Date(Date.now() - 31 * DAY);
  await utimes(join(folder, name), old, old);
  expect(await cache.get('old')).toBe('text');
  await cache.sweep();
  expect(await cache.get('old')).toBe('text');
});

test('without a folder nothing is kept', async () => {
  await NO_CACHE.put('one', '1');
  await NO_CACHE.sweep();
  expect(await NO_CACHE.get('one')).toBeUndefined();
});

// XDG Base Directory Specification 0.8: unset, empty or relative means $HOME/.cache. The others by custom of the system.
test.each([
  ['linux', {XDG_CACHE_HOME: '/c', HOME: '/h'}, '/c/witness-mark'],
  ['linux', {XDG_CACHE_HOME: '', HOME: '/h'}, '/h/.cache/witness-mark'],
  ['linux', {XDG_CACHE_HOME: 'c', HOME: '/h'}, '/h/.cache/witness-mark'],
  ['darwin', {HOME: '/h'}, '/h/Library/Caches/witness-mark'],
  ['win32', {HOME: '/h'}, undefined],
  ['win32', {LOCALAPPDATA: '/l'}, '/l/witness-mark'],
] as const)('on %s with %o', (platform, env, folder) => {
  expect(cacheFolder(env, platform)).toBe(folder);
});
