/** The list of known findings: written, held against, kept when text moves, and struck off. */
import {mkdir, readFile, writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {parse} from 'yaml';
import {ENGINE, PROCEDURE, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';
import {sarifFaults} from './sarif-schema.js';

const UNCLEAN = PROCEDURE.replace('1. Wipe the seat with solvent. `clean: seat with solvent`\n2.', '1.');
const WRITE = ['known', 'known.yaml', 'book', '--because', 'old text, done by June', '--owner', 'R. Tamsin'];

async function old() {
  const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
  const ran = wmark(folder, ...WRITE);
  return {folder, ran, list: () => readFile(join(folder, 'known.yaml'), 'utf8')};
}

test('names each finding with its reason and owner', async () => {
  const {ran, list} = await old();
  expect(ran).toEqual({code: 0, out: 'known.yaml: 1 finding added, 0 entries struck off\n', err: ''});
  expect(parse(await list())).toEqual({
    known: [
      {
        finding: 'clean-first',
        file: 'book/plug.md',
        item: 'seat',
        because: 'old text, done by June',
        owner: 'R. Tamsin',
      },
    ],
  });
});

describe('a check with the list', () => {
  test('passes while nothing new is found', async () => {
    const {folder} = await old();
    const {code, out, err} = wmark(folder, 'check', '--known', 'known.yaml', 'book');
    expect({code, err}).toEqual({code: 0, err: ''});
    expect(out).toContain('0 errors, 0 warnings; 1 known and let stand\n');
  });

  test('goes by meaning: text that moves is known still', async () => {
    const {folder} = await old();
    await writeFile(
      join(folder, 'book/plug.md'),
      UNCLEAN.replace('1. Drive the plug in.', 'A word.\n\n1. Breathe in.\n2. Tap the plug home.'),
    );
    expect(wmark(folder, 'check', '--known', 'known.yaml', 'book').code).toBe(0);
  });

  test('fails on what is new, and shows that alone', async () => {
    const {folder} = await old();
    await writeFile(join(folder, 'book/plug.md'), UNCLEAN.replace('install: plug', 'install: plgu'));
    const {code, out} = wmark(folder, 'check', '--known', 'known.yaml', 'book');
    expect(code).toBe(1);
    expect(out).toContain('[unknown-item]');
    expect(out).not.toContain('[clean-first]');
  });

  test('says what is settled, and a second writing strikes it off but keeps what people wrote', async () => {
    const {folder, list} = await old();
    await writeFile(
      join(folder, 'known.yaml'),
      `${await list()}  - {finding: left-out, file: else/far.md, item: gear, because: elsewhere, owner: J} # mine\n`,
    );
    await writeFile(join(folder, 'book/plug.md'), PROCEDURE);
    const {code, err} = wmark(folder, 'check', '--known', 'known.yaml', 'book');
    expect(code).toBe(0);
    expect(err).toContain(
      'wmark: known.yaml:4: clean-first in book/plug.md is settled; `wmark known` strikes it off\n',
    );
    await temporaryFileBeside(folder);
    expect(wmark(folder, ...WRITE).out).toBe('known.yaml: 0 findings added, 1 entry struck off\n');
    expect(await list()).not.toContain('clean-first');
    expect(await list()).toContain('# mine');
  });

  test('SARIF shows known findings as suppressed, with the reason', async () => {
    const {folder} = await old();
    const log = JSON.parse(wmark(folder, 'check', '--known', 'known.yaml', '--as', 'sarif', 'book').out);
    expect(sarifFaults(log)).toEqual([]);
    expect(log.runs[0].results[0].suppressions).toEqual([
      {kind: 'external', justification: 'old text, done by June'},
    ]);
  });

  test.each([
    ['no list', undefined, 'known.yaml: there is no such file or folder'],
    ['not YAML', 'known: ][', 'known.yaml:1:'],
    [
      'an entry without its owner',
      'known:\n  - {finding: left-out, file: a.md, because: old}\n',
      'known.yaml:1:1: entry 1 of known has no owner',
    ],
  ])('%s is a failure, told with its place', async (_, text, says) => {
    const folder = await temporaryFolder(smallBook(text === undefined ? {} : {'known.yaml': text}));
    const {code, out, err} = wmark(folder, 'check', '--known', 'known.yaml', 'book');
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toContain(says);
  });
});

test('the same finding twice is one entry, and settled by one is told', async () => {
  const two = UNCLEAN.replace(
    '1. Drive the plug in. `install: plug using soft-mallet`',
    '1. Go. `install: plug using brass-bar`\n2. Go on. `turn: plug using brass-bar`',
  );
  const folder = await temporaryFolder(
    smallBook({'book/plug.md': two, 'book/engine.yaml': ENGINE.replace('assembly: dry', 'assembly: clean')}),
  );
  wmark(folder, ...WRITE);
  const text = await readFile(join(folder, 'known.yaml'), 'utf8');
  expect(parse(text).known).toContainEqual(
    expect.objectContaining({finding: 'tool-not-in-shop', item: 'brass-bar', times: 2}),
  );
  await writeFile(join(folder, 'book/plug.md'), two.replace('turn: plug using brass-bar', 'turn: plug'));
  const {code, err} = wmark(folder, 'check', '--known', 'known.yaml', 'book');
  expect(code).toBe(0);
  expect(err).toContain('is found 1 time only');
});

/** A file of another book, which the run does not look at. */
async function temporaryFileBeside(folder: string): Promise<void> {
  await mkdir(join(folder, 'else'), {recursive: true});
  await writeFile(join(folder, 'else/far.md'), '');
}
