/** Times as people write them, and how long lies between them: invented times, worked out by hand. */
import {describe, expect, it} from 'vitest';
import {clockText, clockTime, durationText} from '../../src/readings/clock-time.js';

describe('a time', () => {
  it.each([
    ['17:05', '2026-03-01 17:05'],
    [' 7:05 ', '2026-03-01 07:05'],
    ['2026-02-28 23:59', '2026-02-28 23:59'],
    ['2026-02-28T23:59', '2026-02-28 23:59'],
    ['1.3.2026, 8:00', '2026-03-01 08:00'],
  ])('%s is read', (text, due) => {
    const minutes = clockTime(text, '2026-03-01');
    expect(minutes === undefined ? undefined : clockText(minutes)).toBe(due);
  });

  it.each(['', 'noon', '25:00', '17:60', '2026-02-30 08:00', '17:05 h'])('%j is none', (text) => {
    expect(clockTime(text, '2026-03-01')).toBeUndefined();
  });
});

describe('a duration', () => {
  it.each([
    [0, '0 min'],
    [59, '59 min'],
    [60, '1 h'],
    [270, '4 h 30 min'],
    // The hour that a rounded minute fills: 1.999 h are 119.94 min.
    [119.94, '2 h'],
    [59.6, '1 h'],
  ])('of %s minutes', (minutes, due) => {
    expect(durationText(minutes)).toBe(due);
  });
});
