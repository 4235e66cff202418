/** What a change means that touches stripes of paint, second locks, temporary parts, tests with water, or one side of limits. */
import {describe, expect, it} from 'vitest';
import {compared, ENGINE, made, STEPS, said} from './small.js';

function changesBetween(before: ReturnType<typeof made>, now: ReturnType<typeof made>): readonly string[] {
  return said(compared(before, now));
}

describe('the stripe of paint', () => {
  const engine = ENGINE.replace('lock: safety-wire', 'lock: safety-wire, stripe: true');
  const steps = STEPS.replace('10. Wire the bolts. `lock: bolts with wire-032`', '$& `stripe: bolts`');
  const book = made(steps, engine);

  it('dropped from the steps is a weakening', () => {
    expect(changesBetween(book, made(STEPS, engine))).toEqual(['weakened: bolts: no longer striped']);
  });

  it('no longer asked for is a weakening', () => {
    expect(changesBetween(book, made(steps))).toEqual(['weakened: bolts: need no longer be striped']);
  });

  it('drawn before the torque is a weakening', () => {
    const early = STEPS.replace('6. Tighten', '6. Stripe the bolts. `stripe: bolts`\n7. Tighten');
    const found = changesBetween(book, made(early, engine));
    expect(found.filter((one) => one.startsWith('weakened: bolts'))).not.toEqual([]);
  });

  it('asked for and drawn now is a strengthening', () => {
    expect(changesBetween(made(), book)).toEqual([
      'strengthened: bolts: now must be striped, and striped now',
    ]);
  });
});
