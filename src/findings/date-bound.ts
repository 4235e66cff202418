/** For how long an answer of the check holds good by the calendar: calibration that runs out is all that the date decides. */
import type {Specification} from '../spec/model.js';

/**
 * The last ISO 8601 date up to which a check of today's says the same; `today` itself where something has run out, since
 * then the finding names the date; nothing where no date is judged at all.
 */
export function lastDateOf({items}: Specification, today: string): string | undefined {
  const dues = [...items.values()].flatMap((item) => (item.kind === 'tool' ? (item.due?.value ?? []) : []));
  const [first] = dues.sort();
  return first !== undefined && first < today ? today : first;
}
