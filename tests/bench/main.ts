/**
 * The benchmark: `npm run bench`. Prints ratios, since the clock of one machine says little on another: the check
 * over bare parsing of the same bytes, growth over sizes, start-up over bare Node, and peak memory. `-- books` is for a
 * folder of many books.
 */
import {spawnSync} from 'node:child_process';
import {join} from 'node:path';
import {fileURLToPath} from 'node:url';
import {benchBooks} from './books.js';
import {type GeneratedBook, generatedBook} from './generated.js';
import {growth} from './growth.js';
import {checkRead, checkWhole, markdownlint, parseBare, readWhole, readYaml, remarkLint} from './subjects.js';

const SIZES = [
  {steps: 100, rounds: 11},
  {steps: 1_000, rounds: 5},
  {steps: 10_000, rounds: 2},
] as const;

const LARGE = [
  {steps: 10_000, rounds: 3},
  {steps: 30_000, rounds: 2},
  {steps: 100_000, rounds: 1},
] as const;

const SHAPES: readonly Shape[] = [
  {shape: 'one file', stepsPerFile: Number.POSITIVE_INFINITY, sizes: SIZES},
  {shape: 'files of 50 steps', stepsPerFile: 50, sizes: SIZES},
  {
    shape: 'files of 1,000 steps, a rework loop to every hundred',
    stepsPerFile: 1_000,
    loops: true,
    sizes: LARGE,
  },
];

interface Shape {
  readonly shape: string;
  readonly stepsPerFile: number;
  readonly loops?: boolean;
  readonly sizes: readonly {readonly steps: number; readonly rounds: number}[];
}

const [, , mode, ...words] = process.argv;
if (mode === 'peak') printPeak(words);
else if (mode === 'books') await benchBooks(words);
else await printAll();

async function printAll(): Promise<void> {
  warmUp();
  for (const shape of SHAPES) await printShape(shape);
  printStart();
}

/** The first runs are spent on compiling. */
function warmUp(): void {
  const book = generatedBook(500, 50);
  for (let round = 0; round < 5; round++) {
    parseBare(book);
    checkWhole(book);
  }
}

async function printShape(shape: Shape): Promise<void> {
  const rows = [];
  for (const {steps, rounds} of shape.sizes) rows.push(await row(shape, steps, rounds));
  console.log(`\nThe check of a generated book, ${shape.shape}`);
  console.table(rows.map(({steps, columns}) => ({steps, ...columns})));
  const exponent = growth(rows.map(({steps, check}) => [steps, check]));
  console.log(`growth: time goes with steps to the power ${exponent.toFixed(2)} (1 is in proportion)`);
}

async function row({stepsPerFile, loops = false}: Shape, steps: number, rounds: number) {
  const book = generatedBook(steps, stepsPerFile, {loops});
  const findings = checkWhole(book);
  const {bare, check} = timedInTurn(book, rounds);
  const parts = timedParts(book);
  const columns = {
    KB: Math.round([...book.procedures.values()].join('').length / 1000),
    findings,
    'bare ms': Math.round(bare),
    'check ms': Math.round(check),
    'check/bare': ratio(check, bare),
    'YAML share': ratio(parts.yaml, check),
    'rules share': ratio(parts.rules, check),
    'remark-lint/bare': ratio(await timed(() => remarkLint(book)), bare),
    'markdownlint/bare': ratio(await timed(() => markdownlint(book)), bare),
    'peak MiB': peak(steps, stepsPerFile, loops),
  };
  return {steps, check, columns};
}

/** Taken in turn, so that whatever else the machine does falls on both. */
function timedInTurn(book: GeneratedBook, rounds: number) {
  const bare: number[] = [];
  const check: number[] = [];
  for (let round = 0; round < rounds; round++) {
    bare.push(timedNow(() => parseBare(book)));
    check.push(timedNow(() => checkWhole(book)));
  }
  return {bare: median(bare), check: median(check)};
}

function timedParts(book: GeneratedBook) {
  const yaml = timedNow(() => readYaml(book));
  const read = readWhole(book);
  return {yaml, rules: timedNow(() => checkRead(read))};
}

/** Milliseconds of the processor: unlike the clock, they hold on a machine that has other things to do. */
function timedNow(run: () => unknown): number {
  const start = process.cpuUsage();
  run();
  return since(start);
}

async function timed(run: () => Promise<unknown>): Promise<number> {
  const start = process.cpuUsage();
  await run();
  return since(start);
}

function since(start: NodeJS.CpuUsage): number {
  const {user, system} = process.cpuUsage(start);
  return (user + system) / 1000;
}

/** Peak resident memory, in MiB, of a process of its own that checks the book once. */
function peak(steps: number, stepsPerFile: number, loops: boolean): number {
  const words = [fileURLToPath(import.meta.url), 'peak', String(steps), String(stepsPerFile), String(loops)];
  return Number(spawnSync(process.execPath, words, {encoding: 'utf8'}).stdout);
}

function printPeak([steps, stepsPerFile, loops]: readonly string[]): void {
  checkWhole(generatedBook(Number(steps), Number(stepsPerFile), {loops: loops === 'true'}));
  console.log(Math.round(process.resourceUsage().maxRSS / 1024));
}

/** Start-up of whole processes, taken in turn. */
function printStart(): void {
  const command = join(process.cwd(), 'dist', 'wmark.js');
  const calls = {
    'node -e 0': ['-e', '0'],
    'wmark --version': [command, '--version'],
    'wmark --help': [command, '--help'],
    'wmark check (starting book)': [command, 'check', 'src/cli/begin'],
  };
  const times = new Map(Object.keys(calls).map((name) => [name, [] as number[]]));
  for (let round = 0; round < 21; round++) {
    for (const [name, args] of Object.entries(calls)) {
      const start = performance.now();
      spawnSync(process.execPath, args, {stdio: 'ignore'});
      times.get(name)?.push(performance.now() - start);
    }
  }
  const bare = Math.min(...(times.get('node -e 0') ?? []));
  console.log('\nStart-up, the fastest of 21 whole processes');
  console.table(
    [...times].map(([name, all]) => ({
      call: name,
      ms: Math.round(Math.min(...all)),
      'over bare': ratio(Math.min(...all), bare),
    })),
  );
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

function ratio(one: number, other: number): string {
  return (one / other).toFixed(2);
}
