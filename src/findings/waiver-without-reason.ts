/** A waiver that does not say why, or who answers for it. */
import {type StepRef, whereIn} from '../build/program.js';
import {clauseOf} from '../procedure/values.js';
import type {FindingKind, SpecificationContext} from './model.js';

export const waiverWithoutReason: FindingKind = {
  name: 'waiver-without-reason',
  group: 'people',
  severity: 'error',
  summary: 'A waiver does not say why, or who answers for it',
  why: 'A deviation is printed on the sheet with its reason and a name. Without a reason it silences nothing; without a name nobody can be asked.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  core-plugs: {closes: [plug-seats]}
surfaces:
  plug-seats: {on: block, assembly: clean}
`,
    wrong: `
1. Drive in the plugs. \`install: core-plugs\` \`waive: clean-first because the seats were bored this morning\`
`,
    right: `
1. Drive in the plugs. \`install: core-plugs\` \`waive: clean-first by R. Tamsin because the seats were bored this morning\`
`,
  },
  part({steps}, context) {
    for (const step of steps) judge(step, context);
  },
};

function judge(step: StepRef, {report}: SpecificationContext): void {
  for (const tag of step.step.tags) {
    if (tag.verb !== 'waive') continue;
    const missing = [
      ...(clauseOf(tag, 'because') ? [] : ['why (`because …`)']),
      ...(clauseOf(tag, 'by') ? [] : ['who answers for it (`by …`)']),
    ];
    if (missing.length === 0) continue;
    report({
      where: whereIn(step, tag.span),
      message: `the waiver of ${tag.targets.map(({id}) => id).join(', ')} does not say ${missing.join(', nor ')}`,
    });
  }
}
