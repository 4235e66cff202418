/** A long procedure read by the sections that an edit touched: as if it were read whole, and with less read. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {SectionReader} from '../../src/editor/sections/reader.js';
import type {Procedure} from '../../src/procedure/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {source} from '../../src/text/source.js';
import {generatedBook} from '../bench/generated.js';

const [LONG = ''] = generatedBook(25, 25, {loops: true}).procedures.values();

/** What closes, opens, counts or names something that holds beyond its own section. */
const PIECES = [
  '```\n',
  '\n~~~\n',
  '<!-- ',
  '-->',
  '\n<div>\n',
  '\n# ',
  '\n## New\n\n',
  '#',
  '\n---\n',
  '===\n',
  '\n> **Warning:** Hot. `hazard: burn`\n\n',
  '\n> ',
  '\n1. Do it. `install: part-1`\n',
  '\n   1. Below. `step: read-0`\n',
  '`step: z`',
  '[x]: /there\n',
  '[x]',
  '\r',
  '    ',
  '- item\n',
  '![gone](gone.png)',
  '\uFEFF',
  '`',
  '',
];

const edit = fc.tuple(fc.nat(LONG.length), fc.constantFrom(...PIECES), fc.constantFrom(0, 0, 1, 7, 60, 900));

/** Whole, places and all; comparing the trees themselves takes long. */
function told(procedure: Procedure): string {
  return JSON.stringify(procedure);
}

describe('a procedure that is written at', () => {
  it('reads as it does whole, after every edit', () => {
    fc.assert(
      fc.property(fc.array(edit, {minLength: 1, maxLength: 4}), (edits) => {
        const reader = new SectionReader();
        reader.read(source('a.md', LONG));
        let text = LONG;
        for (const [at, piece, cut] of edits) {
          text = text.slice(0, at) + piece + text.slice(at + cut);
          expect(told(reader.read(source('a.md', text)))).toBe(told(readProcedure(source('a.md', text))));
        }
      }),
      {numRuns: 10},
    );
  });

  it.each([
    ['a caution at the end of a section is of the next step', '\n> **Warning:** Hot. `hazard: burn`\n'],
    ['a fence that stays open swallows the rest', '\n```\n'],
    ['a name given twice is a problem of the second step', '1. Look. `step: read-0`\n'],
    ['a link that is defined anywhere is one everywhere', '[drawing]: there.png\n\n'],
  ])('%s', (_, piece) => {
    const at = LONG.indexOf('## Assembly 3');
    const text = LONG.slice(0, at) + piece + LONG.slice(at);
    const reader = new SectionReader();
    reader.read(source('a.md', LONG));
    expect(told(reader.read(source('a.md', text)))).toBe(told(readProcedure(source('a.md', text))));
  });

  it('keeps the steps before the section that was edited', () => {
    const reader = new SectionReader();
    const before = reader.read(source('a.md', LONG));
    const after = reader.read(source('a.md', LONG.replace('## Assembly 3', '## Assembly three')));
    expect(after.steps[0]).toBe(before.steps[0]);
    expect(after.steps.at(-1)).not.toBe(before.steps.at(-1));
    expect(after.steps).toHaveLength(before.steps.length);
  });
});
