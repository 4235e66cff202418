/**
 * Wear limits that manuals state per inch or in total. Read in TM 10-3930-647-14&P
 * (constructionforklifts.tpub.com/TM-10-3930-647-14-P); the scan interleaves two columns, so the pairing was checked
 * by sense.
 */

export interface WearRule {
  readonly name: string;
  readonly says: string;
  /** Inches: for each inch of `of`, or in total. */
  readonly allowance: number;
  readonly of: 'diameter' | 'piston travel' | 'total';
  /** What it is counted from. */
  readonly from: 'nominal' | 'high limit' | 'low limit';
}

export const WEAR_RULES: readonly WearRule[] = [
  rule('sleeve-bore', 'wear of a sleeve bore', 0.001, 'diameter'),
  rule('sleeve-taper', 'taper of a sleeve bore', 0.0005, 'piston travel'),
  rule('piston', 'wear of a piston at the skirt and above the pin', 0.0005, 'diameter'),
  rule('piston-pin', 'wear of a piston pin', 0.001, 'total'),
  rule('pin-bore', 'wear of a pin bore in piston or rod', 0.0005, 'diameter'),
  rule('bearing-clearance', 'clearance of a main or rod bearing', 0.0005, 'diameter', 'high limit'),
  rule('journal-out-of-round', 'out-of-round of a main or rod journal', 0.0004, 'diameter'),
  rule('crankshaft-end-play', 'end play of the crankshaft', 0.005, 'total', 'high limit'),
  rule('camshaft-journal', 'wear of a camshaft journal', 0.0005, 'diameter', 'low limit'),
  rule('camshaft-end-play', 'end play of the camshaft', 0.01, 'total', 'high limit'),
  rule('valve-stem', 'wear of a valve stem', 0.001, 'total'),
  rule('valve-guide', 'wear of a valve guide', 0.0015, 'total'),
];

function rule(
  name: string,
  says: string,
  allowance: number,
  of: WearRule['of'],
  from: WearRule['from'] = 'nominal',
): WearRule {
  return {name, says, allowance, of, from};
}
