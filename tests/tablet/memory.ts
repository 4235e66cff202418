/** A storage as browsers have one, in memory; it holds no more than `most` UTF-16 units. */
import type {Storage} from '../../src/tablet/store.js';

export function memory(most = Number.POSITIVE_INFINITY): Storage {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (at) => [...kept.keys()][at] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem(key, value) {
      const others = [...kept].reduce(
        (sum, [name, text]) => sum + (name === key ? 0 : name.length + text.length),
        0,
      );
      if (others + key.length + value.length > most) throw new Error('QuotaExceededError');
      kept.set(key, value);
    },
    removeItem(key) {
      kept.delete(key);
    },
  };
}
