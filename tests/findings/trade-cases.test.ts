/** Common practice of the trade, case by case: the mistake is found and named, and the same book put right is silent. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {exampleBook} from '../help/example.js';
import {TRADE_CASES} from './trade-cases.js';

describe.each(TRADE_CASES)('$fact', (one) => {
  it(`is found as ${one.finding} on ${one.item}`, () => {
    const {findings} = check(exampleBook(one, 'wrong'));
    const named = findings.filter(({name, item}) => name === one.finding && item === one.item);
    expect(named.length).toBeGreaterThan(0);
    expect(findings.length).toBeLessThanOrEqual(3);
  });

  it('is silent when put right', () => {
    const {findings} = check(exampleBook(one, 'right'));
    expect(findings.map(({name, message}) => `${name}: ${message}`)).toEqual([]);
  });
});
