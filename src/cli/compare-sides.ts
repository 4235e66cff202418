/** What both sides of a comparison are called, and how many changes of each effect there are, on one line. */
import {EFFECTS} from '../compare/model.js';
import {printable} from '../text/printable.js';
import type {BookJson} from './compare-report.js';

/** A whole commit id says no more than its first figures. */
export function sideText(side: string): string {
  return printable(/^[0-9a-f]{40}(?:[0-9a-f]{24})?$/.test(side) ? side.slice(0, 10) : side);
}

/** `HEAD and the working tree: 1 weakened, 0 strengthened, 2 changed, 0 reworded`. */
export function sidesAndSums(
  {changes}: BookJson,
  {before, now}: {readonly before: string; readonly now: string},
): string {
  const counts = EFFECTS.map((one) => `${changes.filter(({effect}) => effect === one).length} ${one}`);
  return `${sideText(before)} and ${sideText(now)}: ${counts.join(', ')}`;
}
