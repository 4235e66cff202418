/** From what the checks raised to what is reported: spans checked, waivers applied, severities set, sorted, each once. */
import type {Book} from '../build/book.js';
import type {Found} from '../build/found.js';
import type {Ledger} from '../build/ledger.js';
import {type StepRef, whereIn} from '../build/program.js';
import type {Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import {codeSpanAround} from '../text/code-span.js';
import type {Fix} from '../text/edit.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import {runBefore} from '../text/runs.js';
import type {Source, Where} from '../text/source.js';
import {foundFault, sourcesOf} from './found-fault.js';
import {isUnasked} from './house.js';
import type {Finding, FindingKind} from './model.js';
import {waiverStale} from './waiver-stale.js';

export interface Raised {
  readonly kind: FindingKind;
  readonly found: Found;
}

/** Findings that a waiver cannot silence: they are about waivers. */
const NOT_WAIVED = new Set(['waiver-without-reason', 'waiver-stale']);

export function finish(
  book: Book,
  run: Ledger,
  kinds: readonly FindingKind[],
  raised: readonly Raised[],
  leftOut: (one: Raised) => boolean,
): Finding[] {
  const sources = sourcesOf(book);
  // What was not judged, a waiver had no chance to silence.
  const waivers = book.spec.broken ? [] : waiversOf(run);
  // A waiver counts as used also where what it silences would be left out.
  const kept = once(raised).filter((one) => !waived(one, waivers, run) && !leftOut(one));
  const stale = staleWaivers(waivers, kinds, book.job !== undefined, (name, step) =>
    kept.some(({kind, found}) => kind.name === name && (found.step ?? stepAt(found.where, run)) === step),
  );
  return [...kept, ...stale].flatMap((one) => finding(book, sources, one)).sort(byPlace(fileOrder(book)));
}

interface Waiver {
  readonly step: StepRef;
  readonly tag: Tag;
  readonly name: string;
  readonly where: Where;
  used: boolean;
}

function waiversOf(run: Ledger): Waiver[] {
  return run.program.steps.flatMap((step) =>
    step.step.tags
      .filter(({verb}) => verb === 'waive')
      .flatMap((tag) =>
        tag.targets.map(({id, span}) => ({step, tag, name: id, where: whereIn(step, span), used: false})),
      ),
  );
}

/** Whether a step waives what a reader has to say of it. */
export function waivedInReading(run: Ledger): (problem: Problem) => boolean {
  const waivers = waiversOf(run).filter(({tag}) => clauseOf(tag, 'because') !== undefined);
  return ({name, where}) =>
    waivers.some((waiver) => waiver.name === name && waiver.step === stepAt(where, run));
}

/** A waiver without a reason silences nothing. */
function waived({kind, found}: Raised, waivers: readonly Waiver[], run: Ledger): boolean {
  if (NOT_WAIVED.has(kind.name)) return false;
  const named = waivers.filter(({name, tag}) => name === kind.name && clauseOf(tag, 'because') !== undefined);
  // Nearly every finding ends here, before the steps are searched for its place.
  if (named.length === 0) return false;
  const step = found.step ?? stepAt(found.where, run);
  const fitting = named.filter((waiver) => waiver.step === step);
  for (const waiver of fitting) waiver.used = true;
  return fitting.length > 0;
}

/** The innermost step that a place stands in. */
function stepAt({file, span}: Where, run: Ledger): StepRef | undefined {
  return run.program.steps
    .filter(
      ({procedure, step}) =>
        procedure.source.file === file && step.span.start <= span.start && span.end <= step.span.end,
    )
    .at(-1);
}

/** `isFound`: whether a finding of the name stands at the step. */
function staleWaivers(
  waivers: readonly Waiver[],
  kinds: readonly FindingKind[],
  ofJob: boolean,
  isFound: (name: string, step: StepRef) => boolean,
): Raised[] {
  // What only a job can have, the book without one can't judge.
  const unjudged = new Set(kinds.filter(({group}) => group === 'job' && !ofJob).map(({name}) => name));
  return waivers
    .filter(({used, name}) => !used && !unjudged.has(name) && !isUnasked(name, kinds))
    .filter(({tag}) => clauseOf(tag, 'because') !== undefined)
    .map(({name, where, tag, step}) => {
      const near = nearKind(name, kinds);
      const fix = near !== undefined && isFound(near, step) ? renamed(where, near) : without(tag, step);
      return {kind: waiverStale, found: {where, message: staleMessage(name, kinds, near), fix}};
    });
}

/** The waiver's code span is taken out, with the space before it. */
function without({span}: Tag, step: StepRef): Fix {
  const {file, text} = step.procedure.source;
  const {start, end} = codeSpanAround(span, text);
  const edits = [{span: {start: runBefore(text, start, /[ \t]/), end}, text: ''}];
  return {title: 'Take the waiver out', file, edits};
}

/** The finding that was meant by a name that is none. */
function nearKind(name: string, kinds: readonly FindingKind[]): string | undefined {
  const names = kinds.map((kind) => kind.name).filter((one) => !NOT_WAIVED.has(one));
  return kinds.some((kind) => kind.name === name) ? undefined : nearest(name, names);
}

function renamed({file, span}: Where, near: string): Fix {
  return {title: `Write ${near}`, file, edits: [{span, text: near}]};
}

function staleMessage(name: string, kinds: readonly FindingKind[], near: string | undefined): string {
  return kinds.some((kind) => kind.name === name)
    ? `the waiver of ${name} silences nothing at this step; take it out`
    : `the waiver names ${name}, which is not a finding; ${near === undefined ? '`wmark why` lists them all' : `did you mean ${near}?`}`;
}

function finding(book: Book, sources: ReadonlyMap<string, Source>, {kind, found}: Raised): Finding[] {
  const severity = book.spec.shop.severity.get(kind.name)?.value ?? kind.severity;
  if (severity === 'off') return [];
  const fault = foundFault(found, sources);
  if (fault !== undefined) throw new Error(`${kind.name} reports what ${fault}`);
  const {where, message, item, place, story = [], related = [], fix} = found;
  return [
    {
      name: kind.name,
      severity,
      where,
      message,
      ...(item !== undefined && {item}),
      ...(place !== undefined && {place}),
      story,
      related,
      ...(fix && {fix}),
    },
  ];
}

function once(raised: readonly Raised[]): Raised[] {
  const seen = new Set<string>();
  return raised.filter(({kind, found}) => {
    const {file, span} = found.where;
    const key = JSON.stringify([kind.name, file, span.start, span.end, found.message]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function fileOrder(book: Book): Map<string, number> {
  const files = [...book.spec.files.keys(), ...book.procedures.map(({source}) => source.file)];
  return new Map(files.map((file, index) => [file, index]));
}

function byPlace(order: ReadonlyMap<string, number>) {
  const rank = ({where}: Finding) => order.get(where.file) ?? -1;
  return (a: Finding, b: Finding) =>
    rank(a) - rank(b) ||
    a.where.span.start - b.where.span.start ||
    a.where.span.end - b.where.span.end ||
    (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);
}
