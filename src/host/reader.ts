/**
 * What a book is read with: the way to its texts, and what is made of each. The command reads the disk and makes all
 * afresh; an editor lays unsaved texts over the disk and keeps what did not change.
 */
import {readProcedure} from '../procedure/read.js';
import {readJob} from '../spec/job.js';
import {extendsOf, readSpecification} from '../spec/resolve.js';
import {readText} from './read.js';

export interface Reader {
  readonly text: typeof readText;
  readonly extendsOf: typeof extendsOf;
  readonly specification: typeof readSpecification;
  readonly procedure: typeof readProcedure;
  readonly job: typeof readJob;
}

/** From the disk, and everything anew. */
export const FRESH: Reader = {
  text: readText,
  extendsOf,
  specification: readSpecification,
  procedure: readProcedure,
  job: readJob,
};
