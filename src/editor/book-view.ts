/** One book as it stands at this moment, with what is worked out from it for as long as it stands so. */
import {type Ledger, ledger} from '../build/ledger.js';
import {type Life, lives} from '../build/story.js';
import {checkWithJobs} from '../findings/check-jobs.js';
import type {Finding} from '../findings/model.js';
import {FINDINGS} from '../findings/registry.js';
import type {LoadedBook} from '../host/load.js';
import {textsOf} from '../host/places.js';
import type {Procedure} from '../procedure/model.js';
import type {Specification} from '../spec/model.js';
import type {Source} from '../text/source.js';
import type {Mention} from './mention.js';
import {mentionsOf} from './mentions.js';

/** Lives until one of the book's texts changes. */
export class BookView {
  readonly loaded: LoadedBook;
  readonly #today: string | undefined;
  #texts: ReadonlyMap<string, Source> | undefined;
  #findings: readonly Finding[] | undefined;
  #ledger: Ledger | undefined;
  #lives: ReadonlyMap<string, Life> | undefined;
  #mentions: readonly Mention[] | undefined;

  constructor(loaded: LoadedBook, today?: string) {
    this.loaded = loaded;
    this.#today = today;
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
    this.#findings ??= this.#check();
    return this.#findings;
  }

  get ledger(): Ledger {
    this.#ledger ??= ledger(this.loaded.book);
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

  #check(): readonly Finding[] {
    const {book, jobs, alone} = this.loaded;
    const today = this.#today;
    const options = {...(today !== undefined && {today}), alone: alone === true};
    const {findings, ofJobs} = checkWithJobs(book, jobs, options);
    const all = [...findings, ...ofJobs.map(({finding}) => finding)];
    // A specification that lists no procedures is one that others build on: it leaves nothing undone.
    return alone || book.spec.build.length > 0 ? all : all.filter(({name}) => READING.has(name));
  }
}

const READING: ReadonlySet<string> = new Set(
  FINDINGS.filter(({group}) => group === 'reading').map(({name}) => name),
);
