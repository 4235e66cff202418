/** What is put on to look or to lap stays on: marking blue, dye, paste, an oily rag. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {found} from '../help/found.js';

const ENGINE = `
parts:
  block: {given: true}
  wheel: {at: [near, far], closes: [taper, seat]}
  gear: {alterations: [lap]}
  cover: {closes: [gear-bore, cover-joint]}
surfaces:
  taper: {on: block, at: [near, far], assembly: dry}
  seat: {on: block, assembly: lubed, lubricants: [engine-oil]}
  gear-bore: {on: gear, assembly: clean}
joints:
  cover-joint: {between: [block, cover], seal: [paper-gasket]}
alterations:
  lap: {of: [gear], does: lap the bore}
`;

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  solvent: {use: cleaner}
  engine-oil: {use: lubricant}
  grease: {use: lubricant}
  paper-gasket: {use: gasket}
  blue: {use: other}
  paste: {use: other}
`;

const WASH = 'clean: taper, seat with solvent';
const OIL = 'lube: seat with engine-oil';
const WHEEL = 'install: wheel';
const GEAR = ['alter: gear with paste by lap', 'clean: gear-bore with solvent', 'install: gear'];
const COVER = ['clean: cover-joint with solvent', 'seal: cover-joint with paper-gasket', 'install: cover'];
const DIRTY = (where: string) =>
  `clean-first: ${where} is not clean when wheel closes it, and goes together dry`;

describe('a surface that is soiled', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    [
      'was wiped again',
      [WASH, 'inspect: taper with blue for contact', WASH, OIL, WHEEL, ...GEAR, ...COVER],
      [],
    ],
    [
      'was looked at with nothing put on',
      [WASH, 'inspect: taper for contact', OIL, WHEEL, ...GEAR, ...COVER],
      [],
    ],
    [
      'was looked at with what cleans',
      [WASH, 'inspect: taper with solvent for contact', OIL, WHEEL, ...GEAR, ...COVER],
      [],
    ],
    [
      'was looked at with what nobody specified: that alone is told',
      [WASH, 'inspect: taper with chalk for contact', OIL, WHEEL, ...GEAR, ...COVER],
      [
        'unknown-item: chalk is not in the specification; add it to engine.yaml or shop.yaml, or correct the id',
      ],
    ],
    [
      'was looked at with what is no material: that alone is told',
      [WASH, 'inspect: taper with gear for contact', OIL, WHEEL, ...GEAR, ...COVER],
      ['wrong-kind: gear is a part, and `with` takes a consumable'],
    ],
    [
      'by blue, in one place',
      [WASH, 'inspect: taper[far] with blue for contact', OIL, WHEEL, ...GEAR, ...COVER],
      [DIRTY('taper[far]')],
    ],
    [
      'by blue on the part that it is on, and its oil is fouled too',
      [WASH, OIL, 'inspect: block with blue for cracks', WHEEL, ...GEAR, ...COVER],
      [DIRTY('taper'), 'lube-first: seat is no longer lubed with engine-oil when wheel closes it'],
    ],
    [
      'by paste of a lapping, and closed up without a wash',
      [WASH, OIL, WHEEL, ...GEAR.filter((one) => !one.startsWith('clean')), ...COVER],
      ['clean-first: gear-bore still carries what step 4 cut loose when cover closes it'],
    ],
    [
      'by the rag that it was wiped with: it is clean, and oily',
      ['clean: taper with grease', 'clean: seat', OIL, WHEEL, ...GEAR, ...COVER],
      ['clean-first: taper still carries lubricant when wheel closes it, and goes together dry'],
    ],
    [
      'by the rag that its part was wiped with',
      ['clean: block with engine-oil', WHEEL, ...GEAR, ...COVER],
      ['clean-first: taper still carries lubricant when wheel closes it, and goes together dry'],
    ],
    [
      'by another oil than it goes together with',
      [WASH, 'clean: seat with grease', WHEEL, ...GEAR, ...COVER],
      ['lube-first: seat carries grease, not engine-oil, when wheel closes it'],
    ],
    [
      'is a joint that was wiped with oil, which takes no seal',
      [
        WASH,
        OIL,
        WHEEL,
        ...GEAR,
        ...COVER.map((one) => one.replace('joint with solvent', 'joint with engine-oil')),
      ],
      ['clean-first: cover-joint is sealed but its faces are not clean'],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(ENGINE, tags, SHOP)).toEqual(says);
  });
});
