/**
 * `npm run mutation`: changes one thing at a time in calculations, ledger and findings, and sees whether a test
 * notices. Results are kept in `.cache/mutation`, so a run goes on where the last one stopped; at its end stands a
 * table of all results there are. `npm run mutation -- src/build/flow.ts --sample 0.5 --minutes 9`; `--again` tries
 * once more what survived, `--tests a.test.ts,b.test.ts` the same by those alone, which starts in seconds; `--list`
 * lists what survived, `--table` prints the table alone; both run nothing.
 */
import {parseArgs} from 'node:util';
import {Stryker} from '@stryker-mutator/core';
import {digestOf} from './results.js';
import {filesOf, LEFT_OUT, SCOPES, type Scope, testsOf} from './scope.js';
import {listed, table} from './table.js';

const {values, positionals} = parseArgs({
  args: process.argv.slice(2),
  allowPositionals: true,
  options: {
    sample: {type: 'string', default: '1'},
    seed: {type: 'string', default: '1'},
    minutes: {type: 'string'},
    again: {type: 'boolean', default: false},
    tests: {type: 'string'},
    list: {type: 'boolean', default: false},
    table: {type: 'boolean', default: false},
  },
});
const some = values.tests?.split(',');
const paths = positionals.map((path) => path.replace(/\/$/, ''));

if (values.list || values.table) {
  console.log(values.list ? listed(paths) : table(paths));
} else {
  // Every result is written down at once, so that nothing is lost when the time is over.
  if (values.minutes !== undefined) setTimeout(finish, Number(values.minutes) * 60_000).unref();
  for (const scope of SCOPES) {
    for (const files of batches(filesOf(scope, paths))) await mutate(scope, files);
  }
  finish();
}

function finish(): never {
  console.log(table(paths));
  // Ends the workers too, and takes their copy of the tree away.
  process.exit();
}

/** So many at once that which test reaches what of them still fits into one text. */
function batches(files: readonly string[]): string[][] {
  const most = 80;
  const begins = Array.from({length: Math.ceil(files.length / most)}, (_, index) => index * most);
  return begins.map((begin) => files.slice(begin, begin + most));
}

async function mutate(scope: Scope, files: string[]): Promise<void> {
  await new Stryker({
    configFile: '.config/mutation/stryker.config.mjs',
    mutate: files,
    witnessMark: {
      root: process.cwd(),
      // As they are now: an edit while it runs must not take the results to itself.
      texts: Object.fromEntries(files.map((file) => [file, digestOf(file)])),
      tests: some ?? testsOf(scope),
      without: LEFT_OUT,
      // What some tests let pass may be known to another: they try nothing for the first time.
      sample: some === undefined ? Number(values.sample) : 0,
      seed: values.seed,
      again: values.again || some !== undefined ? ['Survived', 'NoCoverage', 'Timeout'] : [],
    },
  }).runMutationTest();
}
