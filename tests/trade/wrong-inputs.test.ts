/**
 * Calculations as other code calls them, without a reader of options before them: a quantity of the wrong kind, or one
 * that is no number, is refused with its hint, and so is a negative or a nought where none can be.
 */
import {expect, test} from 'vitest';
import type {Quantity} from '../../src/quantity/model.js';
import type {Worked} from '../../src/trade/worked.js';
import {q} from '../help/amount.js';
import {type Call, quantityOf} from './calls.js';
import {OF_FASTENERS} from './calls-fasteners.js';
import {OF_SIZES} from './calls-sizes.js';
import {out, refusal} from './unwrap.js';

const CALLS = [...OF_SIZES, ...OF_FASTENERS];

interface Row {
  readonly subject: string;
  readonly call: Call;
  readonly name: string;
}

const ROWS: readonly Row[] = CALLS.flatMap((one) =>
  Object.keys(one.inputs).map((name) => ({subject: `${one.of}, ${name}`, call: one, name})),
);
const MAY_BE_ANY = ({call: {any = []}, name}: Row) => any.includes(name);
const MAY_BE_NOUGHT = ({call: {nought = []}, name}: Row) => nought.includes(name);

function changed({call: one, name}: Row, change: Partial<Quantity>): Worked<unknown> {
  return one.work({...one.inputs, [name]: {...quantityOf(one.inputs, name), ...change}});
}

test.each(CALLS)('$of works on what is right', ({work, inputs}) => {
  out(work(inputs));
});

test.each(ROWS)('$subject of another kind is refused', (row) => {
  const {says, hint} = refusal(changed(row, {unit: q('12 kg').unit}));
  expect(says).toMatch(/ where .* is due|is not a torque/);
  expect(hint).toMatch(/^write /);
});

test.each(ROWS)('$subject that is no number is refused', (row) => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) refusal(changed(row, {value}));
});

test.each(ROWS.filter((row) => !MAY_BE_ANY(row)))('$subject below nought is refused', (row) => {
  expect(refusal(changed(row, {value: -1})).says).toContain('must be');
});

test.each(ROWS.filter((row) => !MAY_BE_ANY(row) && !MAY_BE_NOUGHT(row)))(
  '$subject of nought is refused',
  (row) => {
    expect(refusal(changed(row, {value: 0})).says).toContain('must be above nought');
  },
);

test.each(ROWS.filter(MAY_BE_NOUGHT))('$subject may be nought', (row) => {
  out(changed(row, {value: 0}));
});
