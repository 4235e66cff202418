/** The boxes of a tightening as HTML: a line a pass, a numbered box a fastener, and the drawing of where they sit. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {drawingNode} from './html-drawing.js';
import {box, numberedBox, valueNodes} from './html-parts.js';
import {isNumbered} from './layout.js';
import type {TighteningBlanks} from './model.js';
import type {Words} from './words.js';

export function tighteningNode(blanks: TighteningBlanks, words: Words): Element {
  const {passes, positions, ordered, drawing, note, keys} = blanks;
  const numbered = isNumbered(blanks);
  const order = numbered ? [orderList(positions)] : [];
  return h('div.tighten', [
    ...(note === undefined ? [] : [h('p.order-note', note)]),
    ...(drawing === undefined ? order : [h('figure', [drawingNode(drawing, words), ...order])]),
    h('table.passes', {ariaLabel: words.passes}, [
      h(
        'tbody',
        passes.map(({label, value}, at) =>
          h('tr', [
            h('th', {scope: 'row'}, [
              label,
              ...(value === undefined ? [] : [' ', h('b', valueNodes(value))]),
            ]),
            h(
              'td',
              numbered ? numberedBoxes(keys[at] ?? []) : namedBoxes(positions, ordered, keys[at] ?? []),
            ),
          ]),
        ),
      ),
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

function numberedBoxes(keys: readonly string[]): Element {
  return h(
    'ol.numbered',
    keys.map((key, at) => h('li', numberedBox(at + 1, key))),
  );
}

function namedBoxes(positions: readonly string[], ordered: boolean, keys: readonly string[]): Element {
  return h(
    'ol.numbered',
    positions.map((name, at) => {
      const text = ordered ? `${at + 1} ${name}` : name;
      return h('li.named', [box('small', keys[at]), ...(text === '' ? [] : [h('span', text)])]);
    }),
  );
}
