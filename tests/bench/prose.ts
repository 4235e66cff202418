/**
 * Prints how well the rules read shop prose: commands and numbers, on the part of the corpus that they were tuned on
 * and on the part held out (there without the sentences read wrong, so that nobody tunes on them). Use: `node .config/run.mjs tests/bench/prose.ts`.
 */
import {type Score, scoreCommands, scoreNumbers} from '../findings/prose.js';
import {TUNED} from '../findings/prose-corpus.js';
import {HELD_OUT} from '../findings/prose-held-out.js';

const parts = {tuned: TUNED, 'held out': HELD_OUT};

console.log('part       what       sentences  precision  recall');
for (const [part, cases] of Object.entries(parts)) {
  const numbered = cases.filter(({tag}) => tag !== undefined);
  line(part, 'commands', cases.length, scoreCommands(cases));
  line(part, 'numbers', numbered.length, scoreNumbers(numbered));
}

function line(part: string, what: string, count: number, {precision, recall, wrong, missed}: Score): void {
  const columns = [
    part.padEnd(9),
    what.padEnd(9),
    String(count).padStart(10),
    percent(precision),
    percent(recall),
  ];
  console.log(columns.join('  '));
  // A sentence of the held-out part that is looked at is one that the rules get tuned on.
  if (part === 'held out') return;
  for (const one of wrong) console.log(`  wrong:  ${one}`);
  for (const one of missed) console.log(`  missed: ${one}`);
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)} %`.padStart(8);
}
