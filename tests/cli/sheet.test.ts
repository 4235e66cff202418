/** `wmark sheet` as a user runs it: what it writes, where, and when it writes nothing. */
import {createHash} from 'node:crypto';
import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {expect, test} from 'vitest';
import {readPdf} from '../help/pdf.js';
import {ENGINE, PROCEDURE, SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

const UNCLEAN = PROCEDURE.replace('1. Wipe the seat with solvent. `clean: seat with solvent`\n2.', '1.');

/** One white pixel. */
const PNG = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGP4//8/AAX+Av4N70a4AAAAAElFTkSuQmCC',
  'base64',
);

function htmlFiles(folder: string): string[] {
  return readdirSync(folder, {recursive: true, encoding: 'utf8'})
    .filter((name) => name.endsWith('.html'))
    .sort();
}

test('writes a cover and a sheet for each procedure, and says where', async () => {
  const folder = await temporaryFolder(smallBook());
  expect(wmark(folder, 'sheet', 'book', '--out', 'out')).toEqual({
    code: 0,
    out: 'Small engine: 2 files in out/small; open out/small/index.html\n',
    err: '',
  });
  expect(htmlFiles(join(folder, 'out'))).toEqual(['small/index.html', 'small/plug.html']);
  expect(readFileSync(join(folder, 'out/small/plug.html'), 'utf8')).toContain('Drive the plug in.');
});

test('a sheet holds one script, and a policy that admits just this one; the cover holds none', async () => {
  const folder = await temporaryFolder(smallBook());
  wmark(folder, 'sheet', 'book', '--out', 'out');
  const html = (name: string) => readFileSync(join(folder, 'out/small', name), 'utf8');
  const [[, script = ''] = []] = [...html('plug.html').matchAll(/<script>([\s\S]*?)<\/script>/g)];
  const source = `'sha256-${createHash('sha256').update(script).digest('base64')}'`;
  expect(script.length).toBeGreaterThan(1000);
  expect(html('plug.html')).toContain(`; script-src ${source.replaceAll("'", '&#x27;')}"`);
  expect(html('index.html')).not.toContain('script');
});

test('the paper is the shop’s own unless another is asked for', async () => {
  const folder = await temporaryFolder(smallBook());
  wmark(folder, 'sheet', 'book', '--out', 'a');
  wmark(folder, 'sheet', 'book', '--out', 'b', '--paper', 'Letter');
  const pageOf = (out: string) =>
    /size: (\w+)/.exec(readFileSync(join(folder, out, 'small/plug.html'), 'utf8'))?.[1];
  expect([pageOf('a'), pageOf('b')]).toEqual(['A4', 'letter']);
});

test('makes PDF, HTML or both, or Markdown, as it is asked', async () => {
  const folder = await temporaryFolder(smallBook());
  const made = (form: string) => {
    const {code, err} = wmark(folder, 'sheet', 'book', '--as', form, '--out', form);
    expect({code, err}).toEqual({code: 0, err: ''});
    return readdirSync(join(folder, form, 'small')).sort();
  };
  expect(made('pdf')).toEqual(['index.pdf', 'plug.pdf']);
  expect(made('both')).toEqual(['index.html', 'index.pdf', 'plug.html', 'plug.pdf']);
  expect(made('markdown')).toEqual(['plug.md']);
  const bytes = readFileSync(join(folder, 'pdf/small/plug.pdf'));
  expect(readFileSync(join(folder, 'both/small/plug.pdf'))).toEqual(bytes);
  const pages = await readPdf(bytes);
  expect(pages.map(({text}) => text).join(' ')).toContain('Drive the plug in.');
  expect(readFileSync(join(folder, 'markdown/small/plug.md'), 'utf8')).toContain('Drive the plug in.');
});

test('the language is the shop’s own unless another is asked for', async () => {
  const german = SHOP.replace('{name: Small Works}', '{name: Small Works, language: de}');
  const folder = await temporaryFolder(smallBook({'book/shop.yaml': german}));
  wmark(folder, 'sheet', 'book', '--out', 'a');
  wmark(folder, 'sheet', 'book', '--out', 'b', '--language', 'en');
  const languageOf = (out: string) =>
    /lang="(\w+)"/.exec(readFileSync(join(folder, out, 'small/plug.html'), 'utf8'))?.[1];
  expect([languageOf('a'), languageOf('b')]).toEqual(['de', 'en']);
});

test('the same texts make the same bytes', async () => {
  const folder = await temporaryFolder(smallBook());
  for (const out of ['a', 'b']) wmark(folder, 'sheet', 'book', '--out', out);
  for (const name of htmlFiles(join(folder, 'a'))) {
    expect(readFileSync(join(folder, 'b', name))).toEqual(readFileSync(join(folder, 'a', name)));
  }
});

test('writes nothing while there are errors, unless told to', async () => {
  const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
  const refused = wmark(folder, 'sheet', 'book', '--out', 'out');
  expect({code: refused.code, out: refused.out}).toEqual({code: 1, out: ''});
  expect(refused.err).toContain('[clean-first]');
  expect(refused.err).toMatch(
    /\nwmark: book\/engine\.yaml: \d+ errors?, so no sheet was written; mend them, or say --even-with-errors\n$/,
  );
  expect(readdirSync(folder)).toEqual(['book']);
  const insisted = wmark(folder, 'sheet', 'book', '--out', 'out', '--even-with-errors');
  expect({code: insisted.code, out: insisted.out}).toEqual({
    code: 1,
    out: 'Small engine: 2 files in out/small; open out/small/index.html\n',
  });
});

test('one procedure alone, without the cover', async () => {
  const folder = await temporaryFolder(smallBook());
  expect(wmark(folder, 'sheet', 'book/plug.md', '--out', 'out')).toMatchObject({code: 0, err: ''});
  expect(htmlFiles(join(folder, 'out'))).toEqual(['small/plug.html']);
});

test('pictures go into the file; those that lie outside, or are none, are named', async () => {
  const pictures = ['seat.png', '../outside.png', 'text.png', 'none.png', 'https://example.org/a.png'];
  const procedure = `${PROCEDURE}\n${pictures.map((url) => `![seat](${url})`).join('\n\n')}\n`;
  const folder = await temporaryFolder(
    smallBook({
      'book/plug.md': procedure,
      'book/seat.png': PNG,
      'outside.png': PNG,
      'book/text.png': 'no picture',
    }),
  );
  const {code, err} = wmark(folder, 'sheet', 'book', '--out', 'out');
  expect(code).toBe(0);
  expect(err.match(/(?<=no picture could be read at ).*/g)).toEqual(pictures.slice(1));
  const html = readFileSync(join(folder, 'out/small/plug.html'), 'utf8');
  expect(html).toContain(`src="data:image/png;base64,${PNG.toString('base64')}"`);
  expect(html.match(/<img /g)).toHaveLength(1);
});

test('a sheet left from an earlier run is named', async () => {
  const folder = await temporaryFolder(
    smallBook({'out/small/old.html': 'old', 'out/small/notes.txt': 'mine'}),
  );
  expect(wmark(folder, 'sheet', 'book', '--out', 'out')).toMatchObject({
    code: 0,
    err: 'wmark: out/small/old.html is of an earlier run and belongs to the book no longer; delete it\n',
  });
});

test('two books of one engine id do not write over each other', async () => {
  const folder = await temporaryFolder(
    smallBook({'book/two/engine.yaml': ENGINE.replace('plug.md', '../plug.md')}),
  );
  expect(wmark(folder, 'sheet', 'book', '--out', 'out')).toEqual({
    code: 2,
    out: 'Small engine: 2 files in out/small; open out/small/index.html\n',
    err: 'wmark: book/two/engine.yaml: book/engine.yaml has the same engine id, small; give each engine an id of its own\n',
  });
});
