/** Where the fix of caution-late puts the caution, and what it leaves behind; whatever is set in stays where it is. */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {readProcedure} from '../../src/procedure/read.js';
import {applyEdits} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  shells: {hazards: [heavy]}
`;
const FRONT = '---\ntitle: Example\nrevision: A\ndate: 2026-03-01\n---\n';
const SET = '1. Set them in. `install: shells`\n';
const CAUTION = '> **Caution:** They are heavy. `hazard: heavy`\n';
const LAST = '2. Stand back.\n';

it.each<readonly [title: string, text: string, mended: string | undefined]>([
  ['a blank line all round', `\n${SET}\n${CAUTION}\n${LAST}`, `\n${CAUTION}\n${SET}\n${LAST}`],
  ['text right above the step', `Text.\n${SET}\n${CAUTION}\n${LAST}`, `Text.\n\n${CAUTION}\n${SET}\n${LAST}`],
  [
    'a line of spaces above the step',
    `\nText.\n \t\n${SET}\n${CAUTION}`,
    `\nText.\n \t\n${CAUTION}\n${SET}\n`,
  ],
  [
    'spaces behind the caution and on the line below',
    `\n${SET}\n${CAUTION.trimEnd()} \t\n \n${LAST}`,
    `\n${CAUTION.trimEnd()} \t\n\n${SET}\n${LAST}`,
  ],
  [
    'CRLF',
    `\n${SET}\n${CAUTION}\n${LAST}`.replaceAll('\n', '\r\n'),
    `\n${CAUTION}\n${SET}\n${LAST}`.replaceAll('\n', '\r\n'),
  ],
  ['a caution that is set in', `\n${SET}\n   ${CAUTION}\n${LAST}`, undefined],
  ['a list that is set in', `\n  ${SET}\n${CAUTION}\n${LAST}`, undefined],
])('%s', (_, text, mended) => {
  const whole = `${FRONT}${text}`;
  const {findings} = check(book({engine: ENGINE, procedures: {'procedure.md': whole}}));
  const late = findings.filter(({name}) => name === 'caution-late');
  expect(late).toHaveLength(1);
  const fix = late[0]?.fix;
  expect(fix && applyEdits(whole, fix.edits)).toBe(mended === undefined ? undefined : `${FRONT}${mended}`);
});

it('goes to the top of a text that begins with the step', () => {
  const {spec} = book({engine: ENGINE, procedures: {'procedure.md': ''}});
  const text = `${SET}\n${CAUTION}\n${LAST}`;
  const {findings} = check({spec, procedures: [readProcedure(source('procedure.md', text))], problems: []});
  const [late] = findings.filter(({name}) => name === 'caution-late');
  expect(late?.fix && applyEdits(text, late.fix.edits)).toBe(`${CAUTION}\n${SET}\n${LAST}`);
});

/** A job that fits shells of another engine adds the step that grinds them, with a caution of its own. */
it.each<readonly [title: string, text: string]>([
  ['before the step', `\n${CAUTION}\n1. Look.\n2. Set them in. \`install: shells\`\n`],
  ['right before the step', `\n1. Look.\n\n${CAUTION}\n2. Set them in. \`install: shells\`\n`],
  ['behind the step', `\n1. Look.\n2. Set them in. \`install: shells\`\n\n${CAUTION}\n3. Look.\n`],
  ['nowhere', '\n1. Look.\n2. Set them in. `install: shells`\n'],
])('asks for no caution for a step that a job adds, where one stands %s', (_, text) => {
  const engine = `
parts:
  block: {given: true}
  shells: {substitutes: {twins: {alterations: [grind-lip]}}}
alterations:
  grind-lip: {of: [shells], does: grind the lip flush, hazards: [heavy]}
`;
  const job = 'substitutes: {shells: twins}\n';
  const whole = book({engine, procedures: {'procedure.md': FRONT + text}, job});
  const names = check(whole).findings.map(({name}) => name);
  expect(names.filter((name) => name.startsWith('caution-'))).toEqual([]);
});

it('moves up the first caution of the text, not that of a step that a job adds', () => {
  const engine = `
parts:
  block: {given: true}
  shells: {substitutes: {twins: {alterations: [grind-lip]}}}
  wheel: {alterations: [grind-rim]}
alterations:
  grind-lip: {of: [shells], does: grind the lip flush, hazards: [eyes]}
  grind-rim: {of: [wheel], does: grind the rim true, hazards: [eyes]}
`;
  const first = '1. Grind it. `alter: wheel by grind-rim`\n';
  const caution = '> **Caution:** Grit flies. `hazard: eyes`\n';
  const last = '2. Set them in. `install: shells`\n';
  const text = `${FRONT}\n${first}\n${caution}\n${last}`;
  const job = 'substitutes: {shells: twins}\n';
  const {findings} = check(book({engine, procedures: {'procedure.md': text}, job}));
  const late = findings.filter(({name}) => name.startsWith('caution-'));
  expect(late.map(({name, fix}) => `${name}: ${fix && applyEdits(text, fix.edits)}`)).toEqual([
    `caution-late: ${FRONT}\n${caution}\n${first}\n${last}`,
  ]);
});
