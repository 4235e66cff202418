/** Preload of bolts as a share of their proof load: F = T/(K·d), Shigley 9th ed., Eq. 8-27; the values are invented. */
import {describe} from 'vitest';
import {SILENT, tellsOf} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
consumables:
  slick: {use: lubricant, k: 0.125}
  wax: {use: lubricant, k: 0.15}
  paint: {use: other}
`;

/** With K = 0.20, 90 % of its proof load is 1277.1 lbf·in, and 50 % is 709.5 lbf·in. */
const bolts = (says: string) => `
parts:
  block: {given: true}
  cap: {}
fasteners:
  bolts: {count: 4, holds: [cap], thread: 1/2-13 UNC, grade: proof 100 ksi, lock: {value: none, because: stretch}, ${says}}
`;

const DRY = 'threads: dry';
const GOOD = `${DRY}, torque: 1000 lbf·in`;

describe('a torque that a step states', () => {
  tellsOf(
    'preload-out-of-range',
    [
      [
        'and the specification does not',
        bolts(DRY),
        'torque: bolts to 500 lbf·in',
        `
preload-out-of-range bolts: bolts: 500 lbf·in (56.5 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 35 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 23–48 % with the scatter of a torque wrench; the maker's figure outranks this estimate
  see engine.yaml:9: bolts is specified here`,
      ],
      [
        'otherwise than the specification',
        bolts(GOOD),
        'torque: bolts to 500 lbf·in',
        `
preload-out-of-range bolts: bolts: 500 lbf·in (56.5 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 35 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 23–48 % with the scatter of a torque wrench; the maker's figure outranks this estimate
  see engine.yaml:9: bolts is specified here`,
      ],
      [
        'as the specification',
        bolts(`${DRY}, torque: 500 lbf·in`),
        'torque: bolts to 500 lbf·in',
        `
preload-out-of-range bolts: bolts: 500 lbf·in (56.5 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 35 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 23–48 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'by its passes alone',
        bolts(GOOD),
        'torque: bolts in 200, 500, 600 lbf·in',
        `
preload-out-of-range bolts: bolts: 600 lbf·in (67.8 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 42 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 27–57 % with the scatter of a torque wrench; the maker's figure outranks this estimate
  see engine.yaml:9: bolts is specified here`,
      ],
      ['with an angle on it', bolts(GOOD), 'torque: bolts to 500 lbf·in turn 90°', SILENT],
      ['before the last', bolts(GOOD), 'torque: bolts to 500 lbf·in; torque: bolts to 1000 lbf·in', SILENT],
      ['nowhere', bolts(GOOD), 'torque: bolts', SILENT],
      [
        'of bolts that are snug',
        bolts(`${DRY}, torque: snug`),
        'torque: bolts to 500 lbf·in',
        `
preload-out-of-range bolts: bolts: 500 lbf·in (56.5 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 35 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 23–48 % with the scatter of a torque wrench; the maker's figure outranks this estimate
  see engine.yaml:9: bolts is specified here`,
      ],
      [
        'of bolts whose thread is unknown',
        bolts(DRY).replace('thread: 1/2-13 UNC, ', ''),
        'torque: bolts to 500 lbf·in',
        SILENT,
      ],
      [
        'of bolts whose grade is unknown',
        bolts(DRY).replace('grade: proof 100 ksi, ', ''),
        'torque: bolts to 500 lbf·in',
        SILENT,
      ],
    ],
    SHOP,
  );
});

describe('a torque that the specification states', () => {
  tellsOf(
    'preload-out-of-range',
    [
      [
        'which rounds to the least',
        bolts(`${DRY}, torque: 704 lbf·in`),
        'torque: bolts',
        `
preload-out-of-range bolts: bolts: 704 lbf·in (79.5 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 49.6 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 32–67 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'which rounds to the most',
        bolts(`${DRY}, torque: 1283 lbf·in`),
        'torque: bolts',
        `
preload-out-of-range bolts: bolts: 1283 lbf·in (145.0 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 90.4 % of the proof load of proof 100 ksi given by F = T/(K·d), above 90 %, and 59–122 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'with a factor of three figures',
        bolts('threads: [slick], torque: 1000 lbf·in'),
        'torque: bolts',
        `
preload-out-of-range bolts: bolts: 1000 lbf·in (113.0 N·m) on 1/2-13 UNC with K = 0.125 (slick) is 113 % of the proof load of proof 100 ksi given by F = T/(K·d), above 90 %, and 85–141 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'with a factor of two',
        bolts('threads: [wax], torque: 1000 lbf·in'),
        'torque: bolts',
        `
preload-out-of-range bolts: bolts: 1000 lbf·in (113.0 N·m) on 1/2-13 UNC with K = 0.15 (wax) is 94 % of the proof load of proof 100 ksi given by F = T/(K·d), above 90 %, and 70–117 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'over a coat of which nothing is published',
        bolts('threads: [paint], torque: 300 lbf·in'),
        'torque: bolts',
        `
preload-out-of-range bolts: bolts: 300 lbf·in (33.9 N·m) on 1/2-13 UNC with K = 0.20 (paint) is 21 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 14–29 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'over one of two that nobody knows',
        bolts('threads: [slik, slick], torque: 1000 lbf·in'),
        'torque: bolts',
        `
preload-out-of-range bolts: bolts: 1000 lbf·in (113.0 N·m) on 1/2-13 UNC with K = 0.125 (slick) is 113 % of the proof load of proof 100 ksi given by F = T/(K·d), above 90 %, and 85–141 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      ['over a part', bolts('threads: [cap], torque: 300 lbf·in'), 'torque: bolts', SILENT],
      [
        'with limits',
        bolts(`${DRY}, torque: 400–600 lbf·in`),
        'torque: bolts',
        `
preload-out-of-range bolts: bolts: 400–600 lbf·in (45.20–67.79 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 35 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 23–48 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      [
        'with a tolerance',
        bolts(`${DRY}, torque: 500 ±200 lbf·in`),
        'torque: bolts',
        `
preload-out-of-range bolts: bolts: 500 ±200 lbf·in (33.90–79.08 N·m) on 1/2-13 UNC with K = 0.20 (dry) is 35 % of the proof load of proof 100 ksi given by F = T/(K·d), below 50 %, and 23–48 % with the scatter of a torque wrench; the maker's figure outranks this estimate`,
      ],
      ['with an end alone', bolts(`${DRY}, torque: max 500 lbf·in`), 'torque: bolts', SILENT],
      [
        'with its reason',
        bolts(`${DRY}, torque: {value: 500 lbf·in, because: the metal is soft}`),
        'torque: bolts',
        SILENT,
      ],
    ],
    SHOP,
  );
});
