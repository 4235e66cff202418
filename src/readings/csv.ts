/** The readings as comma-separated values for a spreadsheet: one line a reading, every round of it. */
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
] as const;

/** By RFC 4180: comma, CR LF, fields in quotes where they need them, a header line first. */
export function readingsCsv(builds: readonly BuildReport[]): string {
  const lines = builds.flatMap((build) => build.readings.flatMap((line) => linesOf(build, line)));
  return [COLUMNS, ...lines].map((fields) => `${fields.map(field).join(',')}\r\n`).join('');
}

/** A place that was not read keeps its line, with nothing in it. */
function linesOf(build: BuildReport, line: ReadingLine): Field[][] {
  if (line.rounds.length === 0) return [fieldsOf(build, line, undefined)];
  return line.rounds.map((round) => fieldsOf(build, line, round));
}

type Field = string | number | undefined;

function fieldsOf(build: BuildReport, line: ReadingLine, round: Round | undefined): Field[] {
  const {engine, job, engineNumber} = build;
  const {sheet, step, item, name, place, unit, least, most, state} = line;
  const verdict = round === undefined || round === line.rounds.at(-1) ? state : (round.verdict ?? 'unjudged');
  return [
    ...[engine, nameOfBuild(build), job, engineNumber, sheet, step, item, name, place, round?.round],
    ...[round?.number ?? round?.value, unit, least, most, verdict, round?.by, round?.at],
  ];
}

/**
 * What a spreadsheet would take for a formula gets an apostrophe before it, which shows it as text (the cure of the
 * OWASP page on CSV injection; from memory). Numbers of our own are left alone: −0.001 is no formula.
 */
function field(value: Field): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  const safe = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Also behind blanks and controls, which some spreadsheets drop, and in the wide forms of East Asian keyboards. */
const FORMULA = /^[\s\p{Cc}]*[=+\-@＝＋－＠\t\r\n]/u;
