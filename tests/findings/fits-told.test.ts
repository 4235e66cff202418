/** Limits of a fit that cannot come out of the sizes of its surfaces: clearance is hole less shaft, ISO 286-1:2010, 3.3; the values are invented. */
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

const BETWEEN = 'at: [front, rear], between: [bores, journals], when: {installed: []}';
const SIZES = ['size: 2.500–2.501 in', 'size: 2.490–2.491 in'] as const;

function engine(one: string, other: string, fit: string): string {
  return `parts:
  block: {given: true}
  shaft: {given: true, size: 2.4 in}
surfaces:
  bores: {on: block, at: [front, rear], assembly: clean, ${one}}
  journals: {on: shaft, at: [front, rear], assembly: clean, ${other}}
fits:
  gap: {${fit}}
`;
}

const gap = (one: string, other: string, limits: string) => engine(one, other, `${BETWEEN}, ${limits}`);
const lying = (fit: string) => engine(...SIZES, fit);

describe('limits between two sizes', () => {
  tellsOf(
    'fit-impossible',
    [
      [
        'sizes from which the limits come out',
        gap('size: 2.500–2.501 in', 'size: 2.497–2.498 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'sizes that leave too little',
        gap('size: 2.500–2.501 in', 'size: 2.4995–2.4998 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2.500–2.501 in (63.50–63.52 mm) and journals 2.4995–2.4998 in (63.488–63.494 mm), which give clearance 0.0002–0.0015 in (0.006–0.038 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'sizes that leave too much',
        gap('size: 2.500–2.501 in', 'size: 2.490–2.491 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2.500–2.501 in (63.50–63.52 mm) and journals 2.490–2.491 in (63.25–63.27 mm), which give clearance 0.0090–0.0110 in (0.229–0.279 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'sizes that touch the limits at one end',
        gap('size: 2.500–2.501 in', 'size: 2.499–2.4995 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'one place out of two',
        gap(
          'size: 2.500–2.501 in',
          'sizes: {front: 2.497–2.498 in, rear: 2.490–2.491 in}',
          'limits: 0.002–0.004 in',
        ),
        'measure: gap',
        `
fit-impossible gap: gap[rear]: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2.500–2.501 in (63.50–63.52 mm) and journals 2.490–2.491 in (63.25–63.27 mm), which give clearance 0.0090–0.0110 in (0.229–0.279 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'the shaft named before the hole',
        gap('size: 2.490–2.491 in', 'size: 2.500–2.501 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2.490–2.491 in (63.25–63.27 mm) and journals 2.500–2.501 in (63.50–63.52 mm), which give clearance 0.0090–0.0110 in (0.229–0.279 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'interference, as less than nought',
        gap('size: 2.500–2.501 in', 'size: 2.503–2.504 in', 'limits: -0.004–-0.002 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'interference that the sizes do not have',
        gap('size: 2.500–2.501 in', 'size: 2.5005–2.5015 in', 'limits: -0.009–-0.006 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits −0.009 to −0.006 in (−0.22 to −0.16 mm) cannot come out of bores 2.500–2.501 in (63.50–63.52 mm) and journals 2.5005–2.5015 in (63.513–63.538 mm), which give most interference 0.0005 in (0.013 mm) or most clearance 0.0015 in (0.038 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'a tolerance and a range',
        gap('size: 2.500 ±0.001 in', 'size: 2.490–2.491 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2.500 ±0.001 in (63.48–63.52 mm) and journals 2.490–2.491 in (63.25–63.27 mm), which give clearance 0.0080–0.0110 in (0.204–0.279 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'single sizes that are alike are nominal',
        gap('size: 2.500 in', 'size: 2.500 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'single sizes that differ are taken to their last place',
        gap('size: 2.500 in', 'size: 2.490 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2.500 in (63.50 mm) and journals 2.490 in (63.25 mm), which give clearance 0.0090–0.0110 in (0.229–0.279 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'a range about a single size of the same middle',
        gap('size: 2.499–2.501 in', 'size: 2.500 in', 'limits: 0.012–0.014 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.012–0.014 in (0.31–0.35 mm) cannot come out of bores 2.499–2.501 in (63.48–63.52 mm) and journals 2.500 in (63.50 mm), which give most interference 0.0015 in (0.038 mm) or most clearance 0.0015 in (0.038 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'a fraction is nominal',
        gap('size: 2-1/2 in', 'size: 2.490 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a largest size says nothing',
        gap('size: max 2.501 in', 'size: 2.490–2.491 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a largest size of the other surface says nothing',
        gap('size: 2.500–2.501 in', 'size: max 2.491 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a range of fractions is what it says',
        gap('size: 2-1/2–2-17/32 in', 'size: 2-7/16–2-29/64 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2-1/2 to 2-17/32 in (63.5–64.293 mm) and journals 2-7/16 to 2-29/64 in (61.913–62.309 mm), which give clearance 0.0469–0.0938 in (1.191–2.381 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      [
        'a least size says nothing',
        gap('size: min 2.499 in', 'size: 2.490–2.491 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a size of nought says nothing',
        gap('size: 0–0.0001 in', 'size: 0.0001–0.0002 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a diameter and a width',
        gap('size: 2.500–2.501 in', 'size: 2.1–2.2 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'more than a tenth apart by little',
        gap('size: 2.500–2.500 in', 'size: 2.2499–2.2499 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a tenth apart',
        gap('size: 2.500–2.500 in', 'size: 2.2501–2.2501 in', 'limits: 0.002–0.004 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2.500–2.500 in (63.5–63.5 mm) and journals 2.2501–2.2501 in (57.15254–57.15254 mm), which give clearance 0.2499–0.2499 in (6.34746–6.34746 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:9: the size of journals is here`,
      ],
      ['no limits', gap('size: 2.500–2.501 in', 'size: 2.490–2.491 in', ''), 'measure: gap', SILENT],
      [
        'limits that are unknown',
        gap('size: 2.500–2.501 in', 'size: 2.490–2.491 in', 'limits: unknown'),
        'measure: gap',
        SILENT,
      ],
      [
        'one surface alone',
        lying('at: [front, rear], between: [bores], when: {installed: []}, limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a surface and a part with its size',
        lying('between: [bores, shaft], when: {installed: []}, limits: 0.002–0.004 in'),
        'measure: gap',
        `
fit-impossible gap: gap: the limits 0.002–0.004 in (0.06–0.10 mm) cannot come out of bores 2.500–2.501 in (63.50–63.52 mm) and shaft 2.4 in (61 mm), which give clearance 0.0500–0.1510 in (1.270–3.835 mm) (hole less shaft)
  see engine.yaml:8: the size of bores is here
  see engine.yaml:6: the size of shaft is here`,
      ],
      [
        'a part without a size',
        lying('between: [bores, block], when: {installed: []}, limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'three surfaces',
        lying('between: [bores, journals, shaft], when: {installed: []}, limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a surface that nobody knows',
        lying('between: [bores, jornals], when: {installed: []}, limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
      [
        'a surface without a size',
        gap('size: 2.500–2.501 in', 'note: ground to suit', 'limits: 0.002–0.004 in'),
        'measure: gap',
        SILENT,
      ],
    ],
    SHOP,
  );
});
