/** Which jobs a book has on disk, and what becomes of those that can't be read. */
import {mkdir, symlink} from 'node:fs/promises';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {jobsAsked, loadBooks} from '../../src/host/load.js';
import {placeOf, textsOf} from '../../src/host/places.js';
import {PROCEDURE, smallBook} from './small-book.js';
import {temporaryFolder} from './temporary.js';

const job = (number: string) => `job: {number: ${number}, engine: small}\n`;

const BOOK = smallBook({'book/jobs/S-1.yaml': job('S-1'), 'book/jobs/S-2.yaml': job('S-2')});

/** Each book with the jobs looked at, the problems of jobs, and what is wrong with their files. */
async function linesOf(folder: string, ...paths: string[]): Promise<string[]> {
  const {books, failures} = await loadBooks(paths, folder);
  expect(failures).toEqual([]);
  return books.flatMap((loaded) => {
    const texts = textsOf(loaded.book, loaded.jobs);
    const problems = [...loaded.book.problems, ...loaded.jobs.flatMap((one) => one.problems)];
    return [
      `${loaded.file}: ${jobsAsked(loaded)
        .map(({number, source}) => `${number} of ${source.file}`)
        .join(', ')}`,
      ...problems.map(({where, says, hint}) => {
        const {file, line, column} = placeOf(where, texts);
        return `${file}:${line}:${column}: ${says}; ${hint}`;
      }),
    ];
  });
}

describe('the jobs of a book', () => {
  test('are the YAML files of jobs/ beside its engine.yaml, in order of name', async () => {
    const folder = await temporaryFolder({
      ...BOOK,
      'book/jobs/A-9.yml': job('A-9'),
      'book/jobs/notes.md': PROCEDURE,
      'book/jobs/.S-3.yaml': job('S-3'),
      'book/jobs/old/S-0.yaml': job('S-0'),
      'jobs/elsewhere.yaml': job('E-1'),
    });
    expect(await linesOf(folder, 'book')).toEqual([
      'book/engine.yaml: A-9 of book/jobs/A-9.yml, S-1 of book/jobs/S-1.yaml, S-2 of book/jobs/S-2.yaml',
    ]);
  });

  test.each([
    {name: 'without such a folder', files: smallBook()},
    {name: 'with a file of that name', files: smallBook({'book/jobs': 'none yet\n'})},
  ])('are none $name', async ({files}) => {
    expect(await linesOf(await temporaryFolder(files), 'book')).toEqual(['book/engine.yaml: ']);
  });

  test.each([
    {name: 'one', paths: ['book/jobs/S-2.yaml'], jobs: 'S-2 of book/jobs/S-2.yaml'},
    {
      name: 'two',
      paths: ['book/jobs/S-2.yaml', 'book/jobs/S-1.yaml'],
      jobs: 'S-1 of book/jobs/S-1.yaml, S-2 of book/jobs/S-2.yaml',
    },
    {
      name: 'one and a procedure',
      paths: ['book/jobs/S-2.yaml', 'book/plug.md'],
      jobs: 'S-1 of book/jobs/S-1.yaml, S-2 of book/jobs/S-2.yaml',
    },
    {
      name: 'one and the whole book',
      paths: ['book/jobs/S-2.yaml', 'book'],
      jobs: 'S-1 of book/jobs/S-1.yaml, S-2 of book/jobs/S-2.yaml',
    },
  ])('are those asked for: $name', async ({paths, jobs}) => {
    expect(await linesOf(await temporaryFolder(BOOK), ...paths)).toEqual([`book/engine.yaml: ${jobs}`]);
  });
});

describe('a job that can not be read', () => {
  test.each([
    {name: 'empty', content: '', says: "the job can't be read: it is empty; write it, or take its name out"},
    {
      name: 'binary',
      content: 'a\0',
      says: "the job can't be read: it is binary, not text (line 1); name a text file",
    },
    {
      name: 'too large',
      content: 'a'.repeat(1024 * 1024 + 1),
      says: "the job can't be read: it is too large: 1.1 MiB, and 1 MiB is the most; split it, or see that it is the right file",
    },
  ])('$name', async ({content, says}) => {
    const folder = await temporaryFolder({...BOOK, 'book/jobs/S-1.yaml': content});
    expect(await linesOf(folder, 'book')).toEqual([
      'book/engine.yaml: S-2 of book/jobs/S-2.yaml',
      `book/jobs/S-1.yaml:1:1: ${says}`,
    ]);
  });

  test('leads outside, or nowhere, or to a folder', async () => {
    const folder = await temporaryFolder({...smallBook(), 'out/S-1.yaml': job('S-1')});
    await mkdir(join(folder, 'book/jobs/S-3.yaml'), {recursive: true});
    await symlink(join(folder, 'out/S-1.yaml'), join(folder, 'book/jobs/S-1.yaml'));
    await symlink('nothing', join(folder, 'book/jobs/S-2.yaml'));
    expect(await linesOf(folder, 'book')).toEqual([
      'book/engine.yaml: ',
      "book/jobs/S-1.yaml:1:1: the job can't be read: it leads outside the shop's folder; put the file itself there",
      "book/jobs/S-2.yaml:1:1: the job can't be read: it leads outside the shop's folder; put the file itself there",
      "book/jobs/S-3.yaml:1:1: the job can't be read: it is a folder, not a file; name a file",
    ]);
  });

  test('keeps no other number', async () => {
    const folder = await temporaryFolder({...BOOK, 'book/jobs/S-2.yaml': job('S-1')});
    expect(await linesOf(folder, 'book')).toEqual([
      'book/engine.yaml: S-1 of book/jobs/S-1.yaml, S-1 of book/jobs/S-2.yaml',
      'book/jobs/S-2.yaml:1:15: S-1 is the number of another job too; give each job a number of its own',
    ]);
  });
});
