/** Where a seal that is missing is written: behind what it needs, and before what comes only after it. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {book} from '../help/example.js';
import {fixOf, toldOf} from '../help/found.js';

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
tools:
  feeler-gauges: {name: feeler gauges, gauge: true}
consumables:
  engine-oil: {use: lubricant}
  moly: {use: lubricant}
  locker: {use: lock, lock: threadlocker}
  wire: {use: lock, lock: safety-wire}
  strip: {use: strip, range: 0.001–0.003 in}
  paper-gasket: {use: gasket}
  card-gasket: {use: gasket}
  liquid-gasket: {use: sealant, cure: 24 h}
  hot-glue: {use: sealant, hazards: [burn]}
`;

/** No one step more would do. */
const NOWHERE = undefined;

const seam = (fields: string, closes = ', closes: [seam]') => `
parts:
  block: {given: true${closes}}
  cover: {given: false${closes}}
  hood: {at: [left, right]${closes}}
  plate: {}
joints:
  seam: {between: [block, cover], ${fields}}
  rim: {between: [block], seal: {value: none, because: metal to metal}}
systems:
  cooling: {joints: [seam], closed-by: [cover], with: [engine-oil], amount: 7 qt}
  heating: {joints: [rim], closed-by: [plate], with: [engine-oil], amount: 7 qt}
hold-points:
  closed: {asks: [seam], by: shop lead}
`;
const END = '; fill: cooling; fill: heating; witness: closed';

describe('the seal of a joint is written', () => {
  it.each<[where: string, engine: string, tags: string, step: string | undefined]>([
    [
      'before the first that goes on',
      seam('seal: [paper-gasket]'),
      `install: plate; clean: seam; install: hood; install: cover${END}`,
      '3. Make up the seam with paper gasket. `seal: seam with paper-gasket`',
    ],
    [
      'before the first at one of its places',
      seam('seal: [paper-gasket]'),
      `install: plate; clean: seam; install: hood[right]; install: cover; install: hood[left]${END}`,
      '3. Make up the seam with paper gasket. `seal: seam with paper-gasket`',
    ],
    [
      'before the other, which goes on first',
      seam('seal: [paper-gasket]'),
      `install: plate; clean: seam; install: cover; install: hood${END}`,
      '3. Make up the seam with paper gasket. `seal: seam with paper-gasket`',
    ],
    [
      'nowhere where one of them is out',
      seam('seal: [paper-gasket]'),
      `install: plate; clean: seam; install: hood${END}`,
      NOWHERE,
    ],
    [
      'nowhere where it was wiped only after that',
      seam('seal: [paper-gasket]'),
      `install: plate; install: hood; clean: seam; install: cover${END}`,
      NOWHERE,
    ],
    [
      'nowhere where it was never wiped',
      seam('seal: [paper-gasket]'),
      `install: plate; install: hood; install: cover${END}`,
      NOWHERE,
    ],
    [
      'nowhere before the first step of all',
      seam('seal: [paper-gasket]'),
      `\`clean: seam\` \`install: hood\`; install: cover; install: plate${END}`,
      NOWHERE,
    ],
    [
      'where it was wiped in the step before',
      seam('seal: [paper-gasket]'),
      `\`install: plate\` \`clean: seam\`; install: hood; install: cover${END}`,
      '2. Make up the seam with paper gasket. `seal: seam with paper-gasket`',
    ],
    [
      'nowhere where it was filled by then',
      seam('seal: [paper-gasket]'),
      'clean: seam; `install: plate` `fill: cooling`; install: hood; install: cover; witness: closed',
      NOWHERE,
    ],
    [
      'nowhere where it was signed by then',
      seam('seal: [paper-gasket]'),
      'clean: seam; `install: plate` `witness: closed`; install: hood; install: cover; fill: cooling',
      NOWHERE,
    ],
    [
      'nowhere where it was left to cure by then',
      seam('seal: [paper-gasket]'),
      `clean: seam; \`install: plate\` \`cure: seam for 1 h\`; install: hood; install: cover${END}`,
      NOWHERE,
    ],
    [
      'where something else was filled, or left to cure',
      seam('seal: [paper-gasket]'),
      `clean: seam; \`install: plate\` \`fill: heating\`; \`install: plate\` \`cure: rim for 1 h\`; install: hood; install: cover${END}`,
      '4. Make up the seam with paper gasket. `seal: seam with paper-gasket`',
    ],
    [
      'where it was filled before the last of it was wiped off',
      seam('at: [top, bottom], seal: [paper-gasket]'),
      'clean: seam; seal: seam with paper-gasket; clean: seam[top]; fill: cooling; clean: seam[bottom]; install: plate; install: hood; install: cover; witness: closed',
      '7. Make up the seam with paper gasket. `seal: seam with paper-gasket`',
    ],
    [
      'again, where it came apart',
      seam('seal: [paper-gasket]'),
      `clean: seam; seal: seam with paper-gasket; install: hood; install: cover; remove: hood, cover; clean: seam; install: hood; install: cover; install: plate${END}`,
      '7. Make up the seam with paper gasket. `seal: seam with paper-gasket`',
    ],
    [
      'nowhere where it was wiped off in between',
      seam('seal: [paper-gasket]'),
      `clean: seam; seal: seam with paper-gasket; install: hood; clean: seam; install: cover; install: plate${END}`,
      NOWHERE,
    ],
    [
      'with the material by its name',
      seam('seal: [card-gasket]'),
      `install: plate; clean: seam; install: hood; install: cover${END}`,
      '3. Make up the seam with card gasket. `seal: seam with card-gasket`',
    ],
    [
      'nowhere where either of two will do',
      seam('seal: [paper-gasket, card-gasket]'),
      `install: plate; clean: seam; install: hood; install: cover${END}`,
      NOWHERE,
    ],
    [
      'nowhere where it brings a hazard',
      seam('seal: [hot-glue]'),
      `install: plate; clean: seam; install: hood; install: cover${END}`,
      NOWHERE,
    ],
    [
      'nowhere where it has to cure and is not left to',
      seam('seal: [liquid-gasket]'),
      `install: plate; clean: seam; install: hood; install: cover${END}`,
      NOWHERE,
    ],
    [
      'where it is left to cure later',
      seam('seal: [liquid-gasket]'),
      `install: plate; clean: seam; install: hood; cure: seam for 24 h; install: cover${END}`,
      '3. Make up the seam with liquid gasket. `seal: seam with liquid-gasket`',
    ],
    [
      'nowhere where it was left to cure before that',
      seam('seal: [liquid-gasket]'),
      `install: plate; clean: seam; cure: seam for 24 h; install: hood; install: cover${END}`,
      NOWHERE,
    ],
    [
      'nowhere with one that nobody knows',
      seam('seal: [papr-gasket]'),
      `install: plate; clean: seam; install: hood; install: cover${END}`,
      NOWHERE,
    ],
    [
      'nowhere where its ends go on at different steps and one is unwiped',
      seam('at: [top, bottom], seal: [paper-gasket]'),
      `install: plate; clean: seam[top]; install: hood; install: cover${END}`,
      NOWHERE,
    ],
    [
      'at one end',
      seam('at: [top, bottom], seal: [paper-gasket]'),
      `install: plate; clean: seam; seal: seam[top] with paper-gasket; install: hood; install: cover${END}`,
      '4. Make up the seam with paper gasket. `seal: seam[bottom] with paper-gasket`',
    ],
    [
      'nowhere where nothing closes it',
      seam('seal: [paper-gasket]', ''),
      `install: plate; clean: seam; install: hood; install: cover${END}`,
      NOWHERE,
    ],
  ])('%s', (_, engine, tags, step) => {
    expect(fixOf('left-unsealed', engine, tags, SHOP)).toBe(step);
  });
});

it('is written behind the step before it where words stand between the two', () => {
  const engine = `
parts:
  block: {given: true}
  cover: {closes: [seam]}
joints:
  seam: {between: [block, cover], seal: [paper-gasket]}
`;
  const procedure = '\n1. Wipe. `clean: seam`\n\nSome words.\n\n2. Set. `install: cover`\n';
  expect(toldOf(book({engine, procedures: {'p.md': procedure}}))).toEqual([
    'left-unsealed seam: seam is never made up with its seal',
    '  see engine.yaml:9: seam is specified with a seal',
    '  fix: Write the missing step: seal seam: "\\n2. Make up the seam with paper gasket. `seal: seam with paper-gasket`" after "…n: seam`"',
  ]);
});
