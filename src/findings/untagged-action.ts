/** A step's prose commands an action, and no tag of the step says so: nothing can then be checked of it. */
import {type Node, type StepRef, whereIn} from '../build/program.js';
import type {Tag} from '../procedure/model.js';
import {tagSpec, type Verb} from '../procedure/verbs.js';
import type {Item, Specification} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import type {Command} from './commands.js';
import {Excused, inWords, namesOf} from './excused.js';
import type {FindingKind, SpecificationContext} from './model.js';
import {lacksSealant} from './sealant-untagged.js';
import {inFile, type Prose, paragraphEnd} from './step-prose.js';

export const untaggedAction: FindingKind = {
  name: 'untagged-action',
  group: 'reading',
  severity: 'warning',
  summary: 'The prose of a step commands an action that no tag of the step says',
  why: 'Of what stands in the prose alone nothing is checked, it has no values and boxes of its own on the sheet, and nobody notices when a later edit drops it. A parent step speaks for its sub-steps and they for it; conditions (`if it is worn, …`) are for an `if:` tag. What is no part of the engine (`Hang up the drip tray`) is named in the front matter, `untagged: [drip tray]`: the step is printed with its box as before, and is let stand without a tag. That silences no word for tightening, slackening, locking, sealing, curing, measuring, checking, signing, altering or renewing, and no name of the specification.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft: {closes: [camshaft-bores]}
surfaces:
  camshaft-bores: {on: block, assembly: lubed, lubricants: [assembly-lube]}
`,
    wrong: `
1. Wipe out the camshaft bores. \`clean: camshaft-bores\`
2. Lube the camshaft bores with assembly lube.
3. Slide the camshaft in. \`install: camshaft\`
`,
    right: `
1. Wipe out the camshaft bores. \`clean: camshaft-bores\`
2. Lube the camshaft bores with assembly lube. \`lube: camshaft-bores\`
3. Slide the camshaft in. \`install: camshaft\`
`,
  },
  part({procedure, nodes}, context) {
    const excused = new Excused(procedure, context.spec);
    for (const node of nodes) judge(node, [], {...context, excused});
    for (const found of excused.faults()) context.report(found);
  },
};

interface Judging extends SpecificationContext {
  readonly excused: Excused;
}

/** `above` are the tags of the steps that this one is below. */
function judge(node: Node, above: readonly Tag[], context: Judging): void {
  const down = [...above, ...node.step.step.tags];
  report(node.step, [...down, ...node.below.flatMap(tagsOf)], context);
  for (const below of node.below) judge(below, down, context);
}

function tagsOf({step, below}: Node): Tag[] {
  return [...step.step.tags, ...below.flatMap(tagsOf)];
}

function report(step: StepRef, tags: readonly Tag[], context: Judging): void {
  const prose = context.worked.prose(step);
  const said = tags.map(({verb}) => verb);
  const done = ({fits}: Command) => fits.some((verb) => said.includes(verb));
  const open = context.worked
    .commands(prose.text)
    .filter((command) => !done(command) || isSealantLeftOut(prose, command, tags, context))
    .filter((command) => !isExcused(prose, command, context));
  if (open.length === 0 || hasBrokenTag(step)) return;
  const verbs = new Set<Verb>();
  for (const command of open) {
    if (verbs.has(command.verb)) continue;
    verbs.add(command.verb);
    const item = itemNamed(prose, command, context.spec);
    const fix = item && !done(command) ? fixOf(step, prose, command, item) : undefined;
    const lacks = done(command)
      ? 'puts on sealant; name it in a `seal` tag, or take it out of the prose'
      : undefined;
    context.report({
      where: whereIn(step, inFile(prose, command.span)),
      message: `${item ? `${item.id}: ` : ''}${saying(step, prose, command, lacks)}`,
      step,
      ...(item && {item: item.id}),
      ...(fix && {fix}),
    });
  }
}

function isSealantLeftOut(
  {text}: Prose,
  {verb, clause}: Command,
  tags: readonly Tag[],
  {spec}: SpecificationContext,
): boolean {
  return verb === 'seal' && lacksSealant(text.slice(clause.start, clause.end), tags, spec);
}

/** What names an item of the engine is never excused. */
function isExcused(prose: Prose, command: Command, {spec, excused}: Judging): boolean {
  const {verb, span, clause} = command;
  return (
    itemNamed(prose, command, spec) === undefined &&
    excused.excuses(verb, prose.text.slice(span.end, clause.end))
  );
}

function saying({step}: StepRef, {text}: Prose, {clause, verb}: Command, lacks = `says \`${verb}\``): string {
  const words = text.slice(clause.start, clause.end).replace(/\s+/g, ' ');
  const shown = words.length > 48 ? `${words.slice(0, 47).trimEnd()}…` : words;
  return `step ${step.number} says "${shown}", and no tag of it ${lacks}`;
}

/** A tag that could not be read is a finding of its own, and may be the one that is missed here. */
function hasBrokenTag({procedure, step}: StepRef): boolean {
  return procedure.problems.some(
    ({name, where: {span}}) =>
      (name === 'tag-form' || name === 'unknown-verb') &&
      step.span.start <= span.start &&
      span.end <= step.span.end,
  );
}

/** The one item of a fitting kind that the clause names, by its name or its id in words. */
function itemNamed({text}: Prose, {clause, verb}: Command, spec: Specification): Item | undefined {
  const {targets} = tagSpec(verb);
  if (typeof targets === 'string') return undefined;
  const words = inWords(text.slice(clause.start, clause.end));
  const named = [...spec.items.values()].flatMap((item) => {
    const name = targets.includes(item.kind) ? nameIn(words, item) : undefined;
    return name === undefined ? [] : [{item, name}];
  });
  const longest = named.filter(
    ({name}) => !named.some((other) => other.name !== name && other.name.includes(name)),
  );
  const [only, ...others] = longest;
  return others.length === 0 ? only?.item : undefined;
}

function nameIn(words: string, item: Item): string | undefined {
  return namesOf(item).find((form) => words.includes(` ${form} `));
}

function fixOf(step: StepRef, prose: Prose, {verb, clause}: Command, {id}: Item): Fix {
  const end = paragraphEnd(step, prose, clause.end);
  const tag = `\`${verb}: ${id}\``;
  return {
    title: `Add ${tag} to step ${step.step.number}`,
    file: step.procedure.source.file,
    edits: [{span: {start: end, end}, text: ` ${tag}`}],
  };
}
