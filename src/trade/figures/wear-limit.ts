/** Figure: how much wear a published rule allows. */
import {figure} from '../figure.js';
import {optional, quantity, word} from '../figure-options.js';
import {wearLimit} from '../wear-limit.js';
import {WEAR_RULES} from '../wear-rules.js';
import {mapped} from '../worked.js';

export const wearLimitFigure = figure({
  name: 'wear-limit',
  says: 'how much wear a published rule allows for a part of this size',
  options: {
    rule: word(
      WEAR_RULES.map((rule) => rule.name),
      'which part and measure',
      'bearing-clearance',
    ),
    size: optional(quantity('length', 'diameter, or piston travel for sleeve-taper', '2.500 in')),
    'new-limit': optional(quantity('length', 'limit of a new part that the rule counts from', '0.0030 in')),
  },
  shows: ['size', 'new-limit'],
  work: ({rule, size, 'new-limit': newLimit}) =>
    mapped(wearLimit(rule, size, newLimit), ({allowance, limit}) => [
      {name: 'allowance', value: allowance},
      ...(limit ? [{name: 'wear limit', value: limit}] : []),
    ]),
});
