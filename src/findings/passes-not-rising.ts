/** The passes of a torque fall, or start below what the fastener already has, or do not end at the torque. */

import type {Action} from '../build/program.js';
import {stepName} from '../build/tell.js';
import {amountOf, clauseOf} from '../procedure/values.js';
import {amountsAgree, limitsOf} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import type {Context, FindingKind} from './model.js';
import {about, itemAt, specified, storyOf, tagWhere} from './phrase.js';

export const passesNotRising: FindingKind = {
  name: 'passes-not-rising',
  group: 'order',
  severity: 'error',
  summary: 'The passes of a torque do not rise to its final value',
  why: 'A pass below the one before moves nothing, and one that stops short leaves the joint short of its clamp.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft in 60, 30, 85\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft in 30, 60, 85\`
`,
  },
  before: {
    torque(action, context) {
      inOneTag(action, context);
      afterAnother(action, context);
    },
  },
};

function inOneTag(action: Action, {report}: Context): void {
  const {item, places, tag} = action;
  const passes = passesOf(action);
  const to = amountOf(tag, 'to');
  const falling = passes.find((pass, index) => {
    const before = passes[index - 1];
    return before !== undefined && torque(pass) <= torque(before);
  });
  const last = passes.at(-1);
  const short = last !== undefined && to !== undefined && !amountsAgree(last, to);
  const fault =
    falling !== undefined
      ? `the pass of ${formatAmount(falling)} is not above the one before it`
      : short
        ? `the last pass is ${formatAmount(last)}, not ${formatAmount(to)}`
        : undefined;
  if (fault === undefined) return;
  report({
    where: tagWhere(action),
    message: `${itemAt(item, places)}: ${fault}`,
    ...about(item, places),
    related: [specified(item)],
  });
}

function afterAnother(action: Action, {state, report}: Context): void {
  const {item, places, tag} = action;
  const first = passesOf(action)[0] ?? amountOf(tag, 'to');
  if (first === undefined) return;
  const below = places.filter((place) => {
    const {holds, detail} = state.get('tight', item.id, place);
    return (
      holds &&
      detail?.torque !== undefined &&
      torque(first) < torque(detail.torque) &&
      !amountsAgree(first, detail.torque)
    );
  });
  const fact = state.get('tight', item.id, below[0] ?? '');
  if (below.length === 0 || fact.by === undefined || fact.detail?.torque === undefined) return;
  report({
    where: tagWhere(action),
    message: `${itemAt(item, below)}: ${formatAmount(first)} is below the ${formatAmount(fact.detail.torque)} of ${stepName(fact.by.step, action.step)}`,
    ...about(item, below),
    story: storyOf([fact]),
  });
}

function passesOf({tag}: Action): readonly Amount[] {
  const value = clauseOf(tag, 'in')?.value;
  return value?.type === 'amounts' ? value.amounts : [];
}

/** In N·m; the upper end where limits are stated. */
function torque(amount: Amount): number {
  const {low, high} = limitsOf(amount);
  return Number.isFinite(high) ? high : low;
}
