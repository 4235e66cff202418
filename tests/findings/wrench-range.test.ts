/**
 * A torque wrench whose range has the unit of something else: told at the tool, once, and not at every torque.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  cover: {}
fasteners:
  studs: {holds: [cover], torque: 5 N·m, threads: dry, lock: {value: none, because: they seat}}
  nuts: {holds: [cover], torque: 10 N·m, threads: dry, lock: {value: none, because: the gasket grips}}
`;
const found = (tools: string, using: string, more = '') =>
  check(
    book({
      shop: `shop: {name: Shop}\nsources: {house: {title: House, note: invented}}\nsource: house\ntools:\n${tools}`,
      engine: ENGINE,
      procedures: {
        'procedure.md': `
1. Set the cover on. \`install: cover\`
2. Tighten the studs to 5 N·m. \`torque: studs to 5 N·m using ${using}\`
3. Tighten the nuts to 10 N·m. \`torque: nuts to 10 N·m using ${using}\`
${more}`,
      },
    }),
  ).findings.map(({name, where, message}) => `${where.file} ${name}: ${message}`);
const SMALL = '  small: {name: 1/4 in torque wrench, range: 4–25 mm}\n';
const BIG = '  big: {range: 20–120 N·m}\n';
const says = (tool: string, is: string) =>
  `shop.yaml unit-wrong-kind: the range of ${tool} is ${is} where a torque is due, for it is a torque wrench; write it in lbf·ft, lbf·in or N·m`;

describe('the range of a torque wrench', () => {
  it.each([
    ['named as one', SMALL + BIG, 'small', says('small', 'a length')],
    ['by its id', '  torque-wrench: {range: 4–25 °}\n', 'torque-wrench', says('torque-wrench', 'an angle')],
    [
      'with a resolution',
      SMALL.replace('mm}', 'mm, resolution: 0.5 N·m}'),
      'small',
      says('small', 'a length'),
    ],
    ['that is only used as one', '  small: {range: 4–25 mm}\n', 'small', says('small', 'a length')],
    [
      'with a holder',
      '  small: {range: 4–25 bar}\n  holder: {}\n',
      'small, holder',
      says('small', 'a pressure'),
    ],
  ])('%s is told once', (_, tools, using, message) => {
    expect(found(tools, using)).toEqual([message]);
  });

  it.each([
    ['of torques', '  small: {name: torque wrench, range: 4–25 N·m}\n', 'small', ''],
    [
      'of the angle gauge beside it',
      '  small: {range: 4–25 N·m}\n  dial: {range: 0–360°}\n',
      'small, dial',
      '',
    ],
    ['of an angle gauge alone', '  dial: {range: 0–360°}\n', 'dial', ''],
    [
      'of a gauge that reads elsewhere',
      '  stretch: {range: 0–5 mm}\n',
      'stretch',
      '4. Look at the cover. `inspect: cover using stretch for gaps`\n',
    ],
  ])('%s is not', (_, tools, using, more) => {
    expect(found(tools, using, more)).toEqual([]);
  });
});
