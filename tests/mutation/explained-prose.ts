/** Mutants of what reads prose, and of cautions, that no test can kill, by file and reason. */
import {type Explained, explained} from './explained-form.js';

export const FINDINGS_ON_PROSE: readonly Explained[] = [
  ...explained(
    'src/findings/prose-disagrees.ts',
    'without a value of the tags no number is held against anything, so that only the work is saved',
    {
      'if (values.length === 0) return;': [['values.length === 0', 'false']],
    },
  ),
  ...explained(
    'src/findings/prose-disagrees.ts',
    'only a range is worded, and what it stands for has its form; the question is for the compiler',
    {
      "if (amount.form !== 'range' || !worded || unitOf(amount).symbol !== amount.low.unit.symbol)": [
        ["amount.form !== 'range'", 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/step-prose.ts',
    'a word of the prose neither begins nor ends where a sub-step begins: before that stands a line end or a marker',
    {
      'const below = step.steps.filter(({span}) => span.start > from).map(({span}) => span.start);': [
        ['span.start > from', 'span.start >= from'],
      ],
    },
  ),
];
