/**
 * The library's face: the remark plugin, reading and checking of books from texts or from disk, and the sheets.
 * Everything here is covered by the version number; everything else may change with any release.
 */

export type {Book} from './build/book.js';
export type {CheckOptions, CheckReport} from './findings/check.js';
export {check} from './findings/check.js';
export type {Finding, FindingKind} from './findings/model.js';
export {findingPage} from './findings/page.js';
export {FINDINGS} from './findings/registry.js';
export type {Summary} from './findings/summary.js';
export type {Failure} from './host/failure.js';
export {failureText} from './host/failure.js';
export type {Loaded, LoadedBook} from './host/load.js';
export {loadBook, loadBooks} from './host/load.js';
export type {Place} from './host/places.js';
export {placeOf, textsOf} from './host/places.js';
export type {Procedure} from './procedure/model.js';
export {readProcedure} from './procedure/read.js';
export type {WitnessMarkOptions} from './remark.js';
export {witnessMark, witnessMark as default} from './remark.js';
export type {Specification} from './spec/model.js';
export {readSpecification} from './spec/resolve.js';
export type {Edit, Fix} from './text/edit.js';
export {applyEdits} from './text/edit.js';
export type {Source, Span, Where} from './text/source.js';
export {positionAt, source} from './text/source.js';
