/** How time grows with size. */

/** The power of the size with which the time goes: least squares of the logarithms. */
export function growth(points: readonly (readonly [size: number, time: number])[]): number {
  const logs = points.map(([size, time]) => [Math.log(size), Math.log(time)] as const);
  const mean = (pick: 0 | 1) => logs.reduce((sum, point) => sum + point[pick], 0) / logs.length;
  const [meanSize, meanTime] = [mean(0), mean(1)];
  const above = logs.reduce((sum, [size, time]) => sum + (size - meanSize) * (time - meanTime), 0);
  const below = logs.reduce((sum, [size]) => sum + (size - meanSize) ** 2, 0);
  return above / below;
}
