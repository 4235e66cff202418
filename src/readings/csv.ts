/** The readings as comma-separated values for a spreadsheet: one line a reading, every round of it. */
import {type CsvField, csvText} from '../text/csv.js';
import {nameOfBuild} from './builds.js';
import type {BuildReport, ReadingLine, Round} from './report.js';

const COLUMNS = [
  'engine',
  'build',
  'job',
  'engine number',
  'sheet',
  'step',
  'item',
  'name',
  'place',
  'round',
  'value',
  'unit',
  'least',
  'most',
  'verdict',
  'by',
  'at',
  'accepted by',
  'because',
] as const;

/** A header line first. */
export function readingsCsv(builds: readonly BuildReport[]): string {
  const lines = builds.flatMap((build) => build.readings.flatMap((line) => linesOf(build, line)));
  return csvText([COLUMNS, ...lines]);
}

/** A place that was not read keeps its line, with nothing in it. */
function linesOf(build: BuildReport, line: ReadingLine): CsvField[][] {
  if (line.rounds.length === 0) return [fieldsOf(build, line, undefined)];
  return line.rounds.map((round) => fieldsOf(build, line, round));
}

function fieldsOf(build: BuildReport, line: ReadingLine, round: Round | undefined): CsvField[] {
  const {engine, job, engineNumber} = build;
  const {sheet, step, item, name, place, unit, least, most, state} = line;
  const verdict = round === undefined || round === line.rounds.at(-1) ? state : (round.verdict ?? 'unjudged');
  return [
    ...[engine, nameOfBuild(build), job, engineNumber, sheet, step, item, name, place, round?.round],
    ...[round?.number ?? round?.value, unit, least, most, verdict, round?.by, round?.at],
    ...[round?.accepted?.by, round?.accepted?.because],
  ];
}
