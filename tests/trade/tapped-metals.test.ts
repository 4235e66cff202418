/** Strength of tapped metals: the words a shop has for them, given strengths, and the depth of thread that follows. */
import fc from 'fast-check';
import {expect, test} from 'vitest';
import {minimumEngagement} from '../../src/trade/engagement.js';
import {readTappedMetal} from '../../src/trade/tapped-metals.js';
import {grade, thread} from './fasteners.js';
import {result, valueIn} from './unwrap.js';

function metal(text: string) {
  const reading = readTappedMetal(text);
  if (!reading.ok) throw new Error(`${reading.says}; ${reading.hint}`);
  return reading.metal;
}

// Shear strengths as published, over the 0.75 of steel, Machinery's Handbook (read at
// tubingchina.com/Iron-Steel-Modulus-of-Elasticity.htm); class 20 makeitfrom.com; aluminium barrcasting.com/typical.html.
test.each([
  ['steel', 'steel', 60],
  ['cast iron', 'cast iron', 46.7],
  ['Cast-Iron', 'cast iron', 46.7],
  ['grey iron', 'cast iron', 46.7],
  ['gray cast iron, class 30', 'cast iron class 30', 56],
  ['cast iron class 20', 'cast iron class 20', 34.7],
  ['aluminum', 'aluminium', 34.7],
  ['aluminium', 'aluminium', 34.7],
  ['tensile 30 ksi', 'metal of 30 ksi', 30],
  ['tensile 400 MPa', 'metal of 400 MPa', 58.02],
])('%s counts as %s with %d ksi', (text, name, ksi) => {
  const read = metal(text);
  expect(read.name).toBe(name);
  expect(valueIn(read.strength, 'ksi')).toBeCloseTo(ksi, 2);
});

test.each([
  ['cast irn', '"cast irn" is not a metal in the table', 'did you mean cast iron?'],
  ['20', '"20" is not a metal in the table', 'the table has steel'],
  ['', '"" is not a metal in the table', 'the table has steel'],
  ['tensile 30', '30 has no unit', ''],
  ['tensile 30 lbf·ft', 'lbf·ft is a torque where a pressure is due', ''],
  ['tensile 30–40 ksi', '30–40 ksi is not one strength', 'give the least value'],
  ['tensile -3 ksi', 'the tensile strength must be above nought', ''],
])('%s is refused', (text, says, hint) => {
  const reading = readTappedMetal(text);
  expect(reading).toMatchObject({ok: false, says: expect.stringContaining(says)});
  expect(reading.ok ? '' : reading.hint).toContain(hint);
});

test('any text reads or is refused', () => {
  fc.assert(fc.property(fc.string(), (text) => typeof readTappedMetal(text).ok === 'boolean'));
});

// Rule of thumb: 1 to 1.5 diameters in steel, 1.5 to 2 in cast iron, 2 in aluminium for common bolts (mechguru.com, read).
test.each([
  ['1/2-13 UNC', 'SAE 5', 'steel', 0.8, 1.5],
  ['1/2-13 UNC', 'SAE 8', 'cast iron', 1.4, 2],
  ['3/8-16 UNC', 'SAE 5', 'cast iron', 1.2, 2],
  ['3/8-16 UNC', 'SAE 5', 'aluminium', 1.5, 2],
  ['M10', '8.8', 'cast iron', 1.2, 2],
])('%s of %s in %s takes %d to %d diameters', (name, strength, into, low, high) => {
  const bolt = thread(name);
  const {tensile} = grade(strength, bolt);
  const {diameters} = result(
    minimumEngagement({thread: bolt, ...(tensile && {bolt: tensile}), hole: metal(into).strength}),
  );
  expect(diameters).toBeGreaterThanOrEqual(low);
  expect(diameters).toBeLessThanOrEqual(high);
});
