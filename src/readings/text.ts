/** The report on builds as lines of text: what is out first, then near, missing, signatures, times and seals. */
import {fill} from '../text/fill.js';
import {printable} from '../text/printable.js';
import {figuresOf, limitsText, namedAt, withUnit} from './figures.js';
import {acceptedText, HEADINGS, placeOf, remarkCount, sizeOf, titleOf} from './headings.js';
import type {BuildReport, ReadingsReport, Remark, Spread} from './report.js';
import {counted, ENGLISH, type ReportWords} from './words.js';
import {spanText} from './worked-line.js';

/** For a terminal or a mail: no line is folded, and the sums stand last, where the eye is. */
export function reportText({builds, spread}: ReadingsReport, words: ReportWords = ENGLISH): string {
  const blocks = [
    ...builds.flatMap((build) => buildBlocks(build, words)),
    ...spreadBlocks(spread, words),
    words.sealsSay,
    [sums(builds, words)],
  ];
  return `${blocks.map((lines) => lines.map(printable).join('\n')).join('\n\n')}\n`;
}

function buildBlocks(build: BuildReport, words: ReportWords): string[][] {
  const headed = HEADINGS.flatMap(({title, names}) => {
    const lines = build.remarks.filter(({name}) => names.includes(name)).map((one) => remarkLine(one, words));
    return lines.length === 0 ? [] : [[words.headings[title], ...lines]];
  });
  const worked = build.worked.map((line) => `  ${namedAt(line)}: ${spanText(line)} (${line.from})`);
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
  const {values, unit} = one;
  const {smallest, mean, largest, deviation} = figuresOf(one);
  const limits = limitsText(one, words);
  const figures = {count: values.length, least: smallest, mean, most: withUnit(largest, unit)};
  return [
    `${namedAt(one)}: ${fill(words.spreadText, figures)}`,
    ...(deviation === undefined ? [] : [fill(words.spreadDeviation, {deviation})]),
    ...(limits === undefined ? [] : [fill(words.spreadLimits, {limits})]),
  ].join(', ');
}

function sums(builds: readonly BuildReport[], words: ReportWords): string {
  const {counts} = words;
  const of = builds.length === 1 ? '' : `${counted(builds.length, counts.builds)}: `;
  const found = `${of}${counted(remarkCount(builds, 'error'), counts.errors)}, ${counted(remarkCount(builds, 'warning'), counts.warnings)}`;
  return [found, ...acceptedText(builds, words)].join('; ');
}
