/** A book as tasks of a time plan: where procedures are parted, what waits for what, and how long it takes. */
import {describe, expect, it} from 'vitest';
import {stretchesOf} from '../../src/build/stretches.js';
import {formatQuantity} from '../../src/quantity/format.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  shaft: {after: [bore-clean]}
  cover: {closes: [seat]}
  pump: {}
surfaces:
  seat: {on: shaft, assembly: clean}
joints:
  cover-joint: {between: [block, cover], seal: [liquid-gasket]}
  odd-joint: {seal: [silicone-sealant]}
fasteners:
  bolts: {holds: [cover]}
fits:
  float: {between: [seat], when: {installed: [pump]}}
checks:
  bore-clean: {}
hold-points:
  closed: {asks: [bolts]}
marks:
  number: {matches: plate}
  plate: {}
systems:
  oil: {joints: [cover-joint]}
`;

function stretches(procedures: Record<string, string>, fronts = '') {
  const front = `---\ntitle: T\nrevision: A\ndate: 2026-03-01\n${fronts}---\n\n`;
  const texts = Object.fromEntries(Object.entries(procedures).map(([name, text]) => [name, front + text]));
  return stretchesOf(book({engine: ENGINE, procedures: texts}));
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
    ['filling for everything', ['install: pump', 'fill: oil'], '1'],
    ['an item for itself', ['install: pump', 'turn: pump'], '1'],
    ['nothing for the block', ['inspect: block', 'inspect: block'], ''],
    ['nothing for the same oil', ['lube: pump with engine-oil', 'lube: cover with engine-oil'], ''],
    ['nothing where nothing is in common', ['install: pump', 'install: cover'], ''],
  ])('%s', (_, steps, expected) => {
    expect(waits(...steps)).toEqual(['1:', `2: ${expected}`.trim()]);
  });

  it('the last of several that touch an item, which waits for those before it', () => {
    expect(waits('install: pump', 'turn: pump', 'turn: pump')).toEqual(['1:', '2: 1', '3: 2']);
  });
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
