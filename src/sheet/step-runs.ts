/** Step numbers as people write them: three or more in a row drawn together. */

/** `1–4`, `6`, `8b`. */
export function runs(steps: readonly string[]): string[] {
  const follows = (at: number) => Number(steps[at]) === Number(steps[at - 1]) + 1;
  const printed: string[] = [];
  for (let start = 0; start < steps.length; ) {
    let end = start;
    while (follows(end + 1)) end++;
    const run = steps.slice(start, end + 1);
    printed.push(...(run.length < 3 ? run : [`${run[0]}–${run.at(-1)}`]));
    start = end + 1;
  }
  return printed;
}

/** Steps of several sheets, `4.12` and so on, told by sheet: `4 · 7–9, 12; 5 · 3`. No line ends at the dot. */
export function bySheet(steps: readonly string[]): string {
  const sheets = new Map<string, string[]>();
  for (const step of steps) {
    const dot = step.indexOf('.');
    const sheet = step.slice(0, dot);
    sheets.set(sheet, [...(sheets.get(sheet) ?? []), step.slice(dot + 1)]);
  }
  return [...sheets].map(([sheet, numbers]) => `${sheet}\u00A0·\u00A0${runs(numbers).join(', ')}`).join('; ');
}
