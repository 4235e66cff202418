/** Limits of fits on an engine whose journals are ground: those of a size move with it, those of a clearance or of a shape stay. */
import {describe, expect, it} from 'vitest';
import {forJob} from '../../src/build/for-job.js';
import {check} from '../../src/findings/check.js';
import {formatAmount} from '../../src/quantity/format.js';
import {book} from '../help/example.js';

const ENGINE = `
options: {keel: keel cooling, raw-water: {}}
parts:
  block: {given: true}
  crankshaft: {given: true}
  pump: {only: keel}
  shells: {}
surfaces:
  journals: {on: crankshaft, assembly: clean, size: 2.499–2.500 in, grinds: [0.010 in]}
  faces: {on: shells, assembly: clean, size: 2.502 in}
  ends: {on: shells, assembly: clean, size: 1.000 in}
  cheeks: {on: crankshaft, assembly: clean, size: 3.000 in}
  rims: {on: shells, assembly: clean, size: 1.500 in, grinds: [0.010 in]}
  bush: {assembly: clean, size: 2.600 in}
  collar: {on: crankshaft, assembly: clean}
  bore: {on: shells, assembly: clean, size: 4.000 in}
fits:
  diameter: {between: [journals], limits: 2.499–2.500 in}
  least-diameter: {between: [journals], limits: min 2.499 in}
  out-of-round: {between: [journals], limits: max 0.0005 in}
  clearance: {between: [journals, faces], limits: 0.001–0.003 in}
  end-float: {between: [ends, cheeks], limits: 0.001–0.003 in}
  unsaid: {between: [journals], limits: unknown}
  silent: {between: [journals]}
  half: {between: [journals], limits: max 1.25 in}
  over-half: {between: [journals], limits: max 1.251 in}
  whole-part: {between: [crankshaft], limits: 2.499–2.500 in}
  nothing: {between: [], limits: 2.499–2.500 in}
  sizeless: {between: [collar], limits: 2.499–2.500 in}
  face-size: {between: [faces], limits: 2.501–2.502 in}
  rim-float: {between: [rims, cheeks], limits: 0.001–0.003 in}
  bush-float: {between: [bush, journals], limits: 0.001–0.003 in}
  bore-float: {between: [bore, crankshaft], limits: 0.001–0.003 in}
  lost: {between: [bore, nowhere], limits: 0.001–0.003 in}
hold-points:
  closed: {asks: [shells, pump]}
`;

function made(job: string) {
  return forJob(book({engine: ENGINE, procedures: {'procedure.md': '1. a\n'}, job}));
}

function limits(id: string, job: string): string | undefined {
  const fit = made(job).spec.items.get(id);
  if (fit?.kind !== 'fit') throw new Error(`${id} is no fit`);
  const value = fit.limits?.value;
  return typeof value === 'object' ? formatAmount(value) : (value ?? '');
}

const GROUND = 'grinds: {journals: 0.010 in}\n';
const SHELLS = 'fitted: {shells: {undersize: 0.010 in}}\n';

describe('limits', () => {
  it.each([
    ['of the size', 'diameter', GROUND, '2.489–2.490 in'],
    ['of the size, one end only', 'least-diameter', GROUND, 'min 2.489 in'],
    ['of its shape', 'out-of-round', GROUND, 'max 0.0005 in'],
    ['of its clearance', 'clearance', GROUND, '0.001–0.003 in'],
    ['that nobody knows', 'unsaid', GROUND, 'unknown'],
    ['that nobody gave', 'silent', GROUND, ''],
    ['of what comes to half of the size', 'half', GROUND, 'max 1.25 in'],
    ['of what comes to more than half of the size', 'over-half', GROUND, 'max 1.241 in'],
    ['of a part', 'whole-part', GROUND, '2.499–2.500 in'],
    ['of nothing', 'nothing', GROUND, '2.499–2.500 in'],
    ['of a surface without a size', 'sizeless', 'grinds: {collar: 0.010 in}\n', '2.499–2.500 in'],
    ['of the face of shells that come undersize', 'face-size', SHELLS, '2.491–2.492 in'],
    ['of the face of standard shells', 'face-size', SHELLS.replace('0.010 in', 'standard'), '2.501–2.502 in'],
    ['of the face, no shells bought', 'face-size', GROUND, '2.501–2.502 in'],
    ['of the size, not ground', 'diameter', '', '2.499–2.500 in'],
    ['of the size, ground to standard', 'diameter', 'grinds: {journals: standard}\n', '2.499–2.500 in'],
  ])('%s', (_, id, job, expected) => expect(limits(id, job)).toBe(expected));

  it('of a shell only its face is smaller, which runs on what is ground', () => {
    const size = (id: string) => {
      const surface = made(SHELLS).spec.items.get(id);
      return surface?.kind === 'surface'
        ? [...surface.sizes.values()].map(({value}) => formatAmount(value))
        : [];
    };
    expect(['faces', 'ends', 'rims', 'bush', 'bore'].map(size)).toEqual([
      ['2.492 in'],
      ['1.000 in'],
      ['1.500 in'],
      ['2.600 in'],
      ['4.000 in'],
    ]);
  });
});

it.each([
  ['', ['shells']],
  ['options: [keel]\n', ['shells', 'pump']],
])('a hold point asks for what this engine has: %j', (job, asks) => {
  const point = made(job).spec.items.get('closed');
  expect(point?.kind === 'hold-point' ? point.asks.map(({value}) => value) : []).toEqual(asks);
});

const FRONT = '---\ntitle: Example\nrevision: A\ndate: 2026-03-01\nonly: [NAMES]\n---\n';

describe('a name in `only` that this engine does not have', () => {
  function told(procedure: string): string[] {
    const made = book({engine: ENGINE, procedures: {'procedure.md': procedure}});
    return check(made)
      .findings.filter(({name, where}) => name === 'unknown-item' && where.file === 'procedure.md')
      .map(({message, fix}) => {
        if (fix === undefined) return message;
        const text = made.procedures[0]?.source.text ?? '';
        const written = fix.edits.map(({span, text: now}) => `${text.slice(span.start, span.end)} -> ${now}`);
        return `${message} | ${fix.title}: ${written}`;
      });
  }

  it.each([
    [
      'of a step, nearly right',
      '1. Turn it. `only: keal` `turn: shells`\n',
      ['keal is not an option of this engine; did you mean keel? | Write keel: keal -> keel'],
    ],
    [
      'of a heading, like nothing',
      '## Sea water `only: zyzzyva`\n\n1. Turn it. `turn: shells`\n',
      ['zyzzyva is not an option of this engine; list it under options: of engine.yaml'],
    ],
    [
      'of the front matter',
      `${FRONT.replace('NAMES', 'keal')}\n1. Turn it. \`turn: shells\`\n`,
      ['keal is neither this engine nor an option of it; did you mean keel? | Write keel: keal -> keel'],
    ],
    [
      'of the front matter, beside the engine',
      `${FRONT.replace('NAMES', 'example, keal')}\n1. Turn it. \`turn: shells\`\n`,
      [],
    ],
    [
      'of the front matter, beside an option',
      `${FRONT.replace('NAMES', 'keel, twin')}\n1. Turn it. \`turn: shells\`\n`,
      [],
    ],
    ['none', '1. Turn it. `only: keel` `turn: shells`\n', []],
  ])('%s', (_, procedure, says) => expect(told(procedure)).toEqual(says));
});
