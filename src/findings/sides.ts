/** On which sides of its limits a reading can lie. */
import {highOf, lowOf} from '../quantity/convert.js';
import type {Check, Fit} from '../spec/model.js';

/** Both where nobody knows the limits; none where a check is judged in words, or a single value says what is aimed at. */
export function sidesOf({kind, limits}: Fit | Check): readonly ('over' | 'under')[] {
  if (limits === undefined || limits.value === 'unknown') return kind === 'check' ? [] : ['over', 'under'];
  if (limits.value.form === 'single') return [];
  return [
    ...(highOf(limits.value) === undefined ? [] : (['over'] as const)),
    ...(lowOf(limits.value) === undefined ? [] : (['under'] as const)),
  ];
}
