/** Words that may stand at one place, as a message lists them. */

/** "one, two or three"; empty where there is none. */
export function alternatives(words: readonly string[]): string {
  if (words.length <= 1) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}
