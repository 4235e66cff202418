/** Runs the command that the words of the command line ask for. */
import {CommanderError} from 'commander';
import {disarmed} from '../text/printable.js';
import {EXIT, type Exit, guarded} from './exit.js';
import {programFor} from './program.js';
import {type Streams, standardStreams} from './streams.js';

/** Gives the exit status; never throws. */
export async function main(words: readonly string[], streams: Streams = standardStreams()): Promise<Exit> {
  const safe = disarming(streams);
  return guarded(() => dispatch(words, safe), safe);
}

/** The last net: what is printed may be a stranger's text, in a form that its maker took for safe. */
function disarming({report, aside, progress}: Streams): Streams {
  return {
    report: (text) => report(disarmed(text)),
    aside: (text) => aside(disarmed(text)),
    progress: (text) => progress(disarmed(text)),
  };
}

async function dispatch(words: readonly string[], streams: Streams): Promise<Exit> {
  let exit: Exit = EXIT.clean;
  const program = programFor(streams, (status) => {
    exit = status;
  });
  if (words.length === 0) {
    streams.aside(program.helpInformation());
    return EXIT.unable;
  }
  try {
    await program.parseAsync(words, {from: 'user'});
    return exit;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? EXIT.clean : EXIT.unable;
  }
}
