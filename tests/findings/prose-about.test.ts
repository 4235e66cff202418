/** Which numbers of a step's prose are about the value of its tag, and so must agree with it. Every value is invented. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  glue: {use: sealant, cure: 24 h}
`;

const ENGINE = `
parts:
  block: {given: true}
  cover: {}
joints:
  face: {between: [block, cover], seal: [glue]}
fasteners:
  bolts: {holds: [cover], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
  studs: {holds: [cover], torque: 40 lbf·ft, angle: 90°, threads: dry, lock: {value: none, because: stretch}}
systems:
  sump: {joints: [face], amount: 7 qt}
checks:
  oven: {name: oven temperature, limits: 100–120 °C}
  dew: {name: dew point, limits: 5–10 °C}
  feed: {name: feed pressure, limits: 3–5 bar}
  hot-feed: {name: feed pressure hot, limits: 3–5 bar}
  taper: {name: Difference of two readings, limits: 0–0.1 mm}
  bore-a: {name: Taper of the bore, limits: 0–0.1 mm}
  shake: {name: shake of the pin, limits: 0 mm max}
  drop: {name: height over the face, limits: -0.1–0 mm}
`;

/** The numbers that are told of, as they stand in the prose. */
function told(prose: string, tag: string): string[] {
  const one = book({engine: ENGINE, shop: SHOP, procedures: {'a.md': `\n1. ${prose} \`${tag}\`\n`}});
  const text = one.procedures[0]?.source.text ?? '';
  return check(one, {today: '2026-06-01'})
    .findings.filter(({name}) => name === 'prose-disagrees')
    .map(({where: {span}}) => text.slice(span.start, span.end));
}

/** Sentences, each with the numbers that disagree. */
function tells(tag: string, rows: readonly (readonly [prose: string, ...told: string[]])[]): void {
  it.each(rows)('%s', (prose, ...numbers) => expect(told(prose, tag)).toEqual(numbers));
}

describe('a torque', () => {
  tells('torque: bolts', [
    ['Bring them up to 20 lbf·ft.', '20 lbf·ft'],
    ['Bring them up to 20 lbf·ft and then to 40 lbf·ft.'],
    ['Bring them to 20 lbf·ft (60 N·m).', '20 lbf·ft', '60 N·m'],
    ['Bring them to 20 lbf·ft and leave them for 1 h.', '20 lbf·ft'],
    ['Bring them to 20 lbf·ft and back to 10 lbf·ft.', '20 lbf·ft', '10 lbf·ft'],
    ['Bring them to 20 lbf·ft and again to 20 lbf·ft.', '20 lbf·ft', '20 lbf·ft'],
    ['None may turn under 20 lbf·ft.'],
    ['The wrench reads 20 lbf·ft.'],
    ['The wrench read 20 lbf·ft.'],
    ['See that the wrench covers 20 lbf·ft.'],
    ['Let the wrench cover 20 lbf·ft.'],
    ['Let the wrench range about 20 lbf·ft.'],
    ['Let the wrench click at 20 lbf·ft.', '20 lbf·ft'],
    ['Take the 20 lbf·ft wrench.'],
    ['Take the 20 lbf·ft\n   wrench.'],
    ['Take the 20 lbf·ft torque wrench.'],
    ['Bring them to 20 lbf·ft by the scale.', '20 lbf·ft'],
  ]);
});

describe('passes without a unit', () => {
  tells('torque: bolts', [
    ['Go round in passes of 20 and 30.', '20 and 30'],
    ['Go round in passes\n   of 20 and 30.', '20 and 30'],
    ['Go round in passes at 20 and 30.', '20 and 30'],
    ['Go round in passes\n   at 20 and 30.', '20 and 30'],
    ['Go round in passes to 20 and 30.', '20 and 30'],
    ['Go round in passes\n   to 20 and 30.', '20 and 30'],
    ['Go round in passes of\n   20 and 30.', '20 and 30'],
    ['Go round in passes of 20 , 30.', '20 , 30'],
    ['Go round in passes of 20            and 30.', '20            and 30'],
    ['Go round in passes of 20 and 30 in the order of the sheet.', '20 and 30'],
    ['Go round in passes of 20 and 30 in turn.', '20 and 30'],
    ['Cut a cord in passes of 2 and 3 in deep.'],
    ['Cut a cord in passes of 2 and 3 in.'],
    [
      'Go round in passes of 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13.',
      '1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12',
    ],
    ['12 of them, in passes of 20 and 30.', '20 and 30'],
    ['Go round in passes of 20 strokes.'],
  ]);
  describe('beside an angle', () => {
    tells('torque: studs', [['Go round in passes of 20 and 30.', '20 and 30']]);
  });
  describe('where nothing is tightened', () => {
    tells('check: feed', [['Pump in passes of 20 and 30.']]);
  });
});

describe('an angle', () => {
  tells('torque: studs', [
    ['Then turn them 60°.', '60°'],
    ['Then turn it to 60° tdc.'],
    ['Then turn it to 60° btdc.'],
    ['Then turn it to 60° atdc.'],
  ]);
});

describe('a time', () => {
  tells('cure: face', [
    ['Leave it for 10 min.', '10 min'],
    ['A skin comes after 10 min.'],
    ['It skins after 10 min.'],
    ['Let it tack for 10 min.'],
    ['It is tacky for 10 min.'],
    ['Let it flash for 10 min.'],
    ['It flashes for 10 min.'],
    ['Let it idle for 10 min.'],
    ['Let it run for 10 min.'],
    ['Let it soak for 10 min.'],
    ['It soaks for 10 min.'],
    ['Let it drain for 10 min.'],
    ['It drains for 10 min.'],
    ['Warm it for 10 min.'],
    ['Warm the face for 10 min.'],
    ['Warm them for 10 min.'],
    ['Warm up for 10 min.'],
    ['Warm to the hand for 10 min.'],
    ['It is warmed up for 10 min.'],
    ['Close it within 10 min.'],
    ['Mix for 10 min.'],
    ['It is mixed for 10 min.'],
    ['The pot is good for 10 min.'],
    ['The open time is 10 min.'],
    ['Dry to the touch in 10 min.'],
    ['Stir for 10 min.'],
    ['It is stirred for 10 min.'],
    ['Take the 10 min timer.'],
    ['Take the 10 min\n   timer.'],
    ['Take the 10 min clock.'],
    ['Wait 10 min by the clock.', '10 min'],
  ]);
});

describe('a volume', () => {
  tells('fill: sump', [
    ['Pour in 5 qt.', '5 qt'],
    ['Take a 5 qt can.'],
    ['Take two 5 qt cans.'],
    ['Take a 5 qt\n   can.'],
    ['Take a 5 qt jug.'],
    ['Take a 5 qt bottle.'],
    ['Take a 5 qt measure.'],
    ['Take a 5 qt tin.'],
    ['Take a 5 qt drum.'],
    ['Pour in 5 qt from the can.', '5 qt'],
  ]);
});

describe('a temperature that something is brought to', () => {
  tells('check: oven', [
    ['Heat it to 130 °C.', '130 °C'],
    ['Heat it to 110 °C.'],
    ['It is warmed to 130 °C.', '130 °C'],
    ['It bakes, and is baked, to 130 °C.'],
    ['The glue stands 130 °C.'],
    ['Take it to the bench and heat it at 130 °C.'],
    ['Go to the bench at 130 °C.'],
  ]);
  describe('is not one that nothing is brought to', () => {
    tells('check: dew', [['Heat it to 130 °C.'], ['Below 11 °C.', '11 °C']]);
  });
});

describe('a limit', () => {
  tells('check: feed', [
    ['It may rise up to 9 bar.', '9 bar'],
    ['Pump it up to 9 bar.'],
    ['Pump it up to 9 bar at most.', '9 bar'],
    ['It is 9 bar.'],
    ['It is no more than 73 psi.'],
    ['It is no more than 85 psi.', '85 psi'],
    ['Never over 100 bar.', '100 bar'],
    ['Never over 101 bar.'],
    ['Never under 0.15 bar.', '0.15 bar'],
    ['Never under 0.14 bar.'],
    ['It is 8–9 bar.', '8–9 bar'],
    ['It is 8–9 bar below.'],
    ['It is 8–9 bar\n   below.'],
    ['Take the 8–9 bar gauge.'],
    ['Take the 8–9 bar\n   gauge.'],
    ['Take both 8–9 bar gauges.'],
    ['It is 8–9 bar by the gauge.', '8–9 bar'],
    ['Wear is no more than 9 bar.'],
  ]);
  describe('is no warmth', () => {
    tells('check: hot-feed', [['Warm it to the hand at 9 bar.'], ['Below 9 bar.', '9 bar']]);
  });
  describe('of what has a size of its own, by its name', () => {
    tells('check: bore-a', [['Taper no more than 0.2 mm.', '0.2 mm'], ['Ridge no more than 0.2 mm.']]);
  });
  describe('of what has a size of its own, by its id', () => {
    tells('check: taper', [['Taper no more than 0.2 mm.', '0.2 mm'], ['Ridge no more than 0.2 mm.']]);
  });
  describe('with nought on one side', () => {
    tells('check: taper', [['No more than 2 mm.', '2 mm'], ['No more than 3 mm.'], ['No more than 0.1 mm.']]);
  });
  describe('of nought', () => {
    tells('check: shake', [['No more than 3 mm.', '3 mm']]);
  });
  describe('below nought', () => {
    tells('check: drop', [['No more than 0.5 mm.', '0.5 mm'], ['No more than 3 mm.']]);
  });
});
