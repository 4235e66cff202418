/** What a change means that touches stripes of paint, second locks, temporary parts, tests with water, or one side of limits. */
import {describe, expect, it} from 'vitest';
import {compared, ENGINE, made, SHOP, STEPS, said} from './small.js';

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

describe('a second lock', () => {
  const shop = `${SHOP}  tabs: {use: lock, lock: tab-washer}\n`;
  const engine = ENGINE.replace('lock: safety-wire', 'lock: [tab-washer, safety-wire]');
  const steps = STEPS.replace('10. Wire the bolts.', '10. Tabs and wire. `lock: bolts with tabs`');
  const book = made(steps, engine, shop);

  it.each<readonly [string, ReturnType<typeof made>, readonly string[]]>([
    [
      'dropped from the steps',
      made(steps.replace(' `lock: bolts with tabs`', ''), engine, shop),
      ['weakened: bolts: no longer locked with tabs'],
    ],
    [
      'dropped from steps and specification',
      made(steps.replace(' `lock: bolts with tabs`', ''), ENGINE, shop),
      [
        'weakened: bolts: no longer locked with tabs',
        'weakened: bolts: lock tab-washer and safety-wire, now safety-wire',
      ],
    ],
    [
      'in another order in the specification',
      made(steps, engine.replace('[tab-washer, safety-wire]', '[safety-wire, tab-washer]'), shop),
      [],
    ],
  ])('%s', (_, now, says) => {
    expect(changesBetween(book, now)).toEqual(says);
  });

  it('asked for and put on now is a strengthening', () => {
    expect(changesBetween(made(STEPS, ENGINE, shop), book)).toEqual([
      'strengthened: bolts: locked at one step more',
      'strengthened: bolts: lock safety-wire, now tab-washer and safety-wire',
      'reworded: step 10 of 01-cap.md: worded anew',
    ]);
  });
});

describe('a temporary part', () => {
  const engine = ENGINE.replace('parts:\n', 'parts:\n  pin: {temporary: true}\n');

  it('that is no longer said to block a shaft is a weakening', () => {
    const blocking = engine.replace('temporary: true', 'temporary: true, blocks: [cap]');
    expect(changesBetween(made(STEPS, blocking), made(STEPS, engine))).toEqual([
      'weakened: pin: no longer said to block cap',
    ]);
  });
  const steps = STEPS.replace('5. Tap', '5. Pin it. `install: pin`\n6. Tap').replace(
    '10. Wire',
    '11. Draw the pin. `remove: pin`\n10. Wire',
  );
  const book = made(steps, engine);

  it.each<readonly [string, ReturnType<typeof made>, readonly string[]]>([
    [
      'that no longer comes out',
      made(steps.replace('`remove: pin`', ''), engine),
      ['weakened: pin: no longer removed'],
    ],
    [
      'that comes out before the bolts are tightened that it was in for',
      made(
        steps
          .replace('11. Draw the pin. `remove: pin`\n', '')
          .replace('6. Tighten', '6. Draw the pin. `remove: pin`\n7. Tighten'),
        engine,
      ),
      ['changed: pin: removed before bolts is tightened, studs is tightened now, the other way round before'],
    ],
    [
      'that need no longer come out',
      made(steps, engine.replace('{temporary: true}', '{}')),
      ['weakened: pin: need no longer come out again', 'strengthened: pin: now must be installed'],
    ],
  ])('%s', (_, now, says) => {
    expect(changesBetween(book, now)).toEqual(expect.arrayContaining([...says]));
  });
});

describe('a branch on one side of the limits', () => {
  const over = made(
    STEPS.replace('`if: play is out`', '`if: play is over`').replace(
      'Stop and find the shop lead.',
      '$& `turn: cap`',
    ),
  );
  const out = made(STEPS.replace('Stop and find the shop lead.', '$& `turn: cap`'));

  it('does less than one for both', () => {
    expect(changesBetween(out, over)).toContain(
      'weakened: cap: turned only where play is over, before only where play is out',
    );
    expect(changesBetween(over, out)).toContain(
      'strengthened: cap: turned only where play is out, before only where play is over',
    );
  });
});

describe('a branch that names places', () => {
  const engine = ENGINE.replace('cap: {', 'cap: {at: [left, right], ').replace(
    'play: {',
    'play: {at: [left, right], ',
  );
  const steps = STEPS.replace('Stop and find the shop lead.', '$& `turn: cap`');
  const at = (play: string) => made(steps.replace('`if: play is out`', `\`if: ${play} is out\``), engine);

  it('covers less than one that names none, or more of them', () => {
    expect(changesBetween(at('play'), at('play[left]'))).toEqual([
      'weakened: play[right]: no longer followed by what to do about its reading',
      'weakened: cap: turned only where play[left] is out, before only where play is out',
    ]);
    expect(changesBetween(at('play[left]'), at('play'))).toEqual(
      expect.arrayContaining([
        'strengthened: play[right]: followed by what to do about its reading now',
        'strengthened: cap: turned only where play is out, before only where play[left] is out',
      ]),
    );
  });

  it('says the same as one that names none where it names them all', () => {
    expect(changesBetween(at('play'), at('play[left, right]'))).toEqual([
      'reworded: step 9 of 01-cap.md: its tags written otherwise',
    ]);
  });

  it('may name another place', () => {
    expect(changesBetween(at('play[left]'), at('play[right]'))).toEqual(
      expect.arrayContaining([
        'weakened: play[left]: no longer followed by what to do about its reading',
        'changed: cap: turned only where play[right] is out, before only where play[left] is out',
      ]),
    );
  });

  it('goes with its item and place where these are renamed', () => {
    const renamed = (text: string) =>
      text.replaceAll(/\bplay\b/g, 'end-play').replaceAll(/\bleft\b/g, 'near');
    const narrow = steps.replace('`if: play is out`', '`if: play[left] is out`');
    const found = changesBetween(made(narrow, engine), made(renamed(narrow), renamed(engine)));
    expect(found.filter((one) => one.includes('turned'))).toEqual([]);
  });
});

describe('a system that is drained', () => {
  const engine = `${ENGINE}\nsystems:\n  oil: {joints: [], closed-by: [], with: [oil-thin, oil-thick]}\n`;
  const steps = (...more: readonly string[]) => `${STEPS}${more.join('\n')}\n`;
  const [flush, fill] = ['11. Flush. `fill: oil with oil-thin`', '13. Fill. `fill: oil with oil-thick`'];
  const drain = '12. Let it out. `drain: oil`';

  it('must be drained for as long as it is filled again', () => {
    expect(
      changesBetween(made(steps(flush, drain, fill), engine), made(steps(flush, fill), engine)),
    ).toContain('weakened: oil: no longer drained');
  });

  it('gains nothing by being drained', () => {
    expect(
      changesBetween(made(steps(flush, fill), engine), made(steps(flush, drain, fill), engine)),
    ).toContain('changed: oil: drained now');
  });
});
