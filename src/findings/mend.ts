/** Makes the fixes that a book's findings carry and that anybody may make: those that change only how a thing is written. */
import type {Book} from '../build/book.js';
import {readProcedure} from '../procedure/read.js';
import {applyEdits, type Edit, type Fix, offsetBefore} from '../text/edit.js';
import {source} from '../text/source.js';
import {type CheckOptions, check} from './check.js';
import type {Finding} from './model.js';
import {FINDINGS} from './registry.js';

/** A fix that was made: of which finding, and where that stood in the text as it was at first. */
export interface Made {
  readonly file: string;
  readonly offset: number;
  readonly title: string;
  readonly finding: string;
}

export interface Mended {
  /** The book with its procedures as they are now. */
  readonly book: Book;
  readonly made: readonly Made[];
  /** The edits by file, round after round, each of the text that the round before left. */
  readonly rounds: ReadonlyMap<string, readonly (readonly Edit[])[]>;
  /** What carries a fix that is left to a person, as the check finds it now. */
  readonly left: readonly (Finding & {readonly fix: Fix})[];
}

/**
 * Only in procedures whose file is among `files`. A fix may bring another finding to light, so this goes round until
 * no fix is left, ten times at most; of fixes that overlap the first is made, and the others in a later round.
 */
export function mend(book: Book, files: ReadonlySet<string>, options: CheckOptions): Mended {
  const made: Made[] = [];
  const rounds = new Map<string, readonly (readonly Edit[])[]>();
  let now = book;
  for (let round = 0; ; round++) {
    const fixable = check(now, options).findings.flatMap(({fix, ...finding}) =>
      fix === undefined ? [] : [{...finding, fix}],
    );
    const mine = fixable.filter(({name, fix}) => SPELLING.has(name) && files.has(fix.file));
    const chosen = disjoint(mine);
    if (chosen.length === 0 || round === MOST_ROUNDS) {
      return {book: now, made, rounds, left: fixable};
    }
    for (const {name, where, fix} of chosen) {
      const offset = offsetAtFirst(rounds.get(fix.file) ?? [], where.span.start);
      made.push({file: fix.file, offset, title: fix.title, finding: name});
    }
    now = {...now, procedures: now.procedures.map((one) => edited(one, chosen, rounds))};
  }
}

/** Where an offset of the text that the rounds left stood in the text before them. */
export function offsetAtFirst(rounds: readonly (readonly Edit[])[], offset: number): number {
  return rounds.reduceRight((at, edits) => offsetBefore(edits, at), offset);
}

/** A fix that brings back what another took away would go on for ever. */
const MOST_ROUNDS = 10;

const SPELLING: ReadonlySet<string> = new Set(
  FINDINGS.filter(({fixIsSpelling}) => fixIsSpelling).map(({name}) => name),
);

type Fixable = Finding & {readonly fix: Fix};

/** Those that touch nothing which one before them touches, nor stand right beside it. */
export function disjoint<F extends {readonly fix: Fix}>(all: readonly F[]): F[] {
  const taken: F[] = [];
  for (const one of all) {
    const clear = taken.every(
      ({fix}) => fix.file !== one.fix.file || fix.edits.every((edit) => one.fix.edits.every(apart(edit))),
    );
    if (clear) taken.push(one);
  }
  return taken;
}

function apart({span}: Edit): (other: Edit) => boolean {
  return (other) => other.span.end < span.start || span.end < other.span.start;
}

function edited(
  procedure: Book['procedures'][number],
  chosen: readonly Fixable[],
  rounds: Map<string, readonly (readonly Edit[])[]>,
): Book['procedures'][number] {
  const {file, text} = procedure.source;
  const edits = chosen
    .filter(({fix}) => fix.file === file)
    .flatMap(({fix}) => fix.edits)
    .sort((one, other) => one.span.start - other.span.start);
  if (edits.length === 0) return procedure;
  rounds.set(file, [...(rounds.get(file) ?? []), edits]);
  return readProcedure({...source(file, applyEdits(text, edits)), mark: procedure.source.mark});
}
