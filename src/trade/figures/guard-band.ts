/** Figure: what a reading proves when the gauge has an uncertainty. */
import type {Quantity} from '../../quantity/model.js';
import {figure} from '../figure.js';
import {anyAmount, anyQuantity} from '../figure-any.js';
import {optional} from '../figure-options.js';
import {type GuardBand, guardBand, proves} from '../guard-band.js';
import {mapped, type Named, notOf} from '../worked.js';

export const guardBandFigure = figure({
  name: 'guard-band',
  says: 'between which readings a part is proved good, or proved bad',
  options: {
    limits: anyAmount('limits of what is measured', '2.4990–2.5000 in'),
    uncertainty: anyQuantity('expanded uncertainty of the measuring, k = 2', '0.0001 in'),
    reading: optional(anyQuantity('a reading to be judged', '2.4992 in')),
  },
  shows: ['reading'],
  work: ({limits, uncertainty, reading}) => {
    const worked = guardBand(limits, uncertainty);
    if (!worked.ok) return worked;
    const refusal = notOf(worked.result.accept.low.unit.dimension, {'the reading': reading}, 'any');
    if (refusal) return refusal;
    const inputs = [...worked.inputs, ...(reading ? [{name: 'reading', value: reading}] : [])];
    return mapped({...worked, inputs}, (band) => tell(band, reading));
  },
});

function tell(band: GuardBand, reading: Quantity | undefined): readonly Named[] {
  return [
    {name: 'accept', value: band.accept},
    {name: 'reject below', value: band.reject.low},
    {name: 'reject above', value: band.reject.high},
    ...(reading ? [{name: 'the reading', value: proves(reading, band)}] : []),
  ];
}
