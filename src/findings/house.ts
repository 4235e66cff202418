/** A rule of the shop's own, written in a module of theirs: what it must say, what it may look at, how it reports. */
import type {Book} from '../build/book.js';
import type {Fact, FactKind} from '../build/facts.js';
import type {Found} from '../build/found.js';
import type {Action, StepRef} from '../build/program.js';
import type {Verb} from '../procedure/verbs.js';
import type {Where} from '../text/source.js';
import type {Example, FindingGroup, FindingKind} from './model.js';

/**
 * A rule of the shop's own. Plain data with functions that look and report: they must be quick, must not be
 * asynchronous, and must change nothing that they are given.
 *
 * @example
 * const rule: HouseFinding = {
 *   name: 'house-no-mallet',
 *   severity: 'warning',
 *   summary: 'A mallet is used on a camshaft',
 *   why: 'We have chipped two lobes.',
 *   before: {
 *     install({item, tag, step}, {report}) {
 *       if (item.id !== 'camshaft' || !idsOf(tag, 'using').includes('soft-mallet')) return;
 *       report({where: whereIn(step, tag.span), item: item.id, message: `${item.id} goes in by hand`});
 *     },
 *   },
 * };
 */
export interface HouseFinding {
  /** Lower case and hyphens. The prefix keeps it apart from every finding that there is or will be. */
  readonly name: `house-${string}`;
  /** `severity:` in shop.yaml may change it. */
  readonly severity: 'error' | 'warning' | 'information';
  /**
   * `house` where left out. A procedure that stands in no book is not blamed for what is `left undone` on an item
   * that it never touches; what is of the group `job` shows only in a book with a job.
   */
  readonly group?: Exclude<FindingGroup, 'reading'>;
  /** What it is, in one line without a full stop. */
  readonly summary: string;
  /** Why it matters on an engine. */
  readonly why: string;
  /** Where the rule comes from; the shop's own practice where left out. */
  readonly source?: string;
  /** Shown by `wmark why NAME`. */
  readonly example?: Example;
  /** Once a book, before its first step. */
  readonly book?: (context: HouseContext) => void;
  /** Once a step, in build order; the engine is as it was before the step. */
  readonly step?: (step: StepRef, context: HouseContext) => void;
  /** Before every action of a verb: a tag is one action for each item that it names. */
  readonly before?: {readonly [verb in Deed]?: (action: Action, context: HouseContext) => void};
  /** Once a book, after its last step. */
  readonly end?: (context: HouseContext) => void;
}

/** The verbs that do something to an item. */
export type Deed = Exclude<Verb, 'hazard' | 'step' | 'only' | 'if' | 'repeat' | 'waive'>;

/** The engine at a moment of its build: which facts hold of which item at which place. */
export interface HouseState {
  /** Whether a fact holds. The place is '' for an item that is in one place only (see `placesOf`). */
  readonly holds: (kind: FactKind, item: string, place: string) => boolean;
  /** The same with the actions that set it and undid it. */
  readonly get: (kind: FactKind, item: string, place: string) => Fact;
}

/** What a rule may look at, and how it reports. Nothing of it may be kept or changed. */
export interface HouseContext {
  /** As it holds for the job, where there is one. */
  readonly book: Book;
  /** Just before the action or the step, or at the end of the build. */
  readonly state: HouseState;
  /**
   * Reports a finding. Its place, its story's places and the edits of its fix must lie in files of the book; a fix
   * must be safe to make without a second look at the engine.
   * @throws {TypeError} where the report has not the form of one, or points outside of a text.
   */
  readonly report: (found: Found) => void;
  /**
   * The same, for what does no harm if it is undone: it counts only where what this action does to these places is
   * still so at the end of the build. A trial fit is taken out again.
   * @throws {TypeError} anywhere but in `before.install` and `before.torque`, and as `report` does.
   */
  readonly reportIfItLasts: (found: Found, places: readonly string[]) => void;
  /** Whether any step of the book does this to the item at the place. */
  readonly does: (verb: Verb, item: string, place: string) => boolean;
  /** Today's ISO 8601 date, where the caller told it. */
  readonly today?: string | undefined;
}

/** A rule of the house that threw, or reported what cannot be. It was not asked again in that check. */
export interface HouseFault {
  /** Of the finding. */
  readonly name: string;
  /** When it went wrong: `book`, `step`, `before torque`, `end`. */
  readonly during: string;
  /** What it was looking at: the step, or the tag of the action. */
  readonly where?: Where;
  /** What it threw, with the name of the error: one line of a stranger's text. */
  readonly says: string;
  /** The stack of the error, where it has one: a stranger's text. */
  readonly stack?: string;
}

/** Names with this prefix belong to the house: they mean nothing where its rules are not at hand, and are no mistake. */
export const HOUSE_PREFIX = 'house-';

/** Whether a name in a waiver or in shop.yaml is of a rule that this check does not run. */
export function isUnasked(name: string, kinds: readonly FindingKind[]): boolean {
  return name.startsWith(HOUSE_PREFIX) && !kinds.some((kind) => kind.name.startsWith(HOUSE_PREFIX));
}
