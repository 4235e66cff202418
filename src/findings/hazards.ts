/**
 * Which hazards each procedure meets, where first, and which steps its cautions warn of them: for the two findings on
 * cautions. A material is the same wherever it is used, and the sheet lists it at its head, so one caution speaks for
 * it in the whole procedure. What hands are put to (a part, a check) is hurt by in its own way: a caution speaks for it
 * in its own section and those below.
 */
import type {Action, Part, StepRef} from '../build/program.js';
import type {Caution, Procedure} from '../procedure/model.js';
import {clauseOf, idsOf} from '../procedure/values.js';
import {locksOf} from '../spec/locks.js';
import type {Item, Located, Specification} from '../spec/model.js';
import type {Span} from '../text/source.js';
import {listed} from './phrase.js';

/** A use of something that may hurt, in one procedure, with the hazards that its section has not met before. */
export interface Meeting {
  readonly hazards: readonly Hazard[];
  /** What brings it: a material, an alteration, a part, a check or a system. */
  readonly item: Item;
  readonly action: Action;
  readonly step: StepRef;
}

export interface Hazard extends Located<string> {
  /** The cautions that speak for it here, in the order of the text. */
  readonly cautions: readonly Warned[];
  /** The first caution of the procedure that has the word, whatever it is about. */
  readonly first?: Warned;
}

/** The word of a caution, and where it stands. */
export interface Warned {
  readonly word: string;
  readonly span: Span;
  readonly caution: Caution;
}

/** Everything that brings a hazard, in order; what was met before it brings no more. */
export function meetings({procedure, actions}: Part, spec: Specification): Meeting[] {
  const outline = outlineOf(procedure);
  const warned = warnings(procedure, outline);
  const known = new Known();
  const found: Meeting[] = [];
  for (const action of actions) {
    for (const item of bringers(action, spec)) {
      const brought = hazardsOf(item);
      if (brought.length === 0) continue;
      const around = sectionsAround(outline, action.step.step.headSpan.start);
      const hazards = brought
        .filter(({value}) => known.isNew(value, item, around[0] ?? 0))
        .map((hazard): Hazard => {
          const all = warned.get(hazard.value) ?? [];
          const here = () => around.flatMap((section) => warned.get(`${hazard.value} in ${section}`) ?? []);
          const cautions = new Set(item.kind === 'consumable' ? all : here());
          return {...hazard, cautions: [...cautions], ...(all[0] && {first: all[0]})};
        });
      found.push({hazards, item, action, step: action.step});
    }
  }
  return found;
}

/** Lives while a procedure is gone through: what was met before, by hazard the items that brought it and the sections. */
class Known {
  readonly #met = new Map<string, Set<Item | number>>();

  /** Also remembers it. */
  isNew(hazard: string, item: Item, section: number): boolean {
    const before = this.#met.get(hazard);
    if (before === undefined) {
      this.#met.set(hazard, new Set([item, section]));
      return true;
    }
    const isNew = item.kind !== 'consumable' && !before.has(item) && !before.has(section);
    before.add(item).add(section);
    return isNew;
  }
}

/** `the hazard vapour`, `the hazards burn and vapour`. */
export function hazardsSaid(hazards: readonly Located<string>[]): string {
  const words = hazards.map(({value}) => value);
  return `the hazard${words.length === 1 ? '' : 's'} ${listed(words, 'and')}`;
}

/** The cautions by hazard word, and by word and section that they speak for (`vapour in 120`). */
function warnings(procedure: Procedure, outline: Outline): ReadonlyMap<string, readonly Warned[]> {
  const all = new Map<string, Warned[]>();
  const add = (key: string, one: Warned) => {
    const list = all.get(key);
    if (list === undefined) all.set(key, [one]);
    else list.push(one);
  };
  for (const [caution, from] of cautionsOf(procedure)) {
    // A caution at the end of one section may belong to the first step of the next, and speaks for both.
    const sections = [caution.span.start, from].map((at) => sectionsAround(outline, at)[0] ?? 0);
    for (const hazard of caution.hazards) {
      const one = {...hazard, caution};
      add(one.word, one);
      for (const section of new Set(sections)) add(`${one.word} in ${section}`, one);
    }
  }
  // A step that a job adds is gone through before the cautions of the step behind it, which stand above both.
  for (const list of all.values()) list.sort(byText);
  return all;
}

/** Each caution of a procedure once, with where the step stands that it belongs to. */
function cautionsOf({steps, sections}: Procedure): ReadonlyMap<Caution, number> {
  const all = new Map<Caution, number>();
  for (const {cautions, headSpan} of steps) {
    for (const caution of cautions) all.set(caution, headSpan.start);
  }
  for (const {content} of sections) {
    for (const block of content)
      if (block.type === 'caution') all.set(block.caution, block.caution.span.start);
  }
  return all;
}

function byText(a: Warned, b: Warned): number {
  return a.span.start - b.span.start;
}

/** Where each section begins, in order, with the beginnings of those around it, itself first. */
type Outline = readonly {readonly start: number; readonly around: readonly number[]}[];

function outlineOf({sections}: Procedure): Outline {
  let open: {readonly start: number; readonly depth: number}[] = [];
  return sections.map(({span: {start}, depth}) => {
    open = [{start, depth}, ...open.filter((outer) => outer.depth < depth)];
    return {start, around: open.map((one) => one.start)};
  });
}

/** Found by halving: a book may have thousands of sections. */
function sectionsAround(outline: Outline, offset: number): readonly number[] {
  let low = 0;
  let high = outline.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((outline[middle]?.start ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return outline[low]?.around ?? [0];
}

/** A caution stands before the words of a step; that of a step which a job adds, right where that would begin. */
export function standsBefore({span}: Warned, {step}: StepRef): boolean {
  return span.start <= step.headSpan.start;
}

export function hazardsOf(item: Item): readonly Located<string>[] {
  return 'hazards' in item ? item.hazards : [];
}

/** Verbs that put hands to a part itself. */
const HANDLING = new Set(['install', 'remove', 'turn', 'alter']);

function bringers(action: Action, spec: Specification): Item[] {
  const {item, tag, verb} = action;
  const all: Item[] = item.kind === 'part' && !HANDLING.has(verb) ? [] : [item];
  const add = (id: string) => {
    const named = spec.items.get(id);
    if (named !== undefined) all.push(named);
  };
  for (const word of NAMING) for (const id of idsOf(tag, word)) add(id);
  for (const id of implied(action)) add(id);
  return all;
}

const NAMING = ['with', 'using', 'by'] as const;

/** Where the tag names no material, the only one specified is meant. */
function implied({item, tag, verb}: Action): readonly string[] {
  if (clauseOf(tag, verb === 'alter' ? 'by' : 'with') !== undefined) return NONE;
  switch (item.kind) {
    case 'part':
      return verb === 'alter' ? onlyOf(item.alterations.map(({value}) => value)) : NONE;
    case 'surface':
      return verb === 'lube' ? onlyOf(item.lubricants.map(({value}) => value)) : NONE;
    case 'system':
      return onlyOf(item.with.map(({value}) => value));
    case 'joint':
      return verb === 'seal' ? onlyOf(item.seal?.value) : NONE;
    case 'fastener':
      if (verb === 'lock') return locksOf(item);
      return verb === 'lube' ? onlyOf(item.threads?.value) : NONE;
    default:
      return NONE;
  }
}

function onlyOf(specified: readonly string[] | string | undefined): readonly string[] {
  return typeof specified === 'object' && specified.length === 1 ? specified : NONE;
}

const NONE: readonly string[] = [];
