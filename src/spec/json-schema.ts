/** The shapes of the files as JSON Schemas, so that any editor completes and checks the YAML. */
import {engineFile, shopFile} from './shapes/files.js';
import {jobFile} from './shapes/job.js';
import {jsonSchema} from './shapes/json-schema.js';
import {knownFile} from './shapes/known.js';

/** By file name in `schemas/`; each a JSON Schema of the 2020-12 draft. */
export function jsonSchemas(): Readonly<Record<string, object>> {
  return {
    'engine.schema.json': jsonSchema(engineFile, 'engine.yaml of a witness-mark book'),
    'job.schema.json': jsonSchema(jobFile, 'a job of a witness-mark book'),
    'known.schema.json': jsonSchema(knownFile, 'list of known findings of a witness-mark shop'),
    'shop.schema.json': jsonSchema(shopFile, 'shop.yaml of a witness-mark book'),
  };
}
