/** A step taken out of a demonstration book and written back by the fix: the finding goes, and no other comes. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import {loadBooks} from '../../src/host/load.js';
import {readProcedure} from '../../src/procedure/read.js';
import type {Verb} from '../../src/procedure/verbs.js';
import {applyEdits, type Edit} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';

const TODAY = {today: '2026-06-01'};

/** What each verb leaves undone where its step is missing. */
const LEFT: {readonly [verb in Verb]?: string} = {
  measure: 'left-unmeasured',
  witness: 'left-unwitnessed',
  record: 'left-unrecorded',
  seal: 'left-unsealed',
  torque: 'left-slack',
  lock: 'left-unlocked',
  stripe: 'left-unstriped',
};

const {books} = await loadBooks(
  ['procedures/ottermouth-four/engine.yaml', 'procedures/fjordholm/engine.yaml'],
  process.cwd(),
);

/** Every top step of the books with such a tag, with the line that it begins on. */
const DROPPED = books.flatMap(({book}) =>
  book.procedures.flatMap(({source: {file}, steps}) =>
    steps.flatMap((step) =>
      step.tags
        .filter(({verb}) => LEFT[verb] !== undefined)
        .map(({verb, raw}) => ({book, file, step, verb, title: `${file} ${step.number} \`${raw}\``})),
    ),
  ),
);

/** How many of the findings come with a fix. */
const tally = new Map<string, {readonly offered: number; readonly of: number}>();

describe.each([...new Set(DROPPED.map(({verb}) => verb))])('a step with %s left out', (verb) => {
  const all = DROPPED.filter((one) => one.verb === verb);

  it.each(all.map((one) => [one.title, one] as const))('%s', (_, {book, file, step}) => {
    const without = edited(book, file, [{span: step.span, text: NOTHING}]);
    const before = check(without, TODAY).findings;
    const found = before.filter(({name}) => name === LEFT[verb]);
    const soFar = tally.get(verb) ?? {offered: 0, of: 0};
    const offered = found.filter(({fix}) => fix !== undefined).length;
    tally.set(verb, {offered: soFar.offered + offered, of: soFar.of + found.length});
    for (const {fix, ...finding} of found) {
      if (fix === undefined) continue;
      const after = check(edited(without, fix.file, fix.edits), TODAY).findings;
      expect(after.map(said), fix.edits[0]?.text).not.toContain(said(finding));
      const known = new Set(before.map(kindOf));
      expect(
        after.map(kindOf).filter((one) => !known.has(one)),
        fix.edits[0]?.text,
      ).toEqual([]);
    }
  });
});

it('offers the step in most places, and in no more than was ever seen to be right', () => {
  expect(
    Object.fromEntries([...tally].map(([verb, {offered, of}]) => [verb, `${offered} of ${of}`])),
  ).toEqual({
    record: '4 of 4',
    measure: '7 of 22',
    witness: '11 of 11',
    seal: '9 of 15',
    torque: '18 of 23',
    lock: '10 of 20',
    stripe: '1 of 1',
  });
});

/** What stands in its place says nothing, so that the list goes on. */
const NOTHING = '1. Nothing.\n';

function kindOf({name, item}: Finding): string {
  return `${name}: ${item}`;
}

function said({name, message}: Finding): string {
  return `${name}: ${message}`;
}

function edited(book: Book, file: string, edits: readonly Edit[]): Book {
  return {
    ...book,
    procedures: book.procedures.map((one) =>
      one.source.file === file ? readProcedure(source(file, applyEdits(one.source.text, edits))) : one,
    ),
  };
}
