/** The specification held against itself. */
import type {Problem} from '../text/problem.js';
import {amountContradictions} from './contradictions/amounts.js';
import {derivedContradictions} from './contradictions/derived.js';
import {materialContradictions} from './contradictions/materials.js';
import {orderContradictions} from './contradictions/order.js';
import type {Specification} from './model.js';

export type Resolved = Omit<Specification, 'problems'>;

/** Everything in which the specification says two things that can't both hold; an item that isn't there contradicts nothing. */
export function contradictions(spec: Resolved): Problem[] {
  return [
    ...amountContradictions(spec),
    ...materialContradictions(spec),
    ...orderContradictions(spec),
    ...derivedContradictions(spec),
  ];
}
