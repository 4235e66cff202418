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
  const first: ElementContent = {type: 'text', value: text};
  return also === undefined ? [first] : [first, {type: 'text', value: ' '}, h('span.also', `(${also})`)];
}
