/** The whole report on builds: its title, how each build stands, the builds, and their spread. */
import {type Block, bad, type Cell, table} from './page.js';
import {buildPart} from './page-build.js';
import {spreadPart} from './page-spread.js';
import type {BuildReport, ReadingsReport, Remark} from './report.js';
import {counted, titleOf} from './text.js';

export interface ReportPage {
  readonly title: string;
  readonly overview: readonly Block[];
  /** How the drawings are to be read. */
  readonly key: string;
  readonly content: readonly Block[];
}

export function reportPage({builds, spread}: ReadingsReport): ReportPage {
  const [only, second] = builds;
  return {
    title: only && !second ? `Build report: ${titleOf(only)}` : 'Build reports',
    overview: table(['Build', 'Wrong', 'To look at'], builds.map(overviewRow)),
    key: KEY,
    content: [...builds.flatMap((build, index) => buildPart(build, buildId(index))), ...spreadPart(spread)],
  };
}

export function remarksOf(builds: readonly BuildReport[], severity: Remark['severity']): number {
  return builds.flatMap(({remarks}) => remarks).filter((one) => one.severity === severity).length;
}

function buildId(index: number): string {
  return `build-${index + 1}`;
}

/** How a build stands, with a way to it. */
function overviewRow(build: BuildReport, index: number): Cell[] {
  const errors = remarksOf([build], 'error');
  return [
    {text: titleOf(build), look: 'link', to: buildId(index)},
    errors === 0 ? 'nothing wrong' : bad(counted(errors, 'error')),
    counted(remarksOf([build], 'warning'), 'warning'),
  ];
}

const KEY =
  'In the drawings a disc is within its limits, an open diamond near one, a cross outside; small marks are earlier readings. The grey band lies between the limits. In its dark edges a reading is near a limit: by less than the gauge may be out or, where that is not known, in the last tenth of the tolerance. Readings are what was entered: a drawing is no better than the gauge.';
