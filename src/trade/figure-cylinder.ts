/** What the figures of compression have in common: the sizes of a cylinder without its chamber. */
import type {Quantity} from '../quantity/model.js';
import type {Cylinder} from './compression-ratio.js';
import {optional, quantity} from './figure-options.js';
import {type Refused, refused} from './worked.js';

export const CYLINDER_OPTIONS = {
  bore: quantity('length', 'bore', '4.000 in'),
  stroke: quantity('length', 'stroke', '3.480 in'),
  dish: optional(quantity('volume', 'dish and valve reliefs of the crown; negative for a dome', '5 cc')),
  deck: optional(
    quantity('length', 'from crown to deck; negative where the piston stands proud', '0.025 in'),
  ),
  gasket: optional(quantity('length', 'thickness of the head gasket, squeezed', '0.040 in')),
  'gasket-bore': optional(
    quantity('length', 'bore of the gasket, that of the cylinder if not said', '4.100 in'),
  ),
};

interface GasketGiven {
  readonly bore: Quantity;
  readonly gasket: Quantity | undefined;
  readonly 'gasket-bore': Quantity | undefined;
}

/** The gasket as the calculation takes it; a bore without a thickness is refused. */
export function gasketOf({bore, gasket, 'gasket-bore': wide}: GasketGiven): Cylinder['gasket'] | Refused {
  if (gasket === undefined && wide !== undefined)
    return refused('--gasket-bore is given without --gasket', 'give the thickness of the gasket too');
  return gasket && {bore: wide ?? bore, thickness: gasket};
}
