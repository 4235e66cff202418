/** One edit of a clean book of a known class: what a reviewer should be told of it, and the book after it. */
import type {Book} from '../../src/build/book.js';
import type {Effect} from '../../src/compare/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {applyEdits, type Edit} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';

export interface Review {
  /** The class, as the table names it. */
  readonly kind: string;
  readonly expected: 'weakened' | 'strengthened' | 'harmless';
  /** Where, to find a miss by. */
  readonly at: string;
  readonly after: () => Book;
}

/** What the reviewer reads first: the worst effect among the changes. */
export function worst(effects: readonly Effect[]): Effect | 'nothing' {
  const order: readonly Effect[] = ['weakened', 'strengthened', 'changed', 'reworded'];
  return order.find((effect) => effects.includes(effect)) ?? 'nothing';
}

/** The book with edits in several of its files. */
export function withEdits(book: Book, byFile: ReadonlyMap<string, readonly Edit[]>): Book {
  const inOrder = (file: string) => [...(byFile.get(file) ?? [])].sort((a, b) => a.span.start - b.span.start);
  const texts = new Map(
    [...book.spec.files.values()].map((from) => [
      from.file,
      source(from.file, applyEdits(from.text, inOrder(from.file))),
    ]),
  );
  const touched = [...book.spec.files.keys()].some((file) => byFile.has(file));
  return {
    ...book,
    spec: touched ? specOf([...texts.values()], book) : book.spec,
    procedures: book.procedures.map((procedure) => {
      const {file, text} = procedure.source;
      return byFile.has(file) ? readProcedure(source(file, applyEdits(text, inOrder(file)))) : procedure;
    }),
  };
}

function specOf(texts: ReturnType<typeof source>[], {spec}: Book): Book['spec'] {
  const shop = texts.find(({file}) => file.endsWith('shop.yaml'));
  const [engine, ...bases] = texts.filter((from) => from !== shop);
  return engine === undefined ? spec : readSpecification({...(shop && {shop}), engine, bases});
}
