/** Which cotter pin goes with a bolt, a hole and a slot. */
import {convert, quantity} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {COTTER_FOR_BOLT, COTTER_PINS} from './cotter-sizes.js';
import {type Suits, suits} from './near-size.js';
import type {Thread} from './thread.js';
import {notOf, refused, type Worked} from './worked.js';

export interface CotterChoice {
  /** The least pin for the bolt; undefined where the bolt is not in the table. */
  readonly least?: Quantity;
  /** The largest that hole and slot take; undefined where neither is known. */
  readonly most?: Quantity;
  /** The one to take: the largest that goes in, else the least for the bolt. */
  readonly take: Quantity;
}

/**
 * The pin for a bolt (No. 10 to 1 in), for its hole, or for both: the largest that the hole takes, no wider than the narrowest slot, no less than the
 * table's. Source: ASME B18.8.1 (holes), AN310/AN380 (least pin), ASME B18.2.2 (slots).
 */
export function cotterPinFor(inputs: {
  readonly thread?: Thread;
  readonly hole?: Quantity;
  readonly slot?: Quantity;
}): Worked<CotterChoice> {
  const {thread, hole, slot} = inputs;
  const refusal = notOf('length', {'the hole': hole, 'the slot': slot});
  if (refusal) return refusal;
  const bolt = COTTER_FOR_BOLT.find((row) => thread && Math.abs(inches(thread.diameter) - row.inches) < 1e-4);
  if (bolt === undefined && hole === undefined)
    return refused(
      thread ? `no cotter pin is tabled for ${thread.name}` : 'neither bolt nor hole is given',
      'give the hole: the largest pin that it takes is the one',
    );
  const width = slot ? inches(slot) : bolt?.slot?.[0];
  const through = COTTER_PINS.filter((pin) => hole === undefined || pin.hole <= inches(hole) + 5e-4);
  const largest = through.findLast((pin) => width === undefined || pin.inches <= width + 1e-9);
  if (largest === undefined) {
    const [what, narrow, hint] =
      through.length > 0
        ? ['slot', slot, 'the thinnest is 1/32 in']
        : ['hole', hole, 'the smallest takes 0.047 in'];
    return refused(`no cotter pin goes in a ${what} of ${narrow && formatQuantity(narrow)}`, hint);
  }
  const most = quantity(largest.inches, 'in', 0);
  const least = bolt && quantity(bolt.pin, 'in', 0);
  if (bolt && largest.inches < bolt.pin)
    return refused(
      `the largest pin that goes in is ${formatQuantity(most)}, less than the ${formatQuantity(quantity(bolt.pin, 'in', 0))} for ${bolt.bolt}`,
      'drill the hole for the larger pin',
    );
  return {
    ok: true,
    result: {
      ...(least ? {least} : {}),
      ...(hole !== undefined || width !== undefined ? {most} : {}),
      take: (hole === undefined && least) || most,
    },
    formula: 'the largest pin that hole and slot take, no less than the one tabled for the bolt',
    inputs: [
      {name: 'thread', value: thread?.name ?? 'not stated'},
      {name: 'hole', value: hole ?? 'not stated'},
      {
        name: 'slot',
        value: slot ?? (width === undefined ? 'not stated' : `${width} in, the least of ASME B18.2.2`),
      },
    ],
    source: 'ASME B18.8.1; AN310 with AN380 (from memory, agrees with sizes.com); ASME B18.2.2',
    advisory:
      'A new pin every time. Tighten to the low side, then on to the next slot; never back off to reach one (AC 43.13-1B 7-126).',
  };
}

/** Whether a pin is one of those that will do. */
export function cotterSuits(pin: Quantity, choice: CotterChoice): Suits {
  return suits(pin, choice, 2);
}

function inches(length: Quantity): number {
  return convert(length, unit('in')).value;
}
