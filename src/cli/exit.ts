/** What the exit status of the command means, and the net under it. */
import {printable} from '../text/printable.js';
import type {Streams} from './streams.js';

/** The README promises these: pipelines go by them. */
export const EXIT = {
  /** Ran, and found no error. */
  clean: 0,
  /** Ran, and found errors. */
  errors: 1,
  /** Could not run: a wrong word on the command line, a file that can't be read or written. */
  unable: 2,
  /** A fault of the tool itself. */
  fault: 3,
} as const;

export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** Runs a command; whatever it throws is a fault of the tool and is said in one message. */
export async function guarded(command: () => Promise<Exit>, {aside}: Pick<Streams, 'aside'>): Promise<Exit> {
  try {
    return await command();
  } catch (error) {
    const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
    const lines = what.split('\n').slice(0, STACK_LINES).map(printable);
    aside(`wmark: this is a fault of wmark itself, not of your files; please report it with these lines:\n`);
    aside(`${lines.join('\n')}\n`);
    return EXIT.fault;
  }
}

/** The message and where it came from; the rest of the stack seldom says more. */
const STACK_LINES = 6;
