/**
 * The library's face: the remark plugin, reading and checking of books from texts or from disk, rules of the house,
 * and what all of these look at. Every name here is covered by the version number; everything else may change with
 * any release. What is handed out is plain data, and is not to be changed.
 */
// biome-ignore-all assist/source/organizeImports: they stand by what they are for, for whoever reads the list.

// Books: from the disk, or from texts.
export type {Book} from './build/book.js';
export type {Failure} from './host/failure.js';
export {failureText} from './host/failure.js';
export type {Loaded, LoadedBook} from './host/load.js';
export {loadBook, loadBooks} from './host/load.js';
export type {BookTexts} from './spec/resolve.js';
export {readSpecification} from './spec/resolve.js';
export {readProcedure} from './procedure/read.js';
export type {Job} from './spec/job.js';
export {readJob} from './spec/job.js';
export {source} from './text/source.js';

// The check, and what it finds.
export type {CheckOptions, CheckReport} from './findings/check.js';
export {check} from './findings/check.js';
export type {JobFinding, JobsReport} from './findings/check-jobs.js';
export {checkWithJobs} from './findings/check-jobs.js';
export type {Finding} from './findings/model.js';
export type {Remark} from './build/found.js';
export type {Summary} from './findings/summary.js';
export type {Place} from './host/places.js';
export {placeOf, textsOf} from './host/places.js';
export type {Position, Source, Span, Where} from './text/source.js';
export {positionAt} from './text/source.js';
export type {Edit, Fix} from './text/edit.js';
export {applyEdits} from './text/edit.js';

// The kinds of finding, with all that `wmark why` says of them.
export type {Example, FindingGroup, FindingKind} from './findings/model.js';
export {FINDINGS} from './findings/registry.js';
export {findingPage} from './findings/page.js';

// In remark.
export type {WitnessMarkOptions} from './remark.js';
export {witnessMark, witnessMark as default} from './remark.js';

// Rules of the house, and short ways to what they look at.
export type {Deed, HouseContext, HouseFault, HouseFinding, HouseState} from './findings/house.js';
export type {Found} from './build/found.js';
export type {Action, StepRef} from './build/program.js';
export {whereIn} from './build/program.js';
export type {Fact, FactKind} from './build/facts.js';
export {amountOf, amountsOf, clauseOf, idsOf, tagsOf, wordsOf} from './procedure/values.js';
export {itemsOfKind, placesOf} from './spec/items.js';
export {readAmount} from './quantity/parse.js';
export {formatAmount} from './quantity/format.js';

// The model: procedures, specification, values.
export type {
  Block,
  Caution,
  Clause,
  ClauseValue,
  Front,
  Procedure,
  Section,
  Step,
  Tag,
  Target,
} from './procedure/model.js';
export type {ClauseWord, Verb} from './procedure/verbs.js';
export type {
  Bar,
  Engine,
  Item,
  ItemKind,
  ItemOf,
  Located,
  Severity,
  Shop,
  Specification,
  Specified,
} from './spec/model.js';
export type {Amount, AmountFault, Dimension, Quantity, Reading, Unit} from './quantity/model.js';
export type {Problem, ProblemName} from './text/problem.js';
