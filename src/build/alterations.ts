/**
 * Puts the alterations that a job's substitutes need into its procedures, as steps of their own: right before the
 * first step that readies the part or puts it in, and again wherever the part is renewed. A part that the
 * procedures alter themselves is left to them, and to the check.
 */
import type {Block, Procedure, Step, Tag, Target} from '../procedure/model.js';
import {idsOf, tagsOf} from '../procedure/values.js';
import {placesOf} from '../spec/items.js';
import type {Job} from '../spec/job.js';
import type {Alteration, Part, Specification} from '../spec/model.js';
import type {Where} from '../text/source.js';
import {addedStep} from './added-step.js';
import {type ItemRelations, meetingPlaces} from './relations.js';

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
  readonly note?: string;
  /** Where the job names the substitute. */
  readonly where: Where;
}

function needsOf(procedures: readonly Procedure[], spec: Specification, job: Job): Need[] {
  return [...job.substitutes].flatMap(([id, fitted]) => {
    const part = spec.items.get(id);
    const substitute = part?.kind === 'part' ? part.substitutes.get(fitted.value) : undefined;
    if (part?.kind !== 'part' || substitute === undefined) return [];
    const alterations = substitute.alterations.flatMap(({value}) => {
      const item = spec.items.get(value);
      return item?.kind === 'alteration' && !isMade(part, item, procedures) ? [item] : [];
    });
    if (alterations.length === 0) return [];
    const {note} = substitute;
    return [{part, alterations, where: fitted.where, ...(note !== undefined && {note})}];
  });
}

function isMade(part: Part, alteration: Alteration, procedures: readonly Procedure[]): boolean {
  const tags = procedures.flatMap(({steps}) => steps.flatMap((step) => tagsOf(step, 'alter')));
  return tags.some(
    (tag) => tag.targets.some(({id}) => id === part.id) && idsOf(tag, 'by').includes(alteration.id),
  );
}

/** The places at which the part goes in before it is renewed: an old one that is not used again is not altered. */
function usedAsTheyCome(part: Part, procedures: readonly Procedure[]): ReadonlySet<string> {
  const places = new Set(placesOf(part));
  for (const {verb, targets} of procedures.flatMap(({steps}) => steps.flatMap(({tags}) => tags))) {
    const own = targets.filter(({id}) => id === part.id);
    if (verb === 'install' && own.length > 0) break;
    if (verb === 'renew')
      for (const target of own) for (const at of namedPlaces(target, part)) places.delete(at);
  }
  return places;
}

function namedPlaces({places}: Target, part: Part): readonly string[] {
  return places.length > 0 ? places.map(({name}) => name) : placesOf(part);
}

/** The places of each part at which it lies there as it came. */
type Raw = Map<Need, ReadonlySet<string>>;

/** Lives while the procedures are gone through in build order. */
class Placing {
  readonly #known: ItemRelations;
  readonly #raw: Raw;
  /** How things stood at the steps that may be gone back to. */
  readonly #marks = new Map<string, Raw>();
  #count = 0;

  constructor(raw: Raw, known: ItemRelations) {
    this.#known = known;
    this.#raw = raw;
  }

  procedure(procedure: Procedure): Procedure {
    if (!this.#concerns(procedure)) return procedure;
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

  /** Whether any of its tags is about a part in need, or about what lies on one. */
  #concerns({steps}: Procedure): boolean {
    const {surfacesOn, fitsOf} = this.#known;
    const near = [...this.#raw.keys()].flatMap(({part}) => [
      part,
      ...(surfacesOn.get(part.id) ?? []),
      ...(fitsOf.get(part.id) ?? []),
    ]);
    const ids = new Set(near.map(({id}) => id));
    return steps.some(({tags}) => tags.some(({targets}) => targets.some(({id}) => ids.has(id))));
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
    const back = tagsOf(step, 'repeat')[0]?.targets[0]?.id;
    const again = back === undefined ? [] : this.#forAnotherRound(back, step.span.end);
    if (tagsOf(step, 'if').length > 0) this.#meet(before, back !== undefined);
    // A step that does no more than go back has the alteration before it, any other as the last thing below it.
    if (step.steps.length === 0) return [...again, {...step, steps: below}];
    return [{...step, steps: [...below, ...again]}];
  }

  /** A part that is renewed comes as it is sold; one that goes in raw can no longer be altered. */
  #take({verb, targets}: Tag): void {
    for (const [need, places] of this.#raw) {
      for (const target of targets.filter(({id}) => id === need.part.id)) {
        const at = namedPlaces(target, need.part);
        if (verb === 'renew') this.#raw.set(need, new Set([...places, ...at]));
        if (verb === 'install') this.#raw.set(need, without(this.#raw.get(need) ?? places, at));
      }
    }
  }

  /** What lies there raw now and did not when the step was first come to, which is gone back to. */
  #forAnotherRound(id: string, at: number): Step[] {
    const then = this.#marks.get(id);
    if (then === undefined) return [];
    return [...this.#raw].flatMap(([need, places]) => {
      const lost = without(places, [...(then.get(need) ?? [])]);
      return lost.size === 0 ? [] : this.#made(need, lost, at);
    });
  }

  /** After a branch a part is raw that is so on either way; a branch that goes back does not come out below. */
  #meet(before: Raw, goesBack: boolean): void {
    for (const [need, places] of before) {
      const after = goesBack ? [] : (this.#raw.get(need) ?? []);
      this.#raw.set(need, new Set([...places, ...after]));
    }
  }

  #made(need: Need, places: ReadonlySet<string>, at: number): Step[] {
    this.#raw.set(need, without(this.#raw.get(need) ?? places, [...places]));
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
  #uses(tag: Tag, part: Part): readonly string[] {
    return tag.targets.flatMap((target) => {
      const item = this.#known.spec.items.get(target.id);
      if (item === undefined || !this.#isUse(tag, target.id, part)) return [];
      const named = target.places.map(({name}) => name);
      return meetingPlaces(item, named.length > 0 ? named : placesOf(item), part);
    });
  }

  #isUse({verb}: Tag, id: string, part: Part): boolean {
    const {surfacesOn, fitsOf} = this.#known;
    if (verb === 'install') return id === part.id;
    if (verb === 'clean' || verb === 'lube') {
      return id === part.id || (surfacesOn.get(part.id) ?? []).some((surface) => surface.id === id);
    }
    return (verb === 'measure' || verb === 'lay') && (fitsOf.get(part.id) ?? []).some((fit) => fit.id === id);
  }
}

function without(places: ReadonlySet<string>, gone: readonly string[]): ReadonlySet<string> {
  return new Set([...places].filter((place) => !gone.includes(place)));
}
