/** The small pieces that every part of a sheet is made of: boxes, lines to write on, values in both systems. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import type {Value} from './model.js';

/** A box to tick. It is drawn for the hand; what it stands for is said by the text beside it. */
export function box(size: 'large' | 'small'): Element {
  return h('span', {className: size === 'small' ? ['box', 'small'] : ['box'], ariaHidden: 'true'});
}

/** A box with its number inside it, to be ticked over. */
export function numberedBox(number: number): Element {
  return h('span', {className: ['box', 'bearing']}, String(number));
}

export function line(kind: 'name' | 'date' = 'name'): Element {
  return h('span', {className: kind === 'date' ? ['line', 'date'] : ['line'], ariaHidden: 'true'});
}

export function blank(): Element {
  return h('span.blank', {ariaHidden: 'true'});
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
