/** The keys that a shape takes at a path, for hints on a key that it does not. */
import * as z from 'zod';

/** Every key that some way of writing the value at the path would take; `value` is what the path starts from. */
export function keysAt(shape: z.ZodType, path: readonly PropertyKey[], value?: unknown): string[] {
  let shapes = alternatives(shape, value);
  let here = value;
  for (const step of path) {
    here = partOf(here, step);
    shapes = shapes.flatMap((one) => inside(one, step)).flatMap((one) => alternatives(one, here));
  }
  return [...new Set(shapes.flatMap((one) => (one instanceof z.ZodObject ? Object.keys(one.shape) : [])))];
}

function inside(shape: z.core.$ZodType, step: PropertyKey): z.core.$ZodType[] {
  if (shape instanceof z.ZodArray) return [shape.element];
  if (shape instanceof z.ZodRecord) return [shape.valueType];
  if (!(shape instanceof z.ZodObject)) return [];
  const inner: z.core.$ZodType | undefined = shape.shape[String(step)];
  return inner === undefined ? [] : [inner];
}

/** A shape without what makes it optional, and a union as the shapes in it that the value may be meant for. */
function alternatives(shape: z.core.$ZodType, value: unknown): z.core.$ZodType[] {
  if (shape instanceof z.ZodOptional) return alternatives(shape.unwrap(), value);
  if (!(shape instanceof z.ZodUnion)) return [shape];
  const options = shape.options.flatMap((one) => alternatives(one, value));
  if (!(shape instanceof z.ZodDiscriminatedUnion)) return options;
  const {discriminator} = shape.def;
  const said = partOf(value, discriminator);
  return options.filter((one) => {
    const word = inside(one, discriminator)[0];
    return word === undefined || z.safeParse(word, said).success;
  });
}

function partOf(value: unknown, step: PropertyKey): unknown {
  return typeof value === 'object' && value !== null ? Reflect.get(value, step) : undefined;
}
