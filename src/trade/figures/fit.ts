/** Figure: the fit of a size by its letters, ISO or inch. */
import {figure} from '../figure.js';
import {quantity, text} from '../figure-options.js';
import {type Fit, fitNamed, fitOfClasses} from '../fit.js';
import {fitOfInchClass} from '../inch-fit.js';
import {mapped, type Named} from '../worked.js';

export const fitFigure = figure({
  name: 'fit',
  says: 'the fit of a size by ISO 286 letters (H7/g6) or by a class of ANSI B4.1 (RC4, LN2, FN2)',
  options: {
    size: quantity('length', 'nominal size', '1.250 in'),
    fit: text('H7/g6, or RC4', 'classes of hole and shaft, or the inch class', 'RC4', (value) => ({
      ok: true,
      value,
    })),
  },
  work: ({size, fit}) =>
    mapped(fit.includes('/') ? fitOfClasses(size, fit) : fitOfInchClass(size, fit), tell),
});

function tell(fit: Fit): readonly Named[] {
  return [
    {name: 'hole', value: fit.hole},
    {name: 'shaft', value: fit.shaft},
    {name: 'kind', value: `${fit.kind} fit`},
    ...fitNamed(fit),
  ];
}
