/** How a command says what keeps it from running: one line, apart from its report. */
import {type Failure, failureText} from '../host/failure.js';
import {printable} from '../text/printable.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

/** Says it, and leaves what becomes of the run to whoever calls. */
export function complain({aside}: Pick<Streams, 'aside'>, failure: Failure): void {
  aside(`wmark: ${printable(failureText(failure))}\n`);
}

/** Says it, and ends the run. */
export function unable(streams: Pick<Streams, 'aside'>, failure: Failure): Exit {
  complain(streams, failure);
  return EXIT.unable;
}
