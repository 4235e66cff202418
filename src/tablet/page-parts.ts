/** What a page that is worked on consists of. */
import type {TabletWords} from '../sheet/page-data.js';
import type {Bar} from './bar.js';
import type {Branches} from './branches.js';
import type {Shown} from './controls.js';
import type {Session} from './session.js';
import type {Workers} from './workers.js';

export interface Page {
  readonly session: Session;
  readonly words: TabletWords;
  readonly shown: ReadonlyMap<string, Shown>;
  readonly branches: Branches;
  readonly bar: Bar;
  readonly workers: Workers;
  /** Shows what the record says of everything that has changed, and of one box in any case. */
  repaint(anyway?: Shown): void;
}
