/** A fastener is locked by another means than the specification asks for. */
import {lockKindOf} from '../build/effects.js';
import {type Action, whereIn} from '../build/program.js';
import {clauseOf} from '../procedure/values.js';
import {isLockKind} from '../spec/locks.js';
import type {Fastener} from '../spec/model.js';
import type {Context, FindingKind} from './model.js';
import {about, itemAt, specified, tagWhere} from './phrase.js';

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

function judge(action: Action, fastener: Fastener, {book, report}: Context): void {
  const asked = fastener.lock?.value;
  if (asked === undefined || asked === 'unknown') return;
  const clause = clauseOf(action.tag, 'with');
  const named = clause?.value.type === 'ids' ? clause.value.ids : [];
  const wrong = named.find(({id}) => {
    const kind = lockKindOf(book.spec, id);
    return id !== asked && !(isLockKind(asked) && kind === asked);
  });
  if (asked !== 'none' && wrong === undefined) return;
  report({
    where: wrong === undefined ? tagWhere(action) : whereIn(action.step, wrong.span),
    message:
      asked === 'none'
        ? `${itemAt(fastener, action.places)} is specified without a lock`
        : `${itemAt(fastener, action.places)} is locked with ${wrong?.id}, and the specification asks for ${asked}`,
    ...about(fastener, action.places),
    related: [specified(fastener, `${fastener.id} is specified with lock: ${asked}`)],
    ...(wrong !== undefined &&
      asked !== 'none' && {
        fix: {
          title: `Lock with ${asked}`,
          file: action.step.procedure.source.file,
          edits: [{span: wrong.span, text: asked}],
        },
      }),
  });
}
