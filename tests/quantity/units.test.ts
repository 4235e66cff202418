/** The unit table against published factors, two general-purpose unit libraries, and the spellings of the shop. */
import Qty from 'js-quantities';
import {unit as mathUnit} from 'mathjs';
import {describe, expect, test} from 'vitest';
import {convert, quantity, si} from '../../src/quantity/convert.js';
import {allSpellings, allUnits, findUnit, type UnitSymbol, unit, unitKey} from '../../src/quantity/units.js';

/** NIST SP 811 (2008), appendix B.8, as transcribed in the CRAN package NISTunits 1.0.1: seven figures. */
const SP_811: readonly (readonly [UnitSymbol, UnitSymbol, number])[] = [
  ['lbf·ft', 'N·m', 1.355_818],
  ['lbf·in', 'N·m', 0.112_984_8],
  ['ozf·in', 'N·m', 0.007_061_552],
  ['kgf·m', 'N·m', 9.806_65],
  ['lbf', 'N', 4.448_222],
  ['ozf', 'N', 0.278_013_9],
  ['kip', 'N', 4448.222],
  ['kgf', 'N', 9.806_65],
  ['in', 'm', 0.0254],
  ['mil', 'm', 2.54e-5],
  ['thou', 'm', 2.54e-5],
  ['µin', 'm', 2.54e-8],
  ['psi', 'Pa', 6894.757],
  ['ksi', 'Pa', 6_894_757],
  ['kgf/cm²', 'Pa', 98_066.5],
  ['bar', 'Pa', 1e5],
  ['inHg', 'Pa', 3386.389],
  ['US fl oz', 'mL', 29.573_53],
  ['US pt', 'L', 0.473_176_5],
  ['US qt', 'L', 0.946_352_9],
  ['US gal', 'L', 3.785_412],
  ['imp fl oz', 'mL', 28.413_06],
  ['imp gal', 'L', 4.546_09],
  ['oz', 'g', 28.349_52],
  ['lb', 'kg', 0.453_592_4],
];

/** Exact, worked out from the definitions (1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, 9.806 65 m/s²). */
const EXACT: readonly (readonly [UnitSymbol, UnitSymbol, number])[] = [
  ['lbf·ft', 'N·m', 1.355_817_948_331_4],
  ['lbf·in', 'N·m', 0.112_984_829_027_616_7],
  ['ozf·in', 'N·m', 0.007_061_551_814_226_04],
  ['lbf', 'N', 4.448_221_615_260_5],
  ['ozf', 'N', 0.278_013_850_953_78],
  ['psi', 'Pa', 6894.757_293_168_361],
  ['US fl oz', 'mL', 29.573_529_562_5],
  ['US gal', 'L', 3.785_411_784],
  ['imp fl oz', 'mL', 28.413_062_5],
  ['oz', 'g', 28.349_523_125],
  ['lbf·ft', 'lbf·in', 12],
  ['lbf·ft', 'ozf·in', 192],
  ['MPa', 'kPa', 1000],
  ['ksi', 'psi', 1000],
  ['turn', '°', 360],
  ['day', 'h', 24],
  ['ft', 'in', 12],
];

describe('published factors', () => {
  test.each(SP_811)('1 %s is %s × %d to the seven figures of SP 811', (from, to, factor) => {
    const got = convert(quantity(1, from), unit(to)).value;
    expect(Number(got.toPrecision(7))).toBe(factor);
  });

  test.each(EXACT)('1 %s is exactly %s × %d', (from, to, factor) => {
    const got = convert(quantity(1, from), unit(to)).value;
    expect(Math.abs(got / factor - 1)).toBeLessThan(1e-14);
  });

  // NIST SP 811, B.9: t/°C = (t/°F − 32)/1.8; the fixed points are common knowledge.
  test.each([
    [212, 100],
    [32, 0],
    [-40, -40],
    [68, 20],
  ])('%d °F is %d °C', (fahrenheit, celsius) => {
    expect(convert(quantity(fahrenheit, '°F'), unit('°C')).value).toBeCloseTo(celsius, 10);
    expect(convert(quantity(celsius, '°C'), unit('°F')).value).toBeCloseTo(fahrenheit, 10);
  });
});

test('1 rpm is 0.104 719 8 rad/s (NIST SP 811, B.8)', () => {
  expect(Number(si(quantity(1, 'rpm')).toPrecision(7))).toBe(0.104_719_8);
});

/** Names of our units in mathjs 15 and js-quantities 1.8; where a library lacks a unit it is left out. */
const MATHJS: Partial<Record<UnitSymbol, string>> = {
  lbf·ft: 'lbf ft',
  lbf·in: 'lbf in',
  N·m: 'N m',
  N·cm: 'N cm',
  in: 'inch',
  ft: 'ft',
  mil: 'mil',
  thou: 'mil',
  mm: 'mm',
  µm: 'um',
  cm: 'cm',
  m: 'm',
  '°': 'deg',
  rad: 'rad',
  turn: 'cycle',
  s: 's',
  min: 'minute',
  h: 'hour',
  day: 'day',
  week: 'week',
  '°C': 'degC',
  '°F': 'degF',
  K: 'K',
  psi: 'psi',
  bar: 'bar',
  mbar: 'mbar',
  Pa: 'Pa',
  kPa: 'kPa',
  MPa: 'MPa',
  GPa: 'GPa',
  lbf: 'lbf',
  kip: 'kip',
  N: 'N',
  kN: 'kN',
  kgf: 'kgf',
  kgf·m: 'kgf m',
  kgf·cm: 'kgf cm',
  'kgf/cm²': 'kgf / cm^2',
  lb: 'lbm',
  oz: 'oz',
  kg: 'kg',
  g: 'g',
  'in³': 'in^3',
  L: 'L',
  mL: 'mL',
  cc: 'cm^3',
  Hz: 'Hz',
  V: 'V',
  mV: 'mV',
  kV: 'kV',
  A: 'A',
  mA: 'mA',
  Ω: 'ohm',
  kΩ: 'kohm',
  MΩ: 'Mohm',
  µF: 'uF',
};

const JS_QUANTITIES: Partial<Record<UnitSymbol, string>> = {
  lbf·ft: 'lbf*ft',
  lbf·in: 'lbf*in',
  N·m: 'N*m',
  N·cm: 'N*cm',
  in: 'in',
  ft: 'ft',
  mil: 'mil',
  mm: 'mm',
  µm: 'um',
  cm: 'cm',
  m: 'm',
  '°': 'deg',
  rad: 'rad',
  s: 's',
  min: 'min',
  h: 'h',
  day: 'd',
  week: 'wk',
  psi: 'psi',
  bar: 'bar',
  Pa: 'Pa',
  kPa: 'kPa',
  MPa: 'MPa',
  GPa: 'GPa',
  lbf: 'lbf',
  N: 'N',
  kN: 'kN',
  lb: 'lb',
  oz: 'oz',
  kg: 'kg',
  g: 'g',
  'in³': 'in^3',
  'US gal': 'gal',
  'US qt': 'qt',
  'US pt': 'pt',
  'US fl oz': 'floz',
  L: 'l',
  mL: 'ml',
  cc: 'cm3',
};

/** Every ordered pair of units of one dimension that the library also has. */
function pairs(names: Partial<Record<UnitSymbol, string>>): [UnitSymbol, UnitSymbol, string, string][] {
  const known = Object.entries(names) as [UnitSymbol, string][];
  return known.flatMap(([from, one]) =>
    known
      .filter(([to]) => unit(to).dimension === unit(from).dimension)
      .map(([to, other]): [UnitSymbol, UnitSymbol, string, string] => [from, to, one, other]),
  );
}

const VALUES = [1, 0.0015, 2.4995, 85, 1020, 123_456.789];

describe('against general-purpose libraries', () => {
  // mathjs keeps the kip to eight figures; the rest agree to the last bits.
  test.each(pairs(MATHJS))('%s to %s as mathjs', (from, to, one, other) => {
    for (const value of VALUES) {
      const ours = convert(quantity(value, from), unit(to)).value;
      const theirs = mathUnit(value, one).toNumber(other);
      expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-8 * Math.max(1, Math.abs(theirs)));
    }
  });

  // js-quantities keeps the pound-force to 4.448222 N and the pint, quart and inch-ounce to six or seven figures.
  test.each(pairs(JS_QUANTITIES))('%s to %s as js-quantities', (from, to, one, other) => {
    for (const value of VALUES) {
      const ours = convert(quantity(value, from), unit(to)).value;
      const theirs = Qty(value, one).to(other).scalar;
      expect(Math.abs(ours / theirs - 1)).toBeLessThan(1e-6);
    }
  });

  test('the generated tables are large', () => {
    expect(pairs(MATHJS).length).toBeGreaterThan(250);
    expect(pairs(JS_QUANTITIES).length).toBeGreaterThan(150);
  });
});

/** What shops write (common practice, no source). */
const SPELLINGS: readonly (readonly [UnitSymbol, string])[] = [
  [
    'lbf·ft',
    'lbf·ft|lbf-ft|lbf.ft|lbf ft|ft-lb|ft·lb|ft·lbf|ft-lbf|ft.lb|ft lb|ft lbs|ft-lbs|ft. lbs.|ftlb|lb-ft|lb·ft',
  ],
  [
    'lbf·ft',
    'lbs-ft|lb.ft|lb ft|foot-pounds|foot pounds|foot-pound|pound-feet|pound-foot|FT-LB|Ft-Lbs|LBF·FT',
  ],
  [
    'lbf·in',
    'lbf·in|in-lb|in·lb|in-lbs|in.lb|in lb|in. lb.|lb-in|lb·in|lbf-in|in-lbf|inch-pounds|inch pounds|IN-LB',
  ],
  ['ozf·in', 'ozf·in|oz-in|in-oz|ozf-in|oz·in'],
  ['N·m', 'N·m|N-m|N.m|N m|Nm|nm|NM|N⋅m|N*m|newton-metres|newton metres'],
  ['kgf·m', 'kgf·m|kgf-m|kgf m|kg·m|kg-m|kg.m|kgm|m-kg|mkg|kp·m'],
  ['kgf·cm', 'kgf·cm|kg-cm|kg·cm'],
  ['in', "in|in.|inch|inches|\"|″|”|''|IN|Inch"],
  ['ft', "ft|ft.|foot|feet|'|′"],
  ['thou', 'thou|thous|thousandths'],
  ['mil', 'mil|mils'],
  ['mm', 'mm|mm.|MM|millimetres|millimeters'],
  ['µm', '\u00B5m|\u03BCm|um|micron|microns'],
  ['µin', '\u00B5in|\u03BCin|microinches|uin'],
  ['°', '°|º|deg|deg.|degrees|degree'],
  ['h', 'h|hr|hrs|hr.|hour|hours'],
  ['min', 'min|min.|mins|minute|minutes'],
  ['s', 's|sec|secs|seconds'],
  ['day', 'day|days|d'],
  ['week', 'week|weeks|wk'],
  ['°C', '°C|º C|° C|℃|C|deg C|degC|deg. C|degrees C|degrees Celsius|celsius'],
  ['°F', '°F|° F|℉|F|deg F|degF|deg. F|degrees F|degrees Fahrenheit'],
  [
    'psi',
    'psi|PSI|p.s.i.|psig|lb/in²|lbs/in²|lbf/in²|lbf/in2|lb/sq in|lb per sq. in.|pounds per square inch',
  ],
  ['kPa', 'kPa|KPA|kpa'],
  ['MPa', 'MPa|Mpa|MPA|N/mm²|N/mm2'],
  ['kgf/cm²', 'kgf/cm²|kg/cm²|kg/cm2'],
  ['inHg', 'inHg|in Hg|in. Hg|"Hg|inches of mercury'],
  ['bar', 'bar|bars|BAR'],
  ['lbf', 'lbf|LBF|pounds-force|pound-force'],
  ['N', 'N|newtons'],
  ['kN', 'kN|KN'],
  ['kgf', 'kgf|kp'],
  ['lb', 'lb|lbs|lb.|lbs.|pounds'],
  ['oz', 'oz|oz.|ounces'],
  ['kg', 'kg|KG|kilograms'],
  ['g', 'g|grams'],
  ['US qt', 'qt|qts|qt.|quart|quarts|US qt|U.S. qt|US quarts'],
  ['US pt', 'pt|pint|pints|US pt'],
  ['US gal', 'gal|gallons|US gal|US gallons|U.S. gal.'],
  ['US fl oz', 'fl oz|fl. oz.|floz|fluid ounces|US fl oz'],
  ['imp gal', 'imp gal|imp. gal.|imperial gallons|UK gal'],
  ['imp qt', 'imp qt|imperial quarts'],
  ['L', 'L|l|litre|litres|liters'],
  ['mL', 'mL|ml|ML'],
  ['cc', 'cc|ccs|cm³|cm3'],
  ['in³', 'in³|cu in|cu. in.|cubic inches'],
];

describe('spellings', () => {
  test.each(SPELLINGS)('%s is meant by %s', (symbol, spellings) => {
    for (const spelling of spellings.split('|'))
      expect([spelling, findUnit(spelling)?.symbol]).toEqual([spelling, symbol]);
  });

  test.each(['mPa', 'M', 'H', 'S', 'ft/lb', '', 'frobs', 'tenths', 'lbf·ft·s', '#'])(
    '%s is no unit',
    (spelling) => {
      expect(findUnit(spelling)).toBeUndefined();
    },
  );

  test('a symbol finds itself, and no spelling stands for two units', () => {
    for (const known of allUnits()) expect(findUnit(known.symbol)).toBe(known);
    for (const [key, known] of allSpellings()) expect([key, findUnit(key)]).toEqual([key, known]);
    for (const key of allSpellings().keys()) expect(unitKey(key)).toBe(key);
  });
});
