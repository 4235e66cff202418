/** The results of the mutation tool as its reporter wrote them down (`.config/mutation/plugin.mjs`). */
import {createHash} from 'node:crypto';
import {existsSync, readFileSync} from 'node:fs';
import {explanationOf} from './explained.js';

interface Position {
  readonly line: number;
  readonly column: number;
}

export interface Result {
  readonly key: string;
  /** Digest of the text that it was found in. */
  readonly text: string;
  readonly status: 'Killed' | 'Survived' | 'NoCoverage' | 'Timeout' | 'RuntimeError' | 'Ignored';
  readonly location: {readonly start: Position; readonly end: Position};
  readonly mutatorName: string;
  readonly replacement: string;
}

export interface FileResults {
  readonly file: string;
  /** Mutants that the tool makes of the file, whether tried or not; static ones not counted. */
  readonly made: number;
  readonly results: readonly Result[];
}

/** The last result of each mutant of the file as it stands now. */
export function resultsIn(file: string): FileResults {
  const path = `.cache/mutation/${file}.jsonl`;
  const lines = existsSync(path) ? readFileSync(path, 'utf8').split('\n').filter(Boolean) : [];
  const now = digestOf(file);
  const known = lines.map((line): Result & {made?: number} => JSON.parse(line));
  const current = known.filter(({text}) => text === now);
  const last = new Map(current.filter(({key}) => key !== 'all').map((result) => [result.key, result]));
  const made = current.findLast(({key}) => key === 'all')?.made ?? 0;
  const results = [...last.values()].filter(({status}) => status !== 'Ignored');
  return {file, made, results};
}

/** Results belong to a text: after an edit of the file they count no more. */
export function digestOf(file: string): string {
  return createHash('sha256').update(readFileSync(file, 'utf8')).digest('hex').slice(0, 16);
}

/** What the mutant changes, from the text of its file. */
export function changed(lines: readonly string[], {location: {start, end}}: Result): string {
  const within = lines.slice(start.line - 1, end.line);
  const last = within.length - 1;
  return within
    .map((line, index) =>
      line.slice(index === 0 ? start.column - 1 : 0, index === last ? end.column - 1 : undefined),
    )
    .join('\n');
}

export function isExplained(file: string, lines: readonly string[], result: Result): boolean {
  const line = lines[result.location.start.line - 1]?.trim() ?? '';
  const found = {file, line, code: changed(lines, result), becomes: result.replacement};
  return explanationOf(found) !== undefined;
}
