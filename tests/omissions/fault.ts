/** A single fault put into a clean book: what was done to which text, and which item a finding must name. */
import type {Book} from '../../src/build/book.js';
import type {Procedure} from '../../src/procedure/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {applyEdits, type Edit} from '../../src/text/edit.js';
import {positionAt, source} from '../../src/text/source.js';

export interface Fault {
  /** The kind of mistake, as the table of results names it. */
  readonly kind: string;
  /** The verb that it hits, or what of the specification. */
  readonly verb: string;
  readonly file: string;
  readonly edits: readonly Edit[];
  /** Ids of which a finding's first line must name one. */
  readonly names: readonly string[];
}

/** The book with the fault in it. Only the file that it touches is read again. */
export function broken(book: Book, fault: Fault): Book {
  const yaml = book.spec.files.get(fault.file);
  if (yaml !== undefined) return {...book, spec: reread(book, fault)};
  const procedures = book.procedures.map((procedure) =>
    procedure.source.file === fault.file ? edited(procedure, fault.edits) : procedure,
  );
  return {...book, procedures};
}

/** `file:line: kind of mistake (verb: names)`, to find a miss by. */
export function describeFault(book: Book, {file, edits, kind, verb, names}: Fault): string {
  const from = book.spec.files.get(file) ?? book.procedures.find(({source}) => source.file === file)?.source;
  const line = from === undefined ? 0 : positionAt(from, edits[0]?.span.start ?? 0).line;
  return `${file}:${line}: ${kind} (${verb}: ${names.join(', ')})`;
}

function edited({source: from}: Procedure, edits: readonly Edit[]): Procedure {
  return readProcedure(source(from.file, applyEdits(from.text, edits)));
}

function reread({spec}: Book, fault: Fault): Book['spec'] {
  const texts = [...spec.files.values()].map((from) =>
    from.file === fault.file ? source(from.file, applyEdits(from.text, fault.edits)) : from,
  );
  const shop = texts.find(({file}) => file.endsWith('shop.yaml'));
  const [engine, ...bases] = texts.filter((from) => from !== shop);
  if (engine === undefined) return spec;
  return readSpecification({...(shop && {shop}), engine, bases});
}
