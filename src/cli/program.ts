/** The words of the command line and their help. The code of a command is loaded only when it runs. */
import {Command, Option} from 'commander';
import type {Exit} from './exit.js';
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
      outputError: (text, write) => write(text.replace(/^error: /, 'wmark: ')),
    })
    .exitOverride();
  for (const add of [
    addCheck,
    addSheet,
    addStory,
    addCoverage,
    addFigure,
    addTidy,
    addEditor,
    addWhy,
    addBegin,
  ])
    add(program, streams, done);
  return program;
}

type Add = (program: Command, streams: Streams, done: (exit: Exit) => void) => void;

const addCheck: Add = (program, streams, done) => {
  program
    .command('check')
    .summary('check books or single procedures')
    .description('Checks books (folders with engine.yaml, at or below each path) or single procedures.')
    .argument('[path...]', 'folders or procedures', ['.'])
    .addOption(new Option('--as <form>', 'form of the report').choices(['text', 'json']).default('text'))
    .addHelpText('after', CHECK_HELP)
    .action(async (paths: string[], options: {as: 'text' | 'json'}) => {
      const {check} = await import('./check.js');
      done(await check(paths, options, streams));
    });
};

const addSheet: Add = (program, streams, done) => {
  program
    .command('sheet')
    .summary('compile books to the sheets that the apprentice follows')
    .description(
      'Writes the cover of each book and a sheet for each procedure, HTML files that need nothing else.',
    )
    .argument('[path...]', 'folders or procedures', ['.'])
    .requiredOption('--out <dir>', 'folder to write to; made where there is none')
    .addOption(new Option('--paper <size>', "paper, instead of the shop's own").choices(['A4', 'Letter']))
    .option('--even-with-errors', 'write the sheets of a book even if the check finds errors in it')
    .addHelpText('after', SHEET_HELP)
    .action(
      async (paths: string[], options: {out: string; paper?: 'A4' | 'Letter'; evenWithErrors?: true}) => {
        const {sheet} = await import('./sheet.js');
        done(await sheet(paths, options, streams));
      },
    );
};

const addStory: Add = (program, streams, done) => {
  program
    .command('story')
    .summary('tell the life of one item through the build')
    .description('Prints every step that set or undid a fact of one item, and how it stands at the end.')
    .argument('<item>', 'id of an item of the specification')
    .argument('[path...]', 'folders', ['.'])
    .addOption(new Option('--as <form>', 'form of the report').choices(['text', 'json']).default('text'))
    .addHelpText('after', STORY_HELP)
    .action(async (item: string, paths: string[], options: {as: 'text' | 'json'}) => {
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
    .addHelpText('after', COVERAGE_HELP)
    .action(async (paths: string[], options: {as: 'text' | 'markdown' | 'json' | 'html'}) => {
      const {coverage} = await import('./coverage.js');
      done(await coverage(paths, options, streams));
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
  wmark check --as json > report.json   for programs; schemas/check.schema.json describes it

Each finding is one line, file:line:column: severity: message  [name], with its story indented below it.`;

const SHEET_HELP = `
Examples:
  wmark sheet engines/four --out out    out/<engine>/index.html is the cover
  wmark sheet --out out --paper Letter  every book in this folder and below

A sheet is followed to the letter, so while the check finds errors in a book none of it is written, unless
you say --even-with-errors.`;

const STORY_HELP = `
Example:
  wmark story main-cap-bolts engines/four`;

const COVERAGE_HELP = `
Examples:
  wmark coverage engines/four
  wmark coverage --as html > coverage.html

Exit status 1 where something that must be done is missing.`;

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

const WHY_HELP = `
Examples:
  wmark why                             list every finding
  wmark why clean-first                 explain one`;

const BEGIN_HELP = `
Example:
  wmark begin my-engine && wmark check my-engine`;
