/** Mutants that no test can kill, each with the reason; `explained.test.ts` sees that their lines still stand there. */

export interface Explained {
  readonly file: string;
  /** The line that it begins in, without the white space around it. */
  readonly line: string;
  /** What is changed of it, and into what. */
  readonly code: string;
  readonly becomes: string;
  readonly because: string;
}

const STRYKERS = '"Stryker was here!"';

export const EXPLAINED: readonly Explained[] = [
  {
    file: 'src/build/relations.ts',
    line: "values(between).flatMap((id) => [id, ...(owner.has(id) ? [owner.get(id) ?? ''] : [])]),",
    code: "''",
    becomes: STRYKERS,
    because: 'asked only of an id that has an owner; the default is for the compiler',
  },
  {
    file: 'src/findings/sentences.ts',
    line: "return capital ? before?.text !== 'no' && before?.text !== 'fig' : !ABBREVIATIONS.has(before?.text ?? '');",
    code: "''",
    becomes: STRYKERS,
    because: 'where no word stands before, either text is no abbreviation',
  },
  {
    file: 'src/trade/cold-steel.ts',
    line: 'if (warmest === undefined) return undefined;',
    code: 'warmest === undefined',
    becomes: 'false',
    because: 'the table is not empty; the question is for the compiler',
  },
  {
    file: 'src/trade/compression-ratio.ts',
    line: 'return ratio > 3 - 1e-6 && ratio < 30 + 1e-6;',
    code: 'ratio < 30 + 1e-6',
    becomes: 'ratio <= 30 + 1e-6',
    because: 'the margin takes up the last figures of a ratio; none stands on its end',
  },
  {
    file: 'src/trade/cotter-pin.ts',
    line: 'const bolt = COTTER_FOR_BOLT.find((row) => thread && Math.abs(inches(thread.diameter) - row.inches) < 1e-4);',
    code: 'Math.abs(inches(thread.diameter) - row.inches) < 1e-4',
    becomes: 'Math.abs(inches(thread.diameter) - row.inches) <= 1e-4',
    because: 'sizes of bolts stand farther apart than that, and none is off by just as much',
  },
  {
    file: 'src/trade/safety-wire.ts',
    line: 'const largest = WIRE_SIZES.findLast((wire) => wire < size - 1e-9);',
    code: 'wire < size - 1e-9',
    becomes: 'wire <= size - 1e-9',
    because: 'the margin takes up the last figures of a conversion; no wire stands on its end',
  },
  {
    file: 'src/trade/task-graph.ts',
    line: 'for (const {id, after} of tasks) for (const one of new Set(after)) waiting.get(one)?.push(id);',
    code: 'waiting.get(one)?.push',
    becomes: 'waiting.get(one).push',
    because: 'every name that is waited for has been found to be a task before',
  },
  {
    file: 'src/trade/time-plan.ts',
    line: 'return seconds < 1e-6 ? 0 : seconds;',
    code: 'seconds < 1e-6',
    becomes: 'seconds <= 1e-6',
    because: 'the margin takes up the last figures of a sum; no time stands on its end',
  },
  {
    file: 'src/trade/wire-run.ts',
    line: 'const row = TWISTS.find(({upTo}) => size <= upTo + 1e-9);',
    code: 'size <= upTo + 1e-9',
    becomes: 'size < upTo + 1e-9',
    because: 'the margin takes up the last figures of a conversion; no size stands on its end',
  },
  {
    file: 'src/trade/wire-run.ts',
    line: 'if (apart > LONGEST_SPAN + 1e-9)',
    code: 'apart > LONGEST_SPAN + 1e-9',
    becomes: 'apart >= LONGEST_SPAN + 1e-9',
    because: 'the margin takes up the last figures of a conversion; no distance stands on its end',
  },
  {
    file: 'src/trade/wrench.ts',
    line: "si(setting) < si(low) * (1 - 1e-9) ? 'below' : si(setting) > si(high) * (1 + 1e-9) ? 'above' : undefined;",
    code: 'si(setting) > si(high) * (1 + 1e-9)',
    becomes: 'si(setting) >= si(high) * (1 + 1e-9)',
    because: 'the margin takes up the last figures of a conversion; no setting stands on its end',
  },
];

export function explanationOf(found: Omit<Explained, 'because'>): Explained | undefined {
  const keys = ['file', 'line', 'code', 'becomes'] as const;
  return EXPLAINED.find((one) => keys.every((key) => one[key] === found[key]));
}
