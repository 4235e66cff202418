/** What a comparison says of small changes: placed by what they do to the engine, with both sides. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {compareBooks} from '../../src/compare/compare.js';
import type {Change} from '../../src/compare/model.js';
import {check} from '../../src/findings/check.js';
import {positionAt} from '../../src/text/source.js';
import {book} from '../help/example.js';
import {compared, ENGINE, made, SHOP, STEPS, said} from './small.js';

it('the book of these tests is clean', () => {
  expect(check(made()).findings).toEqual([]);
});

it('a book and itself differ in nothing', () => {
  const same = compared(made(), made());
  expect(said(same)).toEqual([]);
  expect(same.steps.length).toBeGreaterThan(0);
  expect(same.steps.every(({before, now, moved}) => before && now && !moved)).toBe(true);
});

type Case = readonly [name: string, from: string | RegExp, to: string, says: readonly string[]];

function each(cases: readonly Case[], after: (from: string | RegExp, to: string) => Book): void {
  it.each(cases)('%s', (_, from, to, says) => {
    expect(said(compared(made(), after(from, to))).filter((one) => !one.startsWith('reworded'))).toEqual(
      says,
    );
  });
}

describe('a change of the steps', () => {
  const cases: readonly Case[] = [
    ['a lock dropped', ' `lock: bolts with wire-032`', '', ['weakened: bolts: no longer locked']],
    ['a measure dropped', /8\. Read.*\n/, '', ['weakened: play: no longer measured']],
    ['a hold point dropped', /13\. .*\n/, '', ['weakened: closed: no longer witnessed']],
    ['an inspection dropped', /1\. Look.*\n/, '', ['weakened: cap: no longer inspected']],
    ['a lube dropped', /3\. Oil.*\n/, '', ['weakened: face: no longer lubed']],
    ['a record dropped', /11\. .*\n/, '', ['weakened: number: no longer recorded']],
    [
      'the rework dropped',
      /9\. Where.*\n.*\n/,
      '',
      ['weakened: play: no longer followed by what to do about its reading'],
    ],
    ['a caution dropped', /> \*\*Warning.*\n\n/, '', ['weakened: caution on fire: no longer warned of']],
    [
      'a signal word softened',
      '**Warning:**',
      '**Notice:**',
      ['weakened: caution on fire: signal word warning, now notice'],
    ],
    [
      'a pass dropped',
      'in 20, 30, 40',
      'in 30, 40',
      ['weakened: bolts: passes 20 lbf·ft, 30 lbf·ft, 40 lbf·ft, now 30 lbf·ft, 40 lbf·ft'],
    ],
    [
      'a pass added',
      'in 20, 30, 40',
      'in 10, 20, 30, 40',
      [
        'strengthened: bolts: passes 20 lbf·ft, 30 lbf·ft, 40 lbf·ft, now 10 lbf·ft, 20 lbf·ft, 30 lbf·ft, 40 lbf·ft',
      ],
    ],
    ['a cure shortened', 'for 24 h`', 'for 12 h`', ['weakened: joint: cure 24 h, now 12 h']],
    [
      'a limit widened',
      '0.002–0.006 in using',
      '0.002–0.008 in using',
      ['weakened: play: limits 0.002–0.006 in, now 0.002–0.008 in'],
    ],
    [
      'fewer defects looked for',
      'cracks, burrs`',
      'cracks`',
      ['weakened: cap: looks for cracks, burrs, now cracks'],
    ],
    [
      'a waiver added',
      '`install: cap',
      '`waive: lube-first by A. Person because it is short` `install: cap',
      ['weakened: waiver of lube-first: waived now: it is short'],
    ],
    [
      'a torque off what is specified',
      '40 lbf·ft in 20, 30, 40',
      '44 lbf·ft in 20, 30, 44',
      [
        'weakened: bolts: torque 40 lbf·ft, now 44 lbf·ft',
        'changed: bolts: passes 20 lbf·ft, 30 lbf·ft, 40 lbf·ft, now 20 lbf·ft, 30 lbf·ft, 44 lbf·ft',
      ],
    ],
    [
      'one more inspection',
      '`install: cap',
      '`inspect: cap for rust` `install: cap',
      ['strengthened: cap: inspected at one step more'],
    ],
    [
      'a lube that comes too late',
      /(3\. Oil.*\n)([\s\S]*)(6\. T)/,
      '$2$1$3',
      ['weakened: face: is not lubed with oil when cap closes it'],
    ],
    [
      'a lock that hangs on a reading',
      /10\. Wire the bolts\. (.*)\n/,
      '10. Go on.\n\n11. Where it is out: `if: play is out`\n    1. Wire the bolts. $1\n',
      [
        'weakened: bolts: locked only where play is out, before always',
        'weakened: closed: is signed at step 14 before bolts are as it asks',
        'strengthened: play: followed by what to do about its reading at one step more',
      ],
    ],
  ];
  each(cases, (from, to) => made(STEPS.replace(from, to)));
});

describe('a change that means nothing to the engine', () => {
  const cases: readonly (readonly [string, string | RegExp, string])[] = [
    ['other words', 'Look over the cap', 'Turn the cap over under the lamp and look'],
    ['steps that are apart moved', /(11\. Copy.*\n)(12\. Leave.*\n)/, '$2$1'],
    ['a step to another section', /(11\. Copy.*\n)([\s\S]*)/, '$2\n## Numbers\n\n$1'],
    [
      'a tag split',
      '`clean: face, joint with solvent`',
      '`clean: face with solvent` `clean: joint with solvent`',
    ],
    [
      'a step split',
      '`clean: face, joint with solvent`',
      '`clean: face with solvent`\n3. Wipe the joint. `clean: joint with solvent`',
    ],
    ['a value in another unit', '0.002–0.006 in using', '0.051–0.152 mm using'],
    ['a value left to the specification', 'within 0.002–0.006 in', ''],
    ['a value that the specification has too', '`torque: studs`', '`torque: studs to 12 lbf·ft`'],
    ['a step named', '`lock: bolts with wire-032`', '`lock: bolts with wire-032` `step: wire`'],
    ['a caution worded anew', 'Solvent burns.', 'Solvent burns, and its vapour drifts.'],
  ];
  it.each(cases)('%s', (_, from, to) => {
    const after = STEPS.replace(from, to);
    expect(after).not.toBe(STEPS);
    const {changes} = compared(made(), made(after));
    expect(changes.filter(({effect}) => effect !== 'reworded')).toEqual([]);
    expect(changes.length).toBeGreaterThan(0);
  });
});

describe('a change of the specification', () => {
  const both = (from: string | RegExp, to: string) =>
    made(STEPS.replaceAll(from instanceof RegExp ? from : from, to), ENGINE.replace(from, to));
  const cases: readonly Case[] = [
    [
      'limits in another unit, and wider than the figures of either allow',
      '0.002–0.006 in',
      '0.04–0.17 mm',
      ['weakened: play: limits 0.002–0.006 in, now 0.04–0.17 mm'],
    ],
    [
      'a lock no longer asked for',
      ', lock: safety-wire}',
      '}',
      ['weakened: bolts: lock safety-wire is no longer asked for'],
    ],
    [
      'a lock decided against',
      'lock: safety-wire}',
      'lock: {value: none, because: seldom}}',
      ['weakened: bolts: lock safety-wire, now none'],
    ],
    [
      'a decision against a lock forgotten',
      ', lock: {value: none, because: thread form}',
      '',
      ['weakened: studs: lock none is no longer asked for'],
    ],
    [
      'a lock asked for',
      'lock: {value: none, because: thread form}',
      'lock: safety-wire',
      ['strengthened: studs: lock none, now safety-wire'],
    ],
    [
      'a value nobody knows any more',
      'limits: 0.002–0.006 in',
      'limits: unknown',
      ['weakened: play: limits 0.002–0.006 in is no longer asked for'],
    ],
    [
      'another lubricant allowed',
      'lubricants: [oil]',
      'lubricants: [oil, grease]',
      ['weakened: face: lubricant oil, now oil or grease'],
    ],
    [
      'a surface that need only be clean',
      'assembly: lubed',
      'assembly: clean',
      ['weakened: face: assembly lubed, now clean'],
    ],
    ['a bar lifted', /barred:\n.*\n/, '', ['weakened: bar on grease for face: lifted']],
    ['an item gone', /marks:\n.*\n/, '', ['weakened: number: a mark that the specification no longer names']],
    [
      'a hold point that asks for less',
      'asks: [bolts]',
      'asks: []',
      ['weakened: closed: no longer asks for bolts'],
    ],
    ['a part that is reused no longer', ', reused: true', '', ['weakened: cap: need no longer be inspected']],
    [
      'one more mark',
      '  number: {stamped: pad}',
      '  number: {stamped: pad}\n  plate: {stamped: bearer}',
      ['strengthened: plate: a mark that the specification now names'],
    ],
  ];
  each(cases, (from, to) => made(STEPS, ENGINE.replace(from, to)));

  const RICH_SHOP = `${SHOP.replace(
    'dial: {name: dial indicator, gauge: true}',
    'dial: {name: dial indicator, gauge: true, resolution: 0.0001 in, accuracy: ±0.0002 in, calibrated: 2026-01-02, due: 2027-01-02}',
  )}`;
  const RICH = ENGINE.replace(
    'torque: 40 lbf·ft,',
    'torque: {value: 40 lbf·ft, note: oiled threads}, passes: [12 lbf·ft, 26 lbf·ft, 40 lbf·ft], order: [2, 1],',
  )
    .replace(
      'studs: {count: 2, holds: [cap],',
      'studs: {count: 2, holds: [cap], after: [bolts], lock-after: [joint],',
    )
    .replace(
      'barred:',
      'checks: {turns: {expect: freely, after: [closed], disturbed-by: [bolts]}}\nsystems: {sump: {closed-by: [cap, bolts], after: [turns]}}\nbarred:',
    );
  const rich = made(STEPS, RICH, RICH_SHOP);
  const text = RICH_SHOP + RICH;
  it.each<Case>([
    [
      'a limit moved up at both ends',
      'limits: 0.002–0.006 in',
      'limits: 0.0022–0.008 in',
      [
        'weakened: play: limits 0.002–0.006 in, now 0.0022–0.008 in: up to 0.008 in passes now',
        'strengthened: play: limits 0.002–0.006 in, now 0.0022–0.008 in: below 0.0022 in no longer passes',
      ],
    ],
    [
      'a limit left open at one end',
      'limits: 0.002–0.006 in',
      'limits: max 0.005 in',
      [
        'weakened: play: limits 0.002–0.006 in, now max 0.005 in: any lower value passes now',
        'strengthened: play: limits 0.002–0.006 in, now max 0.005 in: above 0.005 in no longer passes',
      ],
    ],
    [
      'a reason that silences a judgement',
      'limits: 0.002–0.006 in',
      'limits: {value: 0.002–0.006 in, because: measured in a hurry}',
      [
        'weakened: play: limits stated with a reason now, so that gauge-too-coarse no longer judges it: measured in a hurry',
      ],
    ],
    [
      'a note beside a value',
      'oiled threads',
      'dry threads',
      ['reworded: bolts: the note of torque: dry threads; before: oiled threads'],
    ],
    [
      'another reason',
      'because: thread form',
      'because: they hold',
      ['reworded: studs: the reason of lock is worded anew: they hold; before: thread form'],
    ],
    [
      'a gauge less accurate',
      '±0.0002 in',
      '±0.0008 in',
      ['weakened: dial: accuracy ±0.0002 in, now ±0.0008 in'],
    ],
    [
      'an accuracy of another kind, which is neither more nor less',
      '±0.0002 in',
      '±1 %',
      ['changed: dial: accuracy ±0.0002 in, now ±1 %'],
    ],
    [
      'a coarser gauge',
      'resolution: 0.0001 in',
      'resolution: 0.0002 in',
      ['weakened: dial: resolution 0.0001 in, now 0.0002 in'],
    ],
    [
      'a gauge due later, never calibrated since',
      'due: 2027-01-02',
      'due: 2036-01-02',
      ['weakened: dial: due 2027-01-02, now 2036-01-02'],
    ],
    [
      'a gauge calibrated anew',
      'calibrated: 2026-01-02, due: 2027-01-02',
      'calibrated: 2026-06-02, due: 2027-06-02',
      [
        'changed: dial: calibrated 2026-01-02, now 2026-06-02',
        'changed: dial: due 2027-01-02, now 2027-06-02',
      ],
    ],
    ['fewer of a fastener', 'bolts: {count: 2', 'bolts: {count: 1', ['weakened: bolts: count 2, now 1']],
    [
      'a fastener that need not wait for another',
      ' after: [bolts],',
      '',
      ['weakened: studs: need no longer come after bolts'],
    ],
    [
      'a fastener whose lock need not wait for a joint',
      ' lock-after: [joint],',
      '',
      ['weakened: studs: need no longer be locked after joint'],
    ],
    [
      'a check that need not wait for its hold point',
      ' after: [closed],',
      '',
      ['weakened: turns: need no longer come after closed'],
    ],
    [
      'a check that nothing is said to disturb any more',
      ', disturbed-by: [bolts]}}',
      '}}',
      ['weakened: turns: no longer said to be disturbed by bolts'],
    ],
    [
      'a reading that is said to be disturbed',
      'rework: true, using: [dial]',
      'rework: true, disturbed-by: [studs], using: [dial]',
      ['strengthened: play: now said to be disturbed by studs'],
    ],
    [
      'a system that is no longer said to be closed by its plug',
      'closed-by: [cap, bolts]',
      'closed-by: [cap]',
      ['weakened: sump: no longer said to be closed by bolts'],
    ],
    [
      'a system that must wait for a check as well',
      'after: [turns]',
      'after: [turns, joint]',
      ['strengthened: sump: now must come after joint'],
    ],
    ['the order dropped', ', order: [2, 1]', '', ['weakened: bolts: order 2, 1 is no longer asked for']],
    ['another order', 'order: [2, 1]', 'order: [1, 2]', ['changed: bolts: order 2, 1, now 1, 2']],
    [
      'a first pass that takes more',
      'passes: [12 lbf·ft,',
      'passes: [22 lbf·ft,',
      ['weakened: bolts: passes 12 lbf·ft, 26 lbf·ft, 40 lbf·ft, now 22 lbf·ft, 26 lbf·ft, 40 lbf·ft'],
    ],
    [
      'who signs a hold point',
      'by: shop lead',
      'by: second mechanic',
      ['changed: closed: by shop lead, now second mechanic'],
    ],
  ])('%s', (_, from, to, says) => {
    expect(text).toContain(from);
    const now = made(STEPS, RICH.replace(from, to), RICH_SHOP.replace(from, to));
    // What the old value in the steps then contradicts is not looked at here.
    const lines = compared(rich, now).changes.filter(({aspect}) => !aspect.includes('disagrees'));
    expect(lines.map(({effect, message}) => `${effect}: ${message}`)).toEqual(says);
    const back = compared(now, rich).changes.map(({effect}) => effect);
    if (says.some((one) => one.startsWith('weakened'))) expect(back).toContain('strengthened');
  });

  it('a reason of the author stands beside the new value', () => {
    const now = made(
      STEPS,
      ENGINE.replace('lock: safety-wire', 'lock: {value: none, because: the washer grips}'),
    );
    expect(compared(made(), now).changes[0]?.now.at[0]?.says).toBe(
      'bolts in the specification: lock, because the washer grips',
    );
  });

  it('a lock dropped from specification and steps alike is one weakening, and names each step once', () => {
    const now = made(
      STEPS.replace(' `lock: bolts with wire-032`', ''),
      ENGINE.replace('lock: safety-wire', 'lock: {value: none, because: seldom}'),
    );
    const {changes} = compared(made(), now);
    expect(changes.filter(({effect}) => effect === 'weakened').map(({message}) => message)).toEqual([
      'bolts: lock safety-wire, now none, and no longer locked',
    ]);
    const says = changes[0]?.before.at.map((one) => one.says);
    expect(says).toEqual([...new Set(says)]);
  });

  it('what a hold point still asks for is said beside what it no longer does', () => {
    const engine = ENGINE.replace('asks: [bolts]', 'asks: [bolts, cap, play]');
    const [change] = compared(
      made(STEPS, engine),
      made(STEPS, engine.replace('bolts, cap, play', 'bolts, play')),
    ).changes;
    expect([change?.message, change?.before.required, change?.now.required]).toEqual([
      'closed: no longer asks for cap',
      'ask bolts, cap, play',
      'ask bolts, play',
    ]);
  });

  it.each([
    ['torque', '40 lbf·ft', '45 lbf·ft', 'changed: bolts: torque 40 lbf·ft, now 45 lbf·ft'],
    [
      'limits',
      '0.002–0.006 in',
      '0.003–0.006 in',
      'strengthened: play: limits 0.002–0.006 in, now 0.003–0.006 in',
    ],
    [
      'limits',
      '0.002–0.006 in',
      '0.002–0.009 in',
      'weakened: play: limits 0.002–0.006 in, now 0.002–0.009 in',
    ],
  ])('%s changed on both sides is one change', (_, from, to, says) => {
    const steps = STEPS.replace(' in 20, 30, 40', '');
    const now = made(steps.replace(from, to), ENGINE.replace(from, to));
    expect(said(compared(made(steps), now))).toEqual([says]);
    expect(both(from, to)).toBeDefined();
  });

  it('what the specification newly asks for and no step does is a finding, and no weakening', () => {
    const now = made(STEPS, ENGINE.replace('lock: {value: none, because: thread form}', 'lock: safety-wire'));
    const {changes, brought, settled} = compared(made(), now);
    expect(changes.map(({effect}) => effect)).toEqual(['strengthened']);
    expect(brought.map(({name}) => name)).toEqual(['left-unlocked']);
    expect(settled).toEqual([]);
  });

  it('a source that is no longer listed, one by another title, and one by another id', () => {
    const sourced = (list: string) =>
      made(STEPS, ENGINE, SHOP.replace(/^sources: .*$/m, `sources: {house: {title: House notes}, ${list}}`));
    const old = sourced('sheet: {title: Works sheet}');
    const lines = (now: ReturnType<typeof made>) =>
      said(compared(old, now)).filter((line) => line.includes(': source '));
    expect(lines(sourced(''))).toEqual(['weakened: source sheet: no longer listed']);
    expect(lines(sourced('sheet: {title: The works sheet}'))).toEqual([
      'reworded: source sheet: its title is worded anew',
    ]);
    expect(lines(sourced('factory: {title: Works sheet}'))).toEqual([]);
  });

  it('a severity lowered in the shop', () => {
    const now = made(STEPS, ENGINE, `${SHOP}severity: {left-unlocked: information}\n`);
    expect(said(compared(made(), now))).toEqual([
      'weakened: severity of left-unlocked: error, now information',
    ]);
    expect(said(compared(now, made()))).toEqual([
      'strengthened: severity of left-unlocked: information, now error',
    ]);
  });

  it('a lock dropped under cover of a change of the specification is seen', () => {
    const now = made(
      STEPS.replace(' `lock: bolts with wire-032`', ''),
      ENGINE.replace('count: 2, holds: [cap], torque: 12', 'count: 3, holds: [cap], torque: 13'),
    );
    expect(said(compared(made(), now))).toContain('weakened: bolts: no longer locked');
  });
});

describe('renames', () => {
  const rename = (text: string, from: string, to: string) =>
    text.replace(new RegExp(`(?<![a-z-])${from}(?![a-z-])`, 'g'), to);

  it.each(['bolts', 'cap', 'face', 'play', 'closed', 'wire-032'])(
    'of %s throughout the book are no change',
    (id) => {
      const tags = STEPS.replace(/`[^`]*`/g, (tag) => rename(tag, id, `${id}-b`));
      const now = made(tags, rename(ENGINE, id, `${id}-b`), rename(SHOP, id, `${id}-b`));
      expect(said(compared(made(), now)).filter((one) => !one.startsWith('reworded'))).toEqual([]);
      expect(said(compared(made(), now))).toContain(`reworded: ${id}-b: called ${id} before`);
    },
  );

  it('do not hide a lock that went with the old name', () => {
    const tags = rename(STEPS.replace(' `lock: bolts with wire-032`', ''), 'bolts', 'cap-bolts');
    const now = made(tags, rename(ENGINE, 'bolts', 'cap-bolts'));
    expect(said(compared(made(), now))).toContain('weakened: cap-bolts: no longer locked');
  });
});

it.each([
  [
    'a pass that the specification does not state: at odds with it, and no weakening',
    'in 20, 30, 40',
    'in 20, 25, 30, 40',
    ['strengthened passes value-disagrees'],
  ],
  [
    'limits within those of the specification',
    'within 0.002–0.006 in',
    'within 0.003–0.005 in',
    ['strengthened limits value-disagrees'],
  ],
  [
    'a pass fewer than the specification states',
    'in 20, 30, 40',
    'in 30, 40',
    ['weakened passes value-disagrees'],
  ],
  [
    'limits wider than those of the specification',
    'within 0.002–0.006 in',
    'within 0.002–0.008 in',
    ['weakened limits value-disagrees'],
  ],
])('%s', (_, clause, instead, effects) => {
  const engine = ENGINE.replace('40 lbf·ft', '40 lbf·ft, passes: [20 lbf·ft, 30 lbf·ft, 40 lbf·ft]');
  const {changes} = compared(made(STEPS, engine), made(STEPS.replace(clause, instead), engine));
  const told = changes.map(
    ({effect, aspect, brings = []}) => `${effect} ${aspect} ${brings.map(({name}) => name).join()}`,
  );
  expect(told).toEqual(effects);
});

describe('renames together with a change', () => {
  const rename = (text: string, from: string, to: string) =>
    text.replace(new RegExp(`(?<![a-z-])${from}(?![a-z-])`, 'g'), to);
  const passes = ENGINE.replace(
    'torque: 40 lbf·ft',
    'torque: 40 lbf·ft, passes: [20 lbf·ft, 30 lbf·ft, 40 lbf·ft]',
  );
  const renamed = (engine: string, from: string, to: string, steps = STEPS) =>
    made(
      steps.replace(/`[^`]*`/g, (tag) => rename(tag, from, to)),
      rename(engine, from, to),
    );

  it.each([
    [
      'passes dropped',
      made(STEPS, passes),
      renamed(
        passes.replace('20 lbf·ft, 30 lbf·ft, ', ''),
        'bolts',
        'cylinder-bolts',
        STEPS.replace(' in 20, 30, 40', ''),
      ),
      [
        'weakened: cylinder-bolts: passes 20 lbf·ft, 30 lbf·ft, 40 lbf·ft, now 40 lbf·ft',
        'reworded: cylinder-bolts: called bolts before',
      ],
    ],
    [
      'a fit widened',
      made(),
      renamed(
        ENGINE.replaceAll('0.006 in', '0.009 in'),
        'play',
        'end-float',
        STEPS.replaceAll('0.006 in', '0.009 in'),
      ),
      [
        'weakened: end-float: limits 0.002–0.006 in, now 0.002–0.009 in',
        'reworded: end-float: called play before',
      ],
    ],
    [
      'a hold point that asks for less',
      made(),
      renamed(ENGINE.replace('asks: [bolts]', 'asks: []'), 'closed', 'signed-off'),
      ['weakened: signed-off: no longer asks for bolts', 'reworded: signed-off: called closed before'],
    ],
  ])('%s', (_, before, now, says) => {
    expect(
      said(compared(before, now)).filter((one) => !/tags written|worded anew|: name /.test(one)),
    ).toEqual(says);
  });

  it('an item that went and another that came are not one', () => {
    const now = made(
      STEPS.replace(/11\. .*\n/, '').replace(
        '1. Look',
        '1. Fit the oil pipe with its union. `install: pipe`\n2. Look',
      ),
      ENGINE.replace(/ {2}cap: .*\n/, (line) => `${line}  pipe: {hazards: [fuel], quantity: 3}\n`).replace(
        /marks:\n.*\n/,
        '',
      ),
    );
    expect(said(compared(made(), now))).toContain(
      'weakened: number: a mark that the specification no longer names',
    );
    expect(said(compared(made(), now))).toContain(
      'strengthened: pipe: a part that the specification now names',
    );
  });

  it('what is required of an item that went names its passes', () => {
    const now = made(
      STEPS.replace(/6\. .*\n/, '').replace(' `lock: bolts with wire-032`', ''),
      passes
        .replace(/ {2}bolts: .*\n/, '')
        .replace('asks: [bolts]', 'asks: []')
        .replace('tight: [bolts]', 'tight: []'),
    );
    const gone = compared(made(STEPS, passes), now).changes.find(({aspect}) => aspect === 'item');
    expect(gone?.before.required).toContain('passes 20 lbf·ft, 30 lbf·ft, 40 lbf·ft');
  });
});

describe('a weakening tells', () => {
  const now = made(`\n${STEPS.replace(' `lock: bolts with wire-032`', '')}`);
  const {changes, brought} = compared(made(), now);
  const [change] = changes as readonly [Change];

  it('the item, what is required on both sides, and the step with file and line', () => {
    expect(change).toMatchObject({item: 'bolts', aspect: 'lock'});
    expect([change.before.required, change.now.required]).toEqual(['lock safety-wire', 'lock safety-wire']);
    const [at] = change.before.at;
    const from = made().procedures[0]?.source;
    expect(at?.says).toBe('step 10 of 01-cap.md: lock: bolts with wire-032');
    expect(from && at && from.text.split('\n')[positionAt(from, at.where.span.start).line - 1]).toContain(
      '10. Wire the bolts.',
    );
    expect(change.now.at).toEqual([]);
  });

  it('the findings that came with it', () => {
    expect(change.brings.map(({name}) => name)).toEqual(['left-unlocked']);
    expect(brought.map(({name}) => name).sort()).toEqual(['left-unlocked', 'untagged-action']);
  });
});

it('findings are settled and brought by meaning: lines that move change nothing', () => {
  const faulty = made(STEPS.replace(/3\. Oil.*\n/, ''));
  const lower = made(
    STEPS.replace(/3\. Oil.*\n/, '').replace('## Cap', 'A word before.\n\n## Cap\n\n1. Breathe in.'),
  );
  const {brought, settled} = compared(faulty, lower);
  expect([brought, settled]).toEqual([[], []]);
  expect(compared(faulty, made()).settled.map(({name}) => name)).toContain('lube-first');
});

it('a torque pass at a step of its own is missed when it goes', () => {
  const passes = STEPS.replace(
    '6. Tighten the bolts. `torque: bolts to 40 lbf·ft in 20, 30, 40`',
    '6. Snug them. `torque: bolts to 20 lbf·ft`\n7. Tighten the bolts. `torque: bolts to 40 lbf·ft`',
  );
  const one = passes.replace(/6\. Snug.*\n/, '');
  expect(said(compared(made(passes), made(one)))).toEqual(['weakened: bolts: tightened at one step fewer']);
});

describe('what holds for some engines only', () => {
  const OPTIONS = `${ENGINE}options: {radio: second radio}\n`;
  const before = made(STEPS, OPTIONS);

  it.each([
    ['a step', STEPS.replace('`lock: bolts with wire-032`', '`lock: bolts with wire-032` `only: radio`')],
    ['its section', STEPS.replace('10. Wire', '## Radio `only: radio`\n\n10. Wire')],
  ])('%s that is now for an option locks no other engine', (_, steps) => {
    expect(said(compared(before, made(steps, OPTIONS)))).toContain(
      'weakened: bolts: locked only with radio, before always',
    );
    expect(said(compared(made(steps, OPTIONS), before))).toContain(
      'strengthened: bolts: locked in every case, before only with radio',
    );
  });

  it('an item that only some engines have is asked for less', () => {
    const now = made(STEPS, OPTIONS.replace('number: {stamped: pad}', 'number: {stamped: pad, only: radio}'));
    expect(said(compared(before, now))).toContain(
      'weakened: number: options every engine, now only with radio',
    );
  });
});

describe('jobs', () => {
  const withJob = (says: string) =>
    book({shop: SHOP, engine: ENGINE, procedures: {'01-cap.md': STEPS}, job: says});
  const judge = (one: Book) => check(one).findings;

  it.each([
    ['marks: {number: A 1}', 'marks: {number: A 2}', 'changed: job 1: mark number A 1, now A 2'],
    [
      'grinds: {face: standard}',
      'grinds: {face: 0.010 in}',
      'changed: job 1: grind of face standard, now 0.010 in',
    ],
    ['grinds: {face: standard}', 'marks: {}', 'changed: job 1: grind of face standard, now not stated'],
  ])('%s, then %s', (was, is, says) => {
    const [old, fresh] = [withJob(was), withJob(is)];
    const plain = made();
    const jobs = ({job}: Book) => (job === undefined ? [] : [job]);
    const side = (one: Book) => ({book: plain, jobs: jobs(one), findings: judge(plain)});
    expect(said(compareBooks(side(old), side(fresh), judge))).toEqual([says]);
    expect(said(compareBooks(side(old), side(plain), judge))).toEqual(['changed: job 1: taken out']);
  });
});

it('the order in which places are tightened is a change, and no weakening', () => {
  const engine = ENGINE.replace('bolts: {count: 2', 'bolts: {at: [left, right], count: 2');
  const steps = STEPS.replace('torque: bolts to', 'torque: bolts[left, right] to');
  const turned = steps.replace('[left, right]', '[right, left]');
  expect(said(compared(made(steps, engine), made(turned, engine)))).toEqual([
    'changed: bolts: order left, right, now right, left',
  ]);
});
