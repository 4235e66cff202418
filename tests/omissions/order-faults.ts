/** Faults of order: two steps that depend on each other swapped, a lube moved behind what it must precede. */
import type {Book} from '../../src/build/book.js';
import {type ItemRelations, meetingPlaces, relations} from '../../src/build/relations.js';
import type {Procedure, Step, Tag} from '../../src/procedure/model.js';
import type {Item} from '../../src/spec/model.js';
import type {Edit} from '../../src/text/edit.js';
import type {Fault} from './fault.js';

export function orderFaults(book: Book): Fault[] {
  const known = relations(book.spec);
  return book.procedures.flatMap((procedure) => {
    const steps = procedure.sections.flatMap(({content}) =>
      content.flatMap((block) => (block.type === 'step' ? [block.step] : [])),
    );
    const neighbours = [steps, ...procedure.steps.map((step) => step.steps)].flatMap((row) =>
      row.flatMap((step, index) => (index === 0 ? [] : [[row[index - 1] ?? step, step] as const])),
    );
    return [
      ...neighbours.flatMap(([step, next]) => swapped(book, known, procedure, step, next)),
      ...steps.flatMap((step, index) => {
        const later = steps.slice(index + 1);
        return [
          ...movedLube(book, known, procedure, step, later),
          ...movedAlteration(book, procedure, step, later),
        ];
      }),
    ];
  });
}

function swapped(book: Book, known: ItemRelations, procedure: Procedure, first: Step, second: Step): Fault[] {
  const names = dependence(book, known, first, second);
  if (names.length === 0) return [];
  const {text} = procedure.source;
  const one = body(text, first);
  const two = body(text, second);
  const edits: Edit[] = [
    {span: one.span, text: two.text},
    {span: two.span, text: one.text},
  ];
  const verbs = `${verbs1(first)} / ${verbs1(second)}`;
  return [{kind: 'swap two steps', verb: verbs, file: procedure.source.file, edits, names}];
}

/** Pairs of verbs of which the second needs the first on the same or a belonging item. */
const NEEDS: readonly (readonly [string, string])[] = [
  ['clean', 'lube'],
  ['clean', 'seal'],
  ['clean', 'lay'],
  ['clean', 'install'],
  ['lube', 'install'],
  ['lube', 'torque'],
  ['lay', 'install'],
  ['seal', 'install'],
  ['renew', 'install'],
  ['alter', 'install'],
  ['inspect', 'install'],
  ['install', 'torque'],
  ['install', 'install'],
  ['check', 'install'],
  ['measure', 'install'],
  ['torque', 'lock'],
  ['torque', 'torque'],
  ['torque', 'measure'],
  ['seal', 'cure'],
  ['cure', 'fill'],
  ['loosen', 'remove'],
  ['remove', 'renew'],
  ['remove', 'measure'],
  ['lay', 'torque'],
];

function dependence(book: Book, known: ItemRelations, first: Step, second: Step): string[] {
  const names: string[] = [];
  for (const [a, itemA] of deeds(book, first)) {
    for (const [b, itemB] of deeds(book, second)) {
      if (!NEEDS.some(([x, y]) => x === a.verb && y === b.verb)) continue;
      if (depends(known, a, itemA, b, itemB)) names.push(itemA.id, itemB.id);
    }
  }
  return [...new Set(names)];
}

function depends(known: ItemRelations, a: Tag, itemA: Item, b: Tag, itemB: Item): boolean {
  if (a.verb === 'remove' && itemB.kind === 'fit') {
    // A strip is read with the part off that it was crushed under.
    return itemB.by === 'strip' && (itemB.when?.installed.some(({value}) => value === itemA.id) ?? false);
  }
  if (itemA.kind === 'fastener' && b.verb === 'remove')
    return itemA.holds.some(({value}) => value === itemB.id);
  if (itemB.kind === 'part') {
    const needs = [...itemB.closes, ...(a.verb === 'clean' || a.verb === 'lube' ? [] : itemB.after)];
    return itemA.id === itemB.id ? a.verb !== b.verb : needs.some(({value}) => value === itemA.id);
  }
  if (a.verb === 'install' && itemB.kind === 'fastener')
    return [...itemB.holds, ...itemB.after].some(({value}) => value === itemA.id);
  if (a.verb === 'torque' && itemB.kind === 'fastener' && b.verb === 'torque')
    return itemB.after.some(({value}) => value === itemA.id);
  if (a.verb === 'torque' && itemB.kind === 'fit') {
    return itemB.by === 'gauge' && (itemB.when?.tight.some(({value}) => value === itemA.id) ?? false);
  }
  if (a.verb === 'clean' && itemB.kind === 'fit') return itemB.between.some(({value}) => value === itemA.id);
  if (a.verb === 'cure' && itemB.kind === 'system') return itemB.joints.some(({value}) => value === itemA.id);
  return (
    itemA.id === itemB.id &&
    meetingPlaces(itemA, itemA.at, itemB).length > 0 &&
    known.spec.items.has(itemA.id)
  );
}

/** Moves a step that lubes a surface behind the first later step that closes it. */
function movedLube(
  book: Book,
  known: ItemRelations,
  procedure: Procedure,
  step: Step,
  later: readonly Step[],
): Fault[] {
  const lubed = deeds(book, step).filter(([tag, item]) => tag.verb === 'lube' && item.kind === 'surface');
  if (lubed.length === 0 || deeds(book, step).length !== lubed.length) return [];
  const closes = (part: Item) =>
    lubed.some(([, surface]) => known.closers.get(surface.id)?.some(({id}) => id === part.id));
  const names = lubed.map(([, {id}]) => id);
  return behind(book, procedure, {
    step,
    later,
    closes,
    kind: 'move a lube after its install',
    verb: 'lube',
    names,
  });
}

/** A part that the job fits in place of another goes in as it came, and is altered when it is too late. */
function movedAlteration(book: Book, procedure: Procedure, step: Step, later: readonly Step[]): Fault[] {
  const altered = deeds(book, step).filter(
    ([tag, {id}]) => tag.verb === 'alter' && book.job?.substitutes.has(id),
  );
  if (altered.length === 0) return [];
  const names = altered.map(([, {id}]) => id);
  const closes = ({id}: Item) => names.includes(id);
  return behind(book, procedure, {
    step,
    later,
    closes,
    kind: 'fit a substitute without its alteration',
    verb: 'alter',
    names,
  });
}

interface Moving {
  readonly step: Step;
  readonly later: readonly Step[];
  /** Whether installing this part makes it too late. */
  readonly closes: (part: Item) => boolean;
  readonly kind: string;
  readonly verb: string;
  readonly names: readonly string[];
}

function behind(book: Book, procedure: Procedure, {step, later, closes, ...fault}: Moving): Fault[] {
  const closer = later.find((other) =>
    deeds(book, other).some(([tag, part]) => tag.verb === 'install' && closes(part)),
  );
  if (closer === undefined) return [];
  const {text, file} = procedure.source;
  const moved = body(text, step);
  const end = body(text, closer).span.end;
  const edits: Edit[] = [
    {span: moved.span, text: 'Stand back and look at the work so far.'},
    {span: {start: end, end}, text: `\n1. ${moved.text}`},
  ];
  return [{...fault, file, edits}];
}

function deeds(book: Book, step: Step): [Tag, Item][] {
  return step.tags.flatMap((tag) =>
    tag.targets.flatMap(({id}): [Tag, Item][] => {
      const item = book.spec.items.get(id);
      return item === undefined ? [] : [[tag, item]];
    }),
  );
}

/** What stands behind the list marker, up to the last character of the step. */
function body(text: string, step: Step) {
  const span = {start: step.headSpan.start, end: step.span.end};
  return {span, text: text.slice(span.start, span.end)};
}

function verbs1({tags}: Step): string {
  return tags.map(({verb}) => verb).join('+');
}
