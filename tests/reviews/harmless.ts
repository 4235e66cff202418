/** Edits that change nothing for the engine: other words, other order where none is needed, other names, other units. */
import type {Book} from '../../src/build/book.js';
import type {Procedure, Step, Tag} from '../../src/procedure/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {amountOf, clauseOf} from '../../src/procedure/values.js';
import {otherUnit} from '../../src/quantity/counterpart.js';
import {formatAmount, restated} from '../../src/quantity/format.js';
import type {Item} from '../../src/spec/model.js';
import type {Edit} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {type Review, withEdits} from './edited.js';

export function harmless(book: Book): Review[] {
  return [
    ...book.procedures.flatMap((procedure) => [
      ...procedure.steps.flatMap((step) => [
        ...reworded(book, procedure, step),
        ...step.tags.flatMap((tag) => [
          ...otherUnits(book, procedure, tag),
          ...splitTag(book, procedure, tag),
          ...spacedTag(book, procedure, tag),
          ...leftToSpec(book, procedure, tag),
          ...allPlaces(book, procedure, tag),
        ]),
        ...splitStep(book, procedure, step),
        ...step.cautions.flatMap(({span, text}) => [
          edit(
            book,
            procedure,
            'reword a caution',
            [{span: {start: span.end, end: span.end}, text: ' Mind it every time.'}],
            text.slice(0, 20),
          ),
        ]),
      ]),
      ...movedSteps(book, procedure),
      ...mergedSteps(book, procedure),
      ...headings(book, procedure),
      ...passages(book, procedure),
      renamedFile(book, procedure),
      edit(book, procedure, 'raise the revision', [revision(procedure)], 'front'),
    ]),
    ...renamedItems(book),
    ...commented(book),
  ];
}

function edit(
  book: Book,
  {source: {file}}: Procedure,
  kind: string,
  edits: readonly Edit[],
  at: string,
): Review {
  return {
    kind,
    expected: 'harmless',
    at: `${file}: ${at}`,
    after: () => withEdits(book, new Map([[file, edits]])),
  };
}

function insert(at: number, text: string): Edit {
  return {span: {start: at, end: at}, text};
}

function reworded(book: Book, procedure: Procedure, step: Step): Review[] {
  const {text} = procedure.source;
  const first = /^[A-Z][a-z]+/.exec(text.slice(step.headSpan.start))?.[0];
  if (first === undefined) return [];
  const start = step.headSpan.start;
  const lower = first.charAt(0).toLowerCase() + first.slice(1);
  return [
    edit(
      book,
      procedure,
      'reword a step',
      [insert(start, 'Now, without haste, '), {span: {start: start, end: start + first.length}, text: lower}]
        .reverse()
        .reduce<Edit[]>(merge, []),
      step.number,
    ),
  ];
}

/** An insertion and a replacement at one place are one edit. */
function merge(all: Edit[], one: Edit): Edit[] {
  const last = all.at(-1);
  if (last === undefined || last.span.start !== one.span.start) return [...all, one];
  return [...all.slice(0, -1), {span: last.span, text: one.text + last.text}];
}

function otherUnits(book: Book, procedure: Procedure, tag: Tag): Review[] {
  return (['to', 'within'] as const).flatMap((word) => {
    const amount = amountOf(tag, word);
    const clause = clauseOf(tag, word);
    const unit = amount && otherUnit(amount);
    // Passes take the unit of the torque, so there it may not change alone.
    if (!amount || !clause || !unit || clauseOf(tag, 'in') !== undefined) return [];
    return [
      edit(
        book,
        procedure,
        'write a value in another unit',
        [{span: clause.valueSpan, text: formatAmount(restated(amount, unit))}],
        tag.raw,
      ),
    ];
  });
}

/** Limits that the specification states too: the sheet prints them either way. */
function leftToSpec(book: Book, procedure: Procedure, tag: Tag): Review[] {
  const clause = clauseOf(tag, 'within');
  if (clause === undefined) return [];
  const stated = tag.targets.every(({id}) => {
    const item = book.spec.items.get(id);
    return (item?.kind === 'fit' || item?.kind === 'check') && typeof item.limits?.value === 'object';
  });
  const start = clause.span.start - 1;
  return stated
    ? [
        edit(
          book,
          procedure,
          'leave a value to the specification',
          [{span: {start, end: clause.span.end}, text: ''}],
          tag.raw,
        ),
      ]
    : [];
}

function allPlaces(book: Book, procedure: Procedure, tag: Tag): Review[] {
  if (['hazard', 'step', 'only', 'waive', 'repeat', 'if'].includes(tag.verb)) return [];
  return tag.targets.flatMap(({id, span, places}) => {
    const all = book.spec.items.get(id)?.at ?? [];
    if (all.length === 0 || places.length > 0) return [];
    return [
      edit(
        book,
        procedure,
        'name all places',
        [insert(span.start + id.length, `[${all.join(', ')}]`)],
        tag.raw,
      ),
    ];
  });
}

function splitTag(book: Book, procedure: Procedure, tag: Tag): Review[] {
  const [first, second] = tag.targets;
  if (first === undefined || second === undefined || tag.targets.length !== 2) return [];
  const {text} = procedure.source;
  const rest = text.slice(tag.targets[1]?.span.start ?? 0, tag.span.end);
  const firstText = text.slice(first.span.start, second.span.start).replace(/,\s*$/, '');
  const clauses = text.slice(Math.max(...tag.targets.map(endOf(text))), tag.span.end);
  return [
    edit(
      book,
      procedure,
      'split a tag in two',
      [{span: tag.span, text: `${tag.verb}: ${firstText}${clauses}\` \`${tag.verb}: ${rest}`}],
      tag.raw,
    ),
  ];
}

function endOf(text: string) {
  return ({span, places}: Tag['targets'][number]) => {
    const last = Math.max(span.end, ...places.map((place) => place.span.end));
    return text[last] === ']' ? last + 1 : last;
  };
}

function spacedTag(book: Book, procedure: Procedure, tag: Tag): Review[] {
  return [edit(book, procedure, 'space a tag otherwise', [insert(tag.verbSpan.end + 1, '  ')], tag.raw)];
}

function splitStep(book: Book, procedure: Procedure, step: Step): Review[] {
  const [first, second] = step.tags;
  if (first === undefined || second === undefined || step.steps.length > 0 || /[a-z]/.test(step.number))
    return [];
  if ([first, second].some(({verb}) => ['step', 'waive', 'if', 'repeat', 'only', 'turn'].includes(verb)))
    return [];
  const {text} = procedure.source;
  const open = text.lastIndexOf('`', second.span.start - 1);
  return [
    edit(
      book,
      procedure,
      'split a step in two',
      [{span: {start: open, end: open}, text: `\n${step.number}. Then go on. `}],
      step.number,
    ),
  ];
}

/** Two steps side by side that deal with nothing in common, nor with what lies on or beside it. */
function movedSteps(book: Book, procedure: Procedure): Review[] {
  const {text} = procedure.source;
  return neighbours(procedure).flatMap(([one, two]) => {
    if (!areApart(book, one, two)) return [];
    const [a, b] = [body(text, one), body(text, two)];
    return [
      edit(
        book,
        procedure,
        'swap two steps that are apart',
        [
          {span: a.span, text: b.text},
          {span: b.span, text: a.text},
        ],
        `${one.number}, ${two.number}`,
      ),
    ];
  });
}

function neighbours({sections}: Procedure): [Step, Step][] {
  return sections.flatMap(({content}) =>
    content.flatMap((block, index): [Step, Step][] => {
      const next = content[index + 1];
      return block.type === 'step' && next?.type === 'step' && next.step.cautions.length === 0
        ? [[block.step, next.step]]
        : [];
    }),
  );
}

function areApart(book: Book, one: Step, two: Step): boolean {
  const [a, b] = [one, two].map((step) => around(book, step));
  const plain = [one, two].every(
    ({steps, tags}) =>
      steps.length === 0 &&
      !tags.some(({verb}) => ['step', 'if', 'repeat', 'waive', 'witness', 'fill', 'turn'].includes(verb)),
  );
  return (
    plain && a !== undefined && b !== undefined && a.size > 0 && b.size > 0 && ![...a].some((id) => b.has(id))
  );
}

/** The items of a step and every item that the specification names with them, either way round, and theirs. */
function around({spec}: Book, {tags}: Step): Set<string> {
  const found = new Set(tags.flatMap(({targets}) => targets.map(({id}) => id)));
  for (let round = 0; round < 2; round++) {
    const before = [...found];
    for (const item of spec.items.values()) {
      if (item.kind === 'tool' || item.kind === 'consumable') continue;
      const names = namesIn(item);
      if (found.has(item.id)) for (const name of names) found.add(name);
      else if (names.some((name) => before.includes(name))) found.add(item.id);
    }
  }
  return new Set(
    [...found].filter((id) => !['tool', 'consumable', undefined].includes(spec.items.get(id)?.kind)),
  );
}

function namesIn(item: Item): string[] {
  const text = JSON.stringify({...item, name: '', note: '', where: undefined});
  return [...text.matchAll(/"value":"([a-z0-9-]+)"/g)].flatMap(([, id]) => (id === undefined ? [] : [id]));
}

function body(text: string, step: Step) {
  const span = {start: step.headSpan.start, end: step.span.end};
  return {span, text: text.slice(span.start, span.end)};
}

function mergedSteps(book: Book, procedure: Procedure): Review[] {
  const {text} = procedure.source;
  return neighbours(procedure).flatMap(([one, two]) => {
    if (one.steps.length > 0 || two.steps.length > 0) return [];
    const special = [...one.tags, ...two.tags].some(({verb}) =>
      ['step', 'if', 'repeat', 'only', 'waive'].includes(verb),
    );
    const gap = text.slice(one.span.end, two.headSpan.start);
    if (special || !/^\s*\d+\.\s*$/.test(gap)) return [];
    return [
      edit(
        book,
        procedure,
        'join two steps',
        [{span: {start: one.span.end, end: two.headSpan.start}, text: ' '}],
        `${one.number}, ${two.number}`,
      ),
    ];
  });
}

function headings(book: Book, procedure: Procedure): Review[] {
  return procedure.sections.flatMap(({title, span}) =>
    title === ''
      ? []
      : [
          edit(
            book,
            procedure,
            'rename a section',
            [insert(span.start + procedure.source.text.slice(span.start).search(/[A-Za-z0-9]/), 'Now: ')],
            title,
          ),
        ],
  );
}

/** Prose that stands outside steps. */
function passages(book: Book, procedure: Procedure): Review[] {
  return procedure.sections.flatMap(({content}) =>
    content.flatMap((block) =>
      block.type === 'prose'
        ? [
            edit(
              book,
              procedure,
              'reword a passage',
              [insert(block.span.end, ' Take your time.')],
              block.text.slice(0, 20),
            ),
          ]
        : [],
    ),
  );
}

function revision({source: {text}}: Procedure): Edit {
  const at = text.indexOf('revision:');
  const end = text.indexOf('\n', at);
  return {span: {start: at, end}, text: 'revision: Z'};
}

function renamedFile(book: Book, procedure: Procedure): Review {
  const {file, text} = procedure.source;
  const after = () => ({
    ...book,
    procedures: book.procedures.map((one) =>
      one === procedure ? readProcedure(source(file.replace(/\.md$/, '-anew.md'), text)) : one,
    ),
  });
  return {kind: 'rename a procedure', expected: 'harmless', at: file, after};
}

/** Every id once, throughout the book: as a whole word in tags and YAML. */
function renamedItems(book: Book): Review[] {
  return [...book.spec.items.values()].map(({id}) => ({
    kind: 'rename an item',
    expected: 'harmless' as const,
    at: id,
    after: () => {
      const files = [...book.spec.files.values(), ...book.procedures.map(({source: from}) => from)];
      const edits = new Map(
        files.flatMap(({file, text}) => {
          const found = renames(text, id, file.endsWith('.md') ? tagSpans(book, file) : undefined);
          return found.length === 0 ? [] : [[file, found] as const];
        }),
      );
      return withEdits(book, edits);
    },
  }));
}

function tagSpans(book: Book, file: string): Tag['span'][] {
  const procedure = book.procedures.find(({source: from}) => from.file === file);
  return procedure?.steps.flatMap(({tags}) => tags.map(({span}) => span)) ?? [];
}

function renames(text: string, id: string, within: readonly Tag['span'][] | undefined): Edit[] {
  const word = new RegExp(`(?<![a-z0-9-])${id}(?![a-z0-9-])`, 'g');
  return [...text.matchAll(word)].flatMap(({index}) => {
    const inside =
      within === undefined
        ? isName(text, index)
        : within.some(({start, end}) => start <= index && index < end);
    return inside ? [{span: {start: index, end: index + id.length}, text: `${id}-x`}] : [];
  });
}

/** In YAML a name is a key or stands in a list; a word of a title or note is none. */
function isName(text: string, index: number): boolean {
  const line = text.slice(text.lastIndexOf('\n', index) + 1, index);
  return (
    !/#|\b(name|note|title|type|because|does|stamped|expect|by|assembly|use|source|is|every):[^,{}[\]]*$/.test(
      line,
    ) || /source: ?$/.test('')
  );
}

function commented(book: Book): Review[] {
  return [...book.spec.files.values()].map(({file}) => ({
    kind: 'comment in a YAML file',
    expected: 'harmless' as const,
    at: file,
    after: () => withEdits(book, new Map([[file, [insert(0, '# Read with care.\n')]]])),
  }));
}
