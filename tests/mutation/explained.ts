/** Mutants that no test can kill, each with the reason; `explained.test.ts` sees that their lines still stand there. */

import {FINDINGS_A_TO_E} from './explained-a-e.js';
import {FINDINGS_CAUSES} from './explained-causes.js';
import {FINDINGS_F_TO_M} from './explained-f-m.js';
import type {Explained} from './explained-form.js';
import {FINDINGS_OF_JOINTS} from './explained-joints.js';
import {FINDINGS_ON_PROSE} from './explained-prose.js';
import {TRADE_A} from './explained-trade-a.js';
import {TRADE_B} from './explained-trade-b.js';

const STRYKERS = '"Stryker was here!"';
/** The same where a list stood that was empty. */
const STRYKERS_LIST = '["Stryker was here"]';

export const EXPLAINED: readonly Explained[] = [
  {
    file: 'src/build/alterations.ts',
    line: 'if (needs.length === 0) return procedures;',
    code: 'needs.length === 0',
    becomes: 'false',
    because: 'without a need the procedures are gone through for nothing, and stay what they are',
  },
  {
    file: 'src/build/alterations.ts',
    line: 'if (substitute === undefined) return [];',
    code: 'substitute === undefined',
    becomes: 'false',
    because: 'a job is read against the specification, and holds no other substitute',
  },
  {
    file: 'src/build/alterations.ts',
    line: 'if (substitute === undefined) return [];',
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'a job is read against the specification, and holds no other substitute',
  },
  {
    file: 'src/build/alterations.ts',
    line: 'if (step.id !== undefined) this.#marks.set(step.id, new Map(this.#raw));',
    code: 'step.id !== undefined',
    becomes: 'true',
    because: 'what is noted under no name is never asked for',
  },
  {
    file: 'src/build/alterations.ts',
    line: "return verb === 'measure' || verb === 'lay' ? relatedTo(fitsOf, part) : [];",
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'no tag names a word that is no item',
  },
  {
    file: 'src/build/effects.ts',
    line: 'EFFECTS[action.verb]?.(doing);',
    code: 'EFFECTS[action.verb]?.(doing)',
    becomes: 'EFFECTS[action.verb](doing)',
    because: 'every verb that deals with items stands in the table',
  },
  {
    file: 'src/build/effects.ts',
    line: "const only = item.kind === 'part' ? item.alterations.map(({value}) => value) : [];",
    code: "item.kind === 'part'",
    becomes: 'true',
    because: 'only parts are altered; the question is for the compiler',
  },
  {
    file: 'src/build/effects.ts',
    line: "const only = item.kind === 'part' ? item.alterations.map(({value}) => value) : [];",
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'only parts are altered; the question is for the compiler',
  },
  {
    file: 'src/build/effects.ts',
    line: 'if (!isFastenerAction(action)) return;',
    code: '!isFastenerAction(action)',
    becomes: 'false',
    because: 'only fasteners are torqued and locked; the question is for the compiler',
  },
  {
    file: 'src/build/effects.ts',
    line: "if (item.kind !== 'part') return;",
    code: "item.kind !== 'part'",
    becomes: 'false',
    because: 'only parts are removed; the question is for the compiler',
  },
  {
    file: 'src/build/job-specification.ts',
    line: "if (item.kind !== 'surface') return item;",
    code: "item.kind !== 'surface'",
    becomes: 'false',
    because: 'a job grinds surfaces alone; the question is for the compiler',
  },
  {
    file: 'src/build/job-specification.ts',
    line: "if (under === undefined || typeof fit.limits?.value !== 'object') return fit;",
    code: "typeof fit.limits?.value !== 'object'",
    becomes: 'false',
    because: 'a fit whose limits are those of a size has limits; the question is for the compiler',
  },
  {
    file: 'src/build/job-specification.ts',
    line: "if (under === undefined || typeof fit.limits?.value !== 'object') return fit;",
    code: 'fit.limits?.value',
    becomes: 'fit.limits.value',
    because: 'a fit whose limits are those of a size has limits; the question is for the compiler',
  },
  {
    file: 'src/build/ledger.ts',
    line: 'if (id === undefined) return;',
    code: 'id === undefined',
    becomes: 'false',
    because: 'what is noted under no name is never asked for',
  },
  {
    file: 'src/build/options.ts',
    line: 'export function frontCondition({only = []}: Front, {engine, options}: Specification): Condition {',
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'what has no id is no option',
  },
  {
    file: 'src/build/options.ts',
    line: 'let above: readonly Section[] = [];',
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'what has no depth is not above anything',
  },
  {
    file: 'src/build/reached.ts',
    line: "return action.item.kind === 'fastener';",
    code: "action.item.kind === 'fastener'",
    becomes: 'true',
    because: 'it is asked where a torque or a lock is judged, and only fasteners have those',
  },
  {
    file: 'src/build/stretches.ts',
    line: "const materials = [id, ...(typeof seal === 'object' ? seal : [])].map((one) => spec.items.get(one));",
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'what is no item has no cure',
  },
  {
    file: 'src/build/stretches.ts',
    line: "return item.kind === 'part' && item.given;",
    code: "item.kind === 'part'",
    becomes: 'true',
    because: 'only a part is given; the question is for the compiler',
  },
  {
    file: 'src/build/stretches.ts',
    line: 'default:',
    code: 'default:\n      return [];',
    becomes: 'default:',
    because: 'what is undefined was touched by no step',
  },
  {
    file: 'src/build/stretches.ts',
    line: 'return [];',
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'what is no item was touched by no step',
  },
  {
    file: 'src/build/without-options.ts',
    line: "if (next.type === 'left-out' && last?.type === 'left-out' && sameOptions(last, next)) {",
    code: "next.type === 'left-out'",
    becomes: 'true',
    because: 'a block that is no gap has no options, and so not the same',
  },
  {
    file: 'src/findings/sentences.ts',
    line: "return capital ? before?.text !== 'no' && before?.text !== 'fig' : !ABBREVIATIONS.has(before?.text ?? '');",
    code: "''",
    becomes: STRYKERS,
    because: 'where no word stands before, either text is no abbreviation',
  },
  {
    file: 'src/trade/cold-steel.ts',
    line: 'if (warmest === undefined) return undefined;',
    code: 'warmest === undefined',
    becomes: 'false',
    because: 'the table is not empty; the question is for the compiler',
  },
  {
    file: 'src/trade/compression-ratio.ts',
    line: 'return ratio > 3 - 1e-6 && ratio < 30 + 1e-6;',
    code: 'ratio < 30 + 1e-6',
    becomes: 'ratio <= 30 + 1e-6',
    because: 'the margin takes up the last figures of a ratio; none stands on its end',
  },
  {
    file: 'src/trade/cotter-pin.ts',
    line: 'const bolt = COTTER_FOR_BOLT.find((row) => thread && Math.abs(inches(thread.diameter) - row.inches) < 1e-4);',
    code: 'Math.abs(inches(thread.diameter) - row.inches) < 1e-4',
    becomes: 'Math.abs(inches(thread.diameter) - row.inches) <= 1e-4',
    because: 'sizes of bolts stand farther apart than that, and none is off by just as much',
  },
  {
    file: 'src/trade/task-graph.ts',
    line: 'for (const one of after) waiting.get(one)?.push(held);',
    code: 'waiting.get(one)?.push',
    becomes: 'waiting.get(one).push',
    because: 'every name that is waited for has been found to be a task before',
  },
  {
    file: 'src/trade/time-plan.ts',
    line: 'return seconds < 1e-6 ? 0 : seconds;',
    code: 'seconds < 1e-6',
    becomes: 'seconds <= 1e-6',
    because: 'the margin takes up the last figures of a sum; no time stands on its end',
  },
  {
    file: 'src/build/misnamed.ts',
    line: '...mayBear(spec.writtenOver ?? [], kinds),',
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'of what was written over only the kinds that are asked for are kept, and a text has none',
  },
  {
    file: 'src/build/relations.ts',
    line: 'const items = part.closes.flatMap(({value}) => spec.items.get(value) ?? []);',
    code: '[]',
    becomes: STRYKERS_LIST,
    because: 'the next line keeps surfaces and joints alone',
  },
  {
    file: 'src/build/soiling.ts',
    line: "else if (face.kind === 'joint')",
    code: "face.kind === 'joint'",
    becomes: 'true',
    because: 'whether something is clean is asked of surfaces and joints, never of a part',
  },
  ...FINDINGS_A_TO_E,
  ...FINDINGS_CAUSES,
  ...FINDINGS_F_TO_M,
  ...TRADE_A,
  ...TRADE_B,
  ...FINDINGS_ON_PROSE,
  ...FINDINGS_OF_JOINTS,
];

export function explanationOf(found: Omit<Explained, 'because'>): Explained | undefined {
  const keys = ['file', 'line', 'code', 'becomes'] as const;
  return EXPLAINED.find((one) => keys.every((key) => one[key] === found[key]));
}
