/** For how long an answer holds by the calendar: over all findings, so that a new one that judges by the date is noticed. */
import {describe, expect, test} from 'vitest';
import {check} from '../../src/findings/check.js';
import {lastDateOf} from '../../src/findings/date-bound.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {book, EXAMPLE_SHOP, exampleBook} from '../help/example.js';

const DAYS = ['1999-12-31', '2026-01-31', '2026-02-01', '2026-02-02', '2026-03-01', '2099-01-01'];

const EXAMPLES = FINDINGS.flatMap(({name, example}) => (example ? [[name, example] as const] : []));

test.each(EXAMPLES)('%s says the same up to the last date', (_, example) => {
  for (const side of ['wrong', 'right'] as const) {
    const made = exampleBook(example, side);
    for (const today of DAYS) {
      const last = lastDateOf(made.spec, today);
      const {findings} = check(made, {today});
      const holds = DAYS.filter((day) => day > today && (last === undefined || day <= last));
      for (const day of holds)
        expect(check(made, {today: day}).findings, `${today}, ${day}`).toEqual(findings);
    }
  }
});

describe('a gauge that was due', () => {
  const SHOP = EXAMPLE_SHOP.replace(
    'tools:\n',
    'tools:\n  dial: {name: dial, gauge: true, due: 2026-02-01}\n  press: {name: press, due: 2026-02-01}\n',
  );
  const CAM = `
parts:
  block: {given: true}
  cam: {using: [press]}
  plug: {using: [press, dial]}
surfaces:
  bores: {on: block, assembly: clean}
fits:
  play: {between: [cam], limits: 0.001–0.009 in, using: [dial], when: {installed: []}}
checks:
  turns: {expect: freely, using: [dial]}
`;
  const late = (front: string, step: string, today?: string) => {
    const text = `---\ntitle: T\nrevision: A\n${front}---\n\n1. Do it. \`${step}\`\n`;
    const whole = book({engine: CAM, shop: SHOP, procedures: {'procedure.md': text}});
    return check(whole, {...(today && {today})})
      .findings.filter(({name}) => name === 'calibration-due')
      .map(({message}) => message.replace(/ was due for calibration on 2026-02-01, and/, ':'));
  };

  test.each([
    ['date: 2026-03-01\n', 'measure: play', '2026-06-01', ['dial: today is 2026-06-01']],
    ['date: 2026-03-01\n', 'measure: play', '2026-02-02', ['dial: today is 2026-02-02']],
    ['date: 2026-03-01\n', 'measure: play', '2026-02-01', ['dial: the procedure is of 2026-03-01']],
    ['date: 2026-03-01\n', 'measure: play', undefined, ['dial: the procedure is of 2026-03-01']],
    ['date: 2026-02-01\n', 'measure: play', undefined, []],
    ['', 'measure: play', undefined, []],
    ['date: 2026-02-01\n', 'check: turns', '2026-06-01', ['dial: today is 2026-06-01']],
    ['date: 2026-02-01\n', 'install: cam', '2026-06-01', ['press: today is 2026-06-01']],
    ['date: 2026-02-01\n', 'install: plug', '2026-06-01', []],
    ['date: 2026-02-01\n', 'clean: bores', '2026-06-01', []],
    [
      'date: 2026-02-01\n',
      'clean: bores using dial, press, hammer',
      '2026-06-01',
      ['dial: today is 2026-06-01', 'press: today is 2026-06-01'],
    ],
  ])('by %j, in the step %s, on %s', (front, step, today, due) => {
    expect(late(front, step, today)).toEqual(due);
  });
});

describe('the last date', () => {
  const specOf = (...dues: readonly string[]) => {
    const tools = dues.map((due, index) => `  gauge-${index}: {name: gauge, gauge: true, due: ${due}}\n`);
    const shop = EXAMPLE_SHOP.replace('tools:\n', `tools:\n${tools.join('')}`);
    return book({shop, engine: '', procedures: {}}).spec;
  };

  test.each([
    ['no calibration', [], undefined],
    ['the first that runs out', ['2026-09-01', '2026-07-01'], '2026-07-01'],
    ['on the very day', ['2026-06-01'], '2026-06-01'],
    ['today alone, where one has run out', ['2026-09-01', '2026-05-31'], '2026-06-01'],
  ])('%s', (_, dues, last) => {
    expect(lastDateOf(specOf(...dues), '2026-06-01')).toBe(last);
  });
});
