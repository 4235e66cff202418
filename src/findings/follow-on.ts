/**
 * What follows from a slip of the pen: a tag whose verb or name is misspelt says nothing, so that what it says is missed
 * farther on. The book is checked with the slips mended as well: what is then gone is marked, and not mended by itself.
 */
import type {Book} from '../build/book.js';
import type {Procedure} from '../procedure/model.js';
import {readProcedure} from '../procedure/read.js';
import {applyEdits, type Edit, editFault, type Fix} from '../text/edit.js';
import {source} from '../text/source.js';
import {HOUSE_PREFIX} from './house.js';
import type {Finding} from './model.js';

/** What a reader reports of a tag that then says nothing. */
const SLIPS: ReadonlySet<string> = new Set(['unknown-verb', 'unknown-item']);

/** At so many slips somebody wrote in a language that is not ours. */
const SHOWN = 3;

/** In characters, of a procedure: to read a longer one anew would be felt at every key in an editor. */
const LONGEST = 100_000;

/** A finding of a slip that a mend is known for. */
type Slip = Finding & {readonly fix: Fix};

/** Reads a procedure anew with its slips mended, or knows how it was read before. */
export type ReadMended = (procedure: Procedure, text: string) => Procedure;

export const readMended: ReadMended = ({source: {file}}, text) => readProcedure(source(file, text));

/**
 * The findings, with slips from which others follow in front, and those others without a fix and with the slips beside
 * them. Only errors are slips here: what the shop lets stand would never be mended.
 */
export function withFollowOn(
  findings: readonly Finding[],
  book: Book,
  recheck: (mended: Book) => readonly Finding[],
  read: ReadMended = readMended,
): readonly Finding[] {
  const sources = book.procedures.map((procedure) => procedure.source);
  const files = new Set(sources.filter(({text}) => text.length <= LONGEST).map(({file}) => file));
  const slips = findings.filter((one): one is Slip => {
    const {name, severity, fix} = one;
    return SLIPS.has(name) && severity === 'error' && fix !== undefined && files.has(fix.file);
  });
  if (slips.length === 0 || slips.length === findings.length) return findings;
  const still = new Set(recheck(mended(slips, book, read)).map(keyOf));
  const follows = (one: Finding) =>
    !SLIPS.has(one.name) && !one.name.startsWith(HOUSE_PREFIX) && !still.has(keyOf(one));
  if (!findings.some(follows)) return findings;
  const says = slips.length === 1 ? 'follows from this slip' : 'may follow from this slip';
  const causes = slips.slice(0, SHOWN).map(({where, message}) => ({where, says: `${says}: ${message}`}));
  const marked = findings.map((one): Finding => {
    if (!follows(one)) return one;
    const {fix: _, ...rest} = one;
    return {...rest, related: [...causes, ...one.related]};
  });
  const first = new Set<Finding>(slips);
  return [...slips, ...marked.filter((one) => !first.has(one))];
}

/** Never its message: what is still wrong may be told otherwise, and is no consequence then. */
function keyOf({name, where, item, place}: Finding): string {
  return JSON.stringify([name, where.file, item, place]);
}

function mended(slips: readonly Slip[], book: Book, read: ReadMended): Book {
  const edits = new Map<string, Edit[]>();
  for (const {
    fix: {file, edits: own},
  } of slips) {
    const all = edits.get(file) ?? [];
    edits.set(file, all);
    for (const edit of own) all.push(edit);
  }
  const procedures = book.procedures.map((procedure) => {
    const {text, file} = procedure.source;
    const own = edits.get(file)?.sort((one, other) => one.span.start - other.span.start);
    return own === undefined || editFault(own, text.length) !== undefined
      ? procedure
      : read(procedure, applyEdits(text, own));
  });
  return {...book, procedures};
}
