/**
 * What the judging of records gives, as plain data that prints as JSON unchanged: shapes and types together, so that
 * the schema of `wmark readings --as json` is made from what the program uses.
 */
import * as z from 'zod';

const count = z.int().min(0);
const text = z.string();

/** What a remark can be about, in the order in which a reader wants them. */
export const REMARK_NAMES = [
  'out',
  'signed-over-out',
  'works-out-wrong',
  'cure-short',
  'unreadable',
  'mark-differs',
  'accepted',
  'near',
  'missing',
  'sheet-missing',
  'still-open',
  'not-begun',
  'same-hand',
  'signed-early',
  'signed-ahead',
  'no-initials',
  'written-over',
  'reworked',
  'gauge-due',
  'clock-back',
  'out-of-order',
  'seal-broken',
  'book-changed',
  'records-differ',
  'sheet-unknown',
  'box-unknown',
] as const;

const remark = z.strictObject({
  name: z.enum(REMARK_NAMES),
  severity: z.enum(['error', 'warning', 'information']),
  sheet: text.describe('file name of the procedure without folder and ending'),
  step: text.describe('as printed; empty where it is about no step'),
  message: text,
  item: text.optional().describe('id of the item in engine.yaml'),
  place: text.optional(),
});

const said = {value: text.describe('as written'), at: text.describe('ISO 8601 in UTC'), by: text};

const limits = {
  unit: text,
  least: z.number().optional().describe('inclusive, in `unit`'),
  most: z.number().optional().describe('inclusive, in `unit`'),
  figures: z
    .int()
    .optional()
    .describe(
      'figures behind the point with which the limits are stated, where the numbers alone have fewer',
    ),
};

const doubt = z.number().optional().describe('how far the gauge may be out, plus or minus, in `unit`');

const round = z.strictObject({
  ...said,
  round: z.int().min(1),
  number: z.number().optional().describe('the value, in `unit`; left out where it is no number'),
  verdict: z
    .enum(['in', 'near', 'out'])
    .optional()
    .describe(
      'near: inside by less than the gauge may be out, or where that is not known in the last tenth of the tolerance; left out where there are no limits',
    ),
  accepted: z
    .strictObject({because: text, at: said.at, by: text})
    .optional()
    .describe('who stands by it, out of its limits as it is'),
  before: z.array(z.strictObject(said)).describe('what stood in the box before, oldest first'),
});

const reading = z.strictObject({
  sheet: text,
  step: text,
  item: text,
  name: text,
  place: text.describe('empty where the item has one place only'),
  ...limits,
  doubt,
  rounds: z.array(round).describe('the readings that stand, the last one counts'),
  state: z
    .enum(['in', 'near', 'out', 'unreadable', 'unjudged', 'missing', 'open', 'not-called-for'])
    .describe('unjudged: it has no limits; open: not read yet, on a sheet that nobody has signed off'),
});

const worked = z.strictObject({
  item: text,
  name: text,
  place: text,
  ...limits,
  smallest: z.number().describe('in `unit`, as `largest`'),
  largest: z.number(),
  from: text.describe('the readings that it is worked out from'),
  state: z.enum(['in', 'out', 'unjudged']),
});

const signature = z.strictObject({
  sheet: text,
  step: text,
  item: text,
  name: text,
  role: text.optional(),
  by: text.optional(),
  at: text.optional(),
  state: z.enum(['signed', 'missing', 'open', 'not-called-for']),
});

const waiver = z.strictObject({
  sheet: text,
  step: text,
  finding: text,
  reason: text,
  approvedBy: text.optional(),
});

const sheet = z.strictObject({
  procedure: text,
  title: text,
  revision: text,
  fingerprint: text.describe('of the sheet that was followed'),
  state: z
    .enum(['judged', 'book-changed', 'unknown', 'missing', 'not-begun'])
    .describe('only a judged sheet adds readings, signatures and unanswered boxes'),
  entries: count,
  asked: count.describe('boxes that had to be answered'),
  answered: count.describe('those of them that were'),
  seals: z
    .enum(['follow', 'broken'])
    .describe(
      'follow: every seal follows from the one before it; that shows slips, and is no proof against forgery',
    ),
  first: text.optional().describe('time of the first entry'),
  last: text.optional(),
});

const build = z.strictObject({
  engine: text.describe('id of the engine'),
  name: text,
  job: text.optional(),
  engineNumber: text.optional(),
  files: z.array(text),
  sheets: z.array(sheet),
  remarks: z.array(remark),
  readings: z.array(reading),
  worked: z.array(worked).describe('clearances worked out from readings of size'),
  signatures: z.array(signature),
  waivers: z.array(waiver),
});

const spread = z.strictObject({
  engine: text,
  item: text,
  name: text,
  place: text.describe('empty where the item has one place only'),
  ...limits,
  doubt,
  values: z.array(
    z.strictObject({
      build: z.string().describe('job, else number of the engine, else the file'),
      value: z.number(),
    }),
  ),
  mean: z.number(),
  smallest: z.number(),
  largest: z.number(),
  deviation: z.number().optional().describe('sample standard deviation (n − 1); left out for one value'),
});

export const readingsShape = z.strictObject({
  builds: z.array(build),
  spread: z.array(spread).describe('over the builds of one engine, where there are several'),
});

export type ReadingsReport = z.infer<typeof readingsShape>;
export type BuildReport = z.infer<typeof build>;
export type SheetLine = z.infer<typeof sheet>;
export type Remark = z.infer<typeof remark>;
export type RemarkName = Remark['name'];
export type ReadingLine = z.infer<typeof reading>;
export type Round = z.infer<typeof round>;
export type Worked = z.infer<typeof worked>;
export type Signature = z.infer<typeof signature>;
export type WaiverLine = z.infer<typeof waiver>;
export type Spread = z.infer<typeof spread>;
