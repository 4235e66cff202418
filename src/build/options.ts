/** For which engines the steps of a procedure are: what its front matter, headings and steps say with `only`. */
import type {Front, Procedure, Section, Tag} from '../procedure/model.js';
import {tagsOf} from '../procedure/values.js';
import type {Specification} from '../spec/model.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Span} from '../text/source.js';

/** Groups of options: an engine must have one of each group. Empty: for every engine. */
export type Condition = readonly (readonly string[])[];

export function holds(condition: Condition, options: ReadonlySet<string>): boolean {
  return condition.every((group) => group.some((id) => options.has(id)));
}

/** Whether every engine that meets the condition has one of the options. */
export function impliesOneOf(condition: Condition, options: readonly string[]): boolean {
  return condition.some((group) => group.every((id) => options.includes(id)));
}

/** What the step itself asks for, or a heading, by its tags. */
export function tagCondition(tags: readonly Tag[]): Condition {
  return tagsOf({tags}, 'only').map(({targets}) => targets.map(({id}) => id));
}

/** A front matter that names this engine is for all of its kind; names of other engines say nothing here. */
export function frontCondition({only = []}: Front, {engine, options}: Specification): Condition {
  if (only.some(({id}) => id === engine.id)) return [];
  const known = only.map(({id}) => id).filter((id) => options.has(id));
  return known.length === 0 ? [] : [known];
}

/** Each section and what it asks for, with the headings that it stands under. */
export function sectionConditions({sections}: Procedure): readonly (readonly [Section, Condition])[] {
  let above: readonly Section[] = [];
  return sections.map((section) => {
    above = [...above.filter(({depth}) => depth < section.depth), section];
    return [section, above.flatMap(({only}) => tagCondition(only))];
  });
}

/** Names in `only` that are no option of this engine. */
export function unknownOptions(procedure: Procedure, spec: Specification): Problem[] {
  const tags = procedure.sections.flatMap(({only}) => only);
  for (const step of procedure.steps) for (const tag of step.tags) if (tag.verb === 'only') tags.push(tag);
  const inTags = tags.flatMap(({targets}) => targets).filter(({id}) => !spec.options.has(id));
  return [
    ...unknownInFront(procedure.front, spec).map((one) =>
      unknown(procedure, one, 'is neither this engine nor an option of it', [
        spec.engine.id,
        ...spec.options.keys(),
      ]),
    ),
    ...inTags.map((one) =>
      unknown(procedure, one, 'is not an option of this engine', [...spec.options.keys()]),
    ),
  ];
}

interface Named {
  readonly id: string;
  readonly span: Span;
}

/** A procedure may be shared with other engines, so only one that names nothing of this engine is in doubt. */
function unknownInFront({only = []}: Front, {engine, options}: Specification): readonly Named[] {
  return only.some(({id}) => id === engine.id || options.has(id)) ? [] : only;
}

function unknown(
  {source: {file}}: Procedure,
  {id, span}: Named,
  says: string,
  known: readonly string[],
): Problem {
  const near = nearest(id, known);
  return {
    name: 'unknown-item',
    where: {file, span},
    says: `${id} ${says}`,
    hint: near === undefined ? 'list it under options: of engine.yaml' : `did you mean ${near}?`,
    ...(near !== undefined && {fix: {title: `Write ${near}`, file, edits: [{span, text: near}]}}),
  };
}
