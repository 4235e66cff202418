/** Mutants of the second half of the trade that no test can kill, by file and reason. */
import {type Explained, explained} from './explained-form.js';

const STRYKERS = '"Stryker was here!"';
const STRYKERS_LIST = '["Stryker was here"]';

const ANY = 'a range that is neither of the two that are looked for lets any value pass, whatever its name';
const EVERY_TASK = 'every list of a graph has an entry for every task; the question is for the compiler';

export const TRADE_B: readonly Explained[] = [
  ...explained(
    'src/trade/bearing-clearance.ts',
    'where one wall is given the lower one is the same, so that both are there or neither',
    {
      '...(upper && lower ? {eccentricity: lengthLike(Math.abs(si(upper) - si(lower)) / 2, all)} : {}),': [
        ['upper && lower', 'upper || lower'],
      ],
    },
  ),
  ...explained('src/trade/compression-ratio.ts', ANY, {
    "notOf('length', {'the deck clearance': deck}, 'any') ??": [["'any'", '""']],
    "notOf('volume', {'the dish': dish}, 'any')": [["'any'", '""']],
  }),
  ...explained('src/trade/figure-stack.ts', 'the name stands in every match', {
    "const [, sign, factor = '1', name = ''] = head;": [["''", STRYKERS]],
  }),
  ...explained('src/trade/figures/guard-band.ts', ANY, {
    "const refusal = notOf(worked.result.accept.low.unit.dimension, {'the reading': reading}, 'any');": [
      ["'any'", '""'],
    ],
  }),
  ...explained('src/trade/figures/torque.ts', 'a share that is undefined is taken for none', {
    '...(share === undefined ? {} : {share}),': [['share === undefined', 'false']],
  }),
  ...explained('src/trade/fit-when-hot.ts', ANY, {
    "notOf('length', {'the diameter': diameter}) ?? notOf('length', {'the interference': interference}, 'any');":
      [["'any'", '""']],
    "const outside = refusal ?? notOf('temperature', {'the room': room, 'the temperature': at}, 'any');": [
      ["'any'", '""'],
    ],
  }),
  ...explained(
    'src/trade/friction.ts',
    'a nut factor is published for every condition that there is; the question is for the compiler',
    {
      'if (first === undefined)': [['first === undefined', 'false']],
      "return refused('no nut factor is published for that condition', 'state the shop’s own');": [
        ["'no nut factor is published for that condition'", '""'],
        ["'state the shop’s own'", '""'],
      ],
    },
  ),
  ...explained(
    'src/trade/grade.ts',
    'a grade without a point is one figure, and where none is found the last letter is taken, which is that one',
    {
      'const at = trimmed.search(/\\d{1,2}(?:\\.\\d)?$/);': [
        ['/\\d{1,2}(?:\\.\\d)?$/', '/\\d{1,2}(?:\\.\\d)$/'],
      ],
    },
  ),
  ...explained(
    'src/trade/grade.ts',
    'a size that begins a row ends the row before, which is found first; the first rows begin where no thread is',
    {
      'return rows.find(({over, upTo}) => size > over && size <= upTo);': [['size > over', 'size >= over']],
    },
  ),
  ...explained(
    'src/trade/inch-fit.ts',
    'of limits that go into a fit both ends are taken, as from any form that has two',
    {
      "return {form: 'range', low: inches(size + low / 1000), high: inches(size + high / 1000)};": [
        ["'range'", '""'],
      ],
    },
  ),
  ...explained(
    'src/trade/roundness.ts',
    'where there is no row there is no first reading; the question is for the compiler',
    {'if (first === undefined || row === undefined)': [['row === undefined', 'false']]},
  ),
  ...explained(
    'src/trade/task-graph.ts',
    'every name that is waited for has been found to be a task before',
    {
      'const before = sorted.map(({after}) => [...new Set(after)].flatMap((id) => at.get(id) ?? []));': [
        ['[]', STRYKERS_LIST],
      ],
    },
  ),
  ...explained('src/trade/task-graph.ts', EVERY_TASK, {
    'for (const one of ones) after[one]?.push(index);': [['after[one]?.push', 'after[one].push']],
    'for (const held of waiting.get(id) ?? []) {': [['[]', STRYKERS_LIST]],
  }),
  ...explained('src/trade/thread.ts', 'the diameter stands in every match', {
    "const diameter = decimal(match[1] ?? '');": [["''", STRYKERS]],
  }),
  ...explained(
    'src/trade/tightening-order.ts',
    'a place counted half the ring back is the same, and a slice counts it from the end',
    {
      'return halving(quarter).flatMap((k) => [k, k + 2 * quarter, k + quarter, k + 3 * quarter]);': [
        ['k + 2 * quarter', 'k - 2 * quarter'],
      ],
    },
  ),
  ...explained('src/trade/time-plan.ts', EVERY_TASK, {
    'at = (graph.before[at] ?? []).find((one) => ends[one] === start) ?? -1;': [['[]', STRYKERS_LIST]],
    'for (const index of found) for (const next of edges[index] ?? []) found.add(next);': [
      ['[]', STRYKERS_LIST],
    ],
    "return order[index] ?? '';": [["''", STRYKERS]],
  }),
];
