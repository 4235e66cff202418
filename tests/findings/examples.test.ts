/** Every finding's own example: the wrong one shows it, the right one shows nothing at all. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {exampleBook} from '../help/example.js';

const SHOWN = FINDINGS.flatMap(({name, example}) => (example ? [[name, example] as const] : []));

describe.each(SHOWN)('%s', (name, example) => {
  it('shows in its wrong example', () => {
    const {findings} = check(exampleBook(example, 'wrong'), {today: '2026-06-01'});
    expect(findings.map((finding) => finding.name)).toContain(name);
  });

  it('is silent, with every other finding, in its right example', () => {
    const {findings} = check(exampleBook(example, 'right'), {today: '2026-06-01'});
    expect(findings.map((finding) => `${finding.name}: ${finding.message}`)).toEqual([]);
  });
});

it('leaves only what no text can show without an example', () => {
  expect(FINDINGS.filter(({example}) => !example).map(({name}) => name)).toEqual([
    'file-unreadable',
    'picture-missing',
    'not-in-build',
  ]);
});
