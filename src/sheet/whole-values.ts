/** Finds the values in a text: a number and its unit are never parted at the end of a line. */
import {findUnit} from '../quantity/units.js';
import {withoutEnd} from '../text/runs.js';

export interface TextPart {
  readonly type: 'text' | 'whole';
  readonly value: string;
}

/** A number, or numbers joined by dashes, with the word after it, which may be its unit. */
const NUMBER = /(\d[\d.,/]*(?:[-–]\d[\d.,/]*)*)(?: ([^\s,;:()]+))?/g;

/** The text in parts, in order; the `whole` ones are to be kept on one line, for half of a limit is another limit. */
export function wholeParts(text: string): TextPart[] {
  const parts: TextPart[] = [];
  let done = 0;
  for (const match of text.matchAll(NUMBER)) {
    const value = valueIn(match);
    if (!/[- –/]/.test(value)) continue;
    parts.push({type: 'text', value: text.slice(done, match.index)}, {type: 'whole', value});
    done = match.index + value.length;
  }
  parts.push({type: 'text', value: text.slice(done)});
  return parts.filter(({value}) => value !== '');
}

function valueIn([all, number = '', word = '']: RegExpMatchArray): string {
  const unit = withoutEnd(word, /[.!?]/);
  if (findUnit(unit) === undefined) return number;
  return all.slice(0, all.length - word.length + unit.length);
}
