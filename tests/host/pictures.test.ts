/** Pictures of procedures on disk: which can be shown, and what is said of the others. */
import {symlink} from 'node:fs/promises';
import {join} from 'node:path';
import {expect, test} from 'vitest';
import {check} from '../../src/findings/check.js';
import {loadBook} from '../../src/host/load.js';
import {textsOf} from '../../src/host/places.js';
import {PROCEDURE, smallBook} from './small-book.js';
import {temporaryFolder} from './temporary.js';

/** The first bytes of each kind of file, by its specification. */
const PNG = Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex');
const JPEG = Buffer.from('ffd8ffe000104a4649460001', 'hex');

function showing(url: string): string {
  return PROCEDURE.replace('Drive the plug in.', `Drive the plug in. ![the plug](${url})`);
}

/** What the check says of the picture, with the text that it points at. */
async function saidOf(
  url: string,
  files: {readonly [path: string]: string | Uint8Array} = {},
): Promise<string[]> {
  const folder = await temporaryFolder({
    ...smallBook({'book/plug.md': showing(url)}),
    'secret.png': PNG,
    ...files,
  });
  return saidIn(folder);
}

async function saidIn(folder: string): Promise<string[]> {
  const loaded = await loadBook(join(folder, 'book'), folder);
  if (!loaded.ok) throw new Error(loaded.says);
  const texts = textsOf(loaded.book);
  return check(loaded.book).findings.flatMap(({name, severity, message, where}) =>
    name === 'picture-missing'
      ? [`${severity} ${message} <${texts.get(where.file)?.text.slice(where.span.start, where.span.end)}>`]
      : [],
  );
}

test.each([
  ['a.png', PNG],
  ['pictures/a%20b.jpg', JPEG],
  ['named-otherwise.txt', PNG],
  ['a.png?v=2#top', PNG],
])('%s is shown', async (url, bytes) => {
  const path = decodeURIComponent(url.replace(/[?#].*/, ''));
  expect(await saidOf(url, {[`book/${path}`]: bytes})).toEqual([]);
});

test.each([
  ['a.png', 'there is no picture a.png; put it there, or take it out'],
  ['Pictures/a.png', 'there is no picture Pictures/a.png; put it there, or take it out'],
  ['../../nowhere/a.png', "../../nowhere/a.png lies outside the shop's folder; put the picture below it"],
  ['../secret.png', "../secret.png lies outside the shop's folder; put the picture below it"],
  [
    'https://example.org/a.png',
    'https://example.org/a.png is no path in the book; keep the picture beside the procedure',
  ],
  ['plug.md', 'plug.md is no picture that a sheet can show; save it as PNG, JPEG, GIF or WebP'],
  ['%E0%A4%A', '%E0%A4%A is no path in the book; keep the picture beside the procedure'],
  ['.', '. is not a file; name a picture'],
])('%s is missing', async (url, says) => {
  expect(await saidOf(url)).toEqual([`warning ${says} <![the plug](${url})>`]);
});

test.each([
  ['plgu.png', 'plug.png', 'plug.png'],
  ['Plug.PNG', 'plug.png', 'plug.png'],
  ['plug.jpg', 'plug.png', 'plug.png'],
  ['plug.png', 'pictures/plug.png', 'pictures/plug.png'],
  ['Pictures/plug.png', 'pictures/plug.png', 'pictures/plug.png'],
  ['picture/a%20plug.png', 'pictures/a plug.png', 'pictures/a%20plug.png'],
  ['pump.png', 'notes/deep/pump.png', undefined],
  ['pump.png', 'pump.txt', undefined],
  ['pump.png', 'head-bolts.png', undefined],
])('%s, where %s is there, was meant to be %s', async (url, there, meant) => {
  const hint = meant === undefined ? 'put it there, or take it out' : `did you mean ${meant}?`;
  const name = decodeURIComponent(url);
  expect(await saidOf(url, {[`book/${there}`]: PNG})).toEqual([
    `warning there is no picture ${name}; ${hint} <![the plug](${url})>`,
  ]);
});

test('no name outside of the book is told', async () => {
  const folder = await temporaryFolder({
    ...smallBook({'book/plug.md': showing('a.png')}),
    'outside/a.png': PNG,
  });
  await symlink(join(folder, 'outside'), join(folder, 'book', 'inside'));
  expect((await saidIn(folder))[0]).toContain('put it there, or take it out');
});

test('one that is too large is not put in', async () => {
  const big = Buffer.concat([PNG, Buffer.alloc(8 * 1024 * 1024)]);
  expect(await saidOf('a.png', {'book/a.png': big})).toEqual([
    'warning a.png is larger than 8 MiB; save it smaller <![the plug](a.png)>',
  ]);
});

test('a link that leads out of the book is not followed', async () => {
  const folder = await temporaryFolder({...smallBook({'book/plug.md': showing('a.png')}), 'secret.png': PNG});
  await symlink(join(folder, 'secret.png'), join(folder, 'book', 'a.png'));
  expect(await saidIn(folder)).toEqual([
    "warning a.png lies outside the shop's folder; put the picture below it <![the plug](a.png)>",
  ]);
});
