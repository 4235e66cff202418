/** A table in text: columns side by side, as a terminal shows them. */

/** Each line as one text, every column but the last as wide as its longest cell, two spaces between. */
export function inColumns(lines: readonly (readonly string[])[]): string[] {
  const widths: number[] = [];
  for (const line of lines) {
    for (const [at, cell] of line.entries()) widths[at] = Math.max(widths[at] ?? 0, cell.length);
  }
  return lines.map((line) =>
    line
      .map((cell, at) => cell.padEnd(widths[at] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}
