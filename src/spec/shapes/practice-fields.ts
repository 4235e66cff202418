/**
 * The fields that practice may state for all items of a kind at once, written as the item itself writes them.
 * Whatever belongs to one item alone (its parts, places, sizes) is in `items.ts`.
 */
import * as z from 'zod';
import {SURFACE_STATES} from '../model.js';
import {amount, flag, label, lockKind, name, names, stated, statedOrUnknown, text} from './values.js';

/** What practice may state; as the item itself writes them. */
export const PRACTICE_FIELDS = {
  part: {
    'single-use': stated(flag, 'It must be renewed before every lasting install.'),
    reused: stated(flag, 'It has run before: it is inspected before it goes in.'),
    turning: stated(flag, 'It is turned as it goes in.'),
    using: stated(names, 'Tools of which the install must name one.'),
    alterations: stated(names, 'Alterations that it needs before it goes in.'),
    hazards: stated(names, 'What may hurt somebody, in single words: pinch, heavy.'),
  },
  surface: {
    assembly: stated(
      z.enum([...SURFACE_STATES, 'unknown']),
      'How it goes together: clean, dry (clean and kept free of lubricant), lubed, or unknown.',
    ),
    lubricants: stated(names, 'Consumables of which one lubes it. None named: any lubricant.'),
  },
  joint: {
    seal: stated(
      z.union([z.enum(['none', 'unknown']), names]),
      'Consumables or gaskets of which one makes it up; none (because …) or unknown.',
    ),
  },
  fastener: {
    thread: statedOrUnknown(text, 'Thread: 1/2-13 UNC, M10x1.5.'),
    grade: statedOrUnknown(label, 'Grade or property class: SAE 5, 8.8.'),
    torque: stated(
      z.union([z.enum(['snug', 'none', 'unknown']), amount]),
      'Final torque with its unit, such as 85 lbf·ft; snug, none (because …) or unknown.',
    ),
    angle: statedOrUnknown(amount, 'Angle to turn on after the torque: 90°.'),
    passes: stated(z.array(amount), 'Torques of the passes, rising, the last one the final torque.'),
    threads: stated(
      z.union([z.enum(['dry', 'unknown']), names]),
      'dry, or the consumables of which one is on the threads; or unknown.',
    ),
    lock: stated(
      z.union([z.enum(['none', 'unknown']), lockKind, name, z.array(name).min(1)]),
      'A kind of lock or a consumable that is one, or a list of those that all go on; none (because …) or unknown.',
    ),
    stripe: stated(flag, 'A stripe of paint is drawn across it after its last torque.'),
    'single-use': stated(flag, 'It must be renewed whenever it has been tightened.'),
    hole: statedOrUnknown(amount, 'Diameter of the hole for wire or pin: 0.062 in.'),
    engagement: statedOrUnknown(amount, 'Length of full threads in engagement: 0.75 in.'),
    into: statedOrUnknown(
      text,
      'What the thread is tapped in: cast iron, cast iron class 30, aluminium, steel, brass, bronze or tensile 30 ksi.',
    ),
  },
  fit: {
    limits: statedOrUnknown(amount, 'Limits with their unit: 0.0015–0.0035 in; or unknown.'),
    by: stated(z.enum(['strip', 'gauge']), 'Read with a gauging strip, or by a gauge (the default).'),
    using: stated(names, 'Tools or gauging strips of which one reads it.'),
    rework: stated(flag, 'The procedures must say what to do when a reading is out (an `if:` branch).'),
  },
  mark: {
    stamped: stated(text, 'Where on the engine it is stamped.'),
  },
  check: {
    limits: statedOrUnknown(amount, 'Limits with their unit, where the check gives a number.'),
    expect: stated(text, 'What is expected where it is not a number: turns freely by hand.'),
    using: stated(names, 'Tools or consumables that it is made with.'),
    rework: stated(flag, 'The procedures must say what to do when it fails (an `if:` branch).'),
    hazards: stated(names, 'What may hurt somebody, in single words.'),
  },
  'hold-point': {
    by: stated(text, 'The role that signs: shop lead.'),
  },
  system: {
    with: stated(names, 'Consumables that may fill it.'),
    amount: statedOrUnknown(amount, 'How much goes in: 7 qt.'),
    hazards: stated(names, 'What may hurt somebody, in single words.'),
  },
  alteration: {
    using: stated(names, 'Tools or consumables that it is made with.'),
    hazards: stated(names, 'What may hurt somebody, in single words.'),
  },
  tool: {
    gauge: stated(flag, 'It measures: its calibration date is watched.'),
    accuracy: statedOrUnknown(text, 'Accuracy class or error, as on its certificate.'),
  },
  consumable: {
    hazards: stated(names, 'What may hurt somebody, in single words: skin, vapour.'),
    cure: statedOrUnknown(amount, 'Time it must be left alone: 24 h.'),
  },
} as const;
