/** Renaming of an item, option, source or step wherever it is named, in every book that shares it. */
import {isId} from '../procedure/tag-targets.js';
import {isLockKind} from '../spec/locks.js';
import type {Edit} from '../text/edit.js';
import type {Where} from '../text/source.js';
import type {BookView} from './book-view.js';
import {type Lookup, lookUp} from './lookup.js';
import type {MentionKind} from './mention.js';

/** Either what is wrong, as the client shows it, or the edits by file. */
export type Renaming =
  | {readonly ok: false; readonly says: string}
  | {readonly ok: true; readonly edits: ReadonlyMap<string, readonly Edit[]>};

const RENAMED: ReadonlySet<MentionKind> = new Set(['item', 'option', 'source', 'step', 'substitute']);

/** The place of the name that would be renamed; nothing where none can be. */
export function renamable(
  view: BookView,
  views: readonly BookView[],
  file: string,
  offset: number,
): {readonly where: Where; readonly id: string} | undefined {
  const found = lookUp(view, views, file, offset);
  if (found === undefined || !canRename(found)) return undefined;
  return {where: found.mention.where, id: found.mention.id};
}

/** The edits of every file of every book that names it, or why the name will not do. Nothing is edited by halves. */
export function rename(
  view: BookView,
  views: readonly BookView[],
  at: {readonly file: string; readonly offset: number},
  name: string,
): Renaming {
  const found = lookUp(view, views, at.file, at.offset);
  if (found === undefined || !canRename(found))
    return {ok: false, says: 'no name that can be changed stands here'};
  const fault = faultOf(name, found, view);
  if (fault !== undefined) return {ok: false, says: fault};
  const edits = new Map<string, Edit[]>();
  for (const {where} of found.all) {
    const list = edits.get(where.file) ?? [];
    edits.set(where.file, list);
    list.push({span: where.span, text: name});
  }
  for (const list of edits.values()) list.sort((one, other) => one.span.start - other.span.start);
  return {ok: true, edits};
}

/** A name that is given nowhere is a slip, which a fix corrects. */
function canRename({mention, all}: Lookup): boolean {
  return RENAMED.has(mention.kind) && all.some(({gives}) => gives);
}

function faultOf(name: string, {mention}: Lookup, view: BookView): string | undefined {
  if (!isId(name)) return `${name} is not a name in small letters, figures and single hyphens`;
  const {kind, where} = mention;
  const taken = view.mentions.some(
    (one) =>
      one.id === name && one.gives && one.kind === kind && (kind !== 'step' || one.where.file === where.file),
  );
  if (taken) return `${name} is the name of another already`;
  return kind === 'item' && isLockKind(name) ? `${name} is a kind of lock` : undefined;
}
