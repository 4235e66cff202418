/** Whether a report can be one: its places lie in their texts, and its fix can be made there. */
import {expect, it} from 'vitest';
import type {Found} from '../../src/build/found.js';
import {ledger} from '../../src/build/ledger.js';
import {foundFault} from '../../src/findings/found-fault.js';
import {finish} from '../../src/findings/settle.js';
import {waiverStale} from '../../src/findings/waiver-stale.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';

const SOURCES = new Map([['a.md', source('a.md', 'ten letters')]]);

const at = (start: number, end: number, file = 'a.md') => ({file, span: {start, end}});
const found = (where: Found['where'], more: Partial<Found> = {}): Found => ({where, message: 'x', ...more});
const fixed = (file: string, end: number) => ({
  fix: {title: 'Mend', file, edits: [{span: {start: 0, end}, text: 'x'}]},
});

it.each<[title: string, given: Found, says: string | undefined]>([
  ['the whole text', found(at(0, 11)), undefined],
  ['its end', found(at(11, 11)), undefined],
  ['before its beginning', found(at(-1, 3)), 'stands at -1–3 of a.md, which is 11 long'],
  ['backwards', found(at(3, 2)), 'stands at 3–2 of a.md, which is 11 long'],
  ['beyond its end', found(at(3, 12)), 'stands at 3–12 of a.md, which is 11 long'],
  ['a file that could not be read', found(at(3, 12, 'lost.md')), undefined],
  [
    'a story beyond the end',
    found(at(0, 1), {story: [{where: at(0, 12), says: 'x'}]}),
    'stands at 0–12 of a.md, which is 11 long',
  ],
  [
    'a related place beyond the end',
    found(at(0, 1), {related: [{where: at(0, 12), says: 'x'}]}),
    'stands at 0–12 of a.md, which is 11 long',
  ],
  ['a fix', found(at(0, 1), fixed('a.md', 11)), undefined],
  [
    'a fix beyond the end',
    found(at(0, 1), fixed('a.md', 12)),
    "has a fix that can't be made: an edit ends at 12, past the text's 11",
  ],
  ['a fix in a file that could not be read', found(at(0, 1), fixed('lost.md', 0)), undefined],
  [
    'a fix in the text of a file that could not be read',
    found(at(0, 1), fixed('lost.md', 1)),
    "has a fix that can't be made: an edit ends at 1, past the text's 0",
  ],
])('%s', (_, given, says) => {
  expect(foundFault(given, SOURCES)).toBe(says);
});

it('of one of ours is a fault of the tool, and says whose', () => {
  const whole = book({engine: 'parts: {block: {given: true}}\n', procedures: {'a.md': '1. Look.'}});
  const raised = [{kind: waiverStale, found: found(at(-1, 3))}];
  expect(() => finish(whole, ledger(whole), [waiverStale], raised, () => false)).toThrow(
    /^waiver-stale reports what stands at -1–3 of a\.md/,
  );
});
