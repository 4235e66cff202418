/** The title block of a sheet or cover, and the standing caution below it. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import type {Words} from './words.js';

export interface Titles {
  readonly shop: string;
  /** What kind of paper this is: "Build sheet 3 of 9". */
  readonly kind: string;
  readonly title: string;
}

/** Titles longer than this are set smaller. */
const LONG = 60;

export function titleBlock({shop, kind, title}: Titles, below: readonly ElementContent[]): Element {
  return h('div.block', [
    h('span.stripe', {ariaHidden: 'true'}),
    h('div.block-top', [
      h('div', [h('p.shop', shop), h('h1', {className: title.length > LONG ? ['long'] : undefined}, title)]),
      h('p.kind', kind),
    ]),
    ...below,
  ]);
}

export interface Cell {
  readonly label: string;
  /** Empty for a cell to write in. */
  readonly text: string;
  /** Twelfths of the block's width; 3 where left out. */
  readonly width?: 2 | 4 | 6;
  /** Digits to be compared one by one. */
  readonly digits?: boolean;
  /** What is written there, where it is a cell to write in. */
  readonly write?: 'engineNumber';
}

export function cells(list: readonly Cell[]): Element {
  return h(
    'dl.cells',
    list.map(({label, text, width, digits, write}) =>
      h('div', {className: width === undefined ? undefined : [`w${width}`]}, [
        h('dt', label),
        h(
          'dd',
          {
            className: digits === true ? ['print'] : undefined,
            dataWrite: text === '' ? write : undefined,
          },
          text,
        ),
      ]),
    ),
  );
}

export function standing(words: Words): Element {
  return h('div.standing', [h('p', words.standing), h('p', words.protect)]);
}
