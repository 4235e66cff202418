/** How far two pictures of a page are apart: blurred, so that letters count little and what stands on the page much. */
import type {Picture} from './picture.js';

/** Dots to each side that are averaged. */
const BLUR = 2;

/**
 * The largest difference of two pictures in grey (0 to 255) once both are blurred. A date that changed, or another
 * smoothing of edges, stays below `TOLERANCE`; a box or drawing that is gone, or a block that moved, is above it
 * (`pages.test.ts` shows both).
 */
export function difference(one: Picture, other: Picture): number {
  if (one.width !== other.width || one.height !== other.height) return 255;
  const [first, second] = [blurred(one), blurred(other)];
  return Math.max(...first.map((light, at) => Math.abs(light - (second[at] ?? 0))));
}

export const TOLERANCE = 20;

function blurred({width, height, grey}: Picture): number[] {
  const mean = (from: readonly number[], step: number, length: number) =>
    from.map((_, at) => {
      const place = Math.floor(at / step) % length;
      let [sum, count] = [0, 0];
      for (let off = -BLUR; off <= BLUR; off++) {
        if (place + off < 0 || place + off >= length) continue;
        sum += from[at + off * step] ?? 0;
        count += 1;
      }
      return sum / count;
    });
  return mean(mean(grey, 1, width), width, height);
}
