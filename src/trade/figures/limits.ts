/** Figure: limits of a size by its ISO 286 letters. */
import {figure} from '../figure.js';
import {quantity, text} from '../figure-options.js';
import {limitsOfSize, readZone} from '../iso-limits.js';
import {mapped} from '../worked.js';

export const limitsFigure = figure({
  name: 'limits',
  says: 'limits of a size by its ISO 286 letters',
  options: {
    size: quantity('length', 'nominal size, to 500 mm', '25 mm'),
    class: text(
      'letters and grade',
      'tolerance class: capitals for a hole, small letters for a shaft',
      'H7',
      (given) => {
        const zone = readZone(given);
        return 'ok' in zone ? zone : {ok: true, value: given};
      },
    ),
  },
  work: ({size, class: zone}) =>
    mapped(limitsOfSize(size, zone), ({upper, lower, limits}) => [
      {name: 'limits', value: limits},
      {name: 'upper deviation', value: upper},
      {name: 'lower deviation', value: lower},
    ]),
});
