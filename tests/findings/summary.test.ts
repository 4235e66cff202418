<<<<<<< HEAD
/** What a book amounts to in numbers: which items a build must deal with, and which of them no step does. */
=======
/** What a book amounts to: which items a build must deal with, and which of them it does. Every engine is invented. */
>>>>>>> fe
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
<<<<<<< HEAD
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
=======
  cover: {alterations: [scrape], closes: [face]}
  spacer: {}
surfaces:
  face: {on: block, assembly: dry}
joints:
  rim: {between: [block, cover], seal: [paper-gasket]}
fasteners:
  bolts: {holds: [cover], torque: 10 N·m, threads: dry, lock: {value: none, because: stretch}}
fits:
  play: {between: [block, cover], using: [feeler-gauges], limits: 0.1–0.2 mm, when: {installed: [cover]}}
marks:
  serial: {on: block}
checks:
  drag: {limits: 1–2 N·m}
hold-points:
  closing: {name: closing up}
systems:
  jacket: {joints: [rim], with: [coolant]}
alterations:
  scrape: {of: [cover], does: scrape the face flat}
`;
const MUST = ['cover', 'spacer', 'face', 'rim', 'bolts', 'play', 'serial', 'drag', 'closing', 'jacket'];

const FIRST = `
1. Wipe and fit. \`clean: face, rim\` \`install: cover\`
2. Fit. \`install: spacer\`
`;
const SECOND = `
1. Look. \`inspect: block\`
`;

function summaryOf(procedures: Readonly<Record<string, string>>, engine = ENGINE, shop = EXAMPLE_SHOP) {
  return check(book({engine, shop, procedures})).summary;
}

it('counts what is not given as to be dealt with, and no tool, no material and no alteration', () => {
  expect(summaryOf({'a.md': SECOND})).toMatchObject({
    procedures: 1,
    steps: 1,
    tags: 1,
    judged: true,
    items: MUST.length,
    covered: 0,
    uncovered: MUST,
  });
});

it('counts what some step deals with, in whichever procedure', () => {
  expect(summaryOf({'a.md': FIRST, 'b.md': SECOND})).toMatchObject({
    procedures: 2,
    steps: 3,
    tags: 4,
    items: MUST.length,
    covered: 4,
    uncovered: ['bolts', 'play', 'serial', 'drag', 'closing', 'jacket'],
  });
});

it('counts errors and warnings apart', () => {
  const engine = `
parts:
  block: {given: true}
  plug: {single-use: true}
  pin: {single-use: true}
checks:
  drag: {}
`;
  const text = '\n1. Fit both, and feel. `install: plug, pin` `check: drag within 1–2 N·m`\n';
  const {findings, summary} = check(book({engine, procedures: {'a.md': text}}));
  const all = findings.map(({name, severity}) => `${severity} ${name}`);
  expect(all).toEqual([
    'error spec-silent',
    'error single-use-reused',
    'error single-use-reused',
    'warning source-missing',
  ]);
  expect(summary).toMatchObject({errors: 3, warnings: 1});
});

it('judges nothing by a specification that cannot be read whole', () => {
  expect(summaryOf({'a.md': SECOND}, 'parts: [\n')).toMatchObject({
    judged: false,
    items: 0,
    covered: 0,
    uncovered: [],
  });
>>>>>>> fe
});
