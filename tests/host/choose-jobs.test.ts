/** Which job of which book a command is about, by number, by `all` and by path, and what is said of a wrong number. */
import {describe, expect, it} from 'vitest';
import {booksForJob} from '../../src/host/choose-jobs.js';
import {failureText} from '../../src/host/failure.js';
import {loadBooks} from '../../src/host/load.js';
import {ENGINE, smallBook} from './small-book.js';
import {temporaryFolder} from './temporary.js';

const job = (number: string, engine = 'small') => `job: {number: ${number}, engine: ${engine}}\n`;

const FILES = smallBook({
  'book/jobs/a.yaml': job('S-1'),
  'book/jobs/b.yaml': job('"0042"'),
  'book/two/engine.yaml': ENGINE.replace('id: small', 'id: two').replace('plug.md', '../plug.md'),
  'book/two/jobs/c.yaml': job('S-1', 'two'),
  'book/three/engine.yaml': ENGINE.replace('id: small', 'id: three').replace('plug.md', '../plug.md'),
});

async function chosen(
  wanted: string | undefined,
  files = FILES,
  paths = ['book'],
): Promise<string[] | string> {
  const {books} = await loadBooks(paths, await temporaryFolder(files));
  const result = booksForJob(books, wanted);
  if ('ok' in result) return failureText(result);
  return result.map(
    ({book, only}) => `${book.spec.engine.id} ${book.job?.number ?? '-'}${only ? ' part' : ''}`,
  );
}

describe('the books', () => {
  it.each([
    ['without a number, as they are', undefined, ['book'], ['small -', 'three -', 'two -']],
    ['that have the number', 'S-1', ['book'], ['small S-1', 'two S-1']],
    ['by a number as it is written', ' 0042 ', ['book'], ['small 0042']],
    ['for all of their jobs', 'all', ['book'], ['small S-1', 'small 0042', 'two S-1']],
    ['by the path of a job', undefined, ['book/jobs/b.yaml'], ['small 0042']],
    [
      'by the paths of jobs',
      undefined,
      ['book/jobs/b.yaml', 'book/jobs/a.yaml'],
      ['small S-1', 'small 0042'],
    ],
    [
      'in part, where procedures are asked for',
      'S-1',
      ['book/two/engine.yaml', 'book/plug.md'],
      ['two S-1', 'small S-1 part'],
    ],
    [
      'of a job and a procedure, as they are',
      undefined,
      ['book/jobs/b.yaml', 'book/plug.md'],
      ['small - part'],
    ],
  ])('%s', async (_, wanted, paths, expected) => {
    expect(await chosen(wanted, FILES, paths)).toEqual(expected);
  });

  it.each([
    ['S1', 'no book here has a job S1; did you mean S-1? the jobs are S-1, 0042'],
    ['s-1', 'no book here has a job s-1; did you mean S-1? the jobs are S-1, 0042'],
    ['Tern', 'no book here has a job Tern; the jobs are S-1, 0042'],
  ])('none for %s', async (wanted, says) => {
    expect(await chosen(wanted)).toBe(says);
  });

  it('none where there are no jobs', async () => {
    expect(await chosen('S-1', smallBook())).toBe(
      'no book here has a job; write one to jobs/NUMBER.yaml beside its engine.yaml',
    );
  });

  it('list no more jobs than a person reads', async () => {
    const many = Object.fromEntries(
      Array.from({length: 25}, (_, at) => [`book/jobs/${at}.yaml`, job(`X-${100 + at}`)]),
    );
    expect(await chosen('Tern', smallBook(many))).toMatch(/X-103, X-104 …$/);
  });
});
