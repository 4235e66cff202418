/** Tags one by one: what each verb takes and refuses, how targets and clauses are cut, and what recovers. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {ClauseValue, Tag} from '../../src/procedure/model.js';
import {readTag} from '../../src/procedure/tag.js';
import {CLAUSE_WORDS, type ClauseWord, tagSpec, VERBS, type Verb} from '../../src/procedure/verbs.js';
import {applyEdits} from '../../src/text/edit.js';
import type {Problem} from '../../src/text/problem.js';
import {source} from '../../src/text/source.js';
import {expectProblem, expectTag} from './invariants.js';

const BEFORE = 'Words ahead ';

/** Reads a tag that stands after other text, and checks every span of it. */
function read(text: string): {tag: Tag | undefined; problems: readonly Problem[]; meant: boolean} {
  const from = source('a.md', BEFORE + text);
  const {tag, problems, meant} = readTag(text, BEFORE.length, from.file);
  if (tag) expectTag(from, tag);
  for (const problem of problems) expectProblem(from, problem);
  return {tag, problems, meant};
}

/** A problem as `name: the text it points at`. */
function said(text: string): string[] {
  return read(text).problems.map(({name, where: {span}}) => {
    return `${name}: ${text.slice(span.start - BEFORE.length, span.end - BEFORE.length)}`;
  });
}

/** The tag in short: verb, targets with places, clauses with the text of their values. */
function short(text: string): string {
  const {tag} = read(text);
  if (tag === undefined) return 'no tag';
  const targets = tag.targets.map(({id, places}) => {
    return places.length === 0 ? id : `${id}[${places.map(({name}) => name).join('|')}]`;
  });
  const clauses = tag.clauses.map(({word, valueSpan: {start, end}}) => {
    return `${word} <${text.slice(start - BEFORE.length, end - BEFORE.length)}>`;
  });
  return [tag.verb, ...targets, ...clauses].join(' ');
}

// The table of the design, written again by hand: what may stand after which verb.
const TAKEN: {readonly [verb in Verb]: readonly ClauseWord[]} = {
  clean: ['with', 'using'],
  inspect: ['with', 'using', 'for'],
  measure: ['with', 'using', 'within'],
  lay: ['with', 'using'],
  lube: ['with', 'using'],
  seal: ['with', 'using'],
  alter: ['with', 'using', 'by'],
  renew: ['using'],
  install: ['with', 'using'],
  remove: ['using'],
  torque: ['using', 'to', 'in', 'turn'],
  loosen: ['using'],
  lock: ['with', 'using'],
  stripe: ['with', 'using'],
  turn: ['using', 'for'],
  cure: ['for'],
  fill: ['with', 'using', 'to'],
  drain: ['using'],
  check: ['using', 'within', 'for', 'by'],
  record: [],
  witness: ['by'],
  hazard: [],
  step: [],
  only: [],
  if: ['is'],
  repeat: [],
  waive: ['by', 'because'],
};

const SAMPLE: {readonly [word in ClauseWord]: string} = {
  with: 'thing-a',
  using: 'thing-b 0.041 in, thing-c',
  to: '85 lbf·ft',
  in: '30, 60',
  within: '0.0015–0.0025 in',
  for: '24 h',
  turn: '90°',
  by: 'lead',
  is: 'out',
  because: 'the lead said so',
};

describe('every verb with every clause', () => {
  for (const verb of VERBS) {
    const must = verb === 'if' ? ' is out' : '';
    it.each(CLAUSE_WORDS)(`${verb} … %s`, (word) => {
      const value = verb === 'fill' && word === 'to' ? '7 qt' : SAMPLE[word];
      const clause = `${word} ${value}`;
      const text = `${verb}: some-item${word === 'is' ? '' : must} ${clause}`;
      const takes = TAKEN[verb].includes(word);
      expect(said(text).filter((line) => line.startsWith('clause-not-taken'))).toEqual(
        takes ? [] : [`clause-not-taken: ${clause}`],
      );
      if (takes) expect(said(text)).toEqual(word === 'in' ? ['unit-missing: 30', 'unit-missing: 60'] : []);
      expect(read(text).tag?.clauses.map((found) => found.word)).toEqual([
        ...(must && word !== 'is' ? ['is'] : []),
        ...(takes && word !== 'in' ? [word] : []),
      ]);
    });
  }

  it.each(VERBS)('%s says what it does in one line', (verb) => {
    expect(tagSpec(verb).says).toMatch(/^[a-z][^.]{8,70}$/);
    for (const clause of Object.values(tagSpec(verb).clauses))
      expect(clause.says).toMatch(/^[a-z][^.]{5,70}$/);
  });
});

describe('a right tag', () => {
  it.each([
    ['lube: camshaft-journals with assembly-lube', 'lube camshaft-journals with <assembly-lube>'],
    ['install: camshaft using soft-mallet', 'install camshaft using <soft-mallet>'],
    ['torque: bolts to 85 lbf·ft in 30, 60, 85', 'torque bolts to <85 lbf·ft> in <30, 60, 85>'],
    ['torque: bolts in 30, 60, 85 to 85 lbf·ft', 'torque bolts in <30, 60, 85> to <85 lbf·ft>'],
    ['torque: bolts to 1020 in-lb in 400, 800', 'torque bolts to <1020 in-lb> in <400, 800>'],
    ['torque: bolts to 1020 in lb in 400, 1020', 'torque bolts to <1020 in lb> in <400, 1020>'],
    ['torque: bolts to snug turn 90°', 'torque bolts to <snug> turn <90°>'],
    ['lock: bolts with safety-wire 0.041 in', 'lock bolts with <safety-wire 0.041 in>'],
    ['lock: a, b with wire 0.041 in, tab using pliers', 'lock a b with <wire 0.041 in, tab> using <pliers>'],
    ['clean:block', 'clean block'],
    ['  clean :  block'.replace(' :', ':'), 'clean block'],
    ['measure: fit[front, 2] within max 0.0025 in', 'measure fit[front|2] within <max 0.0025 in>'],
    ['measure: fit within 0.0020 to 0.0040 in', 'measure fit within <0.0020 to 0.0040 in>'],
    [
      'measure: fit within −0.0010 to 0.0005 in using a',
      'measure fit within <−0.0010 to 0.0005 in> using <a>',
    ],
    ['measure: fit within 0.0020—0.0040 in', 'measure fit within <0.0020—0.0040 in>'],
    ['check: speed within 440–460 rpm', 'check speed within <440–460 rpm>'],
    ['measure: fit[1,2],other [rear]', 'measure fit[1|2] other[rear]'],
    ['measure: fit within 1½ in using a', 'measure fit within <1½ in> using <a>'],
    ['measure: bolts-2 within 2.4995 ±0.0005 in', 'measure bolts-2 within <2.4995 ±0.0005 in>'],
    ['if: clearance is in', 'if clearance is <in>'],
    ['check: leaks for "drops in the bay" by lead', 'check leaks for <drops in the bay> by <lead>'],
    ['check: leaks for “drops in the bay”', 'check leaks for <drops in the bay>'],
    [
      'waive: two-actions because it is done by two, in turn',
      'waive two-actions because <it is done by two, in turn>',
    ],
    ['fill: cooling to the top mark', 'fill cooling to <the top mark>'],
    ['cure: j for 24 h', 'cure j for <24 h>'],
    ['hazard: eyes, hot-metal', 'hazard eyes hot-metal'],
    ['alter: shells by grind-off-lip', 'alter shells by <grind-off-lip>'],
  ])('%s', (text, expected) => {
    expect(said(text)).toEqual([]);
    expect(short(text)).toBe(expected);
  });

  it.each<[string, ClauseWord, ClauseValue['type'], unknown]>([
    ['torque: b to snug', 'to', 'word', 'snug'],
    ['if: f is out', 'is', 'word', 'out'],
    ['fill: s to  the\n   top mark', 'to', 'text', 'the top mark'],
    ['waive: f because "no, said he"', 'because', 'text', 'no, said he'],
    ['witness: h by shop lead', 'by', 'text', 'shop lead'],
    ['cure: j for 24 h', 'for', 'amount', 24],
    ['fill: s to 7 qt', 'to', 'amount', 7],
    ['torque: b to 85 lbf·ft in 30, 60, 85', 'in', 'amounts', [30, 60, 85]],
    ['lock: b with wire 0.041 in twisted, tab', 'with', 'ids', ['wire|0.041 in twisted', 'tab|']],
    ['lock: b with wire "0.041 in, by hand"', 'with', 'ids', ['wire|0.041 in, by hand']],
  ])('%s: the value of %s', (text, word, type, expected) => {
    const value = read(text).tag?.clauses.find((clause) => clause.word === word)?.value;
    expect(value?.type).toBe(type);
    expect(value && plain(value)).toEqual(expected);
  });

  it('gives passes the unit of the torque', () => {
    const value = read('torque: b to 115 N·m in 40, 80').tag?.clauses[1]?.value;
    const units =
      value?.type === 'amounts' ? value.amounts.map((a) => a.form === 'single' && a.value.unit.symbol) : [];
    expect(units).toEqual(['N·m', 'N·m']);
  });
});

function plain(value: ClauseValue): unknown {
  if (value.type === 'ids') return value.ids.map(({id, rest}) => `${id}|${rest}`);
  if (value.type === 'amounts')
    return value.amounts.map((amount) => amount.form === 'single' && amount.value.value);
  if (value.type === 'amount') return value.amount.form === 'single' && value.amount.value.value;
  return value.type === 'word' ? value.word : value.text;
}

describe('a wrong tag is read as far as it goes', () => {
  it.each<[string, string[], string]>([
    ['torque: bolts to 85', ['unit-missing: 85'], 'torque bolts'],
    ['torque: bolts to 85 in 30, 60', ['unit-missing: 85'], 'torque bolts'],
    ['torque: bolts to 85 kg using a', ['unit-wrong-kind: kg'], 'torque bolts using <a>'],
    ['torque: bolts to 85 ft', ['unit-wrong-kind: ft'], 'torque bolts'],
    ['cure: j for 24 mm', ['unit-wrong-kind: mm'], 'cure j'],
    ['torque: bolts turn 90 in', ['unit-wrong-kind: in'], 'torque bolts'],
    ['torque: bolts to lots', ['tag-form: lots'], 'torque bolts'],
    ['torque: bolts to', ['tag-form: to'], 'torque bolts'],
    ['torque: bolts to using a', ['tag-form: to'], 'torque bolts using <a>'],
    ['torque: bolts to snug to 85 lbf·ft', ['tag-form: to 85 lbf·ft'], 'torque bolts to <snug>'],
    ['torque: bolts with oil to snug', ['clause-not-taken: with oil'], 'torque bolts to <snug>'],
    ['torque:', ['tag-form: torque'], 'torque'],
    ['torque: to snug', ['tag-form: torque'], 'torque to <snug>'],
    ['clean: a,, b', ['tag-form: ,'], 'clean a b'],
    ['clean: a, b,', ['tag-form: ,'], 'clean a b'],
    ['clean: a b, c', ['tag-form: b'], 'clean a c'],
    ['clean: Main_Caps, b', ['tag-form: Main_Caps'], 'clean b'],
    ['clean: "a", b', ['tag-form: "a"'], 'clean b'],
    ['clean: a wiht b', ['tag-form: wiht'], 'clean a'],
    ['clean: a with b usign c', ['tag-form: usign'], 'clean a with <b usign c>'],
    ['clean: a[front', ['tag-form: ['], 'clean a[front]'],
    ['clean: a[front with b', ['tag-form: ['], 'clean a[front] with <b>'],
    ['clean: a[], b', ['tag-form: []'], 'clean b'],
    ['clean: a[,1], b', ['tag-form: ,'], 'clean a[1] b'],
    ['clean: a], b', ['tag-form: ]'], 'clean a b'],
    ['clean: [1], b', ['tag-form: [1]'], 'clean b'],
    ['clean: a with B, c', ['tag-form: B'], 'clean a with <B, c>'],
    ['clean: a with b,', ['tag-form: ,'], 'clean a with <b,>'],
    ['check: a for "no end', ['tag-form: "no end'], 'check a for <no end>'],
    ['if: clearance', ['tag-form: if'], 'if clearance'],
    ['if: clearance is', ['tag-form: is'], 'if clearance'],
    ['if: clearance is maybe', ['tag-form: maybe'], 'if clearance'],
    ['if: a, b is out', ['tag-form: b'], 'if a is <out>'],
    ['step: one, two', ['tag-form: two'], 'step one'],
    ['step: one[1]', ['tag-form: [1]'], 'step one'],
    ['repeat: 3', ['tag-form: 3'], 'repeat'],
    ['hazard: hot metal', ['tag-form: metal'], 'hazard hot'],
    ['inspect: a for cracks in webs', ['clause-not-taken: in webs'], 'inspect a for <cracks>'],
    ['torqe: a to 85', ['unknown-verb: torqe'], 'no tag'],
    ['polish: a', ['unknown-verb: polish'], 'no tag'],
    ['Clean: a', ['tag-form: Clean:'], 'clean a'],
    ['clean : a', ['tag-form: clean :'], 'clean a'],
    ['clean main-caps', ['tag-form: clean'], 'clean main-caps'],
    ['torque bolts to snug', ['tag-form: torque'], 'torque bolts to <snug>'],
    [
      'torque: A, b[ to 85 with c',
      ['tag-form: A', 'tag-form: [', 'tag-form: [', 'unit-missing: 85', 'clause-not-taken: with c'],
      'torque',
    ],
  ])('%s', (text, problems, expected) => {
    expect(said(text)).toEqual(problems);
    expect(short(text)).toBe(expected);
  });
});

describe('ordinary code', () => {
  it.each([
    'https://example.org',
    'file://x',
    'F:\\tools',
    '10:30',
    '1:100',
    'M8',
    'x:y',
    'clean',
    'turn left',
    ':',
    '',
    ' ',
    '`',
    'in: ',
    'note:',
    '3/8-16 UNC',
    'check engine',
  ])('%s', (text) => {
    expect(read(text)).toEqual({tag: undefined, problems: [], meant: false});
  });
});

describe('a fix', () => {
  it.each([
    ['torqe: a to snug', 'torque: a to snug'],
    ['Torque : a', 'torque: a'],
    ['clean main-caps', 'clean: main-caps'],
    ['clean: Main_Caps', 'clean: main-caps'],
    ['check: case-heat(rear)', 'check: case-heat[rear]'],
    ['check: case-heat (rear) within 90 °C', 'check: case-heat[rear] within 90 °C'],
    ['measure: a, squish(left, far  right), b', 'measure: a, squish[left, far  right], b'],
    ['clean: a wiht b', 'clean: a with b'],
    ['clean: a with b usign c', 'clean: a with b using c'],
    ['inspect: a for cracks in webs', 'inspect: a for "cracks in webs"'],
    ['if: a is ovr', 'if: a is over'],
    ['if: a is under its limits', 'if: a is under'],
  ])('%s becomes %s', (wrong, right) => {
    const fixes = readTag(wrong, 0, 'a.md').problems.flatMap(({fix}) => fix ?? []);
    expect(fixes).toHaveLength(1);
    expect(applyEdits(wrong, fixes[0]?.edits ?? [])).toBe(right);
    expect(readTag(right, 0, 'a.md').problems).toEqual([]);
  });

  it.each([
    ['check: case-heat(rear)', 'write case-heat[rear]'],
    ['torqe: a', 'did you mean torque?'],
    ['torque: a to 12 kg', 'write kgf·m'],
    ['if: a is undr', 'did you mean `is under`?'],
    ['if: a is too big', 'write `is out`, `is over`, `is under` or `is in`'],
  ])('%s: %s', (text, hint) => {
    expect(read(text).problems.map((problem) => problem.hint)).toEqual([hint]);
  });

  it.each([
    ['check: case-heat(rear)', 'check case-heat[rear]'],
    ['check: case-heat ( rear )', 'check case-heat[rear]'],
    ['measure: squish(left, far right), b using c', 'measure squish[left|far right] b using <c>'],
    ['measure: (left)', 'measure'],
    ['measure: squish(left', 'measure'],
    ['measure: squish()', 'measure'],
    ['repeat: lay(strips)', 'repeat'],
  ])('reads places in round brackets as if they were square: %s', (text, meant) => {
    expect(short(text)).toBe(meant);
    expect(said(text)).toHaveLength(1);
  });
});

describe('any text', () => {
  const piece = fc.oneof(
    fc.constantFrom(
      ...VERBS,
      ...CLAUSE_WORDS,
      ':',
      ',',
      '[',
      ']',
      '"',
      '“',
      ' ',
      '  ',
      '\n  > ',
      '\r\n',
      '85 lbf·ft',
      '0.041 in',
      'a-b',
      'C',
      '🔧',
      '-',
    ),
    fc.string({maxLength: 4, unit: 'binary'}),
  );

  it('is read without throwing, and every span slices to what it claims', () => {
    fc.assert(
      fc.property(fc.constantFrom(...VERBS), fc.array(piece, {maxLength: 25}), (verb, pieces) => {
        read(`${verb}: ${pieces.join('')}`);
        read(pieces.join(' '));
      }),
      {numRuns: 2000},
    );
  });

  const id = fc
    .stringMatching(/^[a-z]{1,6}(-[a-z0-9]{1,4}){0,2}$/)
    .filter((word) => !CLAUSE_WORDS.some((w) => w === word));
  const target = fc.record({id, places: fc.array(fc.stringMatching(/^[a-z0-9]{1,5}$/), {maxLength: 3})});

  it('gives back the targets that it was made of, whatever the spacing', () => {
    const space = fc.constantFrom('', ' ', '  ', '\n   ');
    fc.assert(
      fc.property(fc.array(target, {minLength: 1, maxLength: 4}), space, (targets, gap) => {
        const listed = targets.map(({id, places}) =>
          places.length === 0 ? id : `${id}[${places.join(`,${gap}`)}]`,
        );
        const {tag, problems} = read(`clean: ${listed.join(`${gap},${gap}`)} with x`);
        expect(problems).toEqual([]);
        expect(tag?.targets.map(({id, places}) => ({id, places: places.map(({name}) => name)}))).toEqual(
          targets,
        );
      }),
    );
  });
});

it.each([
  ['clean:', 'write the id of a surface, a part or a joint after the colon'],
  ['cure:', 'write the id of a joint or a consumable after the colon'],
  ['witness:', 'write the id of a hold point after the colon'],
  ['waive:', 'write the name of the finding that is waived'],
])('`%s` without a target is told what may stand there', (text, hint) => {
  expect(read(text).problems.map((one) => one.hint)).toEqual([hint]);
});
