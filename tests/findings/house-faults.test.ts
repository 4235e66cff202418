/** Rules of a house that go wrong, and lists that are none: what a slip in one costs, and what is said of it. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {whereIn} from '../../src/build/program.js';
import {check} from '../../src/findings/check.js';
import type {HouseFinding} from '../../src/findings/house.js';
import {readHouse} from '../../src/findings/house-form.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {pumpBook, WRENCH} from './house-pump.js';

function found(from: Book, ...house: readonly HouseFinding[]): string[] {
  return check(from, {house}).findings.map(({name, severity}) => `${severity} ${name}`);
}

const AT = {file: 'procedure.md', span: {start: 0, end: 1}};

/** What a module in JavaScript may hand over, whatever the types say. */
const reporting = (found: unknown): HouseFinding => ({
  ...WRENCH,
  before: {torque: (_, {report}) => Reflect.apply(report, undefined, [found])},
});

describe('a rule that goes wrong', () => {
  it.each<[says: string, rule: HouseFinding, during?: string]>([
    ['RangeError: no such bolt', {...WRENCH, before: {torque: () => fail('no such bolt')}}],
    ['RangeError: no such book', {...WRENCH, book: () => fail('no such book')}, 'book'],
    ['RangeError: no such end', {...WRENCH, before: {}, end: () => fail('no such end')}, 'end'],
    ['RangeError: no such step', {...WRENCH, step: () => fail('no such step')}, 'step'],
    ['TypeError: it is asynchronous', {...WRENCH, before: {}, end: async () => fail('late')}, 'end'],
    [
      'TypeError: reportIfItLasts is for',
      {...WRENCH, before: {}, end: ({reportIfItLasts}) => reportIfItLasts({where: AT, message: 'x'}, [''])},
      'end',
    ],
    ['TypeError: what it reports is no report', reporting(undefined)],
    ['TypeError: what it reports is no report: message', reporting({where: AT})],
    [
      'TypeError: what it reports is no report: message: one line of text is due here',
      reporting({where: AT, message: 'two\nlines'}),
    ],
    [
      'TypeError: what it reports is no report: where.span.end',
      reporting({where: {file: 'procedure.md', span: {start: 0, end: Number.NaN}}, message: 'x'}),
    ],
    [
      'TypeError: what it reports is no report: Unrecognized key',
      reporting({where: AT, message: 'x', releated: []}),
    ],
    [
      'TypeError: what it reports points into other.md',
      reporting({where: {...AT, file: 'other.md'}, message: 'x'}),
    ],
    [
      'TypeError: what it reports stands at 3–1',
      reporting({where: {...AT, span: {start: 3, end: 1}}, message: 'x'}),
    ],
    [
      'TypeError: what it reports stands at 0–9999',
      reporting({where: {...AT, span: {start: 0, end: 9999}}, message: 'x'}),
    ],
    [
      'TypeError: what it reports stands at 0–9999',
      reporting({where: AT, message: 'x', story: [{where: {...AT, span: {start: 0, end: 9999}}, says: 'x'}]}),
    ],
    [
      'TypeError: what it reports points into none.yaml',
      reporting({where: AT, message: 'x', related: [{where: {...AT, file: 'none.yaml'}, says: 'x'}]}),
    ],
    [
      'TypeError: what it reports has a fix that can',
      reporting({
        where: AT,
        message: 'x',
        fix: {title: 'Mend', file: 'procedure.md', edits: [{span: {start: 0, end: 9999}, text: ''}]},
      }),
    ],
    [
      'TypeError: what it reports points into none.md',
      reporting({
        where: AT,
        message: 'x',
        fix: {title: 'Mend', file: 'none.md', edits: [{span: {start: 0, end: 0}, text: 'x'}]},
      }),
    ],
  ])('%s', (says, rule, during = 'before torque') => {
    const after: HouseFinding = {...WRENCH, name: 'house-second'};
    const {findings, houseFaults} = check(pumpBook(), {house: [rule, after]});
    expect(findings.map(({name}) => name)).toEqual(['house-second']);
    expect(houseFaults).toMatchObject([{name: 'house-wrench-named', during}]);
    expect(houseFaults[0]?.says).toContain(says);
    expect(houseFaults[0]?.stack).toMatch(/^(?:Range|Type)Error: /);
  });

  it('leads to its own line', () => {
    const {houseFaults} = check(pumpBook(), {house: [{...WRENCH, book: () => fail('no such book')}]});
    expect(houseFaults[0]?.stack).toContain('house-faults.test.ts');
  });

  it.each<[thrown: unknown, says: string]>([
    ['no such bolt', 'no such bolt'],
    [Object.assign(new RangeError('no such bolt'), {stack: undefined}), 'RangeError: no such bolt'],
  ])('may throw what is no error, or has no stack: %s', (thrown, says) => {
    const end = () => {
      throw thrown;
    };
    const {houseFaults} = check(pumpBook(), {house: [{...WRENCH, before: {}, end}]});
    expect(houseFaults).toStrictEqual([{name: 'house-wrench-named', during: 'end', says}]);
  });

  it('may point into the job that the book is for', () => {
    const where = {file: 'jobs/1.yaml', span: {start: 0, end: 3}};
    const forJob = pumpBook({job: 'options: []\n'});
    const atJob = (end: number) =>
      check(forJob, {house: [reporting({where: {...where, span: {start: 0, end}}, message: 'x'})]});
    expect(atJob(3).findings).toMatchObject([{name: 'house-wrench-named', where}]);
    expect(atJob(9999).houseFaults[0]?.says).toContain('stands at 0–9999 of jobs/1.yaml');
  });

  it('is told where in the book it was', () => {
    const {houseFaults} = check(pumpBook(), {house: [reporting(7)]});
    const text = pumpBook().procedures[0]?.source.text ?? '';
    const start = text.indexOf('torque: pump-bolts');
    expect(houseFaults[0]?.where).toEqual({
      file: 'procedure.md',
      span: {start, end: text.indexOf('`', start)},
    });
  });

  it('is asked no more, and keeps what it had found', () => {
    let asked = 0;
    const twice: HouseFinding = {
      ...WRENCH,
      step: (step, {report}) => {
        asked++;
        if (asked === 2) fail('on the second');
        report({where: whereIn(step, step.step.headSpan), message: 'seen'});
      },
      end: () => asked++,
    };
    expect(found(pumpBook(), twice)).toContain('warning house-wrench-named');
    expect(asked).toBe(2);
  });
});

describe('a list of rules', () => {
  it.each<[says: string, given: unknown]>([
    ['Invalid input: expected array, received undefined', undefined],
    ['Invalid input: expected array, received object', WRENCH],
    ['rule 1: Invalid input: expected object, received number', [7]],
    ['at least one rule is due here', []],
    [
      'clean-first: name: lower case with hyphens that begins with house- is due here',
      [{...WRENCH, name: 'clean-first'}],
    ],
    [
      'House-x: name: lower case with hyphens that begins with house- is due here',
      [{...WRENCH, name: 'House-x'}],
    ],
    ['rule 2: name: Invalid input: expected string, received undefined', [WRENCH, {}]],
    [
      'house-wrench-named: severity: Invalid option: expected one of "error"|"warning"|"information"',
      [{...WRENCH, severity: 'fatal'}],
    ],
    ['house-wrench-named: Unrecognized key: "befor"', [{...WRENCH, befor: {}}]],
    ['house-wrench-named: before: Unrecognized key: "tighten"', [{...WRENCH, before: {tighten() {}}}]],
    ['house-wrench-named: before: Unrecognized key: "waive"', [{...WRENCH, before: {waive() {}}}]],
    ['house-wrench-named: before.torque: a function is due here', [{...WRENCH, before: {torque: true}}]],
    ['house-wrench-named is there twice', [WRENCH, WRENCH]],
  ])('%s', (says, given) => {
    const read = readHouse(given);
    expect(read).toEqual({ok: false, says});
  });

  it('is a mistake of the caller where it is none', () => {
    const twice = () => check(pumpBook(), {house: [WRENCH, WRENCH]});
    expect(twice).toThrow(new TypeError('house: house-wrench-named is there twice'));
  });

  it('can never clash with a finding of ours', () => {
    expect(FINDINGS.filter(({name}) => name.startsWith('house-'))).toEqual([]);
  });
});

function fail(says: string): never {
  throw new RangeError(says);
}
