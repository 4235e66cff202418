/** `wmark check`: reads books, checks them, and prints what is found. */
import {type Failure, failureText} from '../host/failure.js';
import {printable} from '../text/printable.js';
import {type AskedOptions, askedAnswers} from './asked-answers.js';
import {changedFiles} from './changed-files.js';
import {type TellOptions, told} from './check-told.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

/** `job`: number of the job for which the books are judged, or `all`; left out, they are judged with all of their jobs. */
export interface CheckOptions extends TellOptions, AskedOptions {
  /** With `since`: only findings in files that changed since. */
  readonly onlyChanged?: boolean;
  readonly since?: string;
}

export async function check(
  paths: readonly string[],
  options: CheckOptions,
  streams: Streams,
): Promise<Exit> {
  const complain = (failure: Failure) => streams.aside(`wmark: ${printable(failureText(failure))}\n`);
  const {slice, job, known} = options;
  if (slice && known !== undefined) {
    const says = '--known counts findings over all books, and a slice sees only some';
    complain({ok: false, says, hint: 'give --known to `wmark merge`'});
    return EXIT.unable;
  }
  const changed = await changedFiles(paths, options);
  if (changed && !changed.ok) {
    complain(changed);
    return EXIT.unable;
  }
  const {list, ...asked} = await askedAnswers(paths, options, streams);
  return told(
    {
      ...asked,
      path: paths[0] ?? '.',
      ...(changed && {changed: changed.names}),
      ...(slice && {slice: {...slice, list, ...(job !== undefined && {job})}}),
    },
    options,
    streams,
  );
}
