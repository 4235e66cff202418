/** An engine.yaml that builds on another: what it replaces, drops, inherits and keeps. */
import {describe, expect, it} from 'vitest';
import {itemsOfKind} from '../../src/spec/items.js';
import {extendsOf, readSpecification} from '../../src/spec/resolve.js';
import {slice, source} from '../../src/text/source.js';
import {expectMarked, readClean, SHOP} from './marked.js';

const BASE = `
engine: {id: base, name: Base engine}
source: maker
sources: {yard: {title: Yard notes}}
parts:
  plug: {size: 1 in, note: of brass}
  vane: {size: 2 in}
  pump: {size: {value: 3 in, source: yard}}
barred: [{what: [paper], because: thin}]
build: [one.md, two.md]
`;

describe('extends', () => {
  it('replaces whole items, drops, inherits, and adds', () => {
    const spec = readClean({
      engine: 'extends: base-1.yaml\nparts: {plug: {size: 1.5 in}, vane: null, shaft: {}}\n',
      bases: [BASE],
    });
    const [plug, pump, shaft, ...more] = itemsOfKind(spec, 'part');
    expect(plug).toMatchObject({id: 'plug', size: {source: 'house'}, where: {file: 'engine.yaml'}});
    expect(plug?.note).toBeUndefined();
    expect(pump).toMatchObject({id: 'pump', size: {source: 'yard'}, where: {file: 'base-1.yaml'}});
    expect(shaft?.id).toBe('shaft');
    expect(more).toEqual([]);
    expect(spec.engine).toMatchObject({id: 'test', name: 'test'});
  });

  it('gives values of the base the source of the base', () => {
    const spec = readClean({engine: 'extends: base-1.yaml\n', bases: [BASE]});
    expect(spec.items.get('vane')).toMatchObject({size: {source: 'maker'}});
  });

  it('takes the build list of the base only where the child has none', () => {
    const inherited = readClean({engine: 'extends: base-1.yaml\n', bases: [BASE]});
    expect(inherited.build.map(({value, where}) => [value, where.file])).toEqual([
      ['one.md', 'base-1.yaml'],
      ['two.md', 'base-1.yaml'],
    ]);
    const own = readClean({engine: 'extends: base-1.yaml\nbuild: [three.md]\n', bases: [BASE]});
    expect(own.build.map(({value}) => value)).toEqual(['three.md']);
  });

  it('keeps barred what the base bars', () => {
    expectMarked({
      engine: `extends: base-1.yaml\njoints: {seam: {seal: «spec-contradiction|[paper]»}}\n`,
      bases: [BASE],
    });
  });

  it('goes down a chain, the nearest first', () => {
    const middle =
      'engine: {id: middle}\nextends: base-2.yaml\nparts: {vane: {note: of the middle}, pump: null}\n';
    const spec = readClean({
      engine: 'extends: base-1.yaml\nparts: {vane: null, pump: {note: of the child}}\n',
      bases: [middle, BASE],
    });
    expect(itemsOfKind(spec, 'part').map(({id, note}) => [id, note])).toEqual([
      ['plug', 'of brass'],
      ['pump', 'of the child'],
    ]);
  });

  it('lets a name change its kind once the base item is dropped, and not before', () => {
    const engine = 'extends: base-1.yaml\nparts: {plug: null}\nmarks: {plug: {}}\n';
    expect(readClean({engine, bases: [BASE]}).items.get('plug')?.kind).toBe('mark');
    expectMarked({engine: 'extends: base-1.yaml\nmarks: {«spec-contradiction|plug»: {}}\n', bases: [BASE]});
  });

  it('finds a drop of what the base has not', () => {
    const [problem] = expectMarked({
      engine: 'extends: base-1.yaml\nparts: {«unknown-item|vanes»: null}\n',
      bases: [BASE],
    });
    expect(problem?.hint).toBe('did you mean vane?');
  });

  it('finds an item that says nothing where there is no base', () => {
    const [problem] = expectMarked({engine: 'parts:\n  «spec-form|plug»:\n'});
    expect(problem?.hint).toBe('write its name, or {}');
  });

  it('does not go astray where the base could not be had, or comes round again', () => {
    readClean({engine: 'extends: gone.yaml\nparts: {plug: null}\n'});
    const engine = source('engine.yaml', 'engine: {id: round}\nextends: engine.yaml\nparts: {plug: {}}\n');
    const spec = readSpecification({shop: source('shop.yaml', SHOP), engine, bases: [engine, engine]});
    expect(spec.problems).toEqual([]);
  });

  it('puts the problems of a base at their place in the base', () => {
    expectMarked({
      engine: 'extends: base-1.yaml\n',
      bases: ['engine: {id: base}\nparts: {plug: {size: «source-missing|1 in», «spec-form|siez»: 1 in}}\n'],
    });
  });
});

describe('extendsOf', () => {
  it('gives what is written, and where', () => {
    const from = source('engine.yaml', 'engine: {id: x}\nextends: "../base/engine.yaml" # both\n');
    const found = extendsOf(from);
    expect(found?.value).toBe('../base/engine.yaml');
    expect(found && slice(from, found.where.span)).toBe('"../base/engine.yaml"');
  });

  it.each(['', 'extends:', 'extends: [a]', '- a', '{', 'engine: {id: x}'])('gives nothing for %j', (text) => {
    expect(extendsOf(source('engine.yaml', text))).toBeUndefined();
  });
});
