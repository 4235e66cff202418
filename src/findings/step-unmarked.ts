/** A line that begins with the next step's number and is no step, for want of a point and a space. */
import {type StepRef, whereIn} from '../build/program.js';
import type {Span} from '../text/source.js';
import type {FindingKind, SpecificationContext} from './model.js';
import {inFile} from './step-prose.js';

const PUMP = `
parts:
  block: {given: true}
  oil-pump: {}
fasteners:
  pump-bolts: {holds: [oil-pump], torque: 18 lbf·ft, threads: dry, lock: tab-washer}
`;

export const stepUnmarked: FindingKind = {
  name: 'step-unmarked',
  group: 'reading',
  severity: 'error',
  summary: 'A line begins with the number of the next step and is part of this one',
  why: 'Without a point and a space (`13 Bend`, `13.Bend`, `13) Bend`) Markdown runs the line into the step above: it has no box of its own, and two things are signed for with one tick.',
  source: 'CommonMark 0.31, 5.2, list items',
  example: {
    engine: PUMP,
    wrong: `
1. Offer the pump up. \`install: oil-pump\`
2. Bring the bolts up. \`torque: pump-bolts\`
3 Bend the tabs over. \`lock: pump-bolts\`
`,
    right: `
1. Offer the pump up. \`install: oil-pump\`
2. Bring the bolts up. \`torque: pump-bolts\`
3. Bend the tabs over. \`lock: pump-bolts\`
`,
  },
  part({steps}, context) {
    for (const step of steps) judge(step, context);
  },
};

function judge(step: StepRef, {worked, report}: SpecificationContext): void {
  const {
    procedure,
    step: {span, number},
  } = step;
  const own = MARKER.exec(procedure.source.text.slice(span.start, span.start + LONGEST))?.[1];
  if (own === undefined) return;
  const prose = worked.prose(step);
  let next = Number(own) + 1;
  for (const found of prose.text.matchAll(LINE)) {
    const {0: line, index, groups: {said = '', mark = ''} = {}} = found;
    const start = index + line.length - said.length - mark.length;
    const where = inFile(prose, {start, end: start + said.length});
    if (Number(said) !== next || !startsStep(mark, procedure.source.text.slice(0, where.start))) continue;
    next++;
    report({
      where: whereIn(step, where),
      message: `the line that begins with ${said} is part of step ${number}; write \`${said}. \` for a step of its own`,
      fix: {
        title: `Write ${said}. as a step of its own`,
        file: procedure.source.file,
        edits: [{span: asStep(procedure.source.text, span, where, mark), text: `${said}. `}],
      },
    });
  }
}

/** Longer than any marker of a list. */
const LONGEST = 12;
const MARKER = /^(\d{1,9})\./;
/** A number at the beginning of a line, and what stands between it and a word or a tag. */
const LINE = /(?:^|\n)[ \t]*(?<said>\d{1,3})(?<mark>[ \t]{1,4}|[.):][ \t]{0,4})(?=\p{Lu}|\p{Lt}|\p{Lo})/gu;

/** After a bare number only where a sentence or a tag ended before it, lest `with the\n13 Allen key` be taken for a step. */
function startsStep(mark: string, before: string): boolean {
  return mark.trim() !== '' || /[.!?:)`]/.test(before.trimEnd().slice(-1));
}

/** From the beginning of the line, so that what was indented stands where the markers of its list do. */
function asStep(text: string, step: Span, said: Span, mark: string): Span {
  const line = text.lastIndexOf('\n', said.start) + 1;
  const indent = step.start - (text.lastIndexOf('\n', step.start - 1) + 1);
  return {start: Math.min(said.start, line + indent), end: said.end + mark.length};
}
