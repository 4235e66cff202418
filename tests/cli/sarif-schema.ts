/** The published schema of SARIF 2.1.0 (OASIS), as the package @microsoft/jest-sarif carries it. */
import {readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {dirname, join} from 'node:path';
import Ajv from 'ajv-draft-04';

/** What the schema has against a log; nothing where it is valid. */
export function sarifFaults(log: unknown): readonly string[] {
  const ajv = new Ajv.default({strict: false, unicodeRegExp: false, allErrors: true, validateFormats: false});
  const validate = ajv.compile(JSON.parse(readFileSync(schemaFile(), 'utf8')));
  validate(log);
  return (validate.errors ?? []).map(({instancePath, message}) => `${instancePath} ${message}`);
}

function schemaFile(): string {
  const entry = createRequire(import.meta.url).resolve('@microsoft/jest-sarif');
  return join(dirname(entry), 'schemas', 'sarif-2.1.0-rtm.5.json');
}
