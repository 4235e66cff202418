/**
 * What a check may take over from those before it, for an owner who checks the same book over and over: what was read
 * from words, and what was found in a specification, or in a procedure against it, that is still the same.
 */
import {type ForJob, procedureFor} from '../build/for-job.js';
import type {Found} from '../build/found.js';
import {specificationFor} from '../build/job-specification.js';
import type {Pieces} from '../build/ledger.js';
import {type Part, readPart} from '../build/program.js';
import {type ItemRelations, relations} from '../build/relations.js';
import type {Procedure} from '../procedure/model.js';
import type {Job} from '../spec/job.js';
import type {Specification} from '../spec/model.js';
import {commandsIn} from './commands.js';
import {type ReadMended, readMended} from './follow-on.js';
import type {FindingKind} from './model.js';
import {numbersIn} from './prose-numbers.js';
import type {Words} from './workings.js';

/** Lives as long as its owner. What hangs on a text that is gone goes with it. */
export class Memory implements ForJob, Pieces {
  readonly words: Words = {commands: byText(commandsIn), numbers: byText(numbersIn)};
  readonly #parts = new WeakMap<Specification, WeakMap<Procedure, {place: number; part: Part}>>();
  readonly #own = new WeakMap<Job, {all: Specification; own: Specification}>();
  readonly #copies = new WeakMap<Specification, WeakMap<Procedure, Procedure>>();
  readonly #mended = new WeakMap<Procedure, Procedure>();
  readonly #relations = new WeakMap<Specification, ItemRelations>();
  readonly #found = new WeakMap<Specification | Part, Map<FindingKind, readonly Found[]>>();

  readonly part: typeof readPart = (procedure, spec, place) => {
    const parts = within(this.#parts, spec);
    const before = parts.get(procedure);
    if (before?.place === place) return before.part;
    const part = readPart(procedure, spec, place);
    parts.set(procedure, {place, part});
    return part;
  };

  readonly specification: typeof specificationFor = (job, all) => {
    const before = this.#own.get(job);
    if (before?.all === all) return before.own;
    const own = specificationFor(job, all);
    this.#own.set(job, {all, own});
    return own;
  };

  // The specification of a job is its own, so that it stands for the job's options too.
  readonly procedure: typeof procedureFor = (procedure, fitting) => {
    const copies = within(this.#copies, fitting.own);
    const before = copies.get(procedure);
    if (before !== undefined) return before;
    const copy = procedureFor(procedure, fitting);
    copies.set(procedure, copy);
    return copy;
  };

  readonly mended: ReadMended = (procedure, text) => {
    const before = this.#mended.get(procedure);
    if (before?.source.text === text) return before;
    const now = readMended(procedure, text);
    this.#mended.set(procedure, now);
    return now;
  };

  readonly relations: typeof relations = (spec) => {
    const before = this.#relations.get(spec);
    if (before !== undefined) return before;
    const now = relations(spec);
    this.#relations.set(spec, now);
    return now;
  };

  /** What a kind finds in a specification, or in a part of which it holds that the specification is the same. */
  found(of: Specification | Part, kind: FindingKind, find: () => readonly Found[]): readonly Found[] {
    const all = this.#found.get(of) ?? new Map<FindingKind, readonly Found[]>();
    this.#found.set(of, all);
    const before = all.get(kind);
    if (before !== undefined) return before;
    const now = find();
    all.set(kind, now);
    return now;
  }
}

/** What is kept for one specification. */
function within<V>(all: WeakMap<Specification, WeakMap<Procedure, V>>, spec: Specification) {
  const kept = all.get(spec) ?? new WeakMap<Procedure, V>();
  all.set(spec, kept);
  return kept;
}

/** In characters, of the texts that are remembered at least: those of a book of some ten thousand steps. */
const MOST = 2_000_000;

/** Forgets the texts that nobody asked for since half of all were asked for. */
function byText<V>(make: (text: string) => V): (text: string) => V {
  let now = new Map<string, V>();
  let before = now;
  let length = 0;
  return (text) => {
    const kept = now.get(text);
    if (kept !== undefined) return kept;
    const made = before.get(text) ?? make(text);
    now.set(text, made);
    length += text.length;
    if (length > MOST) {
      before = now;
      now = new Map();
      length = 0;
    }
    return made;
  };
}
