/** In which order the fasteners of a set are tightened: as the shop states it, else as worked out from where they sit. */
import type {Fastener} from '../spec/model.js';
import {tighteningOrder} from '../trade/tightening-order.js';

/** In which order, and on whose word. */
export interface FastenerOrder {
  /** Ids of the layout (or numbers, where the shop states an order and no layout). */
  readonly ids: readonly string[];
  /** Worked out from the layout: the maker's order would outrank it. */
  readonly worked: boolean;
}

/** The order of those for which `among` is true; nothing where there are fewer than two or no way to know. */
export function orderOf(fastener: Fastener, among: (id: string) => boolean): FastenerOrder | undefined {
  const stated = fastener.order.filter(among);
  if (stated.length > 1) return {ids: stated, worked: false};
  const spots = fastener.layout.filter(({id}) => among(id));
  if (spots.length < 2) return undefined;
  const found = tighteningOrder(spots);
  return found.ok ? {ids: found.result.order, worked: true} : undefined;
}
