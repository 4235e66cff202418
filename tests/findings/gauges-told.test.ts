/** Gauges and strips against the limits that they must judge. 4:1 is the least, ANSI/NCSL Z540.3, 5.3 b (from memory); the values are invented. */
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

const play = (rest: string) => `parts:
  block: {given: true}
fits:
  play: {between: [block], when: {installed: []}, ${rest}}
`;
const drag = (rest: string) => `parts:
  block: {given: true}
checks:
  drag: {${rest}}
`;

describe('a gauge', () => {
  tellsOf(
    'gauge-too-coarse',
    [
      ['a gauge just fine enough', play('limits: 0.004–0.008 in, using: [coarse]'), 'measure: play', SILENT],
      [
        '3.98 is less than 4, and is not told as 4',
        play('limits: 0.00402–0.008 in, using: [coarse]'),
        'measure: play',
        `
gauge-too-coarse play: play: coarse is 3.9:1 to the limits 0.00402–0.008 in (0.1022–0.2032 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:7: coarse is specified here`,
      ],
      [
        'the resolution is the worse of the two',
        play('limits: 0.004–0.007 in, using: [both]'),
        'measure: play',
        `
gauge-too-coarse play: play: both is 3:1 to the limits 0.004–0.007 in (0.11–0.17 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:8: both is specified here`,
      ],
      [
        'the accuracy is the worse of the two',
        play('limits: 0.004–0.007 in, using: [unsure]'),
        'measure: play',
        `
gauge-too-coarse play: play: unsure is 3.7:1 to the limits 0.004–0.007 in (0.11–0.17 mm) (tolerance / (2 × accuracy), accuracy ±0.0004 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:10: unsure is specified here`,
      ],
      [
        'resolution and accuracy are alike',
        play('limits: 0.004–0.007 in, using: [even]'),
        'measure: play',
        `
gauge-too-coarse play: play: even is 3:1 to the limits 0.004–0.007 in (0.11–0.17 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:9: even is specified here`,
      ],
      [
        'a resolution of nought says nothing',
        play('limits: 0.004–0.007 in, using: [nought]'),
        'measure: play',
        `
gauge-too-coarse play: play: nought is 3.7:1 to the limits 0.004–0.007 in (0.11–0.17 mm) (tolerance / (2 × accuracy), accuracy ±0.0004 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:11: nought is specified here`,
      ],
      [
        'of two gauges each is judged',
        play('limits: 0.004–0.006 in, using: [coarse, unsure]'),
        'measure: play',
        `
gauge-too-coarse play: play: coarse is 2:1 to the limits 0.004–0.006 in (0.11–0.15 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:7: coarse is specified here
gauge-too-coarse play: play: unsure is 2.5:1 to the limits 0.004–0.006 in (0.11–0.15 mm) (tolerance / (2 × accuracy), accuracy ±0.0004 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:10: unsure is specified here`,
      ],
      [
        'limits with their reason, as the maker states them',
        play('limits: {value: 0.004–0.006 in, because: the maker names the gauge}, using: [coarse]'),
        'measure: play',
        SILENT,
      ],
      ['limits that are unknown', play('limits: unknown, using: [coarse]'), 'measure: play', SILENT],
      [
        'no limits at all, and a gauge in the step',
        play('using: [coarse]'),
        'measure: play using coarse',
        SILENT,
      ],
      [
        'limits that the step alone states',
        play('using: [coarse]'),
        'measure: play using coarse within 0.004–0.006 in',
        `
gauge-too-coarse play: play: coarse is 2:1 to the limits 0.004–0.006 in (0.11–0.15 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:7: coarse is specified here`,
      ],
      [
        'the step names the gauge that is specified, with the same limits: told once',
        play('limits: 0.004–0.006 in, using: [coarse]'),
        'measure: play using coarse within 0.004–0.006 in',
        `
gauge-too-coarse play: play: coarse is 2:1 to the limits 0.004–0.006 in (0.11–0.15 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:7: coarse is specified here`,
      ],
      [
        'the step names another gauge',
        play('limits: 0.004–0.007 in, using: [coarse]'),
        'measure: play using unsure',
        `
gauge-too-coarse play: play: coarse is 3:1 to the limits 0.004–0.007 in (0.11–0.17 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:7: coarse is specified here
gauge-too-coarse play: play: unsure is 3.7:1 to the limits 0.004–0.007 in (0.11–0.17 mm) (tolerance / (2 × accuracy), accuracy ±0.0004 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:10: unsure is specified here`,
      ],
      [
        'the step states narrower limits',
        play('limits: 0.004–0.008 in, using: [coarse]'),
        'measure: play using coarse within 0.005–0.007 in',
        `
gauge-too-coarse play: play: coarse is 2:1 to the limits 0.005–0.007 in (0.13–0.17 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:7: coarse is specified here`,
      ],
      [
        'a gauge of another kind says nothing',
        play('limits: 0.004–0.006 in, using: [scale]'),
        'measure: play',
        SILENT,
      ],
      [
        'a gauge that nobody knows',
        play('limits: 0.004–0.006 in, using: [corse]'),
        'measure: play using caliper',
        SILENT,
      ],
      ['a tool that is no gauge', play('limits: 0.004–0.006 in, using: [hammer]'), 'measure: play', SILENT],
      [
        'what is only to be small lies between nought and its limit',
        play('limits: max 0.003 in, using: [coarse]'),
        'measure: play',
        `
gauge-too-coarse play: play: coarse is 3:1 to the limits max 0.003 in (max 0.07 mm) (tolerance / resolution, resolution 0.001 in), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: play is specified here
  see shop.yaml:7: coarse is specified here`,
      ],
      ['a least value has no width', play('limits: min 0.003 in, using: [coarse]'), 'measure: play', SILENT],
      [
        'a check is judged like a fit',
        drag('limits: 2–4 lbf, using: [scale]'),
        'check: drag',
        `
gauge-too-coarse drag: drag: scale is 0.4:1 to the limits 2–4 lbf (9–17 N) (tolerance / resolution, resolution 5 lbf), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: drag is specified here
  see shop.yaml:12: scale is specified here`,
      ],
      [
        'a check whose step names the gauge',
        drag('limits: 2–4 lbf'),
        'check: drag using scale',
        `
gauge-too-coarse drag: drag: scale is 0.4:1 to the limits 2–4 lbf (9–17 N) (tolerance / resolution, resolution 5 lbf), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: drag is specified here
  see shop.yaml:12: scale is specified here`,
      ],
      ['a check that says what is expected', drag('expect: turns freely'), 'check: drag using scale', SILENT],
      [
        'a highest temperature does not begin at nought',
        drag('limits: max 90 °C, using: [thermometer]'),
        'check: drag',
        SILENT,
      ],
      [
        'a range of temperatures',
        drag('limits: 70–90 °C, using: [thermometer]'),
        'check: drag',
        `
gauge-too-coarse drag: drag: thermometer is 0.6:1 to the limits 158–194 °F (70–90 °C) (tolerance / resolution, resolution 30 °C), and 4:1 is the least unless the maker names the gauge
  see engine.yaml:7: drag is specified here
  see shop.yaml:13: thermometer is specified here`,
      ],
    ],
    SHOP,
  );
});

describe('a gauging strip', () => {
  tellsOf(
    'gauge-too-coarse',
    [
      [
        'a strip that covers the limits',
        play('limits: 0.001–0.003 in, by: strip, using: [strip]'),
        'measure: play',
        SILENT,
      ],
      [
        'a strip that ends below the upper limit',
        play('limits: 0.001–0.0031 in, by: strip, using: [strip]'),
        'measure: play',
        `
gauge-too-coarse play: play: strip reads 0.001–0.003 in (0.03–0.07 mm) and cannot show the limits 0.001–0.0031 in (0.026–0.078 mm)
  see engine.yaml:7: play is specified here
  see shop.yaml:16: strip is specified here`,
      ],
      [
        'a strip that begins above the lower limit',
        play('limits: 0.0009–0.003 in, by: strip, using: [strip]'),
        'measure: play',
        `
gauge-too-coarse play: play: strip reads 0.001–0.003 in (0.03–0.07 mm) and cannot show the limits 0.0009–0.003 in (0.023–0.076 mm)
  see engine.yaml:7: play is specified here
  see shop.yaml:16: strip is specified here`,
      ],
      [
        'limits in millimetres, a hundredth off by their conversion',
        play('limits: 0.0255–0.0765 mm, by: strip, using: [strip]'),
        'measure: play',
        SILENT,
      ],
      [
        'a limit that is only a largest value',
        play('limits: max 0.003 in, by: strip, using: [strip]'),
        'measure: play',
        SILENT,
      ],
      [
        'a largest value beyond the strip',
        play('limits: max 0.004 in, by: strip, using: [strip]'),
        'measure: play',
        `
gauge-too-coarse play: play: strip reads 0.001–0.003 in (0.03–0.07 mm) and cannot show the limits max 0.004 in (max 0.10 mm)
  see engine.yaml:7: play is specified here
  see shop.yaml:16: strip is specified here`,
      ],
      [
        'a least value below the strip',
        play('limits: min 0.0005 in, by: strip, using: [strip]'),
        'measure: play',
        `
gauge-too-coarse play: play: strip reads 0.001–0.003 in (0.03–0.07 mm) and cannot show the limits min 0.0005 in (min 0.013 mm)
  see engine.yaml:7: play is specified here
  see shop.yaml:16: strip is specified here`,
      ],
      [
        'a strip of which nothing is known',
        play('limits: 0.001–0.004 in, by: strip, using: [blank-strip]'),
        'measure: play',
        SILENT,
      ],
      ['a strip says nothing of a pull', drag('limits: 2–4 lbf, using: [strip]'), 'check: drag', SILENT],
      [
        'a material that is no strip',
        play('limits: 0.001–0.004 in, by: strip, using: [oil]'),
        'measure: play',
        SILENT,
      ],
      [
        'another strip in the step',
        play('limits: 0.002–0.004 in, by: strip, using: [blank-strip]'),
        'lay: play with strip',
        `
gauge-too-coarse play: play: strip reads 0.001–0.003 in (0.03–0.07 mm) and cannot show the limits 0.002–0.004 in (0.06–0.10 mm)
  see engine.yaml:7: play is specified here
  see shop.yaml:16: strip is specified here`,
      ],
    ],
    SHOP,
  );
});
