/** What a check saw, before the engine of findings gives it a name and a severity. */
import type {Verb} from '../procedure/verbs.js';
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
  /**
   * What would supply what is missing here: one of these verbs done to this item. A procedure that is checked
   * alone and does none of them is not blamed, for another may do it.
   */
  readonly lacks?: {readonly item: string; readonly verbs: readonly Verb[]};
  /** The step whose `waive:` tag can silence it, where it isn't the step that it stands in. */
  readonly step?: StepRef;
}
