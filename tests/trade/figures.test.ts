/** Every figure: its example works, and a slip in any of its options is refused with a hint that gets the person on. */
import {readdirSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {describe, expect, test} from 'vitest';
import {formatQuantity} from '../../src/quantity/format.js';
import type {Quantity} from '../../src/quantity/model.js';
import type {Figure, Given} from '../../src/trade/figure.js';
import {FIGURES} from '../../src/trade/figures/registry.js';
import {insistOnWords, out, refusal} from './unwrap.js';

const FOLDER = fileURLToPath(new URL('../../src/trade/figures', import.meta.url));

test('every file of the folder is a figure of its name, listed once', () => {
  const files = readdirSync(FOLDER).map((file) => file.replace('.ts', ''));
  const names = FIGURES.map(({name}) => name);
  expect([...names, 'registry'].sort()).toEqual(files.sort());
});

/** Every option of every figure, with a call that has it. */
const OPTIONS = FIGURES.flatMap((figure) =>
  [...figure.options].map(([name, option]) => ({subject: figure.name, name, option, figure})),
);

function withTexts({example}: Figure, name: string, texts: readonly string[]): Given {
  return new Map([...example, [name, texts]]);
}

describe('every example', () => {
  test.each(FIGURES.map((figure) => ({subject: figure.name, figure})))('$subject', ({figure}) => {
    const worked = out(figure.work(figure.example));
    expect(worked.result.length).toBeGreaterThan(0);
    insistOnWords(worked.result);
    expect(worked.inputs.length).toBeGreaterThan(0);
    for (const text of [worked.formula, worked.source, figure.says]) expect(text.trim()).not.toBe('');
  });

  test.each(OPTIONS)('$subject --$name', ({figure, name, option}) => {
    expect(option.read(option.examples).ok).toBe(true);
    const alone = option.required ? figure.example : withTexts(figure, name, option.examples);
    insistOnWords(out(figure.work(alone)).result);
  });

  test('all options at once are worked out, or refused with a hint', () => {
    for (const {options, work} of FIGURES) {
      const worked = work(new Map([...options].map(([name, {examples}]) => [name, examples])));
      if (!worked.ok) expect(worked.hint).not.toBe('');
    }
  });
});

describe('a required option left out is asked for', () => {
  test.each(OPTIONS.filter(({option}) => option.required))('$subject --$name', ({figure, name}) => {
    const less = new Map([...figure.example].filter(([key]) => key !== name));
    const {says, hint} = refusal(figure.work(less));
    expect(says).toContain(`--${name} is missing`);
    expect(hint).toContain(`--${name} "`);
  });
});

/** The last two letters swapped, or the last one doubled where they are alike. */
function mistyped(name: string): string {
  const [last = '', before = ''] = [name.at(-1), name.at(-2)];
  return last === before ? `${name}${last}` : name.slice(0, -2) + last + before;
}

describe('a mistyped name gets the right one', () => {
  test.each(OPTIONS)('$subject --$name', ({figure, name}) => {
    const slip = mistyped(name);
    const {says, hint} = refusal(figure.work(withTexts(figure, slip, ['1 in'])));
    expect(says).toBe(`there is no option --${slip}`);
    expect(hint).toBe(`did you mean --${name}?`);
  });

  test('a name that is like none of them gets the list', () => {
    const [first] = FIGURES;
    const {hint} = refusal(first?.work(new Map([['xyzzyplugh', ['1']]])) ?? {ok: false, says: '', hint: ''});
    expect(hint).toContain('it takes --');
  });
});

/** The unit at the end of an example, where there is one. */
const UNIT = /(?<=\d)\s?(?:in|mm|cc|h|lbf·ft|lbf|ksi|°F|°)$/;

const WITH_UNIT = OPTIONS.filter(({option}) => option.examples.every((text) => UNIT.test(text)));

describe('a value without its unit is never guessed', () => {
  test('most options have a unit', () => expect(WITH_UNIT.length).toBeGreaterThan(90));

  test.each(WITH_UNIT)('$subject --$name', ({figure, name, option}) => {
    const {says, hint} = refusal(
      figure.work(withTexts(figure, name, [(option.examples[0] ?? '').replace(UNIT, '')])),
    );
    expect(says).toContain('has no unit');
    expect(hint).toMatch(/write/);
  });
});

/** Every quantity of a value: of limits, of a stack's parts. */
function quantitiesIn(value: unknown): Quantity[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('unit' in value && 'value' in value) return [value as Quantity];
  return Object.values(value).flatMap(quantitiesIn);
}

describe('what is given stands in the working', () => {
  test.each(WITH_UNIT)('$subject --$name', ({figure, name, option}) => {
    const given = option.required ? figure.example : withTexts(figure, name, option.examples);
    const {inputs} = out(figure.work(given));
    const stated = inputs.flatMap(({value}) =>
      typeof value === 'string' ? [value] : quantitiesIn(value).map(formatQuantity),
    );
    const read = option.read(option.examples);
    if (!read.ok) throw new Error(read.says);
    for (const one of quantitiesIn(read.value)) expect(stated.join('; ')).toContain(formatQuantity(one));
  });
});

describe('a unit of another kind, or none that is known, is refused with a hint', () => {
  test.each(WITH_UNIT)('$subject --$name', ({figure, name, option}) => {
    for (const unit of [' kg', ' hogshead']) {
      const text = (option.examples[0] ?? '').replace(UNIT, unit);
      const {says, hint} = refusal(figure.work(withTexts(figure, name, [text])));
      expect(says).not.toBe('');
      expect(hint).not.toBe('');
    }
  });
});

describe('nonsense is refused with a hint', () => {
  test.each(OPTIONS)('$subject --$name', ({figure, name}) => {
    for (const text of ['~~', '', '-', '\u001B[31m', '1e999', 'x'.repeat(5000), '9'.repeat(400)]) {
      const {hint} = refusal(figure.work(withTexts(figure, name, [text])));
      expect(hint).not.toBe('');
    }
  });
});

describe('an option given twice', () => {
  test.each(OPTIONS.filter(({option}) => !option.repeats))('$subject --$name', ({figure, name, option}) => {
    const text = option.examples[0] ?? '';
    expect(refusal(figure.work(withTexts(figure, name, [text, text]))).says).toContain('more than once');
  });
});

/** Slips of single forms, each with the hint that mends it. */
describe('forms of text', () => {
  const cases: readonly (readonly [string, Readonly<Record<string, string | readonly string[]>>, string])[] =
    [
      ['adapter', {torque: '85 lb'}, 'write lbf·ft or lbf·in'],
      ['adapter', {torque: '80–90 lbf·ft'}, 'give one value'],
      ['core-plug', {kind: 'cupp'}, 'did you mean cup?'],
      ['wear-limit', {rule: 'crankshaft-endplay'}, 'did you mean'],
      ['heat-to-fit', {material: 'gray-iron'}, 'did you mean grey-iron?'],
      ['heat-to-fit', {material: '900e-6/K'}, 'aluminium'],
      ['preload', {condition: 'oild'}, 'did you mean oiled?'],
      ['preload', {condition: 'Lubricated'}, 'did you mean oiled?'],
      ['wire-length', {spans: '2 2 2.5 in'}, 'part them by commas: 2, 2, 2.5 in'],
      ['fit', {fit: 'H7 g6'}, 'write H7/g6'],
      ['preload', {condition: '0.9'}, '0.15'],
      ['preload', {method: 'torque rench'}, 'did you mean torque wrench?'],
      ['tightening-order', {layout: 'grid 5'}, 'grid 2×5'],
      ['tightening-order', {layout: 'row 5000'}, 'row 6'],
      ['tightening-order', {layout: 'a: 0 0; b: 1'}, 'a: 0 0'],
      ['stack', {link: 'case: 1.750 in'}, 'write it as + case'],
      ['time-plan', {task: 'seal 20 min'}, 'seal: 20 min'],
      ['time-plan', {task: 'seal: 20 min, cure 24 h'}, 'wait TIME'],
      ['time-plan', {task: ['seal: 20 min', 'fill: 5 min, after sael']}, 'did you mean seal?'],
      ['time-plan', {task: 'seal: 20–30 min'}, 'write 20 min'],
      ['bearing-clearance', {bore: 'rear: 2.5013 in'}, 'same places'],
      ['guard-band', {reading: '3 kg'}, 'write it in in or mm'],
      ['guard-band', {reading: '2.4–2.5 in'}, 'write it as'],
      ['compression', {ratio: '9.5'}, 'it takes --bore'],
      ['chamber', {ratio: '9.5:1'}, 'without a unit'],
      ['crush', {}, 'give --height or --gap'],
    ];

  test.each(cases)('%s %j', (subject, changes, hint) => {
    const figure = FIGURES.find(({name}) => name === subject);
    if (figure === undefined) throw new Error(`no figure ${subject}`);
    const example =
      subject === 'crush' ? [...figure.example].filter(([name]) => name === 'bore') : [...figure.example];
    const changed = Object.entries(changes).map(
      ([name, texts]) => [name, typeof texts === 'string' ? [texts] : texts] as const,
    );
    expect(refusal(figure.work(new Map([...example, ...changed]))).hint).toContain(hint);
  });
});

describe('forms that are read', () => {
  const cases: readonly (readonly [string, Readonly<Record<string, readonly string[]>>, string])[] = [
    ['heat-to-fit', {material: ['6.8e-6/°F']}, 'as stated, 12.2 µm/m·K (6.8 µin/in·°F)'],
    ['heat-to-fit', {material: ['12.3e-6/K']}, 'as stated, 12.3 µm/m·K (6.8 µin/in·°F)'],
    ['preload', {condition: ['K = 0.18']}, '0.18 (as stated)'],
    ['tightening-order', {layout: ['circle 6']}, '6'],
    ['tightening-order', {layout: ['a: 0 0; b: 40 0; c: -40.5 0']}, '3'],
    ['stack', {link: ['+ case: 1.750 ±0.003 in', '- 0.5 × cone: 0.750 in']}, '-0.5 × cone'],
    ['fit', {size: ['25 mm'], fit: ['H7/k6']}, 'H7/k6'],
  ];

  test.each(cases)('%s %j', (subject, changes, shown) => {
    const figure = FIGURES.find(({name}) => name === subject);
    if (figure === undefined) throw new Error(`no figure ${subject}`);
    const worked = out(figure.work(new Map([...figure.example, ...Object.entries(changes)])));
    expect(worked.inputs.flatMap(({name, value}) => [name, value])).toContain(shown);
  });
});
