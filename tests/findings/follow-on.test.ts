/** What follows from a misspelt verb or name is told behind it, and not with a mend of its own. */
import {describe, expect, it} from 'vitest';
import {type CheckOptions, check} from '../../src/findings/check.js';
import {Memory} from '../../src/findings/memory.js';
import type {Finding} from '../../src/findings/model.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  caps: {}
  cover: {reused: true}
fasteners:
  bolts: {holds: [caps], torque: 85 lbf·ft, threads: dry, lock: safety-wire}
hold-points:
  closed: {asks: [bolts], by: shop lead}
`;

const STEPS = [
  'install: caps',
  'torque: bolts to 85 lbf·ft',
  'lock: bolts with wire-032',
  'witness: closed by "shop lead"',
  'inspect: cover',
  'install: cover',
];

/** The findings with one tag written otherwise, or several. */
function found(
  slips: Readonly<Record<string, string>>,
  {shop = EXAMPLE_SHOP, options = {}}: {readonly shop?: string; readonly options?: CheckOptions} = {},
): readonly Finding[] {
  const steps = STEPS.map((tag, index) => `${index + 1}. Do it. \`${slips[tag] ?? tag}\``).join('\n');
  return check(book({shop, engine: ENGINE, procedures: {'p.md': `\n${steps}\n`}}), options).findings;
}

const TORQUE = STEPS[1] ?? '';
const INSPECT = STEPS[4] ?? '';

/** Name, whether it has a fix, and what it follows from. */
function told(findings: readonly Finding[]): string[] {
  return findings.map(({name, fix, related}) => {
    const from = related.filter(({says}) => says.includes('follow'));
    return [name, ...(fix ? ['fix'] : []), ...from.map(({says}) => says)].join(' | ');
  });
}

describe('what follows from a slip', () => {
  const VERB = 'follows from this slip: "torqe" is no verb; did you mean torque?';

  it.each<readonly [string, Readonly<Record<string, string>>, readonly string[]]>([
    [
      'of a verb stands behind it, in build order, and without a mend',
      {[TORQUE]: 'torqe: bolts to 85 lbf·ft'},
      ['unknown-verb | fix', `left-slack | ${VERB}`],
    ],
    [
      'of a name likewise',
      {[TORQUE]: 'torque: bolt to 85 lbf·ft'},
      [
        'unknown-item | fix',
        'left-slack | follows from this slip: bolt is not in the specification; did you mean bolts?',
      ],
    ],
    [
      'alone is marked: what else is wrong keeps its place and its mend',
      {[TORQUE]: 'torqe: bolts to 85 lbf·ft', [INSPECT]: 'clean: cover'},
      ['unknown-verb | fix', `left-slack | ${VERB}`, 'inspect-first'],
    ],
    [
      'of two slips names both',
      {[TORQUE]: 'torqe: bolts to 85 lbf·ft', [INSPECT]: 'inspct: cover'},
      [
        'unknown-verb | fix',
        'unknown-verb | fix',
        `left-slack | may ${VERB.replace('follows', 'follow')} | may follow from this slip: "inspct" is no verb; did you mean inspect?`,
        `inspect-first | may ${VERB.replace('follows', 'follow')} | may follow from this slip: "inspct" is no verb; did you mean inspect?`,
      ],
    ],
    [
      'is marked also where the mended tag has a mistake of its own',
      {[TORQUE]: 'torqe: bolts to 8.5 lbf·ft'},
      ['unknown-verb | fix', `left-slack | ${VERB}`],
    ],
    [
      'whose nearest verb is not what was meant is not known',
      {[INSPECT]: 'look: cover'},
      ['unknown-verb | fix', 'inspect-first'],
    ],
    [
      'that is near no verb is not known',
      {[TORQUE]: 'wrestle: bolts to 85 lbf·ft'},
      ['unknown-verb', 'left-slack | fix'],
    ],
  ])('%s', (_, slips, says) => {
    const findings = found(slips);
    expect(told(findings)).toEqual(says);
    expect(found(slips, {options: {memory: new Memory()}})).toEqual(findings);
  });

  it('is told as it is where the shop lets slips stand', () => {
    const shop = `${EXAMPLE_SHOP}\nseverity: {unknown-verb: warning}\n`;
    expect(told(found({[TORQUE]: 'torqe: bolts to 85 lbf·ft'}, {shop})).sort()).toEqual([
      'left-slack | fix',
      'unknown-verb | fix',
    ]);
  });

  it('still fails the check: nothing is left out', () => {
    const {findings, summary} = check(
      book({engine: ENGINE, procedures: {'p.md': '\n1. Do it. `torqe: bolts to 85 lbf·ft`\n'}}),
    );
    expect(summary.errors).toBe(findings.filter(({severity}) => severity === 'error').length);
    expect(findings.map(({name}) => name)).toEqual(expect.arrayContaining(['unknown-verb', 'left-slack']));
  });
});
