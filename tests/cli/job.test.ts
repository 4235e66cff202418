/** `--job` as a user gives it: sheets in a folder of the job's own, and check, story and coverage for one engine. */
import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {ENGINE, PROCEDURE, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

const BOOK = smallBook({
  'book/engine.yaml': `${ENGINE}options: {starter: {}}
marks:
  engine-number: {stamped: boss, matches: plate}
  plate: {stamped: bearer}
`.replace('  plug: {closes: [seat]}', '  plug: {closes: [seat]}\n  starter-motor: {only: starter}'),
  'book/plug.md': `${PROCEDURE}3. Copy both numbers. \`record: engine-number, plate\`
4. Slide the starter in. \`install: starter-motor\` \`only: starter\`
`,
  'book/jobs/S-1.yaml': 'job: {number: S-1, engine: small}\nmarks: {engine-number: 118, plate: 118}\n',
  'book/jobs/two.yaml':
    'job: {number: "S/2 <b>", engine: small}\nmarks: {engine-number: 118, plate: 181}\noptions: [starter]\n',
});

/** The same with both jobs sound. */
const SOUND = {...BOOK, 'book/jobs/two.yaml': String(BOOK['book/jobs/two.yaml']).replace('181', '118')};

function sheetsBelow(folder: string): string[] {
  return readdirSync(folder, {recursive: true, encoding: 'utf8'})
    .filter((name) => name.endsWith('.html'))
    .sort();
}

describe('wmark sheet --job', () => {
  test('writes the sheets of one engine to a folder of its own', async () => {
    const folder = await temporaryFolder(BOOK);
    expect(wmark(folder, 'sheet', 'book', '--out', 'out', '--job', 'S-1')).toEqual({
      code: 0,
      out: 'Small engine, job S-1: 2 files in out/small/S-1; open out/small/S-1/index.html\n',
      err: '',
    });
    const text = readFileSync(join(folder, 'out/small/S-1/plug.html'), 'utf8');
    expect(text).toContain('Left out on this job (no starter): 4');
    expect(text).toMatch(/Must read<\/dt> <dd>118/);
  });

  test('writes those of all, a number that is no file name by the name of its file', async () => {
    const folder = await temporaryFolder(SOUND);
    const {code, err} = wmark(folder, 'sheet', 'book', '--out', 'out', '--job', 'all');
    expect({code, err}).toEqual({code: 0, err: ''});
    expect(sheetsBelow(join(folder, 'out'))).toEqual([
      'small/S-1/index.html',
      'small/S-1/plug.html',
      'small/two/index.html',
      'small/two/plug.html',
    ]);
    expect(readFileSync(join(folder, 'out/small/two/index.html'), 'utf8')).toContain('S/2 &#x3C;b>');
    expect(wmark(folder, 'sheet', 'book', '--out', 'out')).toMatchObject({code: 0, err: ''});
    expect(sheetsBelow(join(folder, 'out'))).toContain('small/index.html');
  });

  test('takes the file of a job for the job', async () => {
    const folder = await temporaryFolder(BOOK);
    expect(wmark(folder, 'sheet', 'book/jobs/S-1.yaml', '--out', 'out').out).toContain(
      '2 files in out/small/S-1;',
    );
  });

  test('writes nothing for a job with errors, and points into its file; others are written', async () => {
    const folder = await temporaryFolder(BOOK);
    const {code, out, err} = wmark(folder, 'sheet', 'book', '--out', 'out', '--job', 'all');
    expect(code).toBe(1);
    expect(err).toContain(
      'book/jobs/two.yaml:2:24: error: engine-number reads 118, and plate reads 181  [mark-mismatch]',
    );
    expect(err).toContain('wmark: book/jobs/two.yaml: 1 error, so no sheet was written;');
    expect(out).toBe('Small engine, job S-1: 2 files in out/small/S-1; open out/small/S-1/index.html\n');
  });

  test('does not let two jobs of one number write over each other', async () => {
    const folder = await temporaryFolder({
      ...BOOK,
      'book/jobs/three.yaml': 'job: {number: s-1, engine: small}\n',
    });
    const {code, err} = wmark(folder, 'sheet', 'book', '--out', 'out', '--job', 'all');
    expect(code).toBe(2);
    expect(err).toContain('the sheets of book/jobs/S-1.yaml go to the same folder');
  });
});

test('wmark check --job judges the book as it holds for the job', async () => {
  const forgotten = String(BOOK['book/plug.md']).replace(/4\. Slide.*\n/, '');
  const folder = await temporaryFolder({...SOUND, 'book/plug.md': forgotten});
  expect(wmark(folder, 'check', 'book', '--job', 'S-1')).toMatchObject({code: 0, err: ''});
  const all = wmark(folder, 'check', 'book', '--job', 'all');
  expect(all.out.match(/\[left-out\]/g)).toHaveLength(1);
  expect(all.code).toBe(1);
  expect(all.out).toContain('1 book, 2 jobs, ');
  expect(wmark(folder, 'check', 'book', '--job', 'S-3')).toEqual({
    code: 2,
    out: '',
    err: 'wmark: no book here has a job S-3; did you mean S-1? the jobs are S-1, S/2 <b>\n',
  });
});

test('wmark story and coverage are those of the job', async () => {
  const folder = await temporaryFolder(SOUND);
  expect(wmark(folder, 'story', 'starter-motor', 'book', '--job', 'S-1')).toMatchObject({code: 2, out: ''});
  expect(wmark(folder, 'story', 'starter-motor', 'book', '--job', 'S/2 <b>').out).toContain('step 4 of');
  expect(wmark(folder, 'coverage', 'book', '--job', 'S-1').out).not.toContain('starter-motor');
  expect(wmark(folder, 'coverage', 'book', '--job', 'all').out).toContain('starter-motor');
});
