/**
 * Which actions a piece of shop prose commands: an imperative at the start of a sentence, after an opening clause, or
 * further along a chain of imperatives. What is forbidden, told, or asked only under a condition is no command.
 */
import type {Verb} from '../procedure/verbs.js';
import type {Span} from '../text/source.js';
import {entryOf, fitting} from './lexicon.js';
import {type Sentence, sentences, type Word} from './sentences.js';
import {DETERMINERS, declares, isPart} from './shop-grammar.js';

export interface Command {
  readonly verb: Verb;
  /** Verbs of which a tag makes the command good. */
  readonly fits: readonly Verb[];
  /** The commanding word, as an offset into the prose. */
  readonly span: Span;
  /** What is commanded: the word and the rest of its clause. */
  readonly clause: Span;
}

/** The commands of a text, in order. Markup must have been blanked out. */
export function commandsIn(text: string): Command[] {
  return sentences(text).flatMap((sentence) => new Reader(sentence).commands());
}

const CONDITIONS = new Set(['if', 'where', 'should', 'unless', 'whenever']);
const NEGATIONS = new Set(['not', "don't", 'don’t', 'never', 'no', 'avoid', 'cannot', 'neither']);
const LEADS = new Set(
  'then now first next finally last lastly again also and but so please just always now still afterwards'.split(
    ' ',
  ),
);
/** `be sure to oil`: the command is what follows. */
const REMINDERS = [
  ['be', 'sure', 'to'],
  ['be', 'careful', 'to'],
  ['remember', 'to'],
  ['take', 'care', 'to'],
  ['make', 'sure', 'to'],
];
/** A sentence that opens so has its command, if any, behind a comma. */
const OPENINGS = new Set(
  `before after with without when once while using to as now until at in on from for by having during since
  through because`.split(/\s+/),
);
/** Words that cut a clause short: what follows says when, why or how far. */
const SUBORDINATORS = new Set(
  'before after until so while when once if unless because where that which who since than as'.split(' '),
);
/** Commands that are no action of ours, but keep a sentence in the imperative. */
const OTHERS = new Set(
  `hold keep use make work support prop stop start wait mask heat warm cool mark number raise align line cover plug
  protect discard mind watch stand store tag see be begin repeat square swing hammer catch steady open close`.split(
    /\s+/,
  ),
);

/**
 * No rule looks farther into a clause: what a command is about stands near it, and the time of some rules grows with
 * the square of what they look at.
 */
const MOST_WORDS = 80;
const MOST_CHARACTERS = 600;

/** Lives while one sentence is read, from left to right: remembers whether a negation still holds. */
class Reader {
  readonly #words: Sentence;
  #negated = false;

  constructor(sentence: Sentence) {
    this.#words = sentence;
  }

  commands(): Command[] {
    const start = this.#skipLeads(0);
    const first = this.#word(start);
    if (first === undefined || CONDITIONS.has(first)) return [];
    const found: Command[] = [];
    for (const slot of this.#slots(start)) {
      const command = this.#commandAt(slot);
      if (command !== undefined) found.push(command);
    }
    return found.length > 0 && this.#isConditional() ? found.slice(0, -1) : found;
  }

  /** Places at which a command may stand, as indexes of words. */
  *#slots(start: number): Generator<number> {
    const first = this.#word(start) ?? '';
    const opening = OPENINGS.has(first);
    const imperative = !opening && this.#opensImperative(start);
    if (imperative) yield start;
    let free = imperative;
    for (let index = start + 1; index < this.#words.length; index++) {
      const word = this.#word(index);
      if (word === ',') {
        const next = this.#word(index + 1);
        free ||= opening || next === 'so' || next === 'then';
        if (free) yield this.#skipLeads(index + 1);
      } else if (free && (word === 'and' || word === 'then') && this.#word(index - 1) !== ',') {
        yield this.#skipLeads(index);
      }
    }
  }

  #opensImperative(start: number): boolean {
    const word = this.#word(start) ?? '';
    if (NEGATIONS.has(word) || (word === 'do' && this.#word(start + 1) === 'not')) return true;
    const entry = entryOf(word);
    if (OTHERS.has(word) || (entry !== undefined && (!entry.noun || this.#isVerb(start)))) return true;
    // An unknown word with an object after it: `align the marks`.
    return !DETERMINERS.has(word) && /^[a-z]/.test(word) && DETERMINERS.has(this.#word(start + 1) ?? '');
  }

  #commandAt(index: number): Command | undefined {
    const at = this.#words[index];
    const word = this.#word(index) ?? '';
    if (at === undefined || this.#forbids(index)) return undefined;
    const entry = entryOf(word);
    if (entry === undefined || (entry.noun && !this.#isVerb(index))) return undefined;
    const end = this.#clauseEnd(index);
    const rest = this.#spoken(index + 1, Math.min(end, index + 1 + MOST_WORDS)).slice(0, MOST_CHARACTERS);
    const rule = entry.rules.find(({where}) => where?.test(rest) ?? true);
    if (rule === undefined || rule.verb === 'none') return undefined;
    const last = this.#words[end - 1] ?? at;
    return {
      verb: rule.verb,
      fits: fitting(rule.verb, rest),
      span: {start: at.start, end: at.end},
      clause: {start: at.start, end: last.end},
    };
  }

  /** `do not oil or grease …`: a negation holds to the next comma. */
  #forbids(index: number): boolean {
    const word = this.#word(index) ?? '';
    if (this.#word(index - 1) === ',') this.#negated = false;
    if (NEGATIONS.has(word) || (word === 'do' && this.#word(index + 1) === 'not')) this.#negated = true;
    return this.#negated;
  }

  /** Whether a word that may be a noun too is a verb here. */
  #isVerb(index: number): boolean {
    const next = this.#word(index + 1);
    const chained = this.#word(index - 1) === 'then' || this.#word(index - 1) === 'first';
    // `Check: the tang faces forward`, but `Torque: 85 lbf·ft` is a label.
    if (next === undefined) return chained || this.#word(index) === 'check';
    if (DETERMINERS.has(next) || /^\d/.test(next)) return true;
    if (next === ',' || next === 'and') {
      const following = this.#skipLeads(index + 1);
      return chained || (following > index && this.#commandAt(following) !== undefined);
    }
    const first = index === this.#skipLeads(0);
    if (!first && !chained) return next === 'until' || isPart(next);
    return !declares(this.#words.slice(index + 1).map((_, offset) => this.#word(index + 1 + offset) ?? ''));
  }

  #clauseEnd(index: number): number {
    for (let end = index + 1; end < this.#words.length; end++) {
      const word = this.#word(end) ?? '';
      const next = this.#word(end + 1) ?? '';
      if (SUBORDINATORS.has(word)) return end;
      if (word === ',' && !/^\d/.test(next)) return end;
      if (word === 'then' && !/^(?:\d|to$)/.test(next)) return end;
      if (word === 'and' && this.#opensAfterAnd(end)) return end;
    }
    return this.#words.length;
  }

  #opensAfterAnd(index: number): boolean {
    const at = this.#skipLeads(index);
    const word = this.#word(at) ?? '';
    const entry = entryOf(word);
    if (entry === undefined) return OTHERS.has(word);
    return !entry.noun || DETERMINERS.has(this.#word(at + 1) ?? '');
  }

  /** `if it is hard`, `as needed` at the end makes the last command conditional. */
  #isConditional(): boolean {
    const said = this.#words.map((_, index) => this.#word(index)).join(' ');
    return / (?:if|unless) |\b(?:as|where|when|if) (?:needed|necessary|required)\b/.test(said);
  }

  #skipLeads(from: number): number {
    let index = from;
    for (;;) {
      const word = this.#word(index) ?? '';
      const reminder = REMINDERS.find((words) => words.every((one, at) => this.#word(index + at) === one));
      if (reminder !== undefined) index += reminder.length;
      else if (LEADS.has(word) || (index > from && word === ',') || isAdverb(word)) index += 1;
      else return index;
    }
  }

  #word(index: number): string | undefined {
    const word: Word | undefined = this.#words[index];
    return word?.text;
  }

  #spoken(from: number, to: number): string {
    const [first, last] = [this.#words[from], this.#words[to - 1]];
    if (first === undefined || last === undefined || from >= to) return '';
    return this.#words
      .slice(from, to)
      .map(({text}) => text)
      .join(' ');
  }
}

/** `carefully`, but not `apply`. */
function isAdverb(word: string): boolean {
  return /^[a-z]{2,}ly$/.test(word) && entryOf(word) === undefined;
}
