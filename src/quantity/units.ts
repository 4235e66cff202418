/**
 * The units that the tool knows, and the spellings that shops write them in. Every factor is built from the
 * definitions in NIST SP 811 (2008), appendix B: the inch, the pound, standard gravity and the gallons are exact.
 */
import type {Dimension, Unit} from './model.js';

const INCH = 0.0254;
const FOOT = 12 * INCH;
const POUND = 0.453_592_37;
const OUNCE = POUND / 16;
/** Standard gravity, which makes a force of a mass: the `f` of lbf, ozf and kgf. */
const GRAVITY = 9.806_65;
/** Pound-force: exact, written out because the product of the two above is off in the last bit. */
const POUND_FORCE = 4.448_221_615_260_5;
const OUNCE_FORCE = POUND_FORCE / 16;
const CUBIC_INCH = INCH ** 3;
const US_GALLON = 231 * CUBIC_INCH;
const IMPERIAL_GALLON = 4.546_09e-3;
/** Density of mercury that SP 811 takes for "conventional" columns, kg/m³. */
const MERCURY = 13_595.1;
const PSI = POUND_FORCE / INCH ** 2;
const DEGREE = Math.PI / 180;

interface Row {
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset?: number;
  readonly system: Unit['system'];
  /** Keys as `unitKey` makes them, apart by a space; the symbol's own key need not be repeated. */
  readonly spellings: string;
}

const ROWS = {
  lbf·ft: {
    dimension: 'torque',
    factor: POUND_FORCE * FOOT,
    system: 'inch',
    spellings:
      'ft·lbf lb·ft ft·lb lbs·ft ft·lbs lbft ftlb ftlbs lbfft ftlbf foot·pound foot·pounds feet·pounds ' +
      'pound·foot pound·feet pounds·feet foot·lb foot·lbs foot·lbf lb·feet lbf·feet pound·force·foot ' +
      'pound·force·feet foot·pound·force foot·pounds·force',
  },
  lbf·in: {
    dimension: 'torque',
    factor: POUND_FORCE * INCH,
    system: 'inch',
    spellings:
      'in·lbf lb·in in·lb lbs·in in·lbs lbin inlb inlbs lbfin inlbf inch·pound inch·pounds pound·inch ' +
      'pound·inches inch·lb inch·lbs inch·lbf pound·force·inch pound·force·inches inch·pounds·force',
  },
  ozf·in: {
    dimension: 'torque',
    factor: OUNCE_FORCE * INCH,
    system: 'inch',
    spellings: 'in·ozf oz·in in·oz inch·ounce inch·ounces ounce·inch ounce·inches',
  },
  N·m: {
    dimension: 'torque',
    factor: 1,
    system: 'metric',
    spellings: 'nm newton·metre newton·metres newton·meter newton·meters newtonmetre newtonmetres',
  },
  N·cm: {dimension: 'torque', factor: 0.01, system: 'metric', spellings: 'ncm'},
  kgf·m: {
    dimension: 'torque',
    factor: GRAVITY,
    system: 'metric',
    spellings: 'kg·m m·kg m·kgf kgm kgfm mkg mkgf mkp kp·m kpm',
  },
  kgf·cm: {
    dimension: 'torque',
    factor: GRAVITY / 100,
    system: 'metric',
    spellings: 'kg·cm cm·kg cm·kgf kgcm kgfcm',
  },

  in: {dimension: 'length', factor: INCH, system: 'inch', spellings: 'inch inches " ins'},
  ft: {dimension: 'length', factor: FOOT, system: 'inch', spellings: "foot feet '"},
  thou: {dimension: 'length', factor: INCH / 1000, system: 'inch', spellings: 'thous thousandth thousandths'},
  mil: {dimension: 'length', factor: INCH / 1000, system: 'inch', spellings: 'mils'},
  µin: {
    dimension: 'length',
    factor: INCH / 1e6,
    system: 'inch',
    spellings: 'microinch microinches micro·inch micro·inches uin',
  },
  mm: {
    dimension: 'length',
    factor: 1e-3,
    system: 'metric',
    spellings: 'millimetre millimetres millimeter millimeters',
  },
  µm: {
    dimension: 'length',
    factor: 1e-6,
    system: 'metric',
    spellings: 'um micron microns micrometre micrometres',
  },
  cm: {
    dimension: 'length',
    factor: 1e-2,
    system: 'metric',
    spellings: 'centimetre centimetres centimeter centimeters',
  },
  m: {dimension: 'length', factor: 1, system: 'metric', spellings: 'metre metres meter meters'},

  '°': {dimension: 'angle', factor: DEGREE, system: 'both', spellings: 'deg degs degree degrees'},
  rad: {dimension: 'angle', factor: 1, system: 'both', spellings: 'radian radians'},
  turn: {
    dimension: 'angle',
    factor: 360 * DEGREE,
    system: 'both',
    spellings: 'turns rev revs revolution revolutions',
  },

  s: {dimension: 'time', factor: 1, system: 'both', spellings: 'sec secs second seconds'},
  min: {dimension: 'time', factor: 60, system: 'both', spellings: 'mins minute minutes'},
  h: {dimension: 'time', factor: 3600, system: 'both', spellings: 'hr hrs hour hours'},
  day: {dimension: 'time', factor: 86_400, system: 'both', spellings: 'days d'},
  week: {dimension: 'time', factor: 604_800, system: 'both', spellings: 'weeks wk wks'},

  '°C': {
    dimension: 'temperature',
    factor: 1,
    offset: 273.15,
    system: 'metric',
    spellings: 'C °·c deg·c degc degrees·c degree·c celsius deg·celsius degrees·celsius centigrade',
  },
  '°F': {
    dimension: 'temperature',
    factor: 5 / 9,
    offset: (459.67 * 5) / 9,
    system: 'inch',
    spellings: 'F °·f deg·f degf degrees·f degree·f fahrenheit deg·fahrenheit degrees·fahrenheit',
  },
  K: {dimension: 'temperature', factor: 1, system: 'metric', spellings: 'kelvin kelvins'},

  psi: {
    dimension: 'pressure',
    factor: PSI,
    system: 'inch',
    spellings:
      'lbf/in² lb/in² lbs/in² lbf/in2 lb/in2 lbs/in2 lbf/sq·in lb/sq·in lbs/sq·in psig pound/square·inch ' +
      'pounds/square·inch p·s·i',
  },
  ksi: {dimension: 'pressure', factor: 1000 * PSI, system: 'inch', spellings: 'kpsi kip/in²'},
  bar: {dimension: 'pressure', factor: 1e5, system: 'metric', spellings: 'bars'},
  mbar: {dimension: 'pressure', factor: 100, system: 'metric', spellings: 'millibar millibars'},
  Pa: {dimension: 'pressure', factor: 1, system: 'metric', spellings: 'pascal pascals'},
  kPa: {dimension: 'pressure', factor: 1e3, system: 'metric', spellings: 'kilopascal kilopascals'},
  MPa: {
    dimension: 'pressure',
    factor: 1e6,
    system: 'metric',
    spellings: 'n/mm² n/mm2 megapascal megapascals',
  },
  GPa: {dimension: 'pressure', factor: 1e9, system: 'metric', spellings: 'gigapascal gigapascals'},
  'kgf/cm²': {
    dimension: 'pressure',
    factor: GRAVITY * 1e4,
    system: 'metric',
    spellings: 'kg/cm² kg/cm2 kgf/cm2 kp/cm² kp/cm2',
  },
  inHg: {
    dimension: 'pressure',
    factor: MERCURY * GRAVITY * INCH,
    system: 'inch',
    spellings: 'in·hg inch·hg inches·hg "·hg "hg inches·of·mercury inch·of·mercury',
  },

  lbf: {
    dimension: 'force',
    factor: POUND_FORCE,
    system: 'inch',
    spellings: 'pound·force pounds·force lb·f lbsf',
  },
  ozf: {dimension: 'force', factor: OUNCE_FORCE, system: 'inch', spellings: 'ounce·force ounces·force'},
  kip: {dimension: 'force', factor: 1000 * POUND_FORCE, system: 'inch', spellings: 'kips klbf'},
  N: {dimension: 'force', factor: 1, system: 'metric', spellings: 'newton newtons'},
  kN: {dimension: 'force', factor: 1e3, system: 'metric', spellings: 'kilonewton kilonewtons'},
  kgf: {dimension: 'force', factor: GRAVITY, system: 'metric', spellings: 'kp kilogram·force kg·f'},

  lb: {dimension: 'mass', factor: POUND, system: 'inch', spellings: 'lbs lbm pound pounds'},
  oz: {dimension: 'mass', factor: OUNCE, system: 'inch', spellings: 'ounce ounces ozs'},
  kg: {
    dimension: 'mass',
    factor: 1,
    system: 'metric',
    spellings: 'kgs kilogram kilograms kilogramme kilogrammes kilo kilos',
  },
  g: {dimension: 'mass', factor: 1e-3, system: 'metric', spellings: 'gram grams gramme grammes gm gms'},

  'US gal': {
    dimension: 'volume',
    factor: US_GALLON,
    system: 'inch',
    spellings: 'gal gals gallon gallons us·gallon us·gallons us·gals gal·us u·s·gal u·s·gallon u·s·gallons',
  },
  'US qt': {
    dimension: 'volume',
    factor: US_GALLON / 4,
    system: 'inch',
    spellings: 'qt qts quart quarts us·qts us·quart us·quarts qt·us u·s·qt u·s·quart u·s·quarts',
  },
  'US pt': {
    dimension: 'volume',
    factor: US_GALLON / 8,
    system: 'inch',
    spellings: 'pt pts pint pints us·pts us·pint us·pints pt·us u·s·pt u·s·pint u·s·pints',
  },
  'US fl oz': {
    dimension: 'volume',
    factor: US_GALLON / 128,
    system: 'inch',
    spellings: 'fl·oz floz fluid·oz fluid·ounce fluid·ounces us·floz us·fluid·ounce us·fluid·ounces',
  },
  'imp gal': {
    dimension: 'volume',
    factor: IMPERIAL_GALLON,
    system: 'inch',
    spellings:
      'imp·gals imp·gallon imp·gallons imperial·gal imperial·gallon imperial·gallons uk·gal uk·gallons',
  },
  'imp qt': {
    dimension: 'volume',
    factor: IMPERIAL_GALLON / 4,
    system: 'inch',
    spellings: 'imp·qts imp·quart imp·quarts imperial·qt imperial·quart imperial·quarts uk·qt uk·quarts',
  },
  'imp pt': {
    dimension: 'volume',
    factor: IMPERIAL_GALLON / 8,
    system: 'inch',
    spellings: 'imp·pts imp·pint imp·pints imperial·pt imperial·pint imperial·pints uk·pt uk·pints',
  },
  'imp fl oz': {
    dimension: 'volume',
    factor: IMPERIAL_GALLON / 160,
    system: 'inch',
    spellings: 'imperial·fl·oz imp·floz imp·fluid·ounce imp·fluid·ounces uk·fl·oz',
  },
  'in³': {
    dimension: 'volume',
    factor: CUBIC_INCH,
    system: 'inch',
    spellings: 'in3 cu·in cuin cubic·inch cubic·inches',
  },
  L: {dimension: 'volume', factor: 1e-3, system: 'metric', spellings: 'l litre litres liter liters ltr ltrs'},
  mL: {
    dimension: 'volume',
    factor: 1e-6,
    system: 'metric',
    spellings: 'mls millilitre millilitres milliliter milliliters',
  },
  cc: {
    dimension: 'volume',
    factor: 1e-6,
    system: 'metric',
    spellings: 'ccs cm³ cm3 cu·cm cubic·centimetre cubic·centimetres cubic·centimeter cubic·centimeters',
  },

  rpm: {
    dimension: 'speed of rotation',
    factor: (360 * DEGREE) / 60,
    system: 'both',
    spellings: 'r/min rev/min revs/min rev·min r·p·m revolutions/minute revolution/minute turns/min',
  },
  Hz: {dimension: 'frequency', factor: 1, system: 'both', spellings: 'hertz cycles/second c/s'},

  V: {dimension: 'voltage', factor: 1, system: 'both', spellings: 'volt volts'},
  mV: {dimension: 'voltage', factor: 1e-3, system: 'both', spellings: 'millivolt millivolts'},
  kV: {dimension: 'voltage', factor: 1e3, system: 'both', spellings: 'kilovolt kilovolts'},
  A: {dimension: 'current', factor: 1, system: 'both', spellings: 'amp amps ampere amperes'},
  mA: {dimension: 'current', factor: 1e-3, system: 'both', spellings: 'milliamp milliamps milliampere'},
  Ω: {dimension: 'resistance', factor: 1, system: 'both', spellings: 'ohm ohms'},
  kΩ: {
    dimension: 'resistance',
    factor: 1e3,
    system: 'both',
    spellings: 'kilohm kilohms kilo·ohm kilo·ohms kohm',
  },
  MΩ: {
    dimension: 'resistance',
    factor: 1e6,
    system: 'both',
    spellings: 'megohm megohms mega·ohm mega·ohms',
  },
  µF: {dimension: 'capacitance', factor: 1e-6, system: 'both', spellings: 'uf mfd microfarad microfarads'},

  '%': {dimension: 'share', factor: 0.01, system: 'both', spellings: 'percent per·cent'},
} as const satisfies Record<string, Row>;

export type UnitSymbol = keyof typeof ROWS;

const BY_SYMBOL: ReadonlyMap<string, Unit> = new Map(
  Object.entries(ROWS).map(([symbol, row]: [string, Row]) => [
    symbol,
    {symbol, dimension: row.dimension, factor: row.factor, offset: row.offset ?? 0, system: row.system},
  ]),
);

const BY_KEY: ReadonlyMap<string, Unit> = new Map(
  Object.entries(ROWS).flatMap(([symbol, row]: [string, Row]) => {
    const found = BY_SYMBOL.get(symbol);
    const keys = [unitKey(symbol), ...row.spellings.split(' ')];
    return found === undefined ? [] : keys.map((key): [string, Unit] => [key, found]);
  }),
);

/**
 * What most people write most often, found without making a key of it, which takes a dozen replacements: a procedure
 * of a hundred steps asks for some thousand units.
 */
const AS_PRINTED: ReadonlyMap<string, Unit> = new Map(
  [...BY_SYMBOL.keys()].flatMap((symbol): [string, Unit][] => {
    const found = BY_KEY.get(unitKey(symbol));
    return found === undefined ? [] : [[symbol, found]];
  }),
);

/** The unit that prints as `symbol`. */
export function unit(symbol: UnitSymbol): Unit {
  const found = BY_SYMBOL.get(symbol);
  if (found === undefined) throw new RangeError(`no unit prints as ${symbol}`);
  return found;
}

/** The unit that a shop means by this spelling; a `kg-m` is kgf·m, a `qt` the US one. */
export function findUnit(spelling: string): Unit | undefined {
  const exact = AS_PRINTED.get(spelling);
  if (exact !== undefined) return exact;
  // A millipascal must not fold into a megapascal, nor a milliohm into a megohm, nine powers of ten away.
  if (NOT_MEGA.has(spelling.trim())) return undefined;
  return BY_KEY.get(unitKey(spelling));
}

const NOT_MEGA: ReadonlySet<string> = new Set(['mPa', 'mΩ']);

/** Every unit, in the order of the table. */
export function allUnits(): readonly Unit[] {
  return [...BY_SYMBOL.values()];
}

/** Every spelling the tool knows, as its key, with the unit it stands for. */
export function allSpellings(): ReadonlyMap<string, Unit> {
  return BY_KEY;
}

/**
 * What all spellings of one unit have in common: case folded (but not of a single letter: `M` is no metre), every
 * dot, hyphen, asterisk or space between words one `·`, `per` a `/`, and one character each for micro, degree, quotes.
 */
export function unitKey(spelling: string): string {
  const plain = spelling
    .trim()
    .replace(/\.$/, '')
    .replace(/[μµ]/g, 'µ')
    .replace(/℃/g, '°C')
    .replace(/℉/g, '°F')
    .replace(/º/g, '°')
    .replace(/Ω/g, 'Ω')
    .replace(/''|[″”“]/g, '"')
    .replace(/[′’‘]/g, "'");
  const words = plain.split(/[\s·⋅•∙*.\-‐‑–−]/).filter((word) => word !== '');
  const joined = words.join('·').replace(/·?(?:·per·|\/)·?/g, '/');
  return joined.length === 1 ? joined : joined.toLowerCase();
}
