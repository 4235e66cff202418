/** Runs a rule of the house as one of our own kinds, so that a slip in it is told as its own and costs nobody else's findings. */
import type {Found} from '../build/found.js';
import {whereIn} from '../build/program.js';
import type {Source, Where} from '../text/source.js';
import {foundFault, sourcesOf} from './found-fault.js';
import type {HouseContext, HouseFault, HouseFinding} from './house.js';
import {formFault, strangeFile} from './house-form.js';
import type {ActionCheck, Context, FindingKind} from './model.js';

/** The rule as one of our own kinds, for one check; `tell` is called at most once. */
export function houseKind(finding: HouseFinding, tell: (fault: HouseFault) => void): FindingKind {
  const {
    name,
    severity,
    group = 'house',
    summary,
    why,
    source = 'the practice of the house',
    example,
  } = finding;
  const {book, step, before, end} = finding;
  const guarded = guard(name, tell);
  return {
    ...{name, severity, group, summary, why, source},
    ...(example && {example}),
    ...(book && {book: (context) => guarded('book', undefined, context, (own) => book.call(finding, own))}),
    ...(step && {
      step: (ref, context) =>
        guarded('step', whereIn(ref, ref.step.headSpan), context, (own) => step.call(finding, ref, own)),
    }),
    ...(before && {before: guardedActions(before, guarded)}),
    ...(end && {end: (context) => guarded('end', undefined, context, (own) => end.call(finding, own))}),
  };
}

type Guarded = (
  during: string,
  where: Where | undefined,
  context: Context,
  call: (own: HouseContext) => unknown,
) => void;

function guardedActions(
  before: NonNullable<HouseFinding['before']>,
  guarded: Guarded,
): NonNullable<FindingKind['before']> {
  const checks = Object.entries(before).map(([verb, check]): [string, ActionCheck] => [
    verb,
    (action, context) =>
      guarded(`before ${verb}`, whereIn(action.step, action.tag.span), context, (own) =>
        check.call(before, action, own),
      ),
  ]);
  return Object.fromEntries(checks);
}

/** Once a rule has thrown it is asked no more: what it would say from then on could be anything. */
function guard(name: string, tell: (fault: HouseFault) => void): Guarded {
  let broken = false;
  let sources: ReadonlyMap<string, Source> | undefined;
  return (during, where, context, call) => {
    if (broken) return;
    sources ??= sourcesOf(context.book);
    try {
      const given = call(houseContext(during, context, sources));
      if (given instanceof Promise) {
        given.catch(() => undefined);
        throw new TypeError('it is asynchronous, and the check does not wait for it');
      }
    } catch (error) {
      broken = true;
      tell({name, during, ...(where && {where}), ...said(error)});
    }
  };
}

function said(error: unknown): Pick<HouseFault, 'says' | 'stack'> {
  if (!(error instanceof Error)) return {says: String(error)};
  return {says: `${error.name}: ${error.message}`, ...(error.stack !== undefined && {stack: error.stack})};
}

function strange(found: Found, sources: ReadonlyMap<string, Source>): string | undefined {
  const file = strangeFile(found, sources);
  return file && `points into ${file}, which is no file of the book`;
}

const LASTING: ReadonlySet<string> = new Set(['before install', 'before torque']);

function houseContext(during: string, context: Context, sources: ReadonlyMap<string, Source>): HouseContext {
  const {book, state, does, today} = context;
  const sound = (found: Found) => {
    const fault = formFault(found) ?? strange(found, sources) ?? foundFault(found, sources);
    if (fault !== undefined) throw new TypeError(`what it reports ${fault}`);
    return found;
  };
  return {
    book,
    state: {
      holds: (kind, item, place) => state.holds(kind, item, place),
      get: (kind, item, place) => state.get(kind, item, place),
    },
    report: (found) => context.report(sound(found)),
    reportIfItLasts(found, places) {
      if (!LASTING.has(during))
        throw new TypeError('reportIfItLasts is for before.install and before.torque');
      context.reportIfItLasts(sound(found), [...places]);
    },
    does,
    today,
  };
}
