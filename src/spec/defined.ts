/** Objects without the keys that hold nothing, as optional fields want them. */

export type Defined<T> = {readonly [K in keyof T as undefined extends T[K] ? never : K]: T[K]} & {
  readonly [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** The same object, every key whose value is undefined left out. */
export function defined<T extends object>(from: T): Defined<T> {
  const kept: Record<string, unknown> = {};
  for (const key in from) if (from[key] !== undefined) kept[key] = from[key];
  // The compiler cannot follow which keys were left out.
  return kept as Defined<T>;
}
