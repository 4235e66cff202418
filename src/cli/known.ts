/** `wmark known`: writes down the findings that a shop lets stand for now, and strikes off those that are settled. */
import {existsSync} from 'node:fs';
import {dirname, resolve} from 'node:path';
import {rewritten} from '../findings/known-text.js';
import {type Failure, failureText} from '../host/failure.js';
import {onlyBases} from '../host/find-books.js';
import {shownName} from '../host/names.js';
import {writeFiles} from '../host/write.js';
import {printable} from '../text/printable.js';
import type {BookReport} from './answer.js';
import {askedAnswers} from './asked-answers.js';
import {checkJson, counted} from './check-report.js';
import {EXIT, type Exit} from './exit.js';
import {candidate, knownList, seenBy} from './known-file.js';
import type {Streams} from './streams.js';

export interface KnownOptions {
  readonly because: string;
  readonly owner: string;
}

export async function known(
  file: string,
  paths: readonly string[],
  {because, owner}: KnownOptions,
  streams: Streams,
): Promise<Exit> {
  const {report, aside} = streams;
  const cwd = process.cwd();
  const complain = (failure: Failure) => aside(`wmark: ${printable(failureText(failure))}\n`);
  const path = resolve(cwd, file);
  const list = existsSync(path) ? await knownList(file, cwd) : undefined;
  if (list && !list.ok) {
    complain(list);
    return EXIT.unable;
  }
  const {reports, failures} = await reportsAt(paths, streams);
  failures.forEach(complain);
  // What could not be read might be struck off as settled.
  if (failures.length > 0) return EXIT.unable;
  const {findings} = checkJson(reports);
  const files = reports.flatMap((one) => one.files);
  const folder = dirname(path);
  const counting = findings.filter(({severity}) => severity !== 'information');
  const {text, added, struck} = rewritten(
    list?.source.text,
    list?.entries ?? [],
    counting.map((finding) => candidate(finding, folder, cwd)),
    {reason: {because, owner}, isSeen: seenBy(files, folder, cwd)},
  );
  const written = await writeFiles([{path, text}]);
  if (!written.ok) {
    complain(written);
    return EXIT.unable;
  }
  report(
    `${printable(shownName(path, cwd))}: ${counted(added, 'finding')} added, ${counted(struck, 'entry', 'entries')} struck off\n`,
  );
  return EXIT.clean;
}

async function reportsAt(paths: readonly string[], streams: Streams) {
  const asked = await askedAnswers(paths, {}, streams);
  const failures = [...asked.failures];
  const reports: BookReport[] = [];
  for await (const {answer} of asked.answers) {
    if (answer.failure) failures.push(answer.failure);
    reports.push(...answer.reports);
  }
  const nothing = reports.length === 0 && failures.length === 0;
  return {reports, failures: nothing ? [onlyBases(paths[0] ?? '.', process.cwd())] : failures};
}
