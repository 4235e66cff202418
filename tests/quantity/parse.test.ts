/** Reading amounts: every form that shops write, every fault with its place, and text that nobody would write. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import type {Amount, AmountFault, Dimension, Quantity} from '../../src/quantity/model.js';
import {readAmount, readAmounts} from '../../src/quantity/parse.js';
import {unit} from '../../src/quantity/units.js';

/** `85 lbf·ft /1`: value, unit and step, short enough for a table. */
function shown(q: Quantity): string {
  return `${q.value} ${q.unit.symbol} /${q.step}`;
}

function told(amount: Amount): string {
  switch (amount.form) {
    case 'single':
      return shown(amount.value);
    case 'most':
      return `≤ ${shown(amount.high)}`;
    case 'least':
      return `≥ ${shown(amount.low)}`;
    case 'range':
      return `${shown(amount.low)} … ${shown(amount.high)}`;
    case 'tolerance':
      return `${shown(amount.nominal)} − ${shown(amount.minus)} + ${shown(amount.plus)}`;
  }
}

function checkReads(text: string, expected: string, due?: Dimension): void {
  const reading = readAmount(text, due);
  expect([text, reading.ok ? told(reading.amount) : reading.fault]).toEqual([text, expected]);
}

/** The caret line below the text marks the span of the fault. */
function checkFault(
  text: string,
  carets: string,
  name: AmountFault['name'],
  hint: RegExp,
  due?: Dimension,
): void {
  const reading = readAmount(text, due);
  const fault = reading.ok ? undefined : reading.fault;
  const span = {start: carets.indexOf('^'), end: carets.lastIndexOf('^') + 1};
  expect([text, fault?.name, fault?.span]).toEqual([text, name, span]);
  expect(`${fault?.says}; ${fault?.hint}`).toMatch(hint);
}

describe('forms', () => {
  test.each([
    ['85 lbf·ft', '85 lbf·ft /1'],
    ['  85lbf·ft  ', '85 lbf·ft /1'],
    ['85 ft-lb', '85 lbf·ft /1'],
    ['85 lb-ft', '85 lbf·ft /1'],
    ['115 N·m', '115 N·m /1'],
    ['1020 in-lb', '1020 lbf·in /1'],
    ['12 kgf·m', '12 kgf·m /1'],
    ['12 kg-m', '12 kgf·m /1'],
    ['1,250 N', '1250 N /1'],
    ['1,250.5 N', '1250.5 N /0.1'],
    ['12,345,678 N', '12345678 N /1'],
    ['90°', '90 ° /1'],
    ['24 h', '24 h /1'],
    ['10 thou', '10 thou /1'],
    ['.0015 in', '0.0015 in /0.0001'],
    ['0.0150 in', '0.015 in /0.0001'],
    ['1.5in', '1.5 in /0.1'],
    ['1-1/2 in', '1.5 in /0'],
    ['1 1/2 in', '1.5 in /0'],
    ['1½ in', '1.5 in /0'],
    ['1-½"', '1.5 in /0'],
    ['1-1/8"', '1.125 in /0'],
    ['½ in', '0.5 in /0'],
    ['3/4 in', '0.75 in /0'],
    ['4/2 in', '2 in /1'],
    ['−40 °F', '-40 °F /1'],
    ['-40 °C', '-40 °C /1'],
    ['7 qt', '7 US qt /1'],
    ['29.9 in. Hg', '29.9 inHg /0.1'],
    ['5 pounds per square inch', '5 psi /1'],
  ])('single: %s', (text, expected) => checkReads(text, expected));

  test.each([
    '0.0015–0.0025 in',
    '0.0015-0.0025 in',
    '0.0015 - 0.0025 in',
    '0.0015..0.0025 in',
    '0.0015...0.0025 in',
    '0.0015 … 0.0025 in',
    '0.0015 to 0.0025 in',
    '.0015-.0025"',
    '0.0015 in to 0.0025 in',
    '0.0015 in – 0.0025',
  ])('range: %s', (text) => checkReads(text, '0.0015 in /0.0001 … 0.0025 in /0.0001'));

  test.each([
    ['1-1/2 to 1-3/4 in', '1.5 in /0 … 1.75 in /0'],
    ['1-1/2-1-3/4 in', '1.5 in /0 … 1.75 in /0'],
    ['1/4-1/2 in', '0.25 in /0 … 0.5 in /0'],
    ['20-150 lbf·ft', '20 lbf·ft /1 … 150 lbf·ft /1'],
    ['12.3 in. to 12.5 in.', '12.3 in /0.1 … 12.5 in /0.1'],
    ['5 in..6 in', '5 in /1 … 6 in /1'],
    ['1 in to 30 mm', '1 in /1 … 30 mm /1'],
    ['-40 to -20 °C', '-40 °C /1 … -20 °C /1'],
    ['−40–−20 °C', '-40 °C /1 … -20 °C /1'],
  ])('range: %s', (text, expected) => checkReads(text, expected));

  test.each([
    ['2.4995 ±0.0005 in', '2.4995 in /0.0001 − 0.0005 in /0.0001 + 0.0005 in /0.0001'],
    ['2.4995 in ±0.0005', '2.4995 in /0.0001 − 0.0005 in /0.0001 + 0.0005 in /0.0001'],
    ['2.4995 ± 0.0005 in', '2.4995 in /0.0001 − 0.0005 in /0.0001 + 0.0005 in /0.0001'],
    ['2.4995 +/-0.0005 in', '2.4995 in /0.0001 − 0.0005 in /0.0001 + 0.0005 in /0.0001'],
    ['2.5 in ±1 thou', '2.5 in /0.1 − 1 thou /1 + 1 thou /1'],
    ['1.000 +0.001/-0.000 in', '1 in /0.001 − 0 in /0.001 + 0.001 in /0.001'],
    ['1.000 +0.001/−0.000 in', '1 in /0.001 − 0 in /0.001 + 0.001 in /0.001'],
    ['1.000 in +0.001/-0.000', '1 in /0.001 − 0 in /0.001 + 0.001 in /0.001'],
    ['1.000 in +0.001 -0.000', '1 in /0.001 − 0 in /0.001 + 0.001 in /0.001'],
    ['1.000 -0.000/+0.001 in', '1 in /0.001 − 0 in /0.001 + 0.001 in /0.001'],
    ['1.000 +0.002/+0.001 in', '1 in /0.001 − -0.001 in /0.001 + 0.002 in /0.001'],
    ['1.000 -0.001/-0.002 in', '1 in /0.001 − 0.002 in /0.001 + -0.001 in /0.001'],
    ['80 °C ±5 °C', '80 °C /1 − 5 °C /1 + 5 °C /1'],
    ['85 lbf·ft ±5 %', '85 lbf·ft /1 − 4.25 lbf·ft /0.01 + 4.25 lbf·ft /0.01'],
    ['85 ±5% lbf·ft', '85 lbf·ft /1 − 4.25 lbf·ft /0.01 + 4.25 lbf·ft /0.01'],
  ])('tolerance: %s', (text, expected) => checkReads(text, expected));

  test.each([
    ['max 5 lbf·ft', '≤ 5 lbf·ft /1'],
    ['Max. 5 lbf·ft', '≤ 5 lbf·ft /1'],
    ['maximum 5 lbf·ft', '≤ 5 lbf·ft /1'],
    ['≤ 5 lbf·ft', '≤ 5 lbf·ft /1'],
    ['<= 5 lbf·ft', '≤ 5 lbf·ft /1'],
    ['up to 5 lbf·ft', '≤ 5 lbf·ft /1'],
    ['at most 5 lbf·ft', '≤ 5 lbf·ft /1'],
    ['no more than 5 lbf·ft', '≤ 5 lbf·ft /1'],
    ['5 lbf·ft max', '≤ 5 lbf·ft /1'],
    ['5 lbf·ft max.', '≤ 5 lbf·ft /1'],
    ['5 lbf·ft or less', '≤ 5 lbf·ft /1'],
    ['min 5 lbf·ft', '≥ 5 lbf·ft /1'],
    ['minimum 5 lbf·ft', '≥ 5 lbf·ft /1'],
    ['≥5 lbf·ft', '≥ 5 lbf·ft /1'],
    ['at least 5 lbf·ft', '≥ 5 lbf·ft /1'],
    ['5 lbf·ft min.', '≥ 5 lbf·ft /1'],
    ['5 lbf·ft or more', '≥ 5 lbf·ft /1'],
    ['min 5 min', '≥ 5 min /1'],
    ['10 min max', '≤ 10 min /1'],
  ])('one limit: %s', (text, expected) => checkReads(text, expected));
});

describe('faults', () => {
  test('bare lb, ft, kg where a torque is due is never guessed at', () => {
    checkFault(
      '85 lb',
      '   ^^',
      'unit-wrong-kind',
      /lb is a mass where a torque is due; write lbf·ft/,
      'torque',
    );
    checkFault('85 lbs', '   ^^^', 'unit-wrong-kind', /lbs is a mass.*lbf·ft/, 'torque');
    checkFault(
      '85 ft',
      '   ^^',
      'unit-wrong-kind',
      /ft is a length where a torque is due; write lbf·ft/,
      'torque',
    );
    checkFault(
      '12 kg',
      '   ^^',
      'unit-wrong-kind',
      /kg is a mass where a torque is due; write kgf·m/,
      'torque',
    );
    checkFault('max 85 lb', '       ^^', 'unit-wrong-kind', /lbf·ft/, 'torque');
  });

  test('a missing unit is asked for in the units of what is due', () => {
    checkFault('85', '^^', 'unit-missing', /85 has no unit where a torque is due; .*lbf·ft.*N·m/, 'torque');
    checkFault('0.0015–0.0025', '^^^^^^^^^^^^^', 'unit-missing', /in or mm/, 'length');
    checkFault('max 5', '^^^^^', 'unit-missing', /no unit/);
  });

  test('a unit of another kind', () => {
    checkFault('24 h', '   ^', 'unit-wrong-kind', /h is a time where an angle is due; write °/, 'angle');
    checkFault('0.010 min', '      ^^^', 'unit-wrong-kind', /put min before the number/, 'length');
    checkFault('5 oz', '  ^^', 'unit-wrong-kind', /write US fl oz/, 'volume');
    checkFault('30 lb', '   ^^', 'unit-wrong-kind', /write lbf$/, 'force');
    checkFault('5 in to 6 N·m', '  ^^', 'unit-wrong-kind', /in is a length where a torque is due/);
  });

  test('a word that is no unit gets the nearest one', () => {
    checkFault(
      '0.90 mn',
      '     ^^',
      'unit-wrong-kind',
      /mn is no unit of length; did you mean mm\?/,
      'length',
    );
    checkFault('0.90 mn', '     ^^', 'unit-wrong-kind', /mn is not a unit; did you mean mm\?/);
    checkFault('85 lbf·fy', '   ^^^^^^', 'unit-wrong-kind', /did you mean lbf·ft/, 'torque');
    checkFault(
      '85 ft/lb',
      '   ^^^^^',
      'unit-wrong-kind',
      /ft\/lb is no unit of torque; did you mean lbf·ft/,
      'torque',
    );
    checkFault('5 frobs', '  ^^^^^', 'unit-wrong-kind', /frobs is not a unit/);
  });

  test('forms that cannot be read, or could be read two ways', () => {
    checkFault('0.0025–0.0015 in', '^^^^^^^^^^^^^^^^', 'amount-form', /lower limit stands above/);
    checkFault('1–1/2 in', '^^^^^^^^', 'amount-form', /lower limit stands above/);
    checkFault('0,05 mm', '^^^^', 'amount-form', /decimal with a point/);
    checkFault('1,25 in', '^^^^', 'amount-form', /decimal with a point/);
    checkFault('1/0 in', '^^^', 'amount-form', /divides by nought/);
    checkFault('2.5 in +0.001', '       ^^^^^^', 'amount-form', /one side only/);
    checkFault('20-40-60 lbf·ft', '     ^^^^^^^^^^', 'amount-form', /cannot be read/);
    checkFault('1 h 30 min', '    ^^^^^^', 'amount-form', /cannot be read/);
    checkFault('40 psi at 2000 rpm', '       ^^^^^^^^^^^', 'amount-form', /cannot be read/);
    checkFault('about 5 in', '^^^^^^^^^^', 'amount-form', /does not start with a number/);
    checkFault('±0.5 in', '^^^^^^^', 'amount-form', /does not start with a number/);
    checkFault('2.5 ± in', '      ^^', 'amount-form', /does not start with a number/);
    checkFault('1234567890123456 in', '^^^^^^^^^^^^^^^^', 'amount-form', /too many figures/);
  });

  test.each(['', '   ', 'max', 'min ', '-', '5 -', '5 to'])('nothing to read in "%s"', (text) => {
    const reading = readAmount(text);
    expect(reading.ok).toBe(false);
    expect(reading.ok ? '' : reading.fault.says).toMatch(/no value|number|unit/);
  });
});

describe('lists', () => {
  function checkList(text: string, expected: readonly string[], inherit?: 'lbf·ft'): void {
    const list = readAmounts(text, 'torque', inherit && unit(inherit));
    const got = list.map(({span, reading}) =>
      reading.ok ? `${text.slice(span.start, span.end)}: ${told(reading.amount)}` : reading.fault.says,
    );
    expect(got).toEqual(expected);
  }

  test('a unit is inherited from the last entry, or from a given one', () => {
    checkList('30, 60, 85 lbf·ft', ['30: 30 lbf·ft /1', '60: 60 lbf·ft /1', '85 lbf·ft: 85 lbf·ft /1']);
    checkList('30, 60, 85', ['30: 30 lbf·ft /1', '60: 60 lbf·ft /1', '85: 85 lbf·ft /1'], 'lbf·ft');
    checkList('30,60,85', ['30: 30 lbf·ft /1', '60: 60 lbf·ft /1', '85: 85 lbf·ft /1'], 'lbf·ft');
    checkList('40 N·m, 80 N·m', ['40 N·m: 40 N·m /1', '80 N·m: 80 N·m /1'], 'lbf·ft');
    checkList('30 lbf·ft, 60', ['30 lbf·ft: 30 lbf·ft /1', '60: 60 lbf·ft /1']);
    checkList('340, 1,020 in-lb', ['340: 340 lbf·in /1', '1,020 in-lb: 1020 lbf·in /1']);
  });

  test('without any unit, every entry misses it', () => {
    checkList('30, 60', ['30 has no unit where a torque is due', '60 has no unit where a torque is due']);
  });

  test('one bad entry does not hide the others, and its place is in the list', () => {
    const text = '30, 6o, 85 lbf·ft';
    const list = readAmounts(text, 'torque');
    expect(list.map(({reading}) => reading.ok)).toEqual([true, false, true]);
    const [, bad] = list;
    const fault = bad?.reading.ok === false ? bad.reading.fault : undefined;
    expect(text.slice(fault?.span.start, fault?.span.end)).toBe('o');
    checkList('30, , 85 N·m', ['30: 30 N·m /1', 'there is no value here', '85 N·m: 85 N·m /1']);
  });

  test('commas without spaces that could also group a number are asked about', () => {
    checkList('100,150,200 N·m', ['"100,150,200 N·m" is one number or several']);
  });
});

describe('any text', () => {
  const alphabet = fc.string({
    unit: fc.constantFrom(
      ...'0123456789.,-–−±+/ °"µ½lbftinNmkgpsmaxto·%<≤'.split(''),
      'max ',
      ' to ',
      'lbf·ft',
      '\n',
    ),
    maxLength: 40,
  });

  test('is read or refused with a span inside it, and reading twice gives the same', () => {
    fc.assert(
      fc.property(
        fc.oneof(alphabet, fc.string()),
        fc.constantFrom('torque', 'length', undefined),
        (text, due) => {
          const faults = [readAmount(text, due), ...readAmounts(text, due).map(({reading}) => reading)];
          for (const reading of faults) {
            if (reading.ok) continue;
            const {start, end} = reading.fault.span;
            expect(start >= 0 && start <= end && end <= text.length).toBe(true);
          }
          expect(readAmount(text, due)).toEqual(faults[0]);
        },
      ),
      {numRuns: 3000},
    );
  });

  test('what is read has finite numbers, and the dimension that was due', () => {
    fc.assert(
      fc.property(alphabet, (text) => {
        const reading = readAmount(text, 'length');
        if (!reading.ok) return;
        for (const part of Object.values(reading.amount)) {
          if (typeof part === 'string') continue;
          expect([part.unit.dimension, Number.isFinite(part.value), Object.is(part.value, -0)]).toEqual([
            'length',
            true,
            false,
          ]);
        }
      }),
      {numRuns: 3000},
    );
  });

  test.each([
    ['spaces', (n: number) => `5${' '.repeat(n)}x`],
    ['digits', (n: number) => '5'.repeat(n)],
    ['groups', (n: number) => '1,'.repeat(n)],
    ['letters', (n: number) => `5 ${'a'.repeat(n)}`],
    ['dashes', (n: number) => `5 in${'-'.repeat(n)}`],
    ['words', (n: number) => `5 ${'in '.repeat(n)}`],
  ])('a megabyte of %s is refused', (_, make) => {
    expect(readAmount(make(1_000_000)).ok).toBe(false);
  });
});
