/** What the compiling of one sheet knows throughout, and the names it gives to items and places. */
import type {Step, Tag, Target} from '../procedure/model.js';
import {saysOrder} from '../procedure/verbs.js';
import {inOrderOf} from '../spec/items.js';
import type {Job} from '../spec/job.js';
import {isLockKind} from '../spec/locks.js';
import type {Item, Specification} from '../spec/model.js';
import type {Words} from './words.js';

/** Lives for one procedure: nothing in it changes while its sheet is compiled. */
export interface Context {
  readonly spec: Specification;
  readonly words: Words;
  /** The engine on the stand, where the sheet is for one. */
  readonly job?: Job;
  /** Every step, in reading order. */
  readonly steps: readonly Step[];
  /** Number of each step that has an id. */
  readonly stepNumbers: ReadonlyMap<string, string>;
  /** Indexes of the steps that a `repeat:` can bring round again. */
  readonly looped: ReadonlySet<number>;
  /** Index of the first step that names an item. */
  readonly firstSteps: ReadonlyMap<string, number>;
  /** Fasteners that the procedure brings up itself, a step a pass. */
  readonly steppedUp: ReadonlySet<string>;
  /** Fasteners for which the angle after the torque is a step of its own. */
  readonly turnedApart: ReadonlySet<string>;
}

/** What it takes to name things, in one procedure or over all of a book. */
export type Naming = Pick<Context, 'spec' | 'words' | 'job'>;

/** A step, and how a list says where it is. */
export interface PlacedStep {
  readonly step: Step;
  readonly at: string;
}

/** One target of a tag, with the item that it names, where there is such an item. */
export interface Use {
  readonly tag: Tag;
  readonly target: Target;
  readonly item: Item | undefined;
}

/** Every target of every tag of a step, in order. */
export function usesOf(step: Step, context: Naming): Use[] {
  return step.tags.flatMap((tag) =>
    tag.targets.map((target) => ({tag, target, item: context.spec.items.get(target.id)})),
  );
}

/** The name of an item or kind of lock; an id that nothing answers to is printed with spaces, never dropped. */
export function nameOf(id: string, context: Naming): string {
  const item = context.spec.items.get(id);
  if (item !== undefined) return item.name;
  return isLockKind(id) ? context.words.locks[id] : spaced(id);
}

/** Ids with what the author wrote after them: "safety wire 0.041 in". */
export function fullName(named: {readonly id: string; readonly rest: string}, context: Naming): string {
  return `${nameOf(named.id, context)} ${named.rest}`.trim();
}

/** `front-left` as a person says it. */
export function spaced(id: string): string {
  return id.replaceAll('-', ' ');
}

/** The places that a use speaks for: those it names, else all of the item's; none where the item has but one. */
export function placesOfUse(use: Use): readonly string[] {
  return use.target.places.length > 0 ? placesNamed(use) : (use.item?.at ?? []);
}

/** In the order of the specification, unless it is that of tightening. */
function placesNamed({tag, target, item}: Use): readonly string[] {
  const names = target.places.map(({name}) => name);
  return saysOrder(tag.verb) ? names : inOrderOf(names, item?.at ?? []);
}

/** The item's name, with the places in brackets where the tag names them. */
export function subjectOf(use: Use, context: Context): string {
  const name = nameOf(use.target.id, context);
  if (use.target.places.length === 0) return name;
  return `${name} (${placesNamed(use).map(spaced).join(context.words.and)})`;
}
