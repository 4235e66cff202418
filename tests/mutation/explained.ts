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

const FACTS = 'src/build/facts.ts';
const STRYKERS = '"Stryker was here!"';

export const EXPLAINED: readonly Explained[] = [
  {
    file: FACTS,
    line: "const [kind, item = '', ...place] = key.split(' ');",
    code: "''",
    becomes: STRYKERS,
    because: 'every key has an item; the default is for the compiler',
  },
  {
    file: FACTS,
    line: "const [own, item = '', ...place] = key.split(' ');",
    code: "''",
    becomes: STRYKERS,
    because: 'every key has an item; the default is for the compiler',
  },
  {
    file: FACTS,
    line: "const [key, before] = this.#journal.pop() ?? ['', undefined];",
    code: "['', undefined]",
    becomes: '[]',
    because: 'the loop runs only while the journal has an entry; the default is for the compiler',
  },
  {
    file: FACTS,
    line: "const [key, before] = this.#journal.pop() ?? ['', undefined];",
    code: "''",
    becomes: STRYKERS,
    because: 'the loop runs only while the journal has an entry; the default is for the compiler',
  },
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
