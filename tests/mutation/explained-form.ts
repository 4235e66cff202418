/** What is said of a mutant that no test can kill. */
export interface Explained {
  readonly file: string;
  /** The line that it begins in, without the white space around it. */
  readonly line: string;
  /** What is changed of it, and into what. */
  readonly code: string;
  readonly becomes: string;
  readonly because: string;
}

/** Those of one file that have one reason, by line. */
export function explained(
  file: string,
  because: string,
  lines: Readonly<Record<string, readonly (readonly [code: string, becomes: string])[]>>,
): Explained[] {
  return Object.entries(lines).flatMap(([line, changes]) =>
    changes.map(([code, becomes]) => ({file, line, code, becomes, because})),
  );
}
