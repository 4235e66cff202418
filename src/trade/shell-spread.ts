/** Spread of a bearing shell: how much wider it is, free, than the housing that it snaps into. */
import {si} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import {lengthLike} from './result.js';
import {ESTIMATE, notOf, refused, type Worked} from './worked.js';

/**
 * Free width across the parting faces less housing bore (lengths over 0). Refused where the shell would drop out.
 * Source: TM 5-3820-256-24-5, p. 13 (about 0.025 in).
 */
export function shellSpread(width: Quantity, bore: Quantity): Worked<Quantity> {
  const refusal = notOf('length', {'the free width': width, 'the bore': bore});
  if (refusal) return refusal;
  const spread = lengthLike(si(width) - si(bore), [width, bore]);
  if (spread.value <= 0) {
    const says = `a shell ${formatQuantity(width)} wide drops out of a ${formatQuantity(bore)} bore`;
    return refused(says, 'renew the shell: without spread it does not stay in its seat');
  }
  return {
    ok: true,
    result: spread,
    formula: 'spread = free width − bore',
    inputs: [
      {name: 'free width', value: width},
      {name: 'housing bore', value: bore},
    ],
    source: 'TM 5-3820-256-24-5, p. 13',
    advisory: `${ESTIMATE} About 0.025 in is usual there; 0.005 to 0.030 in is the trade's range (from memory).`,
  };
}
