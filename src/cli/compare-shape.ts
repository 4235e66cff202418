/** The shape of `wmark compare --as json`, from which `schemas/compare.schema.json` is made. */
import * as z from 'zod';
import {EFFECTS} from '../compare/model.js';
import {jsonSchema} from '../spec/shapes/json-schema.js';
import {count, finding, remark} from './check-shape.js';

const side = z.strictObject({
  required: z
    .string()
    .nullable()
    .describe('what the specification asks of the item; null where none is meant'),
  at: z
    .array(remark)
    .describe('steps in build order, or places in the specification, with what stands there'),
});

const change = z.strictObject({
  effect: z.enum(EFFECTS).describe('what it does to the engine'),
  subject: z.string().describe('an item with its places, or what else it is about'),
  item: z.string().nullable().describe('id of the item in engine.yaml, as the new side calls it'),
  aspect: z.string().describe('what of the subject: a field, a verb or the name of a finding'),
  message: z.string(),
  before: side,
  now: side.describe('the same on the new side'),
  brings: z.array(finding).describe('findings that come with it'),
  fingerprint: z.string().describe('the same for the same change when lines move'),
});

const book = z.strictObject({
  engine: z.string().describe('name of the engine'),
  before: z.string().nullable().describe('its engine.yaml on the old side; null for a new book'),
  now: z.string().nullable().describe('its engine.yaml on the new side; null for a book that is gone'),
  changes: z.array(change).describe('weakened first'),
  brought: z.array(finding).describe('findings that only the new side has'),
  settled: z.array(finding).describe('findings that only the old side had'),
});

const unseen = z.strictObject({
  side: z.enum(['before', 'now']),
  message: z.string(),
  file: z.string().nullable(),
  line: z.int().min(1).nullable(),
});

export const compareShape = z.strictObject({
  before: z.string().describe('the old side, as it was named: a folder or a revision'),
  now: z.string().describe('the new side'),
  summary: z.strictObject({
    books: count,
    weakened: count,
    strengthened: count,
    changed: count,
    reworded: count,
    brought: count.describe('findings that only the new side has'),
    settled: count.describe('findings that only the old side had'),
  }),
  unseen: z.array(unseen).describe('what could not be taken into account'),
  books: z.array(book),
});

export type CompareJson = z.infer<typeof compareShape>;

/** The schema, a JSON Schema of the 2020-12 draft. */
export function compareSchema(): object {
  return jsonSchema(compareShape, 'What `wmark compare --as json` prints');
}
