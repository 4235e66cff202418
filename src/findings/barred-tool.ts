/** A tool used where the specification bars it. */
import {type Action, type StepRef, whereIn} from '../build/program.js';
import {clauseOf} from '../procedure/values.js';
import type {Item, Specification} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import type {Span} from '../text/source.js';
import {barOn} from './bars.js';
import type {Context, FindingKind} from './model.js';
import {about, inNumber, itemAt} from './phrase.js';

export const barredTool: FindingKind = {
  name: 'barred-tool',
  group: 'materials and tools',
  severity: 'error',
  summary: 'A tool is used where the specification bars it',
  why: 'A steel hammer on the end of a shaft raises a burr that ruins the first bearing it passes.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft: {}
barred:
  - {what: [steel-hammer], on: [camshaft], because: it burrs the end and chips the lobes}
`,
    wrong: `
1. Tap the camshaft home. \`install: camshaft using steel-hammer\`
`,
    right: `
1. Tap the camshaft home. \`install: camshaft using soft-mallet\`
`,
  },
  before: {
    clean: judge,
    inspect: judge,
    measure: judge,
    lay: judge,
    lube: judge,
    seal: judge,
    alter: judge,
    renew: judge,
    install: judge,
    remove: judge,
    torque: judge,
    loosen: judge,
    lock: judge,
    stripe: judge,
    turn: judge,
    fill: judge,
    drain: judge,
    check: judge,
  },
};

function judge({item, places, tag, step}: Action, {book, report}: Context): void {
  const value = clauseOf(tag, 'using')?.value;
  if (value?.type !== 'ids') return;
  for (const {id, span} of value.ids) {
    const bar = barOn(book.spec, id, item);
    if (bar === undefined) continue;
    report({
      where: whereIn(step, span),
      message: `${itemAt(item, places)} ${inNumber(item, '[is|are] worked on')} with ${id}, which is barred there: ${bar.because}`,
      ...about(item, places),
      related: [{where: bar.where, says: `${id} is barred here`}],
      ...(value.ids.length === 1 && instead(item, span, book.spec, step)),
    });
  }
}

/** The only tool that the part asks for, in place of the only one used. */
function instead(item: Item, span: Span, spec: Specification, step: StepRef): {fix?: Fix} {
  if (item.kind !== 'part') return {};
  const [only, second] = item.using;
  if (only === undefined || second !== undefined || barOn(spec, only.value, item)) return {};
  const {file} = step.procedure.source;
  return {fix: {title: `Use ${only.value}`, file, edits: [{span, text: only.value}]}};
}
