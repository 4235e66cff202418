/** The passes of a tightening: torques rising to the last, then the angle, as far as this one tag goes. */
import {amountOf, amountsOf, clauseOf} from '../procedure/values.js';
import type {Amount} from '../quantity/model.js';
import {specifiedAmount} from './clauses.js';
import type {Context, Use} from './context.js';
import type {TighteningBlanks} from './model.js';
import {statesOnlyTurn} from './survey.js';
import {printed, sameAmount} from './value.js';
import {fill} from './words.js';

export type Pass = TighteningBlanks['passes'][number];

/** Never empty: where neither torque nor angle is known there is one box for having done it. */
export function passesOf(use: Use, context: Context): Pass[] {
  const {words} = context;
  const amounts = onlyTurns(use, context) ? [] : torquesOf(use, context);
  const torques = amounts.map((amount, index) => ({
    label: amounts.length === 1 ? words.torque : fill(words.pass, {number: index + 1}),
    value: printed(amount, context),
  }));
  const angle = angleOf(use, context);
  if (angle !== undefined) return [...torques, {label: words.angle, value: printed(angle, context)}];
  return torques.length === 0 ? [{label: words.done}] : torques;
}

/** Whether the tag is only the turning on of a fastener that another step tightens. */
export function onlyTurns({tag, target}: Use, context: Context): boolean {
  return statesOnlyTurn(tag) && context.turnedApart.has(target.id);
}

/** As stated; as specified where the tag states none and the procedure does not bring them up step by step. */
function torquesOf(use: Use, context: Context): readonly Amount[] {
  const final = finalTorque(use, context);
  const stated = amountsOf(use.tag, 'in');
  if (stated.length > 0) return closedBy(stated, final);
  const specified = use.item?.kind === 'fastener' ? (use.item.passes?.value ?? []) : [];
  const apart = context.steppedUp.has(use.target.id);
  if (specified.length > 0 && !apart && goesAllTheWay(use, context)) return closedBy(specified, final);
  return final === undefined ? [] : [final];
}

/** The passes with the final torque at their end, where they leave it to be understood. */
function closedBy(passes: readonly Amount[], final: Amount | undefined): readonly Amount[] {
  const last = passes.at(-1);
  return final === undefined || last === undefined || sameAmount(last, final) ? passes : [...passes, final];
}

function finalTorque(use: Use, context: Context): Amount | undefined {
  if (clauseOf(use.tag, 'to') !== undefined) return amountOf(use.tag, 'to');
  const specified = specifiedAmount(use, 'to', context.spec);
  return typeof specified === 'object' ? specified : undefined;
}

/** True when the tag goes to the torque that the specification ends at. */
function goesAllTheWay(use: Use, context: Context): boolean {
  if (clauseOf(use.tag, 'to') === undefined) return true;
  const stated = amountOf(use.tag, 'to');
  const specified = specifiedAmount(use, 'to', context.spec);
  return stated !== undefined && typeof specified === 'object' && sameAmount(stated, specified);
}

/** The angle after the torque, as far as this tag goes to it. */
export function angleOf(use: Use, context: Context): Amount | undefined {
  const stated = amountOf(use.tag, 'turn');
  if (stated !== undefined) return stated;
  if (context.turnedApart.has(use.target.id) || !goesAllTheWay(use, context)) return undefined;
  const specified = specifiedAmount(use, 'turn', context.spec);
  return typeof specified === 'object' ? specified : undefined;
}
