/**
 * `npm run omissions`: every single fault in every clean book, caught or not, by kind; every miss listed. Words behind
 * `--` choose kinds that hold one of them: `npm run omissions -- torque 'drop a tag'`.
 */
import type {Book} from '../../src/build/book.js';
import {loadBook} from '../../src/host/load.js';
import type {Job} from '../../src/spec/job.js';
import {excuse} from './excuses.js';
import {generatedClean} from './generated.js';
import {faultsOf, type Tally, tallies} from './run.js';

const BOOKS = ['procedures/ottermouth-four', 'procedures/fjordholm/twin'];
const SEEDS = [1, 2, 3];

const words = process.argv.slice(2);
const all = new Map<string, Tally>();
for (const folder of BOOKS) {
  const loaded = await loadBook(folder);
  if (!loaded.ok) throw new Error(`${folder}: ${loaded.says}`);
  add(folder, talliesOf(loaded.book, loaded.jobs));
}
for (const seed of SEEDS) add(`generated book ${seed}`, talliesOf(generatedClean(seed, 30)));
print('all books', [...all.values()]);
process.exitCode = [...all.values()].some(({misses}) => misses.length > 0) ? 1 : 0;

function talliesOf(book: Book, jobs: readonly Job[] = []): Tally[] {
  const chosen = faultsOf(book).filter(
    ({kind}) => words.length === 0 || words.some((word) => kind.includes(word)),
  );
  return tallies(book, excuse, chosen, jobs);
}

function add(title: string, some: readonly Tally[]): void {
  print(title, some);
  for (const tally of some) {
    const sum = all.get(tally.kind) ?? {
      kind: tally.kind,
      made: 0,
      caught: 0,
      excused: 0,
      findings: 0,
      misses: [],
    };
    sum.made += tally.made;
    sum.caught += tally.caught;
    sum.excused += tally.excused;
    sum.findings += tally.findings;
    sum.misses.push(...tally.misses);
    all.set(tally.kind, sum);
  }
}

function print(title: string, some: readonly Tally[]): void {
  console.log(`\n${title}\n`);
  console.log('| fault | made | caught | excused | missed | findings a fault |');
  console.log('| --- | ---: | ---: | ---: | ---: | ---: |');
  for (const {kind, made, caught, excused, findings, misses} of [...some, total(some)]) {
    const each = made === 0 ? 0 : findings / made;
    console.log(`| ${kind} | ${made} | ${caught} | ${excused} | ${misses.length} | ${each.toFixed(2)} |`);
  }
  for (const miss of some.flatMap(({misses}) => misses)) console.log(`missed: ${miss}`);
}

function total(some: readonly Tally[]): Tally {
  const sum = (count: (tally: Tally) => number) => some.reduce((before, tally) => before + count(tally), 0);
  return {
    kind: 'total',
    made: sum(({made}) => made),
    caught: sum(({caught}) => caught),
    excused: sum(({excused}) => excused),
    findings: sum(({findings}) => findings),
    misses: some.flatMap(({misses}) => misses),
  };
}
