/** The keys that a shape takes at a path, for hints on a key that it does not. */
import * as z from 'zod';

/** Every key that some way of writing the value at the path would take. */
export function keysAt(shape: z.ZodType, path: readonly PropertyKey[]): string[] {
  let shapes: z.core.$ZodType[] = alternatives(shape);
  for (const step of path) shapes = shapes.flatMap((one) => inside(one, step)).flatMap(alternatives);
  return [...new Set(shapes.flatMap((one) => (one instanceof z.ZodObject ? Object.keys(one.shape) : [])))];
}

function inside(shape: z.core.$ZodType, step: PropertyKey): z.core.$ZodType[] {
  if (shape instanceof z.ZodArray) return [shape.element];
  if (shape instanceof z.ZodRecord) return [shape.valueType];
  if (!(shape instanceof z.ZodObject)) return [];
  const inner: z.core.$ZodType | undefined = shape.shape[String(step)];
  return inner === undefined ? [] : [inner];
}

/** A shape without what makes it optional, and a union as the shapes in it. */
function alternatives(shape: z.core.$ZodType): z.core.$ZodType[] {
  if (shape instanceof z.ZodOptional) return alternatives(shape.unwrap());
  if (shape instanceof z.ZodUnion) return shape.options.flatMap(alternatives);
  return [shape];
}
