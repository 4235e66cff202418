/** Fits that are worked out from readings of other fits, which must be there to work them out from. */
import type {Problem} from '../../text/problem.js';
import {itemsOfKind} from '../items.js';
import type {Fit, Located, Specification} from '../model.js';
import {contradiction} from './contradiction.js';

type Spec = Pick<Specification, 'items'>;

/** In the order of the items, each at the value that is likelier wrong, with the other beside it. */
export function derivedContradictions(spec: Spec): Problem[] {
  return itemsOfKind(spec, 'fit').flatMap((fit) => [
    ...bothFaults(fit),
    ...sourceFaults(fit, fit.taperOf, 'taper', spec),
    ...sourceFaults(fit, fit.outOfRoundOf, 'out-of-round', spec),
  ]);
}

function bothFaults(fit: Fit): Problem[] {
  const [first] = fit.outOfRoundOf;
  if (fit.taperOf.length === 0 || first === undefined) return [];
  const says = `${fit.id} is both a taper and an out-of-round`;
  return [contradiction(fit, first.where, says, 'make two fits of it, each with its own limits')];
}

function sourceFaults(fit: Fit, of: readonly Located<string>[], what: string, spec: Spec): Problem[] {
  const [first, second] = of;
  if (first === undefined) return [];
  if (second === undefined)
    return [
      contradiction(fit, first.where, `the ${what} of one reading is nothing`, 'name two fits or more'),
    ];
  return of.flatMap((named) => {
    if (named.value === fit.id)
      return [
        contradiction(
          fit,
          named.where,
          `${fit.id} is worked out from itself`,
          'name the fits that read the size',
        ),
      ];
    const source = spec.items.get(named.value);
    const places = new Set(source?.at);
    const lacking = source === undefined ? [] : fit.at.filter((place) => !places.has(place));
    if (lacking.length === 0) return [];
    const says = `${fit.id} is worked out at ${lacking.join(', ')}, where ${named.value} is not read`;
    return [contradiction(fit, named.where, says, 'give both the same places')];
  });
}
