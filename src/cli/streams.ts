/** Where a command writes: its report, and apart from it whatever is said on the way. */

export interface Streams {
  /** The report, and nothing else, so that it can be piped. */
  readonly report: (text: string) => void;
  /** Progress, failures, advice. */
  readonly aside: (text: string) => void;
}

/** Standard output and standard error. A reader that goes away early (`| head`) is no fault. */
export function standardStreams(): Streams {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
    });
  }
  return {
    report: (text) => void process.stdout.write(text),
    aside: (text) => void process.stderr.write(text),
  };
}
