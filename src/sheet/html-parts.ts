/**
 * The small pieces that every part of a sheet is made of: boxes, lines to write on, values in both systems. What is
 * filled in carries its key as `data-box`, and what only repeats who did it and when, as `data-by`,
 * `data-at` or, both together, `data-stamp`.
 */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import type {Value} from './model.js';

/** A box to tick. It is drawn for the hand; what it stands for is said by the text beside it. */
export function box(size: 'large' | 'small', key?: string): Element {
  return h('span', {
    className: size === 'small' ? ['box', 'small'] : ['box'],
    ariaHidden: 'true',
    dataBox: key,
  });
}

/** A box with its number inside it, to be ticked over. */
export function numberedBox(number: number, key?: string): Element {
  return h('span', {className: ['box', 'bearing'], dataBox: key}, String(number));
}

/** A line to write on, with the keys of what is written there. */
export function line(kind: 'name' | 'date' = 'name', filled: Filled = {}): Element {
  const {box: dataBox, by: dataBy, at: dataAt} = filled;
  const className = kind === 'date' ? ['line', 'date'] : ['line'];
  return h('span', {className, ariaHidden: 'true', dataBox, dataBy, dataAt});
}

/** The keys by which the script of a tablet finds the place. */
export interface Filled {
  /** The key of the box that it is. */
  readonly box?: string | undefined;
  /** The keys of the boxes whose initials, or date, are repeated here. */
  readonly by?: string | undefined;
  readonly at?: string | undefined;
}

/** A frame for a reading. */
export function blank(key?: string): Element {
  return h('span.blank', {ariaHidden: 'true', dataBox: key});
}

/** The value in the shop's units, and in the other system in brackets after it. */
export function valueNodes({text, also}: Value): ElementContent[] {
  const first = also === undefined ? plain(text) : whole(text);
  return also === undefined ? [first] : [first, {type: 'text', value: ' '}, h('span.also', `(${also})`)];
}

/** Longer texts may break where they like: a value is never so long. */
const LONGEST_WHOLE = 24;

/** A value that no line break parts from its unit. */
export function whole(text: string): ElementContent {
  return text.length <= LONGEST_WHOLE ? h('span.whole', text) : plain(text);
}

function plain(value: string): ElementContent {
  return {type: 'text', value};
}

/**
 * A row whose cells carry the headings of their columns, which a narrow screen shows in front of each; an empty heading
 * for a cell that says by itself what it is.
 */
export function underHeads(row: Element, heads: readonly string[]): Element {
  const children = row.children.map((cell, at) => {
    const head = heads[at] ?? '';
    const isCell = cell.type === 'element' && head !== '';
    return isCell ? {...cell, properties: {...cell.properties, dataHead: head}} : cell;
  });
  return {...row, children};
}
