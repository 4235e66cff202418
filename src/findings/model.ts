/** What a finding is, and what a file in this folder must say to define one. */

import type {Book} from '../build/book.js';
import type {Change} from '../build/facts.js';
import type {Found, Remark} from '../build/found.js';
import type {Action, Branch, Node, Part, Program, StepRef} from '../build/program.js';
import type {ItemRelations, Relations} from '../build/relations.js';
import type {State} from '../build/state.js';
import type {TargetOf, Verb} from '../procedure/verbs.js';
import type {Item, ItemOf, Severity, Specification} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import type {Where} from '../text/source.js';
import type {Workings} from './workings.js';

/** One mistake or omission, with the place to look at and the story of how it came about. */
export interface Finding {
  readonly name: string;
  readonly severity: 'error' | 'warning' | 'information';
  readonly where: Where;
  /** One line, beginning with the item where there is one, without a full stop. */
  readonly message: string;
  readonly item?: string;
  /** The places of the item that it is about; left out where it is about all of them. */
  readonly place?: string;
  /** What set and undid the fact in question, in build order. */
  readonly story: readonly Remark[];
  /** Other places to look at: where the specification asks for it. */
  readonly related: readonly Remark[];
  readonly fix?: Fix;
}

export type Report = (found: Found) => void;

/** What a check of the specification alone may look at. */
export interface SpecificationContext {
  readonly spec: Specification;
  readonly relations: ItemRelations;
  readonly worked: Workings;
  readonly report: Report;
}

/** What a check may look at. `state` is the engine just before the action, or at the end of the build. */
export interface Context extends SpecificationContext {
  readonly book: Book;
  readonly program: Program;
  readonly relations: Relations;
  readonly state: State;
  /**
   * For a check before an install or a torque: reported only if the part is still in (the fastener still tight)
   * at the end of the build, at one of these places of the action's item, from this very action. What a trial
   * fit leaves out does no harm.
   */
  readonly reportIfItLasts: (found: Found, places: readonly string[]) => void;
  /**
   * Whether some step of the book does this at all. A thing done in the wrong order is one finding, a thing
   * never done another, and never both. Of `lock` it may be asked whether this very lock is put on.
   */
  readonly does: (verb: Verb, item: string, place: string, lock?: string) => boolean;
  /** Today's ISO 8601 date, where the caller knows it. */
  readonly today: string | undefined;
}

/** Called before an action changes the state. */
export type ActionCheck<I extends Item = Item> = (action: Action<I>, context: Context) => void;

export type FindingGroup =
  | 'reading'
  | 'order'
  | 'left undone'
  | 'materials and tools'
  | 'engineering'
  | 'people'
  | 'job'
  /** Of a rule of the shop's own. */
  | 'house';

/** A small book in which the finding shows, and the same put right; both are run by the tests. */
export interface Example {
  /** engine.yaml of the example; a `shop:` of its own where it needs tools or consumables. */
  readonly engine: string;
  readonly shop?: string;
  /** Bodies of the procedure, below its front matter. */
  readonly wrong: string;
  readonly right: string;
  /** Where the mistake is in the specification: the engine.yaml (or shop.yaml) put right. */
  readonly rightEngine?: string;
  readonly rightShop?: string;
  /** For findings about one engine on the stand: its job. */
  readonly job?: string;
  readonly rightJob?: string;
}

/** One kind of finding: one file. */
export interface FindingKind {
  readonly name: string;
  readonly group: FindingGroup;
  readonly severity: Exclude<Severity, 'off'>;
  /** What it is, in one line. */
  readonly summary: string;
  /** Why it matters on an engine. */
  readonly why: string;
  /** The published source of the rule, or "common practice, no source". */
  readonly source: string;
  /** Left out only where no text can show it, as for a file that is not there. */
  readonly example?: Example;
  /** Problems of the readers with this name are reported as they are. */
  readonly fromReading?: true;
  /**
   * Its fixes change only how a thing is written: never a value, a material, an item, an order or a caution. Such
   * fixes may be made without asking.
   */
  readonly fixIsSpelling?: true;
  /** Once a specification: what hangs on nothing else is found once for all the checks of it. */
  readonly specification?: (context: SpecificationContext) => void;
  /** Once a procedure: likewise what hangs on nothing but the procedure and the specification. */
  readonly part?: (part: Part, context: SpecificationContext) => void;
  /** Once a book. */
  readonly book?: (context: Context) => void;
  /** Once a step, in build order. */
  readonly step?: (step: StepRef, context: Context) => void;
  /** When a branch is reached. */
  readonly branch?: (node: Node & {readonly when: Branch}, context: Context) => void;
  /** At a repeat, with the parts that are in and the fasteners that are tight and were not when the step gone back to was first come to. */
  readonly repeat?: (node: Node, gained: readonly Change[], context: Context) => void;
  /** Before every action of a verb. */
  readonly before?: {readonly [verb in Verb]?: ActionCheck<ItemOf<TargetOf<verb>>>};
  /** At the end of the build. */
  readonly end?: (context: Context) => void;
}
