/**
 * Figures of parts that are heated or cooled to fit, line for line, and where their table and their validity end. By hand:
 * ΔT = change / (α · D).
 */
import {describe, expect, test} from 'vitest';
import {quantity, si} from '../../src/quantity/convert.js';
import {coldOfSteel} from '../../src/trade/cold-steel.js';
import {COLD_STEEL, MATERIALS, type Material} from '../../src/trade/expansion.js';
import {coolToAssemble, heatToAssemble} from '../../src/trade/shrink-fit.js';
import {ESTIMATE} from '../../src/trade/worked.js';
import {q} from '../help/amount.js';
import {asked, refused, told, working} from './ask.js';
import {out} from './unwrap.js';

const STEEL: Material = {name: 'steel', perKelvin: 11.7e-6, steel: true};

describe('workings', () => {
  test('heated, in the room of an inch shop', () => {
    expect(working(asked('heat-to-fit', {}))).toEqual([
      'ΔT = (interference + clearance) / (α · D)',
      'diameter, D: 2.000 in',
      'interference: 0.0027 in',
      'clearance to assemble: 0.001 in',
      'α: steel-4140, 12.3 µm/m·K (6.8 µin/in·°F)',
      'room: 68 °F',
      'with α a tenth more or less: 314–369 °F',
      'coefficients: Callister, Table B.6 (sources differ by 5 to 10 %)',
      `Heat evenly, and no hotter than the part, its seals and its temper bear: ask its maker. ${ESTIMATE}`,
    ]);
  });

  test('heated, in the room of a metric one', () => {
    const metric = {diameter: '50 mm', interference: '0.05 mm', clearance: '0.05 mm'};
    expect(working(asked('heat-to-fit', metric)).slice(5, 7)).toEqual([
      'room: 20 °C',
      'with α a tenth more or less: 168–201 °C',
    ]);
  });

  test('cooled, by a coefficient that is held constant', () => {
    const given = {
      diameter: '50 mm',
      interference: '0.05 mm',
      clearance: '0.01 mm',
      material: 'aluminium-6061',
    };
    expect(working(asked('cool-to-fit', given))).toEqual([
      'ΔT = (interference + clearance) / (α · D)',
      'diameter, D: 50 mm',
      'interference: 0.05 mm',
      'clearance to assemble: 0.01 mm',
      'α: aluminium-6061, 23.6 µm/m·K (13.1 µin/in·°F)',
      'room: 20 °C',
      'with α a tenth more or less: −36 to −26 °C',
      'coefficients: Callister, Table B.6 (sources differ by 5 to 10 %)',
      `Cold burns and steals the air: gloves, face shield and an open door. Dry the part, frost takes up the clearance. ${ESTIMATE}`,
    ]);
  });
});

test('the warmer end of the band stands last, above nought as below', () => {
  const given = {
    diameter: '50 mm',
    interference: '0.01 mm',
    clearance: '0.005 mm',
    material: 'aluminium-6061',
  };
  expect(working(asked('cool-to-fit', given))).toContain('with α a tenth more or less: 6–8 °C');
});

describe('materials', () => {
  test.each([
    ['6.8e-6/F', '340 °F'],
    ['1e-6/K', '158 °F'],
    ['50e-6/K', '70 °F'],
  ])('%s', (material, temperature) => {
    const given = material === '6.8e-6/F' ? {} : {interference: '0.0001 in', clearance: '0 in'};
    expect(told(asked('heat-to-fit', {...given, material}))[0]).toBe(`bring it to: ${temperature}`);
  });

  const ALL = MATERIALS.map(({name}) => name).join(', ');
  test.each([
    ['wood', `--material: "wood" is no material of the table; the table has ${ALL}`],
    ['steal', '--material: "steal" is no material of the table; did you mean steel?'],
    ['0.99e-6/K', '--material: no metal expands by 0.99e-6; steel is 11.7e-6/K, aluminium 23.6e-6/K'],
    ['50.1e-6/K', '--material: no metal expands by 50.1e-6; steel is 11.7e-6/K, aluminium 23.6e-6/K'],
  ])('%s is refused', (material, says) => expect(refused(asked('heat-to-fit', {material}))).toBe(says));

  test('a coefficient of the shop is not taken for that of the table of cold steel', () => {
    expect(refused(asked('cool-to-fit', {material: '12e-6/K'}))).toBe(
      'the part would have to go below −80 °C, below which its coefficient is not known here; heat the outer part as well',
    );
  });
});

describe('the ends of what is known', () => {
  const given = (perMillion: number, diameter: number, interference: number) => ({
    diameter: quantity(diameter, 'mm'),
    interference: quantity(interference, 'mm'),
    clearance: q('0 mm'),
    material: {name: 'as stated', perKelvin: perMillion * 1e-6, steel: false},
    room: q('20 °C'),
  });

  test('300 °C belongs to it: 280 K of 5 millionths on 100 mm', () => {
    expect(degrees(heatToAssemble(given(5, 10, 0.014)))).toBe(300);
    expect(refused(heatToAssemble(given(5, 10, 0.0141)))).toBe(
      'the part would need 302 °C, over 300 °C; cool the inner part as well, or press it',
    );
  });

  test('so does −80 °C: 100 K of 20.5 millionths on 70 mm', () => {
    expect(degrees(coolToAssemble(given(20.5, 70, 0.1435)))).toBe(-80);
  });

  function degrees(worked: ReturnType<typeof heatToAssemble>): number {
    return out(worked).result.temperature.value;
  }
});

/** The coefficient between the rows of the table, in millionths per °F; above it the first holds. */
function coefficient(at: number): number {
  const below = COLD_STEEL.findIndex(([cold]) => cold < at);
  const [high, low] = [COLD_STEEL[below - 1], COLD_STEEL[below]];
  if (low === undefined) throw new Error(`${at} °F is beyond the table`);
  if (high === undefined) return low[1];
  return low[1] + ((at - low[0]) / (high[0] - low[0])) * (high[1] - low[1]);
}

/** By steps of a hundredth of a degree, in millionths. */
function shrunk(from: number, to: number): number {
  let sum = 0;
  for (let at = from - 0.005; at > to; at -= 0.01) sum += coefficient(at) * 0.01;
  return sum;
}

describe('steel in the cold, by adding up a hundredth of a degree at a time', () => {
  test.each([
    [70, 60],
    [70, -20],
    [70, -110],
    [68, -300],
    [68, -335],
    [110, 95],
    [110, 70],
    [-39, -45],
    [-39, -150],
  ])('from %d to %d °F', (from, to) => {
    const at = coldOfSteel((shrunk(from, to) * 1e-6 * 11.7) / ((6.47 * 9) / 5), kelvin(from), STEEL);
    expect(at).toBeCloseTo(kelvin(to), 1);
  });

  test('beyond the last row nothing is known', () => {
    expect(coldOfSteel(0.0022, kelvin(68), STEEL)).toBeUndefined();
  });

  function kelvin(fahrenheit: number): number {
    return si(quantity(fahrenheit, '°F'));
  }
});
