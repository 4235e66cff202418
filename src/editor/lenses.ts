/** Above a procedure: how much of the book's specification is dealt with, and what is still undone at its end. */
import {type Covered, coverage} from '../build/coverage.js';
import {factWords} from '../build/tell.js';
import type {Procedure} from '../procedure/model.js';
import {counted} from '../text/counted.js';
import type {Where} from '../text/source.js';
import type {BookView} from './book-view.js';

/** A line above the procedure. */
export interface Lens {
  readonly title: string;
  /** What it leads to; none where it only tells. */
  readonly undone: readonly Undone[];
}

/** An item that the build leaves other than it must be. */
export interface Undone {
  readonly item: string;
  readonly place: string;
  /** "not tight" */
  readonly says: string;
  readonly where: Where;
}

/** Nothing for a procedure that stands in no book: only the whole build can leave something undone. */
export function lenses(view: BookView, procedure: Procedure): readonly Lens[] {
  if (view.loaded.alone) return [];
  const undone = undoneIn(view);
  const steps = procedure.steps.length;
  const named = new Set(
    procedure.steps.flatMap(({tags}) => tags.flatMap(({targets}) => targets.map(({id}) => id))),
  );
  const here = [...named].filter((id) => view.spec.items.has(id)).length;
  return [
    {
      title: `${counted(steps, 'step')}, ${counted(here, 'item')}`,
      undone: [],
    },
    {
      title:
        undone.length === 0 ? 'nothing left undone in the book' : `${undone.length} left undone in the book`,
      undone,
    },
  ];
}

function undoneIn(view: BookView): Undone[] {
  return coverage(view.ledger).flatMap(({item, place, due}) =>
    [...due].flatMap(([kind, holds]) =>
      holds ? [] : [{item: item.id, place, says: `not ${wordsOf(kind)}`, where: item.where}],
    ),
  );
}

function wordsOf(kind: Covered): string {
  return factWords(kind, true);
}
