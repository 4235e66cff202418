/** `wmark check --known FILE`: the result without the findings that the shop knows of. */
import type {Failure} from '../host/failure.js';
import {counted} from '../text/counted.js';
import {printable} from '../text/printable.js';
import {positionAt} from '../text/source.js';
import type {FindingJson} from './answer.js';
import {weighed} from './check-report.js';
import type {CheckJson} from './check-shape.js';
import {knownList, type Looked, seenBy, sortedBy} from './known-file.js';
import type {Streams} from './streams.js';

/** The report without what the shop lets stand, and that beside it. */
export interface Held {
  readonly ok: true;
  readonly result: CheckJson;
  /** Known findings with the reason for which they are let stand. */
  readonly known: readonly (readonly [finding: FindingJson, because: string])[];
}

/** The result without the findings that the shop knows of; entries of the list that are settled are said aside. */
export async function withoutKnown(
  whole: CheckJson,
  looked: Looked,
  file: string,
  aside: Streams['aside'],
): Promise<Held | Failure> {
  const cwd = process.cwd();
  const list = await knownList(file, cwd);
  if (!list.ok) return list;
  const {fresh, known, settled} = sortedBy(whole.findings, list, cwd);
  const isSeen = seenBy(looked, list.folder, cwd);
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
