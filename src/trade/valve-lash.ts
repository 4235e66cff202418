/** Setting valve lash: how far to turn an adjusting screw, or which shim to fit. */
import {si} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {fromSi, lengthLike} from './result.js';
import {notOf, type Refused, refused, type Worked} from './worked.js';

/**
 * The turn of a screw that brings the lash from what was measured to what is wanted; positive closes it. Lengths, lash
 * 0 or more, pitch over 0. `ratio` is the rocker's where the screw is at the pushrod end and the lash is measured at
 * the valve; 1 where the screw is at the valve. Geometry.
 */
export function screwTurn(
  measured: Quantity,
  wanted: Quantity,
  pitch: Quantity,
  ratio = 1,
): Worked<Quantity> {
  const refusal =
    notOf('length', {'the lash': measured, 'the lash wanted': wanted}, 'not-negative') ??
    notOf('length', {'the pitch': pitch}) ??
    noRatio(ratio);
  if (refusal) return refusal;
  const turns = (si(measured) - si(wanted)) / (ratio * si(pitch));
  return {
    ok: true,
    result: fromSi(turns * 2 * Math.PI, unit('°'), 1),
    formula: 'turn = 360° · (measured − wanted) / (rocker ratio · pitch)',
    inputs: [
      {name: 'lash measured', value: measured},
      {name: 'lash wanted', value: wanted},
      {name: 'pitch of the screw', value: pitch},
      {name: 'rocker ratio', value: String(ratio)},
    ],
    source: 'geometry',
    advisory:
      'Only to get near: the lash is what the feeler says after the lock nut is tight. Hot and cold figures differ, use the one that the maker names.',
  };
}

/**
 * The shim that brings the lash from what was measured to what is wanted (lengths, lash 0 or more). `ratio` is the
 * rocker's where the shim is on the tappet's side. Refused where no shim would be left. Geometry.
 */
export function shimFor(
  measured: Quantity,
  wanted: Quantity,
  present: Quantity,
  ratio = 1,
): Worked<Quantity> {
  const refusal =
    notOf('length', {'the lash': measured, 'the lash wanted': wanted, 'the shim': present}, 'not-negative') ??
    noRatio(ratio);
  if (refusal) return refusal;
  const shim = lengthLike(si(present) + (si(measured) - si(wanted)) / ratio, [present, measured, wanted]);
  if (shim.value <= 0)
    return refused(
      `a shim of ${formatQuantity(present)} has not that much to give`,
      'the valve stem is too long: find out why before grinding it',
    );
  return {
    ok: true,
    result: shim,
    formula: 'shim = present shim + (measured − wanted) / rocker ratio',
    inputs: [
      {name: 'lash measured', value: measured},
      {name: 'lash wanted', value: wanted},
      {name: 'present shim', value: present},
      {name: 'rocker ratio', value: String(ratio)},
    ],
    source: 'geometry',
    advisory: 'Measure the shim that comes out: marks wear off, and shims wear.',
  };
}

/** Rockers that anybody fits lie well within; a ratio outside is one turned upside down, or a lift in its place. */
function noRatio(ratio: number): Refused | undefined {
  if (ratio >= 0.5 && ratio <= 3) return undefined;
  return refused(
    `a rocker ratio of ${ratio} is outside 0.5 to 3`,
    'give valve lift over tappet lift, such as 1.5',
  );
}
