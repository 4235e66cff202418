/** A job as people write it: jobs/NUMBER.yaml, one engine on the stand. */
import * as z from 'zod';
import {amount, date, label, name, names, note, text} from './values.js';

const undersize = z
  .union([z.literal('standard'), amount])
  .describe('standard, or how much under standard: 0.010 in.');

export const jobFile = z
  .strictObject({
    job: z
      .strictObject({
        number: label.describe("The shop's number for this job."),
        engine: name.describe('Id of the engine in engine.yaml.'),
        for: text.describe('Whose engine it is.').optional(),
        received: date.describe('Day on which it came in: 2026-03-01.').optional(),
        lead: text.describe('Who answers for the job.').optional(),
        note,
      })
      .describe('The engine on the stand.'),
    marks: z
      .record(name, label)
      .describe('What the stamped numbers of this engine read, by the id of the mark.')
      .optional(),
    grinds: z
      .record(name, undersize)
      .describe('How far each surface was ground, by the id of the surface.')
      .optional(),
    fitted: z
      .record(name, z.strictObject({undersize, note}))
      .describe('What the parts bought for this engine are, by the id of the part.')
      .optional(),
    substitutes: z
      .record(name, name)
      .describe('Parts of other engines fitted in place of its own: id of the part, name of the substitute.')
      .optional(),
    options: names.describe('Options of this engine, by the names that `only:` uses.').optional(),
  })
  .describe('A job: one engine on the stand, its numbers, grinds, substituted parts and options.');
