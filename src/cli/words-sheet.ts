/** The words and help of the commands that print books and read records back; their code is loaded when they run. */
import {InvalidArgumentError, Option} from 'commander';
import {LIST_NAMES, type ListName} from '../sheet/list-model.js';
import {LANGUAGE_TAGS, PAPERS} from '../spec/model.js';
import {nearest} from '../text/nearest.js';
import type {ListsOptions} from './lists.js';
import type {ReadingsOptions} from './readings.js';
import type {SheetCommandOptions} from './sheet.js';
import {type Add, houseOption, jobOption} from './words.js';

export const addSheet: Add = (program, streams, done) => {
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
    .addOption(new Option('--paper <size>', "paper, instead of the shop's own").choices(PAPERS))
    .addOption(jobOption())
    .addOption(
      new Option('--language <tag>', "language of the printed words, instead of the shop's own").choices(
        LANGUAGE_TAGS,
      ),
    )
    .option('--even-with-errors', 'write the sheets of a book even if the check finds errors in it')
    .addOption(houseOption())
    .addHelpText('after', SHEET_HELP)
    .action(async (paths: string[], options: SheetCommandOptions) => {
      const {sheet} = await import('./sheet.js');
      done(await sheet(paths, options, streams));
    });
};

export const addReadings: Add = (program, streams, done) => {
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
    .addOption(new Option('--paper <size>', "paper of a PDF, instead of the shop's own").choices(PAPERS))
    .option('--even-if-changed', 'judge by the book as it is now, where it changed since the sheet was made')
    .addHelpText('after', READINGS_HELP)
    .action(async (records: string[], options: ReadingsOptions) => {
      const {readings} = await import('./readings.js');
      done(await readings(records, options, streams));
    });
};

export const addStory: Add = (program, streams, done) => {
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

export const addCoverage: Add = (program, streams, done) => {
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

export const addLists: Add = (program, streams, done) => {
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

function listNames(given: string): readonly ListName[] {
  return given.split(',').map((one) => {
    const name = LIST_NAMES.find((known) => known === one.trim());
    if (name !== undefined) return name;
    const near = nearest(one.trim(), LIST_NAMES);
    const meant = near === undefined ? '' : `Did you mean ${near}? `;
    throw new InvalidArgumentError(`${meant}The lists are ${LIST_NAMES.join(', ')}.`);
  });
}

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
