/** What the server says of an item that the book leaves undone, held against its shape before it is used. */
import * as z from 'zod';

const place = z.object({line: z.number(), character: z.number()});

const shape = z.object({
  item: z.string(),
  place: z.string(),
  says: z.string(),
  location: z.object({uri: z.string(), range: z.object({start: place, end: place})}),
});

export type UndoneThere = z.infer<typeof shape>;

export function isUndone(value: unknown): value is UndoneThere {
  return shape.safeParse(value).success;
}
