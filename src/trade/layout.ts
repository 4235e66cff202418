/** Where fasteners sit, by coordinates or as a row, a grid or a circle of so many. */

export interface Spot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/** In one line, numbered from the left. */
export function row(count: number): Spot[] {
  return grid(1, count);
}

/** Numbered row by row from the left, the first row on top; spacing 1 both ways. */
export function grid(rows: number, columns: number): Spot[] {
  return Array.from({length: rows * columns}, (_, index) => ({
    id: String(index + 1),
    x: index % columns,
    y: -Math.floor(index / columns),
  }));
}

/** Numbered clockwise from the top, radius 1. */
export function circle(count: number): Spot[] {
  return Array.from({length: count}, (_, index) => {
    const angle = (2 * Math.PI * index) / count;
    return {id: String(index + 1), x: Math.sin(angle), y: Math.cos(angle)};
  });
}

/** The mean of all places. */
export function middleOf(spots: readonly Spot[]): {readonly x: number; readonly y: number} {
  const sum = spots.reduce((total, {x, y}) => ({x: total.x + x, y: total.y + y}), {x: 0, y: 0});
  return {x: sum.x / spots.length, y: sum.y / spots.length};
}

export function distance(
  a: {readonly x: number; readonly y: number},
  b: {readonly x: number; readonly y: number},
): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
