/** A procedure as read from Markdown: sections, steps, tags and cautions, each with its span in the text. */
import type {PhrasingContent} from 'mdast';
import type {Quantity} from '../quantity/model.js';
import type {Problem} from '../text/problem.js';
import type {Source, Span, Where} from '../text/source.js';
import type {ClauseWord, Verb} from './verbs.js';

export interface Procedure {
  readonly source: Source;
  readonly front: Front;
  /** Text before the first section heading is a section without a title. */
  readonly sections: readonly Section[];
  /** Every step and sub-step in reading order. */
  readonly steps: readonly Step[];
  readonly problems: readonly Problem[];
}

/** Front matter. Missing required values read as '' and are problems of their own. */
export interface Front {
  readonly title: string;
  readonly revision: string;
  /** ISO 8601 date. */
  readonly date: string;
  readonly author?: string;
  readonly approved?: string;
  /** The engines or options that the procedure is for; left out, it is for all. */
  readonly only?: readonly {readonly id: string; readonly span: Span}[];
  /** What its prose speaks of and no tag needs to: things of the shop, not of the engine. */
  readonly untagged?: readonly {readonly words: string; readonly span: Span}[];
  /** How long somebody works on it, without its waits, where the shop knows. */
  readonly time?: Quantity;
  /** Span of the front matter; empty at 0 where there is none. */
  readonly span: Span;
}

export interface Section {
  /** Without its tags. */
  readonly title: string;
  readonly depth: number;
  readonly span: Span;
  /** The `only:` tags of its heading, which hold for the sections below it too. */
  readonly only: readonly Tag[];
  /** Prose, pictures and steps in order, and those cautions that no step follows. */
  readonly content: readonly Block[];
}

export type Block =
  | {
      readonly type: 'prose';
      readonly span: Span;
      readonly text: string;
      readonly inline: readonly PhrasingContent[];
    }
  | {readonly type: 'caution'; readonly caution: Caution}
  | {readonly type: 'step'; readonly step: Step}
  | {readonly type: 'picture'; readonly picture: Picture}
  /** Anything else that Markdown allows (bullet list, table, code): kept as its Markdown text. */
  | {readonly type: 'other'; readonly span: Span; readonly text: string}
  /** Steps that are not on this job, by their numbers, for want of one of these options. No reading gives it. */
  | {
      readonly type: 'left-out';
      readonly span: Span;
      readonly steps: readonly string[];
      readonly options: readonly string[];
    };

/** One that has no structure of its own: prose, other Markdown, a gap of steps. */
export type PlainBlock = Extract<Block, {readonly span: Span}>;

export interface Step {
  /**
   * As printed: `3`, `3b` for a sub-step, `3b2` below that. Counts through the procedure, not from the author's
   * numerals, which start anew wherever a caution or a heading ends a list.
   */
  readonly number: string;
  /** Position among the procedure's `steps`. */
  readonly index: number;
  readonly span: Span;
  /** The line a finding about the whole step points at: its first line without the list marker. */
  readonly headSpan: Span;
  /** The step's prose without its tags, white space folded. */
  readonly text: string;
  /** The same as Markdown nodes, tags removed. */
  readonly inline: readonly PhrasingContent[];
  readonly tags: readonly Tag[];
  /** Cautions that stand before it, or open its own item; each caution belongs to one step. */
  readonly cautions: readonly Caution[];
  /** Every picture of its prose, taken out of `inline`. */
  readonly pictures: readonly Picture[];
  /** Sub-steps: items of a nested ordered list. */
  readonly steps: readonly Step[];
  /** What else stands in its item: further paragraphs, bullet lists. Their tags are among `tags`. */
  readonly more: readonly PlainBlock[];
  /** Set by a `step:` tag. */
  readonly id?: string;
  readonly section: string;
  /** Set on a step that stands in no procedure: where a job asks for it. */
  readonly added?: Where;
}

export interface Picture {
  readonly span: Span;
  readonly url: string;
  readonly alt: string;
  readonly title?: string;
}

/** Signal words of ANSI Z535.6. */
export type Signal = 'danger' | 'warning' | 'caution' | 'notice';

export interface Caution {
  readonly signal: Signal;
  readonly span: Span;
  /** Without the signal word and the tags. */
  readonly text: string;
  readonly inline: readonly PhrasingContent[];
  /** Hazard words of its `hazard:` tags. */
  readonly hazards: readonly {readonly word: string; readonly span: Span}[];
  readonly tags: readonly Tag[];
}

/** An inline code span that reads as a tag. A part that could not be read is left out and is a problem. */
export interface Tag {
  /** The text between the backticks, without the spaces around it; `raw` is that text as it stands. */
  readonly span: Span;
  readonly raw: string;
  readonly verb: Verb;
  readonly verbSpan: Span;
  readonly targets: readonly Target[];
  readonly clauses: readonly Clause[];
}

export interface Target {
  readonly id: string;
  readonly span: Span;
  readonly places: readonly {readonly name: string; readonly span: Span}[];
}

export interface Clause {
  readonly word: ClauseWord;
  /** The whole clause, and its value alone. */
  readonly span: Span;
  readonly valueSpan: Span;
  readonly value: ClauseValue;
}

/** What the verb's shape made of the clause's text. */
export type ClauseValue =
  | {
      readonly type: 'ids';
      readonly ids: readonly {readonly id: string; readonly span: Span; readonly rest: string}[];
    }
  | {readonly type: 'amount'; readonly amount: import('../quantity/model.js').Amount}
  | {readonly type: 'amounts'; readonly amounts: readonly import('../quantity/model.js').Amount[]}
  | {readonly type: 'word'; readonly word: string}
  | {readonly type: 'text'; readonly text: string};
