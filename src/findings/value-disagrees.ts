/** A tag states a value, a material or a gauge that is not the one specified. */
import {type Action, whereIn} from '../build/program.js';
import {amountOf, amountsOf, clauseOf} from '../procedure/values.js';
import type {ClauseWord} from '../procedure/verbs.js';
import {amountsAgree, limitsOf, within} from '../quantity/convert.js';
import {formatAmount, formatBoth} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import {standsFor} from '../quantity/restated.js';
import type {Fastener, Located} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {barOn} from './bars.js';
import type {Context, FindingKind} from './model.js';
import {about, agreeing, itemAt, listed, tagWhere} from './phrase.js';

export const valueDisagrees: FindingKind = {
  name: 'value-disagrees',
  group: 'reading',
  severity: 'error',
  summary: 'A tag states another value or material than the specification',
  why: 'Of two values for one bolt, one is wrong, and the paper in the hand wins over the one in the office.',
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
2. Bring the bolts up. \`torque: main-cap-bolts to 58 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  before: {
    torque(action, context) {
      if (action.item.kind !== 'fastener') return;
      torque(action, action.item, context);
      passes(action, action.item, context);
      angle(action, action.item, context);
    },
    measure: read,
    lay: read,
    check: read,
    fill(action, context) {
      if (action.item.kind !== 'system') return;
      amount(action, 'to', action.item.amount, 'is filled to', context);
      oneOf(action, 'with', action.item.with, 'is filled with', context);
    },
    seal(action, context) {
      const asked = action.item.kind === 'joint' ? action.item.seal : undefined;
      if (asked === undefined || asked.value === 'unknown') return;
      const seals = asked.value === 'none' ? [] : asked.value;
      material(action, 'with', seals, asked.where, 'is sealed with', context);
    },
  },
};

function torque(action: Action, {torque: asked}: Fastener, context: Context): void {
  const stated = amountOf(action.tag, 'to') ?? amountsOf(action.tag, 'in').at(-1);
  if (stated === undefined || asked === undefined) return;
  const be = agreeing(action.item, 'is', 'are');
  if (asked.value === 'snug') {
    report(
      action,
      'to',
      `${be} torqued to ${both(stated, context)}, and snug is specified`,
      asked,
      context,
      'snug',
    );
    return;
  }
  if (typeof asked.value === 'string' || standsFor(stated, asked.value)) return;
  if (leadsUp(action, stated, asked.value, context)) return;
  const says = `${be} torqued to ${both(stated, context)}, and ${both(asked.value, context)} is specified`;
  const word = clauseOf(action.tag, 'to') ? 'to' : 'in';
  const ends = clauseOf(action.tag, 'in') === undefined || endsAt(action, asked.value);
  report(action, word, says, asked, context, ends ? formatAmount(asked.value) : undefined);
}

/** What does not go beyond the specified value leads up to it; only the last one must be it. */
function leadsUp(action: Action, stated: Amount, asked: Amount, {program}: Context): boolean {
  return limitsOf(stated).high <= limitsOf(asked).high && !program.lastTorques.has(action);
}

function endsAt({tag}: Action, asked: Amount): boolean {
  const last = amountsOf(tag, 'in').at(-1);
  return last !== undefined && amountsAgree(last, asked);
}

/** Where the last pass already is another finding's business, the ones before it are not looked at. */
function passes(action: Action, fastener: Fastener, context: Context): void {
  const stated = amountsOf(action.tag, 'in');
  const asked = fastener.passes;
  const final = fastener.torque?.value;
  const last = stated.at(-1);
  if (asked === undefined || last === undefined || typeof final !== 'object' || !amountsAgree(last, final))
    return;
  const agree =
    stated.length === asked.value.length &&
    stated.every((pass, index) => amountsAgree(pass, asked.value[index] ?? pass));
  if (agree) return;
  const written = asked.value.map(formatAmount).join(', ');
  const says = `${agreeing(fastener, 'is', 'are')} torqued in passes of ${stated.map((pass) => both(pass, context)).join(', ')}, and ${asked.value.map((pass) => both(pass, context)).join(', ')} are specified`;
  report(action, 'in', says, asked, context, written);
}

function angle(action: Action, {angle: asked}: Fastener, context: Context): void {
  const stated = amountOf(action.tag, 'turn');
  if (stated === undefined || asked === undefined || standsFor(stated, asked.value)) return;
  if (leadsUp(action, stated, asked.value, context)) return;
  const says = `${agreeing(action.item, 'is', 'are')} turned ${formatAmount(stated)} on, and ${formatAmount(asked.value)} is specified`;
  report(action, 'turn', says, asked, context, formatAmount(asked.value));
}

function read(action: Action, context: Context): void {
  const {item, verb} = action;
  if (item.kind !== 'fit' && item.kind !== 'check') return;
  const done = verb === 'lay' ? 'is laid' : verb === 'measure' ? 'is measured' : 'is checked';
  amount(action, 'within', item.limits, `${done} within`, context);
  oneOf(action, 'using', item.using, `${done} using`, context);
  oneOf(action, 'with', item.using, `${done} with`, context);
}

function amount(
  action: Action,
  word: ClauseWord,
  asked: Located<Amount | string> | undefined,
  does: string,
  context: Context,
): void {
  const stated = amountOf(action.tag, word);
  if (stated === undefined || asked === undefined || typeof asked.value === 'string') return;
  if (standsFor(stated, asked.value)) return;
  const wider = word === 'within' && !within(limitsOf(stated), limitsOf(asked.value));
  const says = `${does} ${both(stated, context)}${wider ? ', which is wider,' : ','} and ${both(asked.value, context)} is specified`;
  report(action, word, says, asked, context, formatAmount(asked.value));
}

function oneOf(
  action: Action,
  word: ClauseWord,
  asked: readonly Located<string>[],
  does: string,
  context: Context,
): void {
  const [first] = asked;
  if (first === undefined) return;
  const ids = asked.map(({value}) => value);
  material(action, word, ids, first.where, does, context);
}

/** What is barred, or not known at all, is found elsewhere. */
function material(
  action: Action,
  word: ClauseWord,
  asked: readonly string[],
  where: Located<unknown>['where'],
  does: string,
  context: Context,
): void {
  const {spec} = context.relations;
  const clause = clauseOf(action.tag, word);
  if (clause?.value.type !== 'ids' || clause.value.ids.some(({id}) => asked.includes(id))) return;
  const [used] = clause.value.ids;
  if (used === undefined || !spec.items.has(used.id) || barOn(spec, used.id, action.item)) return;
  const due = asked.length === 0 ? 'none' : listed(asked);
  const [only, second] = asked;
  const fix = only !== undefined && second === undefined && clause.value.ids.length === 1 ? only : undefined;
  report(action, word, `${does} ${used.id}, and ${due} is specified`, {where}, context, fix);
}

function both(amount: Amount, {book}: Context): string {
  return formatBoth(amount, book.spec.shop.units);
}

function report(
  action: Action,
  word: ClauseWord,
  says: string,
  asked: Pick<Located<unknown>, 'where'>,
  context: Context,
  instead: string | undefined,
): void {
  const {item, places, tag, step} = action;
  const clause = clauseOf(tag, word);
  const span = clause?.valueSpan;
  const fix: Fix | undefined =
    instead === undefined || span === undefined
      ? undefined
      : {title: `Write ${instead}`, file: step.procedure.source.file, edits: [{span, text: instead}]};
  context.report({
    where: span ? whereIn(step, span) : tagWhere(action),
    message: `${itemAt(item, places)} ${says}`,
    ...about(item, places),
    related: [{where: asked.where, says: `${item.id} is specified here`}],
    ...(fix && {fix}),
  });
}
