/** `wmark check` as a user or a program runs it. */
import {Ajv2020} from 'ajv/dist/2020.js';
import {describe, expect, test} from 'vitest';
import schema from '../../schemas/check.schema.json' with {type: 'json'};
import {ENGINE, PROCEDURE, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {shell, wmark} from './run.js';

const UNCLEAN = PROCEDURE.replace('1. Wipe the seat with solvent. `clean: seat with solvent`\n2.', '1.');

describe('as text', () => {
  test('a clean book is sums alone', async () => {
    const folder = await temporaryFolder(smallBook());
    expect(wmark(folder, 'check', 'book')).toEqual({
      code: 0,
      out: '1 book, 1 procedure, 2 steps, 2 tags; 2 of 2 items covered\n0 errors, 0 warnings\n',
      err: '',
    });
  });

  test('every line that is not indented but the sums is one finding, for a problem matcher', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
    const {code, out, err} = wmark(folder, 'check', 'book');
    expect({code, err}).toEqual({code: 1, err: ''});
    const lines = out.split('\n').filter((line) => line !== '' && !line.startsWith('    '));
    const sums = lines.splice(-2);
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) {
      expect(line).toMatch(
        /^book\/(?:plug\.md|engine\.yaml):\d+:\d+: (?:error|warning|information): .+ {2}\[[a-z-]+\]$/,
      );
    }
    expect(lines.join('\n')).toContain('[clean-first]');
    expect(sums[0]).toMatch(/^1 book, 1 procedure, 1 step, 1 tag; 1 of 2 items covered, all but seat$/);
    expect(sums[1]).toBe(`${lines.length} error${lines.length === 1 ? '' : 's'}, 0 warnings`);
  });

  test('the working folder is the default', async () => {
    const folder = await temporaryFolder(smallBook());
    expect(wmark(`${folder}/book`, 'check').out).toContain('1 book, 1 procedure');
  });

  test('warnings alone are no failure', async () => {
    const shop = 'severity: {clean-first: warning}\n';
    const book = smallBook({'book/plug.md': UNCLEAN});
    const folder = await temporaryFolder({...book, 'book/shop.yaml': `${book['book/shop.yaml']}${shop}`});
    const {code, out} = wmark(folder, 'check', 'book');
    expect(out).toContain(': warning: ');
    expect(out).toContain('\n0 errors, ');
    expect(code).toBe(0);
  });

  test('a text of a procedure never drives the terminal', async () => {
    const evil = '\\e]0;owned\\a\\u202E';
    const engine = ENGINE.replace('[plug.md]', `[plug.md, "a${evil}.md"]\n"frob${evil}": 1`);
    const folder = await temporaryFolder(smallBook({'book/engine.yaml': engine}));
    const {out, err} = wmark(folder, 'check', 'book');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that must not appear.
    expect(out + err).not.toMatch(/[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u202E]/);
    expect(out).toContain('frob\\u001b]0;owned\\u0007\\u202e');
    expect(out).toContain('a\\u001b]0;owned\\u0007\\u202e.md');
  });

  test('a reader that goes away early is no fault', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
    expect(shell(folder, 'eval $WMARK check book | true').err).toBe('');
  });
});

describe('as JSON', () => {
  test.each([
    {name: 'clean', procedure: PROCEDURE, code: 0},
    {name: 'with findings', procedure: UNCLEAN, code: 1},
  ])('a book $name fits the schema', async ({procedure, code}) => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': procedure}));
    const ran = wmark(folder, 'check', '--as', 'json', 'book');
    expect({code: ran.code, err: ran.err}).toEqual({code, err: ''});
    const valid = new Ajv2020({strict: true, allErrors: true}).compile(schema);
    const data: unknown = JSON.parse(ran.out);
    expect(valid(data) || valid.errors).toBe(true);
  });

  test('a finding says where it is, and the text there is what it is about', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
    const {summary, findings} = JSON.parse(wmark(folder, 'check', '--as', 'json', 'book').out);
    expect(summary).toMatchObject({
      books: 1,
      procedures: 1,
      steps: 1,
      tags: 1,
      items: 2,
      errors: findings.length,
    });
    const found = findings.find(({name}: {name: string}) => name === 'clean-first');
    expect(found).toMatchObject({
      severity: 'error',
      file: 'book/plug.md',
      line: 8,
      endLine: 8,
      item: 'seat',
      fix: null,
    });
    const line = UNCLEAN.split('\n')[found.line - 1] ?? '';
    expect(line.slice(found.column - 1, found.endColumn - 1)).toBe('install: plug using soft-mallet');
  });
});

describe('with jobs', () => {
  const ENGINE_WITH_MARKS = `${ENGINE}marks:\n  number: {stamped: boss, matches: plate}\n  plate: {stamped: bearer}\n`;
  const WITH_MARKS = PROCEDURE.replace('2. Drive', '2. Copy both numbers. `record: number, plate`\n3. Drive');
  const JOB = 'job: {number: S-1, engine: small}\nmarks: {number: S 118, plate: S 181}\n';
  const BOOK = smallBook({
    'book/engine.yaml': ENGINE_WITH_MARKS,
    'book/plug.md': WITH_MARKS,
    'book/jobs/S-1.yaml': JOB,
    'book/jobs/S-2.yaml': JOB.replace('S-1', 'S-2').replace('181', '118'),
  });
  const SAYS = 'book/jobs/S-1.yaml:2:17: error: number reads S 118, and plate reads S 181  [mark-mismatch]\n';

  test('each is checked within its book', async () => {
    const {code, out} = wmark(await temporaryFolder(BOOK), 'check', 'book');
    expect(out).toContain(SAYS);
    expect(out).toContain(
      '\n1 book, 2 jobs, 1 procedure, 3 steps, 3 tags; 4 of 4 items covered\n1 error, 0 warnings\n',
    );
    expect(code).toBe(1);
  });

  test('one alone has what the book has not', async () => {
    const folder = await temporaryFolder({
      ...BOOK,
      'book/plug.md': WITH_MARKS.replace('clean: seat with', 'clean: seats with'),
    });
    const first = wmark(folder, 'check', 'book/jobs/S-1.yaml');
    expect(first.out.startsWith(SAYS)).toBe(true);
    expect(first.out).not.toContain('plug.md');
    expect(first.out).toContain('\n1 book, 1 job, ');
    expect(first.code).toBe(1);
    const second = wmark(folder, 'check', 'book/jobs/S-2.yaml');
    expect(second.out).toContain('\n0 errors, 0 warnings\n');
    expect(second.code).toBe(0);
    expect(wmark(folder, 'check', 'book').out).toContain('book/plug.md');
  });

  test('one that can not be read is a finding, and the others are checked all the same', async () => {
    const folder = await temporaryFolder({...BOOK, 'book/jobs/S-2.yaml': 'a\0'});
    const {code, out} = wmark(folder, 'check', 'book');
    expect(out).toContain(
      "book/jobs/S-2.yaml:1:1: error: the job can't be read: it is binary, not text (line 1); name a text file  [file-unreadable]\n",
    );
    expect(out).toContain(SAYS);
    expect(code).toBe(1);
    expect(wmark(folder, 'check', 'book/jobs/S-2.yaml').out).toContain('[file-unreadable]');
  });

  test('as JSON their number is among the sums, and a finding points into the file of its job', async () => {
    const {out} = wmark(await temporaryFolder(BOOK), 'check', '--as', 'json', 'book');
    const {summary, findings} = JSON.parse(out);
    expect(summary).toMatchObject({books: 1, jobs: 2, errors: 1});
    expect(findings).toMatchObject([
      {name: 'mark-mismatch', file: 'book/jobs/S-1.yaml', line: 2, column: 17},
    ]);
    const valid = new Ajv2020({strict: true, allErrors: true}).compile(schema);
    expect(valid(JSON.parse(out)) || valid.errors).toBe(true);
  });
});

describe('in part', () => {
  const TWO = smallBook({
    'book/engine.yaml': ENGINE.replace('[plug.md]', '[first.md, plug.md]'),
    'book/first.md': `${PROCEDURE.slice(0, PROCEDURE.indexOf('1.'))}1. Look. \`inspect: plugs for cracks\`\n`,
  });

  test('one procedure of a book has its own findings only', async () => {
    const folder = await temporaryFolder(TWO);
    expect(wmark(folder, 'check', 'book').code).toBe(1);
    const first = wmark(folder, 'check', 'book/first.md');
    expect(first.out).toContain('book/first.md:8:20: error: ');
    expect(first.code).toBe(1);
    const plug = wmark(folder, 'check', 'book/plug.md');
    expect(plug.out).not.toContain('first.md');
    expect(plug.code).toBe(0);
  });

  test('a procedure that no book lists is held to its own steps', async () => {
    const procedure = `${PROCEDURE.slice(0, PROCEDURE.indexOf('1.'))}1. Drive the plug in. \`install: plug\`\n`;
    const folder = await temporaryFolder(smallBook({'book/new.md': procedure, 'book/plug.md': procedure}));
    expect(wmark(folder, 'check', 'book/plug.md').out).toContain('[clean-first]');
    const {code, out} = wmark(folder, 'check', 'book/new.md');
    expect(out).not.toContain('[clean-first]');
    expect(code).toBe(0);
  });
});
