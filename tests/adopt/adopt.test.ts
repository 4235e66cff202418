/** What is proposed for a text, how the draft is written, and that the figures of the benchmark hold. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {draftOf} from '../../src/adopt/draft.js';
import {proposalsFor, SURE} from '../../src/adopt/proposals.js';
import {check} from '../../src/findings/check.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readTag} from '../../src/procedure/tag.js';
import {tidyEdits} from '../../src/procedure/tidy/edits.js';
import {source} from '../../src/text/source.js';
import {untidy} from '../procedure/untidy.js';
import {HELD_OUT} from './held-out.js';
import {HELD_OUT_SHOP} from './held-out-engine.js';
import {precision, recall} from './score.js';
import {bookScore, developmentScore, heldOutScore, heldOutSpec} from './sets.js';

const spec = heldOutSpec();

function proposed(body: string): string[] {
  return proposalsFor(readProcedure(source('x.md', body)), spec).map(
    ({tag, confidence}) => `${confidence >= SURE ? '' : '? '}${tag}`,
  );
}

function draft(text: string) {
  const options = {spec, others: [], today: '2026-04-05', name: 'Plain'};
  return draftOf(readProcedure(source('x.md', text)), options);
}

describe('proposals', () => {
  it.each([
    [
      'the bolts of what went in',
      '1. Offer the oil pump up.\n2. Torque its bolts to 22 N·m.\n',
      ['install: oil-pump', 'torque: oil-pump-bolts to 22 N·m'],
    ],
    [
      'the lock of what was tightened',
      '1. Torque the oil pump bolts to 22 N·m.\n2. Wire them.\n',
      ['torque: oil-pump-bolts to 22 N·m', 'lock: oil-pump-bolts with wire-10'],
    ],
    [
      'passes',
      '1. Torque the main cap bolts to 70 N·m in three passes: 25, 50, 70.\n',
      ['torque: main-cap-bolts to 70 N·m in 25, 50, 70'],
    ],
    [
      'a list',
      '1. Wipe the crankpins, the main journals and the cam lobes.\n',
      ['clean: crankpins, main-journals, cam-lobes'],
    ],
    [
      'a number that is not the one specified stays in the prose',
      '1. Measure the crankshaft end float: 0.10–0.35 mm.\n',
      ['measure: crank-end-float'],
    ],
    ['nothing of what is forbidden', '1. Never oil the threads of the cylinder head nuts.\n', []],
    ['nothing of what the specification does not know', '1. Install the dynamo.\n', []],
  ])('%s', (_, body, tags) => {
    expect(proposed(body)).toEqual(tags);
  });

  it('leaves tags alone that stand there', () => {
    expect(proposed('1. Offer the oil pump up. `install: oil-pump`\n')).toEqual([]);
  });

  it('offers each where two are meant alike', () => {
    expect(proposed('1. Tighten the screws to 10 N·m.\n')).toEqual([
      '? torque: sump-screws to 10 N·m',
      '? torque: timing-cover-screws to 10 N·m',
    ]);
  });
});

describe('a draft', () => {
  const TEXT =
    '# The pump\n\nSome prose.\n\n1. Offer the oil pump up\n   and hold it.\n2. Tighten the screws to 10 N·m.\n';

  it('keeps every character of the text, and adds front matter, tags and what is left', () => {
    const {text, tags, offers, left} = draft(TEXT);
    expect({tags, offers}).toEqual({tags: 1, offers: 2});
    expect(text.startsWith('---\ntitle: The pump\nrevision: A\ndate: 2026-04-05\n---\n\n# The pump\n')).toBe(
      true,
    );
    expect(text).toContain('1. Offer the oil pump up\n   and hold it. `install: oil-pump`\n');
    expect(text).toContain(
      '10 N·m. `? torque: sump-screws to 10 N·m` `? torque: timing-cover-screws to 10 N·m`\n',
    );
    expect(text).toContain('- oil-pump-bolts: to be tightened and locked\n');
    expect(left).toBeGreaterThan(20);
  });

  it('reads without a fault: an offer is no tag, and the list at the end is no step', () => {
    const after = readProcedure(source('x.md', draft(TEXT).text));
    expect(after.problems).toEqual([]);
    expect(after.steps.map(({tags}) => tags.map(({raw}) => raw))).toEqual([['install: oil-pump'], []]);
    const {findings} = check({spec, procedures: [after], problems: []}, {alone: true});
    expect(findings.filter(({name}) => name === 'tag-form' || name === 'tag-outside-step')).toEqual([]);
  });

  it('is in the canonical form', () => {
    const after = readProcedure(
      source('x.md', draft(HELD_OUT.map(([says], index) => `${index + 1}. ${says}\n`).join('')).text),
    );
    expect(tidyEdits(after, spec)).toEqual([]);
    expect(after.problems).toEqual([]);
  });

  it('keeps CR LF, and front matter that is there', () => {
    const {text} = draft(
      '---\r\ntitle: T\r\nrevision: B\r\ndate: 2026-01-01\r\n---\r\n\r\n1. Install the oil pump.\r\n',
    );
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(text.match(/title:/g)).toHaveLength(1);
  });

  it.each(['Yes: a "title"', 'no', '- dash', 'a # b'])(
    'puts a title in quotes where YAML wants them: %s',
    (title) => {
      const after = readProcedure(
        source(
          'x.md',
          draftOf(readProcedure(source('x.md', '1. Install the oil pump.\n')), {
            spec,
            others: [],
            today: '2026-04-05',
            name: title,
          }).text,
        ),
      );
      expect(after.front.title).toBe(title);
    },
  );

  it('breaks a long line, in the indentation of its step', () => {
    const long = `10. ${'Hold it straight, and '.repeat(4)}install the oil pump.\n`;
    expect(draft(long).text).toContain('oil pump.\n    `install: oil-pump`\n');
  });

  it('warns of what the step below a caution brings, and asks where the caution does not say so', () => {
    const shop = HELD_OUT_SHOP.replace(
      '{name: cleaning solvent, use: cleaner}',
      '{name: cleaning solvent, use: cleaner, hazards: [fire, vapour, numbness]}',
    );
    const text =
      '1. x\n\n   > **Warning:** It burns, and its vapour\n   > makes you drowsy.\n   >\n\n2. Wipe the crankpins with solvent.\n';
    const options = {spec: heldOutSpec(shop), others: [], today: '2026-04-05', name: 'Plain'};
    const after = draftOf(readProcedure(source('x.md', text)), options).text;
    expect(after).toContain('   > makes you drowsy. `hazard: fire, vapour` `? hazard: numbness`\n   >\n');
  });

  it('lists the steps for which nothing was found', () => {
    const {text} = draft('1. Look the pump over.\n2. Install the oil pump and grease the dynamo.\n');
    expect(text).toContain(
      'For these no tag was found:\n\n- step 1: Look the pump over.\n- step 2 says "grease the dynamo"',
    );
  });

  it('takes what other procedures of the book do from the list', () => {
    const other = readProcedure(source('o.md', '1. x `record: engine-number`\n'));
    const plain = readProcedure(source('x.md', '1. Install the oil pump.\n'));
    const options = {spec, today: '2026-04-05', name: 'Plain'};
    expect(draftOf(plain, {...options, others: []}).text).toContain('- engine-number: to be recorded');
    expect(draftOf(plain, {...options, others: [other]}).text).not.toContain('engine-number');
  });
});

describe('any text', () => {
  it('is drafted without a fault, every character kept, every step where it was', () => {
    fc.assert(
      fc.property(fc.oneof(untidy, fc.string({unit: 'binary', maxLength: 200})), (text) => {
        const before = readProcedure(source('x.md', text));
        const after = draft(before.source.text);
        const read = readProcedure(source('x.md', after.text));
        expect(read.steps.slice(0, before.steps.length).map(({number}) => number)).toEqual(
          before.steps.map(({number}) => number),
        );
        let from = 0;
        for (const character of before.source.text.trimEnd()) {
          from = after.text.indexOf(character, from) + 1;
          expect(from).toBeGreaterThan(0);
        }
      }),
      {numRuns: 40},
    );
  });
});

describe('the benchmark', () => {
  it('asks for tags that can be read and name what there is', () => {
    expect(HELD_OUT.length).toBeGreaterThanOrEqual(150);
    for (const [, ...tags] of HELD_OUT) {
      for (const text of tags) {
        const {tag, problems} = readTag(text, 0, 'x.md');
        expect(problems).toEqual([]);
        for (const {id} of tag?.targets ?? []) expect(spec.items.has(id), id).toBe(true);
      }
    }
    expect(spec.problems.filter(({name}) => name !== 'spec-silent')).toEqual([]);
  });

  it('holds its figures', async () => {
    const sentences = heldOutScore();
    expect(precision(sentences.sure)).toBeGreaterThanOrEqual(0.95);
    expect(recall(sentences.sure)).toBeGreaterThanOrEqual(0.88);
    const book = await bookScore('procedures/ottermouth-four');
    expect(precision(book.sure)).toBeGreaterThanOrEqual(0.9);
    expect(recall(book.sure)).toBeGreaterThanOrEqual(0.68);
    const development = await developmentScore();
    expect(precision(development.sure)).toBeGreaterThanOrEqual(0.95);
  });
});
