/** A fastener is locked by another means than the specification asks for. */
import {isLockAsked} from '../build/locks.js';
import {type Action, whereIn} from '../build/program.js';
import {clauseOf} from '../procedure/values.js';
import {locksOf, lockText} from '../spec/locks.js';
import type {Fastener} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import type {Span} from '../text/source.js';
import type {Context, FindingKind} from './model.js';
import {about as aboutIt, itemAt, listed, specified, tagWhere} from './phrase.js';

export const lockWrongKind: FindingKind = {
  name: 'lock-wrong-kind',
  group: 'order',
  severity: 'error',
  summary: 'A fastener is locked otherwise than specified',
  why: 'A bolt drilled through its head for wire has no slot for a pin, and a pin driven where it does not fit falls out.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: safety-wire}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Pin every bolt. \`lock: main-cap-bolts with cotter-pins\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Wire the bolts in pairs. \`lock: main-cap-bolts with wire-032\`
`,
  },
  before: {
    lock(action, context) {
      if (action.item.kind === 'fastener') judge(action, action.item, context);
    },
  },
};

function judge(action: Action, fastener: Fastener, context: Context): void {
  if (fastener.lock === undefined || fastener.lock.value === 'unknown') return;
  const {book, report} = context;
  const asked = locksOf(fastener);
  const at = itemAt(fastener, action.places);
  const about = {...aboutIt(fastener, action.places), related: [specifiedAs(fastener)]};
  if (asked.length === 0) {
    report({where: tagWhere(action), message: `${at} is specified without a lock`, ...about});
    return;
  }
  const value = clauseOf(action.tag, 'with')?.value;
  const named = value?.type === 'ids' ? value.ids : [];
  if (named.length === 0 && asked.length > 1) {
    const message = `${at}: which of ${listed(asked, 'and')} goes on here is not said`;
    report({where: tagWhere(action), message, ...about});
  }
  const isAsked = (id: string) => asked.some((one) => isLockAsked(id, one, book.spec));
  const wrong = named.find(({id}) => !isAsked(id));
  if (wrong === undefined) return;
  report({
    where: whereIn(action.step, wrong.span),
    message: `${at} is locked with ${wrong.id}, and the specification asks for ${listed(asked, 'and')}`,
    ...about,
    ...fixOf(action, wrong.span, asked),
  });
}

function specifiedAs(fastener: Fastener) {
  return specified(fastener, `${fastener.id} is specified with lock: ${lockText(fastener.lock?.value)}`);
}

/** Of several locks nobody can say which was meant. */
function fixOf({step}: Action, span: Span, [asked, other]: readonly string[]): {readonly fix?: Fix} {
  if (asked === undefined || other !== undefined) return {};
  const {file} = step.procedure.source;
  return {fix: {title: `Lock with ${asked}`, file, edits: [{span, text: asked}]}};
}
