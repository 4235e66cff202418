/**
 * Killed at any moment while it writes: every file is the old one or the new one, whole, nothing of the user's is lost,
 * and the next run makes the work whole and sweeps what was left.
 */
import {cp, readdir, readFile, writeFile} from 'node:fs/promises';
import {join, relative, sep} from 'node:path';
import {expect, test} from 'vitest';
import {askedOfBook} from '../../src/host/asked-of-build.js';
import {loadBook} from '../../src/host/load.js';
import {sampleRecord} from '../help/record.js';
import {PROCEDURE, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {killedAt} from './killed.js';
import {shell, wmark} from './run.js';

const LOOSE = PROCEDURE.replace('`clean: seat with solvent`', '`clean:seat  with solvent`');
const UNCLEAN = PROCEDURE.replace('1. Wipe the seat with solvent. `clean: seat with solvent`\n2.', '1.');
const PLAIN = '# Plug\n\n1. Wipe the seat with solvent.\n2. Drive the plug in with the soft mallet.\n';

interface Case {
  readonly name: string;
  readonly files: {readonly [path: string]: string | Uint8Array};
  /** What ran before, so that there is something old. */
  readonly first?: readonly string[];
  /** Written after that. */
  readonly change?: {readonly [path: string]: string};
  readonly words: readonly string[];
}

const CASES: readonly Case[] = [
  {name: 'begin', files: {}, words: ['begin', 'new/book']},
  {name: 'sheet, the first time', files: smallBook(), words: ['sheet', 'book', '--out', 'out']},
  {
    name: 'sheet, over older ones',
    files: smallBook(),
    first: ['sheet', 'book', '--out', 'out'],
    change: {'book/plug.md': PROCEDURE.replace('revision: A', 'revision: B')},
    words: ['sheet', 'book', '--out', 'out'],
  },
  {name: 'tidy', files: smallBook({'book/plug.md': LOOSE}), words: ['tidy', 'book']},
  {
    name: 'adopt',
    files: {...smallBook(), 'plain.md': PLAIN},
    words: ['adopt', 'plain.md', '--engine', 'book/engine.yaml', '--out', 'draft.md'],
  },
  {
    name: 'adopt, over an older one',
    files: {...smallBook(), 'plain.md': PLAIN, 'draft.md': 'older\n'},
    words: ['adopt', 'plain.md', '--engine', 'book/engine.yaml', '--out', 'draft.md', '--replace'],
  },
  {
    name: 'known',
    files: smallBook({'book/plug.md': UNCLEAN}),
    words: ['known', 'known.yaml', '--because', 'old', '--owner', 'RT', 'book'],
  },
  {
    name: 'known, a list that was there',
    files: {...smallBook({'book/plug.md': UNCLEAN}), 'known.yaml': 'known: []\n'},
    words: ['known', 'known.yaml', '--because', 'old', '--owner', 'RT', 'book'],
  },
];

test.each(CASES)('$name', {timeout: 300_000}, async ({files, first, change = {}, words}) => {
  const start = await temporaryFolder(files);
  if (first) wmark(start, ...first);
  for (const [path, text] of Object.entries(change)) await writeFile(join(start, path), text);
  await killEverywhere(start, words);
});

test('readings, a report over an older one', {timeout: 300_000}, async () => {
  const start = await temporaryFolder({...smallBook(), '7.html': 'older\n'});
  const loaded = await loadBook('book', start);
  if (!loaded.ok) throw new Error(loaded.says);
  const {sheets} = await askedOfBook(loaded.book);
  const record = sampleRecord(
    sheets.map(({form}) => form),
    {seed: 1},
  );
  await writeFile(join(start, '7.record.json'), JSON.stringify(record));
  await killEverywhere(start, ['readings', '7.record.json', '--as', 'html', '--out', '7.html']);
});

async function killEverywhere(start: string, words: readonly string[]): Promise<void> {
  const before = await filesIn(start);
  const done = await copyOf(start);
  const told = wmark(done, ...words);
  const after = await filesIn(done);
  expect(after).not.toEqual(before);

  let steps = 0;
  for (let step = 1; ; step++) {
    const folder = await copyOf(start);
    if (!(await killedAt(step, folder, words))) break;
    steps = step;
    for (const [path, text] of await filesIn(folder)) {
      if (isPassing(path)) continue;
      expect([before.get(path), after.get(path)], `${path}, killed at step ${step}`).toContain(text);
    }
    expect([...(await filesIn(folder)).keys()]).toEqual(expect.arrayContaining([...before.keys()]));
    const isDone = sameFiles(await filesIn(folder), after);
    const again = wmark(folder, ...words);
    // Where it had done its work before it was killed, it may say that something is there already.
    if (!isDone) expect(again.code).toBe(told.code);
    expect(await filesIn(folder), `again after step ${step}`).toEqual(after);
  }
  expect(steps).toBeGreaterThan(4);
}

test('check: what it keeps', {timeout: 300_000}, async () => {
  const start = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
  const words = ['check', 'book', '--cache', 'kept'];
  const told = wmark(start, ...words, '--no-cache');
  for (let step = 1; ; step++) {
    const folder = await copyOf(start);
    if (!(await killedAt(step, folder, words))) break;
    expect(wmark(folder, ...words), `again after step ${step}`).toEqual(told);
    expect(wmark(folder, ...words), `and again after step ${step}`).toEqual(told);
  }
});

test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('%s ends it at once', async (by) => {
  const folder = await temporaryFolder(smallBook());
  expect(await killedAt(2, folder, ['check', 'book', '--cache', 'kept'], {by})).toBe(true);
  expect(wmark(folder, 'check', 'book', '--cache', 'kept').code).toBe(0);
});

test('compare: the texts of a revision that it laid out', {timeout: 300_000}, async () => {
  const start = await temporaryFolder({...smallBook(), 'passing/keep.txt': 'mine'});
  shell(start, 'git init -q . && git add book && git -c user.name=n -c user.email=e commit -qm one');
  const words = ['compare', '--since', 'HEAD', 'book'];
  let steps = 0;
  for (let step = 1; ; step += 2) {
    const folder = await copyOf(start);
    const env = {TMPDIR: join(folder, 'passing')};
    if (!(await killedAt(step, folder, words, {env}))) break;
    steps++;
    shell(folder, 'export TMPDIR=$PWD/passing; eval $WMARK compare --since HEAD book');
    expect(await readdir(join(folder, 'passing')), `after step ${step}`).toEqual(['keep.txt']);
  }
  expect(steps).toBeGreaterThan(4);
});

/** Whether the work is done, whatever else lies about. */
function sameFiles(files: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): boolean {
  return [...after].every(([path, text]) => files.get(path) === text);
}

async function copyOf(folder: string): Promise<string> {
  const copy = await temporaryFolder();
  await cp(folder, copy, {recursive: true, preserveTimestamps: true});
  return copy;
}

/** Texts by path, without what the tests put there themselves. */
async function filesIn(folder: string): Promise<Map<string, string>> {
  const entries = await readdir(folder, {recursive: true, withFileTypes: true});
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const texts = new Map<string, string>();
  for (const path of paths.sort()) {
    const name = relative(folder, path).split(sep).join('/');
    if (name === 'hook.mjs') continue;
    texts.set(name, (await readFile(path, 'utf8')).replaceAll(folder, 'FOLDER'));
  }
  return texts;
}

/** Named for a run that is under way, so that whoever comes upon it knows. */
function isPassing(path: string): boolean {
  return /(?:^|\/)\.wmark-[0-9a-f]{8}-\d+-[0-9a-f]{8}\.tmp$/.test(path);
}

test('what runs under way, on this machine or another, is not swept', async () => {
  const [live, other] = [`.wmark-MACHINE-${process.pid}-00000000.tmp`, '.wmark-00000000-1-00000000.tmp'];
  const folder = await temporaryFolder({...smallBook(), 'draft/plain.md': PLAIN});
  const dead = await deadName(folder);
  const machine = dead.split('-')[1] ?? '';
  for (const name of [live.replace('MACHINE', machine), other])
    await writeFile(join(folder, 'draft', name), 'half');
  wmark(folder, 'adopt', 'draft/plain.md', '--engine', 'book/engine.yaml', '--out', 'draft/out.md');
  expect((await readdir(join(folder, 'draft'))).sort()).toEqual(
    [live.replace('MACHINE', machine), other, 'out.md', 'plain.md'].sort(),
  );
});

/** The name that a killed run left behind. */
async function deadName(folder: string): Promise<string> {
  const words = ['adopt', 'draft/plain.md', '--engine', 'book/engine.yaml', '--out', 'draft/out.md'];
  for (let step = 1; step < 9; step++) {
    await killedAt(step, folder, words);
    const left = (await readdir(join(folder, 'draft'))).find((name) => isPassing(name));
    if (left !== undefined) return left;
  }
  throw new Error('no killed run left anything');
}

test('two runs at once, many times: the outcome is that of one', {timeout: 300_000}, async () => {
  const words = [
    'sheet book --out out',
    'tidy book',
    'known known.yaml --because old --owner RT book',
    'adopt plain.md --engine book/engine.yaml --out draft.md',
  ];
  const files = {...smallBook({'book/plug.md': LOOSE}), 'plain.md': PLAIN};
  for (const command of words) {
    const start = await temporaryFolder(files);
    const alone = await copyOf(start);
    shell(alone, `eval $WMARK ${command} || true`);
    const after = await filesIn(alone);
    for (let round = 0; round < 4; round++) {
      const folder = await copyOf(start);
      // Whichever comes later may say that it found the work done, or that somebody was before it.
      const {out} = shell(
        folder,
        `run() { if eval $WMARK ${command} > "$1" 2>&1; then echo 0; else echo $?; fi > code$1; }
         run 1 & run 2 & wait
         cat code1 code2; rm 1 2 code1 code2`,
      );
      expect(out, command).toMatch(/^(?:[012]\n){2}$/);
      expect(await filesIn(folder), command).toEqual(after);
    }
  }
});
