/** A part goes in without the tool, or without the turning, that the specification asks for. */
import {type Action, whereIn} from '../build/program.js';
import type {Step} from '../procedure/model.js';
import {clauseOf, idsOf, tagsOf} from '../procedure/values.js';
import type {Part} from '../spec/model.js';
import {codeSpanAround} from '../text/code-span.js';
import type {Edit, Fix} from '../text/edit.js';
import {barOn} from './bars.js';
import type {Context, FindingKind} from './model.js';
import {about, inNumber, itemAt, listed, specified, tagWhere} from './phrase.js';

export const installManner: FindingKind = {
  name: 'install-manner',
  group: 'materials and tools',
  severity: 'error',
  summary: 'A part goes in without the tool, or without the turning, that the specification asks for',
  why: 'A camshaft pushed straight through its bearings shaves them; a plug driven off centre weeps.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft: {using: [soft-mallet], turning: true}
`,
    wrong: `
1. Slide the camshaft in from the front. \`install: camshaft using soft-mallet\`
`,
    right: `
1. Slide the camshaft in from the front, turning it as it goes. \`install: camshaft using soft-mallet\` \`turn: camshaft\`
`,
  },
  before: {
    install(action, context) {
      tools(action, context);
      turning(action, context);
    },
  },
};

function tools(action: Action<Part>, {book, report}: Context): void {
  const {item: part} = action;
  const asked = part.using.map(({value}) => value);
  const used = idsOf(action.tag, 'using');
  if (asked.length === 0 || used.some((id) => asked.includes(id))) return;
  // A slip in the specification is a finding there; nobody can use what nothing is called.
  if (asked.some((id) => !book.spec.items.has(id))) return;
  // A barred tool is a finding of its own, and says what to use instead.
  if (used.some((id) => barOn(book.spec, id, part) !== undefined)) return;
  const {number} = action.step.step;
  const does = used.length === 0 ? 'names no tool' : `uses ${listed(used, 'and')}`;
  const [fix] = asked.length === 1 ? asked.map((tool) => withTool(action, tool)) : [];
  report({
    where: tagWhere(action),
    message: `${itemAt(part, action.places)} must go in with ${listed(asked)}, and step ${number} ${does}`,
    ...about(part, action.places),
    related: [specified(part)],
    ...(fix && {fix}),
  });
}

function withTool(action: Action, tool: string): Fix | undefined {
  const {tag, step} = action;
  const clause = clauseOf(tag, 'using');
  if (clause?.value.type === 'ids' && clause.value.ids.length > 1) return undefined;
  const edit: Edit = clause
    ? {span: clause.valueSpan, text: tool}
    : {span: {start: tag.span.end, end: tag.span.end}, text: ` using ${tool}`};
  return {title: `Use ${tool}`, file: step.procedure.source.file, edits: [edit]};
}

function turning(action: Action<Part>, {report}: Context): void {
  const {item: part} = action;
  if (!part.turning || turns(action.step.step, part.id)) return;
  const {step, tag} = action;
  const {end} = codeSpanAround(tag.span, step.procedure.source.text);
  report({
    where: tagWhere(action),
    message: `${itemAt(part, action.places)} must be turned as ${inNumber(part, '[it goes|they go]')} in, and step ${step.step.number} does not turn ${inNumber(part, '[it|them]')}`,
    ...about(part, action.places),
    related: [specified(part)],
    fix: {
      title: `Add \`turn: ${part.id}\` to step ${step.step.number}`,
      file: whereIn(step, tag.span).file,
      edits: [{span: {start: end, end}, text: ` \`turn: ${part.id}\``}],
    },
  });
}

/** The turning may stand in the step or in one below it. */
function turns(step: Step, id: string): boolean {
  return (
    tagsOf(step, 'turn').some(({targets}) => targets.some((target) => target.id === id)) ||
    step.steps.some((below) => turns(below, id))
  );
}
