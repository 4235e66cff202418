/** A gauge or wrench is used past the day by which it had to be calibrated again. */
import {type Action, whereIn} from '../build/program.js';
import {clauseOf} from '../procedure/values.js';
import type {Located, Tool} from '../spec/model.js';
import type {Span} from '../text/source.js';
import type {Context, FindingKind} from './model.js';
import {tagWhere} from './phrase.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  dial-gauge: {name: dial gauge, gauge: true, due: 2026-02-01}
`;

export const calibrationDue: FindingKind = {
  name: 'calibration-due',
  group: 'materials and tools',
  severity: 'warning',
  summary: 'A tool is used past its calibration date',
  why: 'A reading is worth what the gauge is worth on the day. Where today is not known, only a tool that was overdue when its procedure was dated is found.',
  source: 'common practice, no source',
  example: {
    shop: SHOP,
    engine: `
parts:
  block: {given: true}
  crankshaft: {}
fits:
  end-play: {between: [block, crankshaft], limits: 0.004–0.008 in, when: {installed: [crankshaft]}}
`,
    wrong: `
1. Set the crankshaft down. \`install: crankshaft\`
2. Measure the end play at the nose. \`measure: end-play using dial-gauge\`
`,
    right: `
1. Set the crankshaft down. \`install: crankshaft\`
2. Measure the end play at the nose. \`measure: end-play using dial-gauge\`
`,
    rightShop: SHOP.replace('2026-02-01', '2027-02-01'),
  },
  book(context) {
    for (const {actions} of context.program.parts) {
      // Once a tool and procedure: the first step that takes it up.
      const seen = new Set<string>();
      for (const action of actions) judge(action, seen, context);
    }
  },
};

function judge(action: Action, seen: Set<string>, {book, today, report}: Context): void {
  const {date} = action.step.procedure.front;
  for (const {id, span} of toolsOf(action)) {
    const tool = book.spec.items.get(id);
    if (tool?.kind !== 'tool' || tool.due === undefined || seen.has(id)) continue;
    const late = lateness(tool.due.value, date, today);
    if (late === undefined) continue;
    seen.add(id);
    report({
      where: span ? whereIn(action.step, span) : tagWhere(action),
      message: `${id} was due for calibration on ${tool.due.value}, and ${late}`,
      item: id,
      related: [due(tool, tool.due)],
    });
  }
}

/** ISO 8601 dates sort as text, behind none at all. */
function lateness(due: string, procedure: string, today: string | undefined): string | undefined {
  if (due < (today ?? '')) return `today is ${today}`;
  return due < procedure ? `the procedure is of ${procedure}` : undefined;
}

/** The tools that the tag names, or the only one specified where it names none. */
function toolsOf({item, tag}: Action): readonly {readonly id: string; readonly span?: Span}[] {
  const value = clauseOf(tag, 'using')?.value;
  if (value?.type === 'ids') return value.ids;
  if (item.kind !== 'fit' && item.kind !== 'check' && item.kind !== 'part') return [];
  const [only, second] = item.using;
  return only === undefined || second !== undefined ? [] : [{id: only.value}];
}

function due({id}: Tool, {where}: Located<string>) {
  return {where, says: `${id} is due by this date`};
}
