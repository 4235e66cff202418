/** `wmark known`: writes down the findings that a shop lets stand for now, and strikes off those that are settled. */
import {existsSync} from 'node:fs';
import {dirname, resolve} from 'node:path';
import {rewritten} from '../findings/known-text.js';
import type {Failure} from '../host/failure.js';
import {onlyBases} from '../host/find-books.js';
import type {House} from '../host/house.js';
import {shownName} from '../host/names.js';
import {rewriteFiles} from '../host/rewrite.js';
import {writeFiles} from '../host/write.js';
import {addAll} from '../text/add-all.js';
import {counted} from '../text/counted.js';
import {printable} from '../text/printable.js';
import type {Source} from '../text/source.js';
import type {BookReport} from './answer.js';
import {askedAnswers} from './asked-answers.js';
import {checkJson} from './check-report.js';
import {complain, unable} from './complain.js';
import {EXIT, type Exit} from './exit.js';
import {askedHouse, type HouseOptions, rulesOf} from './house.js';
import {type HouseFaultJson, tellFaults} from './house-faults.js';
import {candidate, knownList, seenBy} from './known-file.js';
import type {Streams} from './streams.js';

export interface KnownOptions extends HouseOptions {
  readonly because: string;
  readonly owner: string;
}

export async function known(
  file: string,
  paths: readonly string[],
  {because, owner, ...options}: KnownOptions,
  streams: Streams,
): Promise<Exit> {
  const cwd = process.cwd();
  const path = resolve(cwd, file);
  const list = existsSync(path) ? await knownList(file, cwd) : undefined;
  if (list && !list.ok) return unable(streams, list);
  const house = await askedHouse(options);
  if (!house.ok) return unable(streams, house);
  const {reports, failures, faults} = await reportsAt(paths, house, streams);
  tellFaults(faults, house, streams);
  for (const failure of failures) complain(streams, failure);
  // What could not be read might be struck off as settled.
  if (failures.length > 0 || faults.length > 0) return EXIT.unable;
  const {findings} = checkJson([reports]);
  const files = reports.flatMap((one) => one.files);
  const folder = dirname(path);
  const counting = findings.filter(({severity}) => severity !== 'information');
  const {text, added, struck} = rewritten(
    list?.source.text,
    list?.entries ?? [],
    counting.map((finding) => candidate(finding, folder, cwd)),
    {reason: {because, owner}, isSeen: seenBy({files, house: house.findings}, folder, cwd)},
  );
  // What somebody else wrote into the list meanwhile is not lost.
  const failure = await put({path, text, before: list?.source});
  if (failure) return unable(streams, failure);
  streams.report(
    `${printable(shownName(path, cwd))}: ${counted(added, 'finding')} added, ${counted(struck, 'entry', 'entries')} struck off\n`,
  );
  return EXIT.clean;
}

interface NewList {
  readonly path: string;
  readonly text: string;
  /** As it was read, where there was one. */
  readonly before: Source | undefined;
}

async function put({path, text, before}: NewList): Promise<Failure | undefined> {
  const cwd = process.cwd();
  if (before) return (await rewriteFiles([{before, text}], cwd)).failures[0];
  const written = await writeFiles([{path, text, isNew: true}], cwd);
  return written.ok ? undefined : written;
}

async function reportsAt(paths: readonly string[], house: House, streams: Streams) {
  const asked = await askedAnswers(paths, rulesOf(house), streams);
  const faults: HouseFaultJson[] = [];
  const failures = [...asked.failures];
  const reports: BookReport[] = [];
  for await (const {answer} of asked.answers) {
    if (answer.failure) failures.push(answer.failure);
    addAll(reports, answer.reports);
    addAll(faults, answer.houseFaults ?? []);
  }
  const nothing = reports.length === 0 && failures.length === 0;
  return {reports, faults, failures: nothing ? [onlyBases(paths[0] ?? '.', process.cwd())] : failures};
}
