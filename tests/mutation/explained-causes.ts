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
  ...explained('src/findings/same-name.ts', 'a list is made for a key by its first member', {
    'if (first === undefined || others.length === 0) continue;': [['first === undefined', 'false']],
    'if (first === undefined || others.length === 0) return;': [['first === undefined', 'false']],
  }),
  ...explained(
    'src/findings/same-name.ts',
    'every file of a name and of a definition is in the book; the questions are for the compiler',
    {
      'const isSlip = item !== undefined && written.size === 1 && only !== undefined && isNamedOnce(item, book);':
        [['only !== undefined', 'true']],
      'return sourcesOf(book).get(file)?.text.slice(span.start, span.end);': [
        ['sourcesOf(book).get(file)?.text', 'sourcesOf(book).get(file).text'],
      ],
    },
  ),
  ...explained('src/findings/same-name.ts', 'what has no name is of no kind, and is passed over', {
    'return problems.flatMap((problem) => (joined.has(problem) ? (joined.get(problem) ?? []) : problem));': [
      ['[]', LIST],
    ],
  }),
  ...explained(
    'src/findings/second-round.ts',
    'among no loops none is found, and the finding stays as it is',
    {
      'if (loops.length === 0) return (found) => found;': [['loops.length === 0', 'false']],
    },
  ),
  ...explained(
    'src/findings/second-round.ts',
    'a repeat names a step, so that what stands for none is never asked for',
    {
      'if (step.step.id !== undefined) named.set(step.step.id, step);': [
        ['step.step.id !== undefined', 'true'],
      ],
    },
  ),
  ...explained(
    'src/findings/missing-place.ts',
    'it is asked only whether it waits, and undefined says no as well',
    {
      'default:': [['default:\n      return false;', 'default:']],
    },
  ),
  ...explained('src/findings/missing-place.ts', 'an order is that of one step', {
    'if (last === undefined || by.step.order > last.order) last = by.step;': [
      ['by.step.order > last.order', 'by.step.order >= last.order'],
    ],
  }),
  ...explained(
    'src/findings/settle.ts',
    'among no waivers none fits: only the search for the step is saved',
    {
      'if (named.length === 0) return false;': [['named.length === 0', 'false']],
    },
  ),
  ...explained('src/findings/settle.ts', 'no finding is named undefined; the question is for the compiler', {
    'const fix = near !== undefined && isFound(near, step) ? renamed(where, near) : without(tag, step);': [
      ['near !== undefined', 'true'],
    ],
  }),
  ...explained(
    'src/findings/settle.ts',
    'the nearest to the name of a finding is itself, which is not found where its waiver is stale; none is near to the waivers of waivers',
    {
      'return kinds.some((kind) => kind.name === name) ? undefined : nearest(name, names);': [
        ['kinds.some((kind) => kind.name === name)', 'kinds.every(kind => kind.name === name)'],
        ['(kind) => kind.name === name', '() => undefined'],
        ['kind.name === name', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/settle.ts',
    'a sort that keeps the order of equals asks only whether the one comes before the other',
    {
      '(a.name < b.name ? -1 : a.name > b.name ? 1 : 0);': [
        ['a.name > b.name', 'false'],
        ['a.name > b.name', 'true'],
        ['a.name > b.name', 'a.name >= b.name'],
        ['a.name > b.name', 'a.name <= b.name'],
      ],
    },
  ),
  ...explained('src/findings/unit-wrong-kind.ts', 'a word is no tool, has no range, and is passed over', {
    "return (value?.type === 'ids' ? value.ids : []).flatMap(({id}) => {": [['[]', LIST]],
    "return item?.kind === 'tool' ? [item] : [];": [['[]', LIST]],
  }),
  ...explained(
    'src/findings/sealant-untagged.ts',
    'a word is no material, and it is asked of no other verb whether it has one',
    {
      "if (tag.verb !== 'seal') return [];": [['[]', LIST]],
    },
  ),
  ...explained(
    'src/findings/shallow-steps.ts',
    'a step that begins in the line of another comes behind that one',
    {
      'if (next.section !== step.section || indent === undefined || indent <= own || indent >= due) break;': [
        ['indent === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/shallow-steps.ts',
    'behind the number of another step it would be taken for farther in than any step that could follow',
    {
      'return /^ *$/.test(line) ? line.length : undefined;': [
        ['/^ *$/', '/ *$/'],
        ['/^ *$/', '/^ */'],
      ],
    },
  ),
  ...explained(
    'src/findings/told-by-cause.ts',
    'where no problem has a cause none is told at it; the question saves the work',
    {
      'if (!problems.some(({cause}) => cause)) return problems;': [
        ['!problems.some(({cause}) => cause)', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/missing-place.ts',
    'what holds was done by a step; the question is for the compiler',
    {
      'if (!holds || by === undefined) return undefined;': [['by === undefined', 'false']],
    },
  ),
  ...explained(
    'src/findings/settle.ts',
    'no verb but `waive` takes a reason, and without one nothing is silenced',
    {
      'step.step.tags': [["step.step.tags\n      .filter(({verb}) => verb === 'waive')", 'step.step.tags']],
      ".filter(({verb}) => verb === 'waive')": [["verb === 'waive'", 'true']],
    },
  ),
  ...explained(
    'src/findings/same-name.ts',
    'the problems of a file come sorted by their place, and so do their edits',
    {
      'edits: edits.sort((one, other) => one.span.start - other.span.start),': [
        ['edits.sort((one, other) => one.span.start - other.span.start)', 'edits'],
        ['(one, other) => one.span.start - other.span.start', '() => undefined'],
        ['one.span.start - other.span.start', 'one.span.start + other.span.start'],
      ],
    },
  ),
  ...explained(
    'src/findings/shallow-steps.ts',
    'at least the end of a line stands between a step and the next',
    {
      'if (next.span.start < (shallow.at(-1)?.span.end ?? 0)) continue;': [
        [
          'next.span.start < (shallow.at(-1)?.span.end ?? 0)',
          'next.span.start <= (shallow.at(-1)?.span.end ?? 0)',
        ],
      ],
    },
  ),
];
