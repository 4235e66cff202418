/** Generated clean books are silent, and a fault in one is caught: the benchmark in small. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {excuse} from './excuses.js';
import {generatedClean} from './generated.js';
import {faultsOf, tallies} from './run.js';

describe('generated books', () => {
  it('are silent when clean', () => {
    fc.assert(
      fc.property(fc.integer({min: 1, max: 100_000}), (seed) => {
        const {findings} = check(generatedClean(seed, 8));
        expect(findings.map(({name, message}) => `${name}: ${message}`)).toEqual([]);
      }),
      {numRuns: 20},
    );
  });

  it('let no single fault through', () => {
    const book = generatedClean(7, 12);
    expect(faultsOf(book).length).toBeGreaterThan(150);
    expect(tallies(book, excuse).flatMap(({misses}) => misses)).toEqual([]);
  });
});
