/** From a name to where it is given and to everywhere it is used, in all books that share what it is the name of. */
import type {Where} from '../text/source.js';
import type {BookView} from './book-view.js';
import type {Mention} from './mention.js';
import {mentionAt} from './mentions.js';

/** A name, and all that is the same name. */
export interface Lookup {
  readonly mention: Mention;
  /** In the order of books and files, each place once. */
  readonly all: readonly Mention[];
}

/** The name at an offset of a file; nothing where no name stands. */
export function lookUp(
  view: BookView,
  views: readonly BookView[],
  file: string,
  offset: number,
): Lookup | undefined {
  const mention = mentionAt(view.mentions, {file, span: {start: offset, end: offset}});
  if (mention === undefined) return undefined;
  const all = new Map<string, Mention>();
  for (const one of sharing(mention, view, views)) {
    for (const other of one.mentions) {
      if (isSame(mention, other)) all.set(`${other.where.file} ${other.where.span.start}`, other);
    }
  }
  return {mention, all: [...all.values()]};
}

/** Where the name is given; the file that it names. */
export function definitions({mention, all}: Lookup, view: BookView): readonly Where[] {
  if (mention.kind === 'file') return fileNamed(mention, view);
  return all.filter(({gives}) => gives).map(({where}) => where);
}

/** A step's name holds in its own procedure, everything else in the whole book. */
function isSame(one: Mention, other: Mention): boolean {
  if (one.id !== other.id || one.kind !== other.kind) return false;
  return one.kind !== 'step' || one.where.file === other.where.file;
}

/** The books in which the name is given in the same places, whichever of them one starts from. */
function sharing(mention: Mention, view: BookView, views: readonly BookView[]): readonly BookView[] {
  const found = new Set([view]);
  const given = new Set(placesGiven(mention, view));
  for (let more = true; more; ) {
    more = false;
    for (const other of views) {
      const places = placesGiven(mention, other);
      if (found.has(other) || !places.some((place) => given.has(place))) continue;
      found.add(other);
      for (const place of places) given.add(place);
      more = true;
    }
  }
  return [...found];
}

function placesGiven(mention: Mention, view: BookView): string[] {
  return view.mentions.flatMap((one) =>
    one.gives && isSame(mention, one) ? [`${one.where.file} ${one.where.span.start}`] : [],
  );
}

/** By the end of its path: `build:` names files from the folder of the file that it stands in. */
function fileNamed({id}: Mention, view: BookView): readonly Where[] {
  const name = id.replace(/^(?:\.{1,2}\/)+/, '');
  const files = [...view.texts.keys()].filter((file) => file === name || file.endsWith(`/${name}`));
  return files.map((file) => ({file, span: {start: 0, end: 0}}));
}
