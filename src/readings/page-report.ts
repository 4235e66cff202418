/** The whole report on builds: its title, how each build stands, the builds, and their spread. */
import {fill} from '../text/fill.js';
import {acceptedText, remarkCount, titleOf} from './headings.js';
import {type Block, bad, type Cell, table} from './page.js';
import {buildPart} from './page-build.js';
import {spreadPart} from './page-spread.js';
import type {BuildReport, ReadingsReport} from './report.js';
import {counted, type ReportWords} from './words.js';

export interface ReportPage {
  readonly title: string;
  readonly overview: readonly Block[];
  /** How the drawings are to be read. */
  readonly key: string;
  readonly content: readonly Block[];
}

export function reportPage({builds, spread}: ReadingsReport, words: ReportWords): ReportPage {
  const [only, second] = builds;
  return {
    title: only && !second ? fill(words.reportOf, {title: titleOf(only, words)}) : words.reports,
    overview: table(
      [words.build, words.wrong, words.toLookAt],
      builds.map((build, index) => overviewRow(build, index, words)),
    ),
    key: words.key,
    content: [
      ...builds.flatMap((build, index) => buildPart(build, buildId(index), words)),
      ...spreadPart(spread, words),
    ],
  };
}

function buildId(index: number): string {
  return `build-${index + 1}`;
}

/** How a build stands, with a way to it. */
function overviewRow(build: BuildReport, index: number, words: ReportWords): Cell[] {
  const errors = remarkCount([build], 'error');
  const accepted = acceptedText([build], words);
  return [
    {text: titleOf(build, words), look: 'link', to: buildId(index)},
    errors === 0
      ? [words.nothingWrong, ...accepted].join('; ')
      : bad([counted(errors, words.counts.errors), ...accepted].join('; ')),
    counted(remarkCount([build], 'warning'), words.counts.warnings),
  ];
}
