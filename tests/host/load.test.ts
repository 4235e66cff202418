/** Which books a path stands for, how far they may reach, and what becomes of files that can't be read. */
import {mkdir, symlink} from 'node:fs/promises';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {failureText} from '../../src/host/failure.js';
import {loadBook, loadBooks} from '../../src/host/load.js';
import {placeOf, textsOf} from '../../src/host/places.js';
import {ENGINE, PROCEDURE, SHOP, smallBook} from './small-book.js';
import {temporaryFolder} from './temporary.js';

type Files = Parameters<typeof temporaryFolder>[0];

/** What loading the paths gives, as lines: a line a book with its procedures, a problem, or a failure. */
async function loadedLines(folder: string, paths: readonly string[]): Promise<string[]> {
  const {books, failures} = await loadBooks(paths, folder);
  const lines = books.flatMap(({file, only, book}) => {
    const texts = textsOf(book);
    const names = book.procedures.map(({source}) => source.file).join(' ');
    const part = only ? ` (only ${[...only].join(' ')})` : '';
    const problems = book.problems.map(({where, says, hint, related}) => {
      const {line, column} = placeOf(where, texts);
      const other = related?.map((one) => `; see ${placeOf(one.where, texts).line}`) ?? '';
      return `${where.file}:${line}:${column}: ${says}; ${hint}${other}`;
    });
    return [`${file}: ${names}${part}`, ...problems];
  });
  return [...lines, ...failures.map((failure) => `failure: ${failureText(failure)}`)];
}

async function linesOf(files: Files, ...paths: string[]): Promise<string[]> {
  return loadedLines(await temporaryFolder(files), paths);
}

const TWO_BOOKS = {
  'shop.yaml': SHOP,
  'one/engine.yaml': ENGINE,
  'one/plug.md': PROCEDURE,
  'two/engine.yaml': ENGINE.replace('id: small', 'id: other').replace('plug.md', '../shared/plug.md'),
  'shared/plug.md': PROCEDURE,
  'shared/notes.md': PROCEDURE,
  'node_modules/x/engine.yaml': ENGINE,
  '.hidden/engine.yaml': ENGINE,
};

describe('what a path stands for', () => {
  test.each([
    {name: 'a book', paths: ['one'], lines: ['one/engine.yaml: one/plug.md']},
    {
      name: 'a folder of books, passing by dot folders and installed packages',
      paths: ['.'],
      lines: ['one/engine.yaml: one/plug.md', 'two/engine.yaml: shared/plug.md'],
    },
    {name: 'an engine.yaml', paths: ['two/engine.yaml'], lines: ['two/engine.yaml: shared/plug.md']},
    {
      name: 'a shop.yaml',
      paths: ['shop.yaml'],
      lines: ['one/engine.yaml: one/plug.md', 'two/engine.yaml: shared/plug.md'],
    },
    {
      name: 'a procedure of the book around it',
      paths: ['one/plug.md'],
      lines: ['one/engine.yaml: one/plug.md (only one/plug.md)'],
    },
    {
      name: 'a procedure that a book elsewhere in the shop lists',
      paths: ['shared/plug.md'],
      lines: ['two/engine.yaml: shared/plug.md (only shared/plug.md)'],
    },
    {
      name: 'the same book twice',
      paths: ['one', './one/engine.yaml'],
      lines: ['one/engine.yaml: one/plug.md'],
    },
    {
      name: 'a book and a part of it',
      paths: ['one/plug.md', 'one'],
      lines: ['one/engine.yaml: one/plug.md'],
    },
    {
      name: 'nothing',
      paths: ['none'],
      lines: ['failure: none: there is no such file or folder; see that the path is right'],
    },
    {
      name: 'a folder without books',
      paths: ['shared'],
      lines: [
        'failure: shared: there is no engine.yaml here, so no book; `wmark begin DIR` writes a small book to start from',
      ],
    },
    {
      name: 'a procedure far from any book',
      paths: ['shared/notes.md'],
      lines: [
        'failure: shared/notes.md: there is no engine.yaml here, so no book; `wmark begin DIR` writes a small book to start from',
      ],
    },
    {
      name: 'one that is there and one that is not',
      paths: ['none', 'one'],
      lines: [
        'one/engine.yaml: one/plug.md',
        'failure: none: there is no such file or folder; see that the path is right',
      ],
    },
  ])('$name', async ({paths, lines}) => {
    expect(await linesOf(TWO_BOOKS, ...paths)).toEqual(lines);
  });

  test('a procedure that no book lists is read as the only one of the nearest book', async () => {
    expect(await linesOf(smallBook({'book/new.md': PROCEDURE}), 'book/new.md')).toEqual([
      'book/engine.yaml: book/new.md (only book/new.md)',
      'book/new.md:1:1: no `build:` names this procedure, so no check of a book looks at it; list it in engine.yaml where it is followed',
    ]);
  });

  test('a base that a search comes upon is no book; named itself it is', async () => {
    const base = ENGINE.replace('build: [plug.md]\n', '');
    const files = smallBook({
      'book/base/engine.yaml': base,
      'book/engine.yaml': 'engine: {id: small}\nextends: base/engine.yaml\nbuild: [plug.md]\n',
    });
    expect(await linesOf(files, '.')).toEqual(['book/engine.yaml: book/plug.md']);
    expect(await linesOf(files, 'book/base')).toEqual(['book/base/engine.yaml: ']);
  });

  test('bases alone are no book at all', async () => {
    const base = ENGINE.replace('build: [plug.md]\n', '');
    expect(await linesOf({'a/b/engine.yaml': base}, 'a')).toEqual([
      'failure: a: no engine.yaml here has a `build:`; list the procedures of a book under `build:`',
    ]);
  });

  test('one book is asked for where there are two', async () => {
    const folder = await temporaryFolder(TWO_BOOKS);
    const loaded = await loadBook('.', folder);
    expect(loaded.ok ? 'read' : failureText(loaded)).toBe(
      '.: there are 2 books in it; name the folder of one',
    );
  });

  test('files outside the working folder are shown by their whole path', async () => {
    const folder = await temporaryFolder(TWO_BOOKS);
    const {books} = await loadBooks(['../one'], join(folder, 'two'));
    expect(books[0]?.file).toBe(join(folder, 'one', 'engine.yaml'));
  });
});

describe('names under build:', () => {
  const withBuild = (build: string, files: Files = {}) =>
    smallBook({'book/engine.yaml': ENGINE.replace('[plug.md]', build), ...files});

  test.each([
    {
      name: 'a file that is not there, with the nearest name',
      build: '[plugs.md]',
      says: 'there is no file plugs.md; did you mean plug.md?',
    },
    {
      name: 'a file in a folder that is not there',
      build: '[deep/x.md]',
      says: 'there is no file deep/x.md; write it, or take the name out',
    },
    {
      name: 'the specification itself',
      build: '[engine.yaml]',
      says: 'engine.yaml is the specification itself; name a procedure',
    },
    {
      name: 'the shop',
      build: '[shop.yaml]',
      says: 'shop.yaml is the specification itself; name a procedure',
    },
    {name: 'a folder', build: '[inner]', says: 'inner is not a file; name a file'},
    {
      name: 'the folder of the book',
      build: '[.]',
      says: ". lies outside the shop's folder; a book may name files below the folder of its shop.yaml only",
    },
    {
      name: 'a file above the shop',
      build: '[../outside.md]',
      says: "../outside.md lies outside the shop's folder; a book may name files below the folder of its shop.yaml only",
    },
    {
      name: 'a file that is not there, above the shop: nothing is said of what lies there',
      build: '[../nothing.md]',
      says: "../nothing.md lies outside the shop's folder; a book may name files below the folder of its shop.yaml only",
    },
    {
      name: 'a path from the root',
      build: '[/etc/hostname]',
      says: '/etc/hostname is a path from the root of one disk; write it relative to this file',
    },
    {
      name: 'a symbolic link that leads out',
      build: '[link.md]',
      says: "link.md lies outside the shop's folder; a book may name files below the folder of its shop.yaml only",
    },
    {
      name: 'a symbolic link to a folder that leads out',
      build: '[way/outside.md]',
      says: "way/outside.md lies outside the shop's folder; a book may name files below the folder of its shop.yaml only",
    },
  ])('$name', async ({build, says}) => {
    const folder = await temporaryFolder(
      withBuild(build, {'outside.md': PROCEDURE, 'book/inner/x.md': '# x'}),
    );
    await symlink(join(folder, 'outside.md'), join(folder, 'book', 'link.md'));
    await symlink(folder, join(folder, 'book', 'way'));
    expect(await loadedLines(folder, ['book/engine.yaml'])).toEqual([
      'book/engine.yaml: ',
      `book/engine.yaml:8:9: ${says}; see 8`,
    ]);
  });

  test('the same file twice, the second time by a link', async () => {
    const folder = await temporaryFolder(withBuild('[plug.md, again.md]'));
    await symlink('plug.md', join(folder, 'book', 'again.md'));
    expect(await loadedLines(folder, ['book'])).toEqual([
      'book/engine.yaml: book/plug.md',
      'book/engine.yaml:8:18: again.md is named a second time; name each procedure once; see 8',
    ]);
  });

  test.each([
    {name: 'empty', content: '', says: "plug.md can't be read: it is empty; write it, or take its name out"},
    {
      name: 'binary',
      content: 'a\0',
      says: "plug.md can't be read: it is binary, not text (line 1); name a text file",
    },
    {
      name: 'too large',
      content: 'a'.repeat(4 * 1024 * 1024 + 1),
      says: "plug.md can't be read: it is too large: 4.1 MiB, and 4 MiB is the most; split it, or see that it is the right file",
    },
  ])('a procedure that is $name is a problem where it is named', async ({content, says}) => {
    expect(await linesOf(smallBook({'book/plug.md': content}), 'book')).toEqual([
      'book/engine.yaml: ',
      `book/engine.yaml:8:9: ${says}; see 8`,
    ]);
  });

  test('a procedure that is a folder', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': undefined}));
    await mkdir(join(folder, 'book', 'plug.md'));
    expect(await loadedLines(folder, ['book'])).toEqual([
      'book/engine.yaml: ',
      'book/engine.yaml:8:9: plug.md is not a file; name a file; see 8',
    ]);
  });

  test('names in a base count from the base', async () => {
    const files = smallBook({
      'book/engine.yaml': 'engine: {id: small}\nextends: base/engine.yaml\n',
      'book/base/engine.yaml': ENGINE.replace('plug.md', 'inner/plug.md'),
      'book/base/inner/plug.md': PROCEDURE,
      'book/plug.md': undefined,
    });
    expect(await linesOf(files, 'book/engine.yaml')).toEqual(['book/engine.yaml: book/base/inner/plug.md']);
  });
});

describe('extends:', () => {
  const extending = (base: string) => `engine: {id: small}\nextends: ${base}\nbuild: [plug.md]\n`;

  test.each([
    {
      name: 'a file that is not there',
      files: {'book/engine.yaml': extending('bases.yaml')},
      says: 'book/engine.yaml:2:10: there is no file bases.yaml; write it, or take the name out',
    },
    {
      name: 'itself',
      files: {'book/engine.yaml': extending('engine.yaml')},
      says: 'book/engine.yaml:2:10: engine.yaml extends this file in turn; a chain of files must end at one that extends nothing',
    },
    {
      name: 'one that extends it',
      files: {'book/engine.yaml': extending('b.yaml'), 'book/b.yaml': extending('engine.yaml')},
      says: 'book/b.yaml:2:10: engine.yaml extends this file in turn; a chain of files must end at one that extends nothing',
    },
    {
      name: 'a file outside the shop',
      files: {'book/engine.yaml': extending('../outside.yaml'), 'outside.yaml': ENGINE},
      says: "book/engine.yaml:2:10: ../outside.yaml lies outside the shop's folder; a book may name files below the folder of its shop.yaml only",
    },
    {
      name: 'a file that is no text',
      files: {'book/engine.yaml': extending('b.yaml'), 'book/b.yaml': 'a\0'},
      says: 'book/b.yaml:1: it is binary, not text; name a text file',
    },
  ])('$name', async ({files, says}) => {
    expect(await linesOf(smallBook(files), 'book/engine.yaml')).toEqual([`failure: ${says}`]);
  });

  test('a chain without end', async () => {
    const links = Array.from(
      {length: 20},
      (_, at) => [`book/e${at}.yaml`, extending(`e${at + 1}.yaml`)] as const,
    );
    const files = smallBook({'book/engine.yaml': extending('e0.yaml'), ...Object.fromEntries(links)});
    expect(await linesOf(files, 'book')).toEqual([
      'failure: book/e14.yaml:2:10: more than 16 files extend each other; join some',
    ]);
  });
});

describe('the YAML of a book', () => {
  test.each([
    {file: 'engine.yaml', content: '', says: 'it is empty; write it, or take its name out'},
    {file: 'shop.yaml', content: '\n', says: 'it is empty; write it, or take its name out'},
    {
      file: 'engine.yaml',
      content: Buffer.from('a: "\xE9"\n', 'latin1'),
      line: 1,
      says: 'it is not written in UTF-8; save it as UTF-8',
    },
    {
      file: 'engine.yaml',
      content: 'a'.repeat(50_000_000),
      says: 'it is too large: 47.7 MiB, and 1 MiB is the most; split it, or see that it is the right file',
    },
  ])('$file can not be read: $says', async ({file, content, line, says}) => {
    const place = line === undefined ? `book/${file}` : `book/${file}:${line}`;
    expect(await linesOf(smallBook({[`book/${file}`]: content}), 'book')).toEqual([
      `failure: ${place}: ${says}`,
    ]);
  });

  test('the nearest shop.yaml above holds, no farther up than the root of the repository', async () => {
    const near = await temporaryFolder(
      smallBook({'book/shop.yaml': undefined, 'shop.yaml': SHOP, '.git/HEAD': ''}),
    );
    const [above] = (await loadBooks(['book'], near)).books;
    expect(above?.book.spec.shop.name).toBe('Small Works');
    expect(above?.shopFolder).toBe(near);
    const far = await temporaryFolder(
      smallBook({'book/shop.yaml': undefined, 'shop.yaml': SHOP, 'book/.git/HEAD': ''}),
    );
    const [beyond] = (await loadBooks(['book'], far)).books;
    expect(beyond?.book.spec.shop.name).not.toBe('Small Works');
    expect(beyond?.shopFolder).toBe(join(far, 'book'));
  });
});
