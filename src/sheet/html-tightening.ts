/** The boxes of a tightening as HTML: a line a pass, a numbered box a fastener, and the drawing of where they sit. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {drawingNode} from './html-drawing.js';
import {box, valueNodes} from './html-parts.js';
import type {TighteningBlanks} from './model.js';
import type {Words} from './words.js';

export function tighteningNode(
  {passes, positions, ordered, drawing}: TighteningBlanks,
  words: Words,
): Element {
  const numbered = ordered && (drawing !== undefined || positions.length > 4);
  return h('div.tighten', [
    ...(drawing === undefined ? [] : [h('figure', drawingNode(drawing, words))]),
    h('div.boxes', [
      ...(numbered ? [orderList(positions)] : []),
      h('table.passes', [
        h(
          'tbody',
          passes.map(({label, value}) =>
            h('tr', [
              h('th', {scope: 'row'}, [
                label,
                ...(value === undefined ? [] : [' ', h('b', valueNodes(value))]),
              ]),
              h('td', boxList(positions, ordered, numbered)),
            ]),
          ),
        ),
      ]),
    ]),
  ]);
}

/** The order in words, so that nobody has to read it off the drawing. */
function orderList(positions: readonly string[]): Element {
  return h(
    'ol.order-list',
    positions.map((name, at) => h('li', [h('b', String(at + 1)), ` ${name}`])),
  );
}

function boxList(positions: readonly string[], ordered: boolean, numbered: boolean): Element {
  return h(
    'ol.numbered',
    positions.map((name, at) => {
      const number = String(at + 1);
      const text = numbered ? number : ordered ? `${number} ${name}` : name;
      return h('li', [box('small'), ...(text === '' ? [] : [h('span', text)])]);
    }),
  );
}
