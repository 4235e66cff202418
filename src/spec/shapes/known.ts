/** The list of known findings as people keep it, and as the tool writes it: known.yaml. */
import * as z from 'zod';
import {label, text} from './values.js';

const entry = z.strictObject({
  finding: label.describe('Name of the finding: left-unlocked.'),
  file: label.describe('The file that it stands in, relative to this one.'),
  item: label.describe('Id of the item that it is about, where there is one.').optional(),
  place: label.describe('Its place, where the finding is about one place only.').optional(),
  says: text.describe('What it says, where it is about no item.').optional(),
  times: z.int().min(1).describe('How often it is found there; once where left out.').optional(),
  because: text.describe('Why it is let stand.'),
  owner: text.describe('Who answers for it.'),
});

export const knownFile = z
  .strictObject({known: z.array(entry).describe('The findings, in any order.')})
  .describe('Findings that the shop knows of and lets stand for now: only others fail the check.');
