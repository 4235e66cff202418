/** Where a command writes: its report, and apart from it whatever is said on the way. */
import {progressOn} from './progress.js';

export interface Streams {
  /** The report, and nothing else, so that it can be piped. */
  readonly report: (text: string) => void;
  /** Failures, advice. */
  readonly aside: (text: string) => void;
  /** How far it has come: seen on a terminal, for as long as nothing else is said; an empty text takes it away. */
  readonly progress: (text: string) => void;
}

/** Standard output and standard error. A reader that goes away early (`| head`) is no fault. */
export function standardStreams(): Streams {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
    });
  }
  const line = progressOn(process.stderr, process.env, Date.now);
  const saying = (stream: NodeJS.WriteStream) => (text: string) => {
    line.clear();
    stream.write(text);
  };
  return {
    report: saying(process.stdout),
    aside: saying(process.stderr),
    progress: (text) => (text === '' ? line.clear() : line.show(text)),
  };
}
