/** A shape as a JSON Schema, which editors and other programs read. */
import * as z from 'zod';

/** Of the 2020-12 draft, as the shape is written: what it makes of a value has no schema. */
export function jsonSchema(shape: z.ZodType, title: string): object {
  const {$schema, ...rest} = z.toJSONSchema(shape, {target: 'draft-2020-12', io: 'input'});
  return {$schema, title, ...rest};
}
