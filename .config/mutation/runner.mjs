/** Runs tests for the mutation tool in one process: all are bundled and gathered once, then run by name. */
import {readFile} from 'node:fs/promises';
import {dirname, join, resolve} from 'node:path';
import {performance} from 'node:perf_hooks';
import {fileURLToPath, pathToFileURL} from 'node:url';
import {runInThisContext} from 'node:vm';
import {build} from 'esbuild';
import {gathered} from './words.mjs';

const WORDS = join(dirname(fileURLToPath(import.meta.url)), 'words.mjs');

export class InProcess {
  static inject = ['options'];
  #files;
  #without;
  #tests = new Map();
  /** How often each test killed in each file, and how long it took: what kills much there, and fast, goes first. */
  #kills = new Map();
  #times = new Map();
  #broken = new Set();
  /** By test and mutant, how often the place was come by. Far more often means round and round. */
  #hits = {};

  constructor({witnessMark}) {
    this.#files = witnessMark.tests;
    this.#without = witnessMark.without;
  }

  /** Nothing is loaded anew: a mutant that counts while a file is loaded too is judged by what it does afterwards. */
  capabilities() {
    return {reloadEnvironment: true};
  }

  async init() {
    const outfile = resolve('.mutation-tests.mjs');
    await build({
      stdin: {contents: entry(this.#files), resolveDir: process.cwd(), sourcefile: 'entry.mjs'},
      outfile,
      bundle: true,
      platform: 'node',
      target: 'node20.19',
      format: 'esm',
      packages: 'external',
      loader: {'.typ': 'text', '.md': 'text', '.yaml': 'text'},
      plugins: [ownAddress, ourWords],
      logLevel: 'warning',
    });
    await import(pathToFileURL(outfile).href);
    for (const test of gathered)
      if (!this.#without.some((part) => test.name.includes(part))) this.#tests.set(test.id, test);
  }

  async dryRun() {
    const space = mutants();
    space.activeMutant = undefined;
    space.mutantCoverage ??= {static: {}, perTest: {}};
    const tests = [];
    for (const test of this.#tests.values()) {
      space.currentTestId = test.id;
      const result = await run(test);
      space.currentTestId = undefined;
      this.#times.set(test.id, result.timeSpentMs);
      tests.push(result);
    }
    this.#hits = space.mutantCoverage.perTest;
    return {status: 'complete', tests, mutantCoverage: space.mutantCoverage};
  }

  async mutantRun({testFilter, activeMutant, hitLimit}) {
    const space = mutants();
    const coming =
      testFilter ?? [...this.#tests.keys()].filter((id) => this.#hits[id]?.[activeMutant.id] > 0);
    space.activeMutant = activeMutant.id;
    let nrOfTests = 0;
    const kills = this.#killsIn(activeMutant.fileName);
    for (const id of this.#likelyFirst(coming, kills)) {
      const usual = this.#hits[id]?.[activeMutant.id];
      space.hitCount = 0;
      space.hitLimit = usual === undefined ? hitLimit : 10_000 + 100 * usual;
      const limit = 60_000 + Math.ceil(20 * (this.#times.get(id) ?? 1_000));
      const result = await run(this.#tests.get(id), limit);
      nrOfTests++;
      if (space.hitCount > space.hitLimit || result.endless) return {status: 'timeout', reason: 'never ends'};
      if (result.status !== FAILED || !(await this.#passesWithout(id))) continue;
      kills.set(id, (kills.get(id) ?? 0) + 1);
      return {status: 'killed', killedBy: [id], failureMessage: result.failureMessage, nrOfTests};
    }
    return {status: 'survived', nrOfTests};
  }

  /** A test that fails without any mutant too was broken by an earlier one: it says nothing from then on. */
  async #passesWithout(id) {
    const space = mutants();
    const {activeMutant} = space;
    Object.assign(space, {activeMutant: undefined, hitCount: undefined});
    const {status} = await run(this.#tests.get(id));
    space.activeMutant = activeMutant;
    if (status === SUCCESS) return true;
    console.error(`mutation: "${id}" fails by itself now, and is left out`);
    this.#broken.add(id);
    return false;
  }

  #killsIn(file) {
    const known = this.#kills.get(file) ?? new Map();
    this.#kills.set(file, known);
    return known;
  }

  #likelyFirst(ids, kills) {
    const rank = (id) => (this.#times.get(id) ?? 0) / (1 + 1_000 * (kills.get(id) ?? 0));
    return ids.filter((id) => !this.#broken.has(id)).sort((a, b) => rank(a) - rank(b));
  }
}

const SUCCESS = 0;
const FAILED = 1;

function mutants() {
  globalThis.__stryker__ ??= {};
  return globalThis.__stryker__;
}

/** `limit` in milliseconds holds for what a test does before it first waits: a loop in a mutant waits for nothing. */
async function run({id, name, file, run: body}, limit = 600_000) {
  const start = performance.now();
  const result = (status) => ({id, name, fileName: file, status, timeSpentMs: performance.now() - start});
  try {
    globalThis.testOfMutant = body;
    await runInThisContext('testOfMutant()', {timeout: limit});
    return result(SUCCESS);
  } catch (error) {
    if (error?.code === 'ERR_SCRIPT_EXECUTION_TIMEOUT') return {...result(FAILED), endless: true};
    return {...result(FAILED), failureMessage: error instanceof Error ? error.message : String(error)};
  }
}

/** One file after the other, so that each test knows whose it is. */
function entry(files) {
  const imports = files.map(
    (file) => `gatherFrom(${JSON.stringify(file)}); await import(${JSON.stringify(`./${file}`)});`,
  );
  return [`import {gatherFrom} from 'vitest';`, `import './tests/mutation/seed.ts';`, ...imports].join('\n');
}

/** A test that reads files beside itself finds them from the bundle too. */
const ownAddress = {
  name: 'own-address',
  setup({onLoad}) {
    onLoad({filter: /[\\/]tests[\\/].*\.ts$/}, async ({path}) => {
      const text = await readFile(path, 'utf8');
      const address = JSON.stringify(pathToFileURL(path).href);
      return {contents: text.replaceAll('import.meta.url', address), loader: 'ts'};
    });
  },
};

const ourWords = {
  name: 'our-words',
  setup({onResolve}) {
    onResolve({filter: /^vitest$/}, () => ({path: pathToFileURL(WORDS).href, external: true}));
  },
};
