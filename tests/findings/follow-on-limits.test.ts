/** How far what follows from slips is looked for: over which texts, of how many slips, and when not at all. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import {withFollowOn} from '../../src/findings/follow-on.js';
import type {HouseFinding} from '../../src/findings/house.js';
import type {Finding} from '../../src/findings/model.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  cover: {reused: true}
  cap: {}
  fan: {}
`;

/** Every finding with what it follows from. */
function told(findings: readonly Finding[]): string[] {
  return findings.map(({name, item, related}) =>
    [
      [name, item].filter((one) => one !== undefined).join(' '),
      ...related.filter(({says}) => says.includes('follow')).map(({says}) => says.replace(/; did.*/, '')),
    ].join(' | '),
  );
}

const written = (procedures: Readonly<Record<string, string>>): Book => book({engine: ENGINE, procedures});

const MAY = 'may follow from this slip: ';

describe('what follows from slips', () => {
  it('of one name in several steps, with other slips between them, is known in every procedure', () => {
    const whole = written({
      'a.md': '1. a `inspect: covr for cracks`\n2. b `instal: cap`\n3. c `install: covr`\n',
      'b.md': '1. d, behind the cover `install: fan`\n',
    });
    expect(told(check(whole).findings)).toEqual([
      'unknown-item covr',
      'unknown-verb',
      `left-out cover | ${MAY}covr is not in the specification | ${MAY}"instal" is no verb`,
      `left-out cap | ${MAY}covr is not in the specification | ${MAY}"instal" is no verb`,
    ]);
  });

  it('of more than three names three of them', () => {
    const steps = ['instal: cap', 'instal: fan', 'instal: cover', 'inspct: cover'];
    const whole = written({'a.md': steps.map((tag, at) => `${at + 1}. a \`${tag}\`\n`).join('')});
    const three = `${MAY}"instal" is no verb`.repeat(3).replaceAll(`verb${MAY}`, `verb | ${MAY}`);
    expect(told(check(whole).findings)).toEqual([
      ...Array.from({length: 4}, () => 'unknown-verb'),
      `left-out cover | ${three}`,
      `left-out cap | ${three}`,
      `left-out fan | ${three}`,
    ]);
  });

  it('is never what a rule of the house says', () => {
    const rule: HouseFinding = {
      name: 'house-look',
      severity: 'warning',
      summary: 'A look at every book',
      why: 'It is ours.',
      end({book: {procedures}, report}) {
        const [first] = procedures;
        if (first) report({where: {file: first.source.file, span: {start: 0, end: 3}}, message: 'look'});
      },
    };
    const whole = written({
      'a.md': '1. a `inspect: cover for cracks` `instal: cover`\n2. b `install: cap`\n3. c `install: fan`\n',
    });
    expect(told(check(whole, {house: [rule]}).findings)).toEqual([
      'unknown-verb',
      'house-look',
      'left-out cover | follows from this slip: "instal" is no verb',
    ]);
  });

  it.each<[length: number, follows: boolean]>([
    [100_000, true],
    [100_001, false],
  ])('in a text of %i characters: %s', (length, follows) => {
    const steps = '---\ntitle: Example\nrevision: A\ndate: 2026-03-01\n---\n\n1. a `instal: cap`\n';
    const whole = written({'a.md': `${steps}\n`.padEnd(length, 'x')});
    const [left] = check(whole).findings.filter(({item}) => item === 'cap');
    expect(left?.related.some(({says}) => says.includes('follow'))).toBe(follows);
  });
});

describe('the book is checked no second time', () => {
  const never = () => {
    throw new Error('it was');
  };

  it.each([
    ['without a slip', '1. a `install: cap`\n'],
    [
      'where there are but slips',
      '1. a `inspect: cover for cracks` `install: cover`\n2. b `install: cap`\n3. c `install: fan`\n4. d `trn: fan`\n',
    ],
  ])('%s', (_, steps) => {
    const whole = written({'a.md': steps});
    const {findings} = check(whole);
    expect(findings.length).toBeGreaterThan(0);
    expect(withFollowOn(findings, whole, never)).toBe(findings);
  });
});

it('mends no procedure in which one mend stands over another', () => {
  const whole = written({'a.md': '1. a `instal: cap`\n', 'b.md': '1. b `instal: fan`\n'});
  const findings = check(whole).findings;
  const [slip] = findings;
  if (slip === undefined) throw new Error('the slip is not found');
  const seen: string[] = [];
  withFollowOn([slip, ...findings], whole, ({procedures}) => {
    seen.push(...procedures.map(({source: {text}}) => text.slice(text.indexOf('1.')).trim()));
    return findings;
  });
  expect(seen).toEqual(['1. a `instal: cap`', '1. b `install: fan`']);
});
