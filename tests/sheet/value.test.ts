/** Amounts as a sheet prints them where that is not what `formatAmount` says: the reach of tools. */
import {describe, expect, test} from 'vitest';
import {printedReach} from '../../src/sheet/value.js';
import {ENGLISH} from '../../src/sheet/words.js';
import {amount} from '../help/amount.js';
import {book} from '../help/example.js';

const {spec} = book({engine: 'parts:\n  pump: {}\n', procedures: {'one.md': '1. Look.\n'}});

/** Millimetres of an inch, newton metres of a pound-foot by definition (NIST SP 811, appendix B.8), rounded inwards. */
describe('the reach of a tool in the other system', () => {
  test.each([
    ['2–6 in', '51–152 mm'],
    ['0–1 in', '0–25 mm'],
    ['1–4 in', '26–101 mm'],
    ['1.4–6 in', '36–152 mm'],
    ['0–0.060 in', '0.00–1.52 mm'],
    ['30–150 lbf·ft', '41–203 N·m'],
    ['0–360°', undefined],
  ])('%s is %s', (text, other) => {
    expect(printedReach(amount(text), {spec, words: ENGLISH}).also).toBe(other);
  });
});
