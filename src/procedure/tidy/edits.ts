/**
 * The edits that bring a procedure into its one canonical form: tags spelt and ordered alike, steps numbered as the
 * sheet numbers them. Nothing else is touched, and nothing that would change what the procedure says.
 */
import type {Specification} from '../../spec/model.js';
import {applyEdits, type Edit} from '../../text/edit.js';
import {source} from '../../text/source.js';
import type {Procedure} from '../model.js';
import {readProcedure} from '../read.js';
import {sameMeaning} from './meaning.js';
import {type Renumbered, renumbered} from './numbers.js';
import {tagEdit, tagsOfProcedure} from './tags.js';

/**
 * In order, apart from each other, inside the text; none where it is tidy. The specification tells the order of
 * places; without it they stay as they are. A tag that cannot be read stays as it is too.
 */
export function tidyEdits(procedure: Procedure, spec?: Pick<Specification, 'items'>): readonly Edit[] {
  for (const numbers of [renumbered(procedure, 'shift'), renumbered(procedure, 'keep-width'), NONE]) {
    const edits = together(procedure, numbers, spec);
    if (edits.length === 0 || isHarmless(procedure, edits)) return edits;
  }
  // Some tag alone would change the reading of the text around it: each is then tried for itself.
  return together(procedure, NONE, spec).filter((edit) => isHarmless(procedure, [edit]));
}

const NONE: Renumbered = {edits: [], shifts: new Map()};

function together(
  procedure: Procedure,
  {edits, shifts}: Renumbered,
  spec: Pick<Specification, 'items'> | undefined,
): Edit[] {
  const tags = tagsOfProcedure(procedure).flatMap(
    (tag) => tagEdit(procedure.source, tag, spec, shifts) ?? [],
  );
  const inTag = ({span}: Edit) =>
    tags.some((tag) => tag.span.start <= span.start && span.end <= tag.span.end);
  // A tag over several lines brings the new indentation of its lines along.
  return [...tags, ...edits.filter((edit) => !inTag(edit))].sort(
    (one, other) => one.span.start - other.span.start || one.span.end - other.span.end,
  );
}

function isHarmless(procedure: Procedure, edits: readonly Edit[]): boolean {
  const {file, text} = procedure.source;
  return sameMeaning(procedure, readProcedure(source(file, applyEdits(text, edits))));
}
