/** Mutants that no test can kill, of findings on the words of steps and on what they leave unsaid, by file and reason. */
import {type Explained, explained} from './explained-form.js';

export const FINDINGS_ON_TEXTS: readonly Explained[] = [
  ...explained(
    'src/findings/shop-grammar.ts',
    'the word "undefined" stands before no noun; the question is for the compiler',
    {
      'if (before !== undefined && BEFORE_NOUN.test(before)) return false;': [
        ['before !== undefined', 'true'],
      ],
    },
  ),
  ...explained(
    'src/findings/single-use-reused.ts',
    'reported of no place it lasts nowhere, so that only the work is saved',
    {
      'if (used.length === 0) return;': [['used.length === 0', 'false']],
    },
  ),
  ...explained('src/findings/source-missing.ts', 'a material is no joint, and sealed nowhere', {
    "if (item.kind !== 'joint' || clause === undefined) return;": [["item.kind !== 'joint'", 'false']],
  }),
  ...explained(
    'src/findings/source-missing.ts',
    'what is known of a seal is what it was made up with; the question is for the compiler',
    {
      'return detail?.ids?.every((id) => asked.includes(id)) ?? true;': [
        ['detail?.ids?.every', 'detail?.ids.every'],
      ],
    },
  ),
  ...explained('src/findings/untagged-action.ts', 'of no commands nothing is told; only the work is saved', {
    'if (open.length === 0 || hasBrokenTag(step)) return;': [['open.length === 0', 'false']],
  }),
  ...explained('src/findings/untagged-action.ts', 'a step begins with its number, and no tag stands there', {
    'step.span.start <= span.start &&': [['step.span.start <= span.start', 'step.span.start < span.start']],
  }),
  ...explained(
    'src/findings/untagged-action.ts',
    'no word of shop prose commands a verb that is said of no item; the question is for the compiler',
    {
      "if (typeof targets === 'string') return undefined;": [
        ["typeof targets === 'string'", 'false'],
        ["'string'", '""'],
      ],
    },
  ),
];
