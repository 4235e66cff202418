/**
 * Sealant that is left to cure for less than its time: all that is told of it. The times are invented.
 * Common practice, no source.
 */
import {describe} from 'vitest';
import {SILENT, tells} from '../help/stories.js';

const CURE = `
parts:
  block: {given: true}
joints:
  seat: {at: [front, rear], between: [block], seal: [paper, slow]}
  rim: {between: [block], seal: [quick, slow]}
`;

const CURE_SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
consumables:
  slow: {use: sealant, cure: 24–48 h}
  quick: {use: sealant, cure: 20 min}
  paper: {use: gasket}
`;

const BARE = `
parts:
  block: {given: true}
joints:
  seat: {at: [front, rear], between: [block], seal: [paper, slow]}
  lip: {between: [block]}
`;

describe('a bead that must cure', () => {
  tells(
    CURE,
    [
      [
        'has its time',
        'clean: seat, rim; seal: seat with slow; seal: rim with quick; cure: seat for 24 h; cure: rim for 20 min',
        SILENT,
      ],
      [
        'has less, at both ends',
        'clean: seat, rim; seal: seat with slow; seal: rim with quick; cure: seat for 23 h; cure: rim for 19 min',
        `
cure-short seat: seat is left to cure for 23 h, and slow needs 24–48 h
  see shop.yaml:7: slow is specified here
  fix: Leave it 24–48 h: "24–48 h" for "23 h"
cure-short rim: rim is left to cure for 19 min, and quick needs 20 min
  see shop.yaml:8: quick is specified here
  fix: Leave it 20 min: "20 min" for "19 min"`,
      ],
      [
        'has less at one end',
        'clean: seat, rim; seal: seat[front] with slow; seal: seat[rear] with paper; seal: rim with quick; cure: seat[front] for 12–23 h; cure: rim for 1 h',
        `
cure-short seat[front]: seat[front] is left to cure for 12–23 h, and slow needs 24–48 h
  see shop.yaml:7: slow is specified here
  fix: Leave it 24–48 h: "24–48 h" for "12–23 h"`,
      ],
      [
        'has less, and the other end has paper',
        'clean: seat, rim; seal: seat[front] with paper; seal: seat[rear] with slow; seal: rim with quick; cure: seat for 12 h; cure: rim for 1 h',
        `
cure-short seat[rear]: seat[rear] is left to cure for 12 h, and slow needs 24–48 h
  see shop.yaml:7: slow is specified here
  fix: Leave it 24–48 h: "24–48 h" for "12 h"
source-missing seat[front]: the cure of seat[front] stands only in this step, without a source; specify it for the sealant in shop.yaml
  see engine.yaml:8: seat is specified here`,
      ],
      [
        'has less, under a tag that does not say which of those specified it is',
        'clean: seat, rim; seal: seat; seal: rim; cure: seat for 12 h; cure: rim for 10 min',
        `
cure-short seat: seat is left to cure for 12 h, and slow needs 24–48 h
  see shop.yaml:7: slow is specified here
  fix: Leave it 24–48 h: "24–48 h" for "12 h"
cure-short rim: rim is left to cure for 10 min, and quick needs 20 min
  see shop.yaml:8: quick is specified here
  fix: Leave it 20 min: "20 min" for "10 min"`,
      ],
      [
        'has less, by its material: the other bead is not meant',
        'clean: seat, rim; seal: seat with slow; seal: rim with quick; cure: slow for 12 h; cure: quick for 20 min',
        `
cure-short seat: seat is left to cure for 12 h, and slow needs 24–48 h
  see shop.yaml:7: slow is specified here
  fix: Leave it 24–48 h: "24–48 h" for "12 h"`,
      ],
      [
        'is of two materials, with too little for either: one is told at a time',
        'clean: seat, rim; seal: seat[front] with slow; seal: seat[rear] with quick; seal: rim with quick; cure: seat for 10 min; cure: rim for 1 h',
        `
value-disagrees seat[rear]: seat[rear] is sealed with quick, and paper or slow is specified
  see engine.yaml:8: seat is specified here
cure-short seat[front]: seat[front] is left to cure for 10 min, and slow needs 24–48 h
  see shop.yaml:7: slow is specified here
  fix: Leave it 24–48 h: "24–48 h" for "10 min"`,
      ],
      [
        'has no time stated',
        'clean: seat, rim; seal: seat with slow; seal: rim with quick; cure: seat, rim',
        SILENT,
      ],
      [
        'was never run',
        'clean: seat, rim; cure: seat for 1 h; seal: seat with slow; seal: rim with quick; cure: seat for 24 h; cure: rim for 20 min',
        SILENT,
      ],
    ],
    CURE_SHOP,
  );
});

describe('a bead of which the specification says nothing', () => {
  tells(
    BARE,
    [
      [
        'is made up with one that nobody knows, or with none that is named',
        'clean: seat, lip; seal: seat with slw; seal: lip; cure: seat for 1 min; cure: lip for 1 min',
        `
spec-silent lip: lip does not say its seal; write seal: [a consumable], unknown, or none with a reason
unknown-item slw: slw is not in the specification; did you mean slow?
  fix: Write slow: "slow" for "slw"`,
      ],
    ],
    CURE_SHOP,
  );
});
