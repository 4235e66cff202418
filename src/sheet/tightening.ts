/** The boxes of a tightening: a column a pass, a row a fastener in tightening order where the shop states one. */
import {clauseOf} from '../procedure/values.js';
import type {Amount} from '../quantity/model.js';
import type {Fastener} from '../spec/model.js';
import {specifiedAmount} from './clauses.js';
import {type Context, placesOfUse, spaced, type Use} from './context.js';
import {drawingOf} from './drawing.js';
import type {TighteningBlanks, Value} from './model.js';
import {printed, sameAmount} from './value.js';
import {fill} from './words.js';

/** Nothing where one box would do: the row has that already. */
export function tighteningBlanks(use: Use, context: Context): TighteningBlanks | undefined {
  const fastener = use.item?.kind === 'fastener' ? use.item : undefined;
  const turn = turnOf(use, fastener, context);
  const passes = passesOf(use, context);
  const drawing = fastener === undefined ? undefined : drawingOf(fastener, turn.shown);
  if (passes.length < 2 && turn.positions.length < 2 && drawing === undefined) return undefined;
  return {
    type: 'tightening',
    passes,
    positions: turn.positions,
    ordered: turn.ordered,
    ...(drawing === undefined ? {} : {drawing}),
  };
}

interface Turn {
  readonly positions: readonly string[];
  readonly ordered: boolean;
  /** The same as ids of the layout. */
  readonly shown: readonly string[];
}

function turnOf(use: Use, fastener: Fastener | undefined, context: Context): Turn {
  const order = fastener === undefined ? [] : within(use, fastener.order);
  if (order.length > 1)
    return {positions: order.map((id) => positionName(id, context)), ordered: true, shown: order};
  const places = placesOfUse(use);
  const positions = places.length === 0 ? [''] : places.map(spaced);
  const layout = fastener?.layout.map(({id}) => id) ?? [];
  return {positions, ordered: false, shown: within(use, layout)};
}

/** Those that belong to the places which the tag names: `front` takes `front` and `front-left`; all where none do. */
function within(use: Use, order: readonly string[]): readonly string[] {
  const places = use.target.places.map((place) => place.name);
  const named = order.filter((id) => places.some((place) => id === place || id.startsWith(`${place}-`)));
  return named.length === 0 ? order : named;
}

function positionName(id: string, context: Context): string {
  return /^\d+$/.test(id) ? fill(context.words.fastenerNumber, {number: id}) : spaced(id);
}

interface Pass {
  readonly label: string;
  readonly value?: Value;
}

function passesOf(use: Use, context: Context): Pass[] {
  const {units} = context.spec.shop;
  const {words} = context;
  const amounts = passAmounts(use, context);
  const angle = angleOf(use, context);
  const torques = amounts.map((amount, index) => ({
    label: amounts.length === 1 ? words.torque : fill(words.pass, {number: index + 1}),
    value: printed(amount, units),
  }));
  const first = torques.length === 0 ? [{label: words.done}] : torques;
  return angle === undefined ? first : [...first, {label: words.angle, value: printed(angle, units)}];
}

/** Passes as stated; as specified where the tag states none and the procedure does not bring them up step by step. */
function passAmounts(use: Use, context: Context): readonly Amount[] {
  const final = finalTorque(use, context);
  const stated = clauseOf(use.tag, 'in')?.value;
  if (stated?.type === 'amounts') return closedBy(stated.amounts, final);
  const fastener = use.item?.kind === 'fastener' ? use.item : undefined;
  const specified = fastener?.passes?.value ?? [];
  const whole = specifiesAll(use, context) && !context.steppedUp.has(use.target.id);
  if (whole && specified.length > 0) return closedBy(specified, final);
  return final === undefined ? [] : [final];
}

/** The passes with the final torque at their end, where they leave it to be understood. */
function closedBy(passes: readonly Amount[], final: Amount | undefined): readonly Amount[] {
  const last = passes.at(-1);
  return final === undefined || last === undefined || sameAmount(last, final) ? passes : [...passes, final];
}

function finalTorque(use: Use, context: Context): Amount | undefined {
  const stated = clauseOf(use.tag, 'to')?.value;
  if (stated?.type === 'amount') return stated.amount;
  if (stated !== undefined) return undefined;
  const specified = specifiedAmount(use, 'to', context.spec);
  return typeof specified === 'object' ? specified : undefined;
}

/** True when the tag goes to the torque that the specification ends at. */
function specifiesAll(use: Use, context: Context): boolean {
  const stated = clauseOf(use.tag, 'to')?.value;
  if (stated === undefined) return true;
  const specified = specifiedAmount(use, 'to', context.spec);
  if (stated.type !== 'amount' || typeof specified !== 'object') return false;
  return sameAmount(stated.amount, specified);
}

function angleOf(use: Use, context: Context): Amount | undefined {
  const stated = clauseOf(use.tag, 'turn')?.value;
  if (stated?.type === 'amount') return stated.amount;
  if (!specifiesAll(use, context)) return undefined;
  const specified = specifiedAmount(use, 'turn', context.spec);
  return typeof specified === 'object' ? specified : undefined;
}
