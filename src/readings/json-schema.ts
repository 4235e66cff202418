/** The shapes of records, and of the report on them, as JSON Schemas. */
import {jsonSchema} from '../spec/shapes/json-schema.js';
import {RECORD} from './record.js';
import {readingsShape} from './report.js';

/** By file name in `schemas/`; each a JSON Schema of the 2020-12 draft. */
export function readingsSchemas(): Readonly<Record<string, object>> {
  return {
    'readings.schema.json': jsonSchema(readingsShape, 'What `wmark readings --as json` prints'),
    'record.schema.json': jsonSchema(RECORD, 'A record of a build, NUMBER.record.json'),
  };
}
