/** The words of the command line and their help. The code of a command is loaded only when it runs. */
import {Command, InvalidArgumentError, Option} from 'commander';
import type {ListName} from '../sheet/list-tables.js';
import {nearest} from '../text/nearest.js';
import {printable} from '../text/printable.js';
import type {CheckOptions} from './check.js';
import type {CompareOptions} from './compare.js';
import type {Exit} from './exit.js';
import type {KnownOptions} from './known.js';
import type {ListsOptions} from './lists.js';
import type {MergeOptions} from './merge.js';
import type {ReadingsOptions} from './readings.js';
import type {SheetCommandOptions} from './sheet.js';
import {sliceWord} from './slice.js';
import {stopOnWord} from './stop-on.js';
import type {Streams} from './streams.js';
import {version} from './version.js';

/** The whole command; `done` is told the exit status of the part that ran. */
export function programFor(streams: Streams, done: (exit: Exit) => void): Command {
  const program = new Command('wmark')
    .description('Checks engine rebuild procedures against a specification and compiles them to sheets.')
    .version(version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'explain the command')
    .helpCommand('help [command]', 'explain a command')
    .addHelpText('after', PROGRAM_HELP)
    .configureOutput({
      writeOut: streams.report,
      writeErr: streams.aside,
      // It quotes the words that were given, which a script may have from a stranger.
      outputError: (text, write) =>
        write(
          text
            .replace(/^error: /, 'wmark: ')
            .split('\n')
            .map(printable)
            .join('\n'),
        ),
    })
    .exitOverride();
  const commands = [
    ...[addCheck, addMerge, addKnown, addCompare, addSheet, addReadings, addStory, addCoverage, addLists],
    ...[addFigure, addTidy, addAdopt, addEditor, addWhy, addBegin],
  ];
  for (const add of commands) add(program, streams, done);
  return program;
}

type Add = (program: Command, streams: Streams, done: (exit: Exit) => void) => void;

const addCheck: Add = (program, streams, done) => {
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
    .addOption(new Option('--slice <k/n>', 'only one of n shares of the books').argParser(sliceWord))
    .option('--cache <dir>', "keep answers there instead of in the user's cache folder")
    .option('--no-cache', 'read and check every book anew')
    .addHelpText('after', CHECK_HELP)
    .action(async (paths: string[], options: CheckOptions) => {
      const {check} = await import('./check.js');
      done(await check(paths, options, streams));
    });
};

const addMerge: Add = (program, streams, done) => {
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

const addKnown: Add = (program, streams, done) => {
  program
    .command('known')
    .summary('write down findings that are let stand for now')
    .description('Adds all findings to a list of known ones, and strikes off those that are settled.')
    .argument('<file>', 'the list: known.yaml; made where there is none')
    .argument('[path...]', 'folders or procedures', ['.'])
    .requiredOption('--because <reason>', 'why those that are added are let stand')
    .requiredOption('--owner <name>', 'who answers for them')
    .addHelpText('after', KNOWN_HELP)
    .action(async (file: string, paths: string[], options: KnownOptions) => {
      const {known} = await import('./known.js');
      done(await known(file, paths, options, streams));
    });
};

const addCompare: Add = (program, streams, done) => {
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
      'exit status 1 on: weakened, error, warning; can be repeated',
      stopOnWord(['weakened', 'error', 'warning']),
    )
    .addHelpText('after', COMPARE_HELP)
    .action(async (paths: string[], options: CompareOptions) => {
      const {compare} = await import('./compare.js');
      done(await compare(paths, options, streams));
    });
};

const addSheet: Add = (program, streams, done) => {
  program
    .command('sheet')
    .summary('compile books to the sheets that the apprentice follows')
    .description(
      'Writes the cover of each book and a sheet for each procedure, files that need nothing else.',
    )
    .argument('[path...]', 'folders or procedures', ['.'])
    .requiredOption('--out <dir>', 'folder to write to; made where there is none')
    .addOption(
      new Option('--as <form>', 'form of the sheets; "both" is HTML and PDF')
        .choices(['html', 'pdf', 'both', 'markdown'])
        .default('html'),
    )
    .addOption(new Option('--paper <size>', "paper, instead of the shop's own").choices(['A4', 'Letter']))
    .addOption(jobOption())
    .addOption(
      new Option('--language <tag>', "language of the printed words, instead of the shop's own").choices([
        'en',
        'de',
      ]),
    )
    .option('--even-with-errors', 'write the sheets of a book even if the check finds errors in it')
    .addHelpText('after', SHEET_HELP)
    .action(async (paths: string[], options: SheetCommandOptions) => {
      const {sheet} = await import('./sheet.js');
      done(await sheet(paths, options, streams));
    });
};

const addReadings: Add = (program, streams, done) => {
  program
    .command('readings')
    .summary('judge records of builds against the sheets that they answer')
    .description('Says what is out, near a limit, missing or wrongly signed in records that sheets exported.')
    .argument('<record...>', 'files that a sheet exported, NUMBER.record.json')
    .option('--book <path>', 'folder in or below which the book of the engine lies', '.')
    .addOption(
      new Option('--as <form>', 'form of the report')
        .choices(['text', 'json', 'csv', 'html', 'pdf'])
        .default('text'),
    )
    .option('--out <file>', 'file to write the report to, instead of standard output')
    .addOption(
      new Option('--paper <size>', "paper of a PDF, instead of the shop's own").choices(['A4', 'Letter']),
    )
    .option('--even-if-changed', 'judge by the book as it is now, where it changed since the sheet was made')
    .addHelpText('after', READINGS_HELP)
    .action(async (records: string[], options: ReadingsOptions) => {
      const {readings} = await import('./readings.js');
      done(await readings(records, options, streams));
    });
};

const addStory: Add = (program, streams, done) => {
  program
    .command('story')
    .summary('tell the life of one item through the build')
    .description('Prints every step that set or undid a fact of one item, and how it stands at the end.')
    .argument('<item>', 'id of an item of the specification')
    .argument('[path...]', 'folders', ['.'])
    .addOption(new Option('--as <form>', 'form of the report').choices(['text', 'json']).default('text'))
    .addOption(jobOption())
    .addHelpText('after', STORY_HELP)
    .action(async (item: string, paths: string[], options: {as: 'text' | 'json'; job?: string}) => {
      const {story} = await import('./story.js');
      done(await story(item, paths, options, streams));
    });
};

const addCoverage: Add = (program, streams, done) => {
  program
    .command('coverage')
    .summary('show which steps deal with each item')
    .description('Tables every item and place of the specification against the steps that deal with it.')
    .argument('[path...]', 'folders', ['.'])
    .addOption(
      new Option('--as <form>', 'form of the table')
        .choices(['text', 'markdown', 'json', 'html'])
        .default('text'),
    )
    .addOption(jobOption())
    .addHelpText('after', COVERAGE_HELP)
    .action(async (paths: string[], options: {as: 'text' | 'markdown' | 'json' | 'html'; job?: string}) => {
      const {coverage} = await import('./coverage.js');
      done(await coverage(paths, options, streams));
    });
};

const addLists: Add = (program, streams, done) => {
  program
    .command('lists')
    .summary('list the tools, consumables, parts, torques and time of a build')
    .description(
      'Lists what books, or one engine on the stand, take: tools, consumables, parts, torques, time.',
    )
    .argument('[path...]', 'folders or procedures', ['.'])
    .addOption(
      new Option('--as <form>', 'form of the lists')
        .choices(['text', 'markdown', 'csv', 'html', 'json'])
        .default('text'),
    )
    .addOption(new Option('--list <names>', 'only some: torques,time').argParser(listNames))
    .addOption(jobOption())
    .addHelpText('after', LISTS_HELP)
    .action(async (paths: string[], options: ListsOptions) => {
      const {lists} = await import('./lists.js');
      done(await lists(paths, options, streams));
    });
};

const addFigure: Add = (program, streams, done) => {
  program
    .command('figure')
    .summary('work out a figure of the trade: torques, clearances, fits, gaps')
    .description('Works out a figure and says its formula, inputs, band and source. Units are required.')
    .usage('[subject] [--option value]...')
    .argument('[words...]', 'a subject that `wmark figure` lists, and its options')
    .helpOption(false)
    .allowUnknownOption()
    .addHelpText('after', FIGURE_HELP)
    .action(async (words: string[]) => {
      const {figure} = await import('./figure.js');
      done(await figure(words, streams));
    });
};

const addEditor: Add = (program, _streams, done) => {
  program
    .command('editor')
    .summary('serve an editor: findings while typing, completion, fixes')
    .description(
      'Speaks the Language Server Protocol over standard input and output. An editor starts it; it is of no use by hand.',
    )
    .addOption(new Option('--stdio', 'as some editors say of themselves; there is no other way').hideHelp())
    .addHelpText('after', EDITOR_HELP)
    .action(async () => {
      const {editor} = await import('./editor.js');
      done(await editor());
    });
};

const addTidy: Add = (program, streams, done) => {
  program
    .command('tidy')
    .summary('bring tags and step numbers into one form')
    .description(
      'Spells every tag, and numbers every step, in one form. The prose, the values and the sheet stay as they are.',
    )
    .argument('[path...]', 'folders or procedures', ['.'])
    .option('--fix', 'also make the fixes that change only how a thing is written')
    .option('--check', 'change nothing; say what would be changed, with exit status 1')
    .option('--show', 'show the lines that change, before and after')
    .addHelpText('after', TIDY_HELP)
    .action(async (paths: string[], options: {fix?: true; check?: true; show?: true}) => {
      const {tidy} = await import('./tidy.js');
      done(await tidy(paths, options, streams));
    });
};

const addAdopt: Add = (program, streams, done) => {
  program
    .command('adopt')
    .summary('make a tagged draft of a plain procedure')
    .description(
      'Proposes tags for the prose of an untagged procedure, and lists what the specification still asks for.',
    )
    .argument('<file>', 'a procedure in Markdown, its steps in numbered lists')
    .option('--engine <file>', 'the engine.yaml to go by, instead of that of the book above')
    .option('--out <file>', 'write the draft there instead of to standard output')
    .option('--replace', 'let --out take the place of a file that is there')
    .addHelpText('after', ADOPT_HELP)
    .action(async (file: string, options: {engine?: string; out?: string; replace?: true}) => {
      const {adopt} = await import('./adopt.js');
      done(await adopt(file, options, streams));
    });
};

const addWhy: Add = (program, streams, done) => {
  program
    .command('why')
    .summary('explain a finding, or list them all')
    .description('Explains a finding: what it means, why it matters, wrong and right, how to silence it.')
    .argument('[name]', 'name of a finding, as it stands in brackets at the end of a line of the check')
    .addHelpText('after', WHY_HELP)
    .action(async (name: string | undefined) => {
      const {why} = await import('./why.js');
      done(await why(name, streams));
    });
};

const addBegin: Add = (program, streams, done) => {
  program
    .command('begin')
    .summary('write a small book to start from')
    .description('Writes a small book with comments for a beginner: shop.yaml, engine.yaml, two procedures.')
    .argument('<dir>', 'a folder that is empty or not there yet')
    .addHelpText('after', BEGIN_HELP)
    .action(async (folder: string) => {
      const {begin} = await import('./begin.js');
      done(await begin(folder, streams));
    });
};

const LIST_NAMES = ['tools', 'consumables', 'parts', 'new-parts', 'torques', 'time'] as const;

function listNames(given: string): readonly ListName[] {
  return given.split(',').map((one) => {
    const name = LIST_NAMES.find((known) => known === one.trim());
    if (name !== undefined) return name;
    const near = nearest(one.trim(), LIST_NAMES);
    const meant = near === undefined ? '' : `Did you mean ${near}? `;
    throw new InvalidArgumentError(`${meant}The lists are ${LIST_NAMES.join(', ')}.`);
  });
}

function checkForm(): Option {
  return new Option('--as <form>', 'form of the report')
    .choices(['text', 'json', 'sarif', 'annotations', 'junit'])
    .default('text');
}

/** A fresh one for each command that takes it. */
function jobOption(): Option {
  return new Option('--job <number>', 'for one engine on the stand, of jobs/*.yaml, or for all of them');
}

const PROGRAM_HELP = `
Examples:
  wmark begin my-engine                 write a small book to start from
  wmark check my-engine                 check it
  wmark sheet my-engine --out out       write its sheets below out/
  wmark why left-slack                  explain a finding

Exit status:
  0  no error found       1  errors found
  2  could not run        3  a fault of wmark itself`;

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

const SHEET_HELP = `
Examples:
  wmark sheet engines/four --out out    out/<engine>/index.html is the cover
  wmark sheet --out out --paper Letter  every book in this folder and below
  wmark sheet --as pdf --out out        for a printer: PDF/UA-1, A4 or Letter, both sides
  wmark sheet --job OF-2041 --out out   out/<engine>/OF-2041: for one engine on the stand
  wmark sheet --job all --out out       for each of them

A sheet is followed to the letter, so while the check finds errors in a book none of it is written, unless
you say --even-with-errors.`;

const READINGS_HELP = `
Examples:
  wmark readings 1204.record.json                      judge one build
  wmark readings --book engines/four records/*.json    several, and the spread of each fit over them
  wmark readings --as html 1204.record.json > 1204.html    a build report to print
  wmark readings --as pdf --out 1204.pdf 1204.record.json  the same as PDF
  wmark readings --as csv records/*.json > readings.csv    for a spreadsheet

Files of one job (or, without a job, of one engine number) are put together. Exit status 1 where anything is
out, missing, wrongly signed or altered.`;

const STORY_HELP = `
Example:
  wmark story main-cap-bolts engines/four`;

const COVERAGE_HELP = `
Examples:
  wmark coverage engines/four
  wmark coverage --as html > coverage.html

Exit status 1 where something that must be done is missing.`;

const LISTS_HELP = `
Examples:
  wmark lists engines/four                              everything, as text
  wmark lists engines/four --list torques,time          the torque table and the time plan
  wmark lists --job OF-2041 --as csv > OF-2041.csv      for one engine on the stand, for a spreadsheet
  wmark lists --as html > lists.html

4 · 7–9, 12 are steps of the fourth procedure of the build.`;

const FIGURE_HELP = `
Examples:
  wmark figure                          list the subjects with an example each
  wmark figure adapter                  explain the options of one
  wmark figure adapter --torque "85 lbf·ft" --wrench "18 in" --adapter "3 in"`;

const EDITOR_HELP = `
Example, for an editor's settings:
  command: wmark editor                 for Markdown and YAML files`;

const TIDY_HELP = `
Examples:
  wmark tidy                            every book in this folder and below
  wmark tidy --check engines/four       for a pipeline: what would change
  wmark tidy --fix --show 03-crank.md   one procedure, with the fixes that are mere spelling

A file is written whole or not at all, and not where it changed meanwhile. What a fix would change in a value,
an item, an order or a caution is left to you: \`wmark check\` names it.`;

const ADOPT_HELP = `
Examples:
  wmark adopt old/oil-pump.md --engine engines/four/engine.yaml --out engines/four/07-oil-pump.md
  wmark adopt engines/four/plain.md > draft.md

A tag that is sure is written behind its step. One that is not stands there with a question mark, as
\`? torque: sump-screws\`, which no check takes for a tag: take the question mark away, or the whole of it.
It is a draft: read every step before anybody works by it.`;

const WHY_HELP = `
Examples:
  wmark why                             list every finding
  wmark why clean-first                 explain one`;

const BEGIN_HELP = `
Example:
  wmark begin my-engine && wmark check my-engine`;
