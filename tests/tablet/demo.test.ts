/** The sheets of the demonstration books, for every engine and every job on the stand: a box is asked for once. */
import {describe, expect, test} from 'vitest';
import {forJob} from '../../src/build/for-job.js';
import {jobsAsked, loadBooks} from '../../src/host/load.js';
import {compileSheet} from '../../src/sheet/compile.js';
import {formOf} from '../../src/sheet/form.js';
import {sheetHtml} from '../../src/sheet/html.js';

const {books} = await loadBooks(['procedures']);
const builds = books.flatMap((loaded) => [
  {name: loaded.book.spec.engine.id, book: loaded.book},
  ...jobsAsked(loaded).map((job) => ({
    name: `${loaded.book.spec.engine.id}, job ${job.number}`,
    book: forJob({...loaded.book, job}),
  })),
]);

test('there are books with jobs', () => {
  expect(builds.length).toBeGreaterThan(books.length);
});

describe.each(builds)('$name', ({book}) => {
  test('asks for every box once, by keys that stand in the HTML', () => {
    for (const procedure of book.procedures) {
      const sheet = compileSheet(book, procedure, {fingerprint: '0'.repeat(64)});
      const {boxes, ...head} = formOf(sheet);
      const keys = boxes.map(({key}) => key).sort();
      const written = [...sheetHtml(sheet).matchAll(/ data-box="([^"]*)"/g)].map(([, key]) => key);
      expect(written.sort(), head.procedure).toEqual(keys);
      expect(new Set(keys).size, head.procedure).toBe(keys.length);
      const known = new Set(keys);
      const named = boxes.flatMap((box) => [
        ...(box.kind === 'hold' ? box.not : []),
        ...box.onlyIf.flatMap((branch) => branch.boxes),
      ]);
      expect(
        named.filter((key) => !known.has(key)),
        head.procedure,
      ).toEqual([]);
    }
  });

  test('has limits for its readings, and somebody’s work at its hold points', () => {
    const forms = book.procedures.map((procedure) =>
      formOf(compileSheet(book, procedure, {fingerprint: '0'.repeat(64)})),
    );
    const boxes = forms.flatMap((form) => form.boxes);
    const readings = boxes.filter((box) => box.kind === 'reading');
    expect(readings.length).toBeGreaterThan(10);
    expect(readings.filter(({least, most}) => least === undefined && most === undefined)).toEqual([]);
    expect(boxes.filter((box) => box.kind === 'hold' && box.not.length === 0)).toEqual([]);
  });
});
