/**
 * The benchmark of a folder of many books: `npm run bench -- books [SIZE…]`. Prints times over bare parsing of the same files,
 * cold, warm and with one file changed, memory, growth over sizes, two slices at once, and general linters of Markdown.
 */
import {spawn} from 'node:child_process';
import {mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {type GeneratedBook, generatedBook} from './generated.js';
import {growth} from './growth.js';
import {markdownlint, parseBare, remarkLint} from './subjects.js';

const SIZES = [30, 100, 300, 1_000];
const STEPS_PER_BOOK = 100;
const STEPS_PER_FILE = 34;

/** More than this takes minutes, and what is compared on it goes with the number of files. */
const MOST_COMPARED = 100;

const COMMAND = join(process.cwd(), 'dist', 'wmark.js');

/** The benchmark of the folder; sizes are numbers of books. */
export async function benchBooks(words: readonly string[]): Promise<void> {
  const sizes = words.length > 0 ? words.map(Number) : SIZES;
  const rows: Awaited<ReturnType<typeof row>>[] = [];
  for (const size of sizes) rows.push(await row(size));
  console.log(
    `\nFolders of books of ${STEPS_PER_BOOK} steps in files of ${STEPS_PER_FILE}; seconds of the processor`,
  );
  console.table(rows.map(({size, columns}) => ({books: size, ...columns})));
  if (rows.length < 2) return;
  const exponent = (pick: 'cold' | 'warm') => growth(rows.map((one) => [one.size, one[pick]])).toFixed(2);
  console.log(`growth: time goes with books to the power ${exponent('cold')} cold, ${exponent('warm')} warm`);
}

async function row(size: number) {
  const folder = mkdtempSync(join(tmpdir(), 'wmark-bench-'));
  try {
    const books = Array.from({length: size}, (_, index) => bookAt(folder, index));
    const check = (...more: readonly string[]) =>
      measured(folder, ['check', 'books', '--cache', 'kept', ...more]);
    const bare = await timed(() => books.forEach(parseBare));
    const cold = await check();
    const warm = await check();
    changeOne(folder);
    const one = await check();
    const columns = {
      MB: (bytesOf(books) / 1e6).toFixed(1),
      bare: bare.toFixed(1),
      'cold/bare': ratio(cold.seconds, bare),
      'warm/cold': ratio(warm.seconds, cold.seconds),
      'one change/cold': ratio(one.seconds, cold.seconds),
      'cold MiB': cold.mebibytes,
      'warm MiB': warm.mebibytes,
      ...(size <= MOST_COMPARED && {...(await linters(books, bare)), ...(await compared(folder))}),
    };
    return {size, cold: cold.seconds, warm: warm.seconds, columns};
  } finally {
    rmSync(folder, {recursive: true, force: true});
  }
}

/** One of ten has forgotten a lock. */
function bookAt(folder: string, index: number): GeneratedBook {
  const book = generatedBook(STEPS_PER_BOOK, STEPS_PER_FILE, {seed: index + 1});
  const at = join(folder, 'books', `book-${String(index).padStart(4, '0')}`);
  mkdirSync(at, {recursive: true});
  writeFileSync(join(at, 'shop.yaml'), book.shop);
  writeFileSync(join(at, 'engine.yaml'), book.engine);
  for (const [name, text] of book.procedures) {
    const forgotten = index % 10 === 0 ? text.replace(/^5\. .*\n/m, '') : text;
    writeFileSync(join(at, name), forgotten);
  }
  return book;
}

function changeOne(folder: string): void {
  const file = join(folder, 'books', 'book-0003', '0001-assembly.md');
  writeFileSync(file, readFileSync(file, 'utf8').replace('Wash the face', 'Wash all of the face'));
}

function bytesOf(books: readonly GeneratedBook[]): number {
  return books.flatMap(({procedures}) => [...procedures.values()]).join('').length;
}

interface Measured {
  readonly seconds: number;
  readonly mebibytes: number;
}

/** The command in a process of its own, which says at its end what it took. */
async function measured(folder: string, words: readonly string[]): Promise<Measured> {
  const usage = join(folder, 'usage.json');
  const hook = `import{writeFileSync}from'node:fs';process.on('exit',()=>writeFileSync(${JSON.stringify(usage)},JSON.stringify(process.resourceUsage())))`;
  await ran(folder, ['--import', `data:text/javascript,${encodeURIComponent(hook)}`, COMMAND, ...words]);
  const {userCPUTime, systemCPUTime, maxRSS} = JSON.parse(readFileSync(usage, 'utf8'));
  return {seconds: (userCPUTime + systemCPUTime) / 1e6, mebibytes: Math.round(maxRSS / 1024)};
}

function ran(folder: string, words: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, words, {cwd: folder, stdio: 'ignore'});
    child.on('error', reject);
    child.on('close', () => resolve());
  });
}

/** What the keeping costs the first time; by the clock, one run against two slices at once: above 1 the second processor pays. */
async function compared(folder: string) {
  const without = await measured(folder, ['check', 'books', '--no-cache']);
  const keeping = await measured(folder, ['check', 'books', '--cache', 'kept-2']);
  const words = [COMMAND, 'check', 'books', '--no-cache'];
  const one = await clocked(() => ran(folder, words));
  const two = await clocked(() =>
    Promise.all([ran(folder, [...words, '--slice', '1/2']), ran(folder, [...words, '--slice', '2/2'])]),
  );
  return {'cold/no cache': ratio(keeping.seconds, without.seconds), 'one run/2 slices': ratio(one, two)};
}

/** General linters, for orientation: they know nothing of engines. Each by its name and version. */
async function linters(books: readonly GeneratedBook[], bare: number) {
  const ratios: Record<string, string> = {};
  for (const [name, lint] of [
    ['remark-preset-lint-recommended', remarkLint],
    ['markdownlint', markdownlint],
  ] as const) {
    const time = await timed(async () => {
      for (const book of books) await lint(book);
    });
    ratios[`${name} ${versionOf(name)}/bare`] = ratio(time, bare);
  }
  return ratios;
}

/** The version of an installed package, whose main file may lie below its top folder. */
function versionOf(name: string): string {
  const main = createRequire(import.meta.url).resolve(name);
  const top = main.slice(0, main.lastIndexOf(join('node_modules', name)));
  return JSON.parse(readFileSync(join(top, 'node_modules', name, 'package.json'), 'utf8')).version;
}

/** Seconds of the processor: unlike the clock, they hold on a machine that has other things to do. */
async function timed(run: () => unknown): Promise<number> {
  const start = process.cpuUsage();
  await run();
  const {user, system} = process.cpuUsage(start);
  return (user + system) / 1e6;
}

async function clocked(run: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await run();
  return performance.now() - start;
}

function ratio(one: number, other: number): string {
  return (one / other).toFixed(2);
}
