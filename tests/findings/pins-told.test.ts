/** Cotter pins by thread and hole: ASME B18.8.1 (holes), AN310 with AN380 (least pins, from memory), ISO 1234 (pins in mm, from memory). */
import {describe} from 'vitest';
import {SILENT, tellsOf} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
tools:
  coarse: {gauge: true, resolution: 0.001 in}
  both: {gauge: true, resolution: 0.001 in, accuracy: ±0.0001 in}
  even: {gauge: true, resolution: 0.001 in, accuracy: ±0.0005 in}
  unsure: {gauge: true, resolution: 0.0001 in, accuracy: ±0.0004 in}
  nought: {gauge: true, resolution: 0 in, accuracy: ±0.0004 in}
  scale: {gauge: true, resolution: 5 lbf}
  thermometer: {gauge: true, resolution: 30 °C}
  hammer: steel hammer
consumables:
  strip: {use: strip, range: 0.001–0.003 in}
  blank-strip: {use: strip}
  oil: {use: lubricant}
  pin: {use: lock, lock: cotter-pin, size: 1/8 in}
  thin-pin: {use: lock, lock: cotter-pin, size: 1/16 in}
  pin-mm: {use: lock, lock: cotter-pin, size: 3.2 mm}
  plain-pin: {use: lock, lock: cotter-pin}
`;

const nuts = (rest: string) => `parts:
  block: {given: true}
  caps: {}
fasteners:
  nuts: {holds: [caps], torque: 40 lbf·ft, threads: dry, ${rest}}
`;

describe('a cotter pin', () => {
  tellsOf(
    'cotter-size',
    [
      [
        'by thread alone',
        nuts('thread: 3/8-24 UNF, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with thin-pin',
        `
cotter-size nuts: nuts: thin-pin of 1/16 in (1.5875 mm) is too thin for 3/8-24 UNF, which takes 3/32 in (2.3812 mm) to 7/64 in (2.7781 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:8: nuts is specified here`,
      ],
      [
        'by thread and hole',
        nuts('thread: 3/8-24 UNF, hole: 0.109 in, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with thin-pin',
        `
cotter-size nuts: nuts: thin-pin of 1/16 in (1.5875 mm) is too thin for a hole of 0.109 in (2.77 mm) on 3/8-24 UNF, which takes 3/32 in (2.3812 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:8: nuts is specified here`,
      ],
      [
        'by hole alone',
        nuts('hole: 0.109 in, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with pin',
        `
cotter-size nuts: nuts: pin of 1/8 in (3.175 mm) is too thick for a hole of 0.109 in (2.77 mm), which takes 3/32 in (2.3812 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:8: nuts is specified here`,
      ],
      [
        'by a thread that is in no table',
        nuts('thread: M10, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with pin',
        SILENT,
      ],
      ['by nothing', nuts('lock: cotter-pin'), 'install: caps; torque: nuts; lock: nuts with pin', SILENT],
      [
        'by a hole through which none goes',
        nuts('hole: 0.030 in, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with pin',
        `
cotter-size nuts: nuts: no cotter pin goes in a hole of 0.030 in (pin by hole and thread, ASME B18.8.1); the smallest takes 0.047 in`,
      ],
      [
        'a hole between two limits',
        nuts('thread: 1/2-20 UNF, hole: 0.120–0.130 in, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with pin',
        `
cotter-size nuts: nuts: pin of 1/8 in (3.175 mm) is too thick for a hole of 0.125 in (3.18 mm) on 1/2-20 UNF, which takes 3/32 in (2.3812 mm) to 7/64 in (2.7781 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:8: nuts is specified here`,
      ],
      [
        'of millimetres, without a hole',
        nuts('thread: M10, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with pin-mm',
        SILENT,
      ],
      [
        'of millimetres, that goes in',
        nuts('thread: M10, hole: 3.2 mm, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with pin-mm',
        SILENT,
      ],
      [
        'of millimetres, in the specification',
        nuts('thread: M10, hole: 3.0 mm, lock: pin-mm'),
        'install: caps; torque: nuts; lock: nuts with pin-mm',
        `
cotter-size nuts: nuts: pin-mm of 0.126 in (3.2 mm) is too thick for a hole of 0.118 in (3.0 mm) (pins in mm are named after their hole, ISO 1234)
  see engine.yaml:8: nuts is specified here`,
      ],
      [
        'of which the size is not stated',
        nuts('thread: 3/8-24 UNF, lock: plain-pin'),
        'install: caps; torque: nuts; lock: nuts with plain-pin',
        SILENT,
      ],
      [
        'of a size in words',
        nuts('thread: 3/8-24 UNF, lock: cotter-pin'),
        'install: caps; torque: nuts; lock: nuts with cotter-pin 1/8 in',
        `
cotter-size nuts: nuts: cotter-pin of 1/8 in (3.175 mm) is too thick for 3/8-24 UNF, which takes 3/32 in (2.3812 mm) to 7/64 in (2.7781 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:8: nuts is specified here`,
      ],
      [
        'of fasteners that are locked in another way',
        nuts('thread: 3/8-24 UNF, hole: 0.030 in, lock: tab-washer'),
        'install: caps; torque: nuts; lock: nuts with tab-washer',
        SILENT,
      ],
    ],
    SHOP,
  );
});
