/** Steps that do several things, and what ties those together: all that is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tells} from '../help/stories.js';

const ENGINE = `
parts:
  block: {given: true}
  seat: {seats-in: pocket, size: 1 in}
  cover: {closes: [cover-joint]}
  plug: {}
  shaft: {}
surfaces:
  pocket: {on: block, assembly: clean, size: 1 in}
  rail: {assembly: clean}
  ledge: {assembly: clean}
  journal: {on: shaft, assembly: clean}
joints:
  cover-joint: {between: [block, cover], seal: [paper-gasket]}
  drain-joint: {between: [block, plug], seal: [paper-gasket]}
fasteners:
  cover-bolts: {count: 4, holds: [cover], torque: 10 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
systems:
  water: {joints: [cover-joint], closed-by: [plug], with: [coolant]}
`;

/** Everything is done, and none of it two things in one step but what the story begins with. */
const story = (first: string, ...done: readonly string[]) => {
  const rest = [
    'clean: pocket, rail, ledge, journal, cover-joint, drain-joint',
    'install: shaft',
    'install: seat',
    'seal: cover-joint with paper-gasket',
    'seal: drain-joint with paper-gasket',
    'install: cover',
    'install: plug',
    'torque: cover-bolts',
    'fill: water with coolant',
  ];
  return [first, ...rest.filter((tag) => !done.includes(tag))].join('; ');
};

describe('a step with two tags', () => {
  tells(ENGINE, [
    [
      'of which none has to do with another',
      story('`clean: rail` `clean: ledge`'),
      `
two-actions ledge: ledge: step 1 does several things that have nothing to do with each other (clean rail, clean ledge); make each a step`,
    ],
    [
      'of which one is of the part and one of a surface on it',
      story('`clean: shaft` `clean: journal`'),
      SILENT,
    ],
    ['of which one is of a part and one of what it seats in', story('`clean: seat` `clean: pocket`'), SILENT],
    [
      'of a part and of a surface that is on the block with it',
      story('`clean: plug` `clean: pocket`'),
      `
two-actions pocket: pocket: step 1 does several things that have nothing to do with each other (clean plug, clean pocket); make each a step`,
    ],
    ['of a part and of the joint that it closes', story('`clean: cover` `clean: cover-joint`'), SILENT],
    ['of a system and of a joint of it', story('`drain: water` `clean: cover-joint`'), SILENT],
    ['of a system and of the plug that closes it', story('`drain: water` `clean: plug`'), SILENT],
    [
      'of a system and of a part that has nothing to do with it',
      story('`drain: water` `clean: shaft`'),
      `
two-actions shaft: shaft: step 1 does several things that have nothing to do with each other (drain water, clean shaft); make each a step`,
    ],
    [
      'of which one has several targets, one of them on the part of the other',
      story('`clean: rail, journal` `clean: shaft`'),
      SILENT,
    ],
    [
      'and a third that ties them together',
      story('`clean: cover` `drain: water` `loosen: cover-bolts` `clean: cover-joint`'),
      SILENT,
    ],
    [
      'and a third that ties to the first',
      story('`clean: shaft` `clean: rail` `clean: journal`'),
      `
two-actions rail: rail: step 1 does several things that have nothing to do with each other (clean shaft, clean rail); make each a step`,
    ],
    [
      'of which the last ties the first two together, and one stands between',
      story('`clean: cover` `clean: rail` `clean: plug` `clean: ledge` `drain: water`'),
      `
two-actions rail: rail: step 1 does several things that have nothing to do with each other (clean cover, clean rail, clean ledge); make each a step`,
    ],
    [
      'of parts that nothing ties',
      story('`clean: plug` `clean: shaft`'),
      `
two-actions shaft: shaft: step 1 does several things that have nothing to do with each other (clean plug, clean shaft); make each a step`,
    ],
    [
      'of two things on the block',
      story('`clean: pocket` `clean: cover-joint`'),
      `
two-actions cover-joint: cover-joint: step 1 does several things that have nothing to do with each other (clean pocket, clean cover-joint); make each a step`,
    ],
    ['of a joint and of a part at it', story('`clean: plug` `clean: drain-joint`'), SILENT],
    [
      'and a third that has to do with the first alone',
      story('`clean: cover` `drain: water` `loosen: cover-bolts`'),
      SILENT,
    ],
    [
      'of three things',
      story('`clean: shaft` `clean: rail` `clean: ledge`'),
      `
two-actions rail: rail: step 1 does several things that have nothing to do with each other (clean shaft, clean rail, clean ledge); make each a step`,
    ],
    ['of which one reads, looks or says', story('`clean: shaft` `inspect: cover`'), SILENT],
  ]);
});
