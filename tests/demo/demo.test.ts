/** The books of the demonstration: they are read from disk as a user's would be, and must stay clean and of size. */
import {fileURLToPath} from 'node:url';
import {expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {forJob} from '../../src/build/for-job.js';
import {check} from '../../src/findings/check.js';
import {loadBook} from '../../src/host/load.js';
import {readProcedure} from '../../src/procedure/read.js';
import {positionAt, source} from '../../src/text/source.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
/** A day on which every calibration of the invented shop holds. */
const TODAY = '2026-07-01';

const FIRST = await bookIn('procedures/ottermouth-four');
const SECOND = await bookIn('procedures/fjordholm/twin');

const BOOKS = [
  {book: FIRST, name: FIRST.spec.engine.id, steps: 120, procedures: 8, waivers: 1, branches: 0},
  {book: SECOND, name: SECOND.spec.engine.id, steps: 80, procedures: 8, waivers: 0, branches: 3},
];

test.each(BOOKS)('$name loads whole', ({book}) => {
  expect(book.procedures).toHaveLength(book.spec.build.length);
  expect(problemsOf(book)).toEqual([]);
});

test.each(BOOKS)('$name is as large as it should be', ({book, steps, procedures}) => {
  expect(book.procedures.length).toBeGreaterThanOrEqual(procedures);
  expect(stepsOf(book).length).toBeGreaterThanOrEqual(steps);
});

test.each(BOOKS)('$name has no finding at all', ({book}) => {
  expect(lines(book)).toEqual([]);
});

test.each(BOOKS)('$name has $waivers waivers and $branches branches', ({book, waivers, branches}) => {
  const verbs = stepsOf(book).flatMap(({tags}) => tags.map(({verb}) => verb));
  expect(verbs.filter((verb) => verb === 'waive')).toHaveLength(waivers);
  expect(verbs.filter((verb) => verb === 'if')).toHaveLength(branches);
});

test.each(BOOKS)('$name says in every procedure that its values are invented', ({book}) => {
  const openings = book.procedures.map(({source, front}) => source.text.slice(front.span.end).trimStart());
  for (const opening of openings)
    expect(opening).toMatch(/^The [^\n]* every value in this procedure are invented\./);
});

test('the waiver silences what would else be found, and nothing more', () => {
  const procedures = FIRST.procedures.map((procedure) => {
    const text = procedure.source.text.replace(/`waive: [^`]*`/, '');
    return readProcedure(source(procedure.source.file, text));
  });
  const names = check({...FIRST, procedures}, {today: TODAY}).findings.map(({name}) => name);
  expect(names).toEqual(['barred-tool']);
});

test('the second book shares procedures with every engine of its base, and drops what it does not have', () => {
  const shared = SECOND.procedures.filter(({source}) => source.file.includes('fjordholm/base/'));
  expect(shared).toHaveLength(2);
  expect(SECOND.spec.items.has('sea-water-pump')).toBe(false);
});

test('the first book has two jobs, clean in themselves', async () => {
  const loaded = await loadBook('procedures/ottermouth-four', ROOT);
  if (!loaded.ok) throw new Error(loaded.says);
  expect(loaded.jobs.map(({number}) => number)).toEqual(['OF-2041', 'OF-2057']);
  for (const job of loaded.jobs) {
    expect(lines({...loaded.book, job})).toEqual([]);
    expect(job.source.text).toMatch(/invented/);
  }
});

test('one job fits shells of another engine, and alters them right after the saddles are clean', async () => {
  const loaded = await loadBook('procedures/ottermouth-four', ROOT);
  const job = loaded.ok ? loaded.jobs[1] : undefined;
  if (job === undefined) throw new Error('no job');
  const {procedures} = forJob({...FIRST, job});
  const altered = procedures.flatMap(({source, steps}) =>
    steps.flatMap((step, at) =>
      step.added && !steps[at - 1]?.added
        ? [`${source.file.split('/').at(-1)} after ${steps[at - 1]?.number}`]
        : [],
    ),
  );
  expect(altered).toEqual(['04-crankshaft.md after 4']);
});

async function bookIn(folder: string): Promise<Book> {
  const one = await loadBook(folder, ROOT);
  if (!one.ok) throw new Error(one.says);
  return one.book;
}

function stepsOf(book: Book) {
  return book.procedures.flatMap(({steps}) => steps);
}

function problemsOf(book: Book): string[] {
  const all = [...book.problems, ...book.spec.problems, ...book.procedures.flatMap(({problems}) => problems)];
  return all.map(({name, says}) => `${name}: ${says}`);
}

/** One line a finding, so that a failing test says what to mend. */
function lines(book: Book): string[] {
  const sources = new Map([
    ...book.spec.files,
    ...book.procedures.map(({source}) => [source.file, source] as const),
  ]);
  return check(book, {today: TODAY}).findings.map(({name, message, where}) => {
    const source = sources.get(where.file);
    const line = source === undefined ? 0 : positionAt(source, where.span.start).line;
    return `${where.file}:${line} ${name}: ${message}`;
  });
}
