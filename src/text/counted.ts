/** Numbers of things as reports in English say them; words of a sheet or build report are in its own language. */

/** `1 step`, `2 steps`, `0 entries`. */
export function counted(count: number, word: string, several = `${word}s`): string {
  return `${count} ${count === 1 ? word : several}`;
}
