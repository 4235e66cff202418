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
  ...explained('src/findings/prose-hand.ts', 'nothing is found in it then; the question saves the work', {
    'if (!TURN.test(text)) return [];': [['!TURN.test(text)', 'false']],
  }),
  ...explained(
    'src/findings/prose-numbers.ts',
    'where the expression finds a beginning, a number or a fault stands; the question is for the compiler',
    {
      "if (number === undefined || 'says' in number) continue;": [['number === undefined', 'false']],
    },
  ),
  ...explained(
    'src/findings/prose-numbers.ts',
    'the expression has a group whenever it is found, and neither text is a determiner',
    {
      "/^\\s+([a-z]+)/i.exec(text.slice(found.span.end, found.span.end + 24))?.[1]?.toLowerCase() ?? '';": [
        [
          '/^\\s+([a-z]+)/i.exec(text.slice(found.span.end, found.span.end + 24))?.[1]?.toLowerCase',
          '/^\\s+([a-z]+)/i.exec(text.slice(found.span.end, found.span.end + 24))?.[1].toLowerCase',
        ],
        ["''", '"Stryker was here!"'],
      ],
    },
  ),
  ...explained(
    'src/findings/prose-numbers.ts',
    'no unit of either number is no unit of the second; the question is for the compiler',
    {
      'if (unit === undefined || highUnit === undefined || unit.dimension !== highUnit.unit.dimension)': [
        ['unit === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/prose-numbers.ts',
    'where no number waits, none is lent a unit, and the list begins with the next either way',
    {
      'if (last === undefined) return false;': [['false', 'true']],
    },
  ),
  ...explained('src/findings/prose-numbers.ts', 'the empty word is one of a list', {
    'return gap.length < 24 && gap.split(/[\\s,]+/).every((word) => LIST_WORDS.has(word.toLowerCase()));': [
      ['/[\\s,]+/', '/[\\s,]/'],
    ],
  }),
  ...explained('src/findings/stated-values.ts', 'only a joint has a seal; the question is for the compiler', {
    "item.kind === 'joint' && typeof item.seal?.value === 'object' ? item.seal.value : [item.id];": [
      ["item.kind === 'joint'", 'true'],
    ],
  }),
  ...explained('src/findings/stated-values.ts', 'there the tag states no time, under whatever word', {
    "return cures.flatMap((one) => value('time', tag, item, 'for', one));": [["'for'", '""']],
  }),
  ...explained(
    'src/findings/step-prose.ts',
    'without the mark there is nothing to blank out; the question saves the work',
    {
      "if (text.includes('>')) for (const {span} of cautionsBelow({procedure, step})) away(span);": [
        ["text.includes('>')", 'true'],
        ["'>'", '""'],
      ],
      'for (const [mark, pattern] of MARKUP) if (mark.test(text)) text = text.replace(pattern, blanked);': [
        ['mark.test(text)', 'true'],
      ],
    },
  ),
  ...explained(
    'src/findings/step-prose.ts',
    'nothing that is blanked out ends before its step begins, and of an empty span nothing is blanked',
    {
      'if (end <= from) return text;': [
        ['end <= from', 'false'],
        ['end <= from', 'end < from'],
      ],
    },
  ),
  ...explained(
    'src/findings/step-prose.ts',
    'both ways write the same spaces, and nothing that is blanked out is line ends alone',
    {
      "return /[\\r\\n]/.test(text) ? text.replace(/[^\\r\\n]/g, ' ') : ' '.repeat(text.length);": [
        ['/[\\r\\n]/', '/[^\\r\\n]/'],
      ],
    },
  ),
  ...explained(
    'src/findings/untagged-action.ts',
    'of no commands nothing is told; the question saves the work',
    {
      'if (open.length === 0 || hasBrokenTag(step)) return;': [['open.length === 0', 'false']],
    },
  ),
  ...explained(
    'src/findings/untagged-action.ts',
    'a step begins with the marker of its list, which is no part of a tag',
    {
      'step.span.start <= span.start &&': [['step.span.start <= span.start', 'step.span.start < span.start']],
    },
  ),
  ...explained(
    'src/findings/untagged-action.ts',
    'prose commands no verb of which the targets are no items; the question is for the compiler',
    {
      "if (typeof targets === 'string') return undefined;": [
        ["typeof targets === 'string'", 'false'],
        ["'string'", '""'],
      ],
    },
  ),
  ...explained(
    'src/findings/prose-passes.ts',
    'every unit of torque has a counterpart; the question is for the compiler',
    {
      'if (units.some((unit) => unit !== undefined && agree(judged, unit, value))) return [];': [
        ['unit !== undefined', 'true'],
      ],
    },
  ),
  ...explained(
    'src/findings/prose-passes.ts',
    'a list and what joins its numbers stand before a digit, where a number or a fault is; the question is for the compiler',
    {
      "if (number === undefined || 'says' in number) break;": [['number === undefined', 'false']],
    },
  ),
  ...explained(
    'src/findings/prose-passes.ts',
    'the next place is then the beginning of the prose, where the marker of the step is blanked out and no number stands',
    {
      'if (joint === null) break;': [['joint === null', 'false']],
    },
  ),
  ...explained(
    'src/findings/sentences.ts',
    'a word or a number ends no sentence where it is asked; the question saves the work',
    {
      'return code < 48 || code > 122 || code === 58 || code === 59 || code === 63;': [
        ['code < 48 || code > 122 || code === 58 || code === 59 || code === 63', 'true'],
        ['code < 48', 'code <= 48'],
        ['code > 122', 'code >= 122'],
      ],
    },
  ),
  ...explained('src/findings/sentences.ts', 'only a blank line has line ends, and it ends with one too', {
    "if (ENDS.has(word.text) || word.text.startsWith('\\n')) return true;": [
      ["word.text.startsWith('\\n')", "word.text.endsWith('\\n')"],
    ],
  }),
  ...explained(
    'src/findings/sentences.ts',
    'the expression finds the white space of the one text as it finds the other empty',
    {
      "if (word.text !== '.' || !/\\s|^$/.test(text[word.end] ?? '')) return false;": [
        ["''", '"Stryker was here!"'],
      ],
    },
  ),
];
