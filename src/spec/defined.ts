/** Objects without the keys that hold nothing, as optional fields want them. */

export type Defined<T> = {readonly [K in keyof T as undefined extends T[K] ? never : K]: T[K]} & {
  readonly [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** The same object, every key whose value is undefined left out. */
export function defined<T extends object>(from: T): Defined<T> {
  const kept = Object.entries(from).filter(([, value]) => value !== undefined);
  // What `fromEntries` gives back has lost its keys for the compiler.
  return Object.fromEntries(kept) as Defined<T>;
}
