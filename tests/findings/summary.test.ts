/** What a book amounts to in numbers: which items a build must deal with, and which of them no step does. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  shaft: {}
  lid: {}
surfaces:
  seat: {on: block, assembly: clean}
joints:
  seam: {between: [block, lid], seal: [paper-gasket]}
fasteners:
  screws: {holds: [lid], torque: 10 N·m, threads: dry, lock: {value: none, because: stretch}}
fits:
  play: {between: [block, shaft], limits: 0.1–0.2 mm, using: [feeler-gauges], when: {installed: [shaft]}}
marks:
  number: {stamped: front}
checks:
  drag: {expect: turns by hand}
systems:
  oil: {joints: [], closed-by: [], with: [engine-oil]}
hold-points:
  closed: {asks: [lid], by: shop lead}
alterations:
  hone: {of: [shaft], does: hone it}
`;

it.each([
  [
    'some',
    {
      'a.md':
        '1. a `install: shaft` `step: first`\n2. b `clean: seat`\n   1. c `inspect: block for cracks`\n',
      'b.md': '1. d `install: lid`\n2. Set the dog down.\n',
    },
    {
      procedures: 2,
      steps: 5,
      tags: 5,
      judged: true,
      items: 10,
      covered: 3,
      uncovered: ['seam', 'screws', 'play', 'number', 'drag', 'closed', 'oil'],
    },
  ],
  [
    'none',
    {'a.md': '1. Look.\n'},
    {
      procedures: 1,
      steps: 1,
      tags: 0,
      judged: true,
      items: 10,
      covered: 0,
      uncovered: ['shaft', 'lid', 'seat', 'seam', 'screws', 'play', 'number', 'drag', 'closed', 'oil'],
    },
  ],
])('counts what %s of the steps deal with', (_, procedures, counts) => {
  const shop = `${EXAMPLE_SHOP}\nseverity: {left-unfilled: warning, left-unchecked: information}\n`;
  const {findings, summary} = check(book({shop, engine: ENGINE, procedures}));
  const of = (severity: string) => findings.filter((one) => one.severity === severity).length;
  expect(of('information')).toBeGreaterThan(0);
  expect(summary).toEqual({...counts, errors: of('error'), warnings: of('warning')});
  expect(summary.warnings).toBeGreaterThan(0);
});
