/** `wmark check`: reads books, checks them, and prints what is found. */
import {type AskedOptions, askedAnswers} from './asked-answers.js';
import {changedFiles} from './changed-files.js';
import {type TellOptions, told} from './check-told.js';
import {unable} from './complain.js';
import type {Exit} from './exit.js';
import {askedHouse, type HouseOptions, rulesOf} from './house.js';
import type {Streams} from './streams.js';

/** `job`: number of the job for which the books are judged, or `all`; left out, they are judged with all of their jobs. */
export interface CheckOptions extends TellOptions, Omit<AskedOptions, 'rules'>, HouseOptions {
  /** With `since`: only findings in files that changed since. */
  readonly onlyChanged?: boolean;
  readonly since?: string;
}

export async function check(
  paths: readonly string[],
  options: CheckOptions,
  streams: Streams,
): Promise<Exit> {
  const {slice, job, known} = options;
  if (slice && known !== undefined) {
    const says = '--known counts findings over all books, and a slice sees only some';
    return unable(streams, {ok: false, says, hint: 'give --known to `wmark merge`'});
  }
  if (slice && options.house) {
    const says = '--house and --slice do not go together';
    return unable(streams, {ok: false, says, hint: 'leave one of them out'});
  }
  const house = await askedHouse(options);
  if (!house.ok) return unable(streams, house);
  const changed = await changedFiles(paths, options);
  if (changed && !changed.ok) return unable(streams, changed);
  const {list, ...asked} = await askedAnswers(paths, {...options, ...rulesOf(house)}, streams);
  return told(
    {
      ...asked,
      path: paths[0] ?? '.',
      house,
      ...(changed && {changed: changed.names}),
      ...(slice && {slice: {...slice, list, ...(job !== undefined && {job})}}),
    },
    options,
    streams,
  );
}
