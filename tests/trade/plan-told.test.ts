/** Time plans and the graphs under them, whole: every number by hand. Invented jobs. */
import {describe, expect, test} from 'vitest';
import {formatAmount, formatQuantity} from '../../src/quantity/format.js';
import {graphOf, type Task} from '../../src/trade/task-graph.js';
import {timePlan} from '../../src/trade/time-plan.js';
import {q} from '../help/amount.js';
import {inputsOf, refused} from './ask.js';
import {out, result} from './unwrap.js';

/** `seal: 20 min, wait 24 h, after clean head`. */
function task(text: string): Task {
  const [, id = '', hands = '', wait, after = ''] =
    /^(\S+): ([^,]+)(?:, wait ([^,]+))?(?:, after (.+))?$/.exec(text) ?? [];
  return {
    id,
    hands: q(hands),
    ...(wait === undefined ? {} : {wait: q(wait)}),
    after: after.split(' ').filter((name) => name !== ''),
  };
}

const SUMP = [
  'clean: 30 min',
  'seal: 20 min, wait 4 h, after clean',
  'head: 3 h',
  'fill: 10 min, after seal head',
];

function planOf(texts: readonly string[]) {
  return timePlan(texts.map(task));
}

/** A line for each task, and those of the whole. */
function told(texts: readonly string[]): readonly string[] {
  const {result: plan, band} = out(planOf(texts));
  const value = band?.value;
  return [
    ...plan.tasks.map(({id, start, end, slack, during}) =>
      [id, ...[start, end, slack].map(formatQuantity), ...during].join(', '),
    ),
    `${formatQuantity(plan.handsOn)} of work, ${formatQuantity(plan.waiting)} of waits`,
    `${formatQuantity(plan.earliest)} by ${plan.path.join(', ')}`,
    `alone ${typeof value === 'object' && 'form' in value ? formatAmount(value) : ''} by ${plan.alone.order.join(', ')}`,
  ];
}

describe('a whole plan', () => {
  test('a cure that the finish hangs on', () => {
    expect(told(SUMP)).toEqual([
      'clean, 0 min, 30 min, 0 min',
      'seal, 30 min, 4.8 h, 0 min, head',
      'head, 0 min, 3.0 h, 110 min',
      'fill, 4.8 h, 5.0 h, 0 min',
      '4.0 h of work, 4.0 h of waits',
      '5.0 h by clean, seal, fill',
      'alone 5.0–5.0 h by clean, seal, head, fill',
    ]);
  });

  test('more work than one pair of hands does in that time', () => {
    expect(told(['left: 60 min', 'right: 40 min'])).toEqual([
      'left, 0 min, 60 min, 0 min',
      'right, 0 min, 40 min, 20 min',
      '100 min of work, 0 min of waits',
      '60 min by left',
      'alone 100–100 min by left, right',
    ]);
  });

  test('three hours are told in hours, less in minutes', () => {
    expect(told(['long: 180 min', 'short: 179 min'])).toContain('short, 0 min, 179 min, 1 min');
    expect(told(['long: 180 min'])).toContain('long, 0 min, 3.0 h, 0 min');
  });

  test('a task without length counts in the chain, at its beginning and amid it', () => {
    expect(
      result(planOf(['key: 0 min', 'a: 5 min, after key', 'look: 0 min, after a', 'b: 5 min, after look']))
        .path,
    ).toEqual(['key', 'a', 'look', 'b']);
  });

  test('sums of odd seconds leave no slack behind', () => {
    const plan = result(
      planOf(['a: 0.01 min', 'b: 0.01 min, after a', 'c: 0.03 min, after b', 'd: 0.01 min, after c']),
    );
    expect(plan.tasks.map(({slack}) => slack.value)).toEqual([0, 0, 0, 0]);
  });
});

test('what was given: a wait of nought is none', () => {
  expect(inputsOf(planOf(['clean: 30 min, wait 0 min', 'seal: 20 min, wait 4 h, after clean']))).toEqual([
    'clean: 30 min',
    'seal, after clean: 20 min',
    'seal, wait: 4 h',
  ]);
});

describe('a graph', () => {
  test('stands in the order given where that can be followed', () => {
    expect(graphOf(SUMP.map(task))).toStrictEqual({
      order: ['clean', 'seal', 'head', 'fill'],
      before: [[], [0], [], [1, 2]],
      after: [[1], [3], [3], []],
      hands: [1800, 1200, 10_800, 600],
      lengths: [1800, 15_600, 10_800, 600],
      tails: [18_000, 16_200, 11_400, 600],
    });
  });

  test('without a task is empty', () => {
    const none: readonly never[] = [];
    expect(graphOf([])).toStrictEqual({
      order: none,
      before: none,
      after: none,
      hands: none,
      lengths: none,
      tails: none,
    });
  });

  test('is put in order where it can not, a task that is named twice counted once', () => {
    const tasks = [
      'fill: 10 min, after seal head seal',
      'seal: 20 min, after clean',
      'head: 3 h',
      'clean: 30 min',
    ];
    expect(graphOf(tasks.map(task))).toStrictEqual({
      order: ['head', 'clean', 'seal', 'fill'],
      before: [[], [], [1], [2, 0]],
      after: [[3], [2], [3], []],
      hands: [10_800, 1800, 1200, 600],
      lengths: [10_800, 1800, 1200, 600],
      tails: [11_400, 3600, 1800, 600],
    });
  });
});

test.each([
  [['a: 1 h', 'b: 1 h', 'c: 1 h', 'c: 2 h'], 'the task c is there twice; give each task an id of its own'],
  [['a: 1 h', 'a: 2 h'], 'the task a is there twice; give each task an id of its own'],
  [['seal: 1 h', 'fill: 1 h, after sael'], 'fill waits for sael, which is no task; did you mean seal?'],
  [
    ['seal: 1 h', 'fill: 1 h, after xyzzyplugh'],
    'fill waits for xyzzyplugh, which is no task; add that task',
  ],
  [
    ['a: 1 h', 'b: 1 h, after a c', 'c: 1 h, after b', 'd: 1 h, after c'],
    'these tasks wait for each other: b, c, d; one of them must come first',
  ],
  [['a: 1 in'], 'the work of a is a length (in) where a time is due; write it in min or h'],
  [['a: 1 h, wait 1 in'], 'the wait of a is a length (in) where a time is due; write it in min or h'],
  [['a: 1 h, wait -1 h'], 'the wait of a must be nought or more; check the reading and its sign'],
])('%j is refused', (texts, due) => {
  expect(refused(planOf(texts))).toBe(due);
});
