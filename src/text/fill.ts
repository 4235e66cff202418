/** Phrases with holes in them, so that each language may put the values where it wants them. */

/** Puts values into the `{holes}` of a phrase; a hole without a value stays as it is. */
export function fill(phrase: string, values: Readonly<Record<string, string | number>>): string {
  return phrase.replace(/\{([a-z]+)\}/g, (hole, name: string) => String(values[name] ?? hole));
}
