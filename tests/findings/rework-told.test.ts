/** What is to be done with a reading that is out, and steps that were meant to say it: all that is told. Sub-steps: CommonMark 0.31, 5.2. */
import {describe, expect, it} from 'vitest';
import {book, EXAMPLE_SHOP} from '../help/example.js';
import {toldOf} from '../help/found.js';
import {SILENT, tellsOfText} from '../help/stories.js';

const engine = `
parts:
  block: {given: true}
  shaft: {}
fits:
  play: {at: [front, rear], between: [shaft], limits: 0.001–0.003 in, by: strip, using: [strip-green], rework: true, when: {installed: []}}
  gap: {between: [shaft], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: []}}
checks:
  drag: {expect: turns by hand, rework: true}
`;

const WAIVED = '`waive: rework-missing by A. Lead because it is known`';
const OUT = '3. Only then. `if: play is out`';
const CALLED =
  '4. Turn it. `check: drag`\n5. Only then. `if: drag is out`\n   1. Take it out. `remove: shaft`\n';
const START = '1. Lay it. `lay: play with strip-green`\n2. Read it. `measure: play`\n';

describe('a reading that may be out', () => {
  tellsOfText('rework-missing', {engine, shop: EXAMPLE_SHOP}, [
    ['is answered', `${START}${OUT}\n   1. Take it out. \`remove: shaft\`\n${CALLED}`, SILENT],
    [
      'is answered where it is in',
      `${START}3. Only then. \`if: play is in\`\n   1. Put it in. \`install: shaft\`\n${CALLED}`,
      SILENT,
    ],
    [
      'is not answered',
      `${START}3. Turn it. \`check: drag\`\n`,
      `
rework-missing play: play may be out, and no step says what to do then
  see engine.yaml:9: play is specified with rework
rework-missing drag: drag may be out, and no step says what to do then
  see engine.yaml:12: drag is specified with rework`,
    ],
    [
      'is answered at one place of two',
      `${START}3. Only then. \`if: play[front] is out\`\n   1. Take it out. \`remove: shaft\`\n${CALLED}`,
      `
rework-missing play[rear]: play[rear] may be out, and no step says what to do then
  see engine.yaml:9: play is specified with rework`,
    ],
    [
      'is never read',
      '1. Look.\n',
      `
rework-missing play: play may be out, and no step says what to do then
  see engine.yaml:9: play is specified with rework
rework-missing drag: drag may be out, and no step says what to do then
  see engine.yaml:12: drag is specified with rework`,
    ],
    [
      'is not answered where another is',
      `${START}3. Only then. \`if: gap is out\`\n   1. Take it out. \`remove: shaft\`\n${CALLED}`,
      `
rework-missing play: play may be out, and no step says what to do then
  see engine.yaml:9: play is specified with rework`,
    ],
    [
      'is waived where it is read',
      `1. Lay it. \`lay: play with strip-green\`\n2. Read it. \`measure: play\` ${WAIVED}\n${CALLED}`,
      SILENT,
    ],
    [
      'is waived where its strip is laid, which is too early',
      `1. Lay it. \`lay: play with strip-green\` ${WAIVED}\n2. Read it. \`measure: play\`\n${CALLED}`,
      `
rework-missing play: play may be out, and no step says what to do then
  see engine.yaml:9: play is specified with rework`,
    ],
  ]);
});

describe('a branch without steps', () => {
  tellsOfText('rework-missing', {engine, shop: EXAMPLE_SHOP}, [
    [
      'has nothing below it',
      `${START}${OUT}\n${CALLED}`,
      `
rework-missing play: play: the branch has no steps under it`,
    ],
    [
      'has a list in its prose',
      `${START}${OUT}\n   2. Take it out.\n${CALLED}`,
      `
rework-missing play: play: the branch has no steps under it; a list right below a line of prose must begin with 1, and this one begins with 2 (CommonMark)
  fix: Put an empty line before 2: "\\n" after "…is out\`\\n"`,
    ],
    [
      'has a list in its prose that begins with two figures',
      `${START}${OUT}\n   12) Take it out.\n${CALLED}`,
      `
rework-missing play: play: the branch has no steps under it; a list right below a line of prose must begin with 1, and this one begins with 12 (CommonMark)
  fix: Put an empty line before 12: "\\n" after "…is out\`\\n"`,
    ],
    [
      'has a list in its prose, in lines of another system',
      `${START}${OUT}\n   2. Take it out.\n${CALLED}`.replaceAll('\n', '\r\n'),
      `
rework-missing play: play: the branch has no steps under it; a list right below a line of prose must begin with 1, and this one begins with 2 (CommonMark)
  fix: Put an empty line before 2: "\\r\\n" after "…s out\`\\r\\n"`,
    ],
    [
      'shows a list',
      `${START}${OUT}\n\n   \`\`\`\n   1. Take it out.\n   \`\`\`\n\n${CALLED}`,
      `
rework-missing play: play: the branch has no steps under it`,
    ],
  ]);
});

it('a reading is waived in the second of two procedures', () => {
  const procedures = {'a.md': `${CALLED}`, 'b.md': `1. Read it. \`measure: play\` ${WAIVED}\n`};
  const names = toldOf(book({engine, procedures})).filter((line) => !line.startsWith(' '));
  expect(names.filter((line) => /^(rework|waiver)/.test(line))).toEqual([]);
});
