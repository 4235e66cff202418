/** A caution stands below the first step that it is needed for. */
import {type StepRef, whereIn} from '../build/program.js';
import type {Fix} from '../text/edit.js';
import {hazardsSaid, standsBefore, type Warned} from './hazards.js';
import type {FindingKind} from './model.js';
import {inNumber, tagWhere} from './phrase.js';

export const cautionLate: FindingKind = {
  name: 'caution-late',
  group: 'people',
  severity: 'error',
  summary: 'A caution stands only after the first step that needs it',
  why: 'A warning that is read when the grit is in the eye has warned nobody.',
  source: 'MIL-DTL-87268D, 3.2.2.4 a: warnings and cautions come before the text that they apply to',
  example: {
    engine: `
parts:
  block: {given: true}
  main-shells: {alterations: [grind-off-lip]}
alterations:
  grind-off-lip: {of: [main-shells], does: grind the locating lip flush, hazards: [eyes]}
`,
    wrong: `
1. Grind the locating lip flush. \`alter: main-shells by grind-off-lip\`

> **Warning:** Grit flies from the wheel. Goggles on before you switch it on. \`hazard: eyes\`

2. Press the shells in. \`install: main-shells\`
`,
    right: `
> **Warning:** Grit flies from the wheel. Goggles on before you switch it on. \`hazard: eyes\`

1. Grind the locating lip flush. \`alter: main-shells by grind-off-lip\`
2. Press the shells in. \`install: main-shells\`
`,
  },
  part(part, {worked, report}) {
    for (const {hazards, item, action, step} of worked.meetings(part)) {
      const late = hazards.filter(
        ({cautions}) => cautions.length > 0 && !cautions.some((one) => standsBefore(one, step)),
      );
      const caution = late[0]?.cautions[0];
      if (caution === undefined) continue;
      report({
        where: whereIn(step, caution.span),
        message: `${item.id} ${inNumber(item, '[brings|bring]')} ${hazardsSaid(late)} at step ${step.step.number}, and the caution stands only after it`,
        item: item.id,
        step,
        related: [
          {where: tagWhere(action), says: 'the caution is needed before this'},
          ...late.map(({where, value}) => ({where, says: `${value} is a hazard of ${item.id}`})),
        ],
        ...movedUp(caution, step),
      });
    }
  },
};

/** Earlier is never worse for a caution; only one that stands at the margin, as its step does, is moved. */
function movedUp({caution}: Warned, step: StepRef): {fix?: Fix} {
  const {file, text} = step.procedure.source;
  const {start, end} = caution.span;
  const to = step.step.span.start;
  if (!atMargin(text, start) || !atMargin(text, to)) return {};
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const blankBefore = /(?:^|[\r\n][ \t]*(?:\r\n|\n|\r))$/.test(text.slice(0, to));
  const quote = `${blankBefore ? '' : newline}${text.slice(start, end)}${newline}${newline}`;
  const rest = text.slice(end);
  const gap = rest.length - rest.replace(/^(?:[ \t]*(?:\r\n|\n|\r)){0,2}/, '').length;
  const edits = [
    {span: {start: to, end: to}, text: quote},
    {span: {start, end: end + gap}, text: ''},
  ];
  return {fix: {title: `Move the caution above step ${step.step.number}`, file, edits}};
}

function atMargin(text: string, offset: number): boolean {
  return offset === 0 || /[\r\n]/.test(text.charAt(offset - 1));
}
