/** What the mutation tool found, for people: a table by area, and what survived, a line each. */
import {readFileSync} from 'node:fs';
import {changed, type FileResults, isExplained, type Result, resultsIn} from './results.js';
import {filesOf, SCOPES} from './scope.js';

interface Row {
  readonly files: number;
  readonly mutants: number;
  readonly tried: number;
  readonly killed: number;
  readonly timedOut: number;
  readonly survived: number;
  readonly noCoverage: number;
  readonly explained: number;
}

/** The score counts as found what a test kills and what runs without end; an explained mutant counts as neither. */
export function table(paths: readonly string[]): string {
  const rows = new Map<string, Row[]>();
  for (const one of results(paths)) {
    const area = SCOPES.find(({folder}) => one.file.startsWith(`${folder}/`))?.folder ?? '';
    for (const name of [area, 'all']) rows.set(name, [...(rows.get(name) ?? []), rowOf(one)]);
  }
  const all = rows.get('all') ?? [];
  rows.delete('all');
  return [
    'area | files | mutants | tried | killed | timed out | survived | no test | explained | score',
    '--- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---:',
    ...[...rows, ['all', all] as const].map(([name, some]) => rowText(name, some)),
  ].join('\n');
}

export function listed(paths: readonly string[]): string {
  return results(paths)
    .flatMap(({file, results: some}) => {
      const lines = readFileSync(file, 'utf8').split('\n');
      return some
        .filter((result) => isLeft(result) && !isExplained(file, lines, result))
        .toSorted((a, b) => a.location.start.line - b.location.start.line)
        .map((result) => survivorText(file, lines, result));
    })
    .join('\n');
}

function results(paths: readonly string[]): FileResults[] {
  return SCOPES.flatMap((scope) => filesOf(scope, paths).map(resultsIn));
}

function isLeft({status}: Result): boolean {
  return status === 'Survived' || status === 'NoCoverage';
}

function rowOf({file, made, results: some}: FileResults): Row {
  const lines = readFileSync(file, 'utf8').split('\n');
  const count = (is: (result: Result) => boolean) => some.filter(is).length;
  const of = (status: Result['status']) =>
    count((one) => one.status === status && !(isLeft(one) && isExplained(file, lines, one)));
  return {
    files: 1,
    mutants: made,
    tried: some.length,
    killed: of('Killed') + of('RuntimeError'),
    timedOut: of('Timeout'),
    survived: of('Survived'),
    noCoverage: of('NoCoverage'),
    explained: count((one) => isLeft(one) && isExplained(file, lines, one)),
  };
}

function rowText(name: string, rows: readonly Row[]): string {
  const sum = (key: keyof Row) => rows.reduce((total, row) => total + row[key], 0);
  const keys = [
    'files',
    'mutants',
    'tried',
    'killed',
    'timedOut',
    'survived',
    'noCoverage',
    'explained',
  ] as const;
  const found = sum('killed') + sum('timedOut');
  const counted = found + sum('survived') + sum('noCoverage');
  const score = counted === 0 ? '' : `${((100 * found) / counted).toFixed(1)} %`;
  return [name, ...keys.map((key) => String(sum(key))), score].join(' | ');
}

function survivorText(file: string, lines: readonly string[], result: Result): string {
  const {location, status, replacement} = result;
  const short = (text: string) => text.replace(/\s+/g, ' ').slice(0, 100);
  const no = status === 'NoCoverage' ? ' (no test)' : '';
  const at = `${file}:${location.start.line}:${location.start.column}`;
  return `${at}:${no} ${short(changed(lines, result))} -> ${short(replacement)}`;
}
