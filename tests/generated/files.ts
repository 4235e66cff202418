/** The files of this project that are made from its code: JSON Schemas, and the table of findings in the README. */
import {readFileSync} from 'node:fs';
import {checkSchema} from '../../src/cli/check-shape.js';
import {compareSchema} from '../../src/cli/compare-shape.js';
import {findingTable} from '../../src/findings/page.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {readingsSchemas} from '../../src/readings/json-schema.js';
import {jsonSchemas} from '../../src/spec/json-schema.js';

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
    {path: 'README.md', text: withTable(readFileSync(`${root}/README.md`, 'utf8'))},
  ];
}

const OPENS = '<!-- findings -->';
const CLOSES = '<!-- end of findings -->';

function withTable(readme: string): string {
  const from = readme.indexOf(OPENS);
  const to = readme.indexOf(CLOSES);
  if (from < 0 || to < from) throw new Error(`README.md has lost its marks ${OPENS} and ${CLOSES}`);
  return `${readme.slice(0, from + OPENS.length)}\n${findingTable(FINDINGS)}\n${readme.slice(to)}`;
}
