/** Prose from a stranger: whatever stands in it, reading it ends, throws nothing, and points into the text. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {commandsIn} from '../../src/findings/commands.js';
import {numbersIn} from '../../src/findings/prose-numbers.js';
import {book} from '../help/example.js';
import {CORPUS_ENGINE, CORPUS_SHOP, TUNED} from './prose-corpus.js';

const WORDS = TUNED.flatMap(({says}) => says.split(' ')).filter((word) => word !== '');

const prose = fc.oneof(
  fc.string({unit: 'binary', maxLength: 200}),
  fc
    .array(fc.constantFrom(...WORDS, ',', '.', 'and', '\n\n', '(', '🔩', '\r\n'), {maxLength: 60})
    .map((list) => list.join(' ')),
);

describe('any text', () => {
  it('gives commands that point into it', () => {
    fc.assert(
      fc.property(prose, (text) => {
        for (const {span, clause, fits, verb} of commandsIn(text)) {
          expect(text.slice(span.start, span.end)).toMatch(/^[a-z][a-z'’-]*$/i);
          expect(clause.start).toBe(span.start);
          expect(clause.end).toBeGreaterThanOrEqual(span.end);
          expect(clause.end).toBeLessThanOrEqual(text.length);
          expect(fits).toContain(verb);
        }
      }),
    );
  });

  it('gives numbers that point into it, in order and apart', () => {
    fc.assert(
      fc.property(prose, (text) => {
        let end = 0;
        for (const {span} of numbersIn(text)) {
          expect(span.start).toBeGreaterThanOrEqual(end);
          expect(text.slice(span.start, span.end)).toMatch(/^[\d.½⅓⅔¼¾⅛⅜⅝⅞]/);
          end = span.end;
        }
        expect(end).toBeLessThanOrEqual(text.length);
      }),
    );
  });

  it('is checked in a step without an exception', () => {
    fc.assert(
      fc.property(prose, (text) => {
        const one = book({
          engine: CORPUS_ENGINE,
          shop: CORPUS_SHOP,
          procedures: {'one.md': `1. ${text} \`torque: main-cap-bolts\`\n`},
        });
        expect(check(one).findings).toBeInstanceOf(Array);
      }),
      {numRuns: 60},
    );
  });
});

describe('text made to take long', () => {
  const HOSTILE = [
    'oil, ',
    'oil and ',
    'then ',
    'carefully ',
    '1, ',
    '1 and ',
    '(',
    '85 to ',
    'a`',
    '<',
    '](',
    'be sure to ',
  ];

  it.each(HOSTILE)('%j over and over is read to its end', (piece) => {
    const text = `Clean ${piece.repeat(20_000)}`;
    expect(commandsIn(text).length).toBeLessThanOrEqual(text.length);
    expect(numbersIn(text).length).toBeLessThanOrEqual(text.length);
  });
});
