/** What the figures of shrink fits have in common: materials, room temperature, and how the answer is told. */
import {quantity as make} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import {nearest} from '../text/nearest.js';
import {MATERIALS, type Material} from './expansion.js';
import {type Option, optional, quantity, type Read, text} from './figure-options.js';
import type {Shrink, ShrinkInputs} from './shrink-fit.js';
import {type Named, refused} from './worked.js';

export function shrinkOptions(material: string) {
  return {
    diameter: quantity('length', 'diameter of the fit', '2.000 in'),
    interference: quantity('length', 'the most interference that the fit can have', '0.0027 in'),
    clearance: quantity('length', 'clearance to slide the parts together', '0.001 in'),
    material: materialOption('material of the part that is heated or cooled', material),
    room: optional(quantity('temperature', 'room temperature, 68 °F if not said', '70 °F')),
  };
}

/** A material of the table by its name, or a coefficient of the shop's own: `6.3e-6/°F`. */
export function materialOption(says: string, example: string): Option<Material> {
  return text('a material, or its coefficient as 11.4e-6/K or 6.3e-6/°F', says, example, readMaterial);
}

/** With the room of a shop that thinks in the system of the diameter. */
export function withRoom(
  given: Omit<ShrinkInputs, 'room'> & {readonly room: Quantity | undefined},
): ShrinkInputs {
  return {...given, room: given.room ?? roomFor(given.diameter)};
}

/** 20 °C, in the system of the length. */
export function roomFor(length: Quantity): Quantity {
  return length.unit.system === 'inch' ? make(68, '°F') : make(20, '°C');
}

export function tellShrink({temperature, change}: Shrink): readonly Named[] {
  return [
    {name: 'bring it to', value: temperature},
    {name: 'change of its diameter', value: change},
  ];
}

function readMaterial(given: string): Read<Material> {
  const text = given.trim();
  const found = MATERIALS.find((one) => one.name === text.toLowerCase());
  if (found) return {ok: true, value: found};
  const stated = /^(\d+(?:\.\d+)?)e-6\s*(?:\/|per)\s*(K|°?C|°?F)$/i.exec(text);
  const [, value, unit = ''] = stated ?? [];
  if (value === undefined) return unknownMaterial(text);
  const millionths = Number(value) * (/f/i.test(unit) ? 9 / 5 : 1);
  if (millionths >= 1 && millionths <= 50)
    return {ok: true, value: {name: 'as stated', perKelvin: millionths * 1e-6, steel: false}};
  return refused(`no metal expands by ${value}e-6`, 'steel is 11.7e-6/K, aluminium 23.6e-6/K');
}

function unknownMaterial(text: string): Read<Material> {
  const names = MATERIALS.map((one) => one.name);
  const meant = nearest(text.toLowerCase(), names);
  const hint = meant ? `did you mean ${meant}?` : `the table has ${names.join(', ')}`;
  return refused(`"${text.slice(0, 30)}" is no material of the table`, hint);
}
