/** How the line of a missing step is written into a list, in the way of the list and of the text. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {readProcedure} from '../../src/procedure/read.js';
import {applyEdits} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';

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
