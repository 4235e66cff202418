/** The kinds of item as engine.yaml and shop.yaml write them. */
import * as z from 'zod';
import {NUT_FACTOR_RANGE} from '../../trade/nut-factors.js';
import {CONSUMABLE_USES} from '../model.js';
import {PRACTICE_FIELDS} from './practice-fields.js';
import {
  amount,
  because,
  count,
  date,
  flag,
  label,
  lockKind,
  name,
  names,
  note,
  place,
  source,
  stated,
  statedOrUnknown,
  text,
} from './values.js';

const common = {
  name: text.describe('As a person would say it; the id with spaces where it is left out.').optional(),
  type: name.describe('A word of your own that practice can aim at: plain-bearing, drilled-head.').optional(),
  source,
  note,
};

const engineItem = {
  ...common,
  only: z
    .union([name, names])
    .describe('Options of which an engine must have one to have it; left out: every engine has it.')
    .optional(),
};

const places = {
  at: z.array(place).describe('Names of its places, in order, where there are several of it.').optional(),
};

const size = amount.describe('The size in this place.');
const sizes = z.record(name, z.union([size, z.strictObject({value: size, source, note, because})]));

function list(says: string) {
  return names.describe(says).optional();
}

const FIRST =
  'parts in, joints sealed and cured, tight fasteners, fits, checks, hold points, marks, filled systems';

const disturbedBy = list(
  'Fasteners and parts: once one of them is slackened, tightened again, taken off, put back, altered or renewed after the reading, it counts no longer.',
);

const point = z.tuple([z.number(), z.number()]);

export const ITEM_SHAPES = {
  part: z.strictObject({
    ...engineItem,
    ...places,
    given: flag.describe('It is there from the start, such as a block on the stand.').optional(),
    temporary: flag
      .describe(
        'It goes in for a while only, such as a locking pin or a blanking plug, and must be out at the end.',
      )
      .optional(),
    blocks: list('Parts (a shaft) that must not be turned while it is in, such as a locking pin.'),
    quantity: count.describe('How many of it go in; 1 where it is left out.').optional(),
    closes: list('Surfaces and joints that can no longer be reached once it is in.'),
    after: list(`What must come before it: ${FIRST}.`),
    size: statedOrUnknown(amount, 'Nominal size, where it must match the surface that it seats in.'),
    'seats-in': name.describe('The surface that it seats in.').optional(),
    ...PRACTICE_FIELDS.part,
    substitutes: z
      .record(
        name,
        z.strictObject({
          name: text.describe('As a person would say it.').optional(),
          alterations: stated(
            z.union([z.literal('none'), names]),
            'Alterations that it needs before it fits this engine; none (because …) where it fits as it comes.',
          ),
          note,
        }),
      )
      .describe('Parts of other engines that a job may fit in its place, by a name of your own.')
      .optional(),
  }),
  surface: z.strictObject({
    ...engineItem,
    ...places,
    on: name.describe('The part that it is on.').optional(),
    ...PRACTICE_FIELDS.surface,
    size: statedOrUnknown(amount, 'Nominal size in every place.'),
    sizes: sizes.describe('Nominal size by place.').optional(),
    order: z.enum(['rising', 'falling']).describe('How the sizes go along `at`.').optional(),
    grinds: z.array(amount).describe('Undersizes to which it may be ground: 0.010 in, 0.020 in.').optional(),
  }),
  joint: z.strictObject({
    ...engineItem,
    ...places,
    between: list('The parts or surfaces that meet in it.'),
    ...PRACTICE_FIELDS.joint,
  }),
  fastener: z.strictObject({
    ...engineItem,
    ...places,
    count: count.describe('How many there are, over all places; 1 where it is left out.').optional(),
    holds: list('Parts that it holds.'),
    after: list(
      'What must come before it is tightened, whenever it is: parts in (a locking pin, a dowel), other fasteners at their torque, joints sealed and cured. Running it down snug may come first.',
    ),
    ...PRACTICE_FIELDS.fastener,
    layout: z
      .object({unit: z.enum(['in', 'mm']).describe('Unit of the positions.')})
      .catchall(point)
      .describe('Where each one sits: its name and [x, y].')
      .optional(),
    runs: z
      .array(z.array(place).min(1))
      .describe(
        'Runs of safety wire, by the names of the layout in the order in which the wire goes: [[a, b, c], [d, e, f]]. A run of one is wired to something else.',
      )
      .optional(),
    order: z
      .array(place)
      .describe('Tightening order, by the names of the layout, or by number where there is none.')
      .optional(),
  }),
  fit: z.strictObject({
    ...engineItem,
    ...places,
    between: list('The surfaces or parts that it lies between.'),
    'taper-of': list(
      'Fits that read one size at two or more places along it, in one direction: this one is the largest less the smallest of them, place by place.',
    ),
    'out-of-round-of': list(
      'Fits that read one size in two or more directions across it: this one is the largest less the smallest of them, place by place.',
    ),
    'disturbed-by': disturbedBy,
    ...PRACTICE_FIELDS.fit,
    when: z
      .strictObject({
        installed: list('Parts that are in when it is measured.'),
        tight: list('Fasteners that are at their final torque when it is measured.'),
      })
      .describe('When it is measured.')
      .optional(),
  }),
  mark: z.strictObject({
    ...engineItem,
    ...places,
    ...PRACTICE_FIELDS.mark,
    matches: name.describe('Another mark that must read the same.').optional(),
  }),
  check: z.strictObject({
    ...engineItem,
    ...places,
    after: list(`What must come before it is made, whenever it is: ${FIRST}.`),
    'disturbed-by': disturbedBy,
    ...PRACTICE_FIELDS.check,
  }),
  'hold-point': z.strictObject({
    ...engineItem,
    ...places,
    asks: list('Items that must be as specified by then.'),
    ...PRACTICE_FIELDS['hold-point'],
  }),
  system: z.strictObject({
    ...engineItem,
    ...places,
    joints: list('Joints that filling it puts under load.'),
    'closed-by': list(
      'Parts and fasteners (a drain plug) that close it: in, and tight, before it is filled.',
    ),
    after: list(`What must come before every filling: ${FIRST}.`),
    ...PRACTICE_FIELDS.system,
  }),
  alteration: z.strictObject({
    ...engineItem,
    ...places,
    of: list('Parts that it is made to.'),
    does: text.describe('What is done: grind the locating lip flush.').optional(),
    ...PRACTICE_FIELDS.alteration,
  }),
  tool: z.strictObject({
    ...common,
    range: statedOrUnknown(amount, 'What it can set or read: 20–150 lbf·ft.'),
    resolution: statedOrUnknown(amount, 'One division: 1 lbf·ft.'),
    ...PRACTICE_FIELDS.tool,
    calibrated: date.describe('Day of the last calibration: 2026-03-01.').optional(),
    due: date.describe('Day by which it must be calibrated again.').optional(),
    serial: label.describe('Serial number.').optional(),
  }),
  consumable: z.strictObject({
    ...common,
    use: z.enum(CONSUMABLE_USES).describe('What it is for.'),
    lock: lockKind.describe('Which kind of lock it is, for `use: lock`.').optional(),
    ...PRACTICE_FIELDS.consumable,
    k: stated(
      z.number().min(NUT_FACTOR_RANGE.low).max(NUT_FACTOR_RANGE.high),
      'Nut factor K of threads that carry it (T = K·F·d), where the shop knows it: 0.15. Left out: the published one.',
    ),
    range: statedOrUnknown(amount, 'What a gauging strip can read: 0.001–0.003 in.'),
    size: statedOrUnknown(amount, 'Thickness or diameter: 0.041 in.'),
  }),
} as const;
