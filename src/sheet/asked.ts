/** What a hold point asks for, each with the value that the second person holds it against. */
import {locksOf} from '../spec/locks.js';
import type {Fastener, Item} from '../spec/model.js';
import {type Naming, nameOf} from './context.js';
import {printed, valueText} from './value.js';

/** "main cap bolts: 80 lbf·ft (108 N·m), safety wire"; the name alone where there is no value to it. */
export function askedOf(id: string, naming: Naming): string {
  const item = naming.spec.items.get(id);
  const values = item === undefined ? [] : valuesOf(item, naming);
  const name = nameOf(id, naming);
  return values.length === 0 ? name : `${name}: ${values.join(', ')}`;
}

function valuesOf(item: Item, naming: Naming): string[] {
  const amount = (value: Parameters<typeof printed>[0]) => valueText(printed(value, naming));
  switch (item.kind) {
    case 'fastener':
      return fastenerValues(item, naming);
    case 'fit':
      return typeof item.limits?.value === 'object' ? [amount(item.limits.value)] : [];
    case 'check':
      return [
        ...(item.limits === undefined ? [] : [amount(item.limits.value)]),
        ...(item.expect === undefined ? [] : [item.expect]),
      ];
    case 'system':
      return item.amount === undefined ? [] : [amount(item.amount.value)];
    case 'mark': {
      const number = naming.job?.marks.get(item.id)?.value;
      return number === undefined ? [] : [number];
    }
    default:
      return [];
  }
}

/** All locks go on, so that each is looked at. */
function fastenerValues(fastener: Fastener, naming: Naming): string[] {
  const {torque, angle} = fastener;
  const {words} = naming;
  const tight = [
    ...(typeof torque?.value === 'object' ? [valueText(printed(torque.value, naming))] : []),
    ...(torque?.value === 'snug' ? [words.snug] : []),
    ...(angle === undefined ? [] : [valueText(printed(angle.value, naming))]),
  ];
  return [
    ...(tight.length === 0 ? [] : [tight.join(' + ')]),
    ...locksOf(fastener).map((lock) => nameOf(lock, naming)),
  ];
}
