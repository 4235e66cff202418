/**
 * The texts that an editor works on: unsaved ones laid over those on disk, each read, parsed and joined once, for as
 * long as it stays as it is.
 */
import {stat} from 'node:fs/promises';
import {DISK} from '../host/disk.js';
import {type ReadText, readText, unsavedText} from '../host/read.js';
import type {Reader} from '../host/reader.js';
import {readProcedure} from '../procedure/read.js';
import {type Job, readJob} from '../spec/job.js';
import type {Specification} from '../spec/model.js';
import {type BookTexts, extendsOf, readSpecification} from '../spec/resolve.js';
import type {Source} from '../text/source.js';

/** One way in which a text was read: the unsaved text itself, or the state in which the file was on disk. */
interface Kept {
  readonly state: string;
  readonly shown: string;
  readonly read: ReadText;
}

/** Lives as long as the editor's session. Paths are true paths. */
export class ShelfTexts {
  readonly #unsaved = new Map<string, string>();
  readonly #kept = new Map<string, Kept>();
  readonly #paths = new Map<string, string>();
  readonly #extends = keptFor(extendsOf);
  readonly #procedures = keptFor(readProcedure);
  readonly #specifications = new WeakMap<Source, {readonly texts: BookTexts; readonly spec: Specification}>();
  readonly #jobs = new WeakMap<Source, {readonly spec: Specification; readonly job: Job}>();
  #reads = 0;

  readonly reader: Reader = {
    text: (path, shown, limit) => this.#text(path, shown, limit),
    disk: DISK,
    extendsOf: this.#extends,
    procedure: this.#procedures,
    specification: (texts) => this.#specification(texts),
    job: (source, spec) => this.#job(source, spec),
  };

  /** How many times a file was read from disk. */
  get reads(): number {
    return this.#reads;
  }

  /** Lays a text over a file; without one, takes it off again. */
  lay(path: string, text: string | undefined): void {
    if (text === undefined) this.#unsaved.delete(path);
    else this.#unsaved.set(path, text);
  }

  /** The true path of a file by the name under which it is shown. */
  pathOf(shown: string): string | undefined {
    return this.#paths.get(shown);
  }

  async #text(path: string, shown: string, limit: number): Promise<ReadText> {
    this.#paths.set(shown, path);
    const text = this.#unsaved.get(path);
    const state = text === undefined ? await stateOnDisk(path) : `=${text}`;
    const before = this.#kept.get(path);
    if (before !== undefined && before.state === state && before.shown === shown) return before.read;
    if (text === undefined) this.#reads++;
    const read = text === undefined ? await readText(path, shown, limit) : unsavedText(text, shown, limit);
    const kept = unchanged(before, read, shown);
    this.#kept.set(path, {state, shown, read: kept});
    return kept;
  }

  #specification(texts: BookTexts): Specification {
    const before = this.#specifications.get(texts.engine);
    if (before !== undefined && sameTexts(before.texts, texts)) return before.spec;
    const spec = readSpecification(texts);
    this.#specifications.set(texts.engine, {texts, spec});
    return spec;
  }

  #job(source: Source, spec: Specification): Job {
    const before = this.#jobs.get(source);
    if (before?.spec === spec) return before.job;
    const job = readJob(source, spec);
    this.#jobs.set(source, {spec, job});
    return job;
  }
}

/** Saving a file, or opening it, changes where its text comes from and not the text. */
function unchanged(before: Kept | undefined, read: ReadText, shown: string): ReadText {
  const same =
    before?.read.ok && read.ok && before.shown === shown && before.read.source.text === read.source.text;
  return same ? before.read : read;
}

function keptFor<T>(make: (source: Source) => T): (source: Source) => T {
  const kept = new WeakMap<Source, {readonly made: T}>();
  return (source) => {
    const before = kept.get(source);
    if (before !== undefined) return before.made;
    const made = make(source);
    kept.set(source, {made});
    return made;
  };
}

function sameTexts(one: BookTexts, other: BookTexts): boolean {
  return (
    one.shop === other.shop &&
    one.bases.length === other.bases.length &&
    one.bases.every((base, index) => base === other.bases[index])
  );
}

/** Changes with every save; a file that isn't there, or can't be asked, is read and says so itself. */
async function stateOnDisk(path: string): Promise<string> {
  try {
    const {ino, size, mtimeMs, ctimeMs} = await stat(path);
    return [ino, size, mtimeMs, ctimeMs].join(' ');
  } catch {
    return 'gone';
  }
}
