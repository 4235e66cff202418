/** One book as it stands at this moment, with what is worked out from it for as long as it stands so. */
import {type Ledger, ledger} from '../build/ledger.js';
import {type Life, lives} from '../build/story.js';
import {type CheckOptions, check} from '../findings/check.js';
import {beyond} from '../findings/check-jobs.js';
import type {Finding} from '../findings/model.js';
import {FINDINGS} from '../findings/registry.js';
import type {LoadedBook} from '../host/load.js';
import {textsOf} from '../host/places.js';
import type {Procedure} from '../procedure/model.js';
import type {Job} from '../spec/job.js';
import type {Specification} from '../spec/model.js';
import type {Source} from '../text/source.js';
import type {Mention} from './mention.js';
import {mentionsOf} from './mentions.js';

/** Lives until one of the book's texts changes. */
export class BookView {
  readonly loaded: LoadedBook;
  readonly #options: CheckOptions;
  #texts: ReadonlyMap<string, Source> | undefined;
  #plain: readonly Finding[] | undefined;
  readonly #reports = new Map<Job, readonly Finding[]>();
  #ofJobs: readonly Finding[] | undefined;
  #ledger: Ledger | undefined;
  #lives: ReadonlyMap<string, Life> | undefined;
  #mentions: readonly Mention[] | undefined;

  constructor(loaded: LoadedBook, options: CheckOptions = {}) {
    this.loaded = loaded;
    this.#options = {...options, alone: loaded.alone === true};
  }

  get spec(): Specification {
    return this.loaded.book.spec;
  }

  /** Every text of the book and its jobs, by name. */
  get texts(): ReadonlyMap<string, Source> {
    this.#texts ??= textsOf(this.loaded.book, this.loaded.jobs);
    return this.#texts;
  }

  /** What `wmark check` finds in the book and its jobs. */
  get findings(): readonly Finding[] {
    return [...this.plain, ...this.ofJobs];
  }

  /** In the book without any job. */
  get plain(): readonly Finding[] {
    this.#plain ??= this.#shown(check(this.loaded.book, this.#options).findings);
    return this.#plain;
  }

  /** What the jobs have beyond that. */
  get ofJobs(): readonly Finding[] {
    this.#ofJobs ??= beyond(
      this.plain,
      this.loaded.jobs.map((job) => ({job, findings: this.workOut(job)})),
    ).map(({finding}) => finding);
    return this.#ofJobs;
  }

  /** Checks the book for one job, as a part of the work for `ofJobs`. */
  workOut(job: Job): readonly Finding[] {
    const before = this.#reports.get(job);
    if (before !== undefined) return before;
    const findings = this.#shown(check({...this.loaded.book, job}, this.#options).findings);
    this.#reports.set(job, findings);
    return findings;
  }

  get ledger(): Ledger {
    this.#ledger ??= ledger(this.loaded.book, this.#options.memory);
    return this.#ledger;
  }

  /** The life of every item through the build, by its id. */
  get lives(): ReadonlyMap<string, Life> {
    this.#lives ??= lives(this.ledger);
    return this.#lives;
  }

  /** Every name in the book, in the order of its files. */
  get mentions(): readonly Mention[] {
    this.#mentions ??= mentionsOf(this.loaded.book, this.loaded.jobs);
    return this.#mentions;
  }

  procedure(file: string): Procedure | undefined {
    return this.loaded.book.procedures.find(({source}) => source.file === file);
  }

  /** A specification that lists no procedures is one that others build on: it leaves nothing undone. */
  #shown(all: readonly Finding[]): readonly Finding[] {
    const {book, alone} = this.loaded;
    return alone || book.spec.build.length > 0 ? all : all.filter(({name}) => READING.has(name));
  }
}

const READING: ReadonlySet<string> = new Set(
  FINDINGS.filter(({group}) => group === 'reading').map(({name}) => name),
);
