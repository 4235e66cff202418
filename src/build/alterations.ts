/**
 * Puts the alterations that a job's substitutes need into its procedures, as steps of their own: right before the
 * first step that readies the part or puts it in, and again wherever the part is renewed. A part that the
 * procedures alter themselves is left to them, and to the check.
 */
import type {Block, Procedure, Step, Tag, Target} from '../procedure/model.js';
import {idsOf, tagsOf} from '../procedure/values.js';
import type {Verb} from '../procedure/verbs.js';
import {placesOf} from '../spec/items.js';
import type {Job} from '../spec/job.js';
import type {Alteration, Item, Part, Specification} from '../spec/model.js';
import type {Where} from '../text/source.js';
import {addedStep} from './added-step.js';
import {type ItemRelations, meetingPlaces, relatedTo} from './relations.js';

/** A procedure that gets no step stays the object that it is. */
export function withAlterations(
  procedures: readonly Procedure[],
  known: ItemRelations,
  job: Job,
): readonly Procedure[] {
  const needs = needsOf(procedures, known.spec, job);
  if (needs.length === 0) return procedures;
  const raw = needs.map((need) => [need, usedAsTheyCome(need.part, procedures)] as const);
  const placing = new Placing(new Map(raw), known);
  return procedures.map((procedure) => placing.procedure(procedure));
}

/** A substituted part and what no step does to it. */
interface Need {
  readonly part: Part;
  readonly alterations: readonly Alteration[];
  /** What the shop says of the substitute. */
  readonly note: string | undefined;
  /** Where the job names the substitute. */
  readonly where: Where;
}

function needsOf(procedures: readonly Procedure[], spec: Specification, job: Job): Need[] {
  return [...job.substitutes].flatMap(([id, fitted]) => {
    const part = spec.items.get(id);
    if (part?.kind !== 'part') return [];
    const substitute = part.substitutes.get(fitted.value);
    if (substitute === undefined) return [];
    const named = substitute.alterations.map(({value}) => spec.items.get(value));
    const alterations = named
      .filter((item) => item?.kind === 'alteration')
      .filter((item) => !isMade(part, item, procedures));
    return [{part, alterations, where: fitted.where, note: substitute.note}];
  });
}

function isMade(part: Part, alteration: Alteration, procedures: readonly Procedure[]): boolean {
  const tags = procedures.flatMap(({steps}) => steps.flatMap((step) => tagsOf(step, 'alter')));
  return tags.some(
    (tag) => tag.targets.some(({id}) => id === part.id) && idsOf(tag, 'by').includes(alteration.id),
  );
}

/** The places at which the part goes in before it is renewed: an old one that is not used again is not altered. */
function usedAsTheyCome(part: Part, procedures: readonly Procedure[]): Places {
  let places: Places = new Set(placesOf(part));
  for (const {verb, targets} of procedures.flatMap(({steps}) => steps.flatMap(({tags}) => tags))) {
    const own = targets.filter(({id}) => id === part.id);
    if (verb === 'install' && own.length > 0) break;
    if (verb === 'renew') places = without(places, namedPlaces(own, part));
  }
  return places;
}

function namedPlaces(targets: readonly Target[], item: Item): readonly string[] {
  return targets.flatMap(({places}) => (places.length > 0 ? places.map(({name}) => name) : placesOf(item)));
}

type Places = ReadonlySet<string>;

const NOWHERE: Places = new Set();

/** The places of each part at which it lies there as it came. */
type Raw = ReadonlyMap<Need, Places>;

/** Lives while the procedures are gone through in build order. */
class Placing {
  readonly #known: ItemRelations;
  readonly #raw: Map<Need, Places>;
  /** How things stood at the steps that may be gone back to. */
  readonly #marks = new Map<string, Raw>();
  #count = 0;

  constructor(raw: Map<Need, Places>, known: ItemRelations) {
    this.#known = known;
    this.#raw = raw;
  }

  procedure(procedure: Procedure): Procedure {
    this.#count = 0;
    this.#marks.clear();
    const sections = procedure.sections.map((section) => ({
      ...section,
      content: section.content.flatMap((block): Block[] => {
        if (block.type !== 'step') return [block];
        return this.#steps([block.step]).map((step) => ({type: 'step', step}));
      }),
    }));
    return this.#count === 0 ? procedure : {...procedure, sections};
  }

  #steps(steps: readonly Step[]): Step[] {
    return steps.flatMap((step) => [...this.#before(step), ...this.#through(step)]);
  }

  /** What must be done before the step, which readies a part or puts it in. */
  #before(step: Step): Step[] {
    return [...this.#raw].flatMap(([need, places]) => {
      const used = step.tags.some((tag) => this.#uses(tag, need.part).some((place) => places.has(place)));
      return used ? this.#made(need, places, step.span.start) : [];
    });
  }

  #through(step: Step): Step[] {
    if (step.id !== undefined) this.#marks.set(step.id, new Map(this.#raw));
    for (const tag of step.tags) this.#take(tag);
    const before = new Map(this.#raw);
    const below = this.#steps(step.steps);
    const back = tagsOf(step, 'repeat').flatMap(({targets}) => targets);
    const again = back.flatMap(({id}) => this.#forAnotherRound(id, step.span.end));
    if (tagsOf(step, 'if').length > 0) this.#meet(before);
    // A step that does no more than go back has the alteration before it, any other as the last thing below it.
    if (step.steps.length === 0) return [...again, {...step, steps: below}];
    return [{...step, steps: [...below, ...again]}];
  }

  /** A part that is renewed comes as it is sold; one that goes in raw can no longer be altered. */
  #take({verb, targets}: Tag): void {
    for (const [need, places] of this.#raw) {
      const at = namedPlaces(
        targets.filter(({id}) => id === need.part.id),
        need.part,
      );
      if (verb === 'renew') this.#raw.set(need, new Set([...places, ...at]));
      if (verb === 'install') this.#raw.set(need, without(places, at));
    }
  }

  /**
   * What lies there raw now and did not when the step was first come to, which is gone back to. The way does not come
   * out below.
   */
  #forAnotherRound(id: string, at: number): Step[] {
    const then = this.#marks.get(id);
    if (then === undefined) return [];
    const made = [...this.#raw].flatMap(([need, places]) => {
      const lost = without(places, [...placesIn(then, need)]);
      return lost.size === 0 ? [] : this.#made(need, lost, at);
    });
    for (const need of this.#raw.keys()) this.#raw.set(need, NOWHERE);
    return made;
  }

  /** After a branch a part is raw that is so on either way. */
  #meet(before: Raw): void {
    for (const [need, places] of before) {
      this.#raw.set(need, new Set([...places, ...placesIn(this.#raw, need)]));
    }
  }

  #made(need: Need, places: Places, at: number): Step[] {
    this.#raw.set(need, without(placesIn(this.#raw, need), [...places]));
    const {part, note, where} = need;
    const named =
      places.size === placesOf(part).length ? [] : placesOf(part).filter((one) => places.has(one));
    return need.alterations.map((alteration, index) =>
      addedStep({
        number: `J${++this.#count}`,
        part,
        places: named,
        alteration,
        at,
        where,
        notes: [index === 0 ? note : undefined, alteration.note],
      }),
    );
  }

  /** The places of the part that a tag readies, reads or puts in. */
  #uses({verb, targets}: Tag, part: Part): readonly string[] {
    return this.#usedBy(verb, part).flatMap((item) => {
      const named = namedPlaces(
        targets.filter(({id}) => id === item.id),
        item,
      );
      return named.flatMap((place) => meetingPlaces(item, [place], part));
    });
  }

  /** The items by which a verb uses the part. */
  #usedBy(verb: Verb, part: Part): readonly Item[] {
    const {surfacesOn, fitsOf} = this.#known;
    if (verb === 'install') return [part];
    if (verb === 'clean' || verb === 'lube') return [part, ...relatedTo(surfacesOn, part)];
    return verb === 'measure' || verb === 'lay' ? relatedTo(fitsOf, part) : [];
  }
}

function placesIn(raw: Raw, need: Need): Places {
  return raw.get(need) ?? NOWHERE;
}

function without(places: Places, gone: readonly string[]): Places {
  return new Set([...places].filter((place) => !gone.includes(place)));
}
