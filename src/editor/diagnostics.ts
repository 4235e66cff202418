/** Findings as diagnostics: the story of each as related information, its documentation behind its name. */
import type {Diagnostic, DiagnosticRelatedInformation} from 'vscode-languageserver';
import type {Finding} from '../findings/model.js';
import {type Failure, failureText} from '../host/failure.js';
import {findingAddress} from '../host/package.js';
import type {Source} from '../text/source.js';
import type {BookView} from './book-view.js';
import {type Addresses, locationOf, NOWHERE, rangeOf} from './convert.js';
import type {Shelf} from './desk.js';

/** The origin of every diagnostic, as the client shows it. */
const ORIGIN = 'wmark';

/** Severities of the protocol. */
const SEVERITY = {error: 1, warning: 2, information: 3} as const;

/** What the client may fade out (1 in the protocol): text that does nothing. */
const DOES_NOTHING: ReadonlySet<string> = new Set(['unreachable-step', 'waiver-stale']);

/**
 * By name of file, for every file of the shelf: an empty list takes off what stood there. `findingsOf` gives what is
 * known of a book so far.
 */
export function diagnosticsOf(
  shelf: Shelf,
  addresses: Addresses,
  findingsOf: (view: BookView) => readonly Finding[] = ({findings}) => findings,
): ReadonlyMap<string, Diagnostic[]> {
  const found = new Map<string, Map<string, Diagnostic>>();
  const add = (file: string, key: string, diagnostic: () => Diagnostic) => {
    const list = found.get(file) ?? new Map<string, Diagnostic>();
    found.set(file, list);
    // Books that share a file have much in common.
    if (!list.has(key)) list.set(key, diagnostic());
  };
  for (const view of shelf.views) {
    for (const file of view.texts.keys()) if (!found.has(file)) found.set(file, new Map());
    for (const finding of findingsOf(view)) {
      add(finding.where.file, keyOf(finding), () => diagnosticOf(finding, view.texts, addresses));
    }
  }
  for (const failure of shelf.failures) {
    const {where} = failure;
    if (where) add(where.file, failureText(failure), () => failureDiagnostic(failure, where));
  }
  return new Map([...found].map(([file, list]) => [file, [...list.values()]]));
}

/** The findings of a book that stand in one file. */
export function findingsIn(view: BookView, file: string): readonly Finding[] {
  return view.findings.filter(({where}) => where.file === file);
}

function keyOf({name, where: {span}, message}: Finding): string {
  return `${name} ${span.start} ${span.end} ${message}`;
}

export function diagnosticOf(
  finding: Finding,
  texts: ReadonlyMap<string, Source>,
  addresses: Addresses,
): Diagnostic {
  const {name, severity, where, message, story, related} = finding;
  const from = texts.get(where.file);
  const told = [...story, ...related].map(
    (remark): DiagnosticRelatedInformation => ({
      location: locationOf(remark.where, texts, addresses),
      message: remark.says,
    }),
  );
  return {
    range: from === undefined ? NOWHERE : rangeOf(from, where.span),
    severity: SEVERITY[severity],
    code: name,
    codeDescription: {href: findingAddress(name)},
    source: ORIGIN,
    message,
    ...(DOES_NOTHING.has(name) && {tags: [1]}),
    ...(told.length > 0 && {relatedInformation: told}),
  };
}

/** A book that can't be read at all; its place counts from 1. */
function failureDiagnostic(
  {says, hint}: Failure,
  {line = 1, column = 1}: NonNullable<Failure['where']>,
): Diagnostic {
  const at = {line: line - 1, character: column - 1};
  return {
    range: {start: at, end: at},
    severity: SEVERITY.error,
    code: 'file-unreadable',
    codeDescription: {href: findingAddress('file-unreadable')},
    source: ORIGIN,
    message: hint === undefined ? says : `${says}; ${hint}`,
  };
}
