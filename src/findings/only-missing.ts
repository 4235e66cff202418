/** A step that deals only with what some engines have, and does not say so. */
import {
  type Condition,
  frontCondition,
  impliesOneOf,
  sectionConditions,
  tagCondition,
} from '../build/options.js';
import type {Procedure, Step, Tag} from '../procedure/model.js';
import {topSteps} from '../procedure/values.js';
import {tagSpec} from '../procedure/verbs.js';
import type {Item, Specification} from '../spec/model.js';
import {codeSpanAround} from '../text/code-span.js';
import type {Fix} from '../text/edit.js';
import type {FindingKind} from './model.js';
import {listed} from './phrase.js';

const ENGINE = `
options: {starter: electric starter}
parts:
  block: {given: true}
  starter: {only: [starter]}
checks:
  starter-turns: {expect: throws in without a clash, only: [starter]}
`;

export const onlyMissing: FindingKind = {
  name: 'only-missing',
  group: 'job',
  severity: 'error',
  summary: 'A step deals only with what some engines have, and does not say so',
  why: 'On an engine without the option the step would stand on the sheet all the same, and tell the apprentice to use what is not there.',
  source: 'common practice, no source',
  example: {
    engine: ENGINE,
    wrong: `
1. Fit the starter. \`install: starter\` \`only: starter\`
2. Turn the engine over with the starter. \`check: starter-turns\`
`,
    right: `
1. Fit the starter. \`install: starter\` \`only: starter\`
2. Turn the engine over with the starter. \`check: starter-turns\` \`only: starter\`
`,
  },
  book({book: {spec, procedures, job}, report}) {
    // The book as it holds for a job has lost what its engine does not have.
    if (job !== undefined || spec.options.size === 0) return;
    for (const procedure of procedures) {
      for (const {step, condition} of conditioned(procedure, spec)) {
        const some = onlyOfSome(step, spec);
        if (some === undefined) continue;
        const bare = some.items.find((item) => !impliesOneOf(condition, optionsOf(item)));
        if (bare === undefined) continue;
        const {file} = procedure.source;
        const options = optionsOf(bare);
        report({
          where: {file, span: some.last.span},
          message: `only engines with ${listed(options, 'or')} have ${bare.id}, and step ${step.number} deals with nothing else`,
          item: bare.id,
          fix: fixAt(procedure, some.last, options),
        });
      }
    }
  },
};

interface Conditioned {
  readonly step: Step;
  readonly condition: Condition;
}

/** Every step with all that it and what it stands in ask for. */
function conditioned(procedure: Procedure, spec: Specification): Conditioned[] {
  const front = frontCondition(procedure.front, spec);
  const below = (step: Step, around: Condition): Conditioned[] => {
    const condition = [...around, ...tagCondition(step.tags)];
    return [{step, condition}, ...step.steps.flatMap((sub) => below(sub, condition))];
  };
  return sectionConditions(procedure).flatMap(([section, condition]) =>
    topSteps({sections: [section]}).flatMap((step) => below(step, [...front, ...condition])),
  );
}

/** The items of a step whose every tag is about what some engines lack; a branch on one drops out by itself. */
function onlyOfSome(
  {tags}: Step,
  {items}: Specification,
): {readonly items: readonly Item[]; readonly last: Tag} | undefined {
  // What other verbs name, options and steps and findings, may be called as an item is.
  const deeds = tags.filter(({verb}) => typeof tagSpec(verb).targets !== 'string');
  const named = deeds.flatMap(({targets}) => targets.flatMap(({id}) => items.get(id) ?? []));
  const last = tags.at(-1);
  if (last === undefined || tags.some(({verb}) => verb === 'if')) return undefined;
  return named.every(({only}) => only.length > 0) ? {items: named, last} : undefined;
}

function optionsOf({only}: Item): readonly string[] {
  return only.map(({value}) => value);
}

/** Behind the code span that the tag stands in. */
function fixAt({source: {file, text}}: Procedure, {span}: Tag, options: readonly string[]): Fix {
  const {end} = codeSpanAround(span, text);
  const edit = {span: {start: end, end}, text: ` \`only: ${options.join(', ')}\``};
  return {title: 'Say for which engines the step is', file, edits: [edit]};
}
