/** What is offered while a tag, front matter or YAML is being typed: `|` stands for the cursor. */
import {describe, expect, it} from 'vitest';
import {procedureOffers} from '../../src/editor/completion.js';
import {typedAt} from '../../src/editor/tag-typed.js';
import {yamlOffers} from '../../src/editor/yaml-offers.js';
import {VERBS} from '../../src/procedure/verbs.js';
import {FILE, STEPS, viewOf} from './view.js';

const FRONT = '---\ntitle: Caps\nrevision: A\ndate: 2026-03-01\n---\n\n';

function typed(marked: string) {
  const offset = marked.indexOf('|');
  return {file: FILE, text: marked.replace('|', ''), offset};
}

function labels(marked: string): string[] {
  const offers = [...procedureOffers(viewOf(), typed(marked))];
  return offers.sort((one, other) => one.rank - other.rank).map(({label}) => label);
}

describe('typedAt', () => {
  it.each([
    ['1. Wipe. `|`', 'verb'],
    ['1. Wipe. `cl|`', 'verb'],
    ['1. Wipe. `clean: |`', 'target'],
    ['1. Wipe. `clean: journals, |`', 'target'],
    ['1. Wipe. `clean: jour|', 'target'],
    ['1. Wipe.\n   `clean:\n   jour|`', 'target'],
    ['1. Wire. `lock: cap-bolts[|]`', 'place'],
    ['1. Wire. `lock: cap-bolts[front, |]`', 'place'],
    ['1. Wire. `lock: cap-bolts |`', 'clause'],
    ['1. Wire. `lock: cap-bolts wi|`', 'clause'],
    ['1. Wire. `lock: cap-bolts with |`', 'value'],
    ['1. Bring up. `torque: cap-bolts to 8|`', 'value'],
    ['1. Bring up. `torque: cap-bolts to 80 lb|`', 'value'],
    ['1. Bring up. `torque: cap-bolts to 80 lbf·ft |`', 'clause'],
  ])('%s: %s', (marked, slot) => {
    const {text, offset} = typed(marked);
    expect(typedAt(text, offset)?.slot).toBe(slot);
  });

  it.each([
    '1. Wipe the |',
    '1. Wipe. `clean: journals` |',
    '1. Code `x=|`',
    '1. A `b`\n2. See |`c`',
    '`open\n\n1. Wipe |',
  ])('nothing in %j', (marked) => {
    const {text, offset} = typed(marked);
    expect(typedAt(text, offset)).toBeUndefined();
  });

  it('replaces the word under the cursor, and the whole of an amount', () => {
    const word = typed('1. W. `clean: jour|nals`');
    expect(typedAt(word.text, word.offset)?.span).toEqual({start: 14, end: 22});
    const amount = typed('1. W. `torque: cap-bolts to 80 lb|`');
    expect(typedAt(amount.text, amount.offset)?.span).toEqual({start: 28, end: 33});
  });
});

describe('in a procedure', () => {
  it('offers every verb', () => {
    expect(labels(`${FRONT}1. Wipe. \`|\``)).toEqual([...VERBS]);
  });

  it.each([
    ['only what the verb can be done to', '`torque: |`', ['cap-bolts']],
    ['what is there from the start never', '`install: |`', ['main-caps']],
    ['no target twice', '`clean: journals, |`', ['main-caps']],
    ['places that are not named yet', '`lock: cap-bolts[rear, |]`', ['front']],
    [
      'the value of the specification, whole, before the bare clause',
      '`torque: cap-bolts |`',
      ['to 80 lbf·ft', 'using', 'to', 'in', 'turn'],
    ],
    ['the value behind its word', '`torque: cap-bolts to |`', ['80 lbf·ft', 'snug']],
    ['what the fit is read with', '`measure: main-clearance using |`', ['feeler-gauges']],
    ['a clause once', '`lock: cap-bolts with wire-032 |`', ['using']],
    ['the words of a branch', '`if: main-clearance is |`', ['out', 'over', 'under', 'in']],
  ])('%s', (_, tag, expected) => {
    expect(labels(`${FRONT}1. Do. ${tag}`).slice(0, expected.length)).toEqual(expected);
  });

  it('offers the specified lock before all others', () => {
    expect(labels(`${FRONT}1. Wire. \`lock: cap-bolts with |\``)[0]).toBe('safety-wire');
  });

  it('offers findings to waive', () => {
    expect(labels(`${FRONT}1. Leave. \`waive: |\``)).toContain('left-unlocked');
  });

  it('offers what is still undone first', () => {
    const engine = `
parts:
  block: {given: true}
  one: {}
  two: {}
  three: {}
`;
    const view = viewOf('1. First. `install: one`\n2. Next.\n3. Last. `install: three`\n', engine);
    const text = view.texts.get(FILE)?.text ?? '';
    const now = text.replace('2. Next.', '2. Next. `install: ');
    const offset = now.indexOf('`install: \n') + '`install: '.length;
    const offers = [...procedureOffers(view, {file: FILE, text: now, offset})];
    const ranked = offers.sort((one, other) => one.rank - other.rank).map(({label, rank}) => [label, rank]);
    expect(ranked).toEqual([
      ['two', 0],
      ['three', 1],
      ['one', 2],
    ]);
  });

  it('offers the keys of the front matter that are not there yet', () => {
    expect(labels('---\ntitle: Caps\n|\n---\n')).toEqual([
      'revision',
      'date',
      'author',
      'approved',
      'only',
      'untagged',
    ]);
    expect(labels('---\nonly: |\n---\n')).toEqual(['example']);
    expect(labels(`${FRONT}ti|`)).toEqual([]);
  });
});

describe('in YAML', () => {
  it.each([
    ['parts:\n  x: {closes: [|', ['journals']],
    ['parts:\n  x:\n    closes:\n      - |', ['journals']],
    ['fasteners:\n  x: {holds: [main-caps], lock: {value: |', ['wire-032']],
    ['fits:\n  x: {source: |', ['house']],
    ['parts:\n  x: {name: |', []],
    ['parts:\n  # closes: [|', []],
  ])('%j', (marked, expected) => {
    const found = yamlOffers(viewOf().spec, typed(marked)).map(({label}) => label);
    expect(found).toEqual(expect.arrayContaining(expected));
    if (expected.length === 0) expect(found).toEqual([]);
  });
});

it('never fails, wherever the cursor stands in a text of any length', () => {
  const view = viewOf();
  const text = `${FRONT}${STEPS}`;
  for (let offset = 0; offset <= text.length; offset++) {
    for (const now of [text, text.slice(0, offset)]) {
      for (const {span} of procedureOffers(view, {file: FILE, text: now, offset})) {
        expect(span.start).toBeLessThanOrEqual(offset);
        expect(span.end).toBeGreaterThanOrEqual(offset);
      }
    }
  }
});
