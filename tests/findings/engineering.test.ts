/** Where the figures of the engineering findings begin and end, what they are silent about, and that nothing throws. */
import {readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {check} from '../../src/findings/check.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {loadBook} from '../../src/host/load.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';

const ENGINEERING = new Set(FINDINGS.filter(({group}) => group === 'engineering').map(({name}) => name));

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
tools:
  wrench: {range: 30–150 lbf·ft}
  dial: {gauge: true, resolution: 0.001 in, accuracy: ±0.0005 in}
  classed: {gauge: true, accuracy: class 1}
  unmarked: {gauge: true}
consumables:
  oil: {use: lubricant}
  slick: {use: lubricant, k: 0.1}
  wire: {use: lock, lock: safety-wire, size: SIZE}
  pin: {use: lock, lock: cotter-pin, size: SIZE}
  unsized: {use: lock, lock: safety-wire}
  strip: {use: strip, range: 0.002–0.006 in}
`;

/** Names of the engineering findings of an engine of one group of bolts, in the order of the text. */
function ofBolts(fields: string, size = '0.032 in'): string[] {
  const threads = fields.includes('threads:') ? '' : 'threads: dry, ';
  const lock = /\block:/.test(fields) ? '' : 'lock: {value: none, because: it is a test}, ';
  return found(`fasteners:\n  bolts: {${threads}${lock}${fields}}\n`, SHOP.replaceAll('SIZE', size));
}

function ofFit(between: string, limits: string, using: string, surfaces = ''): string[] {
  return found(
    `parts: {block: {given: true}}\nsurfaces: {${surfaces}}\nfits:\n  gap: {between: [${between}], limits: ${limits}, using: [${using}], when: {installed: [block]}}\n`,
    SHOP.replaceAll('SIZE', '0.032 in'),
  );
}

function found(engine: string, shop: string): string[] {
  const {findings} = check(book({engine, shop, procedures: {'procedure.md': '1. Look at it.\n'}}));
  return findings.filter(({name}) => ENGINEERING.has(name)).map(({name}) => name);
}

const PRELOAD = 'thread: 1/2-13 UNC, grade: proof 100 ksi';

describe('boundaries of the fasteners', () => {
  // F = T/(K·d) with K = 0.20, d = 0.5 in and At = 0.1419 in²: 90 % is 1277.1 lbf·in, 50 % is 709.5 lbf·in.
  test.each([
    ['1277 lbf·in', []],
    ['1279 lbf·in', ['preload-out-of-range']],
    ['709 lbf·in', []],
    ['708 lbf·in', ['preload-out-of-range']],
    ['700–1000 lbf·in', []],
    ['1200 ±200 lbf·in', []],
    ['max 1500 lbf·in', []],
  ])('preload of %s', (torque, due) => {
    expect(ofBolts(`${PRELOAD}, torque: ${torque}`)).toEqual(due);
  });

  test.each([
    ['30 lbf·ft', []],
    ['29.9 lbf·ft', ['wrench-out-of-range']],
    ['150 lbf·ft', []],
    ['150.1 lbf·ft', ['wrench-out-of-range']],
    ['25–35 lbf·ft', []],
    ['20–29 lbf·ft', ['wrench-out-of-range']],
    ['28 ±4 lbf·ft', ['wrench-out-of-range']],
    ['max 30 lbf·ft', []],
    ['min 151 lbf·ft', ['wrench-out-of-range']],
    ['snug', []],
  ])('wrench from 30 to 150 lbf·ft for %s', (torque, due) => {
    expect(ofBolts(`torque: ${torque}`)).toEqual(due);
  });

  // AC 43.13-1B 7-124.
  test.each([
    ['0.062 in', '0.032 in', []],
    ['0.062 in', '0.025 in', ['wire-size']],
    ['0.062 in', '0.060 in', []],
    ['0.062 in', '0.063 in', ['wire-size']],
    ['1.2 mm', '0.041 in', []],
    ['1.2 mm', '0.051 in', ['wire-size']],
    ['0.045 in', '0.020 in', []],
    ['0.046 in', '0.020 in', ['wire-size']],
    ['0.046 in', '0.041 in', []],
  ])('wire in a hole of %s, %s thick', (hole, wire, due) => {
    expect(ofBolts(`torque: 40 lbf·ft, hole: ${hole}, lock: wire`, wire)).toEqual(due);
  });

  test.each([
    [1.99, []],
    [2, ['wire-size']],
  ])('thin wire where bolts are %d in apart', (apart, due) => {
    const layout = `count: 2, layout: {unit: in, a: [0, 0], b: [0, ${apart}]}`;
    expect(ofBolts(`torque: 40 lbf·ft, hole: 0.062 in, lock: wire, ${layout}`, '0.020 in')).toEqual(due);
  });

  // TM 10-3930-659-34 2-22.
  test.each([
    [6, '[[a, b], [c, d]]', []],
    [6.01, '[[a, b], [c, d]]', ['wire-run', 'wire-run']],
    [6.01, '[[a], [b], [c], [d]]', []],
    [5, '[[a, b, c], [d]]', []],
    [4, '[[a, b, c, d]]', ['wire-run']],
    [3, '[[a, b, c, d]]', ['wire-run']],
    [2.5, '[[a, b, c, d]]', []],
    [6, '', []],
    [6.01, '', ['wire-run']],
  ])('run of wire with %d in from bolt to bolt, %s', (apart, runs, due) => {
    const spots = ['a', 'b', 'c', 'd'].map((id, index) => `${id}: [${index * apart}, 0]`).join(', ');
    const layout = `count: 4, layout: {unit: in, ${spots}}${runs && `, runs: ${runs}`}`;
    expect(ofBolts(`torque: 40 lbf·ft, lock: safety-wire, ${layout}`)).toEqual(due);
  });

  // ASME B18.8.1: the hole of a 3/32 in pin is gauged with 0.109 in; AN380: 3/32 in is the least for 3/8 in.
  test.each([
    ['3/8-24 UNF', 'hole: 0.109 in, ', '3/32 in', []],
    ['3/8-24 UNF', 'hole: 0.108 in, ', '3/32 in', ['cotter-size']],
    ['3/8-24 UNF', 'hole: 0.141 in, ', '1/8 in', ['cotter-size']],
    ['3/8-24 UNF', '', '3/32 in', []],
    ['3/8-24 UNF', '', '5/64 in', ['cotter-size']],
    ['M10', 'hole: 3.2 mm, ', '3.2 mm', []],
    ['M10', 'hole: 3.1 mm, ', '3.2 mm', ['cotter-size']],
    ['M10', '', '1/4 in', []],
  ])('pin for %s, %s%s', (thread, hole, pin, due) => {
    expect(ofBolts(`thread: ${thread}, torque: 40 lbf·ft, ${hole}lock: pin`, pin)).toEqual(due);
  });

  test.each([
    ['0.647 in', 'aluminium', []],
    ['0.646 in', 'aluminium', ['thread-engagement']],
    ['0.48 in', 'cast iron', ['thread-engagement']],
    ['0.481 in', 'cast iron', []],
    ['0.60–0.70 in', 'aluminium', ['thread-engagement']],
    ['max 0.70 in', 'aluminium', []],
    ['{value: 0.3 in, because: the works drawing}', 'aluminium', []],
  ])('%s of thread in %s', (length, into, due) => {
    const fields = `thread: 3/8-16 UNC, grade: SAE 5, torque: 31 lbf·ft, engagement: ${length}, into: ${into}`;
    expect(ofBolts(fields)).toEqual(due);
  });
});

describe('boundaries of the fits', () => {
  test.each([
    ['0.0010–0.0050 in', 'dial', []],
    ['0.0010–0.0049 in', 'dial', ['gauge-too-coarse']],
    ['max 0.004 in', 'dial', []],
    ['max 0.0039 in', 'dial', ['gauge-too-coarse']],
    ['min 0.0039 in', 'dial', []],
    ['{value: 0.0010–0.0020 in, because: the works named the gauge}', 'dial', []],
    ['0.0010–0.0011 in', 'classed, unmarked', []],
    ['0.002–0.006 in', 'strip', []],
    ['0.0508–0.1524 mm', 'strip', []],
    ['0.001–0.006 in', 'strip', ['gauge-too-coarse']],
    ['0.002–0.007 in', 'strip', ['gauge-too-coarse']],
    ['unknown', 'dial', []],
  ])('limits %s read with %s', (limits, using, due) => {
    expect(ofFit('block', limits, using)).toEqual(due);
  });

  test.each([
    ['they touch', '2.5000–2.5005 in', '2.4960–2.4965 in', '0.0015–0.0035 in', []],
    [
      'a tenth of a thousandth less',
      '2.5000–2.5005 in',
      '2.4959–2.4964 in',
      '0.0015–0.0035 in',
      ['fit-impossible'],
    ],
    ['too close', '2.5000 in', '2.4990 in', '0.0015–0.0035 in', ['fit-impossible']],
    ['by no more than the last place', '2.5000 in', '2.4986 in', '0.0015–0.0035 in', []],
    ['the shaft named first', '2.4960 in', '2.5000 in', '0.0030–0.0050 in', []],
    ['one of them in millimetres', '63.500 mm', '2.4900 in', '0.0015–0.0035 in', ['fit-impossible']],
    ['interference that can be', '1.0000–1.0010 in', '1.0020–1.0025 in', '-0.003 to -0.001 in', []],
    [
      'interference that cannot',
      '1.0000–1.0010 in',
      '1.0060–1.0065 in',
      '-0.003 to -0.001 in',
      ['fit-impossible'],
    ],
    ['nominal sizes alike', '2.500 in', '2.500 in', '0.0015–0.0035 in', []],
    ['limits alike', '2.5000–2.5005 in', '2.5000–2.5005 in', '0.0015–0.0035 in', ['fit-impossible']],
    ['a fraction', '2-1/2 in', '2.400 in', '0.0015–0.0035 in', []],
    ['a diameter and a width', '2.500 in', '1.200 in', '0.0015–0.0035 in', []],
    ['no more than a largest size', 'max 2.500 in', '2.400 in', '0.0015–0.0035 in', []],
  ])('sizes: %s', (_, one, other, limits, due) => {
    const surfaces = `bore: {assembly: clean, size: ${one}}, shaft: {assembly: clean, size: ${other}}`;
    expect(ofFit('bore, shaft', limits, '', surfaces)).toEqual(due);
  });
});

describe('silence', () => {
  test.each([
    ['no thread', 'grade: SAE 5, torque: 140 lbf·ft'],
    ['a thread of another kind', 'thread: 3/8 BSF, grade: SAE 5, torque: 140 lbf·ft'],
    ['an unknown thread', 'thread: unknown, grade: SAE 5, torque: 140 lbf·ft'],
    ['no grade', 'thread: 3/8-16 UNC, torque: 140 lbf·ft'],
    ['a grade of another kind', 'thread: 3/8-16 UNC, grade: R, torque: 140 lbf·ft'],
    ['unknown threads', 'thread: 3/8-16 UNC, grade: SAE 5, torque: 140 lbf·ft, threads: unknown'],
    ['a reason', 'thread: 3/8-16 UNC, grade: SAE 5, torque: {value: 140 lbf·ft, because: the works sheet}'],
    ['torque then angle', 'thread: 3/8-16 UNC, grade: SAE 5, torque: 140 lbf·ft, angle: 90°'],
    ['snug', 'thread: 3/8-16 UNC, grade: SAE 5, torque: snug'],
    ['unknown torque', 'thread: 3/8-16 UNC, grade: SAE 5, torque: unknown'],
    ['wire of no known size', 'torque: 40 lbf·ft, hole: 0.062 in, lock: unsized'],
    ['wire through no known hole', 'torque: 40 lbf·ft, lock: wire'],
    ['a hole that is not for wire', 'torque: 40 lbf·ft, hole: 0.012 in, lock: tab-washer'],
    [
      'a layout of tabbed bolts',
      'torque: 40 lbf·ft, lock: tab-washer, count: 2, layout: {unit: in, a: [0, 0], b: [9, 0]}',
    ],
    [
      'bolts that all sit in one spot',
      'torque: 40 lbf·ft, lock: safety-wire, hole: 0.062 in, count: 2, layout: {unit: in, a: [0, 0], b: [0, 0]}',
    ],
    ['no metal', 'thread: 3/8-16 UNC, grade: SAE 5, torque: 31 lbf·ft, engagement: 0.1 in'],
    [
      'no tensile strength',
      'thread: 3/8-16 UNC, grade: yield 90 ksi, torque: 31 lbf·ft, engagement: 0.1 in, into: steel',
    ],
  ])('of %s', (_, fields) => {
    expect(ofBolts(fields, '0.062 in')).toEqual([]);
  });

  it('of a shop without a torque wrench', () => {
    expect(
      found(
        'fasteners: {bolts: {torque: 500 lbf·ft, threads: dry, lock: {value: none, because: test}}}\n',
        '',
      ),
    ).toEqual([]);
  });
});

describe('what is on the threads', () => {
  // 60 lbf·ft on 1/2-13 with proof 100 ksi: 56 % with K = 0.18, 101 % with 0.10, 51 % with 0.20.
  test.each([
    ['dry', []],
    ['[oil]', []],
    ['[slick]', ['preload-out-of-range']],
    ['[oil, slick]', ['preload-out-of-range']],
  ])('%s', (threads, due) => {
    expect(ofBolts(`${PRELOAD}, torque: 60 lbf·ft, threads: ${threads}`)).toEqual(due);
  });
});

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const VALUE =
  /(?<=: |\[|, )(?:max |min )?\d[\d./–-]*(?: to \d[\d.]*)? ?(?:in|lbf·ft|lbf·in|mm|N·m|psi|°F|qt)\b/g;
const POOL = [
  '0 in',
  '-1 in',
  '1e9 in',
  '0.0001 mm',
  '1/3 in',
  '5000 lbf·ft',
  '0 lbf·ft',
  'max 1 N·m',
  'min 2 in',
  '3 ±3 in',
  '1–2 lbf·in',
  '12 kg',
  '4',
  'unknown',
  '°',
  '90°',
  '""',
];

test('any value in place of any other of the first demonstration book is judged without an exception', async () => {
  const loaded = await loadBook('procedures/ottermouth-four', ROOT);
  if (!loaded.ok) throw new Error(loaded.says);
  const [engine, shop] = ['procedures/ottermouth-four/engine.yaml', 'procedures/shop.yaml'].map((file) =>
    readFileSync(`${ROOT}/${file}`, 'utf8'),
  );
  const count = [...`${engine}${shop}`.matchAll(VALUE)].length;
  expect(count).toBeGreaterThan(100);
  const changes = fc.dictionary(fc.nat(count - 1).map(String), fc.constantFrom(...POOL), {
    minKeys: 10,
    maxKeys: 60,
  });
  fc.assert(
    fc.property(changes, (changed) => {
      let index = 0;
      const altered = (text = '') => text.replace(VALUE, (value) => changed[index++] ?? value);
      const spec = readSpecification({
        shop: source('procedures/shop.yaml', altered(shop)),
        engine: source('procedures/ottermouth-four/engine.yaml', altered(engine)),
        bases: [],
      });
      for (const {name, item, message} of check({...loaded.book, spec}).findings) {
        if (!ENGINEERING.has(name)) continue;
        expect(item === undefined || message.startsWith(item)).toBe(true);
        expect(message).not.toMatch(/NaN|undefined|Infinity|\b[01]\.\d{8}/);
      }
    }),
    {numRuns: 20},
  );
});
