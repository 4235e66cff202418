/** Mutants of bolts, fits, limits, heat and time plans that no test can kill, by file and reason. */
import {type Explained, explained} from './explained-form.js';

const ANY = 'only the two other words set an end; any other text than "any" sets none, too';
const NAMED = 'the first is what was matched as a whole, which is passed over';
const ALWAYS = 'what is taken apart here has that part; the text in its place is for the compiler';

const STRYKERS = '"Stryker was here!"';
const STRYKERS_LIST = '["Stryker was here"]';

export const TRADE_A: readonly Explained[] = [
  ...explained('src/trade/adapter.ts', ANY, {
    "notOf('angle', {'the angle': angle}, 'any');": [["'any'", '""']],
  }),
  ...explained(
    'src/trade/adapter.ts',
    'one less a part of one ends at the 53rd binary place, and the double that stands for 0.1 goes on to the 55th: none is it',
    {'if (reach < 0.1)': [['reach < 0.1', 'reach <= 0.1']]},
  ),
  ...explained(
    'src/trade/cold-steel.ts',
    'a stretch without length adds nothing, and something is always left',
    {
      'if (cold >= at) continue;': [['cold >= at', 'cold > at']],
    },
  ),
  ...explained(
    'src/trade/cold-steel.ts',
    'what comes to just the end of a stretch is found at the beginning of the next; to the end of the last none comes, as what is left there is a multiple of a coarser bit than its 110.4 ends in',
    {
      'if (part >= left) return kelvinOf(at - fall(left, high, low, at - cold));': [
        ['part >= left', 'part > left'],
      ],
    },
  ),
  ...explained(
    'src/trade/cold-steel.ts',
    'on a row both stretches that meet there give the coefficient of the row; the last row is never asked for',
    {
      'const below = COLD_STEEL.findIndex(([cold]) => cold <= fahrenheit);': [
        ['cold <= fahrenheit', 'cold < fahrenheit'],
      ],
    },
  ),
  ...explained(
    'src/trade/cold-steel.ts',
    'where there is no second row there is no first either, and the table is not empty; the questions are for the compiler',
    {
      'if (one === undefined || two === undefined) return warmest?.[1] ?? 0;': [
        ['two === undefined', 'false'],
        ['warmest?.[1]', 'warmest[1]'],
      ],
    },
  ),
  ...explained(
    'src/trade/engagement.ts',
    'a ratio of areas times a ratio of strengths is one to the last bit by chance alone, and then both threads strip at once',
    {"weaker: ratio > 1 ? 'hole' : 'bolt',": [['ratio > 1', 'ratio >= 1']]},
  ),
  ...explained('src/trade/figure-layout.ts', ALWAYS, {
    "const [, name = '', first = '', second] = pattern;": [
      ["''", STRYKERS],
      ["''", STRYKERS],
    ],
  }),
  ...explained('src/trade/figure-layout.ts', NAMED, {
    'const [, id, x, y] = parts ?? [];': [['[]', STRYKERS_LIST]],
  }),
  ...explained('src/trade/figure-shrink.ts', NAMED, {
    "const [, value, unit = ''] = stated ?? [];": [['[]', STRYKERS_LIST]],
  }),
  ...explained('src/trade/figure-shrink.ts', 'what has no unit has no value, and is refused by that', {
    "const [, value, unit = ''] = stated ?? [];": [["''", STRYKERS]],
  }),
  ...explained(
    'src/trade/figure.ts',
    'every option has an example; the text in its place is for the compiler',
    {
      'return refused(`--${key} is missing: ${says}`, `write --${key} "${examples[0] ?? \'\'}"`);': [
        ["''", STRYKERS],
      ],
    },
  ),
  ...explained('src/trade/figures/fit.ts', NAMED, {
    'const [, hole, shaft] = /^\\s*([a-z]{1,2}\\d{1,2})[\\s,-]+([a-z]{1,2}\\d{1,2})\\s*$/i.exec(given) ?? [];':
      [['[]', STRYKERS_LIST]],
  }),
  ...explained('src/trade/figures/time-plan.ts', ALWAYS, {
    "const [work = '', ...clauses] = given.slice(colon + 1).split(',');": [["''", STRYKERS]],
    "const [first = '', ...rest] = clause.split(/\\s+/);": [["''", STRYKERS]],
  }),
  ...explained('src/trade/fit.ts', ALWAYS, {
    "const [first = '', second, ...more] = text.split('/');": [["''", STRYKERS]],
  }),
  ...explained('src/trade/gauge-capability.ts', ANY, {
    "notOf(dimension, {'the lower limit': range.low, 'the upper limit': range.high}, 'any') ??": [
      ["'any'", '""'],
    ],
  }),
  ...explained('src/trade/guard-band.ts', ANY, {
    "notOf(dimension, {'the lower limit': range.low, 'the upper limit': range.high}, 'any') ??": [
      ["'any'", '""'],
    ],
  }),
  ...explained('src/trade/iso-limits.ts', ALWAYS, {
    "const [, letters = '', grade = ''] = parts;": [
      ["''", STRYKERS],
      ["''", STRYKERS],
    ],
  }),
  ...explained(
    'src/trade/one-pair.ts',
    'every task has its list of those after it; the other is for the compiler',
    {
      'for (const after of graph.after[next] ?? []) {': [['[]', STRYKERS_LIST]],
    },
  ),
  ...explained(
    'src/trade/preload.ts',
    'without a preload there is a grade, or it was refused; the question is for the compiler',
    {
      ": {name: 'preload', value: `${percent(share)} % of proof load, ${grade?.name}`};": [
        ['grade?.name', 'grade.name'],
      ],
    },
  ),
  ...explained(
    'src/trade/preload.ts',
    'torques are rounded to twelve figures in N·m, and none of those is 10 lbf·ft',
    {
      "return feet < 10 ? figures(feet * 12, 'lbf·in', 3) : figures(feet, 'lbf·ft', 3);": [
        ['feet < 10', 'feet <= 10'],
      ],
    },
  ),
  ...explained('src/trade/shrink-fit.ts', ANY, {
    "notOf('temperature', {'the room': room}, 'any');": [["'any'", '""']],
  }),
  ...explained('src/trade/stack.ts', ANY, {
    "const refusal = notOf('length', {'the least': least}, 'any');": [["'any'", '""']],
    "notOf('length', {[name]: limits.low}, 'any') ?? notOf('length', {[name]: limits.high}, 'any');": [
      ["'any'", '""'],
      ["'any'", '""'],
    ],
  }),
  ...explained(
    'src/trade/stack.ts',
    'what is no reading, or none at all, says nothing of how fine the sum is',
    {
      "stated: [limits.low, limits.high, ...(size.form === 'tolerance' ? [size.minus, size.plus] : [])],": [
        ["size.form === 'tolerance'", 'true'],
        ['[]', STRYKERS_LIST],
      ],
    },
  ),
  ...explained(
    'src/trade/stress-area.ts',
    'the square of a diameter less a part of its pitch, times π/4, is never a round thousand',
    {
      'return value < 10 ** count ? value.toPrecision(count) : value.toFixed(0);': [
        ['value < 10 ** count', 'value <= 10 ** count'],
      ],
    },
  ),
  ...explained(
    'src/trade/torque-angle.ts',
    'a share worked out of stiffness, friction and strength is 100 to the last bit by chance alone, where either word holds',
    {
      "if (share === undefined || share.high <= 100) return '';": [['share.high <= 100', 'share.high < 100']],
      'return share.likely > 100': [['share.likely > 100', 'share.likely >= 100']],
    },
  ),
];
