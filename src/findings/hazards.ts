/** Which hazards each procedure meets, where first, and where its cautions warn of them: for the two findings on cautions. */
import {type Action, actionsOf, type Node, type StepRef} from '../build/program.js';
import type {Caution, Procedure} from '../procedure/model.js';
import {clauseOf, idsOf} from '../procedure/values.js';
import type {Item, Located, Specification} from '../spec/model.js';
import type {Span} from '../text/source.js';
import {listed} from './phrase.js';

/** The first use of something that may hurt, in one procedure, with the hazards that it is the first to bring. */
export interface Meeting {
  readonly hazards: readonly Located<string>[];
  /** What brings it: a material, an alteration, a part, a check or a system. */
  readonly item: Item;
  readonly action: Action;
  readonly step: StepRef;
}

/** The word of a caution, and where it stands. */
export interface Warned {
  readonly word: string;
  readonly span: Span;
  readonly caution: Caution;
}

/** Everything that brings a hazard which the procedure has not met before, in order. */
export function meetings(nodes: readonly Node[], spec: Specification): Meeting[] {
  const known = new Set<string>();
  const found: Meeting[] = [];
  for (const action of actionsOf(nodes)) {
    for (const item of bringers(action, spec)) {
      const hazards = hazardsOf(item).filter(({value}) => !known.has(value));
      for (const {value} of hazards) known.add(value);
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

/** Every hazard word of a procedure's cautions, in order of the text. */
export function warnings(procedure: Procedure): Warned[] {
  const inSteps = procedure.steps.flatMap(({cautions, more}) => [...cautions, ...more.flatMap(cautionIn)]);
  const inSections = procedure.sections.flatMap(({content}) => content.flatMap(cautionIn));
  return [...new Set([...inSteps, ...inSections])]
    .flatMap((caution) => caution.hazards.map((hazard) => ({...hazard, caution})))
    .sort((a, b) => a.span.start - b.span.start);
}

function cautionIn(block: Procedure['sections'][number]['content'][number]): Caution[] {
  return block.type === 'caution' ? [block.caution] : [];
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
