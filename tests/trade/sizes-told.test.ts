/**
 * Figures of sizes, fits and gauges, line for line, and what they say where they refuse. Worked by hand from the formula
 * beside the row, or by the table that it names.
 */
import {describe, expect, test} from 'vitest';
import {quantity} from '../../src/quantity/convert.js';
import {deckHeight} from '../../src/trade/deck-height.js';
import {fitNamed, fitOfLimits} from '../../src/trade/fit.js';
import {stripFor, stripTaper} from '../../src/trade/gauging-strip.js';
import {middleFor} from '../../src/trade/stack.js';
import {amount, q} from '../help/amount.js';
import {asked, askedAlone, inputsOf, refused, type Texts, told, working} from './ask.js';
import {out, result} from './unwrap.js';

const DECK = {block: '9.000 in', stroke: '3.480 in', rod: '5.700 in'};

const TOLD: readonly (readonly [subject: string, texts: Texts, lines: readonly string[], by: string])[] = [
  [
    'stack',
    {link: ['+ case: 2 in', '- shim: 0.99995 in']},
    ['mean: 1.00005 in', 'worst case: 1.00005–1.00005 in', 'root sum square: 1.00005–1.00005 in'],
    'as fine as the finest link',
  ],
  [
    'stack',
    {link: ['+ case: 1.5 ±0.00005 in']},
    ['mean: 1.50000 in', 'worst case: 1.49995–1.50005 in', 'root sum square: 1.49995–1.50005 in'],
    'a tolerance may be finer than its nominal',
  ],
  [
    'stack',
    {link: ['+ case: 10 ±0.0005 mm', '- 2 × shim: 1 mm', '- clip: 1/2 mm']},
    ['mean: 7.5000 mm', 'worst case: 7.4995–7.5005 mm', 'root sum square: 7.4995–7.5005 mm'],
    '10 − 2 · 1 − 0.5',
  ],
  [
    'stack',
    {link: ['+ case: 1/2 to 0.50005 in']},
    ['mean: 0.50003 in', 'worst case: 0.50000–0.50005 in', 'root sum square: 0.50000–0.50005 in'],
    'a fraction is exact, and the other limit says how fine it is',
  ],
  [
    'stack-middle',
    {
      link: ['+ case: 1.750 ±0.003 in', '- shaft: 0.750 ±0.001 in', '- shim: 0.995 ±0.002 in'],
      of: ' shim ',
      least: '0.003 in',
    },
    ['middle of shim: 0.9910 in'],
    '−0.001 at worst, so 0.004 less',
  ],
  [
    'fit',
    {size: '25 mm', fit: 'H7/g6'},
    ['hole: 25.000–25.021 mm', 'shaft: 24.980–24.993 mm', 'kind: clearance fit', 'clearance: 0.007–0.041 mm'],
    'ISO 286-2',
  ],
  ['deck-height', {...DECK, piston: '1.535 in'}, ['deck clearance: 0.0250 in'], 'subtraction'],
  [
    'deck-height',
    {...DECK, piston: '1.560 in', gasket: '0.040 in'},
    ['deck clearance: 0.0000 in', 'squish: 0.0400 in'],
    'flush',
  ],
  [
    'deck-height',
    {...DECK, block: '8.000 in', piston: '0.560 in'},
    ['deck clearance: 0.0000 in'],
    'flush, though the sum of the doubles is below nought',
  ],
  [
    'wear-limit',
    {rule: 'bearing-clearance', size: '2.500 in', 'new-limit': '0.0030 in'},
    ['allowance: 0.0013 in', 'wear limit: 0.0043 in'],
    '0.0005 · 2.5, TM 10-3930-647-14&P',
  ],
  ['wear-limit', {rule: 'piston', size: '4 in'}, ['allowance: 0.0020 in'], '0.0005 · 4, the same'],
  [
    'lash-screw',
    {measured: '0.017 in', wanted: '0.012 in', pitch: '1/24 in', ratio: '1.5'},
    ['turn in (closes the lash): 29°'],
    '360 · 0.005 · 24 / 1.5',
  ],
  [
    'lash-screw',
    {measured: '0.012 in', wanted: '0.012 in', pitch: '1/24 in'},
    ['turn in (closes the lash): 0°'],
    'none',
  ],
  [
    'which-undersize',
    {journal: '49.74 mm', standard: '49.98–50.00 mm'},
    ['undersize: 0.25 mm', 'journal of that grind: 49.730–49.750 mm'],
    'metric grinds for a metric journal',
  ],
];

test.each(TOLD)('%s %j', (subject, texts, lines) => expect(told(askedAlone(subject, texts))).toEqual(lines));

/** What was given, in the order of the formula. */
const INPUTS: readonly (readonly [subject: string, texts: Texts, inputs: readonly string[]])[] = [
  [
    'deck-height',
    {},
    [
      'block, crankshaft to deck: 9.025 in',
      'stroke: 3.480 in',
      'rod between centres: 5.700 in',
      'piston, pin to crown: 1.560 in',
      'gasket: 0.040 in',
    ],
  ],
  [
    'guard-band',
    {limits: '1.00–1.01 in', uncertainty: '0.001 in', reading: '1.005 in'},
    ['limits: 1.00–1.01 in', 'expanded uncertainty (k = 2), U: 0.001 in', 'reading: 1.005 in'],
  ],
  [
    'stack-middle',
    {link: ['+ case: 1.750 ±0.003 in', '- shaft: 0.750 ±0.001 in'], of: 'shaft', least: '0.003 in'},
    ['+ case: 1.750 ±0.003 in', '− shaft: 0.750 ±0.001 in', 'least wanted: 0.003 in'],
  ],
  [
    'fit-of-parts',
    {hole: '1.500–1.502 in', shaft: '1.495–1.497 in'},
    ['hole: 1.500–1.502 in', 'shaft: 1.495–1.497 in'],
  ],
  [
    'heat-to-fit',
    {material: '12e-6/K'},
    [
      'diameter, D: 2.000 in',
      'interference: 0.0027 in',
      'clearance to assemble: 0.001 in',
      'α: as stated, 12.0 µm/m·K (6.7 µin/in·°F)',
      'room: 68 °F',
    ],
  ],
];

test.each(INPUTS)('%s %j was given', (subject, texts, inputs) =>
  expect(inputsOf(asked(subject, texts))).toEqual(inputs),
);

/** A guard band is as fine as the finer of limits and uncertainty; a fraction is told to four places, or it would be lost. */
test.each([
  ['1.0000–1.0100 in', '0.001 in', '1.0010–1.0090 in'],
  ['1.00–1.01 in', '0.001 in', '1.001–1.009 in'],
  ['25.00–25.02 mm', '2 µm', '25.002–25.018 mm'],
  ['20–40 mm', '2 mm', '22–38 mm'],
  ['1/2 to 5/8 in', '0.001 in', '0.5010–0.6240 in'],
  ['1.000–1.500 in', '1/64 in', '1.0156–1.4844 in'],
  ['20–40 mm', '1/64 in', '20.3969–39.6031 mm'],
  ['1/2 to 5/8 in', '1/64 in', '0.5156–0.6094 in'],
])('%s by a gauge of ±%s accepts %s', (limits, uncertainty, accept) => {
  expect(told(askedAlone('guard-band', {limits, uncertainty}))[0]).toBe(`accept: ${accept}`);
});

function noClass(text: string): string {
  return `ANSI B4.1 has no class "${text}"; the table has RC1, RC2, RC3, RC4, RC5, RC6, RC7, LT1, LT2, LT3, LT4, LT5, LT6, LN1, LN2, LN3, FN1, FN2, FN3, FN4, FN5`;
}

const BAD_FITS: readonly (readonly [fit: string, says: string])[] = [
  ['JS7 h6', '--fit: "JS7 h6" has no stroke between its classes; write JS7/h6'],
  ['H7, js6', '--fit: "H7, js6" has no stroke between its classes; write H7/js6'],
  ['H99/g6', 'ISO 286 has no grade 99; its grades are 01, 0 and 1 to 18'],
  ['H7/g99', 'ISO 286 has no grade 99; its grades are 01, 0 and 1 to 18'],
  ['H7', noClass('H7')],
  ['about H7 g6', noClass('about H7 g6')],
  ['H7 g6 or so', noClass('H7 g6 or so')],
];

test.each(BAD_FITS)('a fit of "%s" is refused', (fit, says) =>
  expect(refused(asked('fit', {size: '25 mm', fit}))).toBe(says),
);

test('limits that meet are an interference from nought, which has no sign', () => {
  const fit = result(fitOfLimits(amount('1.500–1.501 in'), amount('1.501–1.502 in')));
  expect([fit.hole, fit.shaft]).toEqual([amount('1.500–1.501 in'), amount('1.501–1.502 in')]);
  const none = quantity(0, 'in', 0.0001);
  const value = {form: 'range', low: none, high: {...none, value: 0.002}};
  expect(fitNamed(fit)).toEqual([{name: 'interference', value}]);
});

describe('stacks', () => {
  const LINKS = [
    {name: 'case', size: amount('1.750 ±0.003 in'), times: 1},
    {name: 'shaft', size: amount('0.750 ±0.001 in'), times: -1},
    {name: 'cone', size: amount('0.100 in'), times: 0},
  ];

  test('each link is told with its sign', () => {
    const links = ['+ case: 1.750 ±0.003 in', '- shaft: 0.750 ±0.001 in', '- 2 × shim: 0.125 in'];
    expect(working(asked('stack', {link: links})).slice(1, 4)).toEqual([
      '+ case: 1.750 ±0.003 in',
      '− shaft: 0.750 ±0.001 in',
      '-2 × shim: 0.125 in',
    ]);
  });

  test.each([
    [
      'nothing at all',
      () => middleFor([], 'case', q('0.01 in')),
      'the stack has no link; give one size at least',
    ],
    [
      'a link with one limit',
      () => middleFor([{name: 'case', size: amount('max 2 in'), times: 1}], 'case', q('0.01 in')),
      'case has only one limit; give both, such as 1.750 ±0.003 in',
    ],
    [
      'a link that does not count',
      () => middleFor(LINKS, 'cone', q('0.01 in')),
      'no link cone can be moved; the stack has case, shaft, cone',
    ],
  ])('%s', (_, work, says) => expect(refused(work())).toBe(says));
});

describe('strips', () => {
  test.each(['max 0.003 in', 'min 0.001 in'])('%s is one limit only', (limits) => {
    expect(refused(stripFor(amount(limits)))).toBe(
      'a strip is chosen by both limits of the clearance; write them as 0.0015–0.0045 in',
    );
  });

  test('of two ends that are the same the second is told', () => {
    expect(out(stripTaper(q('0.0015 in'), q('0.0381 mm'))).advisory).toContain(': 0.0381 mm is the least.');
  });
});

test('a bore of the gasket without its thickness is refused by name', () => {
  const given = {bore: '4.000 in', stroke: '3.480 in', ratio: '9.5', 'gasket-bore': '4.1 in'};
  expect(refused(askedAlone('chamber', given))).toBe(
    '--gasket-bore is given without --gasket; give the thickness of the gasket too',
  );
});

// A tenth of the block's height belongs to what is allowed, as the docstring says.
test('a piston that stands out by just a tenth of the block is worked out', () => {
  const deck = deckHeight({block: q('10 in'), stroke: q('4 in'), rod: q('6 in'), piston: q('1 in')});
  expect(result(deck).clearance.value).toBe(1);
});

test.each([
  ['crush', {}, '--bore is missing: bore of the housing; write --bore "2.6545 in"'],
  ['crush', {xyzzy: '2 in'}, 'there is no option --xyzzy; it takes --bore, --height, --gap'],
])('%s %j', (subject, texts, says) => expect(refused(askedAlone(subject, texts))).toBe(says));
