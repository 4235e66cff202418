/** A reading may come out of its limits, and the procedures do not say what then. */
import {type Node, type StepRef, whereIn} from '../build/program.js';
import type {Procedure} from '../procedure/model.js';
import type {BranchState} from '../procedure/verbs.js';
import {placesOf} from '../spec/items.js';
import type {Check, Fit} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import type {Span} from '../text/source.js';
import {LOOP_ENGINE, LOOP_RIGHT} from './loop-example.js';
import type {Context, FindingKind} from './model.js';
import {about, itemAt, specified, tagWhere} from './phrase.js';
import {type LostSteps, shallowSteps} from './shallow-steps.js';
import {sidesOf} from './sides.js';

export const reworkMissing: FindingKind = {
  name: 'rework-missing',
  group: 'order',
  severity: 'error',
  summary: 'The specification asks what to do with a reading that is out, and no step says it',
  why: 'With nothing written down, a reading that is out by a hair gets called in. Sub-steps belong to a step when they are indented as far as its text begins (CommonMark): three spaces below a number of one figure, four below one of two.',
  source: 'common practice, no source',
  example: {
    engine: LOOP_ENGINE.replace('limits:', 'rework: true, limits:'),
    wrong: `
1. Lower the crankshaft in. \`install: crankshaft\`
2. Read the end play. \`measure: end-play using feeler-gauges\`
`,
    right: LOOP_RIGHT,
  },
  book(context) {
    const {program, report} = context;
    const branches: Node[] = [];
    for (const {nodes} of program.parts) gatherBranches(nodes, branches);
    for (const {step, when, below} of branches) {
      if (when === undefined || below.length > 0) continue;
      const lost = listInProse(step) ?? shallowSteps(step);
      report({
        where: whereIn(step, lost?.span ?? when.tag.span),
        message: `${when.item.id}: the branch has no steps under it${lost ? `; ${lost.says}` : ''}`,
        item: when.item.id,
        step,
        ...(lost && {fix: lost.fix}),
      });
    }
    for (const item of [...context.relations.fits, ...context.relations.checks]) {
      if (!item.rework) continue;
      const read = firstReading(item.id, context);
      for (const [open, places] of unsaid(item, branches)) {
        report({
          where: read === undefined ? item.where : tagWhere(read),
          message: `${itemAt(item, places)} may be ${open}, and no step says what to do then`,
          ...about(item, places),
          related: [specified(item, `${item.id} is specified with rework`)],
        });
      }
    }
  },
};

/** A line of the step's own prose that was meant as the first of its sub-steps. */
function listInProse({procedure, step}: StepRef): LostSteps | undefined {
  const text = procedure.source.text.slice(step.headSpan.start, step.span.end);
  const found = /\n[ \t]{0,99}(\d{1,9})[.)][ \t]/.exec(text);
  const [, number] = found ?? [];
  if (found === null || number === undefined || number === '1') return undefined;
  const end = step.headSpan.start + found.index + found[0].length - 1;
  const span = {start: end - number.length - 1, end};
  const says = `a list right below a line of prose must begin with 1, and this one begins with ${number} (CommonMark)`;
  return {says, span, fix: withGap(procedure, number, span)};
}

/** An empty line lets a list begin with any number. */
function withGap({source}: Procedure, number: string, span: Span): Fix {
  const at = source.text.lastIndexOf('\n', span.start) + 1;
  const end = source.text[at - 2] === '\r' ? '\r\n' : '\n';
  return {
    title: `Put an empty line before ${number}`,
    file: source.file,
    edits: [{span: {start: at, end: at}, text: end}],
  };
}

/** The cases for which no branch stands, each with the places of the item at which it is left. */
function unsaid(item: Fit | Check, branches: readonly Node[]): Map<BranchState, string[]> {
  const left = new Map<BranchState, string[]>();
  for (const place of placesOf(item)) {
    const said = branches.flatMap(({when}) =>
      when?.item.id === item.id && when.places.includes(place) ? [when.is] : [],
    );
    const open = unsaidOf(item, said);
    if (open !== undefined) left.set(open, [...(left.get(open) ?? []), place]);
  }
  return left;
}

/** The case that is left; undefined where there is none. */
function unsaidOf(item: Fit | Check, said: readonly BranchState[]): BranchState | undefined {
  if (said.length === 0) return 'out';
  if (said.includes('out') || said.includes('in')) return undefined;
  return sidesOf(item).find((side) => !said.includes(side));
}

function gatherBranches(nodes: readonly Node[], branches: Node[]): void {
  for (const node of nodes) {
    if (node.when !== undefined) branches.push(node);
    gatherBranches(node.below, branches);
  }
}

function firstReading(id: string, {program}: Context) {
  for (const {actions} of program.parts) {
    const found = actions.find(({item, verb}) => item.id === id && (verb === 'measure' || verb === 'check'));
    if (found !== undefined) return found;
  }
  return undefined;
}
