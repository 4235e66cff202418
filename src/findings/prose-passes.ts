/**
 * Passes that prose lists without a unit, `in passes of 30, 60 and 85`: taken to be in the unit of the tag, or in that of
 * the other system.
 */
import {amountsAgree, unitOf} from '../quantity/convert.js';
import {otherUnit} from '../quantity/counterpart.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount, Unit} from '../quantity/model.js';
import {type ScannedNumber, scanNumber, skipSpace} from '../quantity/scan.js';
import type {Span} from '../text/source.js';
import type {StatedValue} from './stated-values.js';

export interface PassDisagreement {
  /** Offsets into the prose. */
  readonly span: Span;
  readonly value: StatedValue;
  readonly says: string;
}

/** The lists that are not those of the one torque of the step. With two torques in a step nobody knows whose a list is. */
export function passDisagreements(text: string, values: readonly StatedValue[]): PassDisagreement[] {
  const torques = values.filter(({kind}) => kind === 'torque');
  const [value, second] = torques;
  if (value === undefined || second !== undefined || !PASSES.test(text)) return [];
  return listsIn(text).flatMap(({span, numbers, last}) => {
    const units = [unitOf(value.amount), otherUnit(value.amount)];
    const judged = value.passes.length > 0 ? numbers : [last];
    if (units.some((unit) => unit !== undefined && agree(judged, unit, value))) return [];
    const passes =
      value.passes.length > 0 ? ` in passes of ${value.passes.map(formatAmount).join(', ')}` : '';
    const by = value.specified ? 'the specification' : 'the tag';
    const said = text.slice(span.start, span.end).replace(/\s+/g, ' ');
    const says = `${value.item.id}: the prose has passes of ${said}, ${by} ${formatAmount(value.amount)}${passes}`;
    return [{span, value, says}];
  });
}

const PASSES = /\b(?:passes|stages)\b/i;

/** Every number is a pass or the torque itself; where no passes are stated, the last alone is asked about. */
function agree(numbers: readonly ScannedNumber[], unit: Unit, {passes, amount}: StatedValue): boolean {
  const due = [...passes, amount];
  return numbers.every(({value, step}) => {
    const said: Amount = {form: 'single', value: {value, step, unit}};
    return due.some((one) => amountsAgree(said, one));
  });
}

interface List {
  readonly span: Span;
  readonly numbers: readonly ScannedNumber[];
  readonly last: ScannedNumber;
}

/** Lists of two numbers or more behind `passes of`, with no unit behind the last: with one, each is a number of its own. */
function listsIn(text: string): List[] {
  return [...text.matchAll(/\b(?:passes|stages)(?:\s+of|\s+at|\s+to|:)\s+(?=\d)/gi)].flatMap((found) => {
    const start = found.index + found[0].length;
    const numbers = numbersFrom(text, start);
    const last = numbers.slice(1).at(-1);
    if (last === undefined || !NO_NOUN.test(text.slice(last.span.end))) return [];
    return [{span: {start, end: last.span.end}, numbers, last}];
  });
}

/** `passes of 2 and 3 strokes` are no torques, nor are those of 2 and 3 in. */
const NO_NOUN =
  /^\s*(?:$|[.,;:()]|(?:on|with|in (?:the|a|turn|order|sequence)|as|using|by|then|working|starting|from)\b)/i;

/** No list of passes is longer. */
const MOST_PASSES = 12;
const JOINT = /,?\s{0,9}(?:(?:and|then)\s{1,9})?(?=\d)/y;

function numbersFrom(text: string, start: number): ScannedNumber[] {
  const numbers: ScannedNumber[] = [];
  for (let at = start; numbers.length < MOST_PASSES; ) {
    const number = scanNumber(text, at);
    if (number === undefined || 'says' in number) break;
    numbers.push(number);
    JOINT.lastIndex = skipSpace(text, number.span.end);
    const joint = JOINT.exec(text);
    if (joint === null) break;
    at = JOINT.lastIndex;
  }
  return numbers;
}
