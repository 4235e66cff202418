/** Tells the client that the server works, where that takes longer than one waits without wondering. */
import type {Connection} from 'vscode-languageserver';

/** Milliseconds. */
const WONDERING = 400;

/** Lives as long as the session. */
export class Patience {
  readonly #connection: Connection;
  readonly #after: number;
  #isTelling = false;

  /** `after` so many milliseconds of work the client is told. */
  constructor(connection: Connection, after = WONDERING) {
    this.#connection = connection;
    this.#after = after;
  }

  /** Waits for the work, and tells of it for as long as it goes on. */
  async with<T>(work: Promise<T>): Promise<T> {
    // A client that shows no progress has nothing to say about it that anybody should hear.
    const late = setTimeout(() => void this.#tellOf(work).catch(() => undefined), this.#after);
    try {
      return await work;
    } finally {
      clearTimeout(late);
    }
  }

  /** Several works at once are one to whoever waits. */
  async #tellOf(work: Promise<unknown>): Promise<void> {
    if (this.#isTelling) return;
    this.#isTelling = true;
    try {
      const shown = await this.#connection.window.createWorkDoneProgress();
      shown.begin('Witness Mark', undefined, 'reading the books');
      await work.catch(() => undefined);
      shown.done();
    } finally {
      this.#isTelling = false;
    }
  }
}
