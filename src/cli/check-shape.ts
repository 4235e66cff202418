/** The shape of `wmark check --as json`, from which `schemas/check.schema.json` is made. */
import * as z from 'zod';

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

export const checkShape = z.strictObject({
  summary: z.strictObject({
    books: count,
    jobs: count.describe('files of `jobs/`, each checked within its book'),
    procedures: count,
    steps: count,
    tags: count,
    items: count.describe('items of the specification that a build must deal with'),
    covered: count.describe('those of them that some step deals with'),
    errors: count,
    warnings: count,
    known: count.describe('findings on the list of known ones, which are left out of `findings`'),
  }),
  findings: z.array(finding),
});

export type CheckJson = z.infer<typeof checkShape>;

/** The schema, a JSON Schema of the 2020-12 draft. */
export function checkSchema(): object {
  const {$schema, ...rest} = z.toJSONSchema(checkShape, {target: 'draft-2020-12'});
  return {$schema, title: 'What `wmark check --as json` prints', ...rest};
}
