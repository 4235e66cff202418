/** The words and help of the commands that check, compare and explain; their code is loaded when they run. */
import {Option} from 'commander';
import type {CheckOptions} from './check.js';
import type {CompareOptions} from './compare.js';
import type {HouseOptions} from './house.js';
import type {KnownOptions} from './known.js';
import type {MergeOptions} from './merge.js';
import {sliceWord} from './slice.js';
import {stopOnWord} from './stop-on.js';
import {type Add, checkForm, houseOption, jobOption} from './words.js';

export const addCheck: Add = (program, streams, done) => {
  program
    .command('check')
    .summary('check books or single procedures')
    .description('Checks books (folders with engine.yaml, at or below each path) or single procedures.')
    .argument('[path...]', 'folders or procedures', ['.'])
    .addOption(checkForm())
    .option('--known <file>', 'list of known findings, which do not count; `wmark known` writes it')
    .option('--only-changed', 'only findings that touch files changed since a revision')
    .option('--since <rev>', 'the revision that --only-changed compares with')
    .option(
      '--stop-on <what>',
      'exit status 1 on this too: error (always so), warning; can be repeated',
      stopOnWord(['error', 'warning']),
    )
    .addOption(jobOption())
    .addOption(houseOption())
    .addOption(new Option('--slice <k/n>', 'only one of n shares of the books').argParser(sliceWord))
    .option('--cache <dir>', "keep answers there instead of in the user's cache folder")
    .option('--no-cache', 'read and check every book anew')
    .addHelpText('after', CHECK_HELP)
    .action(async (paths: string[], options: CheckOptions) => {
      const {check} = await import('./check.js');
      done(await check(paths, options, streams));
    });
};

export const addMerge: Add = (program, streams, done) => {
  program
    .command('merge')
    .summary('put the reports of slices together')
    .description('Puts the JSON reports of all slices of a check together to what one run would have said.')
    .argument('<report...>', 'what `wmark check --slice K/N --as json` printed, of every slice')
    .addOption(checkForm())
    .option('--known <file>', 'list of known findings, which do not count; `wmark known` writes it')
    .option(
      '--stop-on <what>',
      'exit status 1 on this too: error (always so), warning; can be repeated',
      stopOnWord(['error', 'warning']),
    )
    .addHelpText('after', MERGE_HELP)
    .action(async (reports: string[], options: MergeOptions) => {
      const {merge} = await import('./merge.js');
      done(await merge(reports, options, streams));
    });
};

export const addKnown: Add = (program, streams, done) => {
  program
    .command('known')
    .summary('write down findings that are let stand for now')
    .description('Adds all findings to a list of known ones, and strikes off those that are settled.')
    .argument('<file>', 'the list: known.yaml; made where there is none')
    .argument('[path...]', 'folders or procedures', ['.'])
    .requiredOption('--because <reason>', 'why those that are added are let stand')
    .requiredOption('--owner <name>', 'who answers for them')
    .addOption(houseOption())
    .addHelpText('after', KNOWN_HELP)
    .action(async (file: string, paths: string[], options: KnownOptions) => {
      const {known} = await import('./known.js');
      done(await known(file, paths, options, streams));
    });
};

export const addCompare: Add = (program, streams, done) => {
  program
    .command('compare')
    .summary('tell what a change means for the engine')
    .description('Compares two books, folders of books or procedures, or one with itself at a git revision.')
    .argument(
      '[path...]',
      'the old side and the new one; with --since, one path (this folder where left out)',
    )
    .option('--since <rev>', 'git revision of the old side: a branch, a tag, a commit')
    .option('--until <rev>', 'git revision of the new side; the working tree where left out')
    .addOption(
      new Option('--as <form>', 'form of the report')
        .choices(['text', 'markdown', 'json', 'sarif', 'html'])
        .default('text'),
    )
    .option(
      '--stop-on <what>',
      'exit status 1 on: weakened, changed (or weakened), error, warning; can be repeated',
      stopOnWord(['weakened', 'changed', 'error', 'warning']),
    )
    .addHelpText('after', COMPARE_HELP)
    .action(async (paths: string[], options: CompareOptions) => {
      const {compare} = await import('./compare.js');
      done(await compare(paths, options, streams));
    });
};

export const addWhy: Add = (program, streams, done) => {
  program
    .command('why')
    .summary('explain a finding, or list them all')
    .description('Explains a finding: what it means, why it matters, wrong and right, how to silence it.')
    .argument('[name]', 'name of a finding, as it stands in brackets at the end of a line of the check')
    .addOption(houseOption())
    .addHelpText('after', WHY_HELP)
    .action(async (name: string | undefined, options: HouseOptions) => {
      const {why} = await import('./why.js');
      done(await why(name, options, streams));
    });
};

const CHECK_HELP = `
Examples:
  wmark check                           every book in this folder and below
  wmark check engines/four              one book
  wmark check engines/four/03-crank.md  one procedure, within its book
  wmark check --job OF-2041             the book as it holds for one engine on the stand
  wmark check --as json > report.json   for programs; schemas/check.schema.json describes it
  wmark check --slice 2/4 --as json     the second of four shares; wmark merge puts the reports together

Each finding is one line, file:line:column: severity: message  [name], with its story indented below it.
What a book's check said is kept (XDG_CACHE_HOME/witness-mark, or --cache DIR), and told again for as long as
nothing that it hangs on has changed.`;

const MERGE_HELP = `
Examples:
  wmark check --slice 1/2 --as json engines > 1.json   on one machine
  wmark check --slice 2/2 --as json engines > 2.json   on another
  wmark merge 1.json 2.json --as sarif                 what one run over all books would have said`;

const KNOWN_HELP = `
Examples:
  wmark known known.yaml --because "old procedures, done by June" --owner "R. Tamsin"
  wmark check --known known.yaml        fails on other findings only

Findings are known again by what they mean, not by their line. schemas/known.schema.json describes the list.`;

const COMPARE_HELP = `
Examples:
  wmark compare --since main                     this folder, as it is now, with branch main
  wmark compare --since v1 --until v2 engines    two revisions
  wmark compare old/four new/four                two folders
  wmark compare --since main --as markdown       for a comment on a pull request
  wmark compare --since main --stop-on weakened  exit status 1 where something is weakened

Every change is placed by what it does to the engine: weakened, strengthened, changed (a value), or reworded.
schemas/compare.schema.json describes --as json.`;

const WHY_HELP = `
Examples:
  wmark why                             list every finding
  wmark why clean-first                 explain one`;
