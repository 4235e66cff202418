/** How the line of a missing step is written into a list, in the way of the list and of the text. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {readProcedure} from '../../src/procedure/read.js';
import {applyEdits} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';
import {fixOf} from '../help/found.js';

const {spec} = book({
  engine: `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {holds: [caps], torque: 60 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`,
  procedures: {'a.md': ''},
});

const ON = 'Set the caps on. `install: caps`';
const TIGHT = 'Tighten the bolts. `torque: bolts to 60 lbf·ft`';

it.each<[title: string, text: string, after: string | undefined]>([
  ['at the end', `1. Look.\n2. ${ON}\n`, `1. Look.\n2. ${ON}\n3. ${TIGHT}\n`],
  ['between two steps', `1. ${ON}\n2. Look.\n`, `1. ${ON}\n2. ${TIGHT}\n2. Look.\n`],
  [
    'behind several lines',
    `1. Set the caps on.\n   \`install: caps\`\n   With care.\n`,
    `1. Set the caps on.\n   \`install: caps\`\n   With care.\n2. ${TIGHT}\n`,
  ],
  [
    'behind the steps below it',
    `1. ${ON}\n   1. Look.\n\n2. Look.\n`,
    `1. ${ON}\n   1. Look.\n2. ${TIGHT}\n\n2. Look.\n`,
  ],
  ['with brackets', `9) ${ON}\n`, `9) ${ON}\n10) ${TIGHT}\n`],
  ['in a list that stands in', `  1. ${ON}\n`, `  1. ${ON}\n  2. ${TIGHT}\n`],
  ['in lines that end as on Windows', `1. ${ON}\r\n2. Look.\r\n`, `1. ${ON}\r\n2. ${TIGHT}\r\n2. Look.\r\n`],
  ['in lines that end as on an old machine', `1. ${ON}\r2. Look.\r`, `1. ${ON}\r2. ${TIGHT}\r2. Look.\r`],
  ['in a text of one line', `1. ${ON}`, `1. ${ON}\n2. ${TIGHT}`],
  ['nowhere in a quote', `> 1. ${ON}\n`, undefined],
  ['nowhere behind a sub-step', `1. The caps:\n   1. ${ON}\n`, undefined],
])('%s', (_, text, after) => {
  const procedures = [readProcedure(source('a.md', text))];
  const {findings} = check({spec, procedures, problems: []});
  const [slack] = findings.filter(({name}) => name === 'left-slack');
  expect(slack).toBeDefined();
  expect(slack?.fix && applyEdits(text, slack.fix.edits)).toBe(after);
});

const SEAM = `
parts:
  block: {given: true}
  cover: {closes: [seam], substitutes: {twin: {alterations: [grind-lip]}}}
joints:
  seam: {between: [block, cover], seal: [paper-gasket]}
alterations:
  grind-lip: {of: [cover], does: grind the lip flush}
`;
const SEAL = 'Make up the seam with paper gasket. `seal: seam with paper-gasket`';

/** What the fix makes of the text; nothing where there is none. */
function sealed(text: string, job?: string): string | undefined {
  const whole = book({
    engine: SEAM,
    procedures: {'a.md': `---\ntitle: T\nrevision: A\ndate: 2026-01-15\n---\n${text}`},
    job,
  });
  const [open] = check(whole).findings.filter(({name}) => name === 'left-unsealed');
  const before = whole.procedures[0]?.source.text ?? '';
  return open?.fix && applyEdits(before, open.fix.edits).slice(before.indexOf('---\n', 4) + 4);
}

it('a seal goes in before the part, in the part of the text where that stands, behind all that stands below a step', () => {
  const text = (seal: string) => `# One

1. Look.
2. Look.

# Two

1. Wipe it. \`clean: seam\`
   1. Mind the corners.
${seal}2. Put it on. \`install: cover\`
`;
  expect(sealed(text(''))).toBe(text(`2. ${SEAL}\n`));
});

it('a seal goes nowhere behind a step that only a job adds', () => {
  const text = '1. Wipe it. `clean: seam`\n2. Put it on. `install: cover`\n';
  expect(sealed(text)).toContain(SEAL);
  expect(sealed(text, 'substitutes: {cover: twin}\n')).toBeUndefined();
});

it('a reading goes behind the part, but not where the steps ask for it by then, nor without an answer to it', () => {
  const engine = (rework: boolean) => `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {between: [shaft], limits: 0.001–0.003 in, rework: ${rework}, using: [feeler-gauges], when: {installed: [shaft]}}
checks:
  float: {limits: 0.001–0.003 in}
`;
  const on = 'install: shaft';
  const read = '2. Measure the play. `measure: play using feeler-gauges`';
  expect(fixOf('left-unmeasured', engine(false), on)).toBe(read);
  expect(fixOf('left-unmeasured', engine(true), on)).toBeUndefined();
  expect(fixOf('left-unmeasured', engine(true), `${on}; if: play is out`)).toBe(read);
  const asked = (fit: string) =>
    fixOf('left-unmeasured', engine(false), `\`install: shaft\` \`if: ${fit} is out\`; turn: shaft`);
  expect(asked('play')).toBeUndefined();
  expect(asked('float')).toBe(read);
});
