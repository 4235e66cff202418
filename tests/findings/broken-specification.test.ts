/** A slip in the YAML of a specification is one finding, not the fifty that would follow from what seems to be missing. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  cover: {closes: [seam], after: [block]}
joints:
  seam: {between: [block, cover], seal: [paper]}
fasteners:
  cover-screws:
    count: 4
    holds: [cover]
    torque: 10 N·m
    threads: dry
    lock: {value: none, because: the paper grips}
`;
const STEPS = '1. Set the cover on. `install: cover` `waive: left-out because it is a trial by lead`\n';

function found(engine: string): string[] {
  const {findings} = check(book({engine, procedures: {'procedure.md': STEPS}}));
  return findings.map(({name, message}) => `${name}: ${message}`);
}

describe('a specification that cannot be read whole', () => {
  it('is the one thing said', () => {
    expect(found(ENGINE).length).toBeGreaterThan(1);
    expect(found(ENGINE.replace('    holds', '\tholds'))).toEqual([
      'spec-form: a tab stands where the indentation is; indent with spaces',
    ]);
  });

  it.each([
    ['joints:', 'joint:', 'joint is not a key of this file; did you mean joints?'],
    [
      'holds: [cover]',
      'holds: [cover',
      'the bracket that opens here is never closed; close it with ] or }, as it was opened',
    ],
    ['holds: [cover]', 'holds:[cover]', 'there is no space behind holds:; write holds: [cover]'],
  ])('%s written %s', (right, wrong, says) => {
    expect(found(ENGINE.replace(right, wrong))).toEqual([`spec-form: ${says}`]);
  });

  it('counts no item, and calls none covered', () => {
    const engine = ENGINE.replace('    holds', '\tholds');
    const {summary} = check(book({engine, procedures: {'procedure.md': STEPS}}));
    expect(summary).toEqual({
      procedures: 1,
      steps: 1,
      tags: 2,
      judged: false,
      items: 0,
      covered: 0,
      uncovered: [],
      errors: 1,
      warnings: 0,
    });
  });

  it('still lets slips of tags be told', () => {
    const {findings} = check(
      book({
        engine: ENGINE.replace('    holds', '\tholds'),
        procedures: {'procedure.md': '1. Set it on. `instal: cover`\n'},
      }),
    );
    expect(findings.map(({name}) => name)).toEqual(['spec-form', 'unknown-verb']);
  });
});
