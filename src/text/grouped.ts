/** Lists parted by a key. `Map.groupBy` does it too, but not in the oldest Node that the package runs on. */

/** By key, in the order in which the keys come up first. */
export function grouped<T, K>(list: Iterable<T>, keyOf: (one: T) => K): Map<K, T[]> {
  const map = new Map<K, T[]>();
  for (const one of list) {
    const key = keyOf(one);
    const known = map.get(key);
    if (known === undefined) map.set(key, [one]);
    else known.push(one);
  }
  return map;
}
