/** The report on builds as lines of text: what is out first, then near, missing, signatures, times and seals. */
import {printable} from '../text/printable.js';
import {decimals, limitsText, plain, withUnit} from './remark.js';
import type {BuildReport, ReadingsReport, Remark, RemarkName, SheetLine, Spread} from './report.js';
import {spanText} from './worked-line.js';

export function reportText({builds, spread}: ReadingsReport): string {
  const blocks = [...builds.flatMap(buildBlocks), ...spreadBlocks(spread), SEALS_SAY, [sums(builds)]];
  return `${blocks.map((lines) => lines.map(printable).join('\n')).join('\n\n')}\n`;
}

/** What the seals prove, and what not. */
export const SEALS_SAY: readonly string[] = [
  'A seal is made over each entry and the seal before it. A broken one proves that something was changed after it was',
  'written. That all follow proves only that nobody slipped: whoever makes every later seal anew goes unnoticed, and no',
  'seal says who held the tablet. Keep exported files where they cannot be changed.',
];

/** The headings of the report, each with what stands below it; every kind of remark has its place. */
export const HEADINGS: readonly {readonly title: string; readonly names: readonly RemarkName[]}[] = [
  {
    title: 'Out of limits, or not readable',
    names: ['out', 'signed-over-out', 'works-out-wrong', 'cure-short', 'unreadable', 'mark-differs'],
  },
  {title: 'Out of limits, and accepted', names: ['accepted']},
  {title: 'Near a limit', names: ['near']},
  {title: 'Missing', names: ['missing', 'sheet-missing']},
  {title: 'Still to do', names: ['still-open', 'not-begun']},
  {title: 'Signatures', names: ['same-hand', 'signed-early', 'signed-ahead']},
  {
    title: 'How it came about',
    names: ['written-over', 'reworked', 'gauge-due', 'clock-back', 'out-of-order'],
  },
  {
    title: 'Sheets and seals',
    names: ['seal-broken', 'book-changed', 'records-differ', 'sheet-unknown', 'box-unknown'],
  },
];

export function titleOf(build: BuildReport): string {
  const {name, job, engineNumber, files} = build;
  const parts = [job && `job ${job}`, engineNumber && `engine number ${engineNumber}`].filter(Boolean);
  return [name, ...(parts.length > 0 ? parts : files)].join(', ');
}

/** `10 of 11 sheets judged; 812 of 830 boxes answered`. */
export function sizeOf(build: BuildReport): string {
  const {sheets} = build;
  const judged = sheets.filter(({state}) => state === 'judged').length;
  return `${judged} of ${counted(sheets.length, 'sheet')} judged; ${answeredText(build)} boxes answered`;
}

/** `812 of 830`. */
export function answeredText({sheets}: BuildReport): string {
  const total = (of: (sheet: SheetLine) => number) => sheets.reduce((sum, sheet) => sum + of(sheet), 0);
  return `${total(({answered}) => answered)} of ${total(({asked}) => asked)}`;
}

/** `04-crankshaft, step 12`. */
export function placeOf({sheet, step}: Pick<Remark, 'sheet' | 'step'>): string {
  return step === '' ? sheet : `${sheet}, step ${step}`;
}

export function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

function buildBlocks(build: BuildReport): string[][] {
  const headed = HEADINGS.flatMap(({title, names}) => {
    const lines = build.remarks.filter(({name}) => names.includes(name)).map(remarkLine);
    return lines.length === 0 ? [] : [[title, ...lines]];
  });
  const worked = build.worked.map(
    (line) => `  ${line.name}${line.place && `, ${line.place}`}: ${spanText(line)} (${line.from})`,
  );
  return [
    [titleOf(build), sizeOf(build)],
    ...headed,
    ...(worked.length > 0 ? [['Worked out from sizes', ...worked]] : []),
    [sealsLine(build)],
  ];
}

function sealsLine({sheets}: BuildReport): string {
  const broken = sheets.filter(({seals}) => seals === 'broken').map(({procedure}) => procedure);
  return broken.length > 0
    ? `Seals: broken in ${broken.join(', ')}.`
    : 'Seals: each follows from the one before it.';
}

function remarkLine(remark: Remark): string {
  return `  ${placeOf(remark)}: ${remark.severity}: ${remark.message}  [${remark.name}]`;
}

function spreadBlocks(spread: readonly Spread[]): string[][] {
  return spread.length === 0
    ? []
    : [['Spread over the builds', ...spread.map((one) => `  ${spreadText(one)}`)]];
}

/** `main bearing clearance, front: n 3, least 0.0021, mean 0.0024, most 0.0028 in, standard deviation 0.0004`. */
export function spreadText(one: Spread): string {
  const {name, place, values, unit} = one;
  const {smallest, mean, largest, deviation} = figuresOf(one);
  const limits = limitsText(one);
  const most = withUnit(largest, unit);
  return [
    `${name}${place && `, ${place}`}: n ${values.length}, least ${smallest}, mean ${mean}, most ${most}`,
    ...(deviation === undefined ? [] : [`standard deviation ${deviation}`]),
    ...(limits === undefined ? [] : [`limits ${limits}`]),
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

function sums(builds: readonly BuildReport[]): string {
  const count = (severity: Remark['severity']) =>
    builds.flatMap(({remarks}) => remarks).filter((one) => one.severity === severity).length;
  const of = builds.length === 1 ? '' : `${counted(builds.length, 'build')}: `;
  return `${of}${counted(count('error'), 'error')}, ${counted(count('warning'), 'warning')}`;
}
