/**
 * Which actions a piece of shop prose commands: an imperative at the start of a sentence, after an opening clause, or
 * further along a chain of imperatives. What is forbidden, told, or asked only under a condition is no command.
 */
import type {Verb} from '../procedure/verbs.js';
import type {Span} from '../text/source.js';
import {entryOf, fitting} from './lexicon.js';
import {type Sentence, sentences} from './sentences.js';
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
  const all: Command[] = [];
  for (const sentence of sentences(text)) all.push(...new Reader(sentence).commands());
  return all;
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
/** `as needed`, `where required` */
const ASKING = new Set(['as', 'where', 'when']);
const NEEDED = new Set(['needed', 'necessary', 'required']);
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

/** Lives while one sentence is read. */
class Reader {
  readonly #words: Sentence;

  constructor(sentence: Sentence) {
    this.#words = sentence;
  }

  commands(): Command[] {
    const start = this.#skipLeads(0);
    if (CONDITIONS.has(this.#word(start))) return [];
    const found: {readonly slot: number; readonly command: Command}[] = [];
    for (const slot of this.#allowed(this.#slots(start))) {
      const command = this.#commandAt(slot);
      if (command !== undefined) found.push({slot, command});
    }
    // What is asked for only under a condition is the command before it: `clean it, and oil it if it is dry`.
    const asked = this.#conditions().map((at) => found.findLast(({slot}) => slot < at) ?? found[0]);
    return found.filter((one) => !asked.includes(one)).map(({command}) => command);
  }

  /** `do not oil or grease …`: a negation holds to the next comma. */
  #allowed(slots: readonly number[]): number[] {
    let negated = -1;
    return slots.filter((slot) => {
      if (this.#isNegated(slot)) negated = slot;
      return negated < 0 || this.#words.slice(negated, slot).some(({text}) => text === ',');
    });
  }

  #isNegated(index: number): boolean {
    const word = this.#word(index);
    return NEGATIONS.has(word) || (word === 'do' && this.#word(index + 1) === 'not');
  }

  /** Places at which a command may stand, as indexes of words. */
  #slots(start: number): readonly number[] {
    const slots = [start];
    const opening = OPENINGS.has(this.#word(start));
    let free = !opening && this.#opensImperative(start);
    for (let index = start + 1; index < this.#words.length; index++) {
      const word = this.#word(index);
      if (word === ',') {
        const next = this.#word(index + 1);
        free ||= opening || next === 'so' || next === 'then';
        if (free) slots.push(this.#skipLeads(index + 1));
      } else if (free && (word === 'and' || word === 'then')) {
        slots.push(this.#skipLeads(index));
      }
    }
    // More than one way may lead to a word: `, and then carefully`.
    return [...new Set(slots)];
  }

  #opensImperative(start: number): boolean {
    if (this.#isNegated(start)) return true;
    const word = this.#word(start);
    const entry = entryOf(word);
    if (OTHERS.has(word) || (entry !== undefined && (!entry.noun || this.#isVerb(start)))) return true;
    // An unknown word with an object after it: `align the marks`.
    return !DETERMINERS.has(word) && /^[a-z]/.test(word) && DETERMINERS.has(this.#word(start + 1));
  }

  #commandAt(index: number): Command | undefined {
    const at = this.#words[index];
    const entry = entryOf(this.#word(index));
    if (at === undefined || entry === undefined || (entry.noun && !this.#isVerb(index))) return undefined;
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

  /** Whether a word that may be a noun too is a verb here. */
  #isVerb(index: number): boolean {
    const next = this.#word(index + 1);
    const chained = this.#word(index - 1) === 'then' || this.#word(index - 1) === 'first';
    // `Check: the tang faces forward`, but `Torque: 85 lbf·ft` is a label.
    if (next === '') return chained || this.#word(index) === 'check';
    if (DETERMINERS.has(next) || /\d/.test(next)) return true;
    if (next === ',' || next === 'and') {
      // `clean, oil and fit the cam`, but not `clean, dry threads are a must`
      const goesOn = () => this.#commandAt(this.#skipLeads(index + 2)) !== undefined;
      return chained || (!this.#declaresFrom(index + 2) && goesOn());
    }
    const first = index === this.#skipLeads(0);
    if (!first && !chained) return next === 'until' || isPart(next);
    return !this.#declaresFrom(index + 1);
  }

  #declaresFrom(index: number): boolean {
    return declares(this.#words.slice(index).map(({text}) => text));
  }

  #clauseEnd(index: number): number {
    for (let end = index + 1; end < this.#words.length; end++) {
      const word = this.#word(end);
      const next = this.#word(end + 1);
      if (SUBORDINATORS.has(word)) return end;
      if (word === ',' && !/^\d/.test(next)) return end;
      if (word === 'then' && !/^(?:\d|to$)/.test(next)) return end;
      if (word === 'and' && this.#opensAfterAnd(end)) return end;
    }
    return this.#words.length;
  }

  #opensAfterAnd(index: number): boolean {
    const at = this.#skipLeads(index);
    const word = this.#word(at);
    const entry = entryOf(word);
    if (entry === undefined) return OTHERS.has(word);
    return !entry.noun || DETERMINERS.has(this.#word(at + 1));
  }

  /** Where it says `if it is hard` or `as needed`, as indexes of words. */
  #conditions(): number[] {
    return this.#words.flatMap(({text}, index) => {
      const asNeeded = ASKING.has(text) && NEEDED.has(this.#word(index + 1));
      return text === 'if' || text === 'unless' || asNeeded ? [index] : [];
    });
  }

  #skipLeads(from: number): number {
    let index = from;
    for (;;) {
      const word = this.#word(index);
      const reminder = this.#reminder(index);
      if (reminder !== undefined) index += reminder.length;
      else if (LEADS.has(word) || word === ',' || isAdverb(word)) index += 1;
      else return index;
    }
  }

  #reminder(index: number): readonly string[] | undefined {
    return REMINDERS.find((words) => words.every((one, at) => this.#word(index + at) === one));
  }

  /** Empty beyond the end. */
  #word(index: number): string {
    return this.#words[index]?.text ?? '';
  }

  #spoken(from: number, to: number): string {
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
