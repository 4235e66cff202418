/** What the mutation tool works on, and which tests judge it. */
import {readdirSync, statSync} from 'node:fs';
import {join} from 'node:path';

export interface Scope {
  /** Folder of `src`. */
  readonly folder: string;
  /** Files or folders of the tests that judge it. They run in one process, so none that starts another. */
  readonly tests: readonly string[];
}

const CASES = [
  'alone',
  'alone-told',
  'barred-told',
  'check-jobs',
  'clean-told',
  'cure-told',
  'examples',
  'fits-told',
  'fixes',
  'gauges-told',
  'loops-told',
  'manner-told',
  'materials-told',
  'messages',
  'missing-line',
  'missing-seal',
  'missing-torque',
  'names-told',
  'options-told',
  'order-told',
  'pins-told',
  'readings-told',
  'rework-told',
  'signature-told',
  'signed-by',
  'told',
  'trade-cases',
].map((name) => `tests/findings/${name}.test.ts`);
/** What stands around the findings: memory, calendar, rules of a house, fixes made without asking, pages. */
const AROUND = [
  'broken-specification',
  'date-bound',
  'found-fault',
  'house',
  'house-faults',
  'memory',
  'mend',
  'registry',
  'summary',
].map((name) => `tests/findings/${name}.test.ts`);
const PROSE = [
  'brought-hazards',
  'caution-late-told',
  'caution-moved',
  'excused',
  'hazards-told',
  'inserted-steps',
  'known',
  'numbers-read',
  'page',
  'prose',
  'prose-about',
  'prose-exact',
  'prose-mended',
  'sentences',
  'shop-grammar',
  'words',
].map((name) => `tests/findings/${name}.test.ts`);
/** Stories of single jobs, each by its findings. */
const JOBS = [
  'build-words',
  'comes-first',
  'disturbed',
  'drain',
  'fasteners-told',
  'fill-told',
  'filled-slack',
  'follow-on',
  'follow-on-limits',
  'job-told',
  'key-twice',
  'left-told',
  'left-undone',
  'left-undone-otherwise',
  'locks',
  'materials-stated-told',
  'locks-told',
  'missing-mended',
  'missing-waited',
  'on-threads',
  'over-under',
  'phrase',
  'preload-told',
  'rounds-told',
  'same-name-told',
  'sealant-untagged',
  'settle-told',
  'shallow-told',
  'soiled',
  'step-prose',
  'step-unmarked',
  'strips-told',
  'substitutes-told',
  'surfaces-told',
  'temporary',
  'thread-hand',
  'threads-told',
  'tightened-early',
  'two-actions-told',
  'two-procedures',
  'unasked-alteration',
  'untagged-told',
  'values-stated',
  'values-told',
  'waived-name',
  'ways-told',
  'wires-told',
  'witness-mark',
  'wrench-range',
  'wrenches-told',
].map((name) => `tests/findings/${name}.test.ts`);
const ENGINEERING = 'tests/findings/engineering.test.ts';

/**
 * What the name of a test holds that is left out: properties over whole books take seconds each, checks of every
 * example once more come by every mutant, and thousands would wait for them; the last two read names of files in a
 * stack, or the sources themselves, which are others here.
 */
export const LEFT_OUT: readonly string[] = [
  'options keep every step or say that it is left out, whatever is chosen',
  'any value in place of any other of the first demonstration book is judged without an exception',
  'finds the same with a memory: ',
  'says the same up to the last date',
  'leads to its own line',
  'the registry holds what the folder defines',
];

export const SCOPES: readonly Scope[] = [
  {
    folder: 'src/build',
    tests: [
      'tests/build',
      ...CASES,
      ...JOBS,
      'tests/findings/memory.test.ts',
      'tests/cli/coverage-report.test.ts',
    ],
  },
  {
    folder: 'src/findings',
    tests: [...CASES, ...AROUND, ...PROSE, ...JOBS, 'tests/build/loops.test.ts', ENGINEERING],
  },
  {folder: 'src/trade', tests: ['tests/trade', ENGINEERING]},
];

/**
 * Tables that were copied from a standard, and words of examples: a changed number in one of them says nothing
 * about the tests of a calculation. They are held against their sources line by line in `tests/trade`.
 */
const TABLES: ReadonlySet<string> = new Set([
  'src/findings/lexicon.ts',
  'src/findings/loop-example.ts',
  'src/findings/strip-example.ts',
  'src/trade/bolt-grades.ts',
  'src/trade/cotter-sizes.ts',
  'src/trade/inch-fits.ts',
  'src/trade/iso-deviations.ts',
  'src/trade/iso-grades.ts',
  'src/trade/nut-factors.ts',
  'src/trade/tapped-metals.ts',
  'src/trade/thread-sizes.ts',
  'src/trade/wear-rules.ts',
  'src/trade/wire-rules.ts',
  'src/trade/wrench-classes.ts',
]);

/** The files to work on that are, or stand below, one of the paths. */
export function filesOf({folder}: Scope, paths: readonly string[]): string[] {
  const asked = (file: string) => paths.some((path) => file === path || file.startsWith(`${path}/`));
  return below(folder, '.ts').filter((file) => !TABLES.has(file) && (paths.length === 0 || asked(file)));
}

export function testsOf({tests}: Scope): string[] {
  return tests.flatMap((path) => (path.endsWith('.ts') ? [path] : below(path, '.test.ts')));
}

function below(path: string, ending: string): string[] {
  if (!statSync(path).isDirectory()) return path.endsWith(ending) ? [path] : [];
  return readdirSync(path)
    .toSorted()
    .flatMap((name) => below(join(path, name), ending));
}
