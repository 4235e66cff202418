/**
 * Checks a book: walks the ledger once, lets every finding look, and returns what they found, with waivers
 * applied, severities as the shop sets them, and every span checked.
 */
import type {Book} from '../build/book.js';
import {forJob} from '../build/for-job.js';
import type {Found} from '../build/found.js';
import {type Ledger, ledger} from '../build/ledger.js';
import type {Action} from '../build/program.js';
import {State} from '../build/state.js';
import type {Verb} from '../procedure/verbs.js';
import type {Specification} from '../spec/model.js';
import {addAll} from '../text/add-all.js';
import type {Problem} from '../text/problem.js';
import {onlyTheBookCanTell} from './alone.js';
import {doneAnywhere} from './done-anywhere.js';
import {withFollowOn} from './follow-on.js';
import {HOUSE_PREFIX, type HouseFault, type HouseFinding} from './house.js';
import {readHouse} from './house-form.js';
import {houseKind} from './house-kind.js';
import type {Memory} from './memory.js';
import type {ActionCheck, Context, Finding, FindingKind, SpecificationContext} from './model.js';
import {FINDINGS} from './registry.js';
import {joinedByName} from './same-name.js';
import {secondRound} from './second-round.js';
import {finish, type Raised, waivedInReading} from './settle.js';
import {severityNames} from './severity-names.js';
import {type Summary, summarise} from './summary.js';
import {toldByCause} from './told-by-cause.js';
import {workings} from './workings.js';

/** How a book is checked. */
export interface CheckOptions {
  /** Today's ISO 8601 date, for calibration; without it nothing is judged by the date. */
  readonly today?: string;
  /** The book holds one procedure that stands in no book: judged by what its own steps promise. */
  readonly alone?: boolean;
  /** Rules of the shop's own, beside ours. Their code runs; whoever passes them vouches for it. */
  readonly house?: readonly HouseFinding[];
  /** What is still the same as in an earlier check is taken over from it. */
  readonly memory?: Memory;
}

/** What a check says of a book. */
export interface CheckReport {
  /**
   * In order of file (specification first, then the build's order) and place; before all others a misspelt verb or name
   * from which some of them follow.
   */
  readonly findings: readonly Finding[];
  readonly summary: Summary;
  /** Rules of the house that went wrong: what they would have found may be missing from `findings`. */
  readonly houseFaults: readonly HouseFault[];
}

/**
 * Checks a book: every finding there is, in the whole of it. A book with a job is checked as it holds for that job.
 *
 * @throws {TypeError} where `house` is no list of rules, or two of one name.
 */
export function check(whole: Book, options: CheckOptions = {}): CheckReport {
  const report = checkAsItStands(whole, options);
  const {house: _, ...ours} = options;
  const recheck = (mended: Book) => checkAsItStands(mended, ours).findings;
  const findings = withFollowOn(report.findings, whole, recheck, options.memory?.mended);
  return {...report, findings};
}

function checkAsItStands(whole: Book, options: CheckOptions): CheckReport {
  const {memory} = options;
  const book = forJob(whole, memory);
  const run = ledger(book, memory);
  const houseFaults: HouseFault[] = [];
  const kinds = [...FINDINGS, ...houseKinds(options.house, (fault) => houseFaults.push(fault))];
  // By a specification that is half read nothing can be judged.
  const raised = book.spec.broken
    ? fromReading(readersOf(book), kinds)
    : [
        ...fromReading(
          joinedByName(
            toldByCause([...readersOf(book), ...run.program.problems], book),
            book,
            waivedInReading(run),
          ),
          kinds,
        ),
        ...fromReading(book.job?.problems ?? [], kinds),
        ...severityNames(book, kinds),
        ...fromReadingAlone(book.spec, run, kinds, memory),
        ...fromChecks(book, run, kinds, options),
      ];
  const gap = (whole.unread?.length ?? 0) > 0;
  const leftOut = options.alone || gap ? onlyTheBookCanTell(run, gap) : () => false;
  const findings = finish(book, run, kinds, raised, leftOut);
  return {findings, summary: summarise(book, run, findings), houseFaults};
}

function houseKinds(house: CheckOptions['house'], tell: (fault: HouseFault) => void): FindingKind[] {
  if (house === undefined || house.length === 0) return [];
  const read = readHouse(house);
  if (!read.ok) throw new TypeError(`house: ${read.says}`);
  return read.findings.map((finding) => houseKind(finding, tell));
}

/** What the readers of the files could not understand. */
function readersOf({problems, spec, procedures}: Book): readonly Problem[] {
  return [...problems, ...spec.problems, ...procedures.flatMap((procedure) => procedure.problems)];
}

function fromReading(problems: readonly Problem[], kinds: readonly FindingKind[]): Raised[] {
  const byName = new Map(kinds.map((kind) => [kind.name, kind]));
  return problems.flatMap((problem) => {
    const kind = byName.get(problem.name);
    return kind === undefined ? [] : [{kind, found: foundOf(problem)}];
  });
}

function foundOf({name, says, hint, ...found}: Problem): Found {
  return {...found, message: hint === undefined ? says : `${says}; ${hint}`};
}

/** What the checks see in the specification, and in each procedure against it, without walking the build. */
function fromReadingAlone(
  spec: Specification,
  {program, relations}: Ledger,
  kinds: readonly FindingKind[],
  memory: Memory | undefined,
): Raised[] {
  const worked = workings(spec, memory?.words);
  const find = (look: (context: SpecificationContext) => void): readonly Found[] => {
    const found: Found[] = [];
    look({spec, relations, worked, report: (one) => found.push(one)});
    return found;
  };
  return kinds.flatMap((kind) => {
    const {specification, part: judge} = kind;
    const found: Found[] = [];
    if (specification) {
      const look = () => find(specification);
      addAll(found, memory?.found(spec, kind, look) ?? look());
    }
    if (judge) {
      for (const part of program.parts) {
        const look = () => find((context) => judge(part, context));
        addAll(found, memory?.found(part, kind, look) ?? look());
      }
    }
    return found.map((one) => ({kind, found: one}));
  });
}

/** What the checks see along the ledger. */
function fromChecks(
  book: Book,
  run: Ledger,
  kinds: readonly FindingKind[],
  {today, memory}: CheckOptions,
): Raised[] {
  const raised: Raised[] = [];
  const kindOf = new Map<Found, FindingKind>();
  const waiting: {found: Found; places: readonly string[]}[] = [];
  const does = doneAnywhere(run);
  const told = secondRound(run.program);
  let settling = false;
  let state = new State();
  let doing: Action | undefined;

  // In the story of a rule of the house anything may stand.
  const inRound = ({name}: FindingKind, found: Found) =>
    doing === undefined || name.startsWith(HOUSE_PREFIX) ? found : told(found, doing);
  const worked = workings(book.spec, memory?.words);
  const contextOf = (kind: FindingKind): Context => ({
    book,
    spec: book.spec,
    worked,
    program: run.program,
    relations: run.relations,
    get state() {
      return state;
    },
    report(found) {
      if (!settling) raised.push({kind, found: inRound(kind, found)});
    },
    reportIfItLasts(plain, places) {
      const found = inRound(kind, plain);
      kindOf.set(found, kind);
      waiting.push({found, places});
    },
    does,
    today,
  });

  const contexts = new Map(kinds.map((kind) => [kind, contextOf(kind)]));
  const watchers = watchersByVerb(contexts);
  const each = (call: (kind: FindingKind, context: Context) => void) => {
    for (const [kind, context] of contexts) call(kind, context);
  };
  // Few kinds look at every step.
  const ofSteps = [...contexts].flatMap(([{step}, context]) => (step ? [{step, context}] : []));

  each((kind, context) => kind.book?.(context));
  run.walk({
    settling(on) {
      settling = on;
    },
    // Only what is judged before an action can leave a mark in the state; the rest need not look while a loop settles.
    step(step, now) {
      if (settling) return;
      state = now;
      for (const {step: look, context} of ofSteps) look(step, context);
    },
    branch(node, now) {
      state = now;
      each((kind, context) => kind.branch?.(node, context));
    },
    repeat(node, now, gained) {
      state = now;
      each((kind, context) => kind.repeat?.(node, gained, context));
    },
    before(action, now) {
      state = now;
      doing = action;
      for (const [check, context] of watchers.get(action.verb) ?? []) check(action, context);
      doing = undefined;
    },
    after(action, now) {
      const lasting = action.verb === 'torque' ? 'tight' : 'installed';
      for (const {found, places} of waiting.splice(0)) {
        for (const place of places) now.fault(lasting, action.item.id, place, found);
      }
    },
    end(now) {
      state = now;
      const lasting = new Set(now.faults());
      for (const [found, kind] of kindOf) if (lasting.has(found)) raised.push({kind, found});
      each((kind, context) => kind.end?.(context));
    },
  });
  return raised;
}

function watchersByVerb(contexts: ReadonlyMap<FindingKind, Context>) {
  const byVerb = new Map<Verb, [ActionCheck, Context][]>();
  for (const [kind, context] of contexts) {
    // A program has actions of a verb only on items of the kinds that it takes.
    for (const [verb, check] of Object.entries(kind.before ?? {}) as [Verb, ActionCheck][]) {
      const list = byVerb.get(verb) ?? [];
      list.push([check, context]);
      byVerb.set(verb, list);
    }
  }
  return byVerb;
}
