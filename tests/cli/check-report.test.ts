/** The last two lines of a check. */
import {expect, test} from 'vitest';
import {checkJson, sumsText} from '../../src/cli/check-report.js';

function lineFor(...books: readonly (readonly string[])[]): string | undefined {
  const reports = books.map((uncovered) => ({
    counts: {jobs: 0, procedures: 1, steps: 2, tags: 2, items: 9, covered: 9 - uncovered.length, unjudged: 0},
    uncovered,
    procedures: [],
    files: [],
    findings: [],
  }));
  return lineOf(reports.map((report) => [report]));
}

/** Of a book whose specification cannot be read whole, no item is counted. */
const BROKEN = {
  counts: {jobs: 0, procedures: 1, steps: 2, tags: 2, items: 0, covered: 0, unjudged: 1},
  uncovered: [],
  procedures: [],
  files: [],
  findings: [],
};

function lineOf(reports: Parameters<typeof checkJson>[0]): string | undefined {
  return sumsText(checkJson(reports).summary)
    .split('\n')[0]
    ?.replace(/^.*?tags; /, '');
}

test.each([
  {books: [[]], line: '9 of 9 items covered'},
  {books: [['seat']], line: '8 of 9 items covered, all but seat'},
  {books: [['seat'], ['cap']], line: '16 of 18 items covered, all but seat and cap'},
  {books: [['seat'], ['seat']], line: '16 of 18 items covered, all but seat'},
  {books: [['a', 'b', 'c']], line: '6 of 9 items covered, all but a, b and c'},
  {books: [['a', 'b', 'c', 'd', 'e']], line: '4 of 9 items covered, all but a, b, c and 2 more'},
  {books: [['e\u001b[1m']], line: '8 of 9 items covered, all but e\\u001b[1m'},
])('$line', ({books, line}) => {
  expect(lineFor(...books)).toBe(line);
});

test('a book that could not be judged is not said to be covered', () => {
  expect(lineOf([[BROKEN]])).toBe('not judged');
  const whole = {...BROKEN, counts: {...BROKEN.counts, items: 9, covered: 9, unjudged: 0}};
  expect(lineOf([[BROKEN], [whole]])).toBe('9 of 9 items covered; 1 book not judged');
});

test('a book that was judged for each of its jobs is one book', () => {
  const of = (steps: number, items: number, uncovered: readonly string[]) => ({
    counts: {jobs: 1, procedures: 1, steps, tags: 2, items, covered: items - uncovered.length, unjudged: 0},
    uncovered,
    procedures: [],
    files: [],
    findings: [],
  });
  const {summary} = checkJson([[of(4, 9, ['seat']), of(5, 8, [])], [of(1, 1, [])], []]);
  expect(sumsText(summary).split('\n')[0]).toBe(
    '2 books, 3 jobs, 2 procedures, 6 steps, 4 tags; 9 of 10 items covered, all but seat',
  );
});
