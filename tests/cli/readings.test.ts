/** `wmark readings` as a user runs it: records of a small book and of a demonstration book, good and bad. */
import {cpSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {fileURLToPath} from 'node:url';
import {Ajv2020} from 'ajv/dist/2020.js';
import {beforeAll, describe, expect, test} from 'vitest';
import {askedOfBook} from '../../src/host/asked-of-build.js';
import {loadBook} from '../../src/host/load.js';
import type {Asked} from '../../src/readings/judge.js';
import {readCsv} from '../help/csv.js';
import {type Sample, sampleRecord} from '../help/record.js';
import {SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '');

async function askedIn(folder: string): Promise<Asked> {
  const loaded = await loadBook(folder, root);
  if (!loaded.ok) throw new Error(loaded.says);
  return askedOfBook(loaded.book);
}

function written({sheets}: Asked, sample: Sample): string {
  return JSON.stringify(
    sampleRecord(
      sheets.map(({form}) => form),
      sample,
    ),
    null,
    1,
  );
}

function german() {
  return smallBook({'book/shop.yaml': SHOP.replace('Small Works', 'Small Works, language: de')});
}

describe('a small book', () => {
  async function folderWith(files: (asked: Asked) => Readonly<Record<string, string>>) {
    const folder = await temporaryFolder(smallBook());
    const more = files(await askedIn(join(folder, 'book')));
    return temporaryFolder({...smallBook(), ...more});
  }

  test('a good record', async () => {
    const folder = await folderWith((asked) => ({
      '7.record.json': written(asked, {seed: 1, engineNumber: 'N7'}),
    }));
    const {code, out, err} = wmark(folder, 'readings', '7.record.json');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Small engine, engine number N7\n1 of 1 sheet judged; (\d+) of \1 boxes answered\n/);
    expect(out).toMatch(/\n0 errors, 0 warnings\n$/);
  });

  test('of a German shop, in German but for the keys', async () => {
    const folder = await temporaryFolder(german());
    const answer: Sample['answer'] = ({key}, usual) => (key === '2:done' ? undefined : usual);
    const record = written(await askedIn(join(folder, 'book')), {seed: 1, answer});
    const all = await temporaryFolder({...german(), '7.record.json': record});
    const as = (form: string) => wmark(all, 'readings', '7.record.json', '--book', 'book', '--as', form).out;
    expect(as('text')).toContain(
      '  plug, Schritt 2: Fehler: nicht ausgefüllt: Drive the plug in  [missing]\n',
    );
    expect(as('html')).toContain('<html lang="de">');
    const [build] = JSON.parse(as('json')).builds;
    expect(build.remarks[0]).toMatchObject({name: 'missing', severity: 'error', sheet: 'plug', step: '2'});
    expect(as('csv')).toMatch(/^"engine","build","job","engine number","sheet"/);
  });

  test('something missing', async () => {
    const answer: Sample['answer'] = ({key}, usual) => (key === '2:done' ? undefined : usual);
    const folder = await folderWith((asked) => ({'7.record.json': written(asked, {seed: 1, answer})}));
    const {code, out} = wmark(folder, 'readings', '7.record.json', '--book', 'book');
    expect(code).toBe(1);
    expect(out).toContain('  plug, step 2: error: not answered: Drive the plug in  [missing]\n');
    expect(out).toMatch(/^Small engine, 7\.record\.json\n/);
  });

  test.each<[string, RegExp]>([
    ['text', /^Small engine, engine number N7\n/],
    ['html', /^<!doctype html>/],
    ['pdf', /^%PDF-1\.7/],
  ])('a report as %s goes to the file that --out names', async (form, start) => {
    const folder = await folderWith((asked) => ({
      '7.record.json': written(asked, {seed: 1, engineNumber: 'N7'}),
    }));
    const ran = wmark(folder, 'readings', '7.record.json', '--as', form, '--out', 'reports/7.report');
    expect(ran).toEqual({code: 0, out: '', err: ''});
    expect(readFileSync(join(folder, 'reports/7.report'), 'latin1')).toMatch(start);
  });

  test.each<[string, readonly string[], string]>([
    [
      'no file for a PDF',
      ['--as', 'pdf'],
      'wmark: a PDF needs a file to go to; name it with --out, as in --out report.pdf\n',
    ],
    ['a folder in its place', ['--as', 'pdf', '--out', 'book'], 'wmark: book: it is a folder, not a file'],
  ])('%s', async (_, words, err) => {
    const folder = await folderWith((asked) => ({'7.record.json': written(asked, {seed: 1})}));
    const ran = wmark(folder, 'readings', '7.record.json', ...words);
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain(err);
  });

  test('a character that no font has is told', async () => {
    const folder = await folderWith((asked) => ({
      '7.record.json': written(asked, {seed: 1, by: () => 'A\u{12000}'}),
    }));
    const ran = wmark(folder, 'readings', '7.record.json', '--as', 'pdf', '--out', '7.pdf');
    expect(ran.err).toBe(
      'wmark: 7.pdf: no font on this machine has \u{12000}; a frame stands in their place\n',
    );
  });

  test('a book that changed since', async () => {
    const folder = await folderWith((asked) => ({
      '7.record.json': written(asked, {seed: 1}),
      'book/engine.yaml': `${smallBook()['book/engine.yaml']}\n# mended\n`,
    }));
    const judged = wmark(folder, 'readings', '7.record.json');
    expect(judged.code).toBe(1);
    expect(judged.out).toContain('the book has changed since this sheet was made');
    const anyway = wmark(folder, 'readings', '7.record.json', '--even-if-changed');
    expect([anyway.code, anyway.out.includes('as you asked')]).toEqual([1, true]);
  });

  test('a job that the book does not have', async () => {
    const folder = await folderWith((asked) => ({'7.record.json': written(asked, {seed: 1, job: '1207'})}));
    const {code, err} = wmark(folder, 'readings', '7.record.json');
    expect(code).toBe(0);
    expect(err).toBe(
      'wmark: 7.record.json: the book of book/engine.yaml has no job 1207, so the sheets for every engine are taken\n',
    );
  });

  test('a job, whose options leave out what its engine does not have', async () => {
    const files = {
      ...smallBook(),
      'book/engine.yaml': `${smallBook()['book/engine.yaml']}options: {blown: {}}\n`,
      'book/plug.md': `${smallBook()['book/plug.md']}3. Paint the blower red. \`only: blown\`\n`,
      'book/jobs/1207.yaml': 'job: {number: 1207, engine: small}\n',
    };
    const loaded = await loadBook(join(await temporaryFolder(files), 'book'));
    if (!loaded.ok) throw new Error(loaded.says);
    const [job] = loaded.jobs;
    if (job === undefined) throw new Error('no job');
    const asked = await askedOfBook({...loaded.book, job});
    expect(asked.sheets.flatMap(({form}) => form.boxes.filter(({step}) => step === '3'))).toEqual([]);
    const folder = await temporaryFolder({...files, '7.record.json': written(asked, {seed: 1, job: '1207'})});
    const {code, out, err} = wmark(folder, 'readings', '7.record.json');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Small engine, job 1207\n/);
  });

  test.each<[string, string | undefined, string]>([
    [
      'no file',
      undefined,
      'wmark: 7.record.json: there is no such file or folder; see that the name is right\n',
    ],
    [
      'no record',
      '{"record": 1}',
      'wmark: 7.record.json:1:1: engine is missing\nwmark: 7.record.json:1:1: sheets is missing\n',
    ],
    [
      'broken off',
      '{"record": 1,\n "eng',
      'wmark: 7.record.json:2:2: this text never ends; export the record from its sheet again\n',
    ],
    [
      'another engine',
      '{"record": 1, "engine": "steam\\u001b[31m", "sheets": []}',
      'wmark: 7.record.json: there is no book of engine steam\\u001b[31m at or below .; name its folder with --book\n',
    ],
  ])('%s', async (_, text, err) => {
    const folder = await temporaryFolder({
      ...smallBook(),
      ...(text !== undefined && {'7.record.json': text}),
    });
    expect(wmark(folder, 'readings', '7.record.json')).toEqual({code: 2, out: '', err});
  });

  test('two books of one engine', async () => {
    const folder = await folderWith((asked) => ({'7.record.json': written(asked, {seed: 1})}));
    cpSync(join(folder, 'book'), join(folder, 'copy'), {recursive: true});
    const {code, err} = wmark(folder, 'readings', '7.record.json');
    expect(code).toBe(2);
    expect(err).toContain(
      'both book/engine.yaml and copy/engine.yaml are of engine small; name the folder of one with --book',
    );
    expect(wmark(folder, 'readings', '7.record.json', '--book', 'copy').code).toBe(0);
  });

  test('a good record beside one that is none', async () => {
    const folder = await folderWith((asked) => ({
      '7.record.json': written(asked, {seed: 1}),
      '8.record.json': '[]',
    }));
    const {code, out, err} = wmark(folder, 'readings', '7.record.json', '8.record.json');
    expect([code, out.includes('0 errors'), err]).toEqual([
      2,
      true,
      'wmark: 8.record.json:1:1: the file is not keys with values in braces\n',
    ]);
  });
});

describe('a demonstration book', () => {
  let asked: Asked;
  beforeAll(async () => {
    asked = await askedIn('procedures/ottermouth-four');
  });

  async function records() {
    const tight: Sample['answer'] = (box, usual) =>
      box.kind === 'reading' && box.item === 'main-clearance' && box.place === 'front' ? '0.0019' : usual;
    return temporaryFolder({
      '1.record.json': written(asked, {seed: 90_001, engineNumber: 'INVENTED-1'}),
      '2.record.json': written(asked, {seed: 90_002_000, engineNumber: 'INVENTED-2', answer: tight}),
    });
  }

  test('two builds: one well, one with a bearing that is tight', async () => {
    const folder = await records();
    const run = wmark(
      folder,
      'readings',
      '1.record.json',
      '2.record.json',
      '--book',
      join(root, 'procedures'),
    );
    expect([run.code, run.err]).toEqual([1, '']);
    expect(run.out).toContain('main bearing clearance, front: 0.0019 in (AB, ');
    expect(run.out).toContain('\nSpread over the builds\n');
    expect(run.out).toMatch(/\n2 builds: 3 errors, 0 warnings\n$/);
  });

  test('JSON is what its schema says', async () => {
    const folder = await records();
    const {out} = wmark(
      folder,
      'readings',
      '2.record.json',
      '--book',
      join(root, 'procedures'),
      '--as',
      'json',
    );
    const schema = JSON.parse(readFileSync(join(root, 'schemas/readings.schema.json'), 'utf8'));
    const validate = new Ajv2020({strict: false}).compile(schema);
    expect(validate(JSON.parse(out)), JSON.stringify(validate.errors)).toBe(true);
  });

  test('a record is what its schema says', async () => {
    const folder = await records();
    const schema = JSON.parse(readFileSync(join(root, 'schemas/record.schema.json'), 'utf8'));
    const validate = new Ajv2020({strict: false, validateFormats: false}).compile(schema);
    const record = JSON.parse(readFileSync(join(folder, '1.record.json'), 'utf8'));
    expect(validate(record), JSON.stringify(validate.errors)).toBe(true);
  });

  test('CSV and HTML', async () => {
    const folder = await records();
    const as = (form: string) =>
      wmark(
        folder,
        'readings',
        '1.record.json',
        '2.record.json',
        '--book',
        join(root, 'procedures'),
        '--as',
        form,
      ).out;
    const [head, ...lines] = readCsv(as('csv'));
    expect(head).toContain('verdict');
    expect(lines.filter((fields) => fields.includes('out'))).toHaveLength(1);
    expect(new Set(lines.map((fields) => fields[1]))).toEqual(new Set(['INVENTED-1', 'INVENTED-2']));
    expect(as('html')).toMatch(/^<!doctype html>\n<html lang="en">/);
  });
});
