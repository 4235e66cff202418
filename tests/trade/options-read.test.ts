/** What options of figures read and refuse at the edge of their forms, with the whole refusal. */
import {describe, expect, test} from 'vitest';
import {answer, asked, askedAlone, inputsOf, refused} from './ask.js';

describe('plain numbers', () => {
  test.each([
    ['−3', '-3 passes are not tabled; take one to four'],
    ['0x2', '--count: "0x2" is not a plain number; write it as 3, without a unit'],
    ['2e0', '--count: "2e0" is not a plain number; write it as 3, without a unit'],
    ['Infinity', '--count: "Infinity" is not a plain number; write it as 3, without a unit'],
  ])('%s passes are refused', (count, says) => expect(refused(asked('passes', {count}))).toBe(says));

  test('none at all is a blank', () => {
    expect(refused(asked('passes', {count: []}))).toBe(
      '--count: "" is not a plain number; write it as 3, without a unit',
    );
  });

  test.each([
    ['+2', '50, 100 % of the final torque'],
    ['2.', '50, 100 % of the final torque'],
  ])('%s passes', (count, formula) => {
    expect(asked('passes', {count})).toMatchObject({ok: true, formula});
  });

  test.each([
    ['.5', 'preload: 50 % of proof load, SAE J429 grade 5'],
    ['.75', 'preload: 75 % of proof load, SAE J429 grade 5'],
  ])('a share of %s', (share, says) => expect(inputsOf(asked('torque', {share}))).toContain(says));
});

describe('lists', () => {
  test.each([
    [
      ' 0.010   0.020 in ',
      '--grinds: "0.020 in" cannot be read as part of a value; part them by commas: 0.010, 0.020 in',
    ],
    [' 0.010 kg ', '--grinds: kg is a mass where a length is due; write in or mm'],
    ['0.010–0.020, 0.030 in', '--grinds: limits were given where a length is due; give one value'],
    ['1/0 in', '--grinds: 1/0 divides by nought; write a fraction as 1/2, or 1-1/2'],
  ])('"%s"', (grinds, says) => expect(refused(asked('undersize', {grinds}))).toBe(says));
});

describe('one quantity, of a length or of anything', () => {
  test.each([
    ['crush', {bore: '1/0 in'}, '--bore: 1/0 divides by nought; write a fraction as 1/2, or 1-1/2'],
    [
      'guard-band',
      {reading: '1/0 in'},
      '--reading: 1/0 divides by nought; write a fraction as 1/2, or 1-1/2',
    ],
    ['guard-band', {reading: '2.4992'}, '--reading: 2.4992 has no unit; write the unit after the number'],
  ])('%s %j', (subject, texts, says) => expect(refused(asked(subject, texts))).toBe(says));
});

describe('links of a stack', () => {
  const NO_LINK =
    '--link: the size has no sign and name; write it as + case: 1.750 ±0.003 in, or - shaft: 0.750 in';

  test.each(['case: 1.750 in', 'the + case: 1.750 in', '+ : 1.750 in', '+ gear\ncase: 1.750 in', '1.750 in'])(
    '%j is none',
    (link) => expect(refused(asked('stack', {link}))).toBe(NO_LINK),
  );

  test.each([
    [' + case : 1.750 in', '+ case: 1.750 in'],
    ['-shaft: 0.750 in', '− shaft: 0.750 in'],
    ['- 10.25 × cone: 0.010 in', '-10.25 × cone: 0.010 in'],
    ['+ 2× shim: 0.010 in', '2 × shim: 0.010 in'],
    ['+ 2 ×shim: 0.010 in', '2 × shim: 0.010 in'],
    ['+ 2×shim: 0.010 in', '2 × shim: 0.010 in'],
    ['+ 2 * shim: 0.010 in', '2 × shim: 0.010 in'],
    ['+ 2 shims: 0.010 in', '+ 2 shims: 0.010 in'],
  ])('%j is read as %s', (link, told) => {
    expect(inputsOf(askedAlone('stack', {link}))[0]).toBe(told);
  });
});

describe('what is on the threads', () => {
  const NO_CONDITION =
    'write one of dry, oiled, zinc-plated, cadmium-plated, anti-seize, not stated, or a nut factor such as 0.18';

  test.each([
    [' xyzzyplugh ', `--condition: "xyzzyplugh" is no condition of threads; ${NO_CONDITION}`],
    ['.1k8', `--condition: ".1k8" is no condition of threads; ${NO_CONDITION}`],
    ['0.18 k', `--condition: "0.18 k" is no condition of threads; ${NO_CONDITION}`],
    ['not lubricated', `--condition: "not lubricated" is no condition of threads; ${NO_CONDITION}`],
    ['greased', '--condition: "greased" is no condition of threads; did you mean oiled?'],
    [
      'lubricated with what was in the can',
      '--condition: "lubricated with what was in t…" is no condition of threads; did you mean oiled?',
    ],
  ])('"%s" is refused', (condition, says) => expect(refused(asked('torque', {condition}))).toBe(says));

  test.each(['k .18', 'k=.18', 'K = 0.18', 'k  =  .18', '.18'])('"%s" is a nut factor', (condition) => {
    expect(inputsOf(asked('torque', {condition}))).toContain('nut factor K: 0.18 (as stated)');
  });
});

describe('readings of a bearing by place', () => {
  test('blanks round the name of a place are none of it', () => {
    expect(
      answer(askedAlone('bearing-clearance', {journal: ' front : 2.4990 in', bore: 'front: 2.5010 in'})),
    ).toEqual(['front, clearance: 0.0020–0.0020 in']);
  });

  test.each([
    [
      {journal: 'front: 2.4990 in', bore: ['front: 2.5010 in', '2.5012 in']},
      'no journal was read at the bearing; give --journal and --bore for the same places',
    ],
    [
      {journal: ['front: 2.4990 in', ': 2.4990 in'], bore: 'front: 2.5010 in'},
      'no bore was read at the bearing; give --journal and --bore for the same places',
    ],
  ])('%j', (texts, says) => expect(refused(asked('bearing-clearance', texts))).toBe(says));
});

describe('what the options say together', () => {
  test.each([
    [
      'compression',
      {bore: '100 mm', stroke: '100 mm', chamber: '78.5 cc', 'gasket-bore': '102 mm'},
      '--gasket-bore is given without --gasket; give the thickness of the gasket too',
    ],
    [
      'chamber',
      {bore: '100 mm', stroke: '100 mm', ratio: '10', 'gasket-bore': '102 mm'},
      '--gasket-bore is given without --gasket; give the thickness of the gasket too',
    ],
    [
      'torque',
      {thread: 'M10', condition: 'oiled', grade: 'SAE 3'},
      '"SAE 3" is not a grade in the tables; they have 1, 2, 4, 5, 5.2, 7, 8, 8.2, 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9; or write yield 36 ksi',
    ],
    [
      'limits',
      {size: '25 mm', class: 'Hg7'},
      '--class: "Hg7" is no tolerance class; write capitals for a hole, H7, small letters for a shaft, g6',
    ],
  ])('%s %j', (subject, texts, says) => expect(answer(askedAlone(subject, texts)).join('; ')).toBe(says));
});
