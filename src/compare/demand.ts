/** One demand of the specification on an item, and the small makers that the reading of items is put together from. */
import type {Amount} from '../quantity/model.js';
import type {Item, Located, Specified} from '../spec/model.js';
import type {Where} from '../text/source.js';

/** Which way an amount is stricter: limits that are narrower, a cure that is longer, a resolution that is less. */
export type Stricter = 'narrower' | 'more' | 'less' | 'neither';

/** A word that may be more or less than another of its kind. */
export interface GradedWord {
  readonly word: string;
  /** The higher, the stricter; left out where no word of the kind is more than another. */
  readonly grade?: number;
  /** What the grade counts; grades of two scales say nothing of each other. */
  readonly scale?: string;
}

/** What a field of the specification asks for, as far as two of them can be held against each other. */
export type Demanded =
  /** Asked or not: the word is what is asked, where the aspect does not say it. */
  | {readonly type: 'there'}
  /** Said to need nothing, which is more than silence. */
  | {readonly type: 'none'}
  /** One of these will do: the fewer, the stricter. */
  | {readonly type: 'any-of'; readonly ids: readonly string[]}
  /** All of these: the more, the stricter. */
  | {readonly type: 'all-of'; readonly ids: readonly string[]}
  /** Only an engine with one of these options has it; none: every engine. */
  | {readonly type: 'options'; readonly ids: readonly string[]}
  | ({readonly type: 'word'} & GradedWord)
  | {readonly type: 'id'; readonly id: string}
  | {readonly type: 'amount'; readonly amount: Amount; readonly stricter: Stricter}
  | {readonly type: 'amounts'; readonly amounts: readonly Amount[]}
  /** Prose and names: nothing for the engine. */
  | {readonly type: 'text'; readonly text: string};

/** One field of one item, or of the shop. */
export interface Demand {
  /** What is asked: `lock`, `limits`, `after main-caps`. Unique in its item. */
  readonly aspect: string;
  /** The item that the aspect names, where it names one. */
  readonly about?: string;
  readonly value: Demanded;
  /** Its going is a weakening, its coming a strengthening; otherwise it is a change. */
  readonly asks: boolean;
  readonly where: Where;
}

/** A decision that nothing is needed: what was decided should not go silent again. */
export function none(aspect: string, where: Where): Demand {
  return {aspect, value: {type: 'none'}, asks: true, where};
}

/** `none` asks nothing, and neither does what nobody knows yet. */
export function known(value: string | undefined): string | undefined {
  return value === 'none' || value === 'unknown' ? undefined : value;
}

/** The ids or words without their places. */
export function values(list: readonly Located<string>[]): string[] {
  return list.map(({value}) => value);
}

/** That the item is dealt with at all: measured, signed, filled. */
export function there(aspect: string, {where}: Item): Demand {
  return {aspect, value: {type: 'there'}, asks: true, where};
}

/** A demand that is there or not, as `reused: true`. */
export function flag(aspect: string, set: boolean, item: Item): Demand[] {
  return set ? [there(aspect, item)] : [];
}

/** One demand for each of a list, since each may go or come by itself. */
export function each(aspect: string, list: readonly Located<string>[]): Demand[] {
  const once = new Map(list.map((one) => [one.value, one]));
  return [...once.values()].map(({value, where}) => ({
    aspect: `${aspect} ${value}`,
    about: value,
    value: {type: 'there'},
    asks: true,
    where,
  }));
}

/** One demand for the whole of a list of which one will do; at the first of them. */
export function anyOf(aspect: string, list: readonly Located<string>[]): Demand[] {
  const [first] = list;
  if (first === undefined) return [];
  return [{aspect, value: {type: 'any-of', ids: values(list)}, asks: true, where: first.where}];
}

/** Another item that is named: it follows a rename. */
export function idOf(aspect: string, one: Located<string> | undefined, asks: boolean): Demand[] {
  return one === undefined ? [] : [{aspect, value: {type: 'id', id: one.value}, asks, where: one.where}];
}

/** A word as it stands, which is none of an item; with a grade, it can be less or more than another. */
export function word(aspect: string, said: string, where: Where, grade?: number): Demand {
  return {aspect, value: {type: 'word', word: said, ...(grade !== undefined && {grade})}, asks: false, where};
}

/** The same of a value with its source. */
export function said(aspect: string, one: Specified<string> | undefined): Demand[] {
  return one === undefined ? [] : [word(aspect, one.value, one.where)];
}

/** Words for people only. */
export function text(aspect: string, said: string, {where}: Item): Demand {
  return {aspect, value: {type: 'text', text: said}, asks: false, where};
}

/** The same where there are some. */
export function textOf(aspect: string, said: string | undefined, item: Item): Demand[] {
  return said === undefined ? [] : [text(aspect, said, item)];
}

/** A value with its unit; `unknown` asks for nothing yet. */
export function amount(
  aspect: string,
  one: Specified<Amount | 'unknown'> | undefined,
  {stricter = 'neither', asks = false}: {readonly stricter?: Stricter; readonly asks?: boolean} = {},
): Demand[] {
  if (one === undefined || one.value === 'unknown') return [];
  return [{aspect, value: {type: 'amount', amount: one.value, stricter}, asks, where: one.where}];
}

/** A list of values that go together: passes of a torque, undersizes. */
export function amounts(aspect: string, list: readonly Amount[], where: Where): Demand {
  return {aspect, value: {type: 'amounts', amounts: list}, asks: false, where};
}
