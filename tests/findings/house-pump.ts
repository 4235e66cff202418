/** A pump and its bolts, and a rule of the house on them. */
import type {Book} from '../../src/build/book.js';
import {whereIn} from '../../src/build/program.js';
import type {HouseFinding} from '../../src/findings/house.js';
import {idsOf} from '../../src/procedure/values.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';

export const ENGINE = `
parts:
  block: {given: true}
  pump: {}
fasteners:
  pump-bolts: {holds: [pump], torque: 18 lbf·ft, threads: dry, lock: {value: none, because: self-locking threads}}
`;

export const STEPS = `
1. Set the pump on. \`install: pump\`
2. Tighten its bolts. \`torque: pump-bolts to 18 lbf·ft\`
`;

export const WRENCH: HouseFinding = {
  name: 'house-wrench-named',
  severity: 'warning',
  summary: 'A torque does not say which wrench it is tightened with',
  why: 'The record says which one it was.',
  before: {
    torque({item, tag, step}, {report}) {
      if (idsOf(tag, 'using').length > 0) return;
      report({where: whereIn(step, tag.span), item: item.id, message: `${item.id}: no wrench is named`});
    },
  },
};

export function pumpBook({
  steps = STEPS,
  severity = '',
  job,
}: {
  readonly steps?: string;
  readonly severity?: string;
  readonly job?: string;
} = {}): Book {
  return book({engine: ENGINE, shop: EXAMPLE_SHOP + severity, procedures: {'procedure.md': steps}, job});
}
