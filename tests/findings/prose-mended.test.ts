/** What the fix of a number in the prose writes, in either language, and where none is offered. Every value is invented. */
import {describe} from 'vitest';
import {tellsOfText} from '../help/stories.js';

const ENGLISH = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
`;
const GERMAN = ENGLISH.replace('Works}', 'Works, language: de}');

const ENGINE = `
parts:
  block: {given: true}
  cover: {}
fasteners:
  nut: {holds: [cover], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
  bolts: {holds: [cover], torque: 40.5 lbf·ft, passes: [20 lbf·ft, 40.5 lbf·ft], threads: dry, lock: {value: none, because: stretch}}
fits:
  play: {between: [block, cover], limits: 0.004–0.008 in}
  gap: {between: [block, cover], limits: 4 thou–0.01 in}
  fine: {between: [block, cover], limits: 4.0 thou–0.010 in}
  wide: {between: [block, cover], limits: 12.0–12.5 mm}
`;

const step = (prose: string, tag: string) => `1. ${prose} \`${tag}\`\n`;

/** What is said of a step with one tag: message, tag, specification, fix. */
const says = (item: string, said: string, [line, due]: readonly [number, string], fix?: string) => `
prose-disagrees ${item}: ${item}: the prose says ${said}, the specification ${due}
  see procedure.md:7: the tag
  see engine.yaml:${line}: ${item} is specified here${fix === undefined ? '' : `\n  fix: Write ${fix}`}`;

const NUT = says(
  'nut',
  '45 lbf·ft (61 N·m)',
  [9, '40 lbf·ft (54 N·m)'],
  '40 lbf·ft: "40 lbf·ft" for "45 lbf·ft"',
);
const PLAY = [12, '0.004–0.008 in (0.11–0.20 mm)'] as const;
const WIDE = [15, '0.473–0.492 in (12.0–12.5 mm)'] as const;

describe('in English', () => {
  tellsOfText('prose-', {engine: ENGINE, shop: ENGLISH}, [
    ['a torque', step('To 45 lbf·ft.', 'torque: nut'), NUT],
    [
      'limits with a dash',
      step('Read 0.004–0.010 in.', 'measure: play'),
      says(
        'play',
        '0.004–0.010 in (0.11–0.25 mm)',
        PLAY,
        '0.004–0.008 in: "0.004–0.008 in" for "0.004–0.010 in"',
      ),
    ],
    [
      'limits in words',
      step('Between 0.004 and 0.010 in.', 'measure: play'),
      says(
        'play',
        '0.004–0.010 in (0.11–0.25 mm)',
        PLAY,
        '0.004 and 0.008 in: "0.004 and 0.008 in" for "0.004 and 0.010 in"',
      ),
    ],
    [
      'limits in words, whose ends have units of their own',
      step('Between 0.004 and 0.012 in.', 'measure: gap'),
      '',
    ],
    [
      'limits in words, for limits in two units',
      step('Between 0.004 and 0.020 in.', 'measure: fine'),
      says(
        'fine',
        '0.004–0.020 in (0.11–0.50 mm)',
        [14, '4.0 thou to 0.010 in (0.102–0.254 mm)'],
        '4.0 thou to 0.010 in: "4.0 thou to 0.010 in" for "0.004 and 0.020 in"',
      ),
    ],
    [
      'one limit for both',
      step('No more than 0.010 in.', 'measure: play'),
      says('play', '0.010 in (0.25 mm)', PLAY),
    ],
    [
      'a number without a unit of its own',
      step('To 50 and 45 lbf·ft.', 'torque: nut'),
      says('nut', '50 lbf·ft (68 N·m)', [9, '40 lbf·ft (54 N·m)']) + NUT,
    ],
    [
      'a number for one with passes',
      step('To 45 lbf·ft.', 'torque: bolts'),
      says('bolts', '45 lbf·ft (61 N·m)', [10, '40.5 lbf·ft (54.9 N·m) in passes of 20 lbf·ft, 40.5 lbf·ft']),
    ],
    ['a comma, which is no number', step('Read 12,0–12,4 mm.', 'measure: wide'), ''],
  ]);
});

describe('in German', () => {
  tellsOfText('prose-', {engine: ENGINE, shop: GERMAN}, [
    [
      'limits',
      step('Messen: 12,0–12,4 mm.', 'measure: wide'),
      says('wide', '0.473–0.488 in (12.0–12.4 mm)', WIDE, '12,0–12,5 mm: "12,0–12,5 mm" for "12,0–12,4 mm"'),
    ],
    [
      'limits with points between',
      step('Messen: 12,0..14 mm.', 'measure: wide'),
      says('wide', '0.473–0.551 in (12.0–14 mm)', WIDE, '12,0–12,5 mm: "12,0–12,5 mm" for "12,0..14 mm"'),
    ],
    ['a torque that is no fraction', step('Auf 45 lbf·ft.', 'torque: nut'), NUT],
    ['a list, which is none', step('Messen: 11,12,13 mm.', 'measure: wide'), ''],
    [
      'thousands of another language',
      step('Messen: 1,200.5–1,300.5 mm.', 'measure: wide'),
      says(
        'wide',
        '47.264–51.200 in (1200.5–1300.5 mm)',
        WIDE,
        '12,0–12,5 mm: "12,0–12,5 mm" for "1,200.5–1,300.5 mm"',
      ),
    ],
  ]);
});
