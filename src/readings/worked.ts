/** Everything that the readings of a build give beyond themselves: clearances, tapers and out-of-rounds. */
import type {Specification} from '../spec/model.js';
import type {ReadingLine, Remark, Worked} from './report.js';
import type {ReportWords} from './words.js';
import {clearancesOf} from './worked-clearance.js';
import {roundnessOf} from './worked-roundness.js';

export interface WorkedOut {
  readonly lines: readonly Worked[];
  readonly remarks: readonly Remark[];
}

export function workedOut(lines: readonly ReadingLine[], spec: Specification, words: ReportWords): WorkedOut {
  const found = [...roundnessOf(lines, spec, words), ...clearancesOf(lines, spec, words)];
  return {lines: found.map(({line}) => line), remarks: found.flatMap((one) => one.remark ?? [])};
}
