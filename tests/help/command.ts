/** Runs the command in this very process, without what a terminal or a pipe adds. */
import {main} from '../../src/cli/main.js';

export interface Ran {
  readonly code: number;
  /** The report. */
  readonly out: string;
  /** What was said apart from it; nothing of how far a long run has come, which only a terminal shows. */
  readonly err: string;
}

export async function ran(...words: readonly string[]): Promise<Ran> {
  let [out, err] = ['', ''];
  const code = await main(words, {
    report: (text) => {
      out += text;
    },
    aside: (text) => {
      err += text;
    },
    progress: () => undefined,
  });
  return {code, out, err};
}
