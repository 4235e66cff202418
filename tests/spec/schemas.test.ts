/** The JSON Schemas in `schemas/`: in step with the shapes, valid by the 2020-12 meta-schema, and of one mind with them. */
import {readFileSync} from 'node:fs';
import {Ajv2020} from 'ajv/dist/2020.js';
import {describe, expect, it} from 'vitest';
import {parse} from 'yaml';
import {jsonSchemas} from '../../src/spec/json-schema.js';
import {engineFile, shopFile} from '../../src/spec/shapes/files.js';

const FOLDER = new URL('../../schemas/', import.meta.url);

function written(file: string): unknown {
  return JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8'));
}

function validator(file: string) {
  // `format` annotates in the 2020-12 draft; the pattern beside it is what checks a date.
  return new Ajv2020({allErrors: true, strict: true, allowUnionTypes: true, formats: {date: true}}).compile(
    jsonSchemas()[file] ?? {},
  );
}

const EXAMPLES = {
  shop: `
shop: {name: Works, paper: A4, units: inch}
severity: {two-actions: information}
source: house-notes
sources: {house-notes: {title: House notes, date: 2026-01-15, note: invented}}
tools:
  torque-wrench: {name: torque wrench, range: 20–150 lbf·ft, resolution: 1 lbf·ft, accuracy: class A, calibrated: 2026-03-01, due: 2027-03-01, serial: 14, gauge: true}
  soft-mallet: soft-faced mallet
consumables:
  assembly-lube: {name: assembly lube, use: lubricant, hazards: [skin]}
  wire-041: {use: lock, lock: safety-wire, size: {value: 0.041 in, source: house-notes}}
practice:
  - {every: surface, type: plain-bearing, is: {assembly: lubed, lubricants: [assembly-lube]}, source: house-notes}
`,
  engine: `
engine: {id: test-four, name: Test Four, note: invented}
extends: ../base/engine.yaml
source: house-notes
sources: {old: null}
options: {raw-water-cooling: {name: raw-water cooling, note: by the sea}, radio: second radio, old: null}
parts:
  block: {name: cylinder block, given: true}
  vane: null
  plugs: {only: raw-water-cooling, at: [1, 2, rear], substitutes: {sixes: {alterations: {value: none, because: alike}}, twins: {alterations: [drill]}}, single-use: true, size: 1-1/2 in, seats-in: bores}
surfaces:
  bores: {on: block, at: [front, rear], assembly: {value: lubed, because: it runs}, sizes: {front: 2.125 in, rear: 2 in}, order: falling}
joints: {seam: {between: [block, sump], seal: {value: none, because: metal to metal}}}
fasteners:
  bolts: {count: 6, holds: [caps], torque: 85 lbf·ft, passes: [30 lbf·ft, 85 lbf·ft], threads: [oil], lock: safety-wire, layout: {unit: in, a: [0, 0.5]}, order: [a]}
fits: {gap: {limits: unknown, by: strip, when: {installed: [caps], tight: [bolts]}}}
barred: [{what: [silicone], on: [seam], because: loose beads}]
build: [01-inspection.md]
`,
};

describe('schemas/', () => {
  it.each(Object.entries(jsonSchemas()))('%s is in step with the shapes', (file, schema) => {
    expect(written(file)).toEqual(JSON.parse(JSON.stringify(schema)));
  });

  it.each(Object.entries(jsonSchemas()))(
    '%s is valid by the meta-schema, and of the 2020-12 draft',
    (_, schema) => {
      expect(schema).toMatchObject({$schema: 'https://json-schema.org/draft/2020-12/schema'});
      const ajv = new Ajv2020({strict: false});
      expect(ajv.validateSchema(schema), JSON.stringify(ajv.errors)).toBe(true);
    },
  );

  it.each(Object.entries(jsonSchemas()))('%s describes every field', (_, schema) => {
    expect(undescribed(schema, '')).toEqual([]);
  });
});

describe('an independent validator and the shapes agree', () => {
  const validators = {shop: validator('shop.schema.json'), engine: validator('engine.schema.json')};

  it.each([
    ['shop', shopFile],
    ['engine', engineFile],
  ] as const)('on a right %s.yaml', (which, shape) => {
    const validate = validators[which];
    const text = EXAMPLES[which];
    expect(validate(parse(text)), JSON.stringify(validate.errors)).toBe(true);
    expect(shape.safeParse(parse(text)).error?.issues).toBeUndefined();
  });

  const wrong: readonly ['shop' | 'engine', string, string, string][] = [
    ['shop', 'paper', 'paper: A4', 'paper: A5'],
    ['shop', 'a severity', 'two-actions: information', 'two-actions: warn'],
    ['shop', 'a date', '2026-03-01', '2026-13-01'],
    ['shop', 'an unknown key', 'gauge: true', 'guage: true'],
    ['shop', 'a number where text is due', 'name: Works', 'name: 7'],
    ['shop', 'a consumable without its use', 'use: lubricant, ', ''],
    ['shop', 'practice of another kind', 'every: surface', 'every: joint'],
    ['engine', 'no id', 'id: test-four, ', ''],
    ['engine', 'a name that is not kebab-case', 'block: {name', 'Block_1: {name'],
    ['engine', 'a torque without its unit', 'torque: 85 lbf·ft', 'torque: 85'],
    ['engine', 'a word out of order', 'order: falling', 'order: down'],
    ['engine', 'a bar without its reason', ', because: loose beads', ''],
    ['engine', 'half a point', '[0, 0.5]', '[0]'],
    ['engine', 'an option of no name', 'only: raw-water-cooling', 'only: Raw Water'],
    ['engine', 'an option with more than a name', 'note: by the sea', 'notes: by the sea'],
    ['engine', 'no bolts', 'count: 6', 'count: 0'],
    ['engine', 'an unknown key in a value', 'because: it runs', 'becuase: it runs'],
  ];
  it.each(wrong)('on a wrong %s.yaml: %s', (which, _, right, slip) => {
    const text = EXAMPLES[which].replace(right, slip);
    expect(text).not.toBe(EXAMPLES[which]);
    expect(validators[which](parse(text))).toBe(false);
    expect((which === 'shop' ? shopFile : engineFile).safeParse(parse(text)).success).toBe(false);
  });
});

/** Paths of properties that no editor could say a word about. */
function undescribed(node: unknown, path: string): string[] {
  if (Array.isArray(node)) return node.flatMap((one, index) => undescribed(one, `${path}/${index}`));
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, value]) => {
    const inner = undescribed(value, `${path}/${key}`);
    if (key !== 'properties') return inner;
    const silent = Object.entries(value).filter(([, field]) => !isDescribed(field));
    return [...silent.map(([name]) => `${path}/${name}`), ...inner];
  });
}

function isDescribed(field: unknown): boolean {
  return typeof field === 'object' && field !== null && 'description' in field;
}
