/** Names set aside or held against each other, for items that may be called otherwise now. */
import type {Demanded} from './demand.js';

/** Two names are as alike as the pairs of letters that they share. */
export function letterPairs(id: string): string[] {
  return Array.from({length: Math.max(0, id.length - 1)}, (_, index) => id.slice(index, index + 2));
}

/** Ids of `absent`, which stand on one side only, are not what a value is known by. */
export function withoutNames(value: Demanded, absent: ReadonlySet<string>): Demanded {
  const hidden = (id: string) => (absent.has(id) ? '?' : id);
  if (value.type === 'any-of' || value.type === 'options') return {...value, ids: value.ids.map(hidden)};
  return value.type === 'id' ? {...value, id: hidden(value.id)} : value;
}
