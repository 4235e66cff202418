/** Rules of a house beside ours: what they find, how severities and waivers treat them, and what a slip in one costs. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {whereIn} from '../../src/build/program.js';
import {check} from '../../src/findings/check.js';
import type {HouseContext, HouseFinding} from '../../src/findings/house.js';
import {readHouse} from '../../src/findings/house-form.js';
import {findingPage} from '../../src/findings/page.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {idsOf} from '../../src/procedure/values.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  pump: {}
fasteners:
  pump-bolts: {holds: [pump], torque: 18 lbf·ft, threads: dry, lock: {value: none, because: self-locking threads}}
`;

const STEPS = `
1. Set the pump on. \`install: pump\`
2. Tighten its bolts. \`torque: pump-bolts to 18 lbf·ft\`
`;

const WRENCH: HouseFinding = {
  name: 'house-wrench-named',
  severity: 'warning',
  summary: 'A torque does not say which wrench it is tightened with',
  why: 'The record says which one it was.',
  before: {
    torque({item, tag, step}, {report}) {
      if (idsOf(tag, 'using').length > 0) return;
      report({where: whereIn(step, tag.span), item: item.id, message: `${item.id}: no wrench is named`});
    },
  },
};

function pumpBook({steps = STEPS, severity = ''}: {steps?: string; severity?: string} = {}): Book {
  return book({engine: ENGINE, shop: EXAMPLE_SHOP + severity, procedures: {'procedure.md': steps}});
}

function found(from: Book, ...house: readonly HouseFinding[]): string[] {
  return check(from, {house}).findings.map(({name, severity}) => `${severity} ${name}`);
}

const waived = (name: string) =>
  STEPS.replace(/`\n$/, `\` \`waive: ${name} by R. Tamsin because one wrench\`\n`);

describe('a rule of the house', () => {
  it('finds beside ours, with its own name, severity and place', () => {
    const {findings, summary, houseFaults} = check(pumpBook(), {house: [WRENCH]});
    expect(findings).toMatchObject([
      {name: 'house-wrench-named', severity: 'warning', item: 'pump-bolts', where: {file: 'procedure.md'}},
    ]);
    expect(summary.warnings).toBe(1);
    expect(houseFaults).toEqual([]);
  });

  it.each([
    {
      title: 'a severity of the shop',
      given: {severity: 'severity: {house-wrench-named: error}\n'},
      says: ['error house-wrench-named'],
    },
    {title: 'switched off', given: {severity: 'severity: {house-wrench-named: off}\n'}, says: []},
    {title: 'waived', given: {steps: waived('house-wrench-named')}, says: []},
    {
      title: 'another waived',
      given: {steps: waived('house-other')},
      says: ['warning house-wrench-named', 'warning waiver-stale'],
    },
    {
      title: 'a slip in its severity',
      given: {severity: 'severity: {house-wrench-name: off}\n'},
      says: ['error spec-form', 'warning house-wrench-named'],
    },
  ])('$title', ({given, says}) => {
    expect(found(pumpBook(given), WRENCH)).toEqual(says);
  });

  it.each([
    {title: 'a waiver', given: {steps: waived('house-wrench-named')}},
    {title: 'a severity', given: {severity: 'severity: {house-wrench-named: error}\n'}},
  ])('means nothing, and is no mistake, in $title where its rule is not at hand', ({given}) => {
    expect(found(pumpBook(given))).toEqual([]);
  });

  it('looks at book, steps, actions and the end, with the engine as it is then', () => {
    const seen: string[] = [];
    const tight = ({state}: HouseContext) => state.holds('tight', 'pump-bolts', '');
    const watch: HouseFinding = {
      ...WRENCH,
      book: (context) => seen.push(`book ${tight(context)} ${context.does('torque', 'pump-bolts', '')}`),
      step: (step, context) => seen.push(`step ${step.step.number} ${tight(context)}`),
      before: {torque: (action, context) => seen.push(`torque ${action.item.id} ${tight(context)}`)},
      end: (context) =>
        seen.push(`end ${tight(context)} ${context.state.get('tight', 'pump-bolts', '').by?.verb}`),
    };
    check(pumpBook(), {house: [watch], today: '2026-06-01'});
    expect(seen).toEqual([
      'book false true',
      'step 1 false',
      'step 2 false',
      'torque pump-bolts false',
      'end true torque',
    ]);
  });

  it('may report what counts only if it lasts', () => {
    const early: HouseFinding = {
      ...WRENCH,
      before: {
        install({item, places, tag, step}, {reportIfItLasts}) {
          reportIfItLasts({where: whereIn(step, tag.span), message: `${item.id} goes in`}, places);
        },
      },
    };
    const trial = '\n1. Try it. `install: pump`\n2. Take it off. `remove: pump`';
    expect(found(pumpBook(), early)).toEqual(['warning house-wrench-named']);
    expect(found(pumpBook({steps: `${trial}${STEPS.replaceAll(/^\d/gm, '3')}`}), early)).toEqual([
      'warning house-wrench-named',
    ]);
  });

  it('has a page like any other', () => {
    const page = findingPage({...WRENCH, group: 'house', source: 'the practice of the house', before: {}});
    expect(page).toContain('# house-wrench-named');
    expect(page).toContain('The record says which one it was.');
  });
});

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
    ['TypeError: what it reports is no report: message', reporting({where: AT, message: 'two\nlines'})],
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
    // An asynchronous rule has left its module by then.
    const where = says.includes('asynchronous') ? 'house-kind.ts' : 'house.test.ts';
    expect(houseFaults[0]?.stack).toContain(where);
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
    ['expected array', undefined],
    ['at least one rule is due here', []],
    ['clean-first: name: lower case', [{...WRENCH, name: 'clean-first'}]],
    ['House-x: name: lower case', [{...WRENCH, name: 'House-x'}]],
    ['rule 2', [WRENCH, {}]],
    ['severity', [{...WRENCH, severity: 'fatal'}]],
    ['Unrecognized key: "befor"', [{...WRENCH, befor: {}}]],
    ['before: Unrecognized key: "tighten"', [{...WRENCH, before: {tighten() {}}}]],
    ['before: Unrecognized key: "waive"', [{...WRENCH, before: {waive() {}}}]],
    ['before.torque: a function is due here', [{...WRENCH, before: {torque: true}}]],
    ['house-wrench-named is there twice', [WRENCH, WRENCH]],
  ])('%s', (says, given) => {
    const read = readHouse(given);
    expect(read.ok ? 'ok' : read.says).toContain(says);
  });

  it('is a mistake of the caller where it is none', () => {
    expect(() => check(pumpBook(), {house: [WRENCH, WRENCH]})).toThrow(TypeError);
  });

  it('can never clash with a finding of ours', () => {
    expect(FINDINGS.filter(({name}) => name.startsWith('house-'))).toEqual([]);
  });
});

function fail(says: string): never {
  throw new RangeError(says);
}
