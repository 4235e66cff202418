/** What the words of several commands share: the shape of a command, and options that more than one takes. */
import {type Command, Option} from 'commander';
import type {Exit} from './exit.js';
import type {Streams} from './streams.js';

/** Adds a command to the program; `done` is told the exit status when it has run. */
export type Add = (program: Command, streams: Streams, done: (exit: Exit) => void) => void;

export function checkForm(): Option {
  return new Option('--as <form>', 'form of the report')
    .choices(['text', 'json', 'sarif', 'annotations', 'junit'])
    .default('text');
}

/** A fresh one for each command that takes it. */
export function jobOption(): Option {
  return new Option('--job <number>', 'for one engine on the stand, of jobs/*.yaml, or for all of them');
}

/** No book can ask for it: code runs only where somebody said so on the command line. */
export function houseOption(): Option {
  return new Option(
    '--house <file>',
    'module with rules of your own, whose code is run; can be repeated',
  ).argParser((file: string, before: readonly string[] | undefined) => [...(before ?? []), file]);
}
