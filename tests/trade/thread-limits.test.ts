/** Diameters of threads by the formulas of ASME B1.1 and ISO 965-1 where one formula ends and the next begins. */
import {describe, expect, test} from 'vitest';
import {limitsOfThread} from '../../src/trade/thread-limits.js';
import {thread} from './fasteners.js';

describe('B1.1, 5.8: from 1/4 in the minor diameter has 0.25·P − 0.4·P²', () => {
  test.each([
    ['1/4-20 UNC', 0.25 / 20 - 0.4 / 400],
    // Of coarse special threads the formula of the smaller sizes would give more.
    ['1/4-8 UNS', 0.25 / 8 - 0.4 / 64],
    ['1/2-4 UNS', 0.25 / 4 - 0.4 / 16],
    // Smaller ones, by hand: 0.05·∛P² + 0.03·P/D − 0.002.
    ['#4-40 UNC', 0.05 * 40 ** (-2 / 3) + 0.03 / 40 / 0.112 - 0.002],
  ])('%s', (name, tolerance) => {
    const {minorMin, minorMax} = limitsOfThread(thread(name)).internal;
    expect((minorMax - minorMin) / 0.0254).toBeCloseTo(tolerance, 9);
  });
});

/**
 * ISO 965-1:1998, Tables 3 and 4, grade 6 (from memory), which are the formulas rounded to the R 40 series: tolerances of
 * the minor diameter of nuts and of the major diameter of bolts, in µm.
 */
describe('ISO 965-1', () => {
  test.each([
    ['M3×0.5', 140, 106],
    ['M4×0.7', 180, 140],
    ['M5×0.8', 200, 150],
    ['M6×1', 236, 180],
    ['M10×1.5', 300, 236],
    ['M16×2', 375, 280],
  ])('%s has %d and %d µm', (name, minor, major) => {
    const {internal, external} = limitsOfThread(thread(name));
    expect(Math.abs(1e6 * (internal.minorMax - internal.minorMin) - minor) / minor).toBeLessThan(0.04);
    expect(Math.abs(1e6 * (external.majorMax - external.majorMin) - major) / major).toBeLessThan(0.04);
  });

  // The formulas by hand: 433·P − 190·P^1.22 to 0.8 mm and 230·P^0.7 over it; 180·∛P² − 3.15/√P.
  test.each([
    ['M1.6×0.35', 98.76, 84.07],
    ['M5×0.8', 201.69, 151.6],
    ['M6×1', 230, 176.85],
  ])('%s is worked out to %d and %d µm', (name, minor, major) => {
    const {internal, external} = limitsOfThread(thread(name));
    expect(1e6 * (internal.minorMax - internal.minorMin)).toBeCloseTo(minor, 1);
    expect(1e6 * (external.majorMax - external.majorMin)).toBeCloseTo(major, 1);
  });
});
