/** `wmark check`: reads books, checks them, and prints what is found. */
import {today} from '../host/clock.js';
import {type Failure, failureText} from '../host/failure.js';
import {type LoadedBook, loadBooks} from '../host/load.js';
import {shownName, truePath} from '../host/names.js';
import {changedSince, repositoryOf, revisionIn} from '../host/revision.js';
import {printable} from '../text/printable.js';
import {positionAt} from '../text/source.js';
import {checkBooks, checkText, counted, type FindingJson, weighed} from './check-report.js';
import type {CheckJson} from './check-shape.js';
import {EXIT, type Exit} from './exit.js';
import {knownList, seenBy, sortedBy} from './known-file.js';
import type {StopOn} from './stop-on.js';
import type {Streams} from './streams.js';

export type CheckForm = 'text' | 'json' | 'sarif' | 'annotations' | 'junit';

export interface CheckOptions {
  readonly as: CheckForm;
  /** With `since`: only findings in files that changed since. */
  readonly onlyChanged?: boolean;
  readonly since?: string;
  /** The list of known findings, which do not count. */
  readonly known?: string;
  readonly stopOn?: readonly Exclude<StopOn, 'weakened'>[];
}

export async function check(
  paths: readonly string[],
  options: CheckOptions,
  {report, aside}: Streams,
): Promise<Exit> {
  const complain = (failure: Failure) => aside(`wmark: ${printable(failureText(failure))}\n`);
  const changed = await changedFiles(paths, options);
  if (changed && !changed.ok) {
    complain(changed);
    return EXIT.unable;
  }
  const {books, failures} = await loadBooks(paths);
  failures.forEach(complain);
  if (books.length === 0) return EXIT.unable;
  const whole = checkBooks(books, today());
  const all = changed ? inFiles(whole, changed.names) : whole;
  const held = await withoutKnown(all, books, options, aside);
  if (!held.ok) {
    complain(held);
    return EXIT.unable;
  }
  const {result} = held;
  report(await rendered(options.as, held, books));
  if (failures.length > 0) return EXIT.unable;
  return stops(result, options.stopOn ?? []) ? EXIT.errors : EXIT.clean;
}

interface Changed {
  readonly ok: true;
  readonly names: ReadonlySet<string>;
}

/** The names of the files that differ from a revision, as findings name them. */
async function changedFiles(
  paths: readonly string[],
  {since, onlyChanged}: CheckOptions,
): Promise<Changed | Failure | undefined> {
  if (!onlyChanged && since === undefined) return undefined;
  if (since === undefined) {
    return {ok: false, says: '--only-changed needs a revision to compare with', hint: 'add --since REV'};
  }
  const names = new Set<string>();
  const cwd = (await truePath(process.cwd())) ?? process.cwd();
  for (const path of paths) {
    const repository = await repositoryOf(path, cwd);
    if (!repository.ok) return repository;
    const revision = await revisionIn(repository, since);
    if (!revision.ok) return revision;
    const found = await changedSince(repository, revision);
    if (!found.ok) return found;
    for (const file of found.paths) names.add(shownName(file, cwd));
  }
  return {ok: true, names};
}

/** A finding counts where it stands, or where its story runs, in one of the files. */
function inFiles({summary, findings}: CheckJson, names: ReadonlySet<string>): CheckJson {
  const kept = findings.filter(({file, story, related}) =>
    [file, ...[...story, ...related].map((one) => one.file)].some((name) => names.has(name)),
  );
  return {summary: {...summary, ...weighed(kept)}, findings: kept};
}

interface Held {
  readonly ok: true;
  readonly result: CheckJson;
  /** Known findings with the reason for which they are let stand. */
  readonly known: readonly (readonly [finding: FindingJson, because: string])[];
}

/** The result without the findings that the shop knows of; entries of the list that are settled are said aside. */
async function withoutKnown(
  whole: CheckJson,
  books: readonly LoadedBook[],
  {known: file}: CheckOptions,
  aside: Streams['aside'],
): Promise<Held | Failure> {
  if (file === undefined) return {ok: true, result: whole, known: []};
  const cwd = process.cwd();
  const list = await knownList(file, cwd);
  if (!list.ok) return list;
  const {fresh, known, settled} = sortedBy(whole.findings, list, cwd);
  const isSeen = seenBy(books, list.folder, cwd);
  for (const [entry, found] of settled) {
    if (!isSeen(entry)) continue;
    const {line} = positionAt(list.source, entry.where.span.start);
    const fewer = found === 0 ? 'is settled' : `is found ${counted(found, 'time')} only`;
    aside(
      `wmark: ${printable(`${list.source.file}:${line}: ${entry.finding} in ${entry.file} ${fewer}`)}; \`wmark known\` strikes it off\n`,
    );
  }
  const findings = fresh.map(({from}) => from);
  const summary = {...whole.summary, ...weighed(findings), known: known.length};
  return {ok: true, result: {summary, findings}, known: known.map(([{from}, {because}]) => [from, because])};
}

async function rendered(as: CheckForm, {result, known}: Held, books: readonly LoadedBook[]): Promise<string> {
  switch (as) {
    case 'json':
      return `${JSON.stringify(result, null, 2)}\n`;
    case 'sarif': {
      const [{findingResult, findingRules}, {sarifLog}] = await Promise.all([
        import('./findings-sarif.js'),
        import('./sarif.js'),
      ]);
      return sarifLog(findingRules(), [
        ...result.findings.map((finding) => findingResult(finding)),
        ...known.map(([finding, because]) => findingResult(finding, because)),
      ]);
    }
    case 'annotations': {
      const {annotations} = await import('./findings-annotations.js');
      return annotations(result.findings);
    }
    case 'junit': {
      const {junit} = await import('./findings-junit.js');
      return junit(
        result,
        books.flatMap(({book}) => book.procedures.map(({source}) => source.file)),
      );
    }
    default:
      return checkText(result);
  }
}

function stops({summary}: CheckJson, on: readonly StopOn[]): boolean {
  return summary.errors > 0 || (on.includes('warning') && summary.warnings > 0);
}
