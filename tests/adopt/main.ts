/**
 * The benchmark of `wmark adopt`: `npm run adopt-bench`. Prints precision and recall of the tags proposed for texts
 * that the rules were not written from, and for the set that they are mended by; with a word, its slips too.
 */
import {precision, recall, type Score} from './score.js';
import {bookScore, developmentScore, heldOutScore} from './sets.js';

const sets: readonly (readonly [name: string, score: Score])[] = [
  ['development: examples, starting book', await developmentScore()],
  ['development: fjordholm, tags taken out', await bookScore('procedures/fjordholm')],
  ['held out: ottermouth-four, tags taken out', await bookScore('procedures/ottermouth-four')],
  ['held out: sentences', heldOutScore()],
];

console.table(
  sets.map(([set, {sure, all, clauses}]) => ({
    set,
    tags: sure.right + sure.missed,
    'sure: precision': share(precision(sure)),
    'sure: recall': share(recall(sure)),
    'with offers: precision': share(precision(all)),
    'with offers: recall': share(recall(all)),
    'clauses: precision': share(precision(clauses)),
    'clauses: recall': share(recall(clauses)),
  })),
);
const [, , shown] = process.argv;
for (const [name, {slips}] of sets)
  if (shown !== undefined && name.includes(shown)) console.log(slips.join('\n'));

function share(value: number): string {
  return value.toFixed(3);
}
