/** The title block of a sheet or cover, and the standing caution below it. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {isLongTitle, type TitleBlock, type TitleCell, type Titles} from './title-block.js';
import type {Words} from './words.js';

export function titleBlock(block: TitleBlock): Element {
  const {shop, kind, title} = block;
  return h('div.block', [
    h('span.stripe', {ariaHidden: 'true'}),
    h('div.block-top', [
      h('div', [h('p.shop', shop), h('h1', {className: isLongTitle(block) ? ['long'] : undefined}, title)]),
      h('p.kind', kind),
    ]),
    cells(block.cells),
  ]);
}

function cells(list: readonly TitleCell[]): Element {
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

/** The block with what stands below it: the note on the engine, and what holds for every sheet. */
export function sheetHeader({block, notes}: Titles, words: Words): Element {
  return h('header', [
    titleBlock(block),
    ...notes.map((note) => h('p.engine-note', note)),
    h('div.standing', [h('p', words.standing), h('p', words.protect)]),
  ]);
}
