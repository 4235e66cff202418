/** The words of the command line and their help. The code of a command is loaded only when it runs. */
import {Command} from 'commander';
import {printable} from '../text/printable.js';
import type {Exit} from './exit.js';
import type {Streams} from './streams.js';
import {version} from './version.js';
import {addCheck, addCompare, addKnown, addMerge, addWhy} from './words-check.js';
import {addCoverage, addLists, addReadings, addSheet, addStory} from './words-sheet.js';
import {addAdopt, addBegin, addEditor, addFigure, addTidy} from './words-write.js';

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

const PROGRAM_HELP = `
Examples:
  wmark begin my-engine                 write a small book to start from
  wmark check my-engine                 check it
  wmark sheet my-engine --out out       write its sheets below out/
  wmark why left-slack                  explain a finding

Exit status:
  0  no error found       1  errors found
  2  could not run        3  a fault of wmark itself`;
