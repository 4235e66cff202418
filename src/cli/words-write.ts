/** The words and help of the commands that help to write books; their code is loaded when they run. */
import {Option} from 'commander';
import type {Add} from './words.js';

export const addFigure: Add = (program, streams, done) => {
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

export const addEditor: Add = (program, _streams, done) => {
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

export const addTidy: Add = (program, streams, done) => {
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

export const addAdopt: Add = (program, streams, done) => {
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

export const addBegin: Add = (program, streams, done) => {
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

const BEGIN_HELP = `
Example:
  wmark begin my-engine && wmark check my-engine`;
