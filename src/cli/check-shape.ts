/** The shape of `wmark check --as json`, from which `schemas/check.schema.json` is made. */
import * as z from 'zod';
import {jsonSchema} from '../spec/shapes/json-schema.js';

export const count = z.int().min(0);
const number = z.int().min(1);

export const place = {
  file: z.string().describe('relative to the working folder where it lies in it, absolute otherwise'),
  line: number.describe('counts from 1'),
  column: number.describe('counts from 1, in UTF-16 units'),
  endLine: number,
  endColumn: number.describe('just past the last character'),
};

export const remark = z.strictObject({...place, message: z.string()});

const edit = z.strictObject({...place, text: z.string().describe('what stands there instead')});

export const finding = z.strictObject({
  name: z.string().describe('`wmark why NAME` explains it'),
  severity: z.enum(['error', 'warning', 'information']),
  ...place,
  message: z.string(),
  item: z.string().nullable().describe('id of the item in engine.yaml that it is about'),
  place: z.string().nullable().describe('the places of the item that it is about; null for all of them'),
  story: z.array(remark).describe('what set and undid the fact in question, in build order'),
  related: z.array(remark).describe('other places to look at'),
  fix: z
    .strictObject({title: z.string(), edits: z.array(edit)})
    .nullable()
    .describe('one safe cure'),
});

const failure = z.strictObject({
  message: z.string(),
  hint: z.string().nullable(),
  file: z.string().nullable(),
  line: number.nullable(),
  column: number.nullable(),
});

const sliceReport = z.strictObject({
  counts: z.strictObject({
    jobs: count,
    procedures: count,
    steps: count,
    tags: count,
    items: count,
    covered: count,
    unjudged: count,
  }),
  uncovered: z.array(z.string()).describe('ids of items that no step deals with'),
  procedures: z.array(z.string()).describe('files of its procedures, in build order'),
  files: z.array(z.string()).describe('all files that were judged'),
  findings: count.describe(
    'how many of `findings` are its own; they stand there in the order of these reports',
  ),
});

const slice = z
  .strictObject({
    number: number.describe('K of `--slice K/N`'),
    of: number,
    build: z.string().describe('which build of wmark made it'),
    list: z.string().describe('digest of the names of all books found, of this slice or not'),
    job: z.string().nullable(),
    path: z.string().describe('the first path that was asked about'),
    failures: z.array(failure).describe('paths that lead to no book'),
    books: z.array(
      z.strictObject({
        at: count.describe('place among all books found, from 0'),
        jobs: z.array(z.string()).describe('numbers of its jobs'),
        base: z.boolean().describe('it is no book, only what others extend'),
        failure: failure.nullable().describe('why it could not be read'),
        reports: z.array(sliceReport).describe('one, or one a job with `--job`'),
      }),
    ),
  })
  .describe('of `--slice` only: what `wmark merge` needs to put slices together');

/** Public: who reads the report relies on it, so a change that takes anything away is a new version. */
export const checkShape = z.strictObject({
  summary: z.strictObject({
    books: count,
    jobs: count.describe('files of `jobs/`, each checked within its book'),
    procedures: count,
    steps: count,
    tags: count,
    items: count.describe('items of the specification that a build must deal with'),
    covered: count.describe('those of them that some step deals with'),
    uncovered: z.array(z.string()).describe('ids of the others, book after book'),
    unjudged: count.describe(
      'books whose specification cannot be read whole: none of their items is counted',
    ),
    errors: count,
    warnings: count,
    known: count.describe('findings on the list of known ones, which are left out of `findings`'),
  }),
  findings: z.array(finding),
  slice: slice.optional(),
});

export type SliceJson = z.infer<typeof slice>;

export type CheckJson = z.infer<typeof checkShape>;

/** The schema, a JSON Schema of the 2020-12 draft. */
export function checkSchema(): object {
  return jsonSchema(checkShape, 'What `wmark check --as json` prints');
}
