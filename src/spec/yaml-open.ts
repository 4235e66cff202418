/** What a YAML text opens and never closes: where the quote or the bracket stands, which is where a person mends it. */
import type {Span} from '../text/source.js';

/** What was opened and not closed, or closed only by what was meant to open the next. */
export interface LeftOpen {
  /** Texts in quotes that go on over a line's end, or are closed by none. */
  readonly quotes: readonly Span[];
  /** The bracket alone. */
  readonly brackets: readonly Span[];
}

const CLOSES: Readonly<Record<string, string>> = {']': '[', '}': '{'};
/** The lexer's own marks: a plain text follows; brackets end here because the indentation does. */
const [PLAIN, FLOW_END] = ['\x1f', '\x18'];

function isClosed(word: string): boolean {
  return word.length > 1 && word.endsWith(word.charAt(0));
}

/** Lives while a text is read: sees every word of the lexer. */
export class Openings implements LeftOpen {
  readonly quotes: Span[] = [];
  readonly brackets: Span[] = [];
  readonly #open: {readonly bracket: string; readonly start: number}[] = [];
  #before = '';

  /** `start` is where the word stands in the text. */
  see(word: string, start: number): void {
    const isPlain = this.#before === PLAIN;
    this.#before = word;
    if (isPlain) return;
    if (word === '[' || word === '{') this.#open.push({bracket: word, start});
    else if (word === FLOW_END) this.#leave(0);
    else if (CLOSES[word] !== undefined) this.#close(CLOSES[word]);
    else if (/^["']/.test(word) && (word.includes('\n') || !isClosed(word)))
      this.quotes.push({start, end: start + word.length});
  }

  /** What is closed from outside leaves open what stands within it; what is closed as another was opened, itself. */
  #close(bracket: string): void {
    const at = this.#open.findLastIndex((one) => one.bracket === bracket);
    if (at < 0) this.#leave(Math.max(0, this.#open.length - 1));
    else {
      this.#leave(at + 1);
      this.#open.pop();
    }
  }

  #leave(from: number): void {
    for (const {start} of this.#open.splice(from)) this.brackets.push({start, end: start + 1});
  }
}
