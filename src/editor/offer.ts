/** One choice of a completion. */
import type {Span} from '../text/source.js';

/** What a client shows in its list, and what it puts into the text. */
export interface Offer {
  readonly label: string;
  readonly kind: 'verb' | 'item' | 'place' | 'clause' | 'value' | 'word';
  /** What is put in place of `span`. */
  readonly insert: string;
  readonly span: Span;
  /** Beside the label: "a fastener, main cap bolts". */
  readonly detail?: string;
  /** Offers of a lower rank come first; within a rank they stay in their order. */
  readonly rank: number;
}
