/** The fields of every kind of item, for the README: made from the JSON Schemas, so that a field cannot be missing. */
import * as z from 'zod';
import {jsonSchemas} from '../../src/spec/json-schema.js';

const node = z.object({
  description: z.string().optional(),
  properties: z.record(z.string(), z.unknown()).optional(),
  anyOf: z.array(z.unknown()).optional(),
  additionalProperties: z.unknown().optional(),
});

type Node = z.infer<typeof node>;

const FILES = {'engine.yaml': 'engine.schema.json', 'shop.yaml': 'shop.schema.json'} as const;

/** Said once for all kinds. */
const COMMON = ['name', 'type', 'source', 'note', 'only', 'at'];

/** A foldable table a section of engine.yaml and shop.yaml that holds items, after one of what all have. */
export function fieldTables(): string {
  const sections = Object.entries(FILES).flatMap(([file, schema]) =>
    Object.entries(read(jsonSchemas()[schema]).properties ?? {}).flatMap(([section, holds]) => {
      const fields = fieldsOf(holds);
      return fields.length === 0 || section === 'sources' ? [] : [{title: `${section}: of ${file}`, fields}];
    }),
  );
  const common = COMMON.flatMap((name) => {
    const found = sections.flatMap(({fields}) => fields).find((field) => field.name === name);
    return found === undefined ? [] : [found];
  });
  const own = sections.map(({title, fields}) => ({
    title,
    fields: fields.filter(({name}) => !COMMON.includes(name)),
  }));
  return [{title: 'any item', fields: common}, ...own]
    .filter(({fields}) => fields.length > 0)
    .map(({title, fields}) => table(title, fields))
    .join('\n\n');
}

interface Field {
  readonly name: string;
  readonly says: string;
}

/** The fields of what a section holds by name; none where it holds no such things. */
function fieldsOf(section: unknown): readonly Field[] {
  const {additionalProperties} = read(section);
  if (additionalProperties === undefined || typeof additionalProperties === 'boolean') return [];
  const item = withProperties(read(additionalProperties));
  return Object.entries(item?.properties ?? {}).map(([name, value]) => ({name, says: saysOf(read(value))}));
}

function withProperties(one: Node): Node | undefined {
  if (one.properties !== undefined) return one;
  return (one.anyOf ?? []).map(read).find(({properties}) => properties !== undefined);
}

function saysOf({description, anyOf = []}: Node): string {
  return description ?? anyOf.map((one) => saysOf(read(one))).find((says) => says !== '') ?? '';
}

function read(value: unknown): Node {
  return node.parse(value);
}

function table(title: string, fields: readonly Field[]): string {
  const rows = fields.map(
    ({name, says}) => `| \`${name}\` | ${says.replaceAll('|', '\\|').replace(/\.$/, '')} |`,
  );
  return [
    `<details><summary><code>${title}</code></summary>`,
    '',
    '| field | says |',
    '| --- | --- |',
    ...rows,
    '',
    '</details>',
  ].join('\n');
}
