/** The report on builds as lines of text: what is out first, then near, missing, signatures, times and seals. */
import {fill} from '../text/fill.js';
import {printable} from '../text/printable.js';
import {decimals, limitsText, plain, withUnit} from './remark.js';
import type {BuildReport, ReadingsReport, Remark, RemarkName, SheetLine, Spread} from './report.js';
import {counted, ENGLISH, type ReportWords} from './words.js';
import {spanText} from './worked-line.js';

export function reportText({builds, spread}: ReadingsReport, words: ReportWords = ENGLISH): string {
  const blocks = [
    ...builds.flatMap((build) => buildBlocks(build, words)),
    ...spreadBlocks(spread, words),
    words.sealsSay,
    [sums(builds, words)],
  ];
  return `${blocks.map((lines) => lines.map(printable).join('\n')).join('\n\n')}\n`;
}

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

function buildBlocks(build: BuildReport, words: ReportWords): string[][] {
  const headed = HEADINGS.flatMap(({title, names}) => {
    const lines = build.remarks.filter(({name}) => names.includes(name)).map((one) => remarkLine(one, words));
    return lines.length === 0 ? [] : [[words.headings[title], ...lines]];
  });
  const worked = build.worked.map(
    (line) => `  ${line.name}${line.place && `, ${line.place}`}: ${spanText(line)} (${line.from})`,
  );
  return [
    [titleOf(build, words), sizeOf(build, words)],
    ...headed,
    ...(worked.length > 0 ? [[words.worked, ...worked]] : []),
    [sealsLine(build, words)],
  ];
}

function sealsLine({sheets}: BuildReport, words: ReportWords): string {
  const broken = sheets.filter(({seals}) => seals === 'broken').map(({procedure}) => procedure);
  return broken.length > 0 ? fill(words.sealsBroken, {sheets: broken.join(', ')}) : words.sealsFollow;
}

function remarkLine(remark: Remark, words: ReportWords): string {
  const weight = words.severities[remark.severity];
  return `  ${placeOf(remark, words)}: ${weight}: ${remark.message}  [${remark.name}]`;
}

function spreadBlocks(spread: readonly Spread[], words: ReportWords): string[][] {
  return spread.length === 0 ? [] : [[words.spread, ...spread.map((one) => `  ${spreadText(one, words)}`)]];
}

/** `main bearing clearance, front: n 3, least 0.0021, mean 0.0024, most 0.0028 in, standard deviation 0.0004`. */
export function spreadText(one: Spread, words: ReportWords): string {
  const {name, place, values, unit} = one;
  const {smallest, mean, largest, deviation} = figuresOf(one);
  const limits = limitsText(one, words);
  const figures = {count: values.length, least: smallest, mean, most: withUnit(largest, unit)};
  return [
    `${name}${place && `, ${place}`}: ${fill(words.spreadText, figures)}`,
    ...(deviation === undefined ? [] : [fill(words.spreadDeviation, {deviation})]),
    ...(limits === undefined ? [] : [fill(words.spreadLimits, {limits})]),
  ].join(', ');
}

/** The figures as texts: those worked out have one place more than those read. */
export function figuresOf({values, smallest, mean, largest, deviation}: Spread) {
  const places = Math.max(...values.map(({value}) => decimals(value)));
  return {
    smallest: plain(smallest, places),
    mean: plain(mean, places + 1),
    largest: plain(largest, places),
    deviation: deviation === undefined ? undefined : plain(deviation, places + 1),
    places,
  };
}

function sums(builds: readonly BuildReport[], words: ReportWords): string {
  const {counts} = words;
  const count = (severity: Remark['severity']) =>
    builds.flatMap(({remarks}) => remarks).filter((one) => one.severity === severity).length;
  const of = builds.length === 1 ? '' : `${counted(builds.length, counts.builds)}: `;
  const found = `${of}${counted(count('error'), counts.errors)}, ${counted(count('warning'), counts.warnings)}`;
  return [found, ...acceptedText(builds, words)].join('; ');
}

/** `2 accepted as they are`: out of their limits, and no error because somebody stands by them; empty for none. */
export function acceptedText(builds: readonly BuildReport[], {counts}: ReportWords): string[] {
  const accepted = builds.flatMap(({remarks}) => remarks).filter(({name}) => name === 'accepted');
  return accepted.length === 0 ? [] : [counted(accepted.length, counts.accepted)];
}
