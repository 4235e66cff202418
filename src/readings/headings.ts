/** How a report is called and parted, whatever its form: its headings, and what a build and a place in it are called. */
import {fill} from '../text/fill.js';
import type {BuildReport, Remark, RemarkName, SheetLine} from './report.js';
import {counted, type ReportWords} from './words.js';

/** The headings of the report, each with what stands below it; every kind of remark has its place. */
export const HEADINGS: readonly {
  readonly title: keyof ReportWords['headings'];
  readonly names: readonly RemarkName[];
}[] = [
  {
    title: 'out',
    names: ['out', 'signed-over-out', 'works-out-wrong', 'cure-short', 'unreadable', 'mark-differs'],
  },
  {title: 'accepted', names: ['accepted']},
  {title: 'near', names: ['near']},
  {title: 'missing', names: ['missing', 'sheet-missing']},
  {title: 'toDo', names: ['still-open', 'not-begun']},
  {title: 'signatures', names: ['same-hand', 'signed-early', 'signed-ahead', 'no-initials']},
  {title: 'history', names: ['written-over', 'reworked', 'gauge-due', 'clock-back', 'out-of-order']},
  {title: 'sheets', names: ['seal-broken', 'book-changed', 'records-differ', 'sheet-unknown', 'box-unknown']},
];

/** `Ottermouth Four, job 1047, engine number 4471`; by its files where nobody wrote down either number. */
export function titleOf(build: BuildReport, words: ReportWords): string {
  const {name, job, engineNumber, files} = build;
  const parts = [
    job && fill(words.jobOf, {number: job}),
    engineNumber && fill(words.engineNumberOf, {number: engineNumber}),
  ].filter(Boolean);
  return [name, ...(parts.length > 0 ? parts : files)].join(', ');
}

/** `10 of 11 sheets judged; 812 of 830 boxes answered`. */
export function sizeOf(build: BuildReport, words: ReportWords): string {
  const {sheets} = build;
  const judged = sheets.filter(({state}) => state === 'judged').length;
  return fill(words.size, {
    judged,
    sheets: counted(sheets.length, words.counts.sheets),
    answered: answeredText(build, words),
  });
}

/** `812 of 830`. */
export function answeredText({sheets}: BuildReport, words: ReportWords): string {
  const total = (of: (sheet: SheetLine) => number) => sheets.reduce((sum, sheet) => sum + of(sheet), 0);
  return fill(words.answered, {
    answered: total(({answered}) => answered),
    asked: total(({asked}) => asked),
  });
}

/** `04-crankshaft, step 12`. */
export function placeOf({sheet, step}: Pick<Remark, 'sheet' | 'step'>, {stepOf}: ReportWords): string {
  return step === '' ? sheet : fill(stepOf, {sheet, step});
}

/** How many remarks of one weight there are. */
export function remarkCount(builds: readonly BuildReport[], severity: Remark['severity']): number {
  return builds.flatMap(({remarks}) => remarks).filter((one) => one.severity === severity).length;
}

/** `2 accepted as they are`: out of their limits, and no error because somebody stands by them; empty for none. */
export function acceptedText(builds: readonly BuildReport[], {counts}: ReportWords): string[] {
  const accepted = builds.flatMap(({remarks}) => remarks).filter(({name}) => name === 'accepted');
  return accepted.length === 0 ? [] : [counted(accepted.length, counts.accepted)];
}
