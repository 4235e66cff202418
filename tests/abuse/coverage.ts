/** What parts of the program an input reached, as V8 counts them: new parts are what makes an input worth keeping. */
import {Session} from 'node:inspector/promises';

export interface Coverage {
  /** How many parts were reached since the last call that never were before. */
  fresh(): Promise<number>;
  reached(): number;
  stop(): void;
}

/** Counts blocks of scripts whose address ends so. */
export async function coverageOf(ending: string): Promise<Coverage> {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.startPreciseCoverage', {callCount: true, detailed: true});
  const seen = new Set<string>();
  return {
    async fresh() {
      const before = seen.size;
      const {result} = await session.post('Profiler.takePreciseCoverage');
      for (const {url, functions} of result) {
        if (!url.endsWith(ending)) continue;
        for (const {ranges} of functions)
          for (const {startOffset, endOffset, count} of ranges)
            if (count > 0) seen.add(`${startOffset}:${endOffset}`);
      }
      return seen.size - before;
    },
    reached: () => seen.size,
    stop: () => session.disconnect(),
  };
}
