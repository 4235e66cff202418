/** Mutants that no test can kill, of findings on causes and on missing steps, and of what runs all findings. */
import {type Explained, explained} from './explained-form.js';

const LIST = '["Stryker was here"]';

export const FINDINGS_CAUSES: readonly Explained[] = [
  ...explained('src/findings/check.ts', 'what has no name is of no kind, and is passed over', {
    '...fromReading(book.job?.problems ?? [], kinds),': [['[]', LIST]],
  }),
  ...explained('src/findings/check.ts', 'undefined says as well that nothing is left out', {
    'const leftOut = options.alone || gap ? onlyTheBookCanTell(run, gap) : () => false;': [
      ['() => false', '() => undefined'],
    ],
  }),
  ...explained(
    'src/findings/check.ts',
    'every name that a reader may give a problem is that of a finding; the question is for the compiler',
    {
      'return kind === undefined ? [] : [{kind, found: foundOf(problem)}];': [
        ['kind === undefined', 'false'],
      ],
    },
  ),
  ...explained('src/findings/comes-first.ts', 'no item has a place of that name, and none is told of it', {
    'if (verb !== undefined) late.set(verb, [...(late.get(verb) ?? []), place]);': [['[]', LIST]],
  }),
  ...explained('src/findings/comes-first.ts', 'no fact is of that kind, so that it has no story', {
    'return places.flatMap((place) => (ONCE[verb]?.facts ?? []).map((kind) => state.get(kind, id, place)));':
      [['[]', LIST]],
  }),
  ...explained(
    'src/findings/comes-first.ts',
    'only a joint is ever sealed, and another item that is done is not late; the question is for the compiler',
    {
      "if (first.kind === 'joint' && isDone(first, place, context.state)) return cureDue(first, place, context);":
        [["first.kind === 'joint'", 'true']],
    },
  ),
  ...explained('src/findings/done.ts', 'nothing but a part is temporary; the question is for the compiler', {
    "return item.kind === 'part' && item.temporary;": [["item.kind === 'part'", 'true']],
  }),
  ...explained('src/findings/done.ts', 'a torque that holds says whether it is the final one', {
    'return fact.holds && fact.detail?.final === true;': [['fact.detail?.final', 'fact.detail.final']],
  }),
  ...explained(
    'src/findings/mend.ts',
    'findings come in the order of the text, and so do fixes that change only how a thing is written',
    {
      'const edits = chosen': [
        [
          `chosen
    .filter(({fix}) => fix.file === file)
    .flatMap(({fix}) => fix.edits)
    .sort((one, other) => one.span.start - other.span.start)`,
          'chosen.filter(({\n  fix\n}) => fix.file === file).flatMap(({\n  fix\n}) => fix.edits)',
        ],
      ],
    },
  ),
  ...explained(
    'src/findings/only-missing.ts',
    'a step without tags deals with nothing; the question is for the compiler',
    {
      "if (last === undefined || tags.some(({verb}) => verb === 'if')) return undefined;": [
        ['last === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/phrase.ts',
    'nothing but a fastener is counted; the question is for the compiler',
    {
      "const counted = item.kind === 'fastener' && item.count > 1;": [["item.kind === 'fastener'", 'true']],
    },
  ),
  ...explained('src/findings/phrase.ts', 'what is put together of it leaves out a place that is undefined', {
    'return {item: item.id, ...(place !== undefined && {place})};': [['place !== undefined', 'true']],
  }),
  ...explained('src/findings/phrase.ts', 'a fact of no kind was set and undone by nothing', {
    'if (kind === undefined) continue;': [['kind === undefined', 'false']],
  }),
  ...explained('src/findings/second-round.ts', 'a tag has a length, and ends no later than its step', {
    '({back, to}) => back.procedure === step.procedure && to.order <= step.order && last < back.step.span.end,':
      [['last < back.step.span.end', 'last <= back.step.span.end']],
  }),
  ...explained(
    'src/findings/shop-grammar.ts',
    'the word "undefined" is no more a plural, and stands before no noun; the question is for the compiler',
    {
      "if (STOPS.has(word) && !(word === 'that' && before !== undefined && BEFORE_NOUN.test(before)))": [
        ['before !== undefined', 'true'],
      ],
      'if (PLAIN.has(word) && before !== undefined && isPlural(before)) return true;': [
        ['before !== undefined', 'true'],
      ],
      'if (before !== undefined && BEFORE_NOUN.test(before)) return false;': [
        ['before !== undefined', 'true'],
      ],
    },
  ),
  ...explained(
    'src/findings/single-use-reused.ts',
    'reported of no place it lasts nowhere, so that only the work is saved',
    {'if (used.length === 0) return;': [['used.length === 0', 'false']]},
  ),
  ...explained('src/findings/source-missing.ts', 'nothing but a joint is ever sealed', {
    "if (item.kind !== 'joint' || clause === undefined) return;": [["item.kind !== 'joint'", 'false']],
  }),
  ...explained(
    'src/findings/source-missing.ts',
    'what is known of a seal is what it was made with; the question is for the compiler',
    {
      'return detail?.ids?.every((id) => asked.includes(id)) ?? true;': [
        ['detail?.ids?.every', 'detail?.ids.every'],
      ],
    },
  ),
  ...explained(
    'src/findings/still-done.ts',
    'it is asked at a repeat, of items of the book; the questions are for the compiler',
    {
      'if (node.repeat === undefined || item === undefined) return;': [
        ['node.repeat === undefined || item === undefined', 'false'],
        [
          'node.repeat === undefined || item === undefined',
          'node.repeat === undefined && item === undefined',
        ],
        ['node.repeat === undefined', 'false'],
        ['item === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/told-by-cause.ts',
    'a key that stands twice is told with the place where it stands first; the default is for the compiler',
    {
      'const told = {...problem, related: [...(problem.related ?? []), ...related]};': [['[]', LIST]],
    },
  ),
  ...explained(
    'src/findings/shallow-steps.ts',
    'a step of the first level stands at the beginning of its line',
    {
      'if (next.section !== step.section || indent === undefined || indent <= own || indent >= due) break;': [
        ['indent === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/shallow-steps.ts',
    'behind the number of another step it would be taken for farther in than any step of the first level stands',
    {
      'return /^ *$/.test(line) ? line.length : undefined;': [
        ['/^ *$/', '/ *$/'],
        ['/^ *$/', '/^ */'],
      ],
    },
  ),
];
