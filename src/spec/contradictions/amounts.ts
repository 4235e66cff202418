/** Values that cannot stand beside each other: passes and torque, sizes and their order, a part and its seat. */
import {amountsAgree, dimensionOf, limitsOf, within} from '../../quantity/convert.js';
import type {Amount} from '../../quantity/model.js';
import type {Problem} from '../../text/problem.js';
import {itemsOfKind} from '../items.js';
import type {Fastener, Item, Part, Specification, Specified, Surface, Tool} from '../model.js';
import {isMisranged, misranged, misrangedWrench} from '../wrenches.js';
import {contradiction} from './contradiction.js';

/** In the order of the items, each at the value that is likelier wrong, with the other beside it. */
export function amountContradictions(spec: Pick<Specification, 'items'>): Problem[] {
  return [
    ...itemsOfKind(spec, 'fastener').flatMap(passFaults),
    ...itemsOfKind(spec, 'surface').flatMap(sizeOrderFaults),
    ...itemsOfKind(spec, 'part').flatMap((part) => seatFaults(part, spec.items)),
    ...itemsOfKind(spec, 'tool').flatMap((tool) => wrenchFaults(tool) ?? resolutionFaults(tool)),
  ];
}

function passFaults(fastener: Fastener): Problem[] {
  const {passes, torque} = fastener;
  if (passes === undefined) return [];
  const problems = passes.value.flatMap((pass, index) => {
    const before = passes.value[index - 1];
    if (before === undefined || limitsOf(before).high < limitsOf(pass).high) return [];
    const says = `pass ${index + 1} of ${fastener.id} is no higher than pass ${index}`;
    return [contradiction(fastener, passes.where, says, 'passes rise to the torque')];
  });
  const last = passes.value.at(-1);
  if (last === undefined || torque === undefined || torque.value === 'unknown') return problems;
  // `snug` and `none` are no torque that passes could lead to.
  const ends = typeof torque.value !== 'string' && endsAt(last, torque.value);
  if (ends) return problems;
  const says = `the last pass of ${fastener.id} is not its torque`;
  const related = [{where: torque.where, says: 'the torque is here'}];
  return [
    ...problems,
    {...contradiction(fastener, passes.where, says, 'end the passes at the torque'), related},
  ];
}

function endsAt(last: Amount, torque: Amount): boolean {
  return amountsAgree(last, torque) || within(limitsOf(last), limitsOf(torque));
}

/** Neighbours may be of one size; a size that goes against the order may not. */
function sizeOrderFaults(surface: Surface): Problem[] {
  const {order, at, sizes, id} = surface;
  if (order === undefined) return [];
  const stated = at.flatMap((place) => {
    const size = sizes.get(place);
    return size ? [{place, size, middle: middleOf(size.value)}] : [];
  });
  return stated.flatMap((one, index) => {
    const before = stated[index - 1];
    if (before === undefined) return [];
    const step = one.middle - before.middle;
    if (step === 0 || step > 0 === (order.value === 'rising')) return [];
    const than = step > 0 ? 'larger' : 'smaller';
    const says = `${id}[${one.place}] is ${than} than ${id}[${before.place}] where sizes are ${order.value}`;
    const related = [{where: before.size.where, says: `${before.place} is here`}];
    return [{...contradiction(surface, one.size.where, says, 'put the sizes right, or the order'), related}];
  });
}

function middleOf(amount: Amount): number {
  const {low, high} = limitsOf(amount);
  if (low === Number.NEGATIVE_INFINITY) return high;
  return high === Number.POSITIVE_INFINITY ? low : (low + high) / 2;
}

/** Nominal sizes of a part and of its seat must be one, wherever the part goes. */
function seatFaults(part: Part, items: ReadonlyMap<string, Item>): Problem[] {
  const {size, seatsIn, at} = part;
  const seat = seatsIn && items.get(seatsIn.value);
  if (size === undefined || seat?.kind !== 'surface') return [];
  const places = at.length > 0 ? at : [...seat.sizes.keys()];
  const wrong = places.flatMap((place): {place: string; seat: Specified<Amount>}[] => {
    const there = seat.sizes.get(place) ?? seat.sizes.get('');
    return there && !amountsAgree(size.value, there.value) ? [{place, seat: there}] : [];
  });
  // A seat of one size in all places is wrong once.
  const once = new Map(wrong.map((one) => [one.seat, one]));
  return [...once.values()].map((one) => {
    const named = seat.sizes.has(one.place) && one.place !== '' ? `[${one.place}]` : '';
    const says = `the size of ${part.id} is not that of ${seat.id}${named}, where it seats`;
    const related = [{where: one.seat.where, says: 'the seat is here'}];
    return {...contradiction(part, size.where, says, 'one of the two sizes is wrong'), related};
  });
}

/** Of a torque wrench by its name. Nothing else of it is judged then, for its resolution may well be right. */
function wrenchFaults(tool: Tool): Problem[] | undefined {
  return misrangedWrench(tool) && isMisranged(tool) ? [misranged(tool)] : undefined;
}

function resolutionFaults(tool: Tool): Problem[] {
  const {range, resolution} = tool;
  if (range === undefined || resolution === undefined) return [];
  const [due, found] = [dimensionOf(range.value), dimensionOf(resolution.value)];
  if (due === found) return [];
  return [
    {
      name: 'unit-wrong-kind',
      where: resolution.where,
      says: `the resolution of ${tool.id} is a ${found} where its range is a ${due}`,
      hint: 'state both in units of one kind',
      item: tool.id,
      related: [{where: range.where, says: 'the range is here'}],
    },
  ];
}
