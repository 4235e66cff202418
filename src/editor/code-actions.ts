/** Cures for findings: the fix of each, the same fix for all of its kind in the book, and a waiver to be given a reason. */
import type {CodeAction} from 'vscode-languageserver';
import type {Finding} from '../findings/model.js';
import type {Step} from '../procedure/model.js';
import type {Edit} from '../text/edit.js';
import type {Span} from '../text/source.js';
import type {BookView} from './book-view.js';
import {type Addresses, workspaceEditOf} from './convert.js';
import {diagnosticOf, findingsIn} from './diagnostics.js';

/** What can be done about the findings that touch a span of a file. */
export function codeActions(view: BookView, file: string, span: Span, addresses: Addresses): CodeAction[] {
  const here = findingsIn(view, file).filter(
    ({where}) => where.span.start <= span.end && span.start <= where.span.end,
  );
  const kinds = [...new Set(here.filter(({fix}) => fix !== undefined).map(({name}) => name))];
  return [
    ...here.flatMap((finding) => fixOf(finding, view, addresses)),
    ...kinds.flatMap((name) => fixAllOf(name, view, addresses)),
    ...here.flatMap((finding) => waiverOf(finding, view, addresses)),
  ];
}

function fixOf(finding: Finding, view: BookView, addresses: Addresses): CodeAction[] {
  const {fix} = finding;
  if (fix === undefined) return [];
  return [
    {
      title: fix.title,
      kind: 'quickfix',
      isPreferred: true,
      diagnostics: [diagnosticOf(finding, view.texts, addresses)],
      edit: workspaceEditOf(new Map([[fix.file, fix.edits]]), view.texts, addresses),
    },
  ];
}

function fixAllOf(name: string, view: BookView, addresses: Addresses): CodeAction[] {
  const all = view.findings.filter((finding) => finding.name === name && finding.fix !== undefined);
  if (all.length < 2) return [];
  return [
    {
      title: `Mend all ${all.length} of this kind in the book (${name})`,
      kind: 'quickfix',
      diagnostics: all.map((finding) => diagnosticOf(finding, view.texts, addresses)),
      edit: workspaceEditOf(editsTogether(all), view.texts, addresses),
    },
  ];
}

/**
 * The edits of many fixes at once. A fix of which an edit would meet another's is left for the next time, as one edit
 * alone could do harm.
 */
export function editsTogether(findings: readonly Finding[]): ReadonlyMap<string, readonly Edit[]> {
  const together = new Map<string, Edit[]>();
  for (const {fix} of findings) {
    if (fix === undefined) continue;
    const edits = together.get(fix.file) ?? [];
    together.set(fix.file, edits);
    if (fix.edits.every((edit) => edits.every((other) => areApart(edit, other)))) edits.push(...fix.edits);
  }
  for (const edits of together.values()) edits.sort((one, other) => one.span.start - other.span.start);
  return together;
}

/** Two insertions in one place follow each other, unless they are one and the same. */
function areApart(one: Edit, other: Edit): boolean {
  const [a, b] = [one.span, other.span];
  if (a.start === a.end && b.start === b.end && a.start === b.start) return one.text !== other.text;
  return a.end < b.start || b.end < a.start;
}

/** About waivers themselves, or not about a step: nothing that a waiver could silence. */
const NOT_WAIVED: ReadonlySet<string> = new Set(['waiver-without-reason', 'waiver-stale', 'tag-form']);

/** Without a reason the waiver silences nothing and is a finding itself: the reason is for a person to write. */
function waiverOf(finding: Finding, view: BookView, addresses: Addresses): CodeAction[] {
  const {name, where} = finding;
  const procedure = view.procedure(where.file);
  const step = procedure?.steps.filter((one) => holds(one.span, where.span)).at(-1);
  if (procedure === undefined || step === undefined || NOT_WAIVED.has(name)) return [];
  const edit = {span: endOf(step), text: ` \`waive: ${name}\``};
  return [
    {
      title: `Waive ${name} at step ${step.number}: write the reason behind it`,
      kind: 'quickfix',
      diagnostics: [diagnosticOf(finding, view.texts, addresses)],
      edit: workspaceEditOf(new Map([[where.file, [edit]]]), view.texts, addresses),
    },
  ];
}

function holds(outer: Span, inner: Span): boolean {
  return outer.start <= inner.start && inner.end <= outer.end;
}

/** Behind the last tag of the step, or behind its first line. */
function endOf({tags, headSpan}: Step): Span {
  const last = tags.at(-1);
  const end = last === undefined ? headSpan.end : last.span.end + 1;
  return {start: end, end};
}
