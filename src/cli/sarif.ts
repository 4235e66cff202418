/** SARIF 2.1.0 (OASIS Standard, 27 March 2020): one run of the tool as a log that code-scanning services read. */
import {isAbsolute} from 'node:path';
import {pathToFileURL} from 'node:url';
import {version} from './version.js';

/** A place as every report of the tool gives it: counts from 1, columns in UTF-16 units, the end exclusive. */
export interface SarifPlace {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

export interface SarifRule {
  readonly id: string;
  readonly says: string;
  readonly why: string;
  readonly level: Level;
}

export type Level = 'error' | 'warning' | 'note';

/** What any report has to say in a form that a service can show beside the line. */
export interface SarifResult {
  readonly ruleId: string;
  readonly level: Level;
  readonly message: string;
  readonly place: SarifPlace;
  readonly related: readonly (SarifPlace & {readonly message: string})[];
  readonly fix?: {readonly title: string; readonly edits: readonly (SarifPlace & {readonly text: string})[]};
  /** The same for the same result when lines move. */
  readonly fingerprint: string;
  readonly properties?: Readonly<Record<string, unknown>>;
  /** Why it is known and does not count. */
  readonly known?: string;
}

/** `rules` that no result is of are left out; `notes` are what the run could not see. */
export function sarifLog(
  rules: readonly SarifRule[],
  results: readonly SarifResult[],
  notes: readonly string[] = [],
): string {
  // Services list every rule of a run: those that found nothing would only be in the way.
  const used = rules.filter(({id}) => results.some(({ruleId}) => ruleId === id));
  const index = new Map(used.map(({id}, at) => [id, at]));
  const log = {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {driver: {name: 'wmark', ...semantic(), rules: used.map(rule)}},
        columnKind: 'utf16CodeUnits',
        ...(notes.length > 0 && {
          invocations: [
            {
              executionSuccessful: true,
              toolExecutionNotifications: notes.map((text) => ({level: 'warning', message: {text}})),
            },
          ],
        }),
        results: numbered(results).map((one) => result(one, index.get(one.ruleId))),
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

function semantic() {
  return /^\d+\.\d+\.\d+/.test(version) ? {semanticVersion: version} : {version};
}

function rule({id, says, why, level}: SarifRule) {
  return {
    id,
    shortDescription: {text: says},
    fullDescription: {text: why},
    defaultConfiguration: {level},
  };
}

/** The second of two results of one meaning gets a fingerprint of its own. */
function numbered(results: readonly SarifResult[]): SarifResult[] {
  const seen = new Map<string, number>();
  return results.map((one) => {
    const count = (seen.get(one.fingerprint) ?? 0) + 1;
    seen.set(one.fingerprint, count);
    return count === 1 ? one : {...one, fingerprint: `${one.fingerprint}:${count}`};
  });
}

function result(
  {ruleId, level, message, place, related, fix, fingerprint, properties, known}: SarifResult,
  ruleIndex = -1,
) {
  return {
    ruleId,
    ...(ruleIndex >= 0 && {ruleIndex}),
    level,
    message: {text: message},
    locations: [{physicalLocation: physical(place)}],
    ...(related.length > 0 && {
      relatedLocations: related.map((one, id) => ({
        id,
        message: {text: one.message},
        physicalLocation: physical(one),
      })),
    }),
    partialFingerprints: {'wmarkMeaning/v1': fingerprint},
    ...(fix && fix.edits.length > 0 && {fixes: [fixOf(fix)]}),
    ...(known !== undefined && {suppressions: [{kind: 'external', justification: known}]}),
    ...(properties && {properties}),
  };
}

function fixOf({title, edits}: NonNullable<SarifResult['fix']>) {
  const [first] = edits;
  return {
    description: {text: title},
    artifactChanges: [
      {
        artifactLocation: artifact(first?.file ?? ''),
        replacements: edits.map((edit) => ({
          deletedRegion: region(edit),
          insertedContent: {text: edit.text},
        })),
      },
    ],
  };
}

function physical(place: SarifPlace) {
  return {artifactLocation: artifact(place.file), region: region(place)};
}

function region({line, column, endLine, endColumn}: SarifPlace) {
  return {startLine: line, startColumn: column, endLine, endColumn};
}

function artifact(file: string) {
  if (isAbsolute(file)) return {uri: pathToFileURL(file).href};
  return {uri: file.split('/').map(encodeURIComponent).join('/'), uriBaseId: '%SRCROOT%'};
}
