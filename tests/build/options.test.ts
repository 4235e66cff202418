/** For which engines a step is: options asked for by groups, of each of which an engine must have one. */
import {expect, it} from 'vitest';
import {type Condition, holds, impliesOneOf} from '../../src/build/options.js';

it.each<readonly [Condition, readonly string[], holds: boolean]>([
  [[], [], true],
  [[['keel']], [], false],
  [[['keel']], ['keel'], true],
  [[['keel', 'sail']], ['sail'], true],
  [[['keel'], ['sail']], ['sail'], false],
  [[['keel'], ['sail']], ['sail', 'keel'], true],
])('%j holds with %j: %s', (condition, options, expected) => {
  expect(holds(condition, new Set(options))).toBe(expected);
});

it.each<readonly [Condition, readonly string[], implies: boolean]>([
  [[], ['keel'], false],
  [[['keel']], ['keel'], true],
  [[['keel', 'sail']], ['keel'], false],
  [[['keel', 'sail']], ['keel', 'sail', 'oars'], true],
  [[['keel', 'sail'], ['oars']], ['oars'], true],
  [[['keel'], ['sail']], ['oars'], false],
])('%j asks for one of %j: %s', (condition, options, expected) => {
  expect(impliesOneOf(condition, options)).toBe(expected);
});
