/**
 * What a figure tells the person who asks, from the texts that go in to the lines that come out. The values were worked
 * by hand from the formula or read in the table that the last word of a row names.
 */
import {expect, test} from 'vitest';
import {askedAlone, type Texts, told} from './ask.js';

const BOLT = {thread: '7/16-20 UNF', condition: 'oiled'};
const METRIC = {thread: 'M10×1.5', condition: 'K 0.2'};
const ROD_SHELLS = {
  journal: ['front: 2.4992, 2.4991; 2.4990, 2.4990 in', 'rear: 2.4980, 2.4980 in'],
  bore: ['front: 2.5013, 2.5014 in', 'rear: 2.5020, 2.5010 in'],
};
const GAUGE = {limits: '2.4990–2.5000 in'};
const CYLINDER = {bore: '100 mm', stroke: '100 mm', chamber: '78.5 cc'};

const TOLD: readonly (readonly [subject: string, texts: Texts, lines: readonly string[], by: string])[] = [
  ['stress-area', {thread: 'M10×1.5'}, ['stress area: 58.0 mm² (0.08988 in²)'], 'ISO 898-1, 58.0 mm²'],
  [
    'bolt-grade',
    {thread: '7/16-20 UNF', grade: 'yield 40 ksi'},
    ['grade: yield 40 ksi given', 'proof strength: 34 ksi', 'yield strength: 40 ksi'],
    'Shigley 8-9, 0.85',
  ],
  [
    'bolt-grade',
    {thread: '1/2-13 UNC', grade: '2', length: '6.5 in'},
    [
      'grade: SAE J429 grade 2, as grade 1 for its length',
      'proof strength: 33 ksi',
      'yield strength: 36 ksi',
      'tensile strength: 60 ksi',
    ],
    'SAE J429 as in grade.test.ts',
  ],
  ['preload', {...METRIC, torque: '50 N·m'}, ['preload: 25.0 kN', 'stress: 431 MPa'], '50 / (0.2 · 10)'],
  [
    'preload',
    {...BOLT, torque: '55 lbf·ft', grade: 'SAE 5', prevailing: '5 lbf·ft', method: 'feel'},
    [
      'preload: 7619 lbf',
      'stress: 64.2 ksi',
      'of the proof load: 76 % (49 to 102 %)',
      'of the yield load: 70 % (45 to 94 %)',
    ],
    '600 / (0.18 · 0.4375); by feel ±35 %',
  ],
  ['torque', {...METRIC, preload: '25 kN'}, ['torque: 50.0 N·m'], '0.2 · 25 · 10'],
  ['torque', {...BOLT, preload: '1000 lbf'}, ['torque: 78.8 lbf·in'], '0.18 · 1000 · 0.4375'],
  [
    'engagement',
    {thread: '7/16-20 UNF', bolt: '40 ksi', hole: '120 ksi'},
    ['least engagement: 0.346 in', 'in diameters: 0.79', 'strips first: the thread of the bolt'],
    'Le without J; 0.347 in by the diameters of ASME B1.1 to three places',
  ],
  [
    'adapter',
    {torque: '100 N·m', wrench: '400 mm', adapter: '100 mm', angle: '90°'},
    ['setting: 100 N·m'],
    'square: no correction',
  ],
  [
    'wrench',
    {torque: '100 N·m', range: 'max 200 N·m', accuracy: '±4 %'},
    ['the fastener gets: 96.2–104.2 N·m'],
    '100 / 1.04, 100 / 0.96',
  ],
  ['passes', {torque: '100 N·m', count: '2'}, ['pass 1: 50 N·m', 'pass 2: 100 N·m'], 'half, then all'],
  ['tightening-order', {layout: 'circle 4'}, ['order: 1, 3, 2, 4', 'pattern: crosswise'], 'a cross'],
  ['tightening-order', {layout: 'row 3'}, ['order: 2, 1, 3', 'pattern: outwards'], 'from the middle'],
  ['tightening-order', {layout: ' grid 1 × 3 '}, ['order: 2, 1, 3', 'pattern: outwards'], 'from the middle'],
  [
    'tightening-order',
    {layout: 'a : 0, 0; b : 40.25 0; c: -40.25, 0'},
    ['order: a, b, c', 'pattern: outwards'],
    'from the middle',
  ],
  [
    'tightening-order',
    {layout: 'circle 12', pattern: 'crosswise'},
    ['order: 1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12', 'pattern: crosswise'],
    'PCC-1, from memory',
  ],
  [
    'safety-wire',
    {hole: '0.062 in', twist: 'single'},
    ['thinnest wire: 0.060 in', 'thickest wire: 0.060 in'],
    'TM 1-1500-204-23-6 p. 2-79',
  ],
  [
    'wire-run',
    {count: '7', spacing: '5 in', wire: '0.032 in'},
    ['in one run, at most: 3', 'runs: 3'],
    'TM 10-3930-659-34, 2-22',
  ],
  [
    'wire-run',
    {count: '6', spacing: '4 in', wire: '0.032 in'},
    ['in one run, at most: 3', 'runs: 2'],
    'TM 10-3930-659-34, 2-22',
  ],
  ['wire-length', {spans: '50.8 mm', wire: '0.8 mm', twist: 'single'}, ['cut: 83 mm'], '2 in + 2 · 0.625 in'],
  ['cotter-pin', {hole: '0.109 in'}, ['take: 3/32 in', 'largest that goes in: 3/32 in'], 'ASME B18.8.1'],
  [
    'bearing-clearance',
    {...ROD_SHELLS, limits: '0.0022–0.0030 in'},
    [
      'front, clearance: 0.0021–0.0024 in',
      'front, verdict: TOO TIGHT',
      'front, journal taper: 0.0002 in',
      'front, journal out-of-round: 0.0001 in',
      'front, bore out-of-round: 0.0001 in',
      'rear, clearance: 0.0030–0.0040 in',
      'rear, verdict: TOO LOOSE',
      'rear, journal out-of-round: 0.0000 in',
      'rear, bore out-of-round: 0.0010 in',
      'worst place: rear',
      'largest step between neighbours (0.001 in at most): 0.0013 in',
    ],
    'subtraction',
  ],
  [
    'bearing-clearance',
    {journal: '50.00 mm', bore: '54.06 mm', walls: '2.00, 2.01 mm', limits: '0.06–0.08 mm'},
    ['clearance: 0.050–0.050 mm', 'verdict: TOO TIGHT', 'eccentricity: 0.005 mm'],
    '54.06 − 4.01 − 50.00; (2.01 − 2.00) / 2',
  ],
  [
    'bearing-clearance',
    {journal: 'x: 50.00 mm', bore: 'x: 50.05, 50.09 mm', limits: '0.06–0.08 mm'},
    ['x, clearance: 0.050–0.090 mm', 'x, verdict: too tight and too loose', 'x, bore out-of-round: 0.040 mm'],
    'subtraction',
  ],
  [
    'bearing-clearance',
    {journal: '2.0000 in', bore: '2.0020 in', limits: '0.0020–0.0020 in'},
    ['clearance: 0.0020–0.0020 in', 'verdict: within limits'],
    'subtraction; both limits belong to them',
  ],
  [
    'gauging-strip',
    {limits: '0.001–0.003 in'},
    ['strip: green', 'reads: 0.001–0.003 in'],
    'TM 5-2420-222-34',
  ],
  [
    'undersize',
    {worn: '2.4915 in', standard: '2.4990–2.5000 in', 'clean-up': '0.002 in'},
    ['undersize: 0.020 in', 'journal as ground: 2.4790–2.4800 in'],
    '2.4915 − 0.002 < 2.490',
  ],
  [
    'which-undersize',
    {journal: '2.4905 in', standard: '2.4990–2.5000 in'},
    ['undersize: 0.010 in', 'journal of that grind: 2.4890–2.4900 in', 'OUTSIDE those limits by: 0.0005 in'],
    'subtraction',
  ],
  [
    'crush',
    {bore: '2.6545 in', gap: '0.0030 in'},
    ['crush of one half: 0.0015 in', 'interference on the diameter: 0.0010 in'],
    '2 · 0.0015 / π',
  ],
  [
    'limits',
    {size: '25 mm', class: 'f7'},
    ['limits: 24.959–24.980 mm', 'upper deviation: −20 µm', 'lower deviation: −41 µm'],
    'ISO 286-2, 25 f7',
  ],
  [
    'fit',
    {size: '25 mm', fit: 'H7 / k6'},
    [
      'hole: 25.000–25.021 mm',
      'shaft: 25.002–25.015 mm',
      'kind: transition fit',
      'most interference: 0.015 mm',
      'most clearance: 0.019 mm',
    ],
    'ISO 286-2',
  ],
  [
    'fit',
    {size: '25 mm', fit: 's6/H7'},
    [
      'hole: 25.000–25.021 mm',
      'shaft: 25.035–25.048 mm',
      'kind: interference fit',
      'interference: 0.014–0.048 mm',
    ],
    'ISO 286-2',
  ],
  [
    'stack',
    {link: ['+ case: 1.750 ±0.003 in', '− 2 × shim: 0.125 in']},
    ['mean: 1.5000 in', 'worst case: 1.4970–1.5030 in', 'root sum square: 1.4970–1.5030 in'],
    '1.75 − 2 · 0.125',
  ],
  [
    'heat-to-fit',
    {
      diameter: '50 mm',
      interference: '0.05 mm',
      clearance: '0.05 mm',
      material: 'aluminium-6061',
      room: '20 °C',
    },
    ['bring it to: 105 °C', 'change of its diameter: 0.1000 mm'],
    '0.1 / (23.6e-6 · 50) = 84.7 K',
  ],
  [
    'cool-to-fit',
    {
      diameter: '50 mm',
      interference: '0.05 mm',
      clearance: '0.01 mm',
      material: 'aluminium-6061',
      room: '20 °C',
    },
    ['bring it to: −31 °C', 'change of its diameter: 0.0600 mm'],
    '0.06 / (23.6e-6 · 50) = 50.8 K',
  ],
  [
    'core-plug',
    {kind: 'domed', plug: '1.494–1.496 in', bore: '1.500–1.502 in'},
    ['clearance: 0.0040–0.0080 in'],
    'subtraction',
  ],
  [
    'lash-screw',
    {measured: '0.010 in', wanted: '0.015 in', pitch: '1/24 in'},
    ['turn out (opens the lash): 43°'],
    '360 · 0.005 · 24',
  ],
  [
    'end-play',
    {between: '1.6250–1.6270 in', over: '1.6240–1.6260 in'},
    ['end play: −0.0010 to 0.0030 in'],
    'subtraction',
  ],
  [
    'compression',
    CYLINDER,
    ['ratio: 11.01:1', 'swept volume: 785.4 cc', 'volume at top dead centre: 78.5 cc'],
    '(250 · π + 78.5) / 78.5',
  ],
  [
    'compression',
    {...CYLINDER, gasket: '1 mm'},
    ['ratio: 10.10:1', 'swept volume: 785.4 cc', 'volume at top dead centre: 86.4 cc'],
    'a gasket as wide as the bore: 7.854 cc',
  ],
  [
    'deck-height',
    {block: '9.000 in', stroke: '3.480 in', rod: '5.700 in', piston: '1.570 in'},
    ['deck clearance (negative: piston stands proud): −0.0100 in'],
    'subtraction',
  ],
  [
    'gauge',
    {...GAUGE, resolution: '0.0001 in'},
    ['verdict: good: 10:1 or better', 'by resolution: 10:1'],
    '0.001 / 0.0001',
  ],
  [
    'gauge',
    {...GAUGE, accuracy: '0.0002 in'},
    ['verdict: TOO COARSE: under 4:1', 'by accuracy: 2.5:1'],
    '0.001 / 0.0004',
  ],
  [
    'guard-band',
    {...GAUGE, uncertainty: '0.0001 in', reading: '2.49905 in'},
    [
      'accept: 2.4991–2.4999 in',
      'reject below: 2.4989 in',
      'reject above: 2.5001 in',
      'the reading: not proved',
    ],
    'ISO 14253-1',
  ],
  [
    'guard-band',
    {...GAUGE, uncertainty: '0.0001 in', reading: '2.5002 in'},
    [
      'accept: 2.4991–2.4999 in',
      'reject below: 2.4989 in',
      'reject above: 2.5001 in',
      'the reading: does not conform',
    ],
    'ISO 14253-1',
  ],
  [
    'time-plan',
    {task: ['seal: 20 min, wait 24 h', 'head: 3 h', 'fill: 10 min, after seal and head']},
    [
      'hands-on time: 3.5 h',
      'waits: 24.0 h',
      'earliest finish: 24.5 h',
      'which hangs on: seal, fill',
      'with one pair of hands: 24.5 h',
      'in the order: seal, head, fill',
      'while seal waits: head',
    ],
    'addition',
  ],
  [
    'time-plan',
    {task: ['clean: 30 min', 'fit: 45 min, after clean']},
    [
      'hands-on time: 75 min',
      'waits: 0 min',
      'earliest finish: 75 min',
      'which hangs on: clean, fit',
      'with one pair of hands: 75 min',
      'in the order: clean, fit',
    ],
    'addition',
  ],
];

test.each(TOLD)('%s %j', (subject, texts, lines) => {
  expect(told(askedAlone(subject, texts))).toEqual(lines);
});
