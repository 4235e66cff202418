/**
 * What a book is read with: the way to its texts, and what is made of each. The command reads the disk and makes all
 * afresh; an editor lays unsaved texts over the disk and keeps what did not change.
 */
import {readProcedure} from '../procedure/read.js';
import {readJob} from '../spec/job.js';
import {extendsOf, readSpecification} from '../spec/resolve.js';
import {DISK, type Disk} from './disk.js';

export interface Reader {
  /** Where an editor lays unsaved texts over the disk. */
  readonly text: Disk['text'];
  readonly disk: Omit<Disk, 'text'>;
  readonly extendsOf: typeof extendsOf;
  readonly specification: typeof readSpecification;
  readonly procedure: typeof readProcedure;
  readonly job: typeof readJob;
}

/** From the disk, and everything anew. */
export const FRESH: Reader = {
  text: DISK.text,
  disk: DISK,
  extendsOf,
  specification: readSpecification,
  procedure: readProcedure,
  job: readJob,
};

/** How files are read, and the working folder to which their names are relative. */
export interface Way {
  readonly cwd: string;
  readonly reader?: Reader | undefined;
}
