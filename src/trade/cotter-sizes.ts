/** Cotter pins: the holes that they fit and the bolts that they are for. */

export interface CotterPin {
  readonly name: string;
  /** Nominal diameter and the hole that gauges it, inches. */
  readonly inches: number;
  readonly hole: number;
}

/** ASME B18.8.1: pin plus 1/64 in below 5/16 in (rule read at acamthai.com and sizes.com; the gauge holes to three places from memory). */
export const COTTER_PINS: readonly CotterPin[] = [
  {name: '1/32', inches: 1 / 32, hole: 0.047},
  {name: '3/64', inches: 3 / 64, hole: 0.062},
  {name: '1/16', inches: 1 / 16, hole: 0.078},
  {name: '5/64', inches: 5 / 64, hole: 0.094},
  {name: '3/32', inches: 3 / 32, hole: 0.109},
  {name: '7/64', inches: 7 / 64, hole: 0.125},
  {name: '1/8', inches: 1 / 8, hole: 0.141},
  {name: '5/32', inches: 5 / 32, hole: 0.172},
  {name: '3/16', inches: 3 / 16, hole: 0.203},
  {name: '7/32', inches: 7 / 32, hole: 0.234},
  {name: '1/4', inches: 1 / 4, hole: 0.266},
];

export interface CotterForBolt {
  readonly bolt: string;
  /** Nominal bolt and least pin, inches. */
  readonly inches: number;
  readonly pin: number;
  /** Slot of a hex slotted nut, least and most, inches (ASME B18.2.2, read at aftfasteners.com); none for No. 10. */
  readonly slot?: readonly [number, number];
}

/** Least pin: AN310 castle nuts with AN380 pins (from memory; the sizes at sizes.com/tools/cotter_pins.htm agree). */
export const COTTER_FOR_BOLT: readonly CotterForBolt[] = [
  {bolt: 'No. 10', inches: 0.19, pin: 1 / 16},
  {bolt: '1/4', inches: 0.25, pin: 1 / 16, slot: [0.07, 0.1]},
  {bolt: '5/16', inches: 0.3125, pin: 1 / 16, slot: [0.09, 0.12]},
  {bolt: '3/8', inches: 0.375, pin: 3 / 32, slot: [0.12, 0.15]},
  {bolt: '7/16', inches: 0.4375, pin: 3 / 32, slot: [0.12, 0.15]},
  {bolt: '1/2', inches: 0.5, pin: 3 / 32, slot: [0.15, 0.18]},
  {bolt: '9/16', inches: 0.5625, pin: 1 / 8, slot: [0.15, 0.18]},
  {bolt: '5/8', inches: 0.625, pin: 1 / 8, slot: [0.18, 0.24]},
  {bolt: '3/4', inches: 0.75, pin: 1 / 8, slot: [0.18, 0.24]},
  {bolt: '7/8', inches: 0.875, pin: 1 / 8, slot: [0.18, 0.24]},
  {bolt: '1', inches: 1, pin: 1 / 8, slot: [0.24, 0.3]},
];
