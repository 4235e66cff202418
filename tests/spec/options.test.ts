/** Options of an engine, the items that only some engines have, and parts of other engines that may stand in. */
import {describe, expect, it} from 'vitest';
import {expectMarked, readClean, readMarked} from './marked.js';

describe('options', () => {
  const spec = readClean({
    engine: `
options:
  raw-water-cooling: {name: raw-water cooling, note: for salt water}
  radio: second radio
  keel-cooling: {}
parts:
  block: {given: true}
  sea-pump: {only: raw-water-cooling}
  strainer: {only: [raw-water-cooling, keel-cooling]}
`,
  });

  it('are listed with their names', () => {
    expect([...spec.options.values()]).toMatchObject([
      {id: 'raw-water-cooling', name: 'raw-water cooling', note: 'for salt water'},
      {id: 'radio', name: 'second radio'},
      {id: 'keel-cooling', name: 'keel cooling'},
    ]);
  });

  it('are what an item may be for alone', () => {
    const only = (id: string) => spec.items.get(id)?.only.map(({value}) => value);
    expect([only('block'), only('sea-pump'), only('strainer')]).toEqual([
      [],
      ['raw-water-cooling'],
      ['raw-water-cooling', 'keel-cooling'],
    ]);
  });

  it('of a base hold, and can be dropped', () => {
    const {options} = readClean({
      engine: 'extends: base.yaml\noptions: {radio: null, lamp: {}}\n',
      bases: ['engine: {id: base}\noptions: {radio: second radio, mast: {}}\n'],
    });
    expect([...options.keys()]).toEqual(['mast', 'lamp']);
  });

  it('that are not listed are named', () => {
    const problems = expectMarked({
      engine: `
options: {raw-water-cooling: {}}
parts:
  pump: {only: «unknown-item|raw-water-coolin»}
  lamp: {only: [raw-water-cooling, «unknown-item|lamps»]}
`,
    });
    expect(problems.map(({says, hint, item}) => `${item}: ${says}; ${hint}`)).toEqual([
      'pump: raw-water-coolin is not an option of this engine; did you mean raw-water-cooling?',
      'lamp: lamps is not an option of this engine; list it under options: of engine.yaml',
    ]);
  });
});

describe('options of a file with nothing but slips', () => {
  it('get few hints: each search goes through all of them', () => {
    const parts = Array.from({length: 200}, (_, index) => `  part-${index}: {only: keel-coolin}\n`).join('');
    const {spec} = readMarked({engine: `options: {keel-cooling: {}}\nparts:\n${parts}`});
    const hints = spec.problems.map(({hint}) => hint);
    expect(hints).toHaveLength(200);
    expect(hints[0]).toBe('did you mean keel-cooling?');
    expect(hints.at(-1)).toBe('list it under options: of engine.yaml');
  });
});

describe('a substitute', () => {
  it('says what it needs, or why it needs nothing', () => {
    const spec = readClean({
      engine: `
parts:
  shells:
    substitutes:
      twins: {alterations: [grind, drill]}
      sixes: {name: shells of the six, alterations: {value: none, because: the works used both}}
alterations: {grind: {of: [shells]}, drill: {of: [shells]}}
`,
    });
    const shells = spec.items.get('shells');
    const said = shells?.kind === 'part' ? [...shells.substitutes.values()] : [];
    expect(said.map(({name, alterations}) => [name, alterations.map(({value}) => value)])).toEqual([
      ['twins', ['grind', 'drill']],
      ['shells of the six', []],
    ]);
  });

  it('that is silent is named', () => {
    const problems = expectMarked({
      engine: `
parts:
  shells:
    substitutes:
      «spec-silent|twins»: {}
      «spec-silent|sixes»: {name: shells of the six}
      eights: {alterations: «spec-silent|none»}
      tens: {alterations: [«unknown-item|grid»]}
alterations: {grind: {of: [shells]}}
`,
    });
    expect(problems.map(({says}) => says)).toEqual([
      'twins does not say its alterations',
      'sixes does not say its alterations',
      'alterations of eights is none without a reason',
      'nothing is called grid',
    ]);
  });
});
