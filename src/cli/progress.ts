/** How far a long run has come, on a terminal only: one line that is written over and gone at the end. */

/** What of a stream and of the environment decides whether anybody sees the line. */
export interface Terminal {
  readonly isTTY?: boolean;
  readonly columns?: number;
  readonly write: (text: string) => unknown;
}

export interface Progress {
  /** Shows a text in place of the one before, at most ten times a second and not in the first half second. */
  readonly show: (text: string) => void;
  /** Takes it away, before anything else is printed. */
  readonly clear: () => void;
}

/** Milliseconds. What is over sooner needs no line, and nobody reads faster. */
const FIRST_AFTER = 500;
const BETWEEN = 100;

/** `now` is in milliseconds. In a pipe, in a pipeline (`CI`) and on a terminal that can't go back in a line, silent. */
export function progressOn(stream: Terminal, env: NodeJS.ProcessEnv, now: () => number): Progress {
  const isPipeline = !['', 'false', '0'].includes(env.CI ?? '');
  const isSilent = !stream.isTTY || isPipeline || env.TERM === 'dumb';
  if (isSilent) return {show: () => undefined, clear: () => undefined};
  const start = now();
  let [shown, last] = [0, start + FIRST_AFTER - BETWEEN];
  // Spaces and a carriage return need no escape sequence, so there is nothing that NO_COLOR could object to.
  const clear = () => {
    if (shown > 0) stream.write(`\r${' '.repeat(shown)}\r`);
    shown = 0;
  };
  return {
    show(text) {
      if (now() - last < BETWEEN) return;
      last = now();
      // Some terminals say that they have no columns at all.
      const line = text.slice(0, (stream.columns || 80) - 1);
      stream.write(`\r${line.padEnd(shown)}`);
      shown = Math.max(shown, line.length);
    },
    clear,
  };
}
