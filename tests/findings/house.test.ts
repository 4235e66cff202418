/** Rules of a house beside ours: what they find, and how severities and waivers treat them. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {whereIn} from '../../src/build/program.js';
import {check} from '../../src/findings/check.js';
import type {HouseContext, HouseFinding} from '../../src/findings/house.js';
import {houseKind} from '../../src/findings/house-kind.js';
import {findingPage} from '../../src/findings/page.js';
import {book} from '../help/example.js';
import {ENGINE, pumpBook, STEPS, WRENCH} from './house-pump.js';

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
    expect(found(pumpBook({steps: `${STEPS}${trial}`}), early)).not.toContain('warning house-wrench-named');
  });

  it('may report of a torque what counts only where that lasts', () => {
    const noted: HouseFinding = {
      ...WRENCH,
      before: {
        torque({item, places, tag, step}, {reportIfItLasts}) {
          reportIfItLasts({where: whereIn(step, tag.span), message: `${item.id} are torqued`}, places);
        },
      },
    };
    const slack = `${STEPS}3. Slacken them. \`loosen: pump-bolts\`\n`;
    expect(found(pumpBook(), noted)).toEqual(['warning house-wrench-named']);
    expect(found(pumpBook({steps: slack}), noted)).not.toContain('warning house-wrench-named');
  });

  it('is asked once of a step that is gone back to, and its story is its own', () => {
    const asked: string[] = [];
    const watch: HouseFinding = {
      ...WRENCH,
      step: ({step}) => asked.push(step.number),
      before: {
        install({item, tag, step}, {report}) {
          const later = [{where: {file: 'procedure.md', span: {start: 300, end: 301}}, says: 'and see here'}];
          report({where: whereIn(step, tag.span), message: `${item.id} goes in`, story: later});
        },
      },
    };
    const play = ENGINE.replace(
      'fasteners:',
      'fits:\n  play: {between: [pump], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [pump]}}\nfasteners:',
    );
    const steps = `
1. Set the pump on. \`install: pump\` \`step: again\`
2. Read the play. \`measure: play\`
3. Only then, and it takes patience, lift the pump off and look for dirt below it. \`if: play is out\`
   1. Lift it off. \`remove: pump\`
   2. Go back. \`repeat: again\`
4. Tighten its bolts. \`torque: pump-bolts to 18 lbf·ft\`
`;
    const {findings} = check(book({engine: play, procedures: {'procedure.md': steps}}), {house: [watch]});
    expect(asked).toEqual(['1', '2', '3', '3a', '3b', '4']);
    expect(findings.map(({message}) => message)).toEqual(['pump goes in']);
  });

  it('has a page like any other', () => {
    const page = findingPage(houseKind(WRENCH, () => {}));
    expect(page).toContain('# house-wrench-named');
    expect(page).toContain('The record says which one it was.');
  });

  it('is a finding of the house, by its practice, unless it says otherwise', () => {
    const {name, severity, summary, why} = WRENCH;
    const said = {name, severity, summary, why};
    const more = {group: 'people', source: 'the yard', example: {engine: '', wrong: '', right: ''}} as const;
    const kindOf = (given: object) => houseKind({...said, ...given}, () => {});
    expect(kindOf({})).toStrictEqual({...said, group: 'house', source: 'the practice of the house'});
    expect(kindOf(more)).toStrictEqual({...said, ...more});
  });

  it('knows today where the caller does', () => {
    const days: unknown[] = [];
    const calendar: HouseFinding = {...WRENCH, before: {}, end: ({today}) => days.push(today)};
    check(pumpBook(), {house: [calendar], today: '2026-06-01'});
    check(pumpBook(), {house: [calendar]});
    expect(days).toEqual(['2026-06-01', undefined]);
  });
});
