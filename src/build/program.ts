/**
 * The procedures of a book as one program: every tag of every step as actions on items of the specification,
 * in build order, with branches and repeats kept as structure. Names that the specification does not know
 * become problems here, since only here both sides are at hand.
 */
import type {Procedure, Step, Tag, Target} from '../procedure/model.js';
import {branchState, topSteps} from '../procedure/values.js';
import type {BranchState, Verb} from '../procedure/verbs.js';
import {namedKinds, tagSpec} from '../procedure/verbs.js';
import {placesOf} from '../spec/items.js';
import {isLockKind} from '../spec/locks.js';
import type {Item, ItemKind, Specification} from '../spec/model.js';
import {addAll} from '../text/add-all.js';
import type {Problem} from '../text/problem.js';
import type {Span, Where} from '../text/source.js';
import type {Book} from './book.js';
import {lastTorques} from './last-torques.js';
import {type Named, unknownItem, unknownPlace, unknownStep, wrongKind} from './misnamed.js';
import {unknownOptions} from './options.js';

/** A step and the procedure that it stands in. */
export interface StepRef {
  readonly procedure: Procedure;
  readonly step: Step;
  /** Greater for every later step of the book: for comparison, not for counting. */
  readonly order: number;
}

/** One verb done to one item, at some of its places. */
export interface Action<I extends Item = Item> {
  readonly verb: Verb;
  readonly item: I;
  /** Never empty; [''] for an item that is in one place only. */
  readonly places: readonly string[];
  readonly step: StepRef;
  readonly tag: Tag;
  readonly target: Target;
}

/** A step with what it does, and the steps below it. */
export interface Node {
  readonly step: StepRef;
  readonly actions: readonly Action[];
  /** Sub-steps. They are done after the step, unless `when` makes them a branch. */
  readonly below: readonly Node[];
  readonly when?: Branch;
  /** Id of the step that is gone back to when this step and those below it are done. */
  readonly repeat?: {readonly id: string; readonly tag: Tag};
}

/** `if: x is out`, or one side of that: the steps below are done only then. */
export interface Branch {
  readonly item: Item;
  /** Whose readings decide: all that the item has where the tag names none. */
  readonly places: readonly string[];
  readonly is: BranchState;
  readonly tag: Tag;
}

/** A procedure of the program. */
export interface Part {
  readonly procedure: Procedure;
  readonly nodes: readonly Node[];
  /** Every action in the order in which it stands on paper. */
  readonly actions: readonly Action[];
  readonly steps: readonly StepRef[];
  readonly problems: readonly Problem[];
  /** Names of options that the engine does not have. */
  readonly unknown: readonly Problem[];
}

export interface Program {
  /**
   * Torques after which nothing tightens the same fastener further: each claims to be the end of it, whatever
   * value it states.
   */
  readonly lastTorques: ReadonlySet<Action>;
  /** One list a procedure. */
  readonly parts: readonly Part[];
  readonly steps: readonly StepRef[];
  readonly problems: readonly Problem[];
}

/** `read` reads one part, or knows what it read before: the same for the same procedure, specification and place. */
export function program(book: Book, read: typeof readPart = readPart): Program {
  const steps: StepRef[] = [];
  const parts = book.procedures.map((procedure, place) => {
    const part = read(procedure, book.spec, place);
    for (const step of part.steps) steps.push(step);
    return part;
  });
  const problems = [...parts.flatMap((part) => part.problems), ...parts.flatMap((part) => part.unknown)];
  return {lastTorques: lastTorques(parts), parts, steps, problems};
}

/** Reads a procedure that has its place in the build, counted from 0. */
export function readPart(procedure: Procedure, spec: Specification, place: number): Part {
  return new PartReader(procedure, spec, place);
}

/** No procedure has as many steps: texts are bounded at so many characters. */
const MOST_STEPS = 2 ** 22;

/** Where a span of a step's procedure stands; of a step that a job adds, where the job asks for it. */
export function whereIn(step: StepRef, span: Span): Where {
  if (step.step.added !== undefined) return step.step.added;
  return {file: step.procedure.source.file, span};
}

/** Lives while a procedure is read: counts the steps and gathers the problems. */
class PartReader implements Part {
  readonly procedure: Procedure;
  readonly nodes: readonly Node[];
  readonly actions: Action[] = [];
  readonly steps: StepRef[] = [];
  readonly problems: Problem[] = [];
  readonly unknown: readonly Problem[];
  readonly #spec: Specification;
  readonly #place: number;

  constructor(procedure: Procedure, spec: Specification, place: number) {
    this.procedure = procedure;
    this.#spec = spec;
    this.#place = place;
    const ids = idsOf(procedure);
    this.nodes = topSteps(procedure).map((step) => this.#node(step, ids));
    this.unknown = unknownOptions(procedure, spec);
  }

  #node(step: Step, ids: ReadonlySet<string>): Node {
    // By its place and not by all steps before it, so that one more there changes nothing here.
    const order = this.#place * MOST_STEPS + this.steps.length;
    const ref: StepRef = {procedure: this.procedure, step, order};
    this.steps.push(ref);
    const actions: Action[] = [];
    for (const tag of step.tags) this.#act(ref, tag, actions);
    addAll(this.actions, actions);
    const when = this.#branch(ref);
    const repeat = this.#repeat(ref, ids);
    const below = step.steps.map((sub) => this.#node(sub, ids));
    return {step: ref, actions, below, ...(when && {when}), ...(repeat && {repeat})};
  }

  #act(step: StepRef, tag: Tag, actions: Action[]): void {
    // What a job adds stands in no text; its names are the specification's, and were looked up when that was read.
    if (step.step.added === undefined) this.#checkNamed(step, tag);
    const {targets} = tagSpec(tag.verb);
    if (!Array.isArray(targets) || tag.verb === 'if') return;
    for (const target of tag.targets) {
      const item = this.#resolve(step, target, targets, tag.verb);
      if (item === undefined) continue;
      const places = this.#places(step, target, item);
      if (places.length > 0) actions.push({verb: tag.verb, item, places, step, tag, target});
    }
  }

  /** Ids in `with`, `using` and `by` must be items too, of a kind that can stand there. */
  #checkNamed(step: StepRef, tag: Tag): void {
    for (const {word, value} of tag.clauses) {
      const takes = namedKinds(tag.verb, word);
      for (const {id, span} of value.type === 'ids' ? value.ids : []) {
        // A kind of lock may be named where a material is: it is a word of the trade, not an item.
        const isLock = isLockKind(id);
        if (isLock && takes.includes('lock-kind')) continue;
        const item = this.#spec.items.get(id);
        if (item !== undefined && takes.includes(item.kind)) continue;
        const kinds = takes.filter((kind) => kind !== 'lock-kind');
        const named: Named = {id, where: whereIn(step, span), kinds, taker: word};
        if (item !== undefined) this.problems.push(wrongKind(named, item));
        else if (isLock) this.problems.push(wrongKind(named, 'lock-kind'));
        else this.problems.push(unknownItem(named, this.#spec));
      }
    }
  }

  #resolve(step: StepRef, target: Target, kinds: readonly ItemKind[], verb: Verb): Item | undefined {
    const item = this.#spec.items.get(target.id);
    if (item !== undefined && kinds.includes(item.kind)) return item;
    const named: Named = {id: target.id, where: whereIn(step, target.span), kinds, taker: verb};
    this.problems.push(item === undefined ? unknownItem(named, this.#spec) : wrongKind(named, item));
    return undefined;
  }

  #places(step: StepRef, target: Target, item: Item): readonly string[] {
    if (target.places.length === 0) return placesOf(item);
    const known = target.places.filter(({name}) => item.at.includes(name));
    for (const {name, span} of target.places) {
      if (item.at.includes(name)) continue;
      this.problems.push(unknownPlace(item, name, whereIn(step, span)));
    }
    return known.map(({name}) => name);
  }

  #branch(step: StepRef): Branch | undefined {
    const named = firstNamed(step.step, 'if');
    if (named === undefined) return undefined;
    const {tag, target} = named;
    const item = this.#resolve(step, target, ['fit', 'check'], 'if');
    if (item === undefined) return undefined;
    const places = this.#places(step, target, item);
    return {item, places: places.length === 0 ? placesOf(item) : places, is: branchState(tag), tag};
  }

  #repeat(step: StepRef, ids: ReadonlySet<string>): {id: string; tag: Tag} | undefined {
    const named = firstNamed(step.step, 'repeat');
    if (named === undefined) return undefined;
    const {tag, target} = named;
    if (ids.has(target.id)) return {id: target.id, tag};
    this.problems.push(unknownStep(target.id, whereIn(step, target.span), ids));
    return undefined;
  }
}

/** What the tags with this verb name first, and the tag that does. */
function firstNamed({tags}: Step, verb: Verb): {readonly tag: Tag; readonly target: Target} | undefined {
  return tags.flatMap((tag) => (tag.verb === verb ? tag.targets.map((target) => ({tag, target})) : []))[0];
}

function idsOf({steps}: Procedure): Set<string> {
  const ids = new Set<string>();
  for (const {id} of steps) if (id !== undefined) ids.add(id);
  return ids;
}
