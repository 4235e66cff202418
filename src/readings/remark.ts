/** How much each kind of remark weighs, and in which order they are told. */
import {REMARK_NAMES, type Remark, type RemarkName} from './report.js';

/** An error is what keeps a build from being called well; a warning is for a person to look at. */
const SEVERITY: Readonly<Record<RemarkName, Remark['severity']>> = {
  out: 'error',
  'signed-over-out': 'error',
  'cure-short': 'error',
  accepted: 'warning',
  'signed-ahead': 'warning',
  'no-initials': 'warning',
  'works-out-wrong': 'warning',
  unreadable: 'error',
  'mark-differs': 'error',
  near: 'warning',
  missing: 'error',
  'sheet-missing': 'error',
  'still-open': 'information',
  'not-begun': 'information',
  'same-hand': 'error',
  'signed-early': 'error',
  'written-over': 'warning',
  reworked: 'information',
  'gauge-due': 'warning',
  'clock-back': 'warning',
  'out-of-order': 'warning',
  'seal-broken': 'error',
  'book-changed': 'error',
  'records-differ': 'error',
  'sheet-unknown': 'error',
  'box-unknown': 'error',
};

/** A remark of that kind, with the weight that every one of the kind has. */
export function remark(name: RemarkName, about: Omit<Remark, 'name' | 'severity'>): Remark {
  return {name, severity: SEVERITY[name], ...about};
}

/** Out first, then near, and so on; as they came within a kind. */
export function inOrder(remarks: readonly Remark[]): Remark[] {
  const weight = new Map(REMARK_NAMES.map((name, index) => [name, index]));
  const of = ({name}: Remark) => weight.get(name) ?? REMARK_NAMES.length;
  return [...remarks].sort((one, other) => of(one) - of(other));
}
