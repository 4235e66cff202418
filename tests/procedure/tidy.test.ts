/** The canonical form: what it looks like, and that making it changes neither the sheet nor a byte of the prose. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {loadBooks} from '../../src/host/load.js';
import type {Procedure} from '../../src/procedure/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {tidyEdits} from '../../src/procedure/tidy/edits.js';
import {compileSheet} from '../../src/sheet/compile.js';
import type {Specification} from '../../src/spec/model.js';
import {applyEdits, editFault} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';
import {UNTIDY_ENGINE, untidy} from './untidy.js';

const {spec} = book({engine: UNTIDY_ENGINE, procedures: {'procedure.md': '1. x\n'}});

describe('a tag', () => {
  it.each([
    ['spaces', 'torque:bolts   to  85 lbf·ft', 'torque: bolts to 85 lbf·ft'],
    ['padding', '  install: caps ', 'install: caps'],
    ['verb in capitals', 'Torque : bolts to snug', 'torque: bolts to snug'],
    ['no colon', 'torque bolts to 85 lbf·ft', 'torque: bolts to 85 lbf·ft'],
    ['commas', 'clean: journals ,caps', 'clean: journals, caps'],
    ['places in the order of at', 'install: caps[rear,front]', 'install: caps[front, rear]'],
    ['places in the order of tightening stay', 'torque: bolts[rear,front]', 'torque: bolts[rear, front]'],
    ['an unknown place', 'install: caps[rear, middle]', 'install: caps[rear, middle]'],
    [
      'clauses',
      'torque: bolts using wrench in 30, 60, 85 to 85 lbf·ft',
      'torque: bolts to 85 lbf·ft in 30, 60, 85 using wrench',
    ],
    ['a unit', 'torque: bolts to 85 ft-lbs', 'torque: bolts to 85 lbf·ft'],
    ['another unit stays', 'torque: bolts to 115 Nm', 'torque: bolts to 115 N·m'],
    ['figures stay', 'torque: bolts to 85.0 lb.ft', 'torque: bolts to 85.0 lbf·ft'],
    [
      'passes in the unit of the torque',
      'torque: bolts to 85 lb-ft in 30 lb-ft, 85 lb-ft',
      'torque: bolts to 85 lbf·ft in 30, 85',
    ],
    [
      'passes in another',
      'torque: bolts to 85 lbf·ft in 40 Nm, 115 Nm',
      'torque: bolts to 85 lbf·ft in 40, 115 N·m',
    ],
    ['passes alone', 'torque: bolts in 30,85 lb-ft', 'torque: bolts in 30, 85 lbf·ft'],
    ['limits', 'measure: play within .0015..0.0025"', 'measure: play within 0.0015–0.0025 in'],
    ['a tolerance', 'measure: play within 0.002 +/- 0.0005 in', 'measure: play within 0.002 ±0.0005 in'],
    ['one limit', 'measure: play within ≤.0025 inch', 'measure: play within max 0.0025 in'],
    ['per cent stays', 'torque: bolts to 85  ±5 % ft-lb', 'torque: bolts to 85 ±5 % ft-lb'],
    ['a fraction', 'measure: play within 1½"', 'measure: play within 1-1/2 in'],
    ['free words', 'lock: bolts with safety-wire   0.041  in', 'lock: bolts with safety-wire 0.041 in'],
    ['free text', 'inspect: caps for  cracks,  scores', 'inspect: caps for cracks, scores'],
    ['quotes stay', 'inspect: caps for "with, and in"', 'inspect: caps for "with, and in"'],
    [
      'a reason',
      'waive: wire-run because it is  short by R. Tamsin',
      'waive: wire-run because it is short by R. Tamsin',
    ],
    ['a limit that goes with an angle', 'torque: bolts turn 90 deg', 'torque: bolts turn 90°'],
    ['an unknown item', 'clean:  nothing-known', 'clean: nothing-known'],
  ])('%s', (_, before, after) => {
    expect(tidied(`1. Do it. \`${before}\`\n`)).toBe(`1. Do it. \`${after}\`\n`);
  });

  it.each([
    'torque: bolts  to 85',
    'torque: bolts  with  wrench',
    'clean:  Journals',
    'trque:  bolts',
    'torque:  ',
    'torque: bolts  to 85 lbf·ft  to 90 lbf·ft',
    'https://example.org',
  ])('that cannot be read stays: %s', (text) => {
    expect(tidied(`1. Do it. \`${text}\`\n`)).toBe(`1. Do it. \`${text}\`\n`);
  });

  it('keeps its line breaks, with the indentation of its step', () => {
    const before = '9. a\n9. b\n10. Do it. `torque:  bolts\n    to 85 ft-lb using\n    wrench`\n';
    expect(tidied(`${'1. x\n'.repeat(7)}${before}`)).toContain(
      '10. Do it. `torque: bolts\n    to 85 lbf·ft using\n    wrench`\n',
    );
    expect(tidied('1. x\n1. x\n10. Do it. `torque:bolts\n    to 85 ft-lb`\n')).toContain(
      '3. Do it. `torque: bolts\n   to 85 lbf·ft`\n',
    );
  });

  it('is tidied in cautions and headings too', () => {
    const text =
      '## Boats `only:raw`\n\n> **Danger:** Hot. `hazard:eyes,heat`\n\n1. x\n\n> **Notice:** y `hazard:z`\n';
    expect(tidied(text)).toBe(
      '## Boats `only: raw`\n\n> **Danger:** Hot. `hazard: eyes, heat`\n\n1. x\n\n> **Notice:** y `hazard: z`\n',
    );
  });

  it('keeps double backticks where the text needs them', () => {
    expect(tidied('1. x `` inspect:caps for  `a` ``\n')).toBe('1. x `` inspect: caps for `a` ``\n');
  });
});

describe('numbers', () => {
  it.each([
    ['run on across headings', '1. a\n2. b\n\n## B\n1. c\n', '1. a\n2. b\n\n## B\n3. c\n'],
    ['run on across cautions', '1. a\n\n> **Danger:** x\n\n1. b\n', '1. a\n\n> **Danger:** x\n\n2. b\n'],
    ['twice the same', '1. a\n2. b\n2. c\n', '1. a\n2. b\n3. c\n'],
    ['a gap', '1. a\n3. b\n', '1. a\n2. b\n'],
    ['noughts', '01. a\n02. b\n', '1. a\n2. b\n'],
    ['all 1 stays', '1. a\n1. b\n\n## B\n\n1. c\n', '1. a\n1. b\n\n## B\n\n1. c\n'],
    ['1 alone in every list is no such style', '1. a\n\n## B\n\n1. c\n', '1. a\n\n## B\n\n2. c\n'],
    ['sub-steps from 1', '1. a\n\n   4. b\n   7. c\n', '1. a\n\n   1. b\n   2. c\n'],
    [
      'sub-steps run on below a step',
      '1. a\n   1. b\n\n   > **Danger:** x\n\n   1. c\n',
      '1. a\n   1. b\n\n   > **Danger:** x\n\n   2. c\n',
    ],
    ['sub-steps all 1 stay', '1. a\n   1. b\n   1. c\n3. d\n', '1. a\n   1. b\n   1. c\n2. d\n'],
    [
      'right below a paragraph',
      'Para\n1. a\n2. b\n\nPara\n1. c\n1. d\n',
      'Para\n1. a\n2. b\n\nPara\n1. c\n2. d\n',
    ],
    ['no steps', '> 3. a\n> 3. b\n\n- x\n  4. y\n\n1. a\n', '> 3. a\n> 3. b\n\n- x\n  4. y\n\n1. a\n'],
    ['two marks', '1) a\n1) b\n7. c\n', '1) a\n2) b\n3. c\n'],
  ])('%s', (_, before, after) => {
    expect(tidied(before)).toBe(after);
  });

  it('move the content of a step with the width of its number', () => {
    const more = [
      '   more',
      '',
      '   - one',
      '     - two',
      '',
      '   ```',
      '     code',
      '   ',
      '   ```',
      '   1. sub',
      '      deep',
      'lazy',
    ];
    const lines = ['9. a', ...Array(8).fill('9. a'), '1. b', ...more, '1. c'].join('\n');
    const after = tidied(`${lines}\n`);
    expect(after).toContain(
      '10. b\n    more\n\n    - one\n      - two\n\n    ```\n      code\n    \n    ```\n    1. sub\n       deep\nlazy\n11. c\n',
    );
  });

  it('move it back', () => {
    expect(tidied('10. a\n\n    more\n\n    1. sub\n        1. deep\n')).toBe(
      '1. a\n\n   more\n\n   1. sub\n       1. deep\n',
    );
  });

  it('keep the width where tabs stand', () => {
    expect(tidied('10.\ta\n\n\tmore\n')).toBe('1.\ta\n\n\tmore\n'.replace('1.\t', '1.  '));
  });

  it('never change what stands below a step', () => {
    // At three columns the bullet would become content of a narrower step.
    const text = '10. a\n\n   - no content of it\n';
    const after = tidied(text);
    expect(after).toBe('1.  a\n\n   - no content of it\n');
  });
});

describe('any procedure', () => {
  it('is tidy after one go, says the same, and keeps its prose to the byte', () => {
    fc.assert(
      fc.property(untidy, (text) => {
        const before = readProcedure(source('procedure.md', text));
        const edits = tidyEdits(before, spec);
        expect(editFault(edits, text.length)).toBeUndefined();
        const once = applyEdits(text, edits);
        const after = readProcedure(source('procedure.md', once));
        expect(applyEdits(once, tidyEdits(after, spec))).toBe(once);
        expect(sheetOf(after)).toEqual(sheetOf(before));
        expect(
          faults(before)
            .filter((one) => !faults(after).includes(one))
            .filter((one) => !VERB.test(one)),
        ).toEqual([]);
        expect(faults(after).filter((one) => !faults(before).includes(one))).toEqual([]);
        expect(bare(after)).toBe(bare(before));
      }),
      {numRuns: 60},
    );
  });

  it('of the demonstration books is tidy, and is so again from a loose writing', async () => {
    const {books} = await loadBooks(['procedures', 'src/cli/begin']);
    expect(books.length).toBeGreaterThan(2);
    for (const {book: whole} of books) {
      for (const procedure of whole.procedures) {
        expect(tidyEdits(procedure, whole.spec)).toEqual([]);
        const {file, text} = procedure.source;
        const loose = readProcedure(source(file, loosened(text)));
        expect(applyEdits(loose.source.text, tidyEdits(loose, whole.spec))).toBe(text);
        expect(sheetOf(loose, whole.spec)).toEqual(sheetOf(procedure, whole.spec));
      }
    }
  });
});

/** The only faults that are mere spelling. */
const VERB = /the verb is written|the colon after/;

function tidied(body: string): string {
  const text = `---\ntitle: T\nrevision: A\ndate: 2026-01-02\n---\n\n${body}`;
  const procedure = readProcedure(source('procedure.md', text));
  const after = applyEdits(text, tidyEdits(procedure, spec));
  expect(sheetOf(readProcedure(source('procedure.md', after)))).toEqual(sheetOf(procedure));
  return after.slice(text.length - body.length);
}

function sheetOf(procedure: Procedure, of: Specification = spec) {
  return compileSheet({spec: of, procedures: [procedure]}, procedure, {fingerprint: '0'.repeat(64)});
}

function faults({problems}: Procedure): string[] {
  return problems.map(({name, says}) => `${name}: ${says}`);
}

/** The text without its tags, the numbers before steps, and the indentation that goes with those. */
function bare({source: {text}, steps}: Procedure): string {
  const away = steps.map(({span}) => ({
    start: span.start,
    end: span.start + (/^\d+[.)][ \t]*/.exec(text.slice(span.start, span.start + 20))?.[0].length ?? 0),
  }));
  const without = [...away]
    .sort((a, b) => b.start - a.start)
    .reduce((left, {start, end}) => left.slice(0, start) + left.slice(end), text);
  return without.replace(/`[^`]*`/g, '``').replace(/^[ \t]+/gm, '');
}

/** As a hurried author might have written it. */
function loosened(text: string): string {
  return text
    .replace(/^(\d+)\. /gm, (_, numeral: string) => `${'7'.repeat(numeral.length)}. `)
    .replace(
      /`([a-z]+): ([^`\n]*)`/g,
      (_, verb: string, rest: string) =>
        `\` ${verb} :  ${(/ (?:for|because) /.test(rest) ? rest : rest.replaceAll(', ', ' ,')).replaceAll(' lbf·ft', ' ft-lb')} \``,
    );
}
