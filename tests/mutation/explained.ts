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
];

export function explanationOf(found: Omit<Explained, 'because'>): Explained | undefined {
  const keys = ['file', 'line', 'code', 'becomes'] as const;
  return EXPLAINED.find((one) => keys.every((key) => one[key] === found[key]));
}
