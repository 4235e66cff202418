/** Every finding's own example: the wrong one shows it, the right one shows nothing at all. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {exampleBook} from '../help/example.js';

describe.each(FINDINGS.map((kind) => [kind.name, kind] as const))('%s', (name, kind) => {
  it('shows in its wrong example', () => {
    const {findings} = check(exampleBook(kind.example, 'wrong'), {today: '2026-06-01'});
    expect(findings.map((finding) => finding.name)).toContain(name);
  });

  it('is silent, with every other finding, in its right example', () => {
    const {findings} = check(exampleBook(kind.example, 'right'), {today: '2026-06-01'});
    expect(findings.map((finding) => `${finding.name}: ${finding.message}`)).toEqual([]);
  });
});
