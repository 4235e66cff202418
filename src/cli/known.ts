/** `wmark known`: writes down the findings that a shop lets stand for now, and strikes off those that are settled. */
import {existsSync} from 'node:fs';
import {dirname, resolve} from 'node:path';
import {rewritten} from '../findings/known-text.js';
import {today} from '../host/clock.js';
import {type Failure, failureText} from '../host/failure.js';
import {loadBooks} from '../host/load.js';
import {shownName} from '../host/names.js';
import {writeFiles} from '../host/write.js';
import {printable} from '../text/printable.js';
import {checkBooks, counted} from './check-report.js';
import {EXIT, type Exit} from './exit.js';
import {askedHouse, type HouseOptions, tellFaults} from './house.js';
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
  {report, aside}: Streams,
): Promise<Exit> {
  const cwd = process.cwd();
  const complain = (failure: Failure) => aside(`wmark: ${printable(failureText(failure))}\n`);
  const path = resolve(cwd, file);
  const list = existsSync(path) ? await knownList(file, cwd) : undefined;
  if (list && !list.ok) {
    complain(list);
    return EXIT.unable;
  }
  const {books, failures} = await loadBooks(paths);
  failures.forEach(complain);
  // What could not be read might be struck off as settled.
  if (books.length === 0 || failures.length > 0) return EXIT.unable;
  const house = await askedHouse(options);
  if (!house.ok) {
    complain(house);
    return EXIT.unable;
  }
  const {result, faults} = checkBooks(books, {today: today(), house: house.findings});
  tellFaults(faults, house, {aside});
  if (faults.length > 0) return EXIT.unable;
  const folder = dirname(path);
  const counting = result.findings.filter(({severity}) => severity !== 'information');
  const {text, added, struck} = rewritten(
    list?.source.text,
    list?.entries ?? [],
    counting.map((finding) => candidate(finding, folder, cwd)),
    {reason: {because, owner}, isSeen: seenBy(books, {folder, cwd, house: house.findings})},
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
