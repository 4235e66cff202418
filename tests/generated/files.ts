/** The files of this project that are made from its code: JSON Schemas, and the tables of tags, fields and findings in the README. */
import {readFileSync} from 'node:fs';
import {checkSchema} from '../../src/cli/check-shape.js';
import {compareSchema} from '../../src/cli/compare-shape.js';
import {findingTable} from '../../src/findings/page.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {verbTable} from '../../src/procedure/verb-table.js';
import {readingsSchemas} from '../../src/readings/json-schema.js';
import {jsonSchemas} from '../../src/spec/json-schema.js';
import {fieldTables} from './field-tables.js';

export interface GeneratedFile {
  /** From the root of the project. */
  readonly path: string;
  readonly text: string;
}

/** As they should be; `root` is the folder of the project. */
export function generatedFiles(root: string): readonly GeneratedFile[] {
  const schemas = Object.entries({
    ...jsonSchemas(),
    ...readingsSchemas(),
    'check.schema.json': checkSchema(),
    'compare.schema.json': compareSchema(),
  });
  return [
    ...schemas.map(([name, schema]) => ({
      path: `schemas/${name}`,
      text: `${JSON.stringify(schema, null, 2)}\n`,
    })),
    {path: 'README.md', text: withTables(readFileSync(`${root}/README.md`, 'utf8'))},
  ];
}

function withTables(readme: string): string {
  const withVerbs = withTable(readme, 'tags', verbTable());
  const withFields = withTable(withVerbs, 'fields', `\n${fieldTables()}\n`);
  return withTable(withFields, 'findings', findingTable(FINDINGS));
}

/** Between the marks `<!-- NAME -->` and `<!-- end of NAME -->`. */
function withTable(readme: string, name: string, table: string): string {
  const [opens, closes] = [`<!-- ${name} -->`, `<!-- end of ${name} -->`];
  const from = readme.indexOf(opens);
  const to = readme.indexOf(closes);
  if (from < 0 || to < from) throw new Error(`README.md has lost its marks ${opens} and ${closes}`);
  return `${readme.slice(0, from + opens.length)}\n${table}\n${readme.slice(to)}`;
}
