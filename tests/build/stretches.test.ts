/** A book as tasks of a time plan: where procedures are parted, what waits for what, and how long it takes. */
import {describe, expect, it} from 'vitest';
import {stretchesOf} from '../../src/build/stretches.js';
import {formatQuantity} from '../../src/quantity/format.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  shaft: {after: [bore-clean, nowhere]}
  cover: {closes: [seat]}
  pump: {}
  plug: {seats-in: plug-seat}
  lid: {}
surfaces:
  seat: {on: shaft, assembly: clean}
  plug-seat: {on: pump}
  loose: {}
joints:
  cover-joint: {between: [block, cover], seal: [liquid-gasket]}
  odd-joint: {seal: [silicone-sealant]}
  bare-joint: {between: [lid]}
  thick-joint: {between: [lid], seal: [liquid-gasket, putty, silicone-sealant, mastic]}
  open-joint: {between: [lid], seal: unknown}
fasteners:
  bolts: {holds: [cover]}
  studs: {after: [pump]}
fits:
  float: {between: [seat], when: {installed: [pump]}}
  plain-fit: {between: [lid]}
  taper: {between: [lid], taper-of: [plain-fit]}
  round: {between: [lid], out-of-round-of: [plain-fit], when: {installed: [], tight: [studs]}}
checks:
  bore-clean: {}
  swings: {after: [pump]}
  square: {disturbed-by: [studs]}
hold-points:
  closed: {asks: [bolts]}
marks:
  number: {matches: plate}
  plate: {}
systems:
  oil: {joints: [cover-joint], closed-by: [lid]}
`;

const SHOP = EXAMPLE_SHOP.replace(
  '  silicone-sealant:',
  '  putty: {use: sealant, cure: {value: min 72 h, source: house}}\n  mastic: {use: sealant, cure: {value: 1–2 h, source: house}}\n  silicone-sealant:',
);

function stretches(procedures: Record<string, string>, fronts = '') {
  const front = `---\ntitle: T\nrevision: A\ndate: 2026-03-01\n${fronts}---\n\n`;
  const texts = Object.fromEntries(Object.entries(procedures).map(([name, text]) => [name, front + text]));
  return stretchesOf(book({engine: ENGINE, shop: SHOP, procedures: texts}));
}

/** What each of some one-step procedures waits for. */
function waits(...steps: string[]): string[] {
  const texts = Object.fromEntries(steps.map((step, at) => [`${at + 1}.md`, `1. a \`${step}\`\n`]));
  return stretches(texts).map(({id, after}) => `${id}: ${after.join(' ')}`.trim());
}

describe('what waits for what', () => {
  it.each([
    ['a part for what must come before it', ['check: bore-clean', 'install: shaft'], '1'],
    ['a part for the surface that it closes', ['clean: seat', 'install: cover'], '1'],
    ['a surface for the part that it is on', ['install: shaft', 'lube: seat'], '1'],
    ['a joint for what meets in it', ['install: cover', 'seal: cover-joint'], '1'],
    ['a fastener for what it holds', ['install: cover', 'torque: bolts'], '1'],
    ['a fit for what lies around it, through its surface', ['install: shaft', 'measure: float'], '1'],
    ['a fit for what is in when it is read', ['install: pump', 'measure: float'], '1'],
    ['a hold point for what it asks', ['torque: bolts', 'witness: closed'], '1'],
    ['a mark for the one that it must match', ['record: plate', 'record: number'], '1'],
    ['draining for what closes the system', ['install: lid', 'drain: oil'], '1'],
    ['draining for its joints', ['seal: cover-joint', 'drain: oil'], '1'],
    ['draining for nothing else', ['install: pump', 'drain: oil'], ''],
    ['a fastener for what comes before it is tightened', ['install: pump', 'torque: studs'], '1'],
    ['a check for what comes before it', ['install: pump', 'check: swings'], '1'],
    ['a check for what it is lost by', ['torque: studs', 'check: square'], '1'],
    ['filling for everything', ['install: pump', 'fill: oil'], '1'],
    ['an item for itself', ['install: pump', 'turn: pump'], '1'],
    ['nothing for the block', ['inspect: block', 'inspect: block'], ''],
    ['a part for the seat that it goes into', ['clean: plug-seat', 'install: plug'], '1'],
    ['a part for the part that its seat is on', ['install: pump', 'install: plug'], '1'],
    ['a fit for what is tight when it is read', ['torque: studs', 'measure: round'], '1'],
    ['a taper for the fit that it is the taper of', ['measure: plain-fit', 'measure: taper'], '1'],
    ['an out-of-round for the fit that it is that of', ['measure: plain-fit', 'measure: round'], '1'],
    ['a fastener not for what its part closes', ['clean: seat', 'torque: bolts'], ''],
    ['nothing for a surface on nothing, or for a mark alone', ['clean: loose', 'record: plate'], ''],
    ['nothing for the same sealant', ['cure: liquid-gasket', 'cure: liquid-gasket'], ''],
    ['nothing for what the specification does not know', ['install: thing', 'install: thing'], ''],
    ['nothing for the same oil', ['lube: pump with engine-oil', 'lube: cover with engine-oil'], ''],
    ['nothing where nothing is in common', ['install: pump', 'install: cover'], ''],
  ])('%s', (_, steps, expected) => {
    expect(waits(...steps)).toEqual(['1:', `2: ${expected}`.trim()]);
  });

  it('the last of several that touch an item, which waits for those before it', () => {
    expect(waits('install: pump', 'turn: pump', 'turn: pump')).toEqual(['1:', '2: 1', '3: 2']);
  });
});

describe('how long a cure takes', () => {
  it.each<readonly [tags: string, time: string | undefined, isUnknown: boolean]>([
    ['`cure: liquid-gasket`', '24 h', false],
    ['`cure: mastic`', '2 h', false],
    ['`cure: putty`', '72 h', false],
    ['`cure: liquid-gasket for 2–3 h`', '3 h', false],
    ['`cure: liquid-gasket for min 2 h`', '2 h', false],
    ['`cure: cover-joint`', '24 h', false],
    ['`cure: thick-joint`', '72 h', false],
    ['`cure: bare-joint`', undefined, true],
    ['`cure: open-joint`', undefined, true],
    ['`cure: silicone-sealant`', undefined, true],
    ['`cure: nothing`', undefined, true],
    ['`cure: bare-joint, mastic, liquid-gasket`', '24 h', true],
  ])('%s', (tags, time, isUnknown) => {
    const [one] = stretches({'a.md': `1. a ${tags}\n`});
    expect([one?.wait && formatQuantity(one.wait), one?.waitUnknown]).toEqual([time, isUnknown]);
  });
});

it('a procedure is named by its place in the build, its words are no steps, and without steps it is nothing', () => {
  const found = stretches({
    'a.md': 'Words.\n',
    'b.md': 'Words.\n\n1. a `turn: pump`\n\nMore words.\n\n2. b `turn: lid`\n',
    'c.md': '1. a `cure: mastic`\n\nWords.\n\n2. b\n3. c\n4. d\n',
  });
  expect(found.map(({id, sheet, from, to, curing}) => [id, sheet, from, to, curing.join()])).toEqual([
    ['2', 2, '1', '2', ''],
    ['3.1', 3, '1', '1', 'mastic'],
    ['3.2–4', 3, '2', '4', ''],
  ]);
});

describe('where a procedure is parted', () => {
  it('behind each cure, the parts one after another', () => {
    const found = stretches({
      'a.md':
        '1. a `seal: cover-joint`\n2. b `cure: cover-joint`\n3. c `turn: pump`\n4. d\n   1. e `cure: odd-joint for 90 min`\n',
      'b.md': '1. a `turn: pump`\n',
    });
    expect(
      found.map(({id, from, to, after, wait, curing, waitUnknown}) => [
        id,
        from,
        to,
        after.join(),
        wait && formatQuantity(wait),
        curing.join(),
        waitUnknown,
      ]),
    ).toEqual([
      ['1.1–2', '1', '2', '', '24 h', 'cover-joint', false],
      ['1.3–4', '3', '4', '1.1–2', '90 min', 'odd-joint', false],
      ['2', '1', '1', '1.3–4', undefined, '', false],
    ]);
  });

  it('not for a cure that only a branch comes to, and of one step by its number', () => {
    const found = stretches({
      'a.md':
        '1. a `if: float is out`\n   1. b `cure: odd-joint for 90 min`\n2. c `cure: odd-joint`\n3. d `turn: pump`\n',
    });
    expect(found.map(({id, waitUnknown}) => [id, waitUnknown])).toEqual([
      ['1.1–2', true],
      ['1.3', false],
    ]);
  });

  it('the longest of several cures counts', () => {
    const [one] = stretches({'a.md': '1. a `cure: cover-joint for 2 h` `cure: odd-joint for 150 min`\n'});
    expect(one?.wait && formatQuantity(one.wait)).toBe('150 min');
  });
});

it('shares the time of a procedure by steps, and says where there is none', () => {
  const text = {'a.md': '1. a `cure: cover-joint`\n2. b\n   1. c\n   2. d\n'};
  expect(stretches(text, 'time: 2 h\n').map(({hands, timed}) => [formatQuantity(hands), timed])).toEqual([
    ['30 min', true],
    ['90 min', true],
  ]);
  expect(stretches(text).map(({hands, timed}) => [hands.value, timed])).toEqual([
    [0, false],
    [0, false],
  ]);
});
