/** Findings on a text, put where they stand in the text that was typed from it. */
import {expect, it} from 'vitest';
import {carried} from '../../src/editor/carried.js';
import type {Finding} from '../../src/findings/model.js';
import {source} from '../../src/text/source.js';

const BEFORE = 'one two three';

function finding(file: string, words: string): Finding {
  const start = BEFORE.indexOf(words);
  const where = {file, span: {start, end: start + words.length}};
  return {
    name: 'left-out',
    severity: 'error',
    where,
    message: words,
    story: [],
    related: [{where, says: 'here'}],
  };
}

function shownIn(now: string | undefined, findings: readonly Finding[]): string[] {
  const before = new Map([['a.md', source('a.md', BEFORE)]]);
  const texts = new Map(now === undefined ? [] : [['a.md', source('a.md', now)]]);
  return carried(findings, before, texts).map(({where: {span}}) => (now ?? '').slice(span.start, span.end));
}

it.each([
  ['nothing', BEFORE, ['one', 'two', 'three']],
  ['a word put in before it', 'zero one two three', ['one', 'two', 'three']],
  ['a word put in behind it', 'one two three four', ['one', 'two', 'three']],
  ['the word itself', 'one 2 three', ['one', 'three']],
])('after an edit of %s', (_, now, expected) => {
  const all = ['one', 'two', 'three'].map((words) => finding('a.md', words));
  expect(shownIn(now, all)).toEqual(expected);
});

it('leaves out what is about a text that is gone, or was never there', () => {
  expect(shownIn(undefined, [finding('a.md', 'one')])).toEqual([]);
  expect(shownIn(BEFORE, [finding('b.md', 'one')])).toEqual([]);
});

it('takes the places beside it along', () => {
  const texts = new Map([['a.md', source('a.md', `zero ${BEFORE}`)]]);
  const [moved] = carried([finding('a.md', 'two')], new Map([['a.md', source('a.md', BEFORE)]]), texts);
  expect(moved?.related[0]?.where.span).toEqual(moved?.where.span);
});
