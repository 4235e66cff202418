/** The published schema of SARIF 2.1.0 (OASIS), as the package @microsoft/jest-sarif carries it. */
import schema from '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json' with {type: 'json'};
import Ajv from 'ajv-draft-04';

/** What the schema has against a log; nothing where it is valid. */
export function sarifFaults(log: unknown): readonly string[] {
  const ajv = new Ajv.default({
    strict: false,
    unicodeRegExp: false,
    allErrors: true,
    validateFormats: false,
  });
  const validate = ajv.compile(schema);
  validate(log);
  return (validate.errors ?? []).map(({instancePath, message}) => `${instancePath} ${message}`);
}
