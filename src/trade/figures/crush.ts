/** Figure: the grip that the crush of bearing shells gives. */
import {type Crush, crush, crushFromGap} from '../crush.js';
import {figure} from '../figure.js';
import {optional, quantity} from '../figure-options.js';
import {mapped, type Named, refused} from '../worked.js';

export const crushFigure = figure({
  name: 'crush',
  says: 'the grip of bearing shells from their crush',
  options: {
    bore: quantity('length', 'bore of the housing', '2.6545 in'),
    height: optional(quantity('length', 'how far one half stands proud', '0.0015 in')),
    gap: optional(
      quantity('length', 'or the gap at the slack parting line, the other bolt tight', '0.0030 in'),
    ),
  },
  shows: ['height'],
  work: ({bore, height, gap}) => {
    if (gap) return mapped(crushFromGap(gap, bore), tell);
    if (height) return mapped(crush(height, bore), tell);
    return refused('the crush is missing', 'give --height or --gap');
  },
});

function tell({height, interference}: Crush): readonly Named[] {
  return [
    {name: 'crush of one half', value: height},
    {name: 'interference on the diameter', value: interference},
  ];
}
