/** One name where it is written: what it is the name of, and whether it is given there or used. */
import type {Where} from '../text/source.js';

export type MentionKind =
  | 'item'
  | 'lock-kind'
  | 'option'
  | 'source'
  | 'step'
  | 'finding'
  | 'hazard'
  | 'file'
  | 'substitute';

/** A name where it stands: what hover, references and renaming all go by. */
export interface Mention {
  readonly kind: MentionKind;
  readonly id: string;
  readonly where: Where;
  /** The name is given here. An item of a base that is written anew in the child is given twice. */
  readonly gives: boolean;
}
