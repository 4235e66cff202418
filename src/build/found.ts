/** What a check saw, before the engine of findings gives it a name and a severity. */
import type {Fix} from '../text/edit.js';
import type {Where} from '../text/source.js';
import type {StepRef} from './program.js';

/** A place in some file and what it has to do with the finding. */
export interface Remark {
  readonly where: Where;
  readonly says: string;
}

/** What a check reports; name and severity are added by the engine. */
export interface Found {
  readonly where: Where;
  readonly message: string;
  readonly item?: string;
  readonly place?: string;
  readonly story?: readonly Remark[];
  readonly related?: readonly Remark[];
  readonly fix?: Fix;
  /** The step whose `waive:` tag can silence it, where it isn't the step that it stands in. */
  readonly step?: StepRef;
}
