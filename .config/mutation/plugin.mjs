/**
 * What the mutation tool takes from us: a check that lets through only the mutants which are in the sample and have
 * no result yet, and a reporter that writes each result down at once, so that a run that is stopped loses nothing.
 */
import {createHash} from 'node:crypto';
import {appendFileSync, existsSync, mkdirSync, readFileSync} from 'node:fs';
import {dirname, join, relative, resolve} from 'node:path';
import {InProcess} from './runner.mjs';

/** Where the results of one source file are kept: a JSON value a line. */
function resultsFile(root, file) {
  return join(root, '.cache', 'mutation', `${file}.jsonl`);
}

/** The last result of each mutant of the file in the text that the run began with. */
function resultsOf(root, file, now) {
  const path = resultsFile(root, file);
  const lines = existsSync(path) ? readFileSync(path, 'utf8').split('\n').filter(Boolean) : [];
  const results = lines.map((line) => JSON.parse(line)).filter(({text}) => text === now);
  return new Map(results.map((result) => [result.key, result]));
}

class Sample {
  static inject = ['options'];
  #options;
  #results = new Map();

  constructor({witnessMark}) {
    this.#options = witnessMark;
  }

  async init() {}

  /** All at once: there is nothing to compile. */
  async group(mutants) {
    return [mutants.map(({id}) => id)];
  }

  async check(mutants) {
    return Object.fromEntries(mutants.map((mutant) => [mutant.id, this.#verdict(mutant)]));
  }

  #verdict(mutant) {
    const {root, sample, seed, again, texts} = this.#options;
    const file = relative(root, resolve(root, mutant.fileName));
    if (!this.#results.has(file)) this.#results.set(file, resultsOf(root, file, texts[file]));
    const {
      location: {start, end},
    } = mutant;
    // Before the reporter counts lines and columns from 1, they count from 0.
    const key = keyOf({...mutant, location: {start: fromOne(start), end: fromOne(end)}});
    const result = this.#results.get(file).get(key);
    const due = result === undefined ? share(seed, file, key) < sample : again.includes(result.status);
    return due ? {status: 'passed'} : {status: 'compileError', reason: 'not now'};
  }
}

class Notes {
  static inject = ['options'];
  #options;

  constructor({witnessMark}) {
    this.#options = witnessMark;
  }

  /** How many there are, whether in the sample or not. */
  onMutationTestingPlanReady({mutantPlans}) {
    const made = new Map();
    for (const {mutant, plan} of mutantPlans) {
      const file = this.#fileOf(mutant.fileName);
      made.set(file, (made.get(file) ?? 0) + (plan === 'EarlyResult' && mutant.static ? 0 : 1));
    }
    for (const [file, count] of made) this.#write(file, {key: 'all', made: count});
  }

  onMutantTested({
    fileName,
    location,
    mutatorName,
    replacement,
    status,
    killedBy,
    coveredBy,
    statusReason,
    static: isStatic,
  }) {
    if (status === 'CompileError') return;
    this.#write(this.#fileOf(fileName), {
      key: keyOf({location, mutatorName, replacement}),
      status,
      location,
      mutatorName,
      replacement,
      static: isStatic === true,
      killedBy: killedBy?.[0],
      says: statusReason?.slice(0, 300),
      tests: coveredBy?.length ?? 0,
    });
  }

  #fileOf(fileName) {
    const {root} = this.#options;
    return relative(root, resolve(root, fileName));
  }

  #write(file, result) {
    const {root, texts} = this.#options;
    const path = resultsFile(root, file);
    mkdirSync(dirname(path), {recursive: true});
    appendFileSync(path, `${JSON.stringify({text: texts[file], ...result})}\n`);
  }
}

function fromOne({line, column}) {
  return {line: line + 1, column: column + 1};
}

/** What tells a mutant from every other of the same text. */
function keyOf({location: {start, end}, mutatorName, replacement}) {
  const at = [start.line, start.column, end.line, end.column].join(':');
  return `${at} ${mutatorName} ${digest(replacement ?? '')}`;
}

/** A number from 0 to below 1 that only seed and mutant decide: a greater sample holds a smaller one. */
function share(seed, file, key) {
  const hash = createHash('sha256').update(`${seed} ${file} ${key}`).digest();
  return hash.readUInt32BE(0) / 2 ** 32;
}

function digest(text) {
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}

export const strykerPlugins = [
  {kind: 'Checker', name: 'sample', injectableClass: Sample},
  {kind: 'Reporter', name: 'notes', injectableClass: Notes},
  {kind: 'TestRunner', name: 'in-process', injectableClass: InProcess},
];
