/** The two files of a book as people write them: shop.yaml and engine.yaml. */
import * as z from 'zod';
import {LANGUAGE_TAGS, PAPERS, SEVERITIES, SYSTEMS} from '../model.js';
import type {ENGINE_SECTIONS} from '../sections.js';
import {ITEM_SHAPES} from './items.js';
import {PRACTICE_FIELDS} from './practice-fields.js';
import {date, label, MOST_BARRED, name, names, note, text} from './values.js';

const fileSource = name.describe('The source of every value of this file that names none itself.').optional();

const sourceNote = z.strictObject({
  title: text.describe('Title as a reader would look for it.'),
  date: z.union([date, label]).describe('Date or year.').optional(),
  note,
});

const nothing = z.null().describe('Drops the item of the base.');

/** A plain string is the item's name; nothing drops the item of the base. */
function section<T extends z.ZodType>(item: T, says: string) {
  return z
    .record(name, z.union([item, text.describe('Its name.'), nothing]))
    .describe(says)
    .optional();
}

const option = z.strictObject({
  name: text.describe('As a person would say it; the id with spaces where it is left out.').optional(),
  note,
});

const bar = z.strictObject({
  what: names.max(MOST_BARRED).describe('Consumables, tools, parts or kinds of lock that may not be used.'),
  on: names.describe('Items on which they may not be used; left out: on the whole engine.').optional(),
  because: text.describe('Why.'),
  source: name.describe('Id of the source that says so.').optional(),
});

/** In a shape of its own for each kind, so that a misfit is told of the fields of that kind alone. */
function practiceFor<K extends keyof typeof PRACTICE_FIELDS>(kind: K) {
  return z.strictObject({
    every: z.literal(kind).describe('The kind of item for which this holds.'),
    type: name.describe('Only for items of this type.').optional(),
    is: z.strictObject(PRACTICE_FIELDS[kind]).describe('What holds, in the fields of that kind.'),
    source: name.describe('Id of the source of these values.').optional(),
    note,
  });
}

const practice = z.discriminatedUnion('every', [
  practiceFor('part'),
  practiceFor('surface'),
  practiceFor('joint'),
  practiceFor('fastener'),
  practiceFor('fit'),
  practiceFor('mark'),
  practiceFor('check'),
  practiceFor('hold-point'),
  practiceFor('system'),
  practiceFor('alteration'),
  practiceFor('tool'),
  practiceFor('consumable'),
]);

export const shopFile = z
  .strictObject({
    shop: z
      .strictObject({
        name: text.describe('Name of the shop, as the sheets print it.'),
        paper: z.enum(PAPERS).describe('Paper of the sheets; A4 where it is left out.').optional(),
        units: z
          .enum(SYSTEMS)
          .describe('Which units are printed first; inch where it is left out.')
          .optional(),
        language: z
          .enum(LANGUAGE_TAGS)
          .describe(
            'Language of the words that a sheet or build report prints by itself: English (en, where it is left out) or German (de).',
          )
          .optional(),
      })
      .describe('The shop.'),
    severity: z
      .record(name, z.enum(SEVERITIES))
      .describe('How much each finding weighs, by its name.')
      .optional(),
    source: fileSource,
    sources: z.record(name, sourceNote).describe('Where values come from, by id.').optional(),
    tools: z
      .record(name, z.union([ITEM_SHAPES.tool, text.describe('Its name.')]))
      .describe('Tools and gauges of the shop, by id.')
      .optional(),
    consumables: z
      .record(name, ITEM_SHAPES.consumable)
      .describe('Oils, sealants, gaskets, wire and whatever else is used up, by id.')
      .optional(),
    practice: z.array(practice).describe('What holds for every item of a kind, and of a type.').optional(),
  })
  .describe('A shop: its name, tools, consumables, practice, and how much each finding weighs.');

const SECTION_SAYS: Readonly<Record<keyof typeof ENGINE_SECTIONS, string>> = {
  parts: 'What goes into the engine, by id.',
  surfaces: 'Faces, bores and journals that must be clean, dry or lubed, by id.',
  joints: 'Where two parts meet and must not leak, by id.',
  fasteners: 'Bolts, nuts and studs in groups that are tightened alike, by id.',
  fits: 'Clearances that are measured, by id.',
  marks: 'Numbers that are stamped or cast and must be written down, by id.',
  checks: 'Checks that something works as it should, by id.',
  'hold-points': 'Where work stops until a second person has signed, by id.',
  systems: 'What is filled with oil or coolant, by id.',
  alterations: 'Changes that a part needs before it fits this engine, by id.',
};

export const engineFile = z
  .strictObject({
    engine: z
      .strictObject({
        id: name.describe('Short name: ottermouth-four.'),
        name: text.describe('Name of the engine, as the sheets print it.').optional(),
        note,
      })
      .describe('The engine.'),
    extends: text
      .describe(
        'An engine.yaml that this one builds on, relative to this file. Items here replace items there.',
      )
      .optional(),
    source: fileSource,
    sources: z
      .record(name, z.union([sourceNote, nothing]))
      .describe('Where values come from, by id.')
      .optional(),
    options: section(option, 'What some engines of this kind have and others have not, by id.'),
    parts: section(ITEM_SHAPES.part, SECTION_SAYS.parts),
    surfaces: section(ITEM_SHAPES.surface, SECTION_SAYS.surfaces),
    joints: section(ITEM_SHAPES.joint, SECTION_SAYS.joints),
    fasteners: section(ITEM_SHAPES.fastener, SECTION_SAYS.fasteners),
    fits: section(ITEM_SHAPES.fit, SECTION_SAYS.fits),
    marks: section(ITEM_SHAPES.mark, SECTION_SAYS.marks),
    checks: section(ITEM_SHAPES.check, SECTION_SAYS.checks),
    'hold-points': section(ITEM_SHAPES['hold-point'], SECTION_SAYS['hold-points']),
    systems: section(ITEM_SHAPES.system, SECTION_SAYS.systems),
    alterations: section(ITEM_SHAPES.alteration, SECTION_SAYS.alterations),
    barred: z.array(bar).describe('What may not be used, on what, and why.').optional(),
    build: z
      .array(text)
      .describe(
        'The procedures in build order, relative to this file, anywhere below the folder of shop.yaml.',
      )
      .optional(),
  })
  .describe('An engine: what it is made of, how it must go together, and the procedures that do it.');
