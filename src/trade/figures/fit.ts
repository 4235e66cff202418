/** Figure: the fit of a size by its letters, ISO or inch. */
import {figure} from '../figure.js';
import {quantity, type Read, text} from '../figure-options.js';
import {type Fit, fitNamed, fitOfClasses} from '../fit.js';
import {fitOfInchClass} from '../inch-fit.js';
import {mapped, type Named, refused} from '../worked.js';

export const fitFigure = figure({
  name: 'fit',
  says: 'the fit of a size by ISO 286 letters (H7/g6) or by a class of ANSI B4.1 (RC4, LN2, FN2)',
  options: {
    size: quantity('length', 'nominal size', '1.250 in'),
    fit: text('H7/g6, or RC4', 'classes of hole and shaft, or the inch class', 'RC4', readFit),
  },
  work: ({size, fit}) =>
    mapped(fit.includes('/') ? fitOfClasses(size, fit) : fitOfInchClass(size, fit), tell),
});

/** Two ISO classes without the stroke between them would be taken for an inch class. */
function readFit(given: string): Read<string> {
  const [, hole, shaft] = /^\s*([a-z]{1,2}\d{1,2})[\s,-]+([a-z]{1,2}\d{1,2})\s*$/i.exec(given) ?? [];
  if (hole === undefined) return {ok: true, value: given};
  return refused(`"${given.trim()}" has no stroke between its classes`, `write ${hole}/${shaft}`);
}

function tell(fit: Fit): readonly Named[] {
  return [
    {name: 'hole', value: fit.hole},
    {name: 'shaft', value: fit.shaft},
    {name: 'kind', value: `${fit.kind} fit`},
    ...fitNamed(fit),
  ];
}
