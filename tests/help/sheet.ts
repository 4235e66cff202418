/** The sheet of a book of one procedure, as most tests of sheets want it. */
import type {Book} from '../../src/build/book.js';
import type {Procedure} from '../../src/procedure/model.js';
import {compileSheet, type SheetOptions} from '../../src/sheet/compile.js';
import type {Sheet} from '../../src/sheet/model.js';

/** Ten digits of it are printed. */
export const FINGERPRINT = '0123456789abcdef'.repeat(4);

/** @throws Error where the book has none. */
export function firstProcedure({procedures: [first]}: Pick<Book, 'procedures'>): Procedure {
  if (first === undefined) throw new Error('the book has no procedure');
  return first;
}

export function firstSheet(book: Book, options: Partial<SheetOptions> = {}): Sheet {
  return compileSheet(book, firstProcedure(book), {fingerprint: FINGERPRINT, ...options});
}
