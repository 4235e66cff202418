/** One text worded anew, whatever it is the text of: with both wordings, and first of all the guarding words that it lost. */
import type {Remark} from '../build/found.js';
import {lostGuards, sentencesOf} from './guard-words.js';
import type {Piece} from './model.js';
import {proseOf} from './prose.js';
import type {BookSide} from './side.js';

/** The aspect of a rewording that lost a word such as "never": such changes are told before other rewordings. */
export const LOST_WORD = 'lost word';

/** What a text said and says; left out where it is new or gone. */
export interface Wording {
  readonly text: string;
  readonly remark: Remark;
}

/** A text whose words changed, with both wordings where it stands on both sides. */
export interface Worded {
  readonly subject: string;
  /** "worded anew", "dropped". */
  readonly how: string;
  readonly before?: Wording | undefined;
  readonly now?: Wording | undefined;
}

/** Tells whether a sentence stands anywhere on a side; its prose is gone through once, when that is first asked. */
export function sentencesIn(side: BookSide): (sentence: string) => boolean {
  let all: ReadonlySet<string> | undefined;
  return (sentence) => {
    all ??= new Set(proseOf(side.book).flatMap((text) => sentencesOf(text)));
    return all.has(sentence);
  };
}

/** By which a text is told from its neighbours. */
export function firstWords(text: string): string {
  const words = text.split(' ');
  return `“${words.length <= FIRST ? text : `${words.slice(0, FIRST).join(' ')} …`}”`;
}

const FIRST = 8;

/** Always `reworded`: that no tag or value changed is for the judges of tags and values to say. */
export function wordedPiece(
  {subject, how, before, now}: Worded,
  elsewhere: (sentence: string) => boolean,
): Piece {
  const lost = lostGuards(before?.text ?? '', now?.text ?? '', elsewhere);
  return {
    effect: 'reworded',
    subject,
    aspect: lost.length === 0 ? 'words' : LOST_WORD,
    says: lost.length === 0 ? how : `${how}, without ${lost.map((word) => `“${word}”`).join(', ')}`,
    before: before === undefined ? [] : [before.remark],
    now: now === undefined ? [] : [now.remark],
  };
}
