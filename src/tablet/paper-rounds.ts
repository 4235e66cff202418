/**
 * The rounds of a reading on paper, where the sheet has a column for each: on the screen one field shows the round that
 * the work has come to, and printed it would stand under the first.
 */
/// <reference lib="dom" />
import {make} from './dom.js';

/** What was read in one round. */
export interface ReadRound {
  readonly round: number;
  readonly value: string;
  /** What it is worth, in words, and who read it. */
  readonly note: string;
  readonly isOut: boolean;
}

/** Puts each round into its column, once the work has come to a second (`now`); what is beyond the last column stands below what is in that. */
export function paintColumns(control: Element, rounds: readonly ReadRound[], now: number): void {
  const row = control.closest('tr');
  const later = row?.querySelectorAll('td.later') ?? [];
  const first = control.closest('td');
  if (row === null || first === null || later.length === 0) return;
  for (const old of row.querySelectorAll('.paper')) old.remove();
  row.classList.toggle('by-round', now > 1);
  for (const [at, cell] of [first, ...later].entries()) {
    const blank = at === 0 ? undefined : cell.querySelector('.blank');
    const own = rounds.filter(({round}) => round === at + 1 || (round > at + 1 && at === later.length));
    blank?.replaceChildren(own[0]?.value ?? '');
    if (now === 1) continue;
    if (at === 0) first.append(...copied(control, own[0]?.value ?? ''));
    cell.append(...own.map((one, place) => noteNode(one, place)));
  }
}

/** The first column has the field of the screen: on paper a blank like the others stands in its place. */
function copied(control: Element, value: string): Node[] {
  const unit = control.parentElement?.querySelector('.unit')?.textContent ?? '';
  return [make('span', {class: 'blank paper'}, [value]), make('span', {class: 'unit paper'}, [unit])];
}

function noteNode({round, value, note, isOut}: ReadRound, place: number): Node {
  const text = place === 0 ? note : `${round}: ${value} ${note}`;
  return make('span', {class: `${isOut ? 'stamp' : 'stamp-time'} paper`}, [text]);
}
