/** What the editor tells and changes, without the protocol: from a book and a place to results. */
import {describe, expect, it} from 'vitest';
import {codeActions, editsTogether} from '../../src/editor/code-actions.js';
import {colours} from '../../src/editor/colours.js';
import {diagnosticsOf} from '../../src/editor/diagnostics.js';
import {folding} from '../../src/editor/folding.js';
import {hover} from '../../src/editor/hover.js';
import {inlayHints} from '../../src/editor/inlay-hints.js';
import {lenses} from '../../src/editor/lenses.js';
import {definitions, lookUp} from '../../src/editor/lookup.js';
import {procedureOutline, workspaceSymbols, yamlOutline} from '../../src/editor/outline.js';
import {renamable, rename} from '../../src/editor/rename.js';
import {applyEdits} from '../../src/text/edit.js';
import {ADDRESSES, ENGINE, FILE, LAST_STEP, offsetIn, STEPS, textOf, viewOf} from './view.js';

const WHOLE = viewOf();
const UNLOCKED = viewOf(STEPS);

function procedureOf(view: typeof WHOLE) {
  const procedure = view.procedure(FILE);
  if (procedure === undefined) throw new Error('the book has lost its procedure');
  return procedure;
}

describe('diagnostics', () => {
  it('tell the story of a finding, and where to read about it', () => {
    const shelf = {views: [UNLOCKED], failures: []};
    const [one, ...more] = diagnosticsOf(shelf, ADDRESSES).get(FILE) ?? [];
    expect(more).toEqual([]);
    expect(one).toMatchObject({
      code: 'left-unlocked',
      severity: 1,
      source: 'wmark',
      range: {start: {line: 13}, end: {line: 13}},
      codeDescription: {href: expect.stringMatching(/README\.md#left-unlocked$/)},
      relatedInformation: [
        {location: {uri: 'book:caps.md'}, message: expect.stringContaining('tight')},
        {location: {uri: 'book:engine.yaml'}, message: expect.stringContaining('lock: safety-wire')},
      ],
    });
  });

  it('of two books that share a file stand there once', () => {
    const shelf = {views: [UNLOCKED, viewOf(STEPS)], failures: []};
    expect(diagnosticsOf(shelf, ADDRESSES).get(FILE)).toHaveLength(1);
  });

  it('take off what stood in a file that is clean now', () => {
    expect(diagnosticsOf({views: [WHOLE], failures: []}, ADDRESSES).get(FILE)).toEqual([]);
  });

  it('say where a book cannot be read', () => {
    const failure = {
      ok: false,
      says: 'it is empty',
      hint: 'write it',
      where: {file: 'engine.yaml', line: 3, column: 2},
    } as const;
    expect(diagnosticsOf({views: [], failures: [failure]}, ADDRESSES).get('engine.yaml')).toMatchObject([
      {message: 'it is empty; write it', range: {start: {line: 2, character: 1}}},
    ]);
  });

  it('let the client fade what does nothing', () => {
    const view = viewOf(`${STEPS}${LAST_STEP}8. Rest. \`waive: clean-first by J. Orrin because trial\`\n`);
    const found = diagnosticsOf({views: [view], failures: []}, ADDRESSES).get(FILE);
    expect(found).toMatchObject([{code: 'waiver-stale', tags: [1]}]);
  });
});

describe('code actions', () => {
  const [finding] = UNLOCKED.findings;
  const actions = codeActions(UNLOCKED, FILE, finding?.where.span ?? {start: 0, end: 0}, ADDRESSES);

  it('write the missing step, or ask for a reason', () => {
    expect(actions.map(({title}) => title)).toEqual([
      'Write the missing step: lock cap-bolts',
      'Waive left-unlocked at step 6: write the reason behind it',
    ]);
  });

  it('mend what they are for', () => {
    const text = UNLOCKED.texts.get(FILE)?.text ?? '';
    const after = applyEdits(text, finding?.fix?.edits ?? []);
    expect(after).toContain('\n7. Lock the cap bolts. `lock: cap-bolts with safety-wire`');
    expect(viewOf(after).findings).toEqual([]);
  });

  it('mend all of a kind at once, and none of them twice', () => {
    const view = viewOf(`1. Wipe. \`clean: jurnals\`\n2. Wipe. \`clean: jurnals, jornals\`\n`);
    const all = view.findings.filter(({fix}) => fix !== undefined);
    const span = all[0]?.where.span ?? {start: 0, end: 0};
    const titles = codeActions(view, FILE, span, ADDRESSES).map(({title}) => title);
    expect(titles).toContain('Mend all 2 of this kind in the book (unknown-item)');
    const edits = editsTogether([...all, ...all]).get(FILE) ?? [];
    const after = applyEdits(view.texts.get(FILE)?.text ?? '', edits);
    expect(after).toContain('`clean: journals`');
    expect(after).toContain('`clean: journals, journals`');
  });

  it('nowhere else', () => {
    expect(codeActions(UNLOCKED, FILE, {start: 0, end: 0}, ADDRESSES)).toEqual([]);
  });
});

describe('hover', () => {
  const told = (words: string, into = 1, file = FILE) =>
    hover(WHOLE, file, offsetIn(WHOLE, file, words, into))?.markdown;

  it('of an item: specification, source, both unit systems, preload, its life so far', () => {
    const text = told('cap-bolts[front');
    expect(text).toContain('**cap bolts** · `cap-bolts`, a fastener');
    expect(text).toContain('torque: **80 lbf·ft \\(108 N·m\\)** (oiled threads; Example house notes)');
    expect(text).toMatch(/preload: \*\*\d+ lbf \\\(\d+ N\\\)\*\*, about \d+ % of proof/);
    expect(text).toContain('Before this step:');
    expect(text).toContain('step 6 of caps.md: tight');
    expect(text).not.toContain('step 7');
  });

  it.each([
    ['a verb', 'torque:', '**torque**: the fastener is tightened'],
    ['a clause', 'to 80', '`to`: the torque, or snug'],
    ['a value', '80 lbf·ft', '80 lbf·ft \\(108 N·m\\)'],
    ['a lubricant', 'engine-oil', 'a consumable'],
    ['a fit', 'main-clearance', '0.0015–0.0025 in \\(0.039–0.063 mm\\)'],
  ])('of %s', (_, words, expected) => {
    expect(told(words)).toContain(expected);
  });

  it('of a fastener that waits for something: what must come before it', () => {
    const view = viewOf(
      STEPS,
      ENGINE.replace('holds: [main-caps]', 'holds: [main-caps]\n    after: [block]'),
    );
    const text = hover(view, FILE, offsetIn(view, FILE, 'cap-bolts to', 1))?.markdown;
    expect(text).toContain('- tightened after: block');
  });

  it.each([
    [
      'a check',
      'checks: {turns: {expect: freely, after: [block], disturbed-by: [cap-bolts]}}',
      'turns:',
      '- made after: block\n- disturbed by: cap-bolts',
    ],
    [
      'a system',
      'systems: {sump: {closed-by: [main-caps], after: [block]}}',
      'sump:',
      '- closed by: main-caps\n- filled after: block',
    ],
  ])('of %s that waits for something: what must come before it', (_, item, words, expected) => {
    const view = viewOf(STEPS, `${ENGINE}\n${item}\n`);
    const text = hover(view, 'engine.yaml', offsetIn(view, 'engine.yaml', words, 1))?.markdown;
    expect(text).toContain(expected);
  });

  it.each([
    [
      'a part',
      'parts: {flywheel: {hazards: [heavy-lift], quantity: 2}}',
      'flywheel',
      ['quantity: 2', 'hazards: heavy-lift'],
    ],
    [
      'a surface',
      'surfaces: {lip: {on: block, assembly: dry}}',
      'lip',
      ['on: block', 'goes together: **dry**'],
    ],
    [
      'a fastener',
      'fasteners: {stud: {torque: snug, hole: 1.6 mm, into: aluminium, engagement: 20 mm}}',
      'stud',
      ['hole: **0.063 in', 'tapped in: **aluminium**', 'engagement: **0.79 in'],
    ],
    [
      'a check',
      'checks: {lash: {limits: 0.2–0.3 mm, using: [feeler-gauges], hazards: [crush]}}',
      'lash',
      ['read with: feeler-gauges', 'hazards: crush'],
    ],
    [
      'a mark',
      'marks: {number: {stamped: on the block, matches: plate}, plate: {}}',
      'number',
      ['stamped: on the block', 'must match: plate'],
    ],
    [
      'a system',
      'systems: {sump: {with: [coolant], hazards: [poison]}}',
      'sump',
      ['holds: coolant', 'hazards: poison'],
    ],
    [
      'an alteration',
      'alterations: {relieve: {of: [main-caps], using: [steel-hammer], hazards: [eyes]}}',
      'relieve',
      ['with: steel-hammer', 'hazards: eyes'],
    ],
  ])('of %s: whatever the specification says of it', (_, item, id, lines) => {
    const [section = '', rest = ''] = item.split(/: (.*)/s);
    const own = rest.slice(1, -1);
    const engine = ENGINE.includes(`\n${section}:`)
      ? ENGINE.replace(`\n${section}:\n`, `\n${section}:\n  ${own}\n`)
      : `${ENGINE}${item}\n`;
    const view = viewOf(STEPS, engine);
    const text = hover(view, 'engine.yaml', offsetIn(view, 'engine.yaml', `${id}:`, 1))?.markdown;
    for (const line of lines) expect(text).toContain(`- ${line}`);
  });

  it('of a locking pin: what it blocks', () => {
    const view = viewOf(STEPS, ENGINE.replace('parts:\n', 'parts:\n  pin: {blocks: [main-caps]}\n'));
    const text = hover(view, 'engine.yaml', offsetIn(view, 'engine.yaml', 'pin:', 1))?.markdown;
    expect(text).toContain('- blocks: main-caps');
  });

  it('of an item in engine.yaml: its whole life', () => {
    expect(told('cap-bolts:', 1, 'engine.yaml')).toContain('step 7 of caps.md: locked');
  });

  it('lets no text of the book become markup', () => {
    const engine = ENGINE.replace('name: cap bolts', 'name: "![x](http://example.invalid/a.png) <b>"');
    const view = viewOf(STEPS, engine);
    const text = hover(view, FILE, offsetIn(view, FILE, 'cap-bolts to', 1))?.markdown;
    expect(text).toContain('\\!\\[x\\]\\(http://example.invalid/a.png\\) \\<b\\>');
  });

  it('nowhere else', () => {
    expect(told('Wipe the')).toBeUndefined();
  });
});

describe('names', () => {
  const found = (words: string, file = FILE) => lookUp(WHOLE, [WHOLE], file, offsetIn(WHOLE, file, words, 2));

  it('lead to where they are given', () => {
    const lookup = found('cap-bolts to');
    const [where, ...more] = lookup ? definitions(lookup, WHOLE) : [];
    expect(more).toEqual([]);
    expect(where && [where.file, textOf(WHOLE, where)]).toEqual(['engine.yaml', 'cap-bolts']);
  });

  it.each([
    ['cap-bolts to', FILE, 4],
    ['main-clearance', 'engine.yaml', 3],
    ['assembly-lube', FILE, 3],
    ['house', 'engine.yaml', 5],
  ])('%s of %s stands in %i places', (words, file, count) => {
    const all = found(words, file)?.all ?? [];
    expect(all).toHaveLength(count);
    for (const {where, id} of all) expect(textOf(WHOLE, where)).toBe(id);
  });

  it('a file of build: leads to the file', () => {
    const lookup = found(FILE, 'engine.yaml');
    expect(lookup && definitions(lookup, WHOLE)).toEqual([{file: FILE, span: {start: 0, end: 0}}]);
  });

  it('are renamed everywhere, and the book stays as clean as it was', () => {
    const renaming = rename(
      WHOLE,
      [WHOLE],
      {file: FILE, offset: offsetIn(WHOLE, FILE, 'cap-bolts')},
      'main-bolts',
    );
    if (!renaming.ok) throw new Error(renaming.says);
    const edited = (file: string) =>
      applyEdits(WHOLE.texts.get(file)?.text ?? '', renaming.edits.get(file) ?? []);
    const engine = edited('engine.yaml').split('\n').slice(3).join('\n');
    expect(viewOf(edited(FILE), engine).findings).toEqual([]);
    expect(edited(FILE) + engine).not.toContain('cap-bolts');
  });

  it.each([
    ['Cap Bolts', 'not a name'],
    ['journals', 'the name of another'],
    ['cotter-pin', 'a kind of lock'],
  ])('not to %s', (name, says) => {
    const renaming = rename(WHOLE, [WHOLE], {file: FILE, offset: offsetIn(WHOLE, FILE, 'cap-bolts')}, name);
    expect(renaming).toMatchObject({ok: false, says: expect.stringContaining(says)});
  });

  it('that nothing bears are not renamed', () => {
    const view = viewOf('1. Wipe. `clean: jurnals`\n');
    expect(renamable(view, [view], FILE, offsetIn(view, FILE, 'jurnals'))).toBeUndefined();
  });

  it('of a step hold in its own procedure', () => {
    const view = viewOf(
      '1. Read. `step: reading` `measure: main-clearance`\n2. Again? `if: main-clearance is out`\n   1. Back. `repeat: reading`\n',
    );
    const lookup = lookUp(view, [view], FILE, offsetIn(view, FILE, 'repeat: reading', 9));
    expect(lookup?.all.map(({gives}) => gives)).toEqual([true, false]);
  });
});

describe('what the client draws', () => {
  it('outline of a procedure', () => {
    const [caps] = procedureOutline(procedureOf(WHOLE));
    expect(caps).toMatchObject({name: 'Caps', selectionRange: {start: {line: 6, character: 0}}});
    expect(caps?.children).toHaveLength(7);
    expect(caps?.children?.[6]).toMatchObject({name: '7. Wire the bolts.', detail: 'lock: cap-bolts'});
  });

  it('outline of engine.yaml', () => {
    const engine = WHOLE.texts.get('engine.yaml');
    const outline = engine ? yamlOutline(engine) : [];
    expect(outline.map(({name}) => name)).toEqual([
      'engine',
      'source',
      'build',
      'parts',
      'surfaces',
      'fasteners',
      'fits',
    ]);
    expect(outline[5]?.children).toMatchObject([{name: 'cap-bolts', detail: 'cap bolts'}]);
  });

  it('symbols by letters in their order', () => {
    expect(workspaceSymbols([WHOLE], 'cpb', ADDRESSES).map(({name}) => name)).toEqual(['cap-bolts']);
  });

  it('folds', () => {
    expect(folding(procedureOf(WHOLE))).toEqual([
      {startLine: 0, endLine: 4},
      {startLine: 6, endLine: 14},
    ]);
  });

  it('colours, each within a line', () => {
    const view = viewOf('1. Up. `torque: cap-bolts[front] to\n   80 lbf·ft`\n');
    const parts = colours(procedureOf(view)).map(({span, type}) => [textOf(view, {file: FILE, span}), type]);
    expect(parts).toEqual([
      ['torque', 'function'],
      ['cap-bolts', 'variable'],
      ['front', 'enumMember'],
      ['to', 'keyword'],
      ['80 lbf·ft', 'number'],
    ]);
  });

  it('hints: what the specification supplies, and the other unit system', () => {
    const view = viewOf(
      '1. Up. `torque: cap-bolts`\n2. Read. `measure: main-clearance within 0.0015–0.0025 in`\n',
    );
    const procedure = procedureOf(view);
    const hints = inlayHints(procedure, view.spec, {start: 0, end: procedure.source.text.length});
    expect(hints.map(({label}) => label)).toEqual([
      ' to 80 lbf·ft (108 N·m)',
      ' (0.039–0.063 mm)',
      ' using feeler-gauges',
    ]);
    expect(hints[0]?.insert).toBe(' to 80 lbf·ft');
  });

  it('lenses: what the book leaves undone', () => {
    expect(lenses(WHOLE, procedureOf(WHOLE)).map(({title}) => title)).toEqual([
      '7 steps, 4 items',
      'nothing left undone in the book',
    ]);
    const [, undone] = lenses(UNLOCKED, procedureOf(UNLOCKED));
    expect(undone).toMatchObject({
      title: '2 left undone in the book',
      undone: [{item: 'cap-bolts', place: 'front', says: 'not locked'}, {place: 'rear'}],
    });
  });
});
