/**
 * Which hazards each procedure meets, where first, and which steps its cautions warn of them: for the two findings on
 * cautions. A material is the same wherever it is used, and the sheet lists it at its head, so one caution speaks for
 * it in the whole procedure. What hands are put to (a part, a check) is hurt by in its own way: a caution speaks for it
 * in its own section and those below.
 */
import {type Action, actionsOf, type Node, type StepRef} from '../build/program.js';
import type {Caution, Procedure} from '../procedure/model.js';
import {clauseOf, idsOf} from '../procedure/values.js';
import type {Item, Located, Specification} from '../spec/model.js';
import type {Span} from '../text/source.js';
import {listed} from './phrase.js';

/** The first use of something that may hurt, in one procedure, with the hazards that its section has not met before. */
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

/** Everything that brings a hazard which no caution before it can have been about, in order. */
export function meetings(procedure: Procedure, nodes: readonly Node[], spec: Specification): Meeting[] {
  const outline = outlineOf(procedure);
  const warned = warnings(procedure, outline);
  const known = new Set<string>();
  const found: Meeting[] = [];
  for (const action of actionsOf(nodes)) {
    for (const item of bringers(action, spec)) {
      const brought = hazardsOf(item);
      if (brought.length === 0) continue;
      const around = sectionsAround(outline, action.step.step.headSpan.start);
      const hazards = brought.flatMap((hazard) => {
        const {value} = hazard;
        const ofItem = `${value} of ${item.id}`;
        const here = around.map((section) => `${value} in ${section}`);
        const met = item.kind === 'consumable' ? [value] : [ofItem, here[0] ?? ''];
        const isNew = !met.some((one) => known.has(one));
        for (const one of [value, ofItem, here[0] ?? '']) known.add(one);
        if (!isNew) return [];
        const all = warned.get(value) ?? [];
        const cautions = item.kind === 'consumable' ? all : here.flatMap((key) => warned.get(key) ?? []);
        return [{...hazard, cautions: [...new Set(cautions)].sort(byText), ...(all[0] && {first: all[0]})}];
      });
      if (hazards.length > 0) found.push({hazards, item, action, step: action.step});
    }
  }
  return found;
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
  for (const list of all.values()) list.sort(byText);
  return all;
}

/** Each caution of a procedure once, with where the step stands that it belongs to. */
function cautionsOf({steps, sections}: Procedure): ReadonlyMap<Caution, number> {
  const all = new Map<Caution, number>();
  for (const {cautions, more, headSpan} of steps) {
    for (const caution of [...cautions, ...more.flatMap(cautionIn)]) all.set(caution, headSpan.start);
  }
  for (const {content} of sections) {
    for (const caution of content.flatMap(cautionIn)) all.set(caution, caution.span.start);
  }
  return all;
}

function cautionIn(block: Procedure['sections'][number]['content'][number]): Caution[] {
  return block.type === 'caution' ? [block.caution] : [];
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

/** A caution stands before a step when it stands before its words; a step that a job adds has no words in the text. */
export function standsBefore({span}: Warned, {step}: StepRef): boolean {
  return span.start < step.headSpan.start || (step.added !== undefined && span.start === step.headSpan.start);
}

function hazardsOf(item: Item): readonly Located<string>[] {
  return 'hazards' in item ? item.hazards : [];
}

/** Verbs that put hands to a part itself. */
const HANDLING = new Set(['install', 'remove', 'turn', 'alter']);

function bringers(action: Action, spec: Specification): Item[] {
  const {item, tag, verb} = action;
  const own = item.kind === 'part' && !HANDLING.has(verb) ? [] : [item];
  const named = [...idsOf(tag, 'with'), ...idsOf(tag, 'using'), ...idsOf(tag, 'by')];
  return [...own, ...[...named, ...implied(action)].flatMap((id) => spec.items.get(id) ?? [])];
}

/** Where the tag names no material, the only one specified is meant. */
function implied({item, tag, verb}: Action): readonly string[] {
  const only = (list: readonly Located<string>[]) => (list.length === 1 ? list.map(({value}) => value) : []);
  if (item.kind === 'part' && verb === 'alter') return clauseOf(tag, 'by') ? [] : only(item.alterations);
  if (clauseOf(tag, 'with') !== undefined) return [];
  if (item.kind === 'surface' && verb === 'lube') return only(item.lubricants);
  if (item.kind === 'system' && verb === 'fill') return only(item.with);
  if (item.kind === 'joint' && verb === 'seal') {
    const seal = item.seal?.value;
    return typeof seal === 'object' && seal.length === 1 ? seal : [];
  }
  if (item.kind === 'fastener' && verb === 'lock')
    return typeof item.lock?.value === 'string' ? [item.lock.value] : [];
  if (item.kind === 'fastener' && verb === 'lube') {
    const threads = item.threads?.value;
    return typeof threads === 'object' && threads.length === 1 ? threads : [];
  }
  return [];
}
